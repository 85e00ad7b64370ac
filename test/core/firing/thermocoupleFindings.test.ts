import { describe, expect, it } from "vitest";
import { type Curve, makeCurve } from "../../../src/core/curve/Curve.ts";
import { type Finding, statementText } from "../../../src/core/findings/Finding.ts";
import { problemText } from "../../../src/core/problem.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import type { FiringReview } from "../../../src/core/review/FiringReview.ts";
import { type FiringInput, reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { shownC, type WrongType } from "../../../src/core/thermocouple/emf.ts";
import { corners, sampled } from "../../support/curves.ts";
import { firing, readingOf } from "../../support/firings.ts";
import { PLAN } from "../../support/samples/plan.ts";

function record(lines: string) {
  const parsed = parseRecord(`formatVersion: 1\ntitle: Tiles\n${lines}`, "firing.yaml");
  if (!parsed.ok) throw new Error(parsed.problems.map(problemText).join("\n"));
  return parsed.value;
}

function review(
  curves: Readonly<Record<string, Curve>>,
  rest: Partial<FiringInput> = {},
): FiringReview {
  const result = reviewFiring({ reading: readingOf(curves), record: null, plan: null, ...rest });
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

function about(from: FiringReview, topic: string): readonly Finding[] {
  return from.findings.filter((each) => each.topic === topic);
}

function said(from: FiringReview, topic: string): string {
  return about(from, topic)
    .map((finding) => statementText(finding, "C"))
    .join("\n");
}

/** A Curve as an instrument set to another type shows it, terminals at 25 °C. */
function misread(curve: Curve, wrong: Omit<WrongType, "coldJunctionC">): Curve {
  return makeCurve(
    curve.timesSeconds,
    curve.tempsC.map((tempC) => shownC(tempC, { ...wrong, coldJunctionC: 25 }) as number),
  );
}

describe("a wrong thermocouple type", () => {
  const real = firing({});

  it("S wire at an instrument set to K: the peak of some 300 °C is asked about, with the true 1190 °C and its cone", () => {
    const log = review({ kiln: misread(real, { wire: "S", setTo: "K" }) });
    const [finding] = about(log, "wrong thermocouple type?");
    expect(finding?.severity).toBe("caution");
    expect(finding?.evidence.find(({ name }) => name === "S read as K")?.value).toBeCloseTo(
      1190,
      3,
    );
    const cone = review({ kiln: real }).zones[0]?.heatwork.position.label as string;
    const text = said(log, "wrong thermocouple type?");
    expect(text).toContain(`set to K would mean a peak of 1190 °C, ${cone}`);
    expect(text).toContain("this takes the terminals to be at 25 °C");
    expect(text).toMatch(/\?/);
  });

  it("names only pairs that the type in the record allows", () => {
    const log = review(
      { kiln: misread(real, { wire: "S", setTo: "K" }) },
      { record: record("thermocouple: { type: S }") },
    );
    const text = said(log, "wrong thermocouple type?");
    expect(text).toContain("Type S wire at an instrument set to K");
    expect(text).not.toContain("Type R");
    expect(text).not.toContain("type R");
  });

  it.each([
    ["a firing that reads true", real],
    ["one that stops while it is hot", sampled(corners([0, 20], [5, 300], [6, 290]), 60)],
    ["a quick drying at 300 °C", sampled(corners([0, 20], [1, 300], [8, 30]), 60)],
  ])("says nothing of %s", (_, curve) => {
    expect(about(review({ kiln: curve }), "wrong thermocouple type?")).toEqual([]);
  });

  it("R wire read as S lies 8 % above its plan throughout, and is explained by that pair", () => {
    const log = review({ kiln: misread(real, { wire: "R", setTo: "S" }) }, { plan: PLAN });
    const text = said(log, "wrong thermocouple type?");
    expect(text).toMatch(/reads [789] % above its plan throughout/);
    expect(text).toContain("Type R wire at an instrument set to S would mean a peak of 1190 °C");
  });

  it("says nothing of a firing that is 3 % off its plan, nor of one that only peaks too low", () => {
    const low = sampled(corners([0, 20], [6, 1080], [8, 1100], [20, 100]), 60);
    for (const curve of [firing({ peakC: 1225 }), low])
      expect(about(review({ kiln: curve }, { plan: PLAN }), "wrong thermocouple type?")).toEqual(
        [],
      );
  });
});

describe("the wire", () => {
  const at1222 = firing({ peakC: 1222 });

  it("type K of no known class: 9 °C either way at 1222 °C (0.75 %), IEC ending at 1200 °C, the class assumed and said", () => {
    const text = said(
      review({ kiln: at1222 }, { record: record("thermocouple: { type: K }") }),
      "new-wire limits",
    );
    expect(text).toBe(
      "New wire of type K, standard, may be off by up to 9 °C either way at the peak of 1222 °C; the record names no class, and standard is assumed. The limits of IEC 60584-1 end at 1200 °C already.",
    );
  });

  it("type S special: 1 °C (0.1 %), and nothing is assumed", () => {
    const text = said(
      review({ kiln: at1222 }, { record: record("thermocouple: { type: S, class: special }") }),
      "new-wire limits",
    );
    expect(text).toBe(
      "New wire of type S, special, may be off by up to 1 °C either way at the peak of 1222 °C.",
    );
  });

  it.each([
    ["{ type: K }", 1285, "above 1260 °C, where the new-wire limits of type K, standard, end"],
    [
      "{ type: K, class: 2 }",
      1222,
      "above 1200 °C, where the new-wire limits of type K, class 2, end",
    ],
    ["{ type: K, class: 1 }", 1060, "above 1000 °C"],
  ])("%s at %i °C is out of its range", (thermocouple, peakC, words) => {
    const log = review(
      { kiln: firing({ peakC }) },
      { record: record(`thermocouple: ${thermocouple}`) },
    );
    expect(about(log, "wire out of its range")[0]?.severity).toBe("caution");
    expect(said(log, "wire out of its range")).toContain(words);
  });

  it("is not spoken of when no type was said", () => {
    const log = review({ kiln: at1222 });
    expect(about(log, "new-wire limits")).toEqual([]);
    expect(about(log, "wire out of its range")).toEqual([]);
  });

  it("a better wire makes the cone surer, never as sure as the model alone; K of standard class changes nothing", () => {
    const sigma = (lines: string | null) =>
      review({ kiln: at1222 }, { record: lines === null ? null : record(lines) }).zones[0]
        ?.heatwork;
    const unknown = sigma(null)?.sigmaCones as number;
    const standardK = sigma("thermocouple: { type: K }")?.sigmaCones as number;
    const specialS = sigma("thermocouple: { type: S, class: special }");
    expect(Math.abs(standardK / unknown - 1)).toBeLessThan(0.01);
    // √(12² − (9.2/√3)² + (1.2/√3)²) = 10.8 K in place of 12 K.
    expect((specialS?.sigmaCones as number) / unknown).toBeLessThan(0.92);
    expect((specialS?.sigmaCones as number) / unknown).toBeGreaterThan(0.87);
    expect(specialS?.sigmaCones as number).toBeGreaterThan(specialS?.modelSigmaCones as number);
  });
});

describe("long holds and sheaths", () => {
  const held = sampled(corners([0, 20], [3, 450], [5, 450], [9, 1050], [20, 60]), 60);

  it("type K held 2 h at 450 °C may be off by 1.7 %, 8 °C; type S is not spoken of", () => {
    const text = said(
      review({ kiln: held }, { record: record("thermocouple: { type: K }") }),
      "type K in a long hold",
    );
    expect(text).toContain("type K may have come to read up to 8 °C off");
    expect(
      about(
        review({ kiln: held }, { record: record("thermocouple: { type: S }") }),
        "type K in a long hold",
      ),
    ).toEqual([]);
  });

  it("without a long hold between 200 and 600 °C nothing is said of it", () => {
    const log = review({ kiln: firing({}) }, { record: record("thermocouple: { type: K }") });
    expect(about(log, "type K in a long hold")).toEqual([]);
  });

  it("a sheath of 3 mm follows 80 s / 2.303 = 35 s late, which at 150 °C/h is 1.4 °C", () => {
    const curve = sampled(corners([0, 20], [8, 1220], [20, 100]), 60);
    const log = review({ kiln: curve }, { record: record("thermocouple: { sheath: 3 mm }") });
    expect(said(log, "sheath")).toContain(
      "follows moving air about 35 s late, less where it glows: where the kiln climbed at 150 °C/h the reading was about 1 °C behind",
    );
    expect(
      about(log, "sheath")[0]?.evidence.find(({ name }) => name === "behind")?.value,
    ).toBeCloseTo(1.447, 2);
  });

  it("a thicker sheath is said to lag at least as much, a thin one not at all", () => {
    const curve = sampled(corners([0, 20], [8, 1220], [20, 100]), 60);
    const of = (mm: number) =>
      said(
        review({ kiln: curve }, { record: record(`thermocouple: { sheath: ${mm} mm }`) }),
        "sheath",
      );
    expect(of(6)).toContain("more than 35 s late");
    expect(of(1)).toBe("");
  });
});

describe("the readings", () => {
  it("that fall to −120 °C as the kiln climbs are asked about as swapped leads", () => {
    const real = firing({});
    const swapped = makeCurve(
      real.timesSeconds,
      real.tempsC.map((tempC) => Math.max(20 - 0.4 * (tempC - 20), -120)),
    );
    const log = review({ top: real, bottom: swapped });
    expect(about(log, "thermocouple reversed").map(({ zone }) => zone)).toEqual(["bottom"]);
    expect(said(log, "thermocouple reversed")).toContain("falls from 20 °C to −120 °C");
    expect(about(review({ kiln: real }), "thermocouple reversed")).toEqual([]);
  });

  it("that jump 5 °C either way are noted with the number; quiet ones are not", () => {
    const real = firing({});
    const noisy = makeCurve(
      real.timesSeconds,
      // A sum of three incommensurable waves: 5 °C root mean square, unlike from one reading to the next.
      real.tempsC.map(
        (tempC, i) =>
          tempC +
          4.08 * (Math.sin(2.1 * i * i) + Math.sin(1.7 * i * i + 1) + Math.sin(2.9 * i * i + 2)),
      ),
    );
    const text = said(review({ kiln: noisy }), "readings that jump about");
    const scatter = Number(/about by (\d+) °C/.exec(text)?.[1]);
    expect(scatter).toBeGreaterThanOrEqual(4);
    expect(scatter).toBeLessThanOrEqual(6);
    expect(about(review({ kiln: real }), "readings that jump about")).toEqual([]);
  });

  it("of two zones that were together to 800 °C and 40 °C apart at the peak are said to part from there", () => {
    const top = sampled(corners([0, 20], [8, 1220], [20, 100]), 60);
    const bottom = sampled(corners([0, 20], [5.2, 800], [8, 1180], [20, 90]), 60);
    const [finding] = about(review({ top, bottom }), "zones that part");
    expect(finding?.severity).toBe("note");
    const value = (name: string) =>
      finding?.evidence.find((each) => each.name === name)?.value as number;
    expect(value("before")).toBeLessThan(1);
    expect(value("after")).toBeGreaterThan(30);
    expect(value("since") / 3600).toBeGreaterThan(5.2);
    expect(value("since") / 3600).toBeLessThan(6.2);
    expect(said(review({ top, bottom }), "zones that part")).toContain("top higher");
  });

  it("of zones that stay as far apart as they were are not", () => {
    const top = firing({});
    const bottom = makeCurve(
      top.timesSeconds,
      top.tempsC.map((tempC) => tempC - 15),
    );
    expect(about(review({ top, bottom }), "zones that part")).toEqual([]);
  });
});

describe("the record of a thermocouple", () => {
  it("takes a sheath and a cold junction with units, and gives type and junction to the reader", () => {
    const given = record(
      'thermocouple: { type: S, class: special, sheath: 1/8 in }\nlog: { coldJunction: "77 F" }',
    );
    expect(given.thermocouple?.sheathMm).toBeCloseTo(3.175, 6);
    expect(given.log).toMatchObject({ thermocouple: "S", coldJunctionC: 25 });
  });
});
