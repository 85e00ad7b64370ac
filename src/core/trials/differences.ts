import type { FactName, FiringFact, FiringInNumbers } from "./FiringStudy.ts";

/**
 * `differs` beyond two standard deviations, `perhaps` between one and two (it may be no difference),
 * `same` within one: no difference can be told.
 */
type Verdict = "differs" | "perhaps" | "same";

/** One fact of two firings. */
export interface FactDifference {
  readonly name: FactName;
  readonly label: string;
  readonly kind: FiringFact["kind"];
  readonly cause: FiringFact["cause"];
  /** Places of the two firings in the order given; `low` has the smaller value. */
  readonly low: number;
  readonly high: number;
  readonly lowValue: number;
  readonly highValue: number;
  /** At least 0. */
  readonly apart: number;
  /** One standard deviation of `apart`. */
  readonly sigma: number;
  readonly verdict: Verdict;
}

/** Share of thermocouple and place that stays when two firings share both; our own estimate. */
const SAME_INSTRUMENT = 0.3;

/** Every fact of every two firings, the farthest beyond its uncertainty first. */
export function differencesOf(firings: readonly FiringInNumbers[]): readonly FactDifference[] {
  return firings
    .flatMap((first, i) =>
      firings.slice(i + 1).flatMap((second, k) => between({ first, second, i, j: i + 1 + k })),
    )
    .toSorted(bySize);
}

/** Every fact of each firing and of the one at this place, in the order of the firings. */
export function differencesFrom(
  firings: readonly FiringInNumbers[],
  base: number,
): readonly FactDifference[] {
  const first = firings[base];
  if (first === undefined) return [];
  return firings.flatMap((second, j) => (j === base ? [] : between({ first, second, i: base, j })));
}

/** Above so many firings only the ends of each fact are compared; every two would fill a book. */
const EVERY_TWO_UP_TO = 30;

/**
 * What a report compares: every two firings, or of more than 30, for each fact, the one with the
 * smallest value and the one with the largest.
 */
export function reportedDifferences(
  firings: readonly FiringInNumbers[],
): readonly FactDifference[] {
  if (firings.length <= EVERY_TWO_UP_TO) return differencesOf(firings);
  const names = new Set(firings.flatMap(({ facts }) => facts.map(({ name }) => name)));
  return [...names]
    .flatMap((name) => {
      const valued = firings.flatMap((firing, at) => {
        const fact = firing.facts.find((each) => each.name === name);
        return fact === undefined || fact.value === null
          ? []
          : [{ at, value: fact.value, firing: { ...firing, facts: [fact] } }];
      });
      const sorted = valued.toSorted((a, b) => a.value - b.value);
      const [low, high] = [sorted[0], sorted.at(-1)];
      if (low === undefined || high === undefined || low === high) return [];
      return between({ first: low.firing, second: high.firing, i: low.at, j: high.at });
    })
    .toSorted(bySize);
}

function bySize(a: FactDifference, b: FactDifference): number {
  return b.apart / b.sigma - a.apart / a.sigma;
}

/** For every fact the two firings that lie farthest apart, the farthest beyond uncertainty first. */
export function widestDifferences(
  differences: readonly FactDifference[],
): readonly FactDifference[] {
  return differences.filter(
    ({ name }, index) => differences.findIndex((other) => other.name === name) === index,
  );
}

function between(pair: {
  readonly first: FiringInNumbers;
  readonly second: FiringInNumbers;
  readonly i: number;
  readonly j: number;
}): readonly FactDifference[] {
  const { first, second, i, j } = pair;
  const isShared = first.instrument !== null && first.instrument === second.instrument;
  return first.facts.flatMap((one) => {
    const other = second.facts.find(({ name }) => name === one.name);
    if (other === undefined || one.value === null || other.value === null) return [];
    const sensor =
      Math.hypot(one.sensorSigma, other.sensorSigma) * (isShared ? SAME_INSTRUMENT : 1);
    const sigma = Math.max(1e-9, Math.hypot(one.sigma, other.sigma, sensor));
    const apart = Math.abs(one.value - other.value);
    const isRising = one.value <= other.value;
    return [
      {
        name: one.name,
        label: one.label,
        kind: one.kind,
        cause: one.cause,
        low: isRising ? i : j,
        high: isRising ? j : i,
        lowValue: Math.min(one.value, other.value),
        highValue: Math.max(one.value, other.value),
        apart,
        sigma,
        verdict: verdictOf(apart / sigma),
      },
    ];
  });
}

function verdictOf(score: number): Verdict {
  if (score > 2) return "differs";
  return score > 1 ? "perhaps" : "same";
}
