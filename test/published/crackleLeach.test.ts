import { describe, expect, it } from "vitest";
import { type LeachedWare, leachLimits } from "../../src/core/cautions/leachLimits.ts";
import { cited } from "../../src/core/sources/bibliography.ts";

/** Limits as `lead 4 mg/L`, by law. */
function printed(ware: LeachedWare, law: "EU" | "US"): readonly string[] {
  return leachLimits(ware)
    .filter((limit) => limit.law === law)
    .map(({ metal, most, unit }) => `${metal} ${most} ${unit}`);
}

const CUP: LeachedWare = { use: "cup", depthMm: 90, litres: 0.3 };
const PLATE: LeachedWare = { use: "dish", depthMm: 20, litres: 0.4 };

describe(`limits of ${cited("eu-84-500")}`, () => {
  it.each([
    ["a plate 20 mm deep", PLATE, ["lead 0.8 mg/dm²", "cadmium 0.07 mg/dm²"]],
    [
      "a dish 25 mm deep, still flat",
      { ...PLATE, depthMm: 25 },
      ["lead 0.8 mg/dm²", "cadmium 0.07 mg/dm²"],
    ],
    ["a bowl 26 mm deep", { ...PLATE, depthMm: 26 }, ["lead 4 mg/L", "cadmium 0.3 mg/L"]],
    ["a cup of 0.3 L", CUP, ["lead 4 mg/L", "cadmium 0.3 mg/L"]],
    [
      "a pot to cook in",
      { ...CUP, use: "cooking" as const },
      ["lead 1.5 mg/L", "cadmium 0.1 mg/L"],
    ],
    [
      "a jar of 3.5 L",
      { use: "dish" as const, depthMm: 250, litres: 3.5 },
      ["lead 1.5 mg/L", "cadmium 0.1 mg/L"],
    ],
  ])("%s", (_, ware, limits) => {
    expect(printed(ware, "EU")).toEqual(limits);
  });
});

describe(`limits of the United States (lead: ${cited("us-food-code-lead")}; cadmium: ${cited("us-cpg-cadmium")})`, () => {
  it.each([
    ["a plate 20 mm deep", PLATE, ["lead 3 mg/L", "cadmium 0.5 mg/L"]],
    ["a cup of 0.3 L", CUP, ["lead 0.5 mg/L", "cadmium 0.5 mg/L"]],
    [
      "a bowl of 1.0 L",
      { use: "dish" as const, depthMm: 80, litres: 1 },
      ["lead 2 mg/L", "cadmium 0.5 mg/L"],
    ],
    [
      "a bowl of 1.1 L",
      { use: "dish" as const, depthMm: 80, litres: 1.1 },
      ["lead 1 mg/L", "cadmium 0.25 mg/L"],
    ],
  ])("%s", (_, ware, limits) => {
    expect(printed(ware, "US")).toEqual(limits);
  });
});
