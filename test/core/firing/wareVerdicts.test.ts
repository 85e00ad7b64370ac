import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Curve, makeCurve, offsetBy } from "../../../src/core/curve/Curve.ts";
import { lossKPerSecond } from "../../../src/core/kiln/LearnedKiln.ts";
import { problemText } from "../../../src/core/problem.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { type FiringInput, reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { parseSchedule } from "../../../src/core/schedule/scheduleFile.ts";
import { firing, readingOf } from "../../support/firings.ts";
import { valued } from "../../support/schedules.ts";
import { demoLog } from "../../support/watching.ts";

function reviewed(input: Partial<FiringInput> & Pick<FiringInput, "reading">) {
  const result = reviewFiring({ record: null, plan: null, ...input });
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

/** What a review makes of the cooling of the ware: topic and severity of all but notes. */
function objections(input: Parameters<typeof reviewed>[0]) {
  return reviewed(input)
    .findings.filter(
      ({ topic, severity }) => /^(cooling|opening)/.test(topic) && severity !== "note",
    )
    .map(({ topic, severity }) => `${severity}: ${topic}`);
}

/** A loaded 180 L kiln as it falls by itself: 79 °C/h at 573 °C, 28 °C/h at 226 °C. */
const LOADED_180_L = { conductionPerSecond: 3.7e-5, radiationM2KPerJ: 4.2e-8 };

/** Up to 1200 °C, then down by itself, `conduction` and `radiation` times as fast as that kiln. */
function naturalFall(conduction: number, radiation: number): Curve {
  const cooling = {
    conductionPerSecond: conduction * LOADED_180_L.conductionPerSecond,
    radiationM2KPerJ: radiation * LOADED_180_L.radiationM2KPerJ,
  };
  const [times, temps]: [number[], number[]] = [[0], [20]];
  for (let [tempC, seconds] = [1200, 9 * 3600]; tempC > 70; seconds += 60) {
    times.push(seconds);
    temps.push(tempC);
    for (let step = 0; step < 6; step++) tempC -= 10 * lossKPerSecond(cooling, tempC, 20);
  }
  return makeCurve(times, temps);
}

describe("a kiln that falls by itself, its ware not known", () => {
  it("is told off for nothing, from half as fast as a loaded 180 L kiln to four times", () => {
    const times = fc.double({ min: Math.log(0.5), max: Math.log(4), noNaN: true });
    fc.assert(
      fc.property(times, times, (conduction, radiation) => {
        const kiln = naturalFall(Math.exp(conduction), Math.exp(radiation));
        expect(objections({ reading: readingOf({ kiln }) })).toEqual([]);
      }),
      {
        numRuns: 15,
        examples: [
          [Math.log(0.5), Math.log(0.5)],
          [Math.log(4), Math.log(4)],
        ],
      },
    );
  });

  it("is told off all the same when the lid comes off hot", () => {
    const whole = naturalFall(1, 1);
    const open = whole.tempsC.findIndex((tempC, i) => i > 10 && tempC < 320);
    const [at, from] = [whole.timesSeconds[open] as number, whole.tempsC[open] as number];
    const later = Array.from({ length: 120 }, (_, i) => i + 1);
    const kiln = makeCurve(
      [...whole.timesSeconds.slice(0, open + 1), ...later.map((i) => at + 60 * i)],
      [
        ...whole.tempsC.slice(0, open + 1),
        ...later.map((i) => 25 + (from - 25) * Math.exp(-i / 25)),
      ],
    );
    expect(objections({ reading: readingOf({ kiln }) })).toEqual(["warning: opening"]);
  });
});

describe("the shipped logs", () => {
  const names = readdirSync("logs")
    .filter((name) => name.endsWith(".csv"))
    .map((name) => name.replace(/\.csv$/, ""));
  // Its story: hurried for a market, the lid off at 280 °C; every other kiln fell shut.
  const HURRIED = "2026-05-23-b";

  it("are nine", () => expect(names).toHaveLength(9));

  it.each(names)("%s is told off without its record only if its lid came off hot", (name) => {
    const expected = name === HURRIED ? ["warning: opening"] : [];
    expect(objections({ reading: demoLog(name) })).toEqual(expected);
  });

  it.each(names)("%s is told off with its record only if it was hurried", (name) => {
    const record = valued(parseRecord(readFileSync(`logs/${name}.yaml`, "utf8"), `${name}.yaml`));
    const found = objections({ reading: demoLog(name), record });
    if (name === HURRIED) {
      expect(found).toContain("warning: opening");
      expect(found.join()).toContain("cooling through quartz");
    } else expect(found).toEqual([]);
  });
});

describe("one guide for the same pots", () => {
  const WARE = "body: stoneware cone 6, wall: 9, base: 11, widest: 260";
  const plan = valued(
    parseSchedule(
      `formatVersion: 1\ntitle: t\nunit: C\nware: { ${WARE} }\nsegments:\n  - { to: 1190, rate: 120 }\n  - { to: 100, rate: free }\n`,
      "plan.yaml",
    ),
  );
  const reading = readingOf({ kiln: firing({}) });
  const guideOf = (crossings: ReturnType<typeof draftSchedule>["crossings"] | undefined) =>
    crossings?.find(({ band, direction }) => band.startsWith("quartz") && direction === "cooling")
      ?.limitCPerHour;
  const listed = (lines: string) =>
    valued(
      parseRecord(
        `formatVersion: 1\ntitle: t\nware: [{ name: plates, clay: own${lines} }]\n`,
        "r.yaml",
      ),
    );

  it("stands in the draft, in a review held against the schedule, and in one with a record", () => {
    const drafted = guideOf(draftSchedule({ schedule: plan, start: null }).crossings);
    expect(drafted).toBeGreaterThan(0);
    expect(guideOf(reviewed({ reading, plan }).zones[0]?.crossings)).toBe(drafted);
    const record = listed(`, ${WARE}`);
    expect(guideOf(reviewed({ reading, record }).zones[0]?.crossings)).toBe(drafted);
    expect(guideOf(reviewed({ reading, record, plan }).zones[0]?.crossings)).toBe(drafted);
  });

  it("takes the record before the schedule, and the schedule before the mug, and says so", () => {
    const [own] = reviewed({ reading, plan, record: listed(", wall: 5, base: 6") }).pieces;
    expect(own?.ware.geometry).toMatchObject({ wallMm: 5, baseMm: 6, footprintRadiusMm: 130 });
    expect(own?.assumed.join()).toContain("body, width taken from the schedule");
    const [mug] = reviewed({ reading, record: listed("") }).pieces;
    expect(mug?.ware.geometry).toMatchObject({ wallMm: 6, baseMm: 8, footprintRadiusMm: 42.5 });
  });
});

describe("two zones that agree", () => {
  it("give one finding with the worst of them, naming both; what differs stays apart", () => {
    const top = firing({ quartzCPerHour: 60 });
    const { findings } = reviewed({ reading: readingOf({ top, bottom: offsetBy(top, -12) }) });
    const quartz = findings.filter(({ topic }) => topic === "cooling through quartz");
    expect(quartz.map(({ zone }) => zone)).toEqual(["top and bottom"]);
  });
});
