import type { Band } from "../curve/Band.ts";
import { basedOn } from "../sources/basedOn.ts";
import { printRate, printTemperature } from "../units/print.ts";
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
