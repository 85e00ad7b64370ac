import { describe, expect, it } from "vitest";
import {
  CRISTOBALITE_BAND,
  publishedLimit,
  QUARTZ_BAND,
} from "../../../src/core/ware/inversionBands.ts";

describe("publishedLimit", () => {
  it("allows 50 °C/h when cooling through quartz, and names the textbook and the practice", () => {
    const limit = publishedLimit(QUARTZ_BAND, "cooling");
    expect(limit?.limitCPerHour).toBe(50);
    expect(limit?.basis).toContain("H. Fraser, 1986, at second hand");
    expect(limit?.basis).toMatch(
      /60 °C\/h .* from 600 to 500 °C .* \(D\. Fortuna, 2000, at second hand\)/,
    );
  });

  it("says in so many words that nothing was published for cristobalite", () => {
    const limit = publishedLimit(CRISTOBALITE_BAND, "cooling");
    expect(limit?.basis).toMatch(/^weak: no published rate was found/);
    expect(limit?.basis).toContain("factor of two");
  });

  it("makes up no limit for heating", () => {
    expect(publishedLimit(QUARTZ_BAND, "heating")).toBeNull();
    expect(publishedLimit(CRISTOBALITE_BAND, "heating")).toBeNull();
  });

  it("has no limit for a band that is not an inversion", () => {
    const water = { name: "water", lowC: 90, highC: 120 };
    expect(publishedLimit(water, "cooling")).toBeNull();
  });
});
