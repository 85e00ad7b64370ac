import type { Mask } from "./aboveThreshold.ts";
import { cellLabels } from "./cellLabels.ts";

/** Thin crack lines, made ready to be crossed. */
export interface CrackBands {
  readonly width: number;
  readonly height: number;
  /** 2 on or right beside a line, so that none can be slipped through; 1 in its band; else 0. */
  readonly near: Uint8Array;
  /** The cell that a place lies in; 0 on a line. */
  readonly cells: Int32Array;
}

/** Right beside a line, or on it. */
export const ON_LINE = 2;
const IN_BAND = 1;

/** Crack lines with a band of this half width about them, and the cells between them. */
export function crackBands(lines: Mask, reach: number): CrackBands {
  const near = new Uint8Array(lines.bits.length);
  const disc = discOf(reach);
  for (let i = 0; i < near.length; i++) if (lines.bits[i] === 1) stamp(near, i, { ...lines, disc });
  const { width, height } = lines;
  return { width, height, near, cells: cellLabels(lines, Math.ceil(reach ** 2)).labels };
}

type Disc = readonly { readonly dx: number; readonly dy: number }[];

function stamp(
  near: Uint8Array,
  i: number,
  frame: { readonly width: number; readonly height: number; readonly disc: Disc },
): void {
  const { width, height, disc } = frame;
  const x = i % width;
  const y = (i - x) / width;
  for (const { dx, dy } of disc) {
    if (x + dx < 0 || y + dy < 0 || x + dx >= width || y + dy >= height) continue;
    const at = i + dy * width + dx;
    const here = Math.abs(dx) + Math.abs(dy) <= 1 ? ON_LINE : IN_BAND;
    near[at] = Math.max(near[at] as number, here);
  }
}

function discOf(reach: number): Disc {
  const disc: { readonly dx: number; readonly dy: number }[] = [];
  for (let dy = -Math.floor(reach); dy <= reach; dy++)
    for (let dx = -Math.floor(reach); dx <= reach; dx++)
      if (dx ** 2 + dy ** 2 <= reach ** 2) disc.push({ dx, dy });
  return disc;
}
