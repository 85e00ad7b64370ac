import type { Band, Direction } from "../curve/Band.ts";
import { basedOn } from "../sources/basedOn.ts";

/** Where quartz changes: 573 °C in a pure crystal, smeared in a body, with room for lag. */
export const QUARTZ_BAND: Band = {
  name: "quartz inversion",
  lowC: 520,
  highC: 620,
};

/** Where the cristobalite of a clay body changes: about 226 °C, published between 200 and 280 °C. */
export const CRISTOBALITE_BAND: Band = {
  name: "cristobalite inversion",
  lowC: 170,
  highC: 280,
};

/** Fastest rate through a band that can be argued for without knowing the ware. */
export interface PublishedLimit {
  /** Positive, in the direction asked [°C/h]. */
  readonly limitCPerHour: number;
  /** Where it comes from and how weak it is, in plain words. */
  readonly basis: string;
}

const QUARTZ_COOLING: PublishedLimit = {
  limitCPerHour: 50,
  basis: [
    basedOn("textbook rule of 50 °C/h (90 °F/h) through 573 °C (1063 °F)", "fraser-1986"),
    basedOn(
      "sanitary-ware practice is 60 °C/h (108 °F/h) from 600 to 500 °C (1112 to 932 °F)",
      "fortuna-2000",
    ),
    "neither knows your ware, and thin ware often stands more",
  ].join("; "),
};

const CRISTOBALITE_COOLING: PublishedLimit = {
  limitCPerHour: 50,
  basis: [
    "weak: no published rate was found for this inversion",
    "50 °C/h (90 °F/h) is our own estimate for a body of unknown make with walls of 6 to 12 mm, never checked on cracked pots and good to a factor of two",
    basedOn(
      "a body rich in cristobalite may need 20 °C/h (36 °F/h), one without any is cooled at 300 °C/h (540 °F/h) and more",
      "fortuna-2000",
    ),
  ].join("; "),
};

/**
 * Limit to judge a passage by while the ware is unknown.
 * Only cooling has one: no rate about these inversions was found for heating, and none is made up.
 *
 * @returns null for heating and for bands other than the two inversions.
 */
export function publishedLimit(band: Band, direction: Direction): PublishedLimit | null {
  if (direction === "heating") return null;
  if (band.name === QUARTZ_BAND.name) return QUARTZ_COOLING;
  if (band.name === CRISTOBALITE_BAND.name) return CRISTOBALITE_COOLING;
  return null;
}
