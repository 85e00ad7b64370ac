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
  const sums = prefixSums(bins);
  const best = new Float64Array(n + 1).fill(Number.POSITIVE_INFINITY);
  const cameFrom = new Int32Array(n + 1);
  const droppedBy = new Int32Array(n + 1).fill(n + 1);
  const totals = new Float64Array(n + 1);
  best[0] = 0;
  // Starts that may still win, oldest first.
  const open = new Int32Array(n + 1);
  let kept = 0;
  let opened = 0;
  for (let end = 1; end <= n; end++) {
    while (opened < end && lasts(bins, opened, end) >= shortestSeconds) {
      const newest = opened++;
      if (!Number.isFinite(best[newest]!)) continue;
      kept = withoutDropped(open.subarray(0, kept), droppedBy, newest);
      open[kept++] = newest;
    }
    const starts = open.subarray(0, kept);
    costsTo({ end, penalty, starts }, sums, totals);
    cameFrom[end] = bestStart({ end, starts }, totals, best);
    drop({ end, starts, hopeless: best[end]! + 2 * penalty }, totals, droppedBy);
  }
  if (!Number.isFinite(best[n]!)) return [pieceOf({ first: 0, end: n, penalty }, sums, bins)];
  const pieces: Piece[] = [];
  for (let end = n; end > 0; end = cameFrom[end]!)
    pieces.unshift(pieceOf({ first: cameFrom[end]!, end, penalty }, sums, bins));
  return pieces;
}

/** Makes totals of the costs, keeps the least as the best of the end, and tells where it starts. */
function bestStart(
  { end, starts }: { readonly end: number; readonly starts: Int32Array },
  totals: Float64Array,
  best: Float64Array,
): number {
  let found = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let s = 0; s < starts.length; s++) {
    const start = starts[s]!;
    const total = best[start]! + totals[start]!;
    totals[start] = total;
    if (total < least) {
      least = total;
      found = start;
    }
  }
  best[end] = least;
  return found;
}

/** Notes the starts that can no longer win from an end on. */
function drop(
  at: { readonly end: number; readonly starts: Int32Array; readonly hopeless: number },
  totals: Float64Array,
  droppedBy: Int32Array,
): void {
  const { end, starts, hopeless } = at;
  for (let s = 0; s < starts.length; s++) {
    const start = starts[s]!;
    if (droppedBy[start]! > end && totals[start]! >= hopeless) droppedBy[start] = end;
  }
}

/** Moves the starts not yet dropped at a bin to the front, and counts them. */
function withoutDropped(starts: Int32Array, droppedBy: Int32Array, newest: number): number {
  let kept = 0;
  for (let s = 0; s < starts.length; s++) {
    const start = starts[s]!;
    if (droppedBy[start]! > newest) starts[kept++] = start;
  }
  return kept;
}

/** Sums over the bins before each, by which any piece is fitted at once: hours and K from the first bin. */
interface PrefixSums {
  readonly t: Float64Array;
  readonly y: Float64Array;
  readonly tt: Float64Array;
  readonly ty: Float64Array;
  readonly yy: Float64Array;
}

function prefixSums({ timesSeconds: times, tempsC: temps }: Bins): PrefixSums {
  const n = times.length;
  const originSeconds = times[0]!;
  const originC = temps[0]!;
  const made = () => new Float64Array(n + 1);
  const sums = { t: made(), y: made(), tt: made(), ty: made(), yy: made() };
  for (let i = 0; i < n; i++) {
    const t = (times[i]! - originSeconds) / 3600;
    const y = temps[i]! - originC;
    sums.t[i + 1] = sums.t[i]! + t;
    sums.y[i + 1] = sums.y[i]! + y;
    sums.tt[i + 1] = sums.tt[i]! + t * t;
    sums.ty[i + 1] = sums.ty[i]! + t * y;
    sums.yy[i + 1] = sums.yy[i]! + y * y;
  }
  return sums;
}

function lasts({ timesSeconds: times, widthSeconds }: Bins, first: number, end: number): number {
  return times[end - 1]! - times[first]! + widthSeconds;
}

/** Costs of the pieces from several starts to one end. The innermost loop: plain arithmetic, nothing made. */
function costsTo(
  {
    end,
    penalty,
    starts,
  }: { readonly end: number; readonly penalty: number; readonly starts: Int32Array },
  sums: PrefixSums,
  into: Float64Array,
): void {
  const { t: sumT, y: sumY, tt: sumTT, ty: sumTY, yy: sumYY } = sums;
  const endT = sumT[end]!;
  const endY = sumY[end]!;
  const endTT = sumTT[end]!;
  const endTY = sumTY[end]!;
  const endYY = sumYY[end]!;
  for (let s = 0; s < starts.length; s++) {
    const first = starts[s]!;
    const t = endT - sumT[first]!;
    const y = endY - sumY[first]!;
    const perBin = 1 / (end - first);
    const tt = endTT - sumTT[first]! - t * t * perBin;
    const ty = endTY - sumTY[first]! - t * y * perBin;
    const constant = endYY - sumYY[first]! - y * y * perBin;
    const line = tt > 0 ? constant - (ty * ty) / tt : constant;
    into[first] = Math.min(Math.max(0, constant) + penalty, Math.max(0, line) + 2 * penalty);
  }
}

function pieceOf(
  {
    first,
    end,
    penalty,
  }: { readonly first: number; readonly end: number; readonly penalty: number },
  sums: PrefixSums,
  bins: Bins,
): Piece {
  const count = end - first;
  const t = sums.t[end]! - sums.t[first]!;
  const y = sums.y[end]! - sums.y[first]!;
  const tt = sums.tt[end]! - sums.tt[first]! - (t * t) / count;
  const ty = sums.ty[end]! - sums.ty[first]! - (t * y) / count;
  const saved = tt > 0 ? (ty * ty) / tt : 0;
  const flat = saved <= penalty;
  const driftCPerSecond = tt > 0 ? ty / tt / 3600 : 0;
  return {
    first,
    end,
    flat,
    middleC: bins.tempsC[0]! + y / count,
    middleSeconds: bins.timesSeconds[0]! + (3600 * t) / count,
    slopeCPerSecond: flat ? 0 : driftCPerSecond,
    driftCPerSecond,
  };
}
