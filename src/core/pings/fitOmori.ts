import { type OmoriLaw, omoriArea } from "./omoriLaw.ts";

/** The law that makes the times of clicks most likely, with how far they allow another exponent. */
export interface OmoriFit extends OmoriLaw {
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
