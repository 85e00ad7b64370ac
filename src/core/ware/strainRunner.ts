import type { Band } from "../curve/edgeTimes.ts";
import { strainIn } from "./bodyExpansion.ts";
import { fourthPowerK } from "./heatExchange.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "./inversions.ts";
import { isFlat } from "./pieceShape.ts";
import { stressRatio } from "./pieceStress.ts";
import type { StrainNumbers } from "./strainNumbers.ts";
import {
  AROUND,
  advanceWare,
  BASE,
  DEEP,
  LOAD,
  meanC,
  SHELF,
  STATE_SIZE,
  shutKiln,
  WALL,
} from "./wareState.ts";
import type { StrainSteps } from "./wareStrain.ts";

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

/** Moments of a passage whose stress is worked out, and how near the greatest mismatch they lie. */
const MOMENTS = 5;
const NEAR_WORST = 0.8;
const HALVINGS = 4;

/** Between moments of a trace whose stress is worked out, the kiln moves by this at most [K]. */
const TRACE_STEP_K = 5;

/** What is known at every step. */
interface StrainTrace {
  /** Stress over strength; worked out when it is first asked for. */
  readonly ratio: Float64Array;
  readonly wallC: Float64Array;
  readonly baseC: Float64Array;
  readonly shelfC: Float64Array;
}

/** A runner that takes one piece after another through the same steps. */
export interface StrainRunner {
  /** Worst ratio of each watched passage in the last run; −1 where the kiln was not in it. */
  readonly worst: Float64Array;
  /** Step at which it was worst. */
  readonly worstAt: Int32Array;
  readonly run: (numbers: StrainNumbers) => void;
  /** Every step of the last run; ask for its stress before the next. */
  readonly trace: (numbers: StrainNumbers) => StrainTrace;
  /** States of the last run about the worst of a watched passage; none where the kiln was not in it. */
  readonly moments: (watched: number) => readonly Float64Array[];
}

/**
 * Prepares to take ware through a Curve.
 * Ware begins at rest, as hot as the kiln, at the start and after every gap. The temperatures are
 * followed at every step; the stress is worked out where base and wall differ the most in free strain.
 *
 * @param peakSeconds What lies before it counts as heating, what lies after it as cooling.
 */
