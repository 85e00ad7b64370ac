import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/core/problem.ts";
import { compareFirings } from "../../../src/core/review/compareFirings.ts";
import type { FiringReview } from "../../../src/core/review/FiringReview.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { firing, readingOf } from "../../support/firings.ts";

function reviewOf(given: Parameters<typeof firing>[0]): FiringReview {
  const result = reviewFiring({
    reading: readingOf({ kiln: firing(given) }),
    record: null,
    plan: null,
  });
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

describe("firings side by side", () => {
  it("are lined up at their peaks, in the order given", () => {
    const result = compareFirings([reviewOf({ peakC: 1190 }), reviewOf({ peakC: 1160 })]);
    expect(result.ok).toBe(true);
    if (!result.ok) return;
    expect(result.value.firings.map(({ peakC }) => peakC)).toEqual([1190, 1160]);
    // Both begin 8 h before the peak.
    expect(result.value.firings.map(({ aligned }) => aligned.timesSeconds[0])).toEqual([
      -28_800, -28_800,
    ]);
  });

  it("carry the time above 1100 °C and the rates through the inversions", () => {
    const result = compareFirings([reviewOf({ quartzCPerHour: 60 }), reviewOf({})]);
    if (!result.ok) throw new Error("not compared");
    const [first, second] = result.value.firings;
    // Up from 1100 to 1190 at 55 °C/h, down again at 200 °C/h.
    expect(first?.secondsAbove1100C).toBeCloseTo((90 / 55 + 90 / 200) * 3600, 3);
    expect(first?.quartzCooling.meanCPerHour).toBeCloseTo(-60, 6);
    expect(second?.quartzCooling.meanCPerHour).toBeCloseTo(-40, 6);
    expect(second?.totalSeconds).toBeGreaterThan(20 * 3600);
  });

  it("must be two at least", () => {
    const result = compareFirings([reviewOf({})]);
    expect(result.ok ? "" : problemText(result.problems[0] as never)).toBe(
      [
        "firing.csv: there is only one firing",
        "  expected  two firings or more",
        "  try       name another log as well     (firing/too-few)",
      ].join("\n"),
    );
  });
});
