import { describe, expect, it } from "vitest";
import { RUNAWAY } from "../../../src/core/findings/Finding.ts";
import { runawayFindings, standingFindings } from "../../../src/core/firing/runawayFindings.ts";
import type { LogReading } from "../../../src/core/log/reading/LogReading.ts";
import { plainPaint } from "../../../src/core/reports/Block.ts";
import { watchScreen } from "../../../src/core/reports/watchScreen.ts";
import type { FiringReview } from "../../../src/core/review/FiringReview.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import type { Schedule } from "../../../src/core/schedule/Schedule.ts";
import { DEMO_FIRINGS } from "../../support/demo/demoFiles.ts";
import { TEST_KILN_60 } from "../../support/demo/kiln.ts";
import { THIN_K, TIRED_K, TUBED_S } from "../../support/demo/probes.ts";
import { BISQUE_CONE_04, CRACKLE_TILES, SLOW_COOL_CONE_6 } from "../../support/demo/programmes.ts";
import { reviewHtml, reviewText } from "../../support/reportTexts.ts";
import { schedule, segment, valued } from "../../support/schedules.ts";
import { CLIMB, type Columns, samplesOf, strayReading, until } from "../../support/strayHeat.ts";
import { demoLog, lookAt, watchedReading } from "../../support/watching.ts";

const PLAN = schedule({
  segments: CLIMB.map(({ toC, rateCPerHour, holdMinutes = 0 }) =>
    segment(toC, rateCPerHour, holdMinutes),
  ),
});

function reviewed(reading: LogReading, plan: Schedule | null = null): FiringReview {
  const next = { log: "firing.csv", recordBeside: false, schedule: null, output: "next.yaml" };
  return valued(reviewFiring({ reading, record: null, plan, next }));
}

function alarm(reading: LogReading, plan: Schedule | null = null) {
  return runawayFindings(reading, plan)[0];
}

/** A relay that sticks at a moment [h], for four hours. */
function stuck(fromHours: number) {
  return samplesOf({ stuckRelay: { fromHours, untilHours: fromHours + 4 } });
}

const COLUMNS: readonly (readonly [string, Columns])[] = [
  ["set point and output", {}],
  ["both, blank once the programme has ended", { ended: "" }],
  ["both in °F", { unit: "F" }],
  ["a set point alone", { output: false }],
  ["an output alone", { setPoint: false }],
];

// Elements fully on heat this kiln faster than any programme, at each of these moments.
describe.each([
  ["in the first ramp", 0.5],
  ["in the second", 1.7],
  ["at 600 °C", 4],
  ["before the top", 7.2],
  ["in the hold", 7.75],
  ["after the end", 8.2],
  ["long after the end", 12],
])("a relay that sticks %s", (_, hours) => {
  const samples = stuck(hours);

  it.each(COLUMNS)("is told by %s", (_, columns) => {
    const found = alarm(strayReading(samples, columns));
    expect(found).toMatchObject({ severity: "warning" });
    expect(found?.span?.fromSeconds).toBeGreaterThan((hours - 0.1) * 3600);
    expect(found?.span?.fromSeconds).toBeLessThan((hours + 1.2) * 3600);
  });
});

describe("a relay that sticks in a log of temperatures alone", () => {
  it.each([
    ["at 600 °C", 4],
    ["before the top", 7.2],
    ["in the hold", 7.75],
    ["in the fall", 9.5],
  ])("%s is told by the schedule that it had kept to", (_, hours) => {
    const reading = strayReading(stuck(hours), { setPoint: false, output: false });
    expect(alarm(reading, PLAN)).toMatchObject({ severity: "warning" });
    expect(alarm(reading)).toBe(undefined);
  });
});

describe("how soon it is told", () => {
  it.each([
    ["in the hold", 7.75, 20],
    ["after the end", 8.2, 20],
    ["in the fall", 9.5, 12],
  ])("a relay that sticks %s", (_, hours, minutes) => {
    const live = strayReading(until(stuck(hours), hours + minutes / 60));
    expect(alarm(live)?.statement).toMatch(/^EMERGENCY: the kiln is heating by itself/);
  });

  it("through noise of 3 K", () => {
    const samples = samplesOf({
      probes: [{ ...THIN_K, noiseK: 3 }],
      stuckRelay: { fromHours: 9.5, untilHours: 12 },
    });
    expect(alarm(strayReading(until(samples, 9.5)))).toBe(undefined);
    expect(alarm(strayReading(until(samples, 10)))).toMatchObject({ severity: "warning" });
  });
});

describe("set point and output at 0 from the first row", () => {
  it("while the kiln climbs is an emergency, unless it is fired by hand", () => {
    const reading = strayReading(samplesOf({ stopAfterHours: 3 }), {
      changed: (sample) => ({ ...sample, setC: 0, output: 0 }),
    });
    expect(alarm(reading)?.statement).toContain("unless you are firing it by hand");
  });
});

