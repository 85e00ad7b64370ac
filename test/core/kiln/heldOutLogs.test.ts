import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { peakOf } from "../../../src/core/curve/Curve.ts";
import { crossingTimes } from "../../../src/core/curve/edgeTimes.ts";
import { kilnFiringOf } from "../../../src/core/firing/kilnFiring.ts";
import type { KilnFiring, OutputSeries } from "../../../src/core/kiln/LearnedKiln.ts";
import { learnKiln } from "../../../src/core/kiln/learnKiln.ts";
import { predictFiring } from "../../../src/core/kiln/predictFiring.ts";
import type { Schedule } from "../../../src/core/schedule/Schedule.ts";
import { readFiring } from "../../../src/node/readFiring.ts";
import { valued } from "../../support/schedules.ts";

/** Written in the records of the demo logs: 10.5 kW. */
const POWER_WATT = 10_500;

interface Shipped {
  readonly firing: KilnFiring;
  readonly plan: Schedule;
}

async function shipped(name: string): Promise<Shipped> {
  const path = join(import.meta.dirname, `../../../logs/${name}.csv`);
  const files = valued(
    await readFiring(path, { options: {}, recordPath: null, schedulePath: null }),
  );
  const firing = kilnFiringOf(files.reading, files.record);
  if (firing === null || files.plan === null) throw new RangeError(`${name} is not whole`);
  return { firing, plan: files.plan };
}

/** The bisque teaches the kiln; the glaze firing that is predicted teaches it nothing. */
async function predictedFor(held: Shipped) {
  const { firing } = await shipped("2026-02-07-a");
  const kiln = valued(learnKiln([firing], { powerWatt: POWER_WATT }));
  const startC = held.firing.curve.tempsC[0] as number;
  return predictFiring(kiln, { segments: held.plan.segments, startC, roomC: startC });
}

function fellTo(held: Shipped, tempC: number): number | null {
  const falls = crossingTimes(held.firing.curve, tempC);
  return falls.findLast(({ direction }) => direction === "cooling")?.seconds ?? null;
}

describe.each(["2026-02-21-b", "2026-03-14-b", "2026-04-25-b", "2026-05-09-a"])(
  "the held-out log %s, predicted by its schedule and the bisque log alone",
  (name) => {
    it("peaks within 18 K of the log, as the trial had it", async () => {
      const held = await shipped(name);
      const { curve } = await predictedFor(held);
      expect(Math.abs(peakOf(curve).tempC - peakOf(held.firing.curve).tempC)).toBeLessThan(18);
    });

    it("peaks within 3 % of the time", async () => {
      const held = await shipped(name);
      const { curve } = await predictedFor(held);
      expect(Math.abs(peakOf(curve).seconds / peakOf(held.firing.curve).seconds - 1)).toBeLessThan(
        0.03,
      );
    });

    it("is at 200 and 100 °C within 3 % of the time, where the log goes so far", async () => {
      const held = await shipped(name);
      const { cooledTo } = await predictedFor(held);
      const seen = [200, 100].flatMap((tempC) => {
        const logged = fellTo(held, tempC);
        const said = cooledTo.find((each) => each.tempC === tempC)?.seconds;
        return logged === null ? [] : [Math.abs((said as number) / logged - 1)];
      });
      expect(seen.length).toBeGreaterThan(0);
      expect(Math.max(...seen)).toBeLessThan(0.03);
    });
  },
);

describe("the electricity of a held-out log that carries its output", () => {
  it("is within 3 % up to the peak: the trial's 1 %, and the minutes that the peaks lie apart", async () => {
    const held = await shipped("2026-05-23-b");
    const { segments } = await predictedFor(held);
    const hottest = Math.max(...held.plan.segments.map(({ toC }) => toC));
    const peakAt = held.plan.segments.findIndex(({ toC }) => toC === hottest);
    const said = segments
      .slice(0, peakAt + 1)
      .reduce((sum, { energyKWh }) => sum + (energyKWh as number), 0);
    const output = held.firing.output as OutputSeries;
    const logged = kWhUntil(output, peakOf(held.firing.curve).seconds);
    expect(Math.abs(said / logged - 1)).toBeLessThan(0.03);
  });
});

/** Share of full power times seconds, added up reading by reading. */
function kWhUntil({ timesSeconds, fraction }: OutputSeries, untilSeconds: number): number {
  let fullSeconds = 0;
  for (let i = 1; i < timesSeconds.length; i++) {
    if ((timesSeconds[i] as number) > untilSeconds) break;
    const seconds = (timesSeconds[i] as number) - (timesSeconds[i - 1] as number);
    fullSeconds += (fraction[i - 1] as number) * seconds;
  }
  return (fullSeconds * POWER_WATT) / 3.6e6;
}
