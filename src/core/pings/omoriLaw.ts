import { seededEven } from "../math/distributions.ts";

/** The law by which clicks thin out: rate in proportion to 1/(t + c)^p. */
interface OmoriLaw {
  readonly p: number;
  /** [s] */
  readonly c: number;
}

/** The integral of 1/(t + c)^p from 0 to a time, in a form that is exact near p = 1. */
export function omoriArea({ p, c }: OmoriLaw, seconds: number): number {
  const stretch = Math.log1p(seconds / c);
  const power = 1 - p;
  const factor = Math.abs(power * stretch) < 1e-9 ? stretch : Math.expm1(power * stretch) / power;
  return c ** power * factor;
}

/** The share of all clicks of a span that the law expects up to a time, 0 to 1. */
export function omoriShare(law: OmoriLaw, seconds: number, wholeSeconds: number): number {
  return omoriArea(law, seconds) / omoriArea(law, wholeSeconds);
}

/** The time by which the law expects a share of the clicks of a span [s]; undoes {@link omoriShare}. */
export function omoriTime(law: OmoriLaw, share: number, wholeSeconds: number): number {
  const power = 1 - law.p;
  const stretch = Math.log1p(wholeSeconds / law.c);
  const grown =
    Math.abs(power * stretch) < 1e-9
      ? share * stretch
      : Math.log1p(share * Math.expm1(power * stretch)) / power;
  return law.c * Math.expm1(grown);
}

/**
 * Clicks of a span as the law would scatter them, in order of time, from a stream of even numbers.
 * Given their number, clicks of such a law fall independently.
 */
export function omoriTimes(
  law: OmoriLaw,
  given: { readonly count: number; readonly seconds: number; readonly even: () => number },
): readonly number[] {
  return Array.from({ length: given.count }, () =>
    omoriTime(law, given.even(), given.seconds),
  ).sort((a, b) => a - b);
}

/** The law that makes the times of clicks most likely, with how far they allow another exponent. */
interface OmoriFit extends OmoriLaw {
  /** 95 % interval of p from the likelihood; an end may lie at the edge of what was tried, −0.5 or 3. */
  readonly pLow: number;
  readonly pHigh: number;
}

/** Exponents that are tried: an end of an interval that lies here may lie further out. */
export const P_LEAST = -0.5;
export const P_MOST = 3;
const P_STEP = 0.01;
const C_STEPS = 60;

/** Half the 95 % point of chi-squared with one degree of freedom. */
const HALF_CHI_SQUARED = 1.9207;

/**
 * Fits the modified Omori law to times of clicks by maximum likelihood, on the times themselves.
 * With the number of clicks given, ln L = −n ln A(p, c) − p Σ ln(t + c), A the integral over the
 * span; c is tried from a hundred-thousandth of the span to twice the span.
 * The interval holds every p whose best ln L is within 1.92 of the best of all.
 *
 * @param times From the origin of the law [s], inside the span.
 * @throws RangeError for fewer than three times.
 */
export function fitOmori(times: readonly number[], seconds: number): OmoriFit {
  if (times.length < 3) throw new RangeError(`fitOmori: ${times.length} times`);
  const offsets = Array.from({ length: C_STEPS }, (_, i) => {
    const c = seconds * 1e-5 * 2e5 ** (i / (C_STEPS - 1));
    return { c, logs: times.reduce((sum, time) => sum + Math.log(time + c), 0) };
  });
  const tried = Array.from({ length: Math.round((P_MOST - P_LEAST) / P_STEP) + 1 }, (_, i) =>
    bestOffset(P_LEAST + i * P_STEP, offsets, { count: times.length, seconds }),
  );
  const best = tried.reduce((a, b) => (b.logLikelihood > a.logLikelihood ? b : a));
  const allowed = tried.filter(
    ({ logLikelihood }) => logLikelihood >= best.logLikelihood - HALF_CHI_SQUARED,
  );
  return {
    p: best.p,
    c: best.c,
    pLow: Math.min(...allowed.map(({ p }) => p)),
    pHigh: Math.max(...allowed.map(({ p }) => p)),
  };
}

/** The offset c that suits an exponent best. */
function bestOffset(
  p: number,
  offsets: readonly { readonly c: number; readonly logs: number }[],
  { count, seconds }: { readonly count: number; readonly seconds: number },
) {
  let best = { p, c: 1, logLikelihood: Number.NEGATIVE_INFINITY };
  for (const { c, logs } of offsets) {
    const logLikelihood = -count * Math.log(omoriArea({ p, c }, seconds)) - p * logs;
    if (logLikelihood > best.logLikelihood) best = { p, c, logLikelihood };
  }
  return best;
}

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

/**
 * Exponent p by which clicks thin out when cracks creep under a steady pull: p = 1 − m/(n − 2).
 * The time in which a flaw grows to a crack goes with its strength to the power n − 2, and the
 * flaws of a strength below s are as s^m, so that the count grows as time to the power m/(n − 2).
 *
 * @param m Weibull modulus of the strength of the glaze.
 * @param n Crack speed goes with the stress intensity to this power.
 * @throws RangeError unless n is over 2 and m is positive.
 */
export function slowCrackExponent(m: number, n: number): number {
  if (!(n > 2 && m > 0)) throw new RangeError(`slowCrackExponent: m ${m}, n ${n}`);
  return 1 - m / (n - 2);
}
