import type { Mask } from "./aboveThreshold.ts";

/**
 * A mask thinned to lines one place wide that keep its shape and its joints.
 * The outermost rows and columns of the mask must be empty.
 *
 * @see SOURCES["zhang-suen-1984"]
 */
export function thinnedMask(mask: Mask): Mask {
  const bits = mask.bits.slice();
  let candidates: number[] = [];
  for (let i = 0; i < bits.length; i++) if (bits[i] === 1) candidates.push(i);
  for (let goes = true; goes; ) {
    goes = false;
    for (const turn of [0, 1] as const) {
      const leaving = candidates.filter((i) => mayGo(bits, i, { width: mask.width, turn }));
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
  { width, turn }: { readonly width: number; readonly turn: 0 | 1 },
): boolean {
  const up = bits[i - width] as number;
  const upRight = bits[i - width + 1] as number;
  const right = bits[i + 1] as number;
  const downRight = bits[i + width + 1] as number;
  const down = bits[i + width] as number;
  const downLeft = bits[i + width - 1] as number;
  const left = bits[i - 1] as number;
  const upLeft = bits[i - width - 1] as number;
  const count = up + upRight + right + downRight + down + downLeft + left + upLeft;
  if (count < 2 || count > 6) return false;
  // Places that are set and follow one that is not, once around.
  const rises =
    (up & ~upLeft) +
    (upRight & ~up) +
    (right & ~upRight) +
    (downRight & ~right) +
    (down & ~downRight) +
    (downLeft & ~down) +
    (left & ~downLeft) +
    (upLeft & ~left);
  if (rises !== 1) return false;
  return turn === 0
    ? up * right * down === 0 && right * down * left === 0
    : up * right * left === 0 && up * down * left === 0;
}
