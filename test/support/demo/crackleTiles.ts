import { MEAN_OVER_LEAST } from "../../../src/core/glaze/crackSpacing.ts";
import { middleDraw } from "../../../src/core/glaze/fitDraws.ts";
import { type FitRun, fitRun } from "../../../src/core/glaze/fitRun.ts";
import type { Glaze } from "../../../src/core/glaze/Glaze.ts";
import { parseGlaze } from "../../../src/core/glaze/glazeFile.ts";
import { workOutGlaze } from "../../../src/core/glaze/glazeSheet.ts";
import { bodyGiven } from "../../../src/core/ware/ownBody.ts";
import type { Body } from "../../../src/core/ware/Ware.ts";
import type { WrittenRecord } from "./DemoFiring.ts";
import { DEMO_BODIES } from "./demoBodies.ts";
import { DEMO_GLAZES } from "./demoGlazes.ts";
import { seeded } from "./seeded.ts";

type WrittenTrial = NonNullable<WrittenRecord["trials"]>[number];

/** Fired coats that the studio aimed at [mm], each on both clays in every firing. */
const COATS_MM = [0.35, 0.55, 0.85, 1.2];

/** Wall of all tiles [mm]. */
const WALL_MM = 6;

/** One standard deviation between like tiles, in logarithms. */
const TILE_SIGMA = 0.12;

/** One standard deviation of a coat as read, in logarithms. */
const COAT_SIGMA = 0.1;

/** Variance of a count over the count, as of even cells. */
const COUNT_SCATTER = 0.34;

/** Where cooling ends [°C]. */
const ROOM_C = 20;

/** The studio's letters for sets of tiles; D stood in the firing that was cooled in a hurry. */
type SetLetter = "A" | "B" | "C" | "D";

/** A tile before scatter: what was aimed at. */
export interface DemoTile {
  readonly firing: string;
  readonly piece: string;
  readonly clay: keyof typeof DEMO_BODIES;
  readonly coatMm: number;
  readonly glazedSides: "one" | "both";
}

/** How tiles of a firing were noted. */
interface DemoSet {
  readonly firing: string;
  readonly seed: number;
  readonly tiles: readonly DemoTile[];
}

const SETS: Readonly<Record<SetLetter, DemoSet>> = {
  A: setOfEight("A", "2026-02-21-b", 20_260_221),
  B: setOfEight("B", "2026-03-14-b", 20_260_314),
  C: setOfEight("C", "2026-04-11-a", 20_260_411),
  D: {
    firing: "2026-05-23-b",
    seed: 20_260_523,
    tiles: (
      [
        [0.5, "one"],
        [0.9, "one"],
        [0.9, "both"],
        [1.4, "one"],
      ] as const
    ).map(([coatMm, glazedSides], i) => ({
      firing: "2026-05-23-b",
      piece: `D${i + 1}`,
      clay: "Tarrow white",
      coatMm,
      glazedSides,
    })),
  },
};

/**
 * What the tiles were made with: pond ice follows the energy of channel cracks on either clay, the
 * firings make no difference, and no analysis is told. Least squares of the pitches without scatter
 * on coat, clay and sides; a test holds these numbers against the tiles.
 */
export const DEMO_TRUTH = {
  exponent: 0.65,
  duskOverWhite: 0.73,
  bothOverOne: 1.11,
  /** How much more pond ice shrinks than each clay [millionths per °C]. */
  shrinksMore: { "Tarrow white": 1.03, "Tarrow dusk": 1.34 },
} as const;

/** The tiles of some sets as they were aimed at. */
export function demoTiles(letters: readonly SetLetter[]): readonly DemoTile[] {
  return letters.flatMap((letter) => SETS[letter].tiles);
}

/** Eight tiles of one firing: both clays, four coats, sides in turn. */
function setOfEight(letter: "A" | "B" | "C", firing: string, seed: number): DemoSet {
  const turn = "ABC".indexOf(letter);
  const tiles = COATS_MM.flatMap((coatMm, i) =>
    (["Tarrow white", "Tarrow dusk"] as const).map((clay, j) => ({
      firing,
      piece: `${letter}${2 * i + j + 1}`,
      clay,
      coatMm,
      glazedSides: (i + j + turn) % 2 === 0 ? ("one" as const) : ("both" as const),
    })),
  );
  return { firing, seed, tiles };
}

