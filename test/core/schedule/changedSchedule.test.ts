import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { REFERENCE_KILN } from "../../../src/core/kiln/LearnedKiln.ts";
import { changedSchedule } from "../../../src/core/schedule/repairSchedule.ts";
import { keepsTo, paceWords, parsePace } from "../../../src/core/schedule/wishedPace.ts";
import { isWhole, schedule, segment, valued } from "../../support/schedules.ts";

const PLAN = schedule({
  cone: "5",
  ware: { thickestMm: 6, widestMm: null, state: "glazed on bisque", crackle: false },
  segments: [segment(1080, 150), segment(1186, 60, 15), segment(100, "free")],
});

describe("changedSchedule", () => {
  it("keeps to every rate that is asked, up or down, in either unit", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 120 }),
        fc.integer({ min: 120, max: 700 }),
        fc.integer({ min: 40, max: 400 }),
        fc.boolean(),
        fc.constantFrom("C" as const, "F" as const),
        (rate, lowC, widthK, rising, unit) => {
          const [fromC, toC] = rising ? [lowC, lowC + widthK] : [lowC + widthK, lowC];
          const pace = { fromC, toC, mostCPerHour: unit === "C" ? rate : rate / 1.8 };
          const { after } = valued(
            changedSchedule({ ...PLAN, unit }, { paces: [pace], repair: false, solve: null }),
          );
          expect(keepsTo(after, pace, REFERENCE_KILN)).toBe(true);
          expect(isWhole(after)).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  it("slows, mends and solves in one go", () => {
    const pace = { fromC: 620, toC: 520, mostCPerHour: 40 };
    const by = { paces: [pace], repair: true, solve: { part: "peak", cone: "6" } } as const;
    const { after, repair } = valued(changedSchedule(PLAN, by));
    expect(after.cone).toBe("6");
    expect(after.segments.some(({ rateCPerHour }) => rateCPerHour === -40)).toBe(true);
    expect(repair).not.toBeNull();
  });
});

describe("parsePace", () => {
  it.each([
    ["60 C/h from 620 C to 520 C", 620, 520, 60],
    ["108F/h from 1148F to 968F", 620, 520, 60],
    ["2 C/min from 100 to 650", 100, 650, 120],
  ] as const)("reads %s", (text, fromC, toC, mostCPerHour) => {
    const pace = valued(parsePace(text, { unit: "C", where: "--at-most" }));
    expect(pace.fromC).toBeCloseTo(fromC, 6);
    expect(pace.toC).toBeCloseTo(toC, 6);
    expect(pace.mostCPerHour).toBeCloseTo(mostCPerHour, 6);
  });

  it("comes back from its words the same", () => {
    const pace = { fromC: 620, toC: 520, mostCPerHour: 50 };
    for (const unit of ["C", "F"] as const) {
      const again = valued(parsePace(paceWords(pace, unit), { unit, where: "--at-most" }));
      expect(again.mostCPerHour).toBeCloseTo(50, 6);
    }
  });

  it.each(["60 C/h", "slow from 620 to 520", "-5 C/h from 620 to 520", "50 C/h from 600 to 600"])(
    "refuses %s with what to write",
    (text) => {
      const read = parsePace(text, { unit: "C", where: "--at-most" });
      expect(read.ok).toBe(false);
    },
  );
});
