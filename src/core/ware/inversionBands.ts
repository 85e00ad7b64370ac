import type { Band, Direction } from "../curve/Band.ts";
import { basedOn } from "../sources/basedOn.ts";
import { printMm } from "../units/print.ts";
import { SANITARY_WALL_MM, UNKNOWN_WARE, type WareSize, WIDE_MM } from "./WareSize.ts";

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

/** Fastest rate through a band that published guidance argues for. */
export interface PublishedLimit {
  /** Positive, in the direction asked [°C/h]. */
  readonly limitCPerHour: number;
  /** Whom it is for: `ware of unknown thickness`. */
  readonly meantFor: string;
  /** Where it comes from and how weak it is, in plain words. */
  readonly basis: string;
}

/** The rule that knows no ware [°C/h]. */
const RULE_C_PER_HOUR = 50;

/** Sanitary-ware practice from 600 to 500 °C, for walls of 12 mm [°C/h]. */
const SANITARY_C_PER_HOUR = 60;

/** Thin walls are not given more than this, however thin [°C/h]; our own estimate. */
const MOST_C_PER_HOUR = 150;

const QUARTZ_RULES = [
  basedOn("textbook rule of 50 °C/h (90 °F/h) through 573 °C (1063 °F)", "fraser-1986"),
  basedOn(
    "sanitary-ware practice is 60 °C/h (108 °F/h) from 600 to 500 °C (1112 to 932 °F)",
    "fortuna-2000",
  ),
];

const CRISTOBALITE_RULES = [
  "weak: no published rate was found for this inversion",
  "50 °C/h (90 °F/h) is our own estimate for a body of unknown make with walls of 6 to 12 mm, never checked on cracked pots and good to a factor of two",
  basedOn(
    "a body rich in cristobalite may need 20 °C/h (36 °F/h), one without any is cooled at 300 °C/h (540 °F/h) and more",
    "fortuna-2000",
  ),
];

const UNKNOWN = "neither knows your ware, and thin ware often stands more";

const SCALED = basedOn(
  "scaled to this ware from 60 °C/h (108 °F/h) at 12 mm, since what a wall stands is in inverse proportion to its thickness",
  "fortuna-2000",
);

/**
 * Limit to judge a passage by while the stress in the ware is not computed.
 * Unknown walls get the rule itself. Known walls at quartz: 60 °C/h at 12 mm, in inverse proportion
 * to thickness, 150 at most, and not above the rule for pieces 300 mm wide or more. At cristobalite
 * thick walls lower the rule and thin ones do not raise it.
 * Only cooling has a limit: no rate about these inversions was found for heating, and none is made up.
 *
 * @returns null for heating and for bands other than the two inversions.
 */
export function publishedLimit(
  band: Band,
  direction: Direction,
  ware: WareSize = UNKNOWN_WARE,
): PublishedLimit | null {
  if (direction === "heating") return null;
  if (band.name === QUARTZ_BAND.name) {
    const most = (ware.widestMm ?? 0) >= WIDE_MM ? RULE_C_PER_HOUR : MOST_C_PER_HOUR;
    return limitFor(ware, { rules: QUARTZ_RULES, unknown: [UNKNOWN], most });
  }
  if (band.name === CRISTOBALITE_BAND.name)
    return limitFor(ware, { rules: CRISTOBALITE_RULES, unknown: [], most: RULE_C_PER_HOUR });
  return null;
}

function limitFor(
  ware: WareSize,
  guidance: {
    readonly rules: readonly string[];
    readonly unknown: readonly string[];
    /** Most that known walls are given [°C/h]. */
    readonly most: number;
  },
): PublishedLimit {
  const { rules, unknown, most } = guidance;
  if (ware.thickestMm === null)
    return {
      limitCPerHour: RULE_C_PER_HOUR,
      meantFor: "ware of unknown thickness",
      basis: [...rules, ...unknown].join("; "),
    };
  const scaled = (SANITARY_C_PER_HOUR * SANITARY_WALL_MM) / ware.thickestMm;
  const limitCPerHour = Math.min(scaled, most);
  return {
    limitCPerHour,
    meantFor: `ware up to ${printMm(ware.thickestMm)} thick`,
    basis: [...rules, ...(limitCPerHour === RULE_C_PER_HOUR ? [] : [SCALED])].join("; "),
  };
}
