import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { type Curve, temperatureAt } from "../curve/Curve.ts";
import { type OutputSeries, radiatedWattPerM2 } from "./LearnedKiln.ts";
import { outputMean } from "./naturalFall.ts";

/** A whole firing with its output, up to where nothing but heat moved the reading. */
export interface DrivenFiring {
  readonly curve: Curve;
  readonly output: OutputSeries;
  readonly roomC: number;
  readonly untilSeconds: number;
}

/** Step of the simulation [s]. */
const STEP_SECONDS = 120;
/** Every so many steps the simulation is held against the log. */
const COMPARED_EVERY = 2;

/** The search stops when the simulation is this near to the log [K]. */
const GOOD_ENOUGH_K = 0.25;

/** Start of the search, in the order of the constants, the lag last: a kiln of middling size. */
const FIRST_GUESS = [0.1, 1.5e-4, 2.5e-4, 1.3e-4, 6e-8, 100] as const;

/** How far the search may go from there, as a factor either way. */
const WITHIN_FACTOR = 60;

/**
 * The five constants of the two-node balance, and the lag of the thermocouple, by nonlinear least
 * squares on a whole firing.
 * @returns null when under ten moments can be compared or the search leads nowhere.
 */
export function fitTwoNode(firing: DrivenFiring): TwoNodeFit | null {
  const drive = driveOf(firing);
  const compared = drive.flatMap((_, step) => {
    const tempC =
      step % COMPARED_EVERY === 0
        ? temperatureAt(firing.curve, startOf(firing) + step * STEP_SECONDS)
        : null;
    return tempC === null ? [] : [{ step, tempC }];
  });
  if (compared.length < 10) return null;
  const start = FIRST_GUESS.map(Math.log);
  const found = levenbergMarquardt(
    { x: compared.map(({ step }) => step), y: compared.map(({ tempC }) => tempC) },
    (logs) => {
      const temps = simulated(constantsFrom(logs), drive, firing);
      return (step) => temps[step]!;
    },
    {
      initialValues: start,
      minValues: start.map((value) => value - Math.log(WITHIN_FACTOR)),
      maxValues: start.map((value) => value + Math.log(WITHIN_FACTOR)),
      gradientDifference: 1e-3,
      damping: 1,
      maxIterations: 30,
      errorTolerance: compared.length * GOOD_ENOUGH_K ** 2,
    },
  );
  const rmsK = Math.sqrt(found.parameterError / compared.length);
  return Number.isFinite(rmsK) ? { ...constantsFrom(found.parameterValues), rmsK } : null;
}

function startOf({ curve }: DrivenFiring): number {
  return curve.timesSeconds[0]!;
}

/** Mean output of every step, as far as the log says it without a break. */
function driveOf(firing: DrivenFiring): readonly number[] {
  const means: number[] = [];
  for (
    let from = startOf(firing);
    from + STEP_SECONDS <= firing.untilSeconds;
    from += STEP_SECONDS
  ) {
    const mean = outputMean(firing.output, from, from + STEP_SECONDS);
    if (mean === null) break;
    means.push(mean);
  }
  return means;
}

/** What the thermocouple reads at the start of every step: the hot mass, late. */
function simulated(
  constants: Omit<TwoNodeFit, "rmsK">,
  drive: readonly number[],
  { curve, roomC }: DrivenFiring,
): Float64Array {
  const rates = twoNodeRates(constants);
  const hot = curve.tempsC[0]!;
  let state: KilnState = { hotC: hot, brickC: hot };
  let shownC = hot;
  const forgotten = Math.exp(-STEP_SECONDS / constants.lagSeconds);
  return Float64Array.from(drive, (output) => {
    const readC = shownC;
    const { hotC } = state;
    state = stateAfter(rates, state, { output, roomC }, STEP_SECONDS);
    const behindK = ((state.hotC - hotC) / STEP_SECONDS) * constants.lagSeconds;
    shownC = state.hotC - behindK + (readC - hotC + behindK) * forgotten;
    return readC;
  });
}

