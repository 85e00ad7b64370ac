import { type CrackBands, ON_LINE } from "./crackBands.ts";
import type { Place } from "./PhotoMeasurement.ts";

/** Cracks met along a test line. */
export interface Crossings {
  readonly line: TestLineInPicture;
  readonly lengthPx: number;
  readonly places: readonly Place[];
  /** Crossings that lie between `mergePx` and twice that behind another. */
  readonly near: number;
}

/** Steps along a test line [px]. */
const STEP = 0.5;

/**
 * Crossings of cracks along a test line. Each stretch within the band of a line that also meets the
 * line is one crossing, and one more for each further cell entered in it: so a crack which a
 * test line grazes is not counted at every wiggle, and both cracks of a corner that it cuts are.
 * A crossing closer than `mergePx` behind another belongs to it.
 */
export function crossingsAlong(
  bands: CrackBands,
  line: TestLineInPicture,
  mergePx: number,
): Crossings {
  const { from, to } = line;
  const lengthPx = Math.hypot(to.x - from.x, to.y - from.y);
  const placeAt = (along: number): Place => ({
    x: from.x + ((to.x - from.x) * along) / lengthPx,
    y: from.y + ((to.y - from.y) * along) / lengthPx,
  });
  const kept: number[] = [];
  let near = 0;
  for (const at of crossed(bands, { lengthPx, placeAt })) {
    const gap = at - (kept.at(-1) ?? Number.NEGATIVE_INFINITY);
    if (gap < mergePx) continue;
    if (gap < 2 * mergePx) near++;
    kept.push(at);
  }
  return { line, lengthPx, places: kept.map(placeAt), near };
}

/** One stretch of a test line within a band, as far as it has been walked. */
interface Stretch {
  first: number;
  last: number;
  readonly cells: Map<number, number>;
}

function crossed(
  bands: CrackBands,
  path: { readonly lengthPx: number; readonly placeAt: (along: number) => Place },
): readonly number[] {
  const found: number[] = [];
  let cell = 0;
  let stretch: Stretch | null = null;
  for (let along = 0; along <= path.lengthPx; along += STEP) {
    const i = indexOf(bands, path.placeAt(along));
    const near = i === null ? 0 : bands.near[i]!;
    const here = i === null ? 0 : bands.cells[i]!;
    if (near > 0) {
      stretch ??= { first: Number.NaN, last: Number.NaN, cells: new Map([[cell, along]]) };
      walk(stretch, { along, here, isOn: near === ON_LINE });
    }
    if (near === 0) {
      if (stretch !== null) found.push(...crossingsOf(stretch));
      stretch = null;
      cell = here;
    }
  }
  if (stretch !== null) found.push(...crossingsOf(stretch));
  return found;
}

function walk(
  stretch: Stretch,
  step: { readonly along: number; readonly here: number; readonly isOn: boolean },
): void {
  if (step.here !== 0 && !stretch.cells.has(step.here)) stretch.cells.set(step.here, step.along);
  if (!step.isOn) return;
  if (Number.isNaN(stretch.first)) stretch.first = step.along;
  stretch.last = step.along;
}

/** None without the line itself; at the middle for one; else where each further cell begins. */
function crossingsOf({ first, last, cells }: Stretch): readonly number[] {
  if (Number.isNaN(first)) return [];
  const entered = [...cells.values()].slice(1);
  return entered.length < 2 ? [(first + last) / 2] : entered;
}

function indexOf({ width, height }: CrackBands, place: Place): number | null {
  const x = Math.floor(place.x);
  const y = Math.floor(place.y);
  return x < 0 || y < 0 || x >= width || y >= height ? null : y * width + x;
}

/** A straight line laid over a picture, along which cracks are counted. */
export interface TestLineInPicture {
  readonly from: Place;
  readonly to: Place;
  /** Direction, from the x axis towards the y axis, in whole degrees from 0 to 179. */
  readonly angleDeg: number;
}

/** Where test lines lie. */
interface Layout {
  readonly width: number;
  readonly height: number;
  readonly anglesDeg: readonly number[];
  /** Distance between neighbouring lines of one direction [px]. */
  readonly apart: number;
  /** Strip along the edges of the picture that is left out [px]. */
  readonly margin: number;
}

/** Sets of parallel test lines that cover the picture evenly, one set for each direction. */
export function testLines(layout: Layout): readonly TestLineInPicture[] {
  return layout.anglesDeg.flatMap((angleDeg) => {
    const turn = (angleDeg * Math.PI) / 180;
    const [nx, ny] = [-Math.sin(turn), Math.cos(turn)];
    const reach =
      (Math.abs(nx) * (layout.width - 2 * layout.margin) +
        Math.abs(ny) * (layout.height - 2 * layout.margin)) /
      2;
    const count = Math.max(1, Math.round((2 * reach) / layout.apart));
    return Array.from({ length: count }, (_, at) => {
      const offset = -reach + ((at + 0.5) * 2 * reach) / count;
      const through = {
        x: layout.width / 2 + offset * nx,
        y: layout.height / 2 + offset * ny,
      };
      return lineThrough(through, angleDeg, layout);
    }).filter((line) => line !== null);
  });
}

/** The part of a line through a place that lies in the picture; null when there is none. */
export function lineThrough(
  through: Place,
  angleDeg: number,
  frame: { readonly width: number; readonly height: number; readonly margin: number },
): TestLineInPicture | null {
  const turn = (angleDeg * Math.PI) / 180;
  const along = [Math.cos(turn), Math.sin(turn)] as const;
  let [start, end] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const [at, step, size] of [
    [through.x, along[0], frame.width],
    [through.y, along[1], frame.height],
  ] as const) {
    const [low, high] = [frame.margin - at, size - frame.margin - at];
    if (Math.abs(step) < 1e-12) {
      if (low > 0 || high < 0) return null;
      continue;
    }
    const [a, b] = [low / step, high / step];
    start = Math.max(start, Math.min(a, b));
    end = Math.min(end, Math.max(a, b));
  }
  if (!(end > start)) return null;
  return {
    from: { x: through.x + start * along[0], y: through.y + start * along[1] },
    to: { x: through.x + end * along[0], y: through.y + end * along[1] },
    angleDeg,
  };
}
