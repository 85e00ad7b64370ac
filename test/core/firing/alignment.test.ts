import { describe, expect, it } from "vitest";
import { comparisonChart } from "../../../src/core/charts/chartsOf.ts";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { problemText } from "../../../src/core/problem.ts";
import { type Alignment, linedUp, parseAlignment } from "../../../src/core/review/alignment.ts";
import { type ComparedFiring, compareFirings } from "../../../src/core/review/compareFirings.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { readingOf } from "../../support/firings.ts";
import { comparisonText } from "../../support/reportTexts.ts";
import { valued } from "../../support/schedules.ts";

/** Up from 20 to the peak at 120 degrees an hour, down to the end at 60; a reading a minute. */
function sawtooth(peakC: number, endC: number): ComparedFiring {
  const times: number[] = [];
  const temps: number[] = [];
  for (let minute = 0; 20 + 2 * minute <= peakC; minute++) {
    times.push(60 * minute);
    temps.push(20 + 2 * minute);
  }
  for (let minute = 1; peakC - minute >= endC; minute++) {
    times.push((times.at(-1) as number) + 60);
    temps.push(peakC - minute);
  }
  const review = valued(
    reviewFiring({
      reading: readingOf({ kiln: makeCurve(times, temps) }),
      record: null,
      plan: null,
    }),
  );
  return valued(compareFirings([review, review])).firings[0] as ComparedFiring;
}

describe("where firings are laid over each other", () => {
  const firing = sawtooth(1020, 220);
  const zero = (alignment: Alignment) => linedUp(firing, alignment);

  it("is the peak, the first reading, or where they pass a temperature, by the slopes", () => {
    // 1000 degrees up at 120 an hour: the peak comes after 500 min.
    expect(zero({ at: "peak" })?.secondsFromPeak).toBe(0);
    expect(zero({ at: "start" })?.secondsFromPeak).toBe(-500 * 60);
    // 520 °C lies 250 min before the peak on the way up, 500 min after it on the way down.
    expect(zero({ at: "rising", tempC: 520 })?.secondsFromPeak).toBeCloseTo(-250 * 60, 6);
    expect(zero({ at: "falling", tempC: 520 })?.secondsFromPeak).toBeCloseTo(500 * 60, 6);
    expect(zero({ at: "falling", tempC: 520 })?.secondsFromStart).toBeCloseTo(1000 * 60, 6);
  });

  it("puts time 0 of the Curve there", () => {
    const curve = zero({ at: "falling", tempC: 520 })?.curve;
    expect(curve?.timesSeconds[0]).toBeCloseTo(-1000 * 60, 6);
  });

  it("is nowhere for a firing that never comes there, which is said and not drawn", () => {
    const cut = sawtooth(1020, 600);
    const low = sawtooth(500, 220);
    const alignment = { at: "falling", tempC: 520 } as const;
    expect(linedUp(cut, alignment)).toBeNull();
    expect(linedUp(low, { at: "rising", tempC: 520 })).toBeNull();
    const comparison = { firings: [firing, cut, low], thermocoupleShifts: [], cautions: [] };
    const text = comparisonText(comparison, { unit: "C", paint: (words) => words, alignment });
    const flat = text.replaceAll(/\s+/g, " ");
    expect(flat).toContain("firing 1: 8 h 20 min after its peak, 16 h 40 min after the first");
    expect(flat).toContain("firing 2: not laid over the others: its log ends at 600 °C");
    expect(flat).toContain("firing 3: not laid over the others: its peak, 500 °C, is below 520 °C");
    const drawn = JSON.stringify(comparisonChart(comparison, alignment)?.({ unit: "C" }));
    expect(drawn).toContain("Time from 520 °C, falling (h)");
    expect(comparisonChart({ ...comparison, firings: [cut, low] }, alignment)).toBeNull();
  });
});

describe("parseAlignment", () => {
  const read = (text: string) => parseAlignment(text, { unit: "C", where: "--align" });

  it("takes the peak, the start, and a temperature with its way, down when none is said", () => {
    expect(valued(read("Peak"))).toEqual({ at: "peak" });
    expect(valued(read("start"))).toEqual({ at: "start" });
    expect(valued(read("600C"))).toEqual({ at: "falling", tempC: 600 });
    expect(valued(read("rising 1112 F"))).toEqual({ at: "rising", tempC: 600 });
    expect(valued(read("600 falling"))).toEqual({ at: "falling", tempC: 600 });
  });

  it.each(["", "hot", "600 down", "rising", "2000C", "-1"])("refuses %j", (text) => {
    const result = read(text);
    expect(result.ok ? "" : result.problems[0]?.code).toBe("firing/not-an-alignment");
  });

  it("says what can be written", () => {
    const result = read("hot");
    expect(result.ok ? "" : problemText(result.problems[0] as never)).toBe(
      [
        "--align: firings cannot be lined up at “hot”",
        "  expected  peak, start, or a temperature from 0 to 1500 °C",
        '  try       write 600C, or "600C rising" for the way up     (firing/not-an-alignment)',
      ].join("\n"),
    );
  });
});
