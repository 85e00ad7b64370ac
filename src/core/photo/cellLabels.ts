import type { Mask } from "./aboveThreshold.ts";

/** Stands for a cell that is none while others are looked for. */
const FLAW = -1;

/** Cells between crack lines, numbered from 1 in reading order; 0 on a line. */
export interface CellLabels {
  readonly width: number;
  readonly height: number;
  readonly labels: Int32Array;
}

/**
 * The cells that thin lines part, edge to edge counting as together. Cells with fewer places than
 * `least` are flaws of a line and belong to it.
 */
export function cellLabels(lines: Mask, least: number): CellLabels {
  const { width, height, bits } = lines;
  const labels = new Int32Array(bits.length);
  const cell = new Int32Array(bits.length);
  let label = 0;
  for (let start = 0; start < bits.length; start++) {
    if (bits[start] === 1 || labels[start] !== 0) continue;
    labels[start] = ++label;
    cell[0] = start;
    const count = filled(lines, labels, cell);
    if (count < least) for (let at = 0; at < count; at++) labels[cell[at] as number] = FLAW;
  }
  for (let i = 0; i < labels.length; i++) if (labels[i] === FLAW) labels[i] = 0;
  return { width, height, labels };
}

/** Gives all of the cell of `cell[0]` its label, gathers it in `cell`, and counts it. */
function filled({ width, bits }: Mask, labels: Int32Array, cell: Int32Array): number {
  const label = labels[cell[0] as number] as number;
  let count = 1;
  const take = (i: number) => {
    if (bits[i] !== 0 || labels[i] !== 0) return;
    labels[i] = label;
    cell[count++] = i;
  };
  for (let at = 0; at < count; at++) {
    const i = cell[at] as number;
    const x = i % width;
    if (x > 0) take(i - 1);
    if (x < width - 1) take(i + 1);
    take(i - width);
    take(i + width);
  }
  return count;
}
