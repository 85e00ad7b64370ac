import type { Mask } from "./aboveThreshold.ts";

/**
 * A mask thinned to lines one place wide that keep its shape and its joints.
 * The outermost rows and columns of the mask must be empty.
 *
 * @see SOURCES["zhang-suen-1984"]
 */
export function thinnedMask(mask: Mask): Mask {
  const bits = mask.bits.slice();
  const around = ring(mask.width);
  let candidates: number[] = [];
  for (let i = 0; i < bits.length; i++) if (bits[i] === 1) candidates.push(i);
  for (let goes = true; goes; ) {
    goes = false;
    for (const turn of [0, 1] as const) {
      const leaving = candidates.filter((i) => mayGo(bits, i, { around, turn }));
      for (const i of leaving) bits[i] = 0;
      if (leaving.length === 0) continue;
      goes = true;
      candidates = candidates.filter((i) => bits[i] === 1);
    }
  }
  return { ...mask, bits };
}

/** Steps to the eight neighbours, clockwise from the one above. */
export function ring(width: number): readonly number[] {
  return [-width, 1 - width, 1, width + 1, width, width - 1, -1, -width - 1];
}

function mayGo(
  bits: Uint8Array,
  i: number,
  { around, turn }: { readonly around: readonly number[]; readonly turn: 0 | 1 },
): boolean {
  let count = 0;
  let rises = 0;
  let before = bits[i + (around[7] as number)] as number;
  for (const step of around) {
    const here = bits[i + step] as number;
    count += here;
    if (before === 0 && here === 1) rises++;
    before = here;
  }
  if (count < 2 || count > 6 || rises !== 1) return false;
  const [up, right, down, left] = [0, 2, 4, 6].map((k) => bits[i + (around[k] as number)]) as [
    number,
    number,
    number,
    number,
  ];
  return turn === 0
    ? up * right * down === 0 && right * down * left === 0
    : up * right * left === 0 && up * down * left === 0;
}
