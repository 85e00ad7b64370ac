import { type Curve, temperatureAt } from "../curve/Curve.ts";
import type { FoundSegment } from "./FiringFacts.ts";
import { timeBins } from "./timeBins.ts";

/** A fall below the highest so far that counts [K]. */
const FALL_K = 15;

/** How long it must last [s]. */
const LONG_SECONDS = 10 * 60;

/** How far the plan may fall while the kiln does, for the fall to be the plan's [K]. */
const PLANNED_FALL_K = 5;

/** A stretch before the peak in which a kiln that should rise fell. */
export interface PowerLoss {
  /** When it left its highest temperature so far, and when it was back there [s]. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly fromC: number;
  readonly lowestC: number;
  /** A gap in the readings hides part of it. */
  readonly hasGap: boolean;
}

/**
 * Falls before the peak that no plan explains: more than 15 °C below the highest so far, for at
 * least 10 min. Works on medians of half-minute bins. What the plan itself lets fall is left out.
 *
 * @param planned The plan, shifted to the log; null when there is none.
 */
export function powerLosses(
  curve: Curve,
  peakAtSeconds: number,
  planned: Curve | null,
): readonly PowerLoss[] {
  return fallsBefore(curve, peakAtSeconds).filter(
    (loss) =>
      loss.fromC - loss.lowestC > FALL_K &&
      loss.toSeconds - loss.fromSeconds >= LONG_SECONDS &&
      !isPlanned(loss, planned),
  );
}

/** Every stretch below the highest so far that ends back there, up to the peak. */
function fallsBefore(curve: Curve, peakAtSeconds: number): readonly PowerLoss[] {
  const found: PowerLoss[] = [];
  let top = { seconds: Number.NaN, tempC: Number.NEGATIVE_INFINITY };
  let lowestC = Number.POSITIVE_INFINITY;
  for (const bins of timeBins(curve))
    for (let i = 0; i < bins.timesSeconds.length; i++) {
      const seconds = bins.timesSeconds[i]!;
      const tempC = bins.tempsC[i]!;
      if (seconds > peakAtSeconds) return found;
      if (tempC < top.tempC) {
        lowestC = Math.min(lowestC, tempC);
        continue;
      }
      if (lowestC < top.tempC)
        found.push({
          fromSeconds: top.seconds,
          toSeconds: seconds,
          fromC: top.tempC,
          lowestC,
          hasGap: curve.gaps.some(
            (gap) => gap.fromSeconds < seconds && gap.toSeconds > top.seconds,
          ),
        });
      top = { seconds, tempC };
      lowestC = Number.POSITIVE_INFINITY;
    }
  return found;
}

function isPlanned(loss: PowerLoss, planned: Curve | null): boolean {
  if (planned === null) return false;
  let top = Number.NEGATIVE_INFINITY;
  let fall = 0;
  const moments = [
    loss.fromSeconds,
    ...[...planned.timesSeconds].filter((t) => t > loss.fromSeconds && t < loss.toSeconds),
    loss.toSeconds,
  ];
  for (const seconds of moments) {
    const tempC = temperatureAt(planned, seconds);
    if (tempC === null) continue;
    top = Math.max(top, tempC);
    fall = Math.max(fall, top - tempC);
  }
  return fall > PLANNED_FALL_K;
}

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
