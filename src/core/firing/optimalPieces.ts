import type { Bins } from "./timeBins.ts";

/** A piece of a binned Curve with the line that fits it best at its price. */
export interface Piece {
  /** First bin, and the one after the last. */
  readonly first: number;
  readonly end: number;
  readonly flat: boolean;
  /** Temperature [°C] of the line at the moment `middleSeconds`. */
  readonly middleC: number;
  readonly middleSeconds: number;
  /** Of the line at its price: 0 on a constant piece. */
  readonly slopeCPerSecond: number;
  /** Of the least-squares line, also on a constant piece. */
  readonly driftCPerSecond: number;
}

/**
 * The cheapest cut of bins into constant and straight pieces, found exactly.
 * Cost of a piece: squared residuals plus one penalty for a constant, or two for a line, whichever
 * is less. Dynamic programming over prefix sums; starts that can no longer win are pruned, which
 * never changes the answer: joining two pieces saves at most two penalties.
 *
 * @param shortestSeconds Shortest piece; bins that last less in all make a single piece.
 * @see SOURCES["killick-2012"], SOURCES["lemire-2007"]
 */
export function optimalPieces(
  bins: Bins,
  penalty: number,
  shortestSeconds: number,
): readonly Piece[] {
  const n = bins.timesSeconds.length;
  const fit = pieceFits(bins);
  const best = new Float64Array(n + 1).fill(Number.POSITIVE_INFINITY);
  const cameFrom = new Int32Array(n + 1);
  const droppedBy = new Int32Array(n + 1).fill(n + 1);
  const totals = new Float64Array(n + 1);
  best[0] = 0;
  let starts: number[] = [];
  let opened = 0;
  for (let end = 1; end <= n; end++) {
    while (opened < end && fit.lasts(opened, end) >= shortestSeconds) {
      const newest = opened++;
      if (!Number.isFinite(best[newest] as number)) continue;
      starts = starts.filter((start) => (droppedBy[start] as number) > newest);
      starts.push(newest);
    }
    for (const start of starts) {
      const total = (best[start] as number) + fit.cost(start, end, penalty);
      totals[start] = total;
      if (total < (best[end] as number)) {
        best[end] = total;
        cameFrom[end] = start;
      }
    }
    const hopeless = (best[end] as number) + 2 * penalty;
    for (const start of starts)
      if ((droppedBy[start] as number) > end && (totals[start] as number) >= hopeless)
        droppedBy[start] = end;
  }
  if (!Number.isFinite(best[n] as number)) return [fit.piece(0, n, penalty)];
  const pieces: Piece[] = [];
  for (let end = n; end > 0; end = cameFrom[end] as number)
    pieces.unshift(fit.piece(cameFrom[end] as number, end, penalty));
  return pieces;
}

function pieceFits(bins: Bins) {
  const { timesSeconds: times, tempsC: temps } = bins;
  const n = times.length;
  const originSeconds = times[0] as number;
  const originC = temps[0] as number;
  const [sumT, sumY, sumTT, sumTY, sumYY] = Array.from(
    { length: 5 },
    () => new Float64Array(n + 1),
  ) as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
  for (let i = 0; i < n; i++) {
    const t = ((times[i] as number) - originSeconds) / 3600;
    const y = (temps[i] as number) - originC;
    sumT[i + 1] = (sumT[i] as number) + t;
    sumY[i + 1] = (sumY[i] as number) + y;
    sumTT[i + 1] = (sumTT[i] as number) + t * t;
    sumTY[i + 1] = (sumTY[i] as number) + t * y;
    sumYY[i + 1] = (sumYY[i] as number) + y * y;
  }

  return {
    lasts: (first: number, end: number): number =>
      (times[end - 1] as number) - (times[first] as number) + bins.widthSeconds,
    /** The innermost loop: plain arithmetic, nothing made. */
    cost(first: number, end: number, penalty: number): number {
      const t = (sumT[end] as number) - (sumT[first] as number);
      const y = (sumY[end] as number) - (sumY[first] as number);
      const perBin = 1 / (end - first);
      const tt = (sumTT[end] as number) - (sumTT[first] as number) - t * t * perBin;
      const ty = (sumTY[end] as number) - (sumTY[first] as number) - t * y * perBin;
      const constant = (sumYY[end] as number) - (sumYY[first] as number) - y * y * perBin;
      const line = tt > 0 ? constant - (ty * ty) / tt : constant;
      return Math.min(Math.max(0, constant) + penalty, Math.max(0, line) + 2 * penalty);
    },
    piece(first: number, end: number, penalty: number): Piece {
      const count = end - first;
      const t = (sumT[end] as number) - (sumT[first] as number);
      const y = (sumY[end] as number) - (sumY[first] as number);
      const tt = (sumTT[end] as number) - (sumTT[first] as number) - (t * t) / count;
      const ty = (sumTY[end] as number) - (sumTY[first] as number) - (t * y) / count;
      const saved = tt > 0 ? (ty * ty) / tt : 0;
      const flat = saved <= penalty;
      const driftCPerSecond = tt > 0 ? ty / tt / 3600 : 0;
      return {
        first,
        end,
        flat,
        middleC: originC + y / count,
        middleSeconds: originSeconds + (3600 * t) / count,
        slopeCPerSecond: flat ? 0 : driftCPerSecond,
        driftCPerSecond,
      };
    },
  };
}
