/** The law by which clicks thin out: rate in proportion to 1/(t + c)^p. */
export interface OmoriLaw {
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