describe("no alarm", () => {
  const ordinary = samplesOf();
  const byHand = samplesOf({ stuckRelay: { fromHours: 0, untilHours: 5 } });

  it.each(DEMO_FIRINGS.map(({ name }) => name))("for the demo log %s", (name) => {
    expect(alarm(demoLog(name))).toBe(undefined);
  });

  it.each(COLUMNS)("for an ordinary firing with %s", (_, columns) => {
    expect(alarm(strayReading(ordinary, columns), PLAN)).toBe(undefined);
  });

  it.each([
    ["a slow bisque", { legs: BISQUE_CONE_04, probes: [TUBED_S] }],
    ["a programmed fall", { legs: CRACKLE_TILES, probes: [TIRED_K] }],
    ["a drop and a slow fall", { legs: SLOW_COOL_CONE_6 }],
    ["a quick small kiln", { build: TEST_KILN_60 }],
    ["a worn kiln that lags behind", { elements: 0.62 }],
  ])("for %s", (_, parts) => {
    expect(alarm(strayReading(samplesOf(parts)))).toBe(undefined);
    expect(alarm(strayReading(samplesOf(parts), { setPoint: false }))).toBe(undefined);
  });

  it.each<readonly [string, Columns]>([
    [
      "a set point that is 0 for some minutes",
      { changed: (s, i) => (i % 180 < 5 ? { ...s, setC: 0 } : s) },
    ],
    [
      "an output column that is the other way round",
      { setPoint: false, changed: (s) => ({ ...s, output: 1 - s.output }) },
    ],
    ["an output that stands at 0", { setPoint: false, changed: (s) => ({ ...s, output: 0 }) }],
    ["a set point of a fan, 30 °C throughout", { changed: (s) => ({ ...s, setC: 30 }) }],
    ["an alarm set at 1280 °C", { output: false, changed: (s) => ({ ...s, setC: 1280 }) }],
  ])("for %s", (_, columns) => {
    expect(alarm(strayReading(ordinary, columns))).toBe(undefined);
  });

  it("for a kiln fired by hand, with and without a schedule beside it", () => {
    const reading = strayReading(byHand, { setPoint: false, output: false });
    expect(alarm(reading)).toBe(undefined);
    expect(alarm(reading, PLAN)).toBe(undefined);
  });

  it("for a shelf that stays hotter than the one controlled", () => {
    const samples = samplesOf({ probes: [TUBED_S, { ...TUBED_S, placeK: 35 }] });
    expect(alarm(strayReading(samples))).toBe(undefined);
  });

  it("for heat that soaks back by a few kelvin after switching off", () => {
    const held = ordinary.findIndex(({ setC }) => setC === null);
    const reading = strayReading(ordinary, {
      changed: (sample, row) => {
        const minutes = row - held;
        const soak = minutes < 0 ? 0 : 8 * (1 - Math.exp(-minutes / 6));
        const readingsC = sample.readingsC.map((tempC) =>
          minutes > 0 && minutes < 15 ? (ordinary[held]?.readingsC[0] ?? 0) + soak : tempC,
        );
        return { ...sample, readingsC };
      },
    });
    expect(alarm(reading)).toBe(undefined);
  });
});

describe("what is said of a kiln that heats by itself", () => {
  const live = strayReading(until(stuck(8.2), 9), { unit: "F" });
  const review = reviewed(live);

  it("stands first: in the text, on the HTML page and on the watch's screen", () => {
    const text = reviewText(review, { unit: "F", paint: plainPaint });
    expect(text.split("\n")[0]).toMatch(/^EMERGENCY: the kiln is heating by itself/);
    expect(text).toContain("main switch or breaker, if that is safe");
    const html = reviewHtml(review, { unit: "F" });
    expect(html.slice(html.indexOf("<main>"))).toMatch(/^<main>\s*<p class="alarm"/);
    const state = watchedReading(live);
    const screen = watchScreen(lookAt(state), {
      unit: "F",
      paint: plainPaint,
      width: 80,
      rows: 24,
    });
    expect(screen[0]).toMatch(/^EMERGENCY/);
    expect(state.findings[0]).toMatchObject({ topic: RUNAWAY, severity: "warning" });
  });

  it("never asks for it again: no draft, nothing to repeat, an electrician first", () => {
    expect(review.nextTime).toMatchObject({ command: null, schedule: null });
    const said = JSON.stringify(review.nextTime);
    expect(said).toContain("licensed electrician");
    expect(said).not.toMatch(/[Rr]epeat/);
  });

  it("is a danger that is over once the kiln has fallen", () => {
    expect(alarm(strayReading(stuck(8.2)))?.statement).toMatch(
      /^DANGER: this kiln heated by itself/,
    );
  });
});

describe("elements flat out", () => {
  const rising = until(samplesOf(), 6);
  const distrust = (reading: LogReading) => standingFindings(reading)[0];

  it("while the reading falls: do not trust it", () => {
    const slipped = strayReading(rising, {
      changed: (sample) => {
        const late = sample.seconds / 3600 - 4;
        if (late < 0) return sample;
        const readingsC = sample.readingsC.map(
          (tempC) => 300 + (tempC - 300) * Math.exp(-6 * late),
        );
        return { ...sample, readingsC, output: 1 };
      },
    });
    expect(distrust(slipped)).toMatchObject({ severity: "warning" });
    expect(distrust(slipped)?.statement).toContain("do not trust it");
  });

  it("while it stands below its set point", () => {
    const standing = strayReading(rising, {
      changed: (sample, row) =>
        (sample.readingsC[0] as number) > 600
          ? { ...sample, readingsC: [600 + (row % 3)], output: 1 }
          : sample,
    });
    expect(distrust(standing)?.advice).toContain("licensed electrician");
  });

  it.each([
    ["an ordinary firing", {}],
    ["a worn kiln that creeps to its top", { elements: 0.62 }],
    ["a quick small kiln", { build: TEST_KILN_60 }],
  ])("is no reason to distrust %s", (_, parts) => {
    expect(distrust(strayReading(samplesOf(parts)))).toBe(undefined);
  });
});
