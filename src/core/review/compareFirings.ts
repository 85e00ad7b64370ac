import type { Caution } from "../cautions/cautions.ts";
import { type Curve, shifted, temperatureAt } from "../curve/Curve.ts";
import { thinned } from "../curve/slopes.ts";
import { hottestZone, type ZoneReview } from "../firing/FiringFacts.ts";
import { secondsAbove } from "../firing/zoneReview.ts";
import { medianInPlace } from "../math/statistics.ts";
import { failed, ok, type Result } from "../problem.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversions.ts";
import type { FiringReview } from "./FiringReview.ts";

/** One firing's column in a comparison; every number from its hottest zone, named. */
export interface ComparedFiring {
  readonly title: string;
  readonly zone: string;
  /** Time 0 = the peak. */
  readonly aligned: Curve;
  readonly peakC: number;
  readonly coneLabel: string;
  readonly coneIndex: number | null;
  readonly sigmaCones: number | null;
  readonly lastHundredCPerHour: number | null;
  readonly secondsWithinFiveOfPeak: number;
  readonly secondsAbove1100C: number;
  readonly quartzCooling: {
    readonly meanCPerHour: number | null;
    readonly fastestCPerHour: number | null;
  };
  readonly cristobaliteCooling: {
    readonly meanCPerHour: number | null;
    readonly fastestCPerHour: number | null;
  };
  readonly lastReadingC: number;
  readonly totalSeconds: number;
  readonly warnings: number;
}

/** Several firings side by side, in the order given. */
export interface Comparison {
  readonly firings: readonly ComparedFiring[];
  /** From the first firing to the last; empty when they share no two zones. */
  readonly thermocoupleShifts: readonly ThermocoupleShift[];
  readonly cautions: readonly Caution[];
}

/** From here up crystals grow and glazes soak [°C]; the comparison's own mark. */
const SOAKING_FROM_C = 1100;

/** What a comparison needs of one firing: little beside its Curves. */
export interface ComparisonPart {
  /** File name of the log without its folder. */
  readonly name: string;
  /** Whether the log is in °F. */
  readonly isFahrenheit: boolean;
  readonly firing: ComparedFiring;
  /** Only needed of the first firing and the last. */
  readonly zones: readonly Pick<ZoneReview, "name" | "curve">[];
  readonly cautions: readonly Caution[];
}

/** Points of a Curve that are kept for a chart of many; more than a chart shows. */
const CHART_POINTS = 1200;

/** The part of a reviewed firing that a comparison needs, by its hottest zone; its Curve is thinned. */
export function comparisonPart(review: FiringReview): ComparisonPart {
  return {
    name: review.reading.name,
    isFahrenheit: review.reading.unit === "F",
    firing: comparedFiring(review),
    zones: review.zones.map(({ name, curve }) => ({ name, curve })),
    cautions: review.cautions,
  };
}

/**
 * Firings side by side in the order given, each by its hottest zone, lined up at the peak.
 * @param least Two, or one where its trial tiles are to be compared among themselves.
 * @returns `firing/too-few` for fewer.
 */
export function compareParts(
  parts: readonly ComparisonPart[],
  least: 1 | 2 = 2,
): Result<Comparison> {
  if (parts.length < least)
    return failed({
      code: "firing/too-few",
      what: parts.length === 0 ? "there is no firing" : "there is only one firing",
      where: parts[0]?.name ?? "the command",
      expected: "two firings or more",
      fix: "name another log as well",
    });
  return ok({
    firings: parts.map(({ firing }) => firing),
    thermocoupleShifts: thermocoupleShifts(parts[0]?.zones ?? [], parts.at(-1)?.zones ?? []),
    cautions: onceEach(parts.flatMap(({ cautions }) => cautions)),
  });
}

/** Reviewed firings side by side, as `compareParts` lays them. */
export function compareFirings(reviews: readonly FiringReview[]): Result<Comparison> {
  return compareParts(reviews.map(comparisonPart));
}

/** Each caution of any of the firings, once. */
function onceEach(cautions: readonly Caution[]): readonly Caution[] {
  return cautions.filter(
    ({ topic }, index) => cautions.findIndex((caution) => caution.topic === topic) === index,
  );
}

function comparedFiring(review: FiringReview): ComparedFiring {
  const zone = hottestZone(review.zones);
  const { position, sigmaCones, lastHundredCPerHour } = zone.heatwork;
  return {
    title: review.title,
    zone: zone.name,
    aligned: thinned(shifted(zone.curve, -zone.peakAtSeconds), CHART_POINTS),
    peakC: zone.peakC,
    coneLabel: position.label,
    coneIndex: position.index,
    sigmaCones,
    lastHundredCPerHour,
    secondsWithinFiveOfPeak: zone.secondsWithinFiveOfPeak,
    secondsAbove1100C: secondsAbove(zone.curve, SOAKING_FROM_C),
    quartzCooling: coolingRates(zone, QUARTZ_BAND.name),
    cristobaliteCooling: coolingRates(zone, CRISTOBALITE_BAND.name),
    lastReadingC: zone.lastReadingC,
    totalSeconds: zone.lastReadingAtSeconds - zone.curve.timesSeconds[0]!,
    warnings: review.findings.filter((finding) => finding.severity === "warning").length,
  };
}

function coolingRates(zone: ZoneReview, band: string): ComparedFiring["quartzCooling"] {
  const crossing = zone.crossings.find(
    (each) => each.band === band && each.direction === "cooling",
  );
  return {
    meanCPerHour: crossing?.meanCPerHour ?? null,
    fastestCPerHour: crossing?.fastestCPerHour ?? null,
  };
}

/** A zone that stands otherwise towards the others than in an earlier firing. */
interface ThermocoupleShift {
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
