import type { Glaze } from "../glaze/Glaze.ts";
import { type GlazeFitInput, glazeFit } from "../glaze/glazeFit.ts";
import type { Glazing } from "../glaze/laminate.ts";
import type { MeasuredFit } from "../glaze/measuredFit.ts";
import type { Spread } from "../ware/spreadOf.ts";
import type { Body } from "../ware/Ware.ts";
import type { Tile } from "./Tile.ts";

/** Draws of everything uncertain; the same seed every time. */
const DRAWS = { runs: 200, seed: 1 };

/** Where cooling ends [°C]. */
const ROOM_C = 20;

/** From the ends of a 95 % interval to those of the middle 80 %, in logarithms. */
const TO_MIDDLE_80 = 1.2815515655446004 / 1.96;

/** Glazes that a person named a file for, by the words of the records. */
export type NamedGlazes = ReadonlyMap<string, Glaze>;

/** What the physics says of one tile. */
interface TileFit {
  readonly firing: string;
  readonly piece: string;
  /** Mean pitch to expect of cracks filled in [mm], middle 80 % of draws; null when few crack. */
  readonly expectedMm: Spread | null;
  /** Share of draws in which the coat can crack, 0–1. */
  readonly crackingShare: number;
  /** Mismatch read back from what was found on the tile; null when nothing was. */
  readonly measured: MeasuredFit | null;
}

/** Physics of some tiles, and which have none and why. */
export interface TileFits {
  readonly fits: readonly TileFit[];
  readonly leftOut: readonly {
    readonly firing: string;
    readonly piece: string;
    /** In words, after "because". */
    readonly why: string;
  }[];
}

/** Expected spacing, and the effective mismatch from the spacing found, for each tile. */
export function tileFits(tiles: readonly Tile[], glazes: NamedGlazes): TileFits {
  const read = tiles.map((tile) => ({ tile, input: inputOf(tile, glazes) }));
  return {
    fits: read.flatMap(({ tile, input }) =>
      typeof input === "string" ? [] : [fitOf(tile, input)],
    ),
    leftOut: read.flatMap(({ tile: { firing, piece }, input }) =>
      typeof input === "string" ? [{ firing, piece, why: input }] : [],
    ),
  };
}

/** A kind of tile, to draw the expected curve for. */
export interface TileKind {
  readonly glaze: Glaze;
  readonly body: Body;
  readonly wallMm: number;
  readonly glazing: Glazing;
}

/** A point of the expected curve: spacing to expect on a coat. */
export interface ExpectedPoint {
  readonly coatMm: number;
  /** Mean pitch of cracks filled in [mm], middle 80 % of draws; null when few crack. */
  readonly pitchMm: Spread | null;
  readonly crackingShare: number;
}

/** Spacing to expect against the coat by energy: a guide beside what was measured, no fit to it. */
export function expectedSpacings(
  { glaze, body, wallMm, glazing }: TileKind,
  coatsMm: readonly number[],
): readonly ExpectedPoint[] {
  return coatsMm.map((coatMm) => {
    const { spacing, crazing } = glazeFit({
      glaze,
      body,
      piece: { wallMm, coatMm, coatSigma: 0, glazing, absorptionPercent: null },
      roomC: ROOM_C,
      measured: { spacing: null, cracked: null, pings: [] },
      draws: DRAWS,
    });
    return { coatMm, pitchMm: spacing?.meanMm ?? null, crackingShare: crazing.share };
  });
}

/** How a tile is glazed, as far as stress goes; null when it is one-sided and its shape not noted. */
function glazingOf({ glazedSides, shape }: Tile): Glazing | null {
  if (glazedSides === "both") return "both faces";
  if (shape === null) return null;
  return shape === "flat" ? "one face, free to bend" : "one face, wall held";
}

/** Everything that the fit needs, or what is missing in words. */
function inputOf(tile: Tile, glazes: NamedGlazes): GlazeFitInput | string {
  const glaze = glazes.get(tile.glaze);
  const glazing = glazingOf(tile);
  const { body, wallMm, coat } = tile;
  if (glaze === undefined) return `no glaze file is named for ${tile.glaze}`;
  if (body === null) return "no body is named for its clay";
  if (wallMm === null) return "its wall is not noted";
  if (glazing === null) return "its shape is not noted, and a glaze on one side may bend it";
  const { firedMm, sigmaMm, sharedSigma } = coat;
  const coatSigma = Math.hypot(sigmaMm / firedMm, sharedSigma);
  return {
    glaze,
    body,
    piece: { wallMm, coatMm: firedMm, coatSigma, glazing, absorptionPercent: null },
    roomC: ROOM_C,
    measured: {
      cracked: tile.cracked === null ? null : tile.cracked !== "none",
      spacing: spacingOf(tile),
      pings: [],
    },
    draws: DRAWS,
  };
}

function spacingOf({ spacing }: Tile): GlazeFitInput["measured"]["spacing"] {
  if (spacing.kind !== "measured") return null;
  const { pitchMm, lowMm, highMm } = spacing;
  const end = (to: number | null) => pitchMm * ((to ?? pitchMm) / pitchMm) ** TO_MIDDLE_80;
  return { meanMm: pitchMm, lowMm: end(lowMm), highMm: end(highMm), counted: "pitch" };
}

function fitOf({ firing, piece }: Tile, input: GlazeFitInput): TileFit {
  const { spacing, crazing, measured } = glazeFit(input);
  return {
    firing,
    piece,
    expectedMm: spacing?.meanMm ?? null,
    crackingShare: crazing.share,
    measured: measured.fits[0] ?? null,
  };
}
