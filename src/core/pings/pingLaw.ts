import { seededEven } from "../ware/seededEven.ts";
import { fitOmori, type OmoriFit } from "./fitOmori.ts";
import { omoriShare, omoriTimes } from "./omoriLaw.ts";

/** The law of the pings with how sure it is. */
export interface PingLaw extends OmoriFit {
  /** Scatter of p, and how far the fit lies over the truth on average, among catalogues of this law. */
  readonly pSigma: number;
  readonly pBias: number;
  /** Fitted count against time, with the band in which 95 of 100 catalogues of this law stay at a time. */
  readonly line: readonly {
    readonly seconds: number;
    readonly count: number;
    readonly low: number;
    readonly high: number;
  }[];
}

/** Up to this many pings no exponent is told: its scatter would be as large as what it should tell apart. */
export const FEWEST_FOR_LAW = 50;

/** Catalogues that are made up to see how far the fit strays. */
const CATALOGUES = 100;

/** With more pings the straying is small against the interval, and making them up takes long. */
const MOST_MADE_UP = 2000;

const LINE_POINTS = 80;

/**
 * The law by which the pings thin out; null up to {@link FEWEST_FOR_LAW} of them.
 * Scatter and bias come from seeded made-up catalogues of the fitted law, so that the same
 * recording always gets the same answer.
 */
export function pingLaw(times: readonly number[], seconds: number): PingLaw | null {
  if (times.length <= FEWEST_FOR_LAW) return null;
  const fit = fitOmori(times, seconds);
  const count = Math.min(times.length, MOST_MADE_UP);
  const even = seededEven(times.length);
  const catalogues = Array.from({ length: CATALOGUES }, () =>
    omoriTimes(fit, { count, seconds, even }),
  );
  const fitted = catalogues.map((made) => fitOmori(made, seconds).p);
  const mean = fitted.reduce((sum, p) => sum + p, 0) / fitted.length;
  const variance = fitted.reduce((sum, p) => sum + (p - mean) ** 2, 0) / (fitted.length - 1);
  return {
    ...fit,
    pSigma: Math.sqrt(variance * (count / times.length)),
    pBias: (mean - fit.p) * (count / times.length),
    line: lineOf(fit, times.length, seconds),
  };
}

/** At a time the count of such a law is binomial; 1.96 of its sigmas hold 95 of 100. */
function lineOf(fit: OmoriFit, count: number, seconds: number): PingLaw["line"] {
  return Array.from({ length: LINE_POINTS + 1 }, (_, i) => {
    // Denser at the start, where the line is bent.
    const at = seconds * (i / LINE_POINTS) ** 2;
    const share = omoriShare(fit, at, seconds);
    const wide = 1.96 * Math.sqrt(count * share * (1 - share));
    return {
      seconds: at,
      count: count * share,
      low: Math.max(0, count * share - wide),
      high: Math.min(count, count * share + wide),
    };
  });
}
