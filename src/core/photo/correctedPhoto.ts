import { ok, type Result } from "../problem.ts";
import type { Crossings } from "./crossings.ts";
import type { CorrectedCount, PhotoInput, PhotoMeasurement, Place } from "./PhotoMeasurement.ts";
import { photoFindings } from "./photoFindings.ts";
import type { Crop } from "./photoScale.ts";
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
  const gaps = sorted.slice(1).map((here, i) => here - sorted[i]!);
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

/** A straight stroke drawn over a picture; from a place to the same place it is a touch. */
export interface Stroke {
  readonly from: Place;
  readonly to: Place;
}

/** What a stroke is looked up with. */
interface Reach {
  readonly stroke: Stroke;
  /** How near counts [px]. */
  readonly reach: number;
  /** Lines that a touch may mean; a longer stroke means all. */
  readonly isMeant: (line: Crossings) => boolean;
}

/** Crossings within reach of a stroke, on whatever line; of a touch only the nearest. */
export function crossingsUnder(
  counted: readonly Crossings[],
  { stroke, reach, isMeant }: Reach,
): readonly LineCrossing[] {
  const touch = isTouch(stroke);
  const near = counted.flatMap((each, line) => {
    if (touch && !isMeant(each)) return [];
    const along = alongLine(each);
    return each.places.flatMap((place, at) => {
      const away = distanceTo(place, stroke);
      return away <= reach ? [{ line, along: along[at]!, away }] : [];
    });
  });
  return (touch ? nearest(near) : near).map(plain);
}

/** Where a stroke meets each test line; a touch meets the nearest within reach, at its foot. */
export function linesUnder(
  counted: readonly Crossings[],
  { stroke, reach, isMeant }: Reach,
): readonly LineCrossing[] {
  if (!isTouch(stroke))
    return counted.flatMap((each, line) => {
      const along = met(each, stroke);
      return along === null ? [] : [{ line, along }];
    });
  const near = counted.flatMap((each, line) => {
    const away = distanceTo(stroke.from, each.line);
    if (!isMeant(each) || away > reach) return [];
    return [{ line, along: each.lengthPx * footShare(stroke.from, each.line), away }];
  });
  return nearest(near).map(plain);
}

function plain({ line, along }: LineCrossing): LineCrossing {
  return { line, along };
}

function isTouch({ from, to }: Stroke): boolean {
  return from.x === to.x && from.y === to.y;
}

function nearest<T extends { readonly away: number }>(near: readonly T[]): readonly T[] {
  const [first, ...rest] = near;
  return first === undefined
    ? []
    : [rest.reduce((best, each) => (each.away < best.away ? each : best), first)];
}

/** Share of the way along a stroke of the place on it that is nearest to another. */
function footShare({ x, y }: Place, { from, to }: Stroke): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length2 = dx * dx + dy * dy;
  if (length2 === 0) return 0;
  return Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / length2));
}

function distanceTo(place: Place, stroke: Stroke): number {
  const share = footShare(place, stroke);
  const { from, to } = stroke;
  return Math.hypot(
    place.x - from.x - share * (to.x - from.x),
    place.y - from.y - share * (to.y - from.y),
  );
}

/** How far along a test line a stroke meets it; null when it does not. */
function met({ line, lengthPx }: Crossings, stroke: Stroke): number | null {
  const [ax, ay] = [line.to.x - line.from.x, line.to.y - line.from.y];
  const [bx, by] = [stroke.to.x - stroke.from.x, stroke.to.y - stroke.from.y];
  const [cx, cy] = [stroke.from.x - line.from.x, stroke.from.y - line.from.y];
  const area = ax * by - ay * bx;
  if (area === 0) return null;
  const onLine = (cx * by - cy * bx) / area;
  const onStroke = (cx * ay - cy * ax) / area;
  const isOn = onLine >= 0 && onLine <= 1 && onStroke >= 0 && onStroke <= 1;
  return isOn ? onLine * lengthPx : null;
}
