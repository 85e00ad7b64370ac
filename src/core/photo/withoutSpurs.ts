import type { Mask } from "./aboveThreshold.ts";
import { ring } from "./thinnedMask.ts";

/** Rounds of cutting; a spur on a spur goes in the second. */
const ROUNDS = 2;

/**
 * Thin lines without what is no crack: side twigs shorter than `spur`, which thinning leaves, and
 * pieces that hang together with nothing and have fewer places than `least`, which are specks.
 */
export function withoutSpurs(
  lines: Mask,
  shortest: { readonly spur: number; readonly least: number },
): Mask {
  const bits = lines.bits.slice();
  const around = ring(lines.width);
  for (let round = 0; round < ROUNDS; round++)
    for (let i = 0; i < bits.length; i++) {
      if (bits[i] === 0 || neighboursOf(bits, i, around).length !== 1) continue;
      const twig = followed(bits, i, { around, most: shortest.spur });
      if (twig !== null) for (const at of twig) bits[at] = 0;
    }
  dropSmall(bits, around, shortest.least);
  return { ...lines, bits };
}

function neighboursOf(bits: Uint8Array, i: number, around: readonly number[]): readonly number[] {
  const found: number[] = [];
  for (const step of around) if (bits[i + step] === 1) found.push(i + step);
  return found;
}

/** Places from a loose end up to a joint; null when none comes soon enough. */
function followed(
  bits: Uint8Array,
  end: number,
  { around, most }: { readonly around: readonly number[]; readonly most: number },
): readonly number[] | null {
  const path: number[] = [];
  let here: number | undefined = end;
  while (here !== undefined && path.length <= most) {
    path.push(here);
    const ahead: readonly number[] = neighboursOf(bits, here, around).filter(
      (at) => !path.includes(at),
    );
    if (ahead.length > 1) return path.length > 1 ? path.slice(0, -1) : null;
    here = ahead[0];
  }
  return null;
}

function dropSmall(bits: Uint8Array, around: readonly number[], least: number): void {
  const seen = new Uint8Array(bits.length);
  for (let i = 0; i < bits.length; i++) {
    if (bits[i] === 0 || seen[i] === 1) continue;
    const piece = [i];
    seen[i] = 1;
    for (let at = 0; at < piece.length; at++)
      for (const next of neighboursOf(bits, piece[at] as number, around))
        if (seen[next] === 0) {
          seen[next] = 1;
          piece.push(next);
        }
    if (piece.length < least) for (const at of piece) bits[at] = 0;
  }
}
