import type { FoundSegment } from "./foundZone.ts";

/** Ramps in a row that together are one fall of the kiln by itself. */
export interface FallByItself {
  readonly kind: "fell by itself";
  readonly startSeconds: number;
  readonly endSeconds: number;
  readonly fromC: number;
  readonly toC: number;
  /** Of its first ramp and of its last, negative [°C/h]. */
  readonly firstCPerHour: number;
  readonly lastCPerHour: number;
}

/** Room that a kiln falls towards [°C]. */
const ROOM_C = 20;
/**
 * A kiln left alone loses heat by conduction, in proportion to its height above the room, and by
 * radiation, steeper than that: from one ramp of its fall to the next the rate goes with a power
 * of the height between these. One rate kept, or a rate set anew, does not.
 */
const POWER = { least: 0.6, most: 3 } as const;
/** Fewer ramps in a row may be anything. */
const LEAST_RAMPS = 3;
/** A fall this much faster for its height than the shut kiln's before it is no longer by itself. */
const QUICKENED = 1.3;

/**
 * The segments of a Curve with its natural falls put together, in order of time.
 * What was held, kept to a rate or fell faster than before (a lid, a vent) stays as it was found.
 */
export function fellByItself(
  segments: readonly FoundSegment[],
): readonly (FoundSegment | FallByItself)[] {
  const found: (FoundSegment | FallByItself)[] = [];
  let calm = Number.POSITIVE_INFINITY;
  for (let at = 0; at < segments.length; ) {
    let end = at;
    while (end + 1 < segments.length && follows(segments[end]!, segments[end + 1]!)) end++;
    const run = segments.slice(at, end + 1);
    const [first, last] = [run[0]!, run.at(-1)!];
    const isOwn = run.length >= LEAST_RAMPS && forHeight(first) <= QUICKENED * calm;
    if (isOwn) {
      calm = forHeight(last);
      found.push({
        kind: "fell by itself",
        startSeconds: first.startSeconds,
        endSeconds: last.endSeconds,
        fromC: first.fromC,
        toC: last.toC,
        firstCPerHour: first.rateCPerHour,
        lastCPerHour: last.rateCPerHour,
      });
    } else found.push(...run);
    at = end + 1;
  }
  return found;
}

/** Whether a ramp goes on as the same natural fall, without a gap between. */
function follows(one: FoundSegment, next: FoundSegment): boolean {
  if (one.kind !== "ramp" || next.kind !== "ramp") return false;
  if (one.rateCPerHour >= 0 || next.rateCPerHour >= 0) return false;
  if (Math.abs(next.startSeconds - one.endSeconds) > 1) return false;
  const [above, below] = [heightK(one), heightK(next)];
  if (below <= 0 || above <= below) return false;
  const power = Math.log(next.rateCPerHour / one.rateCPerHour) / Math.log(below / above);
  return power >= POWER.least && power <= POWER.most;
}

function heightK({ fromC, toC }: FoundSegment): number {
  return (fromC + toC) / 2 - ROOM_C;
}

function forHeight(segment: FoundSegment): number {
  return -segment.rateCPerHour / heightK(segment);
}
