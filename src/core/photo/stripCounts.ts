import type { TestLine } from "../crackle/lineIntercept.ts";
import type { Crossings } from "./crossings.ts";
import type { Place } from "./PhotoMeasurement.ts";

/** Strips that a picture is cut into each way; each should be two cells wide or more. */
const STRIPS = 5;

/** The picture that test lines lie in, in its own pixels. */
export interface CountedFrame {
  readonly width: number;
  readonly height: number;
  /** Strip along the edges that no line enters [px]. */
  readonly margin: number;
  readonly mmPerPx: number;
  /** Places whose length and crossings do not count. */
  readonly isLeftOut: (place: Place) => boolean;
}

/** The strip of a place that does not count. */
const NOWHERE = -1;

/** Length and crossings in one strip, direction by direction. */
export interface StripCount {
  readonly byAngle: readonly { readonly angleDeg: number; readonly line: TestLine }[];
  readonly all: TestLine;
}

/** A picture's counts sorted into upright strips and into level ones. */
interface StripCounts {
  readonly upright: readonly StripCount[];
  readonly level: readonly StripCount[];
}

/**
 * Counts along test lines, sorted into strips of the picture. Neighbouring lines meet the same
 * cracks and so are no independent witnesses; strips are nearly so.
 */
export function stripCounts(counted: readonly Crossings[], frame: CountedFrame): StripCounts {
  const { width, height, margin } = frame;
  return {
    upright: strips(counted, ({ x }) => (x - margin) / (width - 2 * margin), frame),
    level: strips(counted, ({ y }) => (y - margin) / (height - 2 * margin), frame),
  };
}

function strips(
  counted: readonly Crossings[],
  shareOf: (place: Place) => number,
  { mmPerPx, isLeftOut }: CountedFrame,
): readonly StripCount[] {
  const angles = [...new Set(counted.map(({ line }) => line.angleDeg))];
  const indexOf = (place: Place) =>
    isLeftOut(place)
      ? NOWHERE
      : Math.min(STRIPS - 1, Math.max(0, Math.floor(STRIPS * shareOf(place))));
  const lengths = angles.map(() => new Float64Array(STRIPS));
  const crossings = angles.map(() => new Float64Array(STRIPS));
  for (const each of counted) {
    const at = angles.indexOf(each.line.angleDeg);
    addLength(lengths[at] as Float64Array, each, indexOf);
    for (const place of each.places) {
      add(crossings[at] as Float64Array, indexOf(place), 1);
    }
  }
  return Array.from({ length: STRIPS }, (_, strip) => {
    const byAngle = angles.map((angleDeg, at) => ({
      angleDeg,
      line: {
        lengthMm: (lengths[at]?.[strip] as number) * mmPerPx,
        crossings: crossings[at]?.[strip] as number,
      },
    }));
    return { byAngle, all: together(byAngle.map(({ line }) => line)) };
  });
}

/** Spreads a line's length over strips, pixel by pixel. */
function addLength(
  lengths: Float64Array,
  { line, lengthPx }: Crossings,
  indexOf: (place: Place) => number,
): void {
  const steps = Math.max(1, Math.round(lengthPx));
  for (let step = 0; step < steps; step++) {
    const share = (step + 0.5) / steps;
    const strip = indexOf({
      x: line.from.x + share * (line.to.x - line.from.x),
      y: line.from.y + share * (line.to.y - line.from.y),
    });
    add(lengths, strip, lengthPx / steps);
  }
}

function add(sums: Float64Array, strip: number, more: number): void {
  if (strip !== NOWHERE) sums[strip] = (sums[strip] as number) + more;
}

/** Several lines as one. */
function together(lines: readonly TestLine[]): TestLine {
  return {
    lengthMm: lines.reduce((sum, line) => sum + line.lengthMm, 0),
    crossings: lines.reduce((sum, line) => sum + line.crossings, 0),
  };
}

/** Least ratio of the two spacings that is worth calling a direction; own judgement. */
const LEAST_RATIO = 1.25;

