import { describe, expect, it } from "vitest";
import type { Curve } from "../../../src/core/curve/Curve.ts";
import type { Finding } from "../../../src/core/findings/Finding.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { corners, sampled } from "../../support/curves.ts";
import { readingOf } from "../../support/firings.ts";
import { schedule, segment, valued } from "../../support/schedules.ts";
import { noisy } from "../../support/watching.ts";

const STEAM = "water, rate of the start";

function said(curve: Curve, ware: string | null): readonly Finding[] {
  const record =
    ware === null
      ? null
      : valued(
          parseRecord(
            `formatVersion: 1\ntitle: Bisque\nware:\n  - { name: pots, clay: grey, ${ware} }\n`,
            "firing.yaml",
          ),
        );
  return valued(reviewFiring({ reading: readingOf({ kiln: curve }), record, plan: null })).findings;
}

function severity(curve: Curve, ware: string | null, topic = STEAM): string | null {
  return said(curve, ware).find((each) => each.topic === topic)?.severity ?? null;
}

/** Held at a temperature for some hours, then up at a rate to 600 °C, and at 90 °C/h to 1000 °C. */
function bisque(heldC: number, heldHours: number, rateCPerHour: number): Curve {
  const held = 1 + heldHours;
  const mid = held + (600 - heldC) / rateCPerHour;
  return sampled(
    corners([0, 20], [1, heldC], [held, heldC], [mid, 600], [mid + 4.5, 1000], [mid + 20, 90]),
    60,
  );
}

describe("steam in a firing that was", () => {
  it.each([
    // The mean from the start to 120 °C is 14 °C/h: a hold does not make the climb after it slow.
    [
      "25 mm damp, six hours at 66 °C, then 300 °C/h",
      bisque(66, 6, 300),
      "thickest: 25 mm, state: damp",
      "warning",
    ],
    ["25 mm bone dry the same", bisque(66, 6, 300), "thickest: 25 mm, state: bone dry", "warning"],
    [
      "25 mm damp, six hours at 66 °C, then 30 °C/h",
      bisque(66, 6, 30),
      "thickest: 25 mm, state: damp",
      "note",
    ],
    ["6 mm bone dry, 60 °C/h", bisque(90, 0.5, 60), "thickest: 6 mm, state: bone dry", "note"],
    ["6 mm bone dry, 200 °C/h", bisque(60, 0.1, 200), "thickest: 6 mm, state: bone dry", "caution"],
    [
      "6 mm bone dry, held at 100 °C, then 350 °C/h",
      bisque(100, 2, 350),
      "thickest: 6 mm, state: bone dry",
      "warning",
    ],
    ["15 mm bone dry, 120 °C/h", bisque(60, 1, 120), "thickest: 15 mm, state: bone dry", "caution"],
  ] as const)("%s", (_, curve, ware, expected) => {
    expect(severity(curve, ware)).toBe(expected);
    expect(severity(noisy(curve, 0.5), ware)).toBe(expected);
  });

  it("is not spoken of for bisqued ware, decals, or an unknown load that went up as potters do", () => {
    expect(severity(bisque(66, 6, 300), "state: glazed on bisque")).toBe(null);
    expect(severity(bisque(60, 0.1, 200), null)).toBe(null);
    const decal = sampled(corners([0, 20], [2, 780], [12, 90]), 60);
    expect(severity(decal, null)).toBe(null);
  });

  it("asks damp ware for time to dry as a draft does", () => {
    const curve = bisque(60, 0.1, 100);
    expect(severity(curve, "thickest: 8 mm, state: damp", "water, time to dry")).toBe("warning");
    expect(
      said(curve, "thickest: 8 mm, state: damp").some(({ statement }) =>
        statement.includes("had only"),
      ),
    ).toBe(true);
  });

  it("says the same of a plan as of the firing of it", () => {
    const plan = schedule({
      segments: [segment(66, 46, 360), segment(600, 300), segment(1000, 90)],
      ware: { thickestMm: 25, widestMm: null, state: "damp", crackle: false },
    });
    const { findings } = draftSchedule({ schedule: plan, start: null });
    expect(findings.find(({ topic }) => topic === STEAM)?.severity).toBe("warning");
  });
});

describe("carbon in a firing that was", () => {
  /** Up at 90 °C/h to 700 °C, over some hours to 900 °C as told, and on to 1050 °C. */
  const burnt = (...points: readonly (readonly [number, number])[]) => {
    const [hours] = points.at(-1) as readonly [number, number];
    return sampled(
      corners(
        [0, 20],
        [2, 80],
        [8, 700],
        ...points.map(([h, c]) => [8 + h, c] as const),
        [10 + hours, 1050],
        [30 + hours, 90],
      ),
      60,
    );
  };

  it.each([
    ["at 80 °C/h", burnt([2.5, 900]), "note"],
    ["at 200 °C/h", burnt([1, 900]), "caution"],
    // Two hours for 200 °C, of which the last 150 took half an hour.
    ["slow, and then at 300 °C/h", burnt([1.5, 750], [2, 900]), "caution"],
    ["quick, with an hour and a half at 815 °C", burnt([0.6, 815], [2.1, 815], [2.5, 900]), "note"],
  ] as const)("%s", (_, curve, expected) => {
    expect(severity(curve, "state: bone dry", "carbon burning out")).toBe(expected);
  });
});
