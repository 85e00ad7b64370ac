import { passagesOf } from "../curve/bandPassage.ts";
import type { Curve } from "../curve/Curve.ts";
import type { Band, BandPassage, Direction } from "../curve/edgeTimes.ts";
import type { Severity } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import { printRate, printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Body } from "./Ware.ts";

/** Where quartz changes: 573 °C in a pure crystal, smeared in a body, with room for lag. */
export const QUARTZ_BAND: Band = {
  name: "quartz inversion",
  lowC: 520,
  highC: 620,
};

/**
 * Where the cristobalite of a clay body changes: about 226 °C, published between 200 and 280 °C. In a
 * body that has none it is a stretch like any other, and keeps the name only in documents.
 */
export const CRISTOBALITE_BAND: Band = {
  name: "cristobalite inversion",
  lowC: 170,
  highC: 280,
};

/** Less of it than this, by volume, and a body is not spoken of as having cristobalite; our own mark. */
const SOME_CRISTOBALITE = 0.02;

/** Whether a body has enough cristobalite for its change at about 226 °C to matter. */
export function hasCristobalite(body: Body): boolean {
  return body.cristobaliteFraction.value >= SOME_CRISTOBALITE;
}

/** What a band is called where people read, for ware with cristobalite or without. */
export function bandSaid(
  band: string,
  ware: { readonly isCristobalitic: boolean; readonly unit: TemperatureUnit },
): string {
  if (band !== CRISTOBALITE_BAND.name || ware.isCristobalitic) return band;
  return ware.unit === "F" ? "below 570 °F" : "below 300 °C";
}

/** What is published about rates, to be read beside what is computed. */
export function publishedRates(unit: TemperatureUnit): readonly string[] {
  const at = (tempC: number) => printTemperature(tempC, unit);
  const rate = (rateCPerHour: number) => printRate(rateCPerHour, unit);
  return [
    basedOn(`A textbook has ${rate(50)} through ${at(573)}`, "fraser-1986"),
    basedOn(
      `sanitary ware with walls of 12 mm is cooled at ${rate(60)} from ${at(600)} to ${at(500)}, and at ${rate(300)} and more below`,
      "fortuna-2000",
    ),
    `neither knows your ware; ${unit === "F" ? "below 570 °F" : "below 300 °C"} no rate was found that is published for pots`,
  ];
}

/** A passage judged by the stress in the piece that bears it least. */
export interface Crossing extends BandPassage {
  /** The guide: rate at which the stress is half the strength [°C/h, positive]; null where none applies. */
  readonly limitCPerHour: number | null;
  /** The part of the band in which the guide is to be kept [°C]; null with it. */
  readonly limitFromC: number | null;
  readonly limitToC: number | null;
  /** Where the guide comes from, in words. */
  readonly limitBasis: string | null;
  /** Whom the guide is for: `an ordinary stoneware mug`; null where none applies. */
  readonly limitMeantFor: string | null;
  /** Whether that piece's body has cristobalite, so that the lower band is one. */
  readonly isCristobalitic: boolean;
  /** By the stress; null where it is not judged: on the way up, part of it unseen, the lid off. */
  readonly severity: Severity | null;
  /** The kiln was opened in it or before, at this [°C]: from there the rate is not the ware's; else null. */
  readonly openedC: number | null;
  /** Computed stress over strength at its worst; null until the ware is computed. */
  readonly strainRatio: number | null;
  /** Its 10 and 90 % points by what the body may be; null with it. */
  readonly strainRatioLow: number | null;
  readonly strainRatioHigh: number | null;
}

const BOTH_WAYS: readonly Direction[] = ["heating", "cooling"];

/**
 * How a Curve went through both inversions, not judged yet.
 * Direction by direction, in the order in which the bands are met: heating goes through
 * cristobalite first, cooling through quartz first. A band that was never entered is listed too,
 * with `measured` saying `no`.
 */
export function crossingsOf(
  curve: Curve,
  options: { readonly directions?: readonly Direction[] } = {},
): readonly Crossing[] {
  const passage = passagesOf(curve);
  return (options.directions ?? BOTH_WAYS).flatMap((direction) =>
    bandsMet(direction).map((band) => ({
      ...passage(band, direction),
      limitCPerHour: null,
      limitFromC: null,
      limitToC: null,
      limitBasis: null,
      limitMeantFor: null,
      isCristobalitic: false,
      severity: null,
      openedC: null,
      strainRatio: null,
      strainRatioLow: null,
      strainRatioHigh: null,
    })),
  );
}

function bandsMet(direction: Direction) {
  return direction === "heating"
    ? [CRISTOBALITE_BAND, QUARTZ_BAND]
    : [QUARTZ_BAND, CRISTOBALITE_BAND];
}
