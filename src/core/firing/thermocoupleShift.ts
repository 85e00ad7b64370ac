import type { Curve } from "../curve/Curve.ts";
import { medianInPlace } from "../curve/median.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";

/** A zone that stands otherwise towards the others than in an earlier firing. */
export interface ThermocoupleShift {
  readonly zone: string;
  /** How much more it reads than the mean of the others, compared with before [K]; falls are negative. */
  readonly shiftK: number;
  /** Lowest and highest mean temperature at which both firings were compared [°C]. */
  readonly fromC: number;
  readonly toC: number;
}

/** A zone's name and Curve. */
interface ZoneCurve {
  readonly name: string;
  readonly curve: Curve;
}

/** Mean temperatures of the zones at which firings are compared on the way up [°C]; own choice. */
const LEVELS_C = [400, 500, 600, 700, 800, 900, 1000, 1100, 1200] as const;
const FEWEST_LEVELS = 3;

/**
 * How the zones of two firings stand towards one another, as change from the earlier to the later:
 * each zone against the mean of the others, at equal mean temperature on the way up, the middle of
 * the levels that both reached. Only zones that both firings name; only differences, since no log
 * shows which thermocouple is right.
 *
 * @returns One entry a zone, of two zones only the first; empty with fewer than two in common or
 * fewer than three levels.
 */
export function thermocoupleShifts(
  earlier: readonly ZoneCurve[],
  later: readonly ZoneCurve[],
): readonly ThermocoupleShift[] {
  const names = earlier
    .map(({ name }) => name)
    .filter((name) => later.some((zone) => zone.name === name));
  if (names.length < 2) return [];
  const before = standings(named(earlier, names));
  const after = standings(named(later, names));
  const shared = LEVELS_C.filter((level) => before.has(level) && after.has(level));
  if (shared.length < FEWEST_LEVELS) return [];
  const told = names.length === 2 ? names.slice(0, 1) : names;
  return told.map((zone, place) => ({
    zone,
    shiftK: medianInPlace(
      shared.map(
        (level) => (after.get(level)?.[place] as number) - (before.get(level)?.[place] as number),
      ),
    ),
    fromC: shared[0]!,
    toC: shared.at(-1)!,
  }));
}

function named(zones: readonly ZoneCurve[], names: readonly string[]): readonly Curve[] {
  return names.map((name) => (zones.find((zone) => zone.name === name) as ZoneCurve).curve);
}

/** By level, each zone less the mean of the others [K], where the mean first passes the level. */
function standings(curves: readonly Curve[]): ReadonlyMap<number, readonly number[]> {
  const found = new Map<number, readonly number[]>();
  let next = 0;
  for (const seconds of curves[0]!.timesSeconds) {
    const temps = curves.map((curve) => temperatureAt(curve, seconds));
    if (temps.some((tempC) => tempC === null)) continue;
    const known = temps as readonly number[];
    const mean = known.reduce((sum, tempC) => sum + tempC, 0) / known.length;
    for (; next < LEVELS_C.length && mean >= LEVELS_C[next]!; next++) {
      const others = known.length - 1;
      const apart = known.map((tempC) => tempC - (mean * known.length - tempC) / others);
      found.set(LEVELS_C[next]!, apart);
    }
  }
  return found;
}
