import type { Curve } from "../curve/Curve.ts";
import { crossingTimes, type Direction } from "../curve/edgeTimes.ts";
import { hottestZone, type ZoneReview } from "../firing/FiringFacts.ts";
import { type PlacedUnloading, placedUnloading } from "../firing/placedMoments.ts";
import { secondsAbove } from "../firing/zoneReview.ts";
import type { FiringRecord } from "../record/FiringRecord.ts";
import type { FiringReview } from "../review/FiringReview.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversions.ts";
import type { FactName, FiringCause, FiringFact, FiringInNumbers } from "./FiringStudy.ts";

/** A firing that was reviewed, with what a person noted beside it. */
export interface NotedFiring {
  readonly review: FiringReview;
  readonly record: FiringRecord | null;
}

/** One sigma of thermocouple and place in the kiln [K]: as the cone model takes it. */
const SENSOR_K = 10;

/** One sigma of one reading against its neighbours [K]; our own estimate. */
const NOISE_K = 1;

/** One sigma of the gain of a thermocouple over one inversion, as a share of a rate; our own estimate. */
const GAIN_SHARE = 0.02;

/** From here up crystals grow and glazes soak [°C]. */
const SOAKING_FROM_C = 1100;

/** A hold counts as one on the way down from this far below the peak [K]. */
const BELOW_PEAK_K = 20;

/** Ends of a hold are found to this [s], one sigma: half of the shortest that is told apart. */
const HOLD_END_SECONDS = 4 * 60;

/** One sigma of a time that a person wrote down [s]; our own estimate. */
const NOTED_SECONDS = 5 * 60;

/** Cool enough to unload [°C]. */
const COOL_C = 100;

/**
 * Each firing in numbers with their uncertainty, from its hottest thermocouple and its record.
 * Heatwork is held against one cone for all: the one nearest to what they reached on average.
 */
export function firingFacts(firings: readonly NotedFiring[]): readonly FiringInNumbers[] {
  const zones = firings.map(({ review }) => hottestZone(review.zones));
  const cone = commonCone(zones);
  return firings.map(({ review, record }, at) => ({
    title: review.title,
    record: record?.name ?? null,
    instrument: instrumentOf(record),
    facts: factsOf({ review, record }, zones[at]!, cone),
  }));
}

function instrumentOf(record: FiringRecord | null): string | null {
  const type = record?.thermocouple?.type ?? null;
  return record === null || record.kiln === null || type === null
    ? null
    : `${record.kiln}, type ${type}`;
}

/** The cone that most firings came near to; null when none can be placed in one series. */
function commonCone(zones: readonly ZoneReview[]): string | null {
  const indices = zones.flatMap(({ heatwork }) => heatwork.position.index ?? []);
  const series = new Set(zones.map(({ heatwork }) => heatwork.series));
  if (indices.length === 0 || series.size > 1) return null;
  const margins = new Map<string, number[]>();
  for (const { heatwork } of zones)
    for (const { cone, marginK } of heatwork.cones)
      margins.set(cone, [...(margins.get(cone) ?? []), Math.abs(marginK)]);
  const summed = [...margins].map(([cone, list]) => ({ cone, sum: list.reduce((a, b) => a + b) }));
  return summed.toSorted((a, b) => a.sum - b.sum)[0]?.cone ?? null;
}

interface Reading {
  readonly value: number | null;
  readonly sigma: number;
  readonly sensorSigma: number;
}

const UNKNOWN: Reading = { value: null, sigma: 0, sensorSigma: 0 };

interface Told {
  readonly label: string;
  readonly kind: FiringFact["kind"];
  readonly cause: FiringCause | null;
}

function factsOf(
  { review, record }: NotedFiring,
  zone: ZoneReview,
  cone: string | null,
): readonly FiringFact[] {
  const { curve, peakAtSeconds: peakAt } = zone;
  const unloading = placedUnloading(review.reading, zone, record);
  const opened = unloading.ok ? unloading.value : null;
  const fact = (name: FactName, told: Told, reading: Reading): FiringFact => ({
    name,
    ...told,
    ...reading,
  });
  const rate = { kind: "rate" } as const;
  const time = { kind: "duration" } as const;
  return [
    fact("cone", { label: "heat reached", kind: "cones", cause: "heat" }, coneOf(zone)),
    ...(cone === null
      ? []
      : [
          fact(
            "heatwork",
            { label: `heatwork past cone ${cone} down`, kind: "difference", cause: "heat" },
            marginOf(zone, cone),
          ),
        ]),
    fact(
      "peak",
      { label: "peak", kind: "temperature", cause: "heat" },
      { value: zone.peakC, sigma: NOISE_K, sensorSigma: SENSOR_K },
    ),
    fact("above1100", { label: "above {1100}", ...time, cause: "heat" }, soakingOf(review, zone)),
    fact(
      "quartzHeatingMean",
      { label: "quartz, heating: mean", ...rate, cause: null },
      meanOf(zone, QUARTZ_BAND.name, "heating"),
    ),
    fact(
      "quartzMean",
      { label: "quartz, cooling: mean", ...rate, cause: "quartz" },
      meanOf(zone, QUARTZ_BAND.name, "cooling"),
    ),
    fact(
      "quartzFastest",
      { label: "quartz, cooling: fastest", ...rate, cause: "quartz" },
      fastestOf(review, zone, QUARTZ_BAND.name),
    ),
    fact(
      "cristobaliteMean",
      { label: "cooling below {280}: mean", ...rate, cause: "cristobalite" },
      meanOf(zone, CRISTOBALITE_BAND.name, "cooling"),
    ),
    fact(
      "cristobaliteFastest",
      { label: "cooling below {280}: fastest", ...rate, cause: "cristobalite" },
      fastestOf(review, zone, CRISTOBALITE_BAND.name),
    ),
    fact(
      "coolingHold",
      { label: "held on the way down", ...time, cause: "coolingHold" },
      heldCoolingOf(zone),
    ),
    fact(
      "openedAt",
      { label: "opened at", kind: "temperature", cause: "opening" },
      opened === null ? UNKNOWN : { value: opened.tempC, sigma: NOISE_K, sensorSigma: SENSOR_K },
    ),
    fact(
      "openedAfter",
      { label: "opened, after the peak", ...time, cause: "opening" },
      openedAfterOf(opened, peakAt),
    ),
    fact("to100", { label: "peak to {100}", ...time, cause: null }, coolOf(curve, peakAt)),
  ];
}

