import { describe, expect, it } from "vitest";
import type { Curve } from "../../../src/core/curve/Curve.ts";
import { problemText } from "../../../src/core/problem.ts";
import type { FiringRecord } from "../../../src/core/record/FiringRecord.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import {
  differencesOf,
  type FactDifference,
  reportedDifferences,
  widestDifferences,
} from "../../../src/core/trials/differences.ts";
import type { FactName, FiringInNumbers } from "../../../src/core/trials/FiringStudy.ts";
import { firingFacts, type NotedFiring } from "../../../src/core/trials/firingFacts.ts";
import { corners, sampled } from "../../support/curves.ts";
import { firing, readingOf } from "../../support/firings.ts";

function recordOf(yaml: string): FiringRecord {
  const record = parseRecord(`formatVersion: 1\ntitle: a firing\n${yaml}`, "a.yaml");
  if (!record.ok) throw new Error(record.problems.map(problemText).join("\n"));
  return record.value;
}

function noted(curve: Curve, yaml: string | null = null): NotedFiring {
  const record = yaml === null ? null : recordOf(yaml);
  const review = reviewFiring({ reading: readingOf({ kiln: curve }), record, plan: null });
  if (!review.ok) throw new Error(review.problems.map(problemText).join("\n"));
  return { review: review.value, record };
}

function valueOfFact(firings: readonly FiringInNumbers[], name: FactName, at = 0): number | null {
  return firings[at]?.facts.find((fact) => fact.name === name)?.value ?? null;
}

function differenceIn(
  name: FactName,
  ...curves: readonly NotedFiring[]
): FactDifference | undefined {
  return differencesOf(firingFacts(curves)).find((difference) => difference.name === name);
}

const SAME_KILN = 'kiln: Old Hilda\nthermocouple: { type: "K" }\n';

describe("a firing in numbers", () => {
  it("holds peak, soak and rates as the Curve was made", () => {
    const facts = firingFacts([noted(firing({ quartzCPerHour: 60, cristobaliteCPerHour: 30 }))]);
    expect(valueOfFact(facts, "peak")).toBe(1190);
    // Up from 1100 at 55 °C/h, down to it at 200 °C/h.
    expect(valueOfFact(facts, "above1100")).toBeCloseTo((90 / 55 + 90 / 200) * 3600, 0);
    expect(valueOfFact(facts, "quartzMean")).toBeCloseTo(60, 6);
    expect(valueOfFact(facts, "cristobaliteMean")).toBeCloseTo(30, 6);
    expect(valueOfFact(facts, "coolingHold")).toBe(0);
    expect(valueOfFact(facts, "openedAt")).toBeNull();
  });

  it("counts a hold on the way down, and not the one at the peak", () => {
    const curve = sampled(
      corners([0, 20], [8, 1190], [8.5, 1190], [10.5, 950], [12, 950], [30, 60]),
      60,
    );
    const held = valueOfFact(firingFacts([noted(curve)]), "coolingHold");
    // An hour and a half at 950 °C, its ends found to some minutes.
    expect(held).toBeGreaterThan(80 * 60);
    expect(held).toBeLessThan(100 * 60);
  });

  it("takes opening from the record, after the peak", () => {
    const facts = firingFacts([
      noted(firing({}), 'unloaded: { at: "+20:00", temperature: 90 C }\n'),
    ]);
    expect(valueOfFact(facts, "openedAt")).toBe(90);
    // The peak is 8 h after the start.
    expect(valueOfFact(facts, "openedAfter")).toBe(12 * 3600);
  });

  it("is uncertain by the thermocouple: 10 °C at the peak and what that does to the soak", () => {
    const [facts] = firingFacts([noted(firing({}))]);
    const of = (name: FactName) => facts?.facts.find((fact) => fact.name === name);
    expect(of("peak")?.sensorSigma).toBe(10);
    // 10 °C more or less at 1100 °C are 10/55 h on the way up and 10/200 h on the way down.
    expect(of("above1100")?.sensorSigma).toBeCloseTo((10 / 55 + 10 / 200) * 3600, -1);
  });
});

describe("what differed between two firings", () => {
  it("is what lies farther apart than twice its uncertainty", () => {
    const slow = noted(firing({ quartzCPerHour: 40 }));
    const fast = noted(firing({ quartzCPerHour: 80 }));
    const difference = differenceIn("quartzMean", slow, fast);
    expect(difference).toMatchObject({ low: 0, high: 1, verdict: "differs" });
    expect(difference?.apart).toBeCloseTo(40, 6);
    expect(differenceIn("peak", slow, fast)?.verdict).toBe("same");
  });

  it("may be none when two thermocouples read 20 °C apart, each good to 10 °C", () => {
    const difference = differenceIn("peak", noted(firing({})), noted(firing({ peakC: 1210 })));
    // √(10² + 10² + 1² + 1²) = 14.2
    expect(difference?.sigma).toBeCloseTo(14.2, 1);
    expect(difference?.verdict).toBe("perhaps");
  });

  it("is surer when both records name one kiln and one type of thermocouple", () => {
    const difference = differenceIn(
      "peak",
      noted(firing({}), SAME_KILN),
      noted(firing({ peakC: 1210 }), SAME_KILN),
    );
    // Three tenths of 14.1 °C, and 1 °C of noise each.
    expect(difference?.sigma).toBeCloseTo(Math.hypot(4.24, 1, 1), 1);
    expect(difference?.verdict).toBe("differs");
  });

  it("comes largest first, against its uncertainty", () => {
    const differences = differencesOf(
      firingFacts([
        noted(firing({ quartzCPerHour: 30 })),
        noted(firing({ quartzCPerHour: 90, peakC: 1200 })),
      ]),
    );
    const scores = differences.map(({ apart, sigma }) => apart / sigma);
    expect(scores).toEqual(scores.toSorted((a, b) => b - a));
    expect(differences[0]?.name).toMatch(/^quartz/);
  });

  it("names for each fact the two that lie farthest apart", () => {
    const firings = [40, 90, 60].map((quartzCPerHour) => noted(firing({ quartzCPerHour })));
    const widest = widestDifferences(differencesOf(firingFacts(firings)));
    expect(widest.find(({ name }) => name === "quartzMean")).toMatchObject({ low: 0, high: 1 });
    expect(new Set(widest.map(({ name }) => name)).size).toBe(widest.length);
  });

  it("is told by the ends alone when there are more firings than anybody reads in pairs", () => {
    const [facts] = firingFacts([noted(firing({}))]) as [FiringInNumbers];
    const many = Array.from({ length: 40 }, (_, at) => ({
      ...facts,
      facts: facts.facts.map((fact) =>
        fact.name === "peak" ? { ...fact, value: 1150 + ((7 * at) % 40) } : fact,
      ),
    }));
    const peaks = reportedDifferences(many).filter(({ name }) => name === "peak");
    expect(peaks).toHaveLength(1);
    expect(peaks[0]).toMatchObject({ lowValue: 1150, highValue: 1189 });
  });
});
