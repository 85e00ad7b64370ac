import { describe, expect, it } from "vitest";
import {
  bandSaid,
  CRISTOBALITE_BAND,
  hasCristobalite,
  publishedRates,
  QUARTZ_BAND,
} from "../../../src/core/ware/inversions.ts";
import { listedBody } from "./sampleWare.ts";

describe("the lower band", () => {
  it.each([
    ["stoneware cone 6", false],
    ["porcelain cone 10", false],
    ["unknown body", false],
    ["stoneware cone 10", true],
    ["stoneware cone 10 cristobalitic", true],
  ])("is spoken of as cristobalite for %s: %s", (words, expected) => {
    const isCristobalitic = hasCristobalite(listedBody(words));
    expect(isCristobalitic).toBe(expected);
    const said = bandSaid(CRISTOBALITE_BAND.name, { isCristobalitic, unit: "C" });
    expect(said).toBe(expected ? "cristobalite inversion" : "below 300 °C");
  });

  it("is named in the reader's unit, and quartz always by its name", () => {
    const plain = { isCristobalitic: false, unit: "F" } as const;
    expect(bandSaid(CRISTOBALITE_BAND.name, plain)).toBe("below 570 °F");
    expect(bandSaid(QUARTZ_BAND.name, plain)).toBe("quartz inversion");
  });
});

describe("published rates", () => {
  it("name the textbook and the practice, both at second hand", () => {
    const said = publishedRates("C").join("; ");
    expect(said).toMatch(/50 °C\/h .* 573 °C .*H\. Fraser, 1986, at second hand/);
    expect(said).toMatch(/60\s°C\/h from 600\s°C to 500\s°C.*D\. Fortuna, 2000, at second hand/);
  });
});
