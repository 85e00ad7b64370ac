import { alongLine, type LineCrossing } from "./correctedPhoto.ts";
import type { Crossings } from "./crossingsAlong.ts";
import type { Place } from "./Picture.ts";

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
      return away <= reach ? [{ line, along: along[at] as number, away }] : [];
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
