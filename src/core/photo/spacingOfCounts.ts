import {
  type CrackPattern,
  crackPitch,
  type LineIntercept,
  lineIntercept,
  type TestLine,
} from "../crackle/lineIntercept.ts";
import { failed, ok, type Result } from "../problem.ts";
import type { CrackProfile } from "./crackWidth.ts";
import type { Crossings } from "./crossings.ts";
import type { CountedCracks, PhotoWishes } from "./PhotoMeasurement.ts";
import { LEAST_CELLS, spacingRefusal } from "./photoProblems.ts";
import {
  type CountedFrame,
  type CrackDirection,
  crackDirection,
  type StripCount,
  stripCounts,
} from "./stripCounts.ts";

/** Ratio of the two directions from which cracks are taken as parallel; own judgement. */
const PARALLEL_RATIO = 3;

/** Scatter of the mean intercept of one cell, which falls with the root of their number; own estimate. */
const CELL_SCATTER = 0.5;

/** Intercepts across the shorter side from which the scatter of strips shows all of it. */
const ENOUGH_ACROSS = 12;

/** Standard deviations on either side that hold 95 of 100. */
const NORMAL_95 = 1.96;

/** What was counted in, beside the counts themselves. */
interface CountedIn {
  readonly name: string;
  readonly profile: CrackProfile;
  /** Pixels of the photograph that are one of the frame. */
  readonly factor: number;
  readonly wishes: PhotoWishes;
}

/**
 * The spacing that crossings along test lines stand for, with its interval and its two directions.
 *
 * @returns `photo/…` where the counts cannot bear a spacing.
 */
export function spacingOfCounts(
  counted: readonly Crossings[],
  frame: CountedFrame,
  { name, profile, factor, wishes }: CountedIn,
): Result<Omit<CountedCracks, "checkLines">> {
  const strips = stripCounts(counted, frame);
  const counts = wider(interceptOf(strips.upright), interceptOf(strips.level));
  if (counts === null) return failed(nothingCrossed(name));
  const raw = withChanceOfCells(counts, frame);
  const near = counted.reduce((sum, each) => sum + each.near, 0);
  const spacing = withHidden(raw, near / (near + raw.crossings));
  const direction = crackDirection(strips, spacing.hiddenShare);
  const pattern = wishes.pattern ?? likelyPattern(direction);
  const pitchMm = crackPitch(spacing.interceptMm, pattern);
  const cellsAcross = (Math.min(frame.width, frame.height) * frame.mmPerPx) / pitchMm;
  const interceptPx = (spacing.interceptMm / frame.mmPerPx) * factor;
  const refused = spacingRefusal({ interceptPx, cellsAcross, pitchMm, profile }, name);
  if (refused) return refused;
  const { low, high } = spacing.intervalMm;
  return ok({
    profile,
    crossings: raw.crossings,
    lengthMm: raw.lengthMm,
    ...spacing,
    relativeAccuracy: (high - low) / 2 / spacing.interceptMm,
    testLines: counted.length,
    direction,
    pattern,
    pitchMm,
    pitchIntervalMm: { low: crackPitch(low, pattern), high: crackPitch(high, pattern) },
    cellsAcross,
  });
}

/**
 * Test lines in one picture meet the same cells again and again, so that with few cells their scatter
 * does not show how far this picture is off by chance: a share is added as of so many cells.
 */
function withChanceOfCells(known: Known, frame: CountedFrame): Known {
  const { interceptMm, intervalMm } = known;
  const across = (Math.min(frame.width, frame.height) * frame.mmPerPx) / interceptMm;
  if (across >= ENOUGH_ACROSS) return known;
  const cells = (frame.width * frame.height * frame.mmPerPx ** 2) / interceptMm ** 2;
  const scatter = Math.log(intervalMm.high / intervalMm.low) / 2;
  const factor = Math.exp(Math.hypot(scatter, (NORMAL_95 * CELL_SCATTER) / Math.sqrt(cells)));
  return { ...known, intervalMm: { low: interceptMm / factor, high: interceptMm * factor } };
}

/** Over all strips that hold any line. */
function interceptOf(strips: readonly StripCount[]): LineIntercept | null {
  const lines: readonly TestLine[] = strips
    .map(({ all }) => all)
    .filter(({ lengthMm }) => lengthMm > 0);
  return lines.length === 0 ? null : lineIntercept(lines);
}

/**
 * The intercept with the crossings hidden behind a near neighbour added, as many as lie in the next
 * stretch as long; their number is taken to be good to half of itself, which widens the interval.
 */
function withHidden(
  { interceptMm, intervalMm }: Known,
  hiddenShare: number,
): Pick<CountedCracks, "interceptMm" | "intervalMm" | "hiddenShare"> {
  const scatter = Math.log(intervalMm.high / intervalMm.low) / 2;
  const factor = Math.exp(Math.hypot(scatter, hiddenShare / 2));
  const middle = interceptMm * (1 - hiddenShare);
  return {
    hiddenShare,
    interceptMm: middle,
    intervalMm: { low: middle / factor, high: middle * factor },
  };
}

type Known = LineIntercept & Pick<CountedCracks, "interceptMm" | "intervalMm">;

/** Of the same counts in strips two ways, the one with the wider interval. */
function wider(a: LineIntercept | null, b: LineIntercept | null): Known | null {
  if (!isKnown(a) || !isKnown(b)) return null;
  const width = ({ intervalMm }: Known) => intervalMm.high - intervalMm.low;
  return width(a) >= width(b) ? a : b;
}

function isKnown(intercept: LineIntercept | null): intercept is Known {
  return intercept !== null && intercept.interceptMm !== null && intercept.intervalMm !== null;
}

function likelyPattern(direction: CrackDirection | null): CrackPattern {
  return direction?.isDirectional && direction.ratio >= PARALLEL_RATIO ? "parallel" : "net";
}

function nothingCrossed(name: string) {
  return {
    code: "photo/too-few-cells",
    where: name,
    what: "there are cracks, but the test lines meet hardly any",
    expected: `at least ${LEAST_CELLS} cells across the shorter side`,
    fix: "photograph a larger tile, or count by hand",
  } as const;
}
