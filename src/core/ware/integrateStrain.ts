import type { Band } from "../curve/Band.ts";
import { fourthPowerK, INSIDE_SHARE } from "./heatExchange.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "./inversionBands.ts";
import type { StrainNumbers } from "./strainNumbers.ts";
import type { StrainSteps } from "./strainSteps.ts";
import {
  advanceWare,
  BASE,
  baseWithLoadC,
  SHELF,
  STATE_SIZE,
  type Surroundings,
  strainRatio,
  WALL,
} from "./wareState.ts";

/** The passages that are watched, in the order in which a firing meets them. */
export const WATCHED: readonly {
  readonly band: Band;
  readonly direction: "heating" | "cooling";
}[] = [
  { band: CRISTOBALITE_BAND, direction: "heating" },
  { band: QUARTZ_BAND, direction: "heating" },
  { band: QUARTZ_BAND, direction: "cooling" },
  { band: CRISTOBALITE_BAND, direction: "cooling" },
];

/** Watched passages from here on are cooling. */
const FIRST_COOLING = 2;

/** What is written down at every step, where it is wanted. */
interface StrainTrace {
  readonly ratio: Float64Array;
  readonly wallC: Float64Array;
  readonly baseC: Float64Array;
  readonly shelfC: Float64Array;
}

/** A runner that takes one body and shape after another through the same steps. */
export interface StrainRunner {
  /** Worst ratio of each watched passage in the last run; −1 where the kiln was not in it. */
  readonly worst: Float64Array;
  /** Step at which it was worst. */
  readonly worstAt: Int32Array;
  readonly run: (numbers: StrainNumbers, trace: StrainTrace | null) => void;
}

/**
 * Prepares to take ware through a Curve; runs allocate nothing.
 * Ware begins at rest, as hot as the kiln, at the start and after every gap.
 *
 * @param peakSeconds What lies before it counts as heating, what lies after it as cooling.
 */
export function strainRunner(steps: StrainSteps, peakSeconds: number): StrainRunner {
  const state = new Float64Array(STATE_SIZE);
  const around: Surroundings = { airC: 0, radiantK4: 0, insideShare: INSIDE_SHARE };
  const by = { around, seconds: 0 };
  const worst = new Float64Array(WATCHED.length);
  const worstAt = new Int32Array(WATCHED.length);
  const count = steps.timesSeconds.length;
  const lows = Float64Array.from(WATCHED, ({ band }) => band.lowC);
  const highs = Float64Array.from(WATCHED, ({ band }) => band.highC);

  /** Whether this step belongs to a watched passage. */
  const within = (i: number, kilnC: number, baseC: number): boolean => {
    const wallC = state[WALL] as number;
    return i < FIRST_COOLING
      ? kilnC >= (lows[i] as number) && Math.min(kilnC, wallC, baseC) <= (highs[i] as number)
      : kilnC <= (highs[i] as number) && Math.max(kilnC, wallC, baseC) >= (lows[i] as number);
  };

  /** Ratio of this step, kept where it is the worst yet; worked out only where it is asked for. */
  const judge = (
    step: number,
    kilnC: number,
    numbers: StrainNumbers,
    trace: StrainTrace | null,
  ) => {
    const baseC = baseWithLoadC(state);
    const from = (steps.timesSeconds[step] as number) < peakSeconds ? 0 : FIRST_COOLING;
    const first = within(from, kilnC, baseC);
    const second = within(from + 1, kilnC, baseC);
    if (!(first || second || trace !== null)) return;
    const ratio = strainRatio(state, numbers, baseC);
    if (first) keep(from, step, ratio);
    if (second) keep(from + 1, step, ratio);
    if (trace !== null) write(trace, step, ratio);
  };

  const keep = (i: number, step: number, ratio: number) => {
    if (ratio <= (worst[i] as number)) return;
    worst[i] = ratio;
    worstAt[i] = step;
  };

  const write = (trace: StrainTrace, step: number, ratio: number) => {
    trace.ratio[step] = ratio;
    trace.wallC[step] = state[WALL] as number;
    trace.baseC[step] = state[BASE] as number;
    trace.shelfC[step] = state[SHELF] as number;
  };

  const run = (numbers: StrainNumbers, trace: StrainTrace | null) => {
    worst.fill(-1);
    for (let step = 0; step < count; step++) {
      const kilnC = steps.tempsC[step] as number;
      if (steps.begins[step] === 1) state.fill(kilnC);
      else {
        around.airC = kilnC;
        around.radiantK4 = fourthPowerK(kilnC);
        by.seconds =
          (steps.timesSeconds[step] as number) - (steps.timesSeconds[step - 1] as number);
        advanceWare(state, numbers, by);
      }
      judge(step, kilnC, numbers, trace);
    }
  };
  return { worst, worstAt, run };
}
