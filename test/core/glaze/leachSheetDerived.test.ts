import { describe, expect, it } from "vitest";
import type { LeachedWare } from "../../../src/core/cautions/leachLimits.ts";
import { leachSheet } from "../../../src/core/glaze/glazeFindings.ts";

const CUP: LeachedWare = { use: "cup", depthMm: 90, litres: 0.3 };

describe("derived: a cup of 0.3 L that gave off 3.5 mg/L of lead and 0.2 mg/L of cadmium", () => {
  const found = (value: number, unit: "mg/L" | "mg/dm²" = "mg/L", isBelow = false) => ({
    value,
    unit,
    isBelow,
  });
  const stands = (test: Partial<Parameters<typeof leachSheet>[0]>) =>
    leachSheet({ ware: CUP, lead: null, cadmium: null, source: "a laboratory", ...test }).map(
      ({ limit, stands: how }) => `${limit.law} ${limit.metal} ${how}`,
    );

  it("lies under both European limits and over the lead limit of the United States", () => {
    expect(stands({ lead: found(3.5), cadmium: found(0.2) })).toEqual([
      "EU lead under",
      "EU cadmium under",
      "US lead over",
      "US cadmium under",
    ]);
  });

  it("is not compared in another unit, nor where less than a greater amount was found", () => {
    expect(stands({ lead: found(3.5, "mg/dm²") })).toEqual(["EU lead open", "US lead open"]);
    expect(stands({ lead: found(1, "mg/L", true) })).toEqual(["EU lead under", "US lead open"]);
  });
});