/** Mean pitch of cracks filled in by energy [mm], without any scatter. */
export function expectedPitchMm(tile: DemoTile): number {
  const { leastSpacingMm } = middleRun(tile);
  if (leastSpacingMm === null)
    throw new RangeError(`expectedPitchMm: ${tile.coatMm} mm does not crack`);
  return MEAN_OVER_LEAST * leastSpacingMm;
}

/** How much more the glaze shrinks than the clay, by which the tile was made [millionths per °C]. */
export function trueShrinksMore(tile: DemoTile): number {
  return 1e6 * middleRun(tile).mismatchPerK;
}

/** The tile with everything at its middle. */
function middleRun({ clay, coatMm, glazedSides }: DemoTile): FitRun {
  const glazing = glazedSides === "both" ? "both faces" : "one face, free to bend";
  const piece = {
    wallMm: WALL_MM,
    coatMm,
    coatSigma: 0,
    glazing,
    absorptionPercent: null,
  } as const;
  const draw = middleDraw({ glaze: pondIce(), body: bodyOf(clay), piece, roomC: ROOM_C });
  return fitRun(draw, glazing, ROOM_C);
}

/** The tiles of one firing as its record writes them, with scatter of tiles, coats and counts. */
export function demoTrials(letter: SetLetter): WrittenTrial[] {
  const { seed, tiles } = SETS[letter];
  const { normal } = seeded(seed);
  return tiles.map((tile) => {
    const coatMm = tile.coatMm * Math.exp(0.05 * normal());
    const pitchMm = expectedPitchMm({ ...tile, coatMm }) * Math.exp(TILE_SIGMA * normal());
    return {
      piece: tile.piece,
      clay: tile.clay,
      body: DEMO_BODIES[tile.clay].given(),
      glaze: "pond ice",
      ...coatNoted(letter, coatMm, normal),
      glazedSides: tile.glazedSides,
      shape: "flat tile" as const,
      wall: `${WALL_MM} mm`,
      ...spacingNoted(letter, pitchMm, normal),
      cracked: "crackle" as const,
    };
  });
}

function coatNoted(letter: SetLetter, coatMm: number, normal: () => number) {
  const read = (mm: number, sigma: number) => `${(mm * Math.exp(sigma * normal())).toFixed(2)} mm`;
  if (letter === "A" || letter === "D")
    return { coat: read(coatMm, COAT_SIGMA), coatError: "10 %" };
  if (letter === "C")
    return { rawCoat: read(1.8 * coatMm, COAT_SIGMA), rawOverFired: 1.8, coatError: "10 %" };
  return { coat: [1, 2, 3].map(() => read(coatMm, COAT_SIGMA)) };
}

function spacingNoted(letter: SetLetter, pitchMm: number, normal: () => number) {
  if (letter === "B") {
    const found = pitchMm * Math.exp(0.05 * normal());
    const end = (share: number) => `${(found * Math.exp(share)).toFixed(2)} mm`;
    return {
      crackSpacing: end(0),
      spacingRange: [end(-0.1), end(0.1)],
      spacingFrom: "photo" as const,
      stain: "tea",
    };
  }
  const lengthMm = letter === "C" ? 40 : 50;
  // Lines in all directions over a net of square cells meet 4/π cracks for every pitch.
  const mean = (4 * lengthMm) / (Math.PI * pitchMm);
  const ways =
    letter === "C"
      ? (["along", "along", "across", "across"] as const)
      : [undefined, undefined, undefined];
  return {
    lines: ways.map((direction) => ({
      length: `${lengthMm} mm`,
      crossings: Math.max(1, Math.round(mean + Math.sqrt(COUNT_SCATTER * mean) * normal())),
      ...(direction === undefined ? {} : { direction }),
    })),
    stain: "tea",
  };
}

/** The glaze of all tiles. */
export function pondIce(): Glaze {
  const file = DEMO_GLAZES.find(({ name }) => name === "glaze-pond-ice.yaml");
  const parsed = parseGlaze(file?.text ?? "", "glaze-pond-ice.yaml");
  const sheet = parsed.ok ? workOutGlaze(parsed.value, "glaze-pond-ice.yaml") : parsed;
  if (!sheet.ok) throw new RangeError(sheet.problems.map(({ what }) => what).join());
  return sheet.value.glaze;
}

function bodyOf(clay: keyof typeof DEMO_BODIES): Body {
  const body = bodyGiven(DEMO_BODIES[clay].given(), () => clay);
  if (!body.ok) throw new RangeError(body.problems.map(({ what }) => what).join());
  return body.value;
}
