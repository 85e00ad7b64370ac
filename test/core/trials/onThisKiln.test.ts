import { describe, expect, it } from "vitest";
import { learnKiln } from "../../../src/core/kiln/learnKiln.ts";
import { asAssumedKiln } from "../../../src/core/kiln/reach.ts";
import { onThisKiln } from "../../../src/core/trials/NextTest.ts";
import { demoFiring } from "../../support/kilns.ts";
import { schedule, segment, valued } from "../../support/schedules.ts";

function known(name: string) {
  const learned = learnKiln([demoFiring(name, { withOutput: true })], { powerWatt: 10_500 });
  return { kiln: asAssumedKiln(valued(learned)), offsetK: 0 };
}

const STRONG = known("2026-02-07-a");
/** The same kiln with worn elements. */
const WORN = known("2026-06-06-a");

const GENTLE = schedule({
  cone: "04",
  segments: [segment(900, 60), segment(1040, 40), segment(100, "free")],
});
const BRISK = schedule({
  cone: "5",
  segments: [segment(1100, 200), segment(1180, 60), segment(100, "free")],
});

describe("the next firing on one's own kiln", () => {
  it("stays as it is when the kiln can do it", () => {
    const { schedule: same, isEased, findings } = onThisKiln(GENTLE, STRONG);
    expect(same).toBe(GENTLE);
    expect(isEased).toBe(false);
    expect(findings.filter(({ severity }) => severity !== "note")).toEqual([]);
  });

  it("asks a worn kiln for full power where it cannot keep the rate, and changes nothing else", () => {
    const { schedule: eased, isEased } = onThisKiln(BRISK, WORN);
    expect(isEased).toBe(true);
    expect(
      eased.segments.some(({ toC, rateCPerHour }) => toC === 1100 && rateCPerHour === "free"),
    ).toBe(true);
    expect(Math.max(...eased.segments.map(({ toC }) => toC))).toBe(1180);
    expect(eased.segments.at(-1)).toEqual(BRISK.segments.at(-1));
  });

  it("tells of a kiln that does not get there at all", () => {
    const hot = schedule({ cone: "10", segments: [segment(1000, 100), segment(1300, 60)] });
    const { findings, basis } = onThisKiln(hot, WORN);
    expect(findings.some(({ severity }) => severity === "warning")).toBe(true);
    expect(basis).toContain("your kiln as learned from");
  });
});
