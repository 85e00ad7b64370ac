import { z } from "zod";

/** Longest name, and longest source of a property [characters]. */
const LONGEST_NAME = 100;
const LONGEST_SOURCE = 1000;

function property(description: string) {
  return z
    .union([
      z.number(),
      z.strictObject({
        value: z.number().describe("what is taken"),
        low: z
          .number()
          .optional()
          .describe("one in ten would be lower; in proportion to the base body when left out"),
        high: z
          .number()
          .optional()
          .describe("one in ten would be higher; in proportion to the base body when left out"),
        source: z
          .string()
          .min(1)
          .max(LONGEST_SOURCE)
          .optional()
          .describe("where it comes from, in words; yours when left out"),
      }),
    ])
    .optional()
    .describe(`${description}; a number, or value with low, high and source`);
}

/** A body of one's own as files write it: a body of the list, and what is different about it. */
export const OwnBody = z.strictObject({
  base: z
    .string()
    .min(1)
    .max(LONGEST_NAME)
    .optional()
    .describe("body of the list to start from, in words: stoneware cone 6; unknown when left out"),
  name: z.string().min(1).max(LONGEST_NAME).optional().describe("what to call it"),
  densityKgPerM3: property("density of the fired body [kg/m³]"),
  heatCapacityJPerKgK: property("heat capacity at 573 °C [J/kgK]"),
  conductivityWPerMK: property("heat conducted [W/mK]"),
  youngGPa: property("stiffness, Young's modulus [GPa]"),
  ruptureMPa: property("strength in bending, modulus of rupture [MPa]"),
  quartzFraction: property("free quartz as a share of volume, 0 to 1"),
  cristobaliteFraction: property("cristobalite as a share of volume, 0 to 1"),
  matrixExpansionPerK: property(
    "linear expansion of the body without its quartz and cristobalite, per kelvin: 4.5e-6",
  ),
});

/** A body as firing records and schedules write it: words for one of the list, or one's own. */
export const GivenBodyFile = z.union([z.string().min(1).max(LONGEST_NAME), OwnBody]);

/** What other people call a property, in lower case, and its key in files. */
export const BODY_WORDS: readonly (readonly [string, string])[] = [
  ["density", "densityKgPerM3"],
  ["strength", "ruptureMPa"],
  ["mor", "ruptureMPa"],
  ["stiffness", "youngGPa"],
  ["quartz", "quartzFraction"],
  ["cristobalite", "cristobaliteFraction"],
  ["expansion", "matrixExpansionPerK"],
];
