import { describe, expect, it } from "vitest";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { statementText } from "../../../src/core/findings/Finding.ts";
import { quickenedFalls } from "../../../src/core/kiln/quickenedFalls.ts";
import { problemText } from "../../../src/core/problem.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import type { FiringReview } from "../../../src/core/review/FiringReview.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { DEMO_FIRINGS } from "../../support/demo/demoFiles.ts";
import { type Fired, type FiringPlan, fire } from "../../support/demo/fire.ts";
import { type Opening, TEST_KILN_60, TOP_LOADER_180 } from "../../support/demo/kiln.ts";
import { readingOf } from "../../support/firings.ts";

const LID_OFF: Opening = { wattPerK: 60, m2: 0.1 };
const PROPPED: Opening = { wattPerK: 8, m2: 0.01 };

const plain = DEMO_FIRINGS[0]?.plan as FiringPlan;
const slow = DEMO_FIRINGS[3]?.plan as FiringPlan;

function fired(change: Partial<FiringPlan>, base: FiringPlan = plain): Fired {
  return fire({ ...base, stopBelowC: 45, stopAfterHours: 70, opened: [], ...change });
}

function curveOf({ samples }: Fired, probe = 0) {
  return makeCurve(
    samples.map(({ seconds }) => seconds),
    samples.map(({ readingsC }) => readingsC[probe] as number),
  );
}

const blind = { output: null, setPoint: null };

describe("a fall that quickens", () => {
  it.each([
    ["180 litres, every minute", TOP_LOADER_180, 60, 0.3],
    ["180 litres, every 5 minutes", TOP_LOADER_180, 300, 0.3],
    ["180 litres, every 10 minutes, noisy", TOP_LOADER_180, 600, 1],
    ["a test kiln, every 30 s, noisy", TEST_KILN_60, 30, 1.5],
    ["a test kiln, every 5 minutes", TEST_KILN_60, 300, 0.3],
  ])("places a lid that is taken off at 130 °C: %s", (_, build, intervalSeconds, noiseK) => {
    const probes = plain.probes.map((probe) => ({ ...probe, noiseK }));
    const opened = [{ belowC: 130, opening: LID_OFF }];
    const { quickened } = quickenedFalls(
      curveOf(fired({ build, intervalSeconds, probes, opened })),
      blind,
    );
    expect(quickened.length).toBeGreaterThan(0);
    const [first] = quickened;
    expect(Math.abs((first?.tempC ?? 0) - 130)).toBeLessThan(Math.max(6, first?.plusMinusK ?? 0));
    expect(first?.afterCPerHour).toBeGreaterThan(3 * (first?.ownCPerHour ?? 0));
  });

  it("sees a lid that is only propped", () => {
    const opened = [{ belowC: 180, opening: PROPPED }];
    const { quickened } = quickenedFalls(curveOf(fired({ opened })), blind);
    expect(Math.abs((quickened[0]?.tempC ?? 0) - 180)).toBeLessThan(12);
  });

  it.each([
    ["falls by itself", plain],
    ["ends a slow segment and falls by itself from there", slow],
  ])("is not seen in a kiln that %s, with and without noise", (_, base) => {
    for (const build of [TOP_LOADER_180, TEST_KILN_60])
      for (const noiseK of [0, 0.5, 1.5])
        for (const intervalSeconds of [30, 120, 600]) {
          const probes = base.probes.map((probe) => ({ ...probe, noiseK }));
          const curve = curveOf(fired({ build, probes, intervalSeconds }, base));
          const { quickened, calmDownToC } = quickenedFalls(curve, blind);
          expect(quickened).toEqual([]);
          expect(calmDownToC).toBeLessThan(60);
        }
  });

  it("is not told where the log ends with the opening", () => {
    const opened = [{ belowC: 130, opening: LID_OFF }];
    const curve = curveOf(fired({ opened, stopBelowC: 128 }));
    expect(quickenedFalls(curve, blind).quickened).toEqual([]);
  });
});

describe("a review", () => {
  function reviewed(given: Fired, lines = ""): FiringReview {
    const record = parseRecord(`formatVersion: 1\ntitle: Mugs\n${lines}`, "firing.yaml");
    if (!record.ok) throw new Error(record.problems.map(problemText).join("\n"));
    const zones = given.samples[0]?.readingsC.length ?? 1;
    const curves = Object.fromEntries(
      Array.from({ length: zones }, (_, probe) => [`zone ${probe + 1}`, curveOf(given, probe)]),
    );
    const result = reviewFiring({
      reading: readingOf(curves),
      record: lines === "" ? null : record.value,
      plan: null,
    });
    if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
    return result.value;
  }
  const openings = (review: FiringReview) =>
    review.findings.filter(({ topic }) => topic.startsWith("opening"));
  const off = (belowC: number) => fired({ opened: [{ belowC, opening: LID_OFF }] });

  it("says when and how hot the lid seems to have been opened, by the log alone", () => {
    const review = reviewed(off(121));
    expect(review.openingInLog?.how).toBe("opened");
    expect(statementText(openings(review)[0] as never, "F")).toMatch(
      /^The lid seems to have been opened at 2[345]\d °F, (Sun|Mon) \d\d:\d\d: from there it fell at \d+ °F\/h, before that at \d+ °F\/h\./,
    );
  });

  it("says nothing of an opening where the kiln only slowed down", () => {
    const review = reviewed(fired({}));
    expect(review.openingInLog).toBeNull();
    expect(openings(review)).toEqual([]);
  });

  it("says when record and log agree only once, and when they contradict each other", () => {
    const at = (lines: string, given: Fired) =>
      openings(reviewed(given, lines)).map(({ statement }) => statement);
    expect(at("unloaded: { temperature: 125 }\n", off(121))).toHaveLength(1);
    const before = at("unloaded: { temperature: 60 }\n", off(210));
    expect(before.join("\n")).toContain("The record says that the kiln was opened at {said}, but");
    expect(before.join("\n")).toContain("the log shows the lid opened at {seen}");
    const shut = at("unloaded: { temperature: 280 }\n", fired({}));
    expect(shut.join("\n")).toContain("the log goes on falling as a shut kiln does");
  });

  it("does not take for a lid what one of two thermocouples alone sees", () => {
    const both = fired({
      probes: [...plain.probes.slice(0, 1), ...plain.probes.slice(0, 1)],
      opened: [{ belowC: 150, opening: LID_OFF }],
    });
    expect(reviewed(both).openingInLog?.how).toBe("opened");
    const shut = curveOf(fired({}));
    const open = curveOf(off(150));
    const result = reviewFiring({
      reading: readingOf({ upper: open, lower: shut }),
      record: null,
      plan: null,
    });
    expect(result.ok && result.value.openingInLog?.how).not.toBe("opened");
  });
});
