import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseRecordFile } from "../../src/core/record/parseRecord.ts";
import { recordYaml } from "../../src/core/record/recordYaml.ts";
import { parseTemperature } from "../../src/core/units/temperature.ts";
import { recordOf } from "../../src/page/review/changeReview.ts";
import {
  GROUPS,
  type RecordField,
  typedValue,
  withValue,
} from "../../src/page/review/recordFields.ts";
import { EMPTY_REVIEW } from "../../src/page/state/reviewState.ts";
import { valued } from "../support/schedules.ts";

const READ = GROUPS.flatMap(({ fields }) => fields).find(
  ({ key }) => key === "temperature",
) as RecordField;

const UNITS = ["C", "F"] as const;

/** What a reader of the saved record takes a temperature for that was typed on the page [°C]. */
function readBack(text: string, page: "C" | "F", file: "C" | "F"): number {
  const record = { ...recordOf({ unit: page, review: EMPTY_REVIEW.work }), unit: file };
  const value = typedValue(READ, text, { page, file });
  const written = recordYaml(withValue(record, ["unloaded", "temperature"], value), null);
  const saved = valued(parseRecordFile(written, "a.yaml"));
  const temperature = saved.unloaded?.temperature;
  return valued(parseTemperature(temperature ?? "", { unit: saved.unit, where: "a.yaml" }));
}

describe("a temperature typed into the record", () => {
  it("is in the page's unit, whatever unit the file has", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 2400 }),
        fc.constantFrom(...UNITS),
        fc.constantFrom(...UNITS),
        (value, page, file) => {
          const tempC = page === "C" ? value : (value - 32) / 1.8;
          expect(readBack(String(value), page, file)).toBeCloseTo(tempC, 9);
          expect(readBack(`${value} °`, page, file)).toBeCloseTo(tempC, 9);
        },
      ),
    );
  });

  it("is what it says where it has a unit of its own", () => {
    expect(readBack("350", "F", "F")).toBeCloseTo(176.67, 2);
    expect(readBack("2,165", "F", "C")).toBeCloseTo(1185, 9);
    expect(readBack("180 C", "F", "F")).toBe(180);
    expect(readBack("453.15 K", "F", "C")).toBeCloseTo(180, 9);
  });

  it("begins a new record in the page's unit", () => {
    for (const unit of UNITS) expect(recordOf({ unit, review: EMPTY_REVIEW.work }).unit).toBe(unit);
  });
});
