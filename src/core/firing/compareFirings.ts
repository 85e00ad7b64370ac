import type { Caution } from "../cautions/Caution.ts";
import { shifted } from "../curve/moved.ts";
import { failed, ok, type Result } from "../problem.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversionBands.ts";
import type { ComparedFiring, Comparison } from "./Comparison.ts";
import type { FiringReview, ZoneReview } from "./FiringReview.ts";
import { hottestZone } from "./hottestZone.ts";
import { secondsAbove } from "./zoneReview.ts";

/** From here up crystals grow and glazes soak [°C]; the comparison's own mark. */
const SOAKING_FROM_C = 1100;

/**
 * Firings side by side in the order given, each by its hottest zone, lined up at the peak.
 * @returns `firing/too-few` for fewer than two.
 */
export function compareFirings(reviews: readonly FiringReview[]): Result<Comparison> {
  if (reviews.length < 2)
    return failed({
      code: "firing/too-few",
      what: reviews.length === 0 ? "there is no firing" : "there is only one firing",
      where: reviews[0]?.reading.name ?? "the command",
      expected: "two firings or more",
      fix: "name another log as well",
    });
  return ok({
    firings: reviews.map(comparedFiring),
    cautions: onceEach(reviews.flatMap((review) => review.cautions)),
  });
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
    aligned: shifted(zone.curve, -zone.peakAtSeconds),
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
    totalSeconds: zone.lastReadingAtSeconds - (zone.curve.timesSeconds[0] as number),
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
