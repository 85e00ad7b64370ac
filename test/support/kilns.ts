import { type Curve, makeCurve } from "../../src/core/curve/Curve.ts";
import {
  type CoolingConstants,
  type KilnFiring,
  type LearnedKiln,
  lossKPerSecond,
} from "../../src/core/kiln/LearnedKiln.ts";
import { learnKiln } from "../../src/core/kiln/learnKiln.ts";
import { DEMO_FIRINGS } from "./demo/demoFiles.ts";
import { type FiringPlan, fire } from "./demo/fire.ts";
import { seeded } from "./demo/seeded.ts";

/** A demo firing as a kiln is learned from it, before it was ever written to a file. */
export function demoFiring(
  name: string,
  options: { readonly withOutput?: boolean; readonly plan?: Partial<FiringPlan> } = {},
): KilnFiring {
  const demo = DEMO_FIRINGS.find((each) => each.name === name);
  if (!demo) throw new RangeError(`demoFiring: there is no ${name}`);
  const { samples } = fire({ ...demo.plan, ...options.plan });
  const seconds = samples.map((sample) => sample.seconds);
  return {
    name,
    curve: makeCurve(
      seconds,
      samples.map(({ readingsC }) => readingsC[0] as number),
    ),
    output:
      options.withOutput === false
        ? null
        : {
            timesSeconds: Float64Array.from(seconds),
            fraction: Float64Array.from(samples, ({ output }) => output),
          },
    start: demo.start,
  };
}

/** The bisque of the demo logs, learned from. */
export function learnedDemoKiln(options: { readonly withOutput?: boolean } = {}): LearnedKiln {
  const learned = learnKiln([demoFiring("2026-02-07-a", options)], { powerWatt: 10_500 });
  if (!learned.ok) throw new RangeError(learned.problems.map(({ what }) => what).join("; "));
  return learned.value;
}

/** A straight climb and then a fall by the balance itself, read every two minutes with some noise. */
export function balancedCurve(options: {
  readonly cooling: CoolingConstants;
  readonly peakC: number;
  readonly endC: number;
  readonly roomC: number;
  readonly noiseK: number;
}): Curve {
  const { cooling, peakC, endC, roomC, noiseK } = options;
  const random = seeded(573);
  const times: number[] = [];
  const temps: number[] = [];
  const read = (seconds: number, tempC: number) => {
    times.push(seconds);
    temps.push(tempC + noiseK * random.normal());
  };
  let seconds = 0;
  for (let tempC = roomC; tempC < peakC; tempC += 5, seconds += 120) read(seconds, tempC);
  for (let tempC = peakC; tempC > endC; seconds += 120) {
    read(seconds, tempC);
    for (let step = 0; step < 12; step++) tempC -= 10 * lossKPerSecond(cooling, tempC, roomC);
  }
  return makeCurve(times, temps);
}
