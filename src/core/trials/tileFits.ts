import { MEAN_OVER_LEAST } from "../glaze/crackSpacing.ts";
import { fitDraws, type GlazedWall } from "../glaze/fitDraws.ts";
import { leastSpacingOf } from "../glaze/fitRun.ts";
import type { Glaze, GlazedPiece, MeasuredPing } from "../glaze/Glaze.ts";
import { type GlazeFitInput, glazeFit } from "../glaze/glazeFit.ts";
import type { Glazing } from "../glaze/laminate.ts";
import type { MeasuredFit } from "../glaze/measuredFit.ts";
import { lastAsked } from "../math/memo.ts";
import { type Spread, spreadOf } from "../math/statistics.ts";
import type { Body } from "../ware/Ware.ts";
import type { Tile } from "./Tile.ts";

/** Draws of everything uncertain; the same seed every time. */
const DRAWS = { runs: 200, seed: 1 };

/** Where cooling ends [°C]. */
const ROOM_C = 20;

/** From the ends of a 95 % interval to those of the middle 80 %, in logarithms. */
const TO_MIDDLE_80 = 1.2815515655446004 / 1.96;

/** Glazes and bodies that files tell of, by the names in the records put through {@link nameKey}. */
export interface NamedWare {
  readonly glazes: ReadonlyMap<string, Glaze>;
  /** By clay; used for tiles whose record names no body. */
  readonly bodies: ReadonlyMap<string, Body>;
}

/** Mean pitch to expect of cracks filled in [mm]: the middle and both ends of the middle 80 % of draws. */
interface ExpectedPitch {
  /** Null where the glaze does not crack at all. */
  readonly lowMm: number | null;
  readonly medianMm: number | null;
  readonly highMm: number | null;
}

/** What the physics says of one tile. */
export interface TileFit {
  readonly firing: string;
  readonly piece: string;
  readonly glaze: string;
  readonly clay: string;
  /** By whose properties it is computed. */
  readonly bodyName: string;
  /** How much more the glaze shrinks than the body, by their files [1/K]. */
  readonly computedPerK: Spread;
  readonly expected: ExpectedPitch;
  /** Pitch that was found [mm]; null when none was measured. */
  readonly foundMm: number | null;
  /** Share of draws in which the coat can crack, 0–1. */
  readonly crackingShare: number;
  /** Mismatch read back from what was found on the tile: spacing or sight first, then its ping. */
  readonly measured: readonly MeasuredFit[];
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

/** First ping of a tile on the way down; null when none of its pings can be used. */
export type FirstPingOf = (tile: Tile) => MeasuredPing | null;

/** Expected spacing, and the effective mismatch from the spacing and the ping found, for each tile. */
export function tileFits(
  tiles: readonly Tile[],
  named: NamedWare,
  firstPingOf: FirstPingOf,
): TileFits {
  const read = tiles.map((tile) => ({ tile, input: inputOf(tile, named, firstPingOf) }));
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

/** The kind of a tile; in words what is missing for one. */
export function tileKind(tile: Tile, { glazes, bodies }: NamedWare): TileKind | string {
  const glaze = glazes.get(nameKey(tile.glaze));
  const glazing = glazingOf(tile);
  const body = tile.body ?? bodies.get(nameKey(tile.clay)) ?? null;
  const { wallMm } = tile;
  if (glaze === undefined) return `no glaze file is known for ${tile.glaze}`;
  if (body === null) return "no body is named for its clay";
  if (wallMm === null) return "its wall is not noted";
  if (glazing === null) return "its shape is not noted, and a glaze on one side may bend it";
  return { glaze, body, wallMm, glazing };
}

/** A point of the expected curve: spacing to expect on a coat. */
export interface ExpectedPoint extends ExpectedPitch {
  readonly coatMm: number;
}

/** Spacing to expect against the coat by energy: a guide beside what was measured, no fit to it. */
export function expectedSpacings(
  { glaze, body, wallMm, glazing }: TileKind,
  coatsMm: readonly number[],
): readonly ExpectedPoint[] {
  return coatsMm.map((coatMm) => {
    const piece: GlazedPiece = { wallMm, coatMm, coatSigma: 0, glazing, absorptionPercent: null };
    return { coatMm, ...expectedPitch({ glaze, body, piece, roomC: ROOM_C }) };
  });
}

/** Draws that do not crack count as cracks farther apart than all others. */
function expectedPitch(wall: GlazedWall): ExpectedPitch {
  const pitches = fitDraws(wall, DRAWS)
    .map((draw) => leastSpacingOf(draw, wall.piece.glazing, wall.roomC))
    .map((leastMm) => (leastMm === null ? Number.POSITIVE_INFINITY : MEAN_OVER_LEAST * leastMm));
  const { low, median, high } = spreadOf(Float64Array.from(pitches));
  const [lowMm = null, medianMm = null, highMm = null] = [low, median, high].map((mm) =>
    Number.isFinite(mm) ? mm : null,
  );
  return { lowMm, medianMm, highMm };
}

/** How a tile is glazed, as far as stress goes; null when it is one-sided and its shape not noted. */
function glazingOf({ glazedSides, shape }: Tile): Glazing | null {
  if (glazedSides === "both") return "both faces";
  if (shape === null) return null;
  return shape === "flat" ? "one face, free to bend" : "one face, wall held";
}

/** Everything that the fit needs, or what is missing in words. */
function inputOf(tile: Tile, named: NamedWare, firstPingOf: FirstPingOf): GlazeFitInput | string {
  const kind = tileKind(tile, named);
  if (typeof kind === "string") return kind;
  const { glaze, body, wallMm, glazing } = kind;
  const { firedMm, sigmaMm, sharedSigma } = tile.coat;
  const coatSigma = Math.hypot(sigmaMm / firedMm, sharedSigma);
  const ping = firstPingOf(tile);
  return {
    glaze,
    body,
    piece: { wallMm, coatMm: firedMm, coatSigma, glazing, absorptionPercent: null },
    roomC: ROOM_C,
    measured: {
      cracked: tile.cracked === null ? null : tile.cracked !== "none",
      spacing: spacingOf(tile),
      pings: ping === null ? [] : [ping],
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

/** Fits that were worked out last: most tiles stay when a firing comes or goes. */
const FITS = lastAsked<ReturnType<typeof physicsOf>>(400);

function physicsOf(input: GlazeFitInput) {
  const { crazing, measured, mismatch } = glazeFit(input);
  return { crazing, measured, mismatch, expected: expectedPitch(input) };
}

function fitOf(tile: Tile, input: GlazeFitInput): TileFit {
  const { crazing, measured, mismatch, expected } = FITS.of(JSON.stringify(input), () =>
    physicsOf(input),
  );
  return {
    firing: tile.firing,
    piece: tile.piece,
    glaze: tile.glaze,
    clay: tile.clay,
    bodyName: input.body.name,
    computedPerK: mismatch.perK,
    expected,
    foundMm: tile.spacing.kind === "measured" ? tile.spacing.pitchMm : null,
    crackingShare: crazing.share,
    measured: measured.fits,
  };
}

/** A name of a clay or a glaze without capitals, blanks and marks, so that a file can be named by it. */
export function nameKey(name: string): string {
  return name
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "")
    .join("-");
}
