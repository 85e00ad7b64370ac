import type { LearnedFiring } from "./LearnedKiln.ts";

/** Stretches of 100 °C in which both firings must have been powered. */
const SHARED_STRETCHES = 2;

/** How hard two firings pulled in one stretch of temperature that both share. */
interface SharedPull {
  readonly lowC: number;
  readonly highC: number;
  /** Power over heat capacity [K/s]. */
  readonly newerKPerSecond: number;
  readonly olderKPerSecond: number;
}

/** Pulls of two firings at equal temperatures, coldest first; null when they share too few stretches. */
export function sharedPulls(
  newer: LearnedFiring,
  older: LearnedFiring,
): readonly SharedPull[] | null {
  const shared = newer.pulls.flatMap(({ lowC, highC, pullKPerSecond }) => {
    const other = older.pulls.find((pull) => pull.lowC === lowC);
    return other
      ? [{ lowC, highC, newerKPerSecond: pullKPerSecond, olderKPerSecond: other.pullKPerSecond }]
      : [];
  });
  return shared.length < SHARED_STRETCHES ? null : shared;
}