function coneOf({ heatwork }: ZoneReview): Reading {
  const { sigmaCones, modelSigmaCones: model, position } = heatwork;
  if (sigmaCones === null || model === null) return UNKNOWN;
  return {
    value: position.index,
    sigma: model,
    sensorSigma: Math.sqrt(Math.max(0, sigmaCones ** 2 - model ** 2)),
  };
}

function marginOf({ heatwork }: ZoneReview, cone: string): Reading {
  const state = heatwork.cones.find((each) => each.cone === cone);
  if (state === undefined || heatwork.position.index === null) return UNKNOWN;
  return { value: state.marginK, sigma: state.marginSigmaK, sensorSigma: SENSOR_K };
}

/** Time above 1100 °C; what the thermocouple adds is how the time changes with the threshold. */
function soakingOf({ reading }: FiringReview, { curve }: ZoneReview): Reading {
  const [more, value, less] = [-SENSOR_K, 0, SENSOR_K].map((by) =>
    secondsAbove(curve, SOAKING_FROM_C + by),
  ) as [number, number, number];
  return {
    value,
    sigma: (reading.intervalSeconds || 60) / Math.sqrt(6),
    sensorSigma: Math.abs(more - less) / 2,
  };
}

function crossing(zone: ZoneReview, band: string, direction: Direction) {
  return zone.crossings.find((each) => each.band === band && each.direction === direction);
}

/** The mean rate: two edges, each read to the noise, and the gain of the thermocouple. */
function meanOf(zone: ZoneReview, band: string, direction: Direction): Reading {
  const found = crossing(zone, band, direction);
  const mean = found?.meanCPerHour ?? null;
  if (found === undefined || mean === null) return UNKNOWN;
  const edges = (Math.SQRT2 * NOISE_K) / Math.abs(found.toC - found.fromC);
  return { value: Math.abs(mean), sigma: Math.abs(mean) * edges, sensorSigma: gain(mean) };
}

/** The fastest rate: a line through the noise of its window has this slope error. */
function fastestOf({ reading }: FiringReview, zone: ZoneReview, band: string): Reading {
  const found = crossing(zone, band, "cooling");
  const fastest = found?.fastestCPerHour ?? null;
  if (!found || fastest === null || found.windowMinutes === null) return UNKNOWN;
  const hours = found.windowMinutes / 60;
  const readings = Math.max(2, (hours * 3600) / (reading.intervalSeconds || 60));
  return {
    value: Math.abs(fastest),
    sigma: (NOISE_K * Math.sqrt(12 / readings)) / hours,
    sensorSigma: gain(fastest),
  };
}

function gain(rateCPerHour: number): number {
  return GAIN_SHARE * Math.abs(rateCPerHour);
}

function heldCoolingOf({ segments, peakC, peakAtSeconds, lastReadingC }: ZoneReview): Reading {
  if (lastReadingC > peakC - BELOW_PEAK_K) return UNKNOWN;
  const holds = segments.filter(
    ({ kind, startSeconds, fromC }) =>
      kind === "hold" &&
      startSeconds > peakAtSeconds &&
      fromC < peakC - BELOW_PEAK_K &&
      fromC > COOL_C,
  );
  const value = holds.reduce((sum, each) => sum + each.endSeconds - each.startSeconds, 0);
  return {
    value,
    sigma: HOLD_END_SECONDS * Math.sqrt(2 * Math.max(1, holds.length)),
    sensorSigma: 0,
  };
}

function openedAfterOf(opened: PlacedUnloading | null, peakAt: number): Reading {
  if (opened?.atSeconds == null) return UNKNOWN;
  return { value: opened.atSeconds - peakAt, sigma: NOTED_SECONDS, sensorSigma: 0 };
}

function coolOf(curve: Curve, peakAt: number): Reading {
  const at = (tempC: number) =>
    crossingTimes(curve, tempC).findLast(
      ({ seconds, direction }) => direction === "cooling" && seconds > peakAt,
    )?.seconds ?? null;
  const there = at(COOL_C);
  const warmer = at(COOL_C + SENSOR_K);
  if (there === null || warmer === null) return UNKNOWN;
  const perNoise = (there - warmer) / SENSOR_K;
  return { value: there - peakAt, sigma: perNoise * NOISE_K, sensorSigma: there - warmer };
}