/** Whether cracks run more one way than the other, and the spacing along and across. */
export interface CrackDirection {
  /** The way in which lines meet the fewest cracks: along the cracks [degrees, 0 to 179]. */
  readonly alongDeg: number;
  /** Mean intercept of lines along the cracks, and square across them [mm]. */
  readonly alongMm: number;
  readonly acrossMm: number;
  /** `alongMm` over `acrossMm`. */
  readonly ratio: number;
  /** More than the scatter between strips makes by chance, 19 times in 20, and worth telling. */
  readonly isDirectional: boolean;
}

/**
 * Direction of a pattern, from counts in directions spread evenly over the half circle.
 *
 * @param hiddenShare Share of cracks hidden behind a neighbour, in every direction the same.
 * @returns null below four directions, or where a direction has no crossing.
 */
export function crackDirection(counts: StripCounts, hiddenShare: number): CrackDirection | null {
  const totals = totalsByAngle(counts.upright);
  const angles = totals.map(({ angleDeg }) => angleDeg);
  const wayAcross = strongestWay(totals);
  const across = nearestAngle(angles, wayAcross);
  const along = nearestAngle(angles, across + 90);
  const interceptAt = (angleDeg: number) => {
    const line = totals.find((each) => each.angleDeg === angleDeg)?.line as TestLine;
    return line.crossings === 0 ? null : ((1 - hiddenShare) * line.lengthMm) / line.crossings;
  };
  const [alongMm, acrossMm] = [interceptAt(along), interceptAt(across)];
  if (angles.length < 4 || alongMm === null || acrossMm === null) return null;
  const ratio = alongMm / acrossMm;
  const surprise = Math.min(unlikeliness(counts.upright), unlikeliness(counts.level));
  return {
    alongDeg: along,
    alongMm,
    acrossMm,
    ratio,
    isDirectional: ratio >= LEAST_RATIO && surprise > surpriseLimit(STRIPS),
  };
}

function totalsByAngle(strips: readonly StripCount[]) {
  return (strips[0] as StripCount).byAngle.map(({ angleDeg }, at) => ({
    angleDeg,
    line: together(strips.map(({ byAngle }) => byAngle[at]?.line as TestLine)),
  }));
}

type ByAngle = StripCount["byAngle"];

/** Cosine and sine part of the count per length, twice round in a full turn. */
function twofold(byAngle: ByAngle): readonly [number, number] {
  let [cos, sin] = [0, 0];
  for (const { angleDeg, line } of byAngle) {
    const turn = (angleDeg * Math.PI) / 90;
    const perMm = line.lengthMm === 0 ? 0 : line.crossings / line.lengthMm;
    cos += perMm * Math.cos(turn);
    sin += perMm * Math.sin(turn);
  }
  return [cos, sin];
}

function strongestWay(totals: ByAngle): number {
  const [cos, sin] = twofold(totals);
  return (Math.atan2(sin, cos) * 90) / Math.PI;
}

function nearestAngle(angles: readonly number[], wanted: number): number {
  const away = (angle: number) => {
    const turn = (((angle - wanted) % 180) + 180) % 180;
    return Math.min(turn, 180 - turn);
  };
  return angles.reduce((best, angle) => (away(angle) < away(best) ? angle : best));
}

/** How far the mean twofold part of the strips lies from none, in squared standard errors. */
function unlikeliness(strips: readonly StripCount[]): number {
  const parts = strips.map(({ byAngle }) => twofold(byAngle));
  return [0, 1].reduce((sum, which) => {
    const values = parts.map((part) => part[which] as number);
    const mean = values.reduce((total, value) => total + value, 0) / values.length;
    const squares = values.reduce((total, value) => total + (value - mean) ** 2, 0);
    const variance = squares / (values.length - 1) / values.length;
    return sum + (variance === 0 ? 0 : mean ** 2 / variance);
  }, 0);
}

/** Hotelling's limit for two parts, from the F distribution with 2 degrees above, in closed form. */
function surpriseLimit(count: number): number {
  const below = count - 2;
  const f = (below / 2) * (0.05 ** (-2 / below) - 1);
  return ((2 * (count - 1)) / below) * f;
}
