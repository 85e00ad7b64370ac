import type { Result } from "../problem.ts";
import { ok } from "../problem.ts";
import type { Crossings } from "./crossingsAlong.ts";
import type { CorrectedCount, PhotoInput, PhotoMeasurement } from "./PhotoMeasurement.ts";
import type { Place } from "./Picture.ts";
import type { Crop } from "./parsePhotoScale.ts";
import { photoFindings } from "./photoFindings.ts";
import { spacingOfCounts } from "./spacingOfCounts.ts";

/** A crossing by its test line, and where along it [px of the mask] it lies. */
export interface LineCrossing {
  readonly line: number;
  readonly along: number;
}

/** What a person corrects of a count. */
export interface PhotoCorrections {
  readonly takenAway: readonly LineCrossing[];
  readonly added: readonly LineCrossing[];
  /** Areas whose lines and crossings do not count [px of the mask]. */
  readonly leftOut: readonly Crop[];
}

/** A crossing is the one that was meant when it lies as near as this [px of the mask]. */
const SAME_PX = 0.5;

/**
 * A measured photograph with its count corrected by hand: the spacing, its interval and its
 * directions are worked out anew from what is left. Two crossings that a person tells apart stay
 * two, however close they lie.
 *
 * @returns `photo/…` where what is left cannot bear a spacing; the same measurement for no correction.
 */
export function correctedPhoto(
  measured: PhotoMeasurement,
  corrections: PhotoCorrections,
  input: Pick<PhotoInput, "name" | "wishes" | "isSquared" | "isWhole" | "isOnPage">,
): Result<PhotoMeasurement> {
  const { cracks, found, mmPerPx } = measured;
  const { takenAway, added, leftOut } = corrections;
  if (cracks === null || takenAway.length + added.length + leftOut.length === 0)
    return ok(measured);
  const isLeftOut = (place: Place) => leftOut.some((area) => isInside(place, area));
  const { counted, corrected } = correctedCounts(found, corrections);
  const { width, height } = found.lines;
  const frame = { width, height, margin: found.margin, mmPerPx: mmPerPx * found.factor, isLeftOut };
  const spacing = spacingOfCounts(counted, frame, {
    name: input.name,
    profile: cracks.profile,
    factor: found.factor,
    wishes: input.wishes,
  });
  if (!spacing.ok) return spacing;
  const { lengthMm } = spacing.value;
  const result = {
    leastVisibleMm: measured.leastVisibleMm,
    corrected: {
      ...corrected,
      areas: leftOut.length,
      leftOutShare: leftOut.length === 0 ? 0 : 1 - lengthMm / cracks.lengthMm,
    },
    cracks: { ...spacing.value, checkLines: cracks.checkLines },
  };
  return ok({
    ...measured,
    ...result,
    findings: photoFindings(result, input),
    found: { ...found, counted },
  });
}

function isInside({ x, y }: Place, area: Crop): boolean {
  return x >= area.x && y >= area.y && x < area.x + area.width && y < area.y + area.height;
}

function correctedCounts(
  { counted, mergePx }: PhotoMeasurement["found"],
  { takenAway, added }: PhotoCorrections,
): {
  readonly counted: readonly Crossings[];
  readonly corrected: Pick<CorrectedCount, "takenAway" | "added" | "lost">;
} {
  let [gone, came] = [0, 0];
  const lines = counted.map((each, at) => {
    const less = takenAway.filter(({ line }) => line === at).map(({ along }) => along);
    const more = added.filter(
      ({ line, along }) => line === at && along >= 0 && along <= each.lengthPx,
    );
    if (less.length + more.length === 0) return each;
    const found = alongLine(each);
    const kept = found.filter((here) => !less.some((there) => Math.abs(there - here) < SAME_PX));
    gone += found.length - kept.length;
    came += more.length;
    return withCrossings(each, [...kept, ...more.map(({ along }) => along)], mergePx);
  });
  const lost = takenAway.length - gone + (added.length - came);
  return { counted: lines, corrected: { takenAway: gone, added: came, lost } };
}

/** How far along its line each crossing lies [px of the mask]. */
export function alongLine({ line, places }: Crossings): readonly number[] {
  return places.map(({ x, y }) => Math.hypot(x - line.from.x, y - line.from.y));
}

function withCrossings(each: Crossings, along: readonly number[], mergePx: number): Crossings {
  const sorted = [...along].sort((a, b) => a - b);
  const gaps = sorted.slice(1).map((here, i) => here - (sorted[i] as number));
  return {
    ...each,
    places: sorted.map((here) => placeAlong(each, here)),
    near: gaps.filter((gap) => gap >= mergePx && gap < 2 * mergePx).length,
  };
}

/** The place so far along a test line [px of the mask]. */
export function placeAlong({ line: { from, to }, lengthPx }: Crossings, along: number): Place {
  return {
    x: from.x + ((to.x - from.x) * along) / lengthPx,
    y: from.y + ((to.y - from.y) * along) / lengthPx,
  };
}
