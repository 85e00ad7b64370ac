import type { Mask } from "./crackLines.ts";

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
    near[at] = Math.max(near[at]!, here);
  }
}

function discOf(reach: number): Disc {
  const disc: { readonly dx: number; readonly dy: number }[] = [];
  for (let dy = -Math.floor(reach); dy <= reach; dy++)
    for (let dx = -Math.floor(reach); dx <= reach; dx++)
      if (dx ** 2 + dy ** 2 <= reach ** 2) disc.push({ dx, dy });
  return disc;
}

/** Stands for a cell that is none while others are looked for. */
const FLAW = -1;

/** Cells between crack lines, numbered from 1 in reading order; 0 on a line. */
interface CellLabels {
  readonly width: number;
  readonly height: number;
  readonly labels: Int32Array;
}

/**
 * The cells that thin lines part, edge to edge counting as together. Cells with fewer places than
 * `least` are flaws of a line and belong to it.
 */
function cellLabels(lines: Mask, least: number): CellLabels {
  const { width, height, bits } = lines;
  const labels = new Int32Array(bits.length);
  const cell = new Int32Array(bits.length);
  let label = 0;
  for (let start = 0; start < bits.length; start++) {
    if (bits[start] === 1 || labels[start] !== 0) continue;
    labels[start] = ++label;
    cell[0] = start;
    const count = filled(lines, labels, cell);
    if (count < least) for (let at = 0; at < count; at++) labels[cell[at]!] = FLAW;
  }
  for (let i = 0; i < labels.length; i++) if (labels[i] === FLAW) labels[i] = 0;
  return { width, height, labels };
}

/** Gives all of the cell of `cell[0]` its label, gathers it in `cell`, and counts it. */
function filled({ width, bits }: Mask, labels: Int32Array, cell: Int32Array): number {
  const label = labels[cell[0]!] as number;
  let count = 1;
  const take = (i: number) => {
    if (bits[i] !== 0 || labels[i] !== 0) return;
    labels[i] = label;
    cell[count++] = i;
  };
  for (let at = 0; at < count; at++) {
    const i = cell[at]!;
    const x = i % width;
    if (x > 0) take(i - 1);
    if (x < width - 1) take(i + 1);
    take(i - width);
    take(i + width);
  }
  return count;
}