function constantsFrom(logs: readonly number[]): Omit<TwoNodeFit, "rmsK"> {
  const [pull, inward, soak, outward, radiation, lag] = logs.map(Math.exp) as [
    pull: number,
    inward: number,
    soak: number,
    outward: number,
    radiation: number,
    lag: number,
  ];
  return {
    pullKPerSecond: pull,
    inwardPerSecond: inward,
    soakPerSecond: soak,
    outwardPerSecond: outward,
    radiationM2KPerJ: radiation,
    lagSeconds: lag,
  };
}

/** Pull at equal temperature that has fallen to this share of an earlier one is said; our own choice. */
export const WEAKER = 0.9;
/** Pull at equal temperature that has risen to this is said; our own choice. */
export const STRONGER = 1.1;
/** A scatter that has grown by this factor is said … */
export const NOISIER = 1.5;
/** … when it is also this large [K]. */
export const NOISY_K = 0.5;
/** A natural fall that differs by this share between firings is said; our own choice. */
export const FALLS_APART = 0.1;

/** Hot mass and brick apart, each constant over a heat capacity. They fit a log; they are not physical. */
export interface TwoNodeConstants {
  /** Power over the heat capacity of the hot mass [K/s]. */
  readonly pullKPerSecond: number;
  /** From hot mass to brick, over the heat capacity of the hot mass [1/s]. */
  readonly inwardPerSecond: number;
  /** From hot mass to brick, over the heat capacity of the brick [1/s]. */
  readonly soakPerSecond: number;
  /** From brick to room, over the heat capacity of the brick [1/s]. */
  readonly outwardPerSecond: number;
  /** Straight from the hot mass to the room by radiation, over its heat capacity [m²·K/J]. */
  readonly radiationM2KPerJ: number;
}

/** What a two-node fit gives. */
export interface TwoNodeFit extends TwoNodeConstants {
  /** How late the reading follows the hot mass: thermocouple, sheath and the air around it [s]. */
  readonly lagSeconds: number;
  /** Root mean square distance from the log [K]. */
  readonly rmsK: number;
}

/** Temperatures of the two [°C]. */
export interface KilnState {
  readonly hotC: number;
  readonly brickC: number;
}

/** What changes a kiln's state: share of full power, 0–1, and the room [°C]. */
export interface KilnDrive {
  readonly output: number;
  readonly roomC: number;
}

/** How fast both temperatures change [K/s]. */
export type KilnRates = (state: KilnState, drive: KilnDrive) => KilnState;

/** The two-node heat balance. */
export function twoNodeRates(constants: TwoNodeConstants): KilnRates {
  const { pullKPerSecond, inwardPerSecond, soakPerSecond, outwardPerSecond, radiationM2KPerJ } =
    constants;
  return ({ hotC, brickC }, { output, roomC }) => ({
    hotC:
      pullKPerSecond * output -
      inwardPerSecond * (hotC - brickC) -
      radiationM2KPerJ * radiatedWattPerM2(hotC, roomC),
    brickC: soakPerSecond * (hotC - brickC) - outwardPerSecond * (brickC - roomC),
  });
}

/** The state so many seconds later, by one classical Runge–Kutta step. */
export function stateAfter(
  rates: KilnRates,
  state: KilnState,
  drive: KilnDrive,
  seconds: number,
): KilnState {
  const along = (slope: KilnState, share: number): KilnState => ({
    hotC: state.hotC + slope.hotC * seconds * share,
    brickC: state.brickC + slope.brickC * seconds * share,
  });
  const k1 = rates(state, drive);
  const k2 = rates(along(k1, 0.5), drive);
  const k3 = rates(along(k2, 0.5), drive);
  const k4 = rates(along(k3, 1), drive);
  const mean = (of: (k: KilnState) => number) => (of(k1) + 2 * of(k2) + 2 * of(k3) + of(k4)) / 6;
  return along({ hotC: mean((k) => k.hotC), brickC: mean((k) => k.brickC) }, 1);
}