export function strainRunner(steps: StrainSteps, peakSeconds: number): StrainRunner {
  const count = steps.timesSeconds.length;
  const states = new Float64Array(count * STATE_SIZE);
  const mismatches = new Float64Array(count);
  const worst = new Float64Array(WATCHED.length);
  const worstAt = new Int32Array(WATCHED.length);
  const chosen: number[][] = WATCHED.map(() => []);
  const state = (step: number) => states.subarray(step * STATE_SIZE, (step + 1) * STATE_SIZE);

  const follow = (numbers: StrainNumbers) => {
    const now = new Float64Array(STATE_SIZE);
    const around = shutKiln();
    const by = { around, seconds: 0 };
    for (let step = 0; step < count; step++) {
      const kilnC = steps.tempsC[step]!;
      if (steps.begins[step] === 1) atRest(now, kilnC);
      else {
        around.airC = kilnC;
        around.radiantK4 = fourthPowerK(kilnC);
        by.seconds = steps.timesSeconds[step]! - steps.timesSeconds[step - 1]!;
        advanceWare(now, numbers, by);
      }
      states.set(now, step * STATE_SIZE);
      mismatches[step] = mismatch(now, numbers);
    }
  };

  const run = (numbers: StrainNumbers) => {
    follow(numbers);
    for (const [i, { band }] of WATCHED.entries()) {
      chosen[i] = spacedMoments(within(i, band), mismatches);
      worst[i] = -1;
      for (const step of chosen[i]!) judge(i, step, numbers);
      if (chosen[i]!.length > 1) narrow(i, numbers);
    }
  };

  const judge = (i: number, step: number, numbers: StrainNumbers) => {
    const ratio = stressRatio(state(step), numbers);
    if (ratio <= worst[i]!) return;
    worst[i] = ratio;
    worstAt[i] = step;
  };

  /** Looks between the worst of the chosen moments and its neighbours, halving what lies between. */
  const narrow = (i: number, numbers: StrainNumbers) => {
    const at = chosen[i]!.indexOf(worstAt[i]!);
    let reach = Math.max(
      (chosen[i]![at + 1] ?? worstAt[i]!) - worstAt[i]!,
      worstAt[i]! - (chosen[i]![at - 1] ?? worstAt[i]!),
    );
    const [first, last] = [chosen[i]![0]!, chosen[i]!.at(-1)!];
    for (let halving = 0; halving < HALVINGS && reach > 1; halving++) {
      reach = Math.ceil(reach / 2);
      const middle = worstAt[i]!;
      if (middle - reach > first) judge(i, middle - reach, numbers);
      if (middle + reach < last) judge(i, middle + reach, numbers);
    }
    chosen[i] = [...new Set([...chosen[i]!, worstAt[i]!])];
  };

  /** Steps that belong to a watched passage. */
  const within = (i: number, band: Band): readonly number[] => {
    const heating = i < FIRST_COOLING;
    const found: number[] = [];
    for (let step = 0; step < count; step++) {
      if (steps.timesSeconds[step]! < peakSeconds !== heating) continue;
      const at = state(step);
      const wallC = at[WALL]!;
      const baseC = at[BASE]! + at[LOAD]!;
      const kilnC = steps.tempsC[step]!;
      const inside = heating
        ? kilnC >= band.lowC && Math.min(kilnC, wallC, baseC) <= band.highC
        : kilnC <= band.highC && Math.max(kilnC, wallC, baseC) >= band.lowC;
      if (inside) found.push(step);
    }
    return found;
  };

  const trace = (numbers: StrainNumbers): StrainTrace => {
    const each = (of: (state: Float64Array) => number) =>
      Float64Array.from({ length: count }, (_, step) => of(state(step)));
    let known: Float64Array | null = null;
    return {
      wallC: each((at) => meanC(at, WALL)),
      baseC: each((at) => meanC(at, BASE)),
      shelfC: each((at) => at[SHELF]!),
      get ratio() {
        known ??= capped(ratios(numbers));
        return known;
      },
    };
  };

  /** Stress of every step: worked out at some, in proportion to the mismatch between them. */
  const ratios = (numbers: StrainNumbers): Float64Array => {
    const found = new Float64Array(count);
    const worked = new Set(worstAt.filter((_, i) => worst[i]! >= 0));
    let [from, fromFactor] = [0, 0];
    for (let step = 0; step < count; step++) {
      const begins = steps.begins[step] === 1;
      if (!(begins || worked.has(step) || isWorked(step, from))) continue;
      const ratio = begins ? 0 : stressRatio(state(step), numbers);
      const factor = mismatches[step]! > 0 ? ratio / mismatches[step]! : fromFactor;
      for (let k = from + 1; !begins && k < step; k++) {
        const share = (k - from) / (step - from);
        found[k] = (fromFactor + (factor - fromFactor) * share) * mismatches[k]!;
      }
      found[step] = ratio;
      from = step;
      fromFactor = factor;
    }
    return found;
  };

  /** No moment of a passage passes for worse than its worst, between the moments worked out. */
  const capped = (found: Float64Array): Float64Array => {
    for (const [i, { band }] of WATCHED.entries()) {
      if (worst[i]! < 0) continue;
      const most = worst[i]! * (1 - 1e-9);
      for (const step of within(i, band))
        if (step !== worstAt[i]) found[step] = Math.min(found[step]!, most);
    }
    return found;
  };

  /** Whether the stress of a trace is worked out at a step, after it was at another. */
  const isWorked = (step: number, from: number) =>
    Math.abs(steps.tempsC[step]! - steps.tempsC[from]!) >= TRACE_STEP_K ||
    step === count - 1 ||
    steps.begins[step + 1] === 1;

  return {
    worst,
    worstAt,
    run,
    trace,
    moments: (watched) => chosen[watched]!.map(state),
  };
}

/** Puts a piece at rest at one temperature. */
export function atRest(state: Float64Array, tempC: number): void {
  state.fill(tempC);
  state[LOAD] = 0;
}

/** By how much the free strains of a piece differ: of base and wall, and through either. */
export function mismatch(state: Float64Array, numbers: StrainNumbers): number {
  const { strain, shape } = numbers;
  const baseC = meanC(state, BASE);
  const wallC = isFlat(shape) ? state[AROUND]! : meanC(state, WALL);
  const of = (tempC: number) => strainIn(strain, tempC);
  const across = of(baseC + state[LOAD]!) - of(wallC);
  const base = of(state[BASE]!) - of(state[BASE + DEEP - 1]!);
  const deep = of(state[BASE + 2]!) - of(state[BASE]!);
  const wall = of(state[WALL + 2]!) - of(state[WALL]!);
  return Math.abs(across) + (Math.abs(base) + Math.abs(deep) + Math.abs(wall)) / 2;
}

/** Some of the steps at which the mismatch is near its greatest, evenly spaced, that one among them. */
export function spacedMoments(steps: readonly number[], mismatches: Float64Array): number[] {
  let greatest = -1;
  for (const step of steps)
    if (greatest < 0 || mismatches[step]! > mismatches[greatest]!) greatest = step;
  if (greatest < 0) return [];
  const near = steps.filter((step) => mismatches[step]! >= NEAR_WORST * mismatches[greatest]!);
  const picked = Array.from(
    { length: MOMENTS - 1 },
    (_, i) => near[Math.round(((near.length - 1) * i) / (MOMENTS - 2))]!,
  );
  return [...new Set([...picked, greatest])].toSorted((a, b) => a - b);
}
