import type { Place } from "./Picture.ts";

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
