import { describe, expect, it } from "vitest";
import type { PhotoMeasurement } from "../../../src/core/photo/PhotoMeasurement.ts";
import { trialLines } from "../../../src/core/photo/trialEntry.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { parallelLines, photographed, type Segment, voronoi } from "../../support/mosaics.ts";
import { INTERCEPT_PX, measured, SIZE } from "./measuredMosaic.ts";

function measurementOf(segments: readonly Segment[]): PhotoMeasurement {
  const result = measured(photographed(segments, { ...SIZE, lineWidth: 4 }));
  if (!result.ok) throw new Error(result.problems[0]?.what);
  return result.value;
}

/** What a record reads from these lines, pasted into a trial. */
function readBack(measurement: PhotoMeasurement) {
  const trial = trialLines(measurement).map((line) => `    ${line}\n`);
  const text = `formatVersion: 1\ntitle: a firing\ntrials:\n  - piece: A1\n    clay: white\n    glaze: ice\n    coat: 0.5 mm\n    glazedSides: one\n${trial.join("")}`;
  const record = parseRecord(text, "a.yaml");
  if (!record.ok) throw new Error(record.problems[0]?.what);
  return record.value.trials[0];
}

/** Lengths are written with two digits at least, so they are off by half a step of the last: 5 %. */
function expectWritten(read: number | null, exact: number): void {
  expect(Math.abs((read ?? 0) / exact - 1)).toBeLessThan(0.05);
}

describe("the lines for the record", () => {
  it.each([
    ["a net", voronoi(SIZE, (Math.PI / 4 / INTERCEPT_PX) ** 2, 3), "net"],
    ["parallel cracks", parallelLines(SIZE, (INTERCEPT_PX * 2) / Math.PI, 0.6), "parallel"],
  ])("read back to the spacing, its interval and its pattern: %s", (_, segments, pattern) => {
    const measurement = measurementOf(segments);
    const spacing = readBack(measurement)?.spacing;
    if (spacing?.kind !== "measured" || measurement.cracks === null) throw new Error("no spacing");
    const { pitchMm, pitchIntervalMm } = measurement.cracks;
    expect(spacing).toMatchObject({ from: "photo", pattern });
    expectWritten(spacing.pitchMm, pitchMm);
    expectWritten(spacing.lowMm, pitchIntervalMm.low);
    expectWritten(spacing.highMm, pitchIntervalMm.high);
  });

  it("read back as uncracked where no crack was found", () => {
    const trial = readBack(measurementOf([]));
    expect(trial?.cracked).toBe("none");
    expect(trial?.crackSpacingMm).toBeNull();
  });
});
