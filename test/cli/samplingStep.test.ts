import { describe, expect, it } from "vitest";
import { fileWith, inFull } from "../support/undunted.ts";

/** A log of forty rows with a step [s], rising by a kelvin each row, and a remark of another kind in its last line. */
function logOf(step: number): string {
  const rows = Array.from({ length: 40 }, (_, i) => `${i * step};${200 + i}`);
  return ["Time (s);Kiln (°C)", ...rows, "the end"].join("\n");
}

describe("undunted review", () => {
  it.each([
    [2.5, "2.5 s"],
    [45, "45 s"],
    [60, "1 min"],
    [90, "90 s"],
    [250, "4 min 10 s"],
    [900, "15 min"],
  ])("says of a reading every %s s that it is one every %s", (step, said) => {
    const { out } = inFull(["review", fileWith("steps.csv", logOf(step))]);
    const text = out.replaceAll(/\s+/g, " ");
    expect(text).toContain(`One reading every ${said}.`);
    expect(text).toContain("1 of 41 rows of the log gave no reading and was left out.");
  });
});
