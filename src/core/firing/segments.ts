import { type Curve, lastAtOrBefore } from "../curve/Curve.ts";
import type { FoundSegment } from "./FiringFacts.ts";
import { optimalPieces, type Piece } from "./optimalPieces.ts";
import { type Bins, timeBins } from "./timeBins.ts";

/** Shortest time over which a furnace can be called stable [s]: 10 min. */
const STABLE_SECONDS = 600;

/** How far its mean may stand from the target [K]. */
const MEAN_OFF_TARGET_K = 5;

/** Largest drift over 10 min, by linear regression [K]. */
const DRIFT_K = 2;

/** How far any reading may stand from the mean [K]. */
const READING_OFF_MEAN_K = 10;

/** Rounding of the arithmetic, far below what a thermocouple resolves [K]. */
const ROUNDING_K = 1e-9;

/**
 * Whether a stretch of a Curve meets the published definition of a stable furnace.
 * For at least 10 min: mean within ± 5 °C of the target, drift by linear regression at most 2 °C in
 * 10 min, no reading more than 10 °C from the mean. Never over a gap. Without a target the stretch
 * is held to its own mean, so that only drift and readings decide.
 *
 * @see SOURCES["iso-1182-2020"], 7.2.4
 */
export function isStableHold(
  curve: Curve,
  hold: {
    readonly fromSeconds: number;
    readonly toSeconds: number;
    readonly targetC?: number;
  },
): boolean {
  if (hold.toSeconds - hold.fromSeconds < STABLE_SECONDS) return false;
  if (
    curve.gaps.some((gap) => gap.fromSeconds < hold.toSeconds && gap.toSeconds > hold.fromSeconds)
  )
    return false;
  const { timesSeconds, tempsC } = curve;
  let from = Math.max(0, lastAtOrBefore(timesSeconds, hold.fromSeconds));
  if (timesSeconds[from]! < hold.fromSeconds) from++;
  const to = lastAtOrBefore(timesSeconds, hold.toSeconds) + 1;
  const times = timesSeconds.subarray(from, to);
  const temps = tempsC.subarray(from, to);
  if (times.length < 3) return false;
  const meanC = mean(temps);
  const driftK = Math.abs(slope(times, temps)) * STABLE_SECONDS;
  let furthestK = 0;
  for (let i = 0; i < temps.length; i++)
    furthestK = Math.max(furthestK, Math.abs(temps[i]! - meanC));
  return (
    Math.abs(meanC - (hold.targetC ?? meanC)) <= MEAN_OFF_TARGET_K + ROUNDING_K &&
    driftK <= DRIFT_K + ROUNDING_K &&
    furthestK <= READING_OFF_MEAN_K + ROUNDING_K
  );
}

function mean(values: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
}

/** Least-squares slope [K/s]. */
function slope(times: Float64Array, temps: Float64Array): number {
  const meanTime = mean(times);
  const meanTemp = mean(temps);
  let products = 0;
  let squares = 0;
  times.forEach((time, i) => {
    products += (time - meanTime) * (temps[i]! - meanTemp);
    squares += (time - meanTime) ** 2;
  });
  return products / squares;
}

/** A corner must be worth this much misfit [K] … */
const TOLERANCE_K = 2;

/** … kept up for this long [s]. */
const TOLERANCE_SECONDS = 10 * 60;

/** Shortest ramp or hold that is told apart [s]. */
const SHORTEST_SECONDS = 8 * 60;

/** Farthest that a hold may creep from end to end [K]: ± 5 °C about its middle. */
const HOLD_TRAVEL_K = 2 * MEAN_OFF_TARGET_K;

/**
 * The ramps and holds of a measured Curve, in order of time.
 * Exact best cut into constant and straight pieces on time bins, a new piece having to mend a
 * misfit of 2 °C over 10 min; corners are then where neighbouring lines cross. No segment spans a
 * gap, so that nothing is found there. Natural cooling comes out as several ramps.
 */
export function foundSegments(curve: Curve): readonly FoundSegment[] {
  return timeBins(curve).flatMap((bins) => {
    if (bins.timesSeconds.length < 2) return [];
    const penalty = (TOLERANCE_K ** 2 * TOLERANCE_SECONDS) / bins.widthSeconds;
    const pieces = optimalPieces(bins, penalty, SHORTEST_SECONDS);
    const bounds = boundsOf(pieces, bins);
    return pieces.map((piece, i): FoundSegment => {
      const startSeconds = bounds[i]!;
      const endSeconds = bounds[i + 1]!;
      const isHold = holds(piece, endSeconds - startSeconds);
      return {
        kind: isHold ? "hold" : "ramp",
        startSeconds,
        endSeconds,
        fromC: at(piece, startSeconds),
        toC: at(piece, endSeconds),
        rateCPerHour: piece.driftCPerSecond * 3600,
        stable: isHold && isStableHold(curve, { fromSeconds: startSeconds, toSeconds: endSeconds }),
      };
    });
  });
}

/**
 * Whether a piece is a hold: constant, or creeping no more than a stable furnace may, so that the
 * last degrees behind a slow thermocouple do not make a ramp.
 */
function holds(piece: Piece, seconds: number): boolean {
  const drift = Math.abs(piece.slopeCPerSecond);
  return piece.flat || (drift * STABLE_SECONDS <= DRIFT_K && drift * seconds <= HOLD_TRAVEL_K);
}

/** Start of the first piece, the corners, end of the last. */
function boundsOf(pieces: readonly Piece[], bins: Bins): readonly number[] {
  const bounds = [bins.fromSeconds];
  for (let i = 0; i + 1 < pieces.length; i++) bounds.push(corner(pieces[i]!, pieces[i + 1]!, bins));
  bounds.push(bins.toSeconds);
  return bounds;
}

/** Where two neighbouring lines cross, when that is near their common edge; else the edge. */
function corner(before: Piece, after: Piece, bins: Bins): number {
  const times = bins.timesSeconds;
  const edge = (times[before.end - 1]! + times[after.first]!) / 2;
  const turn = after.slopeCPerSecond - before.slopeCPerSecond;
  if (turn === 0) return edge;
  const apart = at(before, edge) - at(after, edge);
  const crossing = edge + apart / turn;
  return Math.abs(crossing - edge) < SHORTEST_SECONDS / 2 ? crossing : edge;
}

function at(piece: Piece, seconds: number): number {
  return piece.middleC + piece.slopeCPerSecond * (seconds - piece.middleSeconds);
}
