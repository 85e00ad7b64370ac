import { describe, expect, it } from "vitest";
import { AXES, type Axis, dealtLevels, MAIN_AXES } from "../../bench/logGrid/axes.ts";
import { gridLog } from "../../bench/logGrid/gridLog.ts";
import { judgedPart, rightShare, scoreOf } from "../../bench/logGrid/scoredGrid.ts";

const SEED = 6;
/** Few enough for a test; `test/bench/reader.ts` reads 20 000. */
const SAMPLE = 100;

describe("the grid of made-up logs", () => {
  it("is the same for the same seed, byte for byte", () => {
    const [levels] = dealtLevels(SEED, 50);
    if (levels === undefined) throw new Error("no levels");
    expect(gridLog(levels, 9).bytes).toEqual(gridLog(levels, 9).bytes);
    expect(gridLog(levels, 9).bytes).not.toEqual(gridLog(levels, 10).bytes);
  });

  it("deals every level at least 200 times, and every pair of levels of the main axes, in 20 000", () => {
    const all = dealtLevels(SEED, 20_000);
    const rarest = (Object.keys(AXES) as Axis[]).flatMap((axis) =>
      AXES[axis].map((level) => all.filter((levels) => levels[axis] === level).length),
    );
    expect(Math.min(...rarest)).toBeGreaterThanOrEqual(200);
    for (const a of MAIN_AXES)
      for (const b of MAIN_AXES.filter((other) => other > a)) {
        const met = new Set(all.map((levels) => `${levels[a]} ${levels[b]}`));
        expect(met.size, `${a} and ${b}`).toBe(AXES[a].length * AXES[b].length);
      }
  });

  it(`reads a sample of ${SAMPLE} logs right, or asks, and none wrongly in silence`, () => {
    const score = scoreOf(judgedPart({ seed: SEED, count: SAMPLE, from: 0, every: 1 }));
    const wrong = score.faults.filter(({ judged }) => judged.verdict === "silently wrong");
    expect(wrong.map(({ number, judged }) => `${number}: ${judged.what}`)).toEqual([]);
    expect(rightShare(score.all)).toBeGreaterThanOrEqual(0.99);
  });
});
