import type { Frame, Pixel } from "./frame.ts";
import { textWidth } from "./textWidth.ts";

/** A rectangle in a plot [px]. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Size of the small labels in a plot [px]. */
export const LABEL_SIZE = 13;

/** Height that one line of labels takes [px]. */
export const LINE_HEIGHT = 17;

/** Width of a small label [px]. */
export function labelWidth(text: string): number {
  return textWidth(text, LABEL_SIZE);
}

/** What words must not cover. */
export interface Obstacles {
  /** Lines as dense points, see `densely`. */
  readonly lines: readonly Pixel[];
  readonly boxes: readonly Box[];
}

/**
 * The first of the boxes that covers nothing and lies inside the plot; otherwise the one that covers
 * least. A box earlier in the list is preferred.
 * @throws RangeError when there is nothing to choose from.
 */
export function freestBox(candidates: readonly Box[], obstacles: Obstacles, frame: Frame): Box {
  let best: Box | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const box of candidates) {
    const cost = covered(box, obstacles, frame);
    if (cost === 0) return box;
    if (cost < least) {
      best = box;
      least = cost;
    }
  }
  if (!best) throw new RangeError("freestBox: no candidates");
  return best;
}

/** Whether a box covers nothing and lies inside the plot. */
export function isFree(box: Box, obstacles: Obstacles, frame: Frame): boolean {
  return covered(box, obstacles, frame) === 0;
}

/** A polyline as points not more than 4 px apart, so that a box between two corners is noticed. */
export function densely(corners: readonly Pixel[]): readonly Pixel[] {
  return corners.flatMap((corner, i) => {
    const next = corners[i + 1];
    if (!next) return [corner];
    const steps = Math.max(1, Math.ceil(Math.hypot(next.x - corner.x, next.y - corner.y) / 4));
    return Array.from({ length: steps }, (_, step) => ({
      x: corner.x + ((next.x - corner.x) * step) / steps,
      y: corner.y + ((next.y - corner.y) * step) / steps,
    }));
  });
}

/**
 * Positions moved apart to at least `apart`, in their order, as near to where they wanted to be as
 * one pass down and one pass up allow, inside `low`…`high` as long as there is room.
 */
export function spread(
  wanted: readonly number[],
  apart: number,
  low: number,
  high: number,
): readonly number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]!);
  const placed = new Array<number>(wanted.length).fill(0);
  let previous = low - apart;
  for (const i of order) {
    previous = Math.max(wanted[i]!, previous + apart);
    placed[i] = previous;
  }
  let next = high + apart;
  for (const i of order.toReversed()) {
    next = Math.min(placed[i]!, next - apart);
    placed[i] = next;
  }
  return placed;
}

function covered(box: Box, obstacles: Obstacles, frame: Frame): number {
  const points = obstacles.lines.filter(
    ({ x, y }) => x > box.left - 5 && x < box.right + 5 && y > box.top - 3 && y < box.bottom + 3,
  ).length;
  const boxes = obstacles.boxes.filter(
    (other) =>
      other.left < box.right + 4 &&
      other.right > box.left - 4 &&
      other.top < box.bottom &&
      other.bottom > box.top,
  ).length;
  const outside =
    Math.max(0, -box.left) +
    Math.max(0, box.right - frame.width) +
    Math.max(0, -box.top) +
    Math.max(0, box.bottom - frame.height);
  return points + 30 * boxes + 5 * outside;
}
