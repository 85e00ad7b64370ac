import type { Curve } from "../curve/Curve.ts";
import type { FoundSegment } from "./foundZone.ts";
import { optimalPieces, type Piece } from "./optimalPieces.ts";
import { DRIFT_K, isStableHold, MEAN_OFF_TARGET_K, STABLE_SECONDS } from "./stableHold.ts";
import { type Bins, timeBins } from "./timeBins.ts";

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
