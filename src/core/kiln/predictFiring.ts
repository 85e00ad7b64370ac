import { type Curve, makeCurve } from "../curve/Curve.ts";
import { climbShare, type LearnedKiln, lossKPerSecond } from "./LearnedKiln.ts";
import { type KilnRates, type KilnState, stateAfter, twoNodeRates } from "./twoNode.ts";

/** A ramp and a hold that are asked of a kiln. */
export interface AskedSegment {
  readonly toC: number;
  /** Signed [°C/h], or as fast as the kiln heats, or as it falls by itself. */
  readonly rateCPerHour: number | "free";
  readonly holdSeconds: number;
}

/** How one segment goes. */
export interface PredictedSegment {
  /** Index of the segment, from 0. */
  readonly segment: number;
  readonly fromC: number;
  readonly toC: number;
  readonly startSeconds: number;
  /** When the ramp is done, before its hold. */
  readonly rampEndSeconds: number;
  readonly endSeconds: number;
  /** Signed [°C/h]; the kiln's own rate where `free` was asked. */
  readonly meanCPerHour: number;
  /** Longer than the programme says [s]; 0 on a `free` ramp. */
  readonly behindSeconds: number;
  /** Where the kiln first could not follow [°C]; null where it could. */
  readonly behindFromC: number | null;
  /** Share of full power over the ramp, hold not counted, 0–1. */
  readonly rampOutput: number;
  /** Of ramp and hold; null as that of the whole is. */
  readonly energyKWh: number | null;
}

/** A firing as a learned kiln would go through it. */
export interface PredictedFiring {
  readonly curve: Curve;
  readonly segments: readonly PredictedSegment[];
  /** End of the programme [s]; null when the kiln stalls before. */
  readonly endSeconds: number | null;
  /** Where it gets no further: segment, from 0, and temperature [°C]. */
  readonly stalled: { readonly segment: number; readonly tempC: number } | null;
  /** When it has fallen to 200, 100 and 50 °C after its peak, power off and lid shut [s from the start]. */
  readonly cooledTo: readonly { readonly tempC: number; readonly seconds: number }[];
  /** Up to the stall, where it stalls. Null without a wattage, or without a log that carries the output. */
  readonly energyKWh: number | null;
  /** Null without that energy or without a tariff. */
  readonly cost: number | null;
}

const STEP_SECONDS = 30;
/** A kiln that gains or loses less than this gets no further [°C/h]. */
const STALLED_CPERHOUR = 1;
/** A ramp that takes this share longer has fallen behind. */
const BEHIND_SHARE = 0.02;
/** The curve keeps every so many steps. */
const KEPT_EVERY = 4;
const WAITED_FOR_C = [200, 100, 50] as const;
/** A change this close to the wanted one is the wanted one. */
const CLOSE_KPERSECOND = 1e-9;
/** Enough for an output to a millionth. */
const HALVINGS = 20;
const JOULES_PER_KWH = 3.6e6;

/** The simulation as it goes. */
interface Run {
  state: KilnState;
  seconds: number;
  /** Full-power seconds so far. */
  fullSeconds: number;
  readonly times: number[];
  readonly temps: number[];
}

/**
 * A schedule as a learned kiln would fire it, from the room's temperature or another start.
 * The controller gives just the power that the ramp needs, and its set point waits for the kiln.
 * Two nodes when the logs carried them; otherwise one, with less climb above 1000 °C.
 * @throws RangeError when there is no segment or a ramp points the wrong way.
 */
export function predictFiring(
  learned: LearnedKiln,
  plan: {
    readonly segments: readonly AskedSegment[];
    readonly startC?: number;
    readonly roomC?: number;
  },
): PredictedFiring {
  if (plan.segments.length === 0) throw new RangeError("predictFiring: no segments");
  const roomC = plan.roomC ?? learned.roomC;
  const startC = plan.startC ?? roomC;
  const rates = ratesOf(learned);
  const kWhOf = energyBy(learned);
  const run: Run = {
    state: { hotC: startC, brickC: startC },
    seconds: 0,
    fullSeconds: 0,
    times: [0],
    temps: [startC],
  };
  const segments: PredictedSegment[] = [];
  let stalled: PredictedFiring["stalled"] = null;
  for (const [segment, asked] of plan.segments.entries()) {
    const went = fireSegment(run, { asked, segment, rates, roomC, kWhOf });
    if (went === null) {
      stalled = { segment, tempC: run.state.hotC };
      break;
    }
    segments.push(went);
  }
  const endSeconds = stalled === null ? run.seconds : null;
  const cooledTo = coolDown(run, rates, roomC);
  const { tariffPerKWh } = learned;
  const energyKWh = kWhOf(run.fullSeconds);
  return {
    curve: makeCurve(run.times, run.temps),
    segments,
    endSeconds,
    stalled,
    cooledTo,
    energyKWh,
    cost: energyKWh === null || tariffPerKWh === null ? null : energyKWh * tariffPerKWh,
  };
}

/** Energy of so many seconds at full power; the fastest climb alone does not tell the power's share. */
function energyBy({ power, powerWatt }: LearnedKiln): (fullSeconds: number) => number | null {
  return (fullSeconds) =>
    powerWatt === null || power.from !== "output"
      ? null
      : (fullSeconds * powerWatt) / JOULES_PER_KWH;
}

function ratesOf(learned: LearnedKiln): KilnRates {
  if (learned.twoNode !== null) return twoNodeRates(learned.twoNode);
  const { cooling, power } = learned;
  return ({ hotC }, { output, roomC }) => {
    const loss = lossKPerSecond(cooling, hotC, roomC);
    const net = power.pullKPerSecond * output - loss;
    return { hotC: net > 0 ? climbShare(hotC) * net : net, brickC: 0 };
  };
}

interface Segmented {
  readonly asked: AskedSegment;
  readonly segment: number;
  readonly rates: KilnRates;
  readonly roomC: number;
  readonly kWhOf: (fullSeconds: number) => number | null;
}

/** One ramp and its hold; null when the kiln stalls on the way. */
function fireSegment(run: Run, given: Segmented): PredictedSegment | null {
  const { asked, segment } = given;
  const fromC = run.state.hotC;
  const startSeconds = run.seconds;
  const startFullSeconds = run.fullSeconds;
  const rising = asked.toC > fromC;
  const wantedKPerSecond = wantedRate(asked, rising);
  let behindFromC: number | null = null;
  while (rising ? run.state.hotC < asked.toC - 0.01 : run.state.hotC > asked.toC + 0.01) {
    const before = run.state.hotC;
    step(run, given, towards(asked.toC, wantedKPerSecond));
    const went = (run.state.hotC - before) / STEP_SECONDS;
    const needed = towards(asked.toC, wantedKPerSecond)(before);
    if (Math.abs(went) < STALLED_CPERHOUR / 3600 && Math.abs(needed) > Math.abs(went) * 1.5)
      return null;
    if (asked.rateCPerHour !== "free" && Math.abs(went) < Math.abs(needed) * (1 - BEHIND_SHARE))
      behindFromC ??= before;
  }
  const rampEndSeconds = run.seconds;
  const rampSeconds = rampEndSeconds - startSeconds;
  const rampFullSeconds = run.fullSeconds - startFullSeconds;
  keep(run);
  while (run.seconds < rampEndSeconds + asked.holdSeconds)
    step(run, given, towards(asked.toC, Number.POSITIVE_INFINITY));
  keep(run);
  const plannedSeconds =
    asked.rateCPerHour === "free" ? rampSeconds : (asked.toC - fromC) / wantedKPerSecond;
  const late = rampSeconds - plannedSeconds;
  const behind = behindFromC !== null && late > BEHIND_SHARE * plannedSeconds;
  return {
    segment,
    fromC,
    toC: asked.toC,
    startSeconds,
    rampEndSeconds,
    endSeconds: run.seconds,
    meanCPerHour: rampSeconds === 0 ? 0 : ((asked.toC - fromC) * 3600) / rampSeconds,
    behindSeconds: behind ? late : 0,
    behindFromC: behind ? behindFromC : null,
    rampOutput: rampSeconds === 0 ? 0 : rampFullSeconds / rampSeconds,
    energyKWh: given.kWhOf(run.fullSeconds - startFullSeconds),
  };
}

/** Signed [K/s]; without end where `free` is asked. */
function wantedRate({ toC, rateCPerHour }: AskedSegment, rising: boolean): number {
  if (rateCPerHour === "free") return rising ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  if (rising !== rateCPerHour > 0)
    throw new RangeError(`predictFiring: ${rateCPerHour} °C/h does not lead to ${toC} °C`);
  return rateCPerHour / 3600;
}

/** The change that is asked of the next step [K/s]: at the ramp's rate, but not past its goal. */
function towards(toC: number, rateKPerSecond: number): (hotC: number) => number {
  return (hotC) => {
    const goal = (toC - hotC) / STEP_SECONDS;
    const size = Math.min(Math.abs(goal), Math.abs(rateKPerSecond));
    return Math.sign(goal) * size;
  };
}

/** One step with the power that the wanted change needs, as far as there is that much. */
function step(
  run: Run,
  { rates, roomC }: Pick<Segmented, "rates" | "roomC">,
  wanted: (hotC: number) => number,
): void {
  const change = (output: number) => rates(run.state, { output, roomC }).hotC;
  advance(run, rates, { output: outputFor(change, wanted(run.state.hotC)), roomC });
}

/** The output, 0–1, that gives a change [K/s]; by halving, since a climb may be counted at less than a fall. */
function outputFor(change: (output: number) => number, wantedKPerSecond: number): number {
  if (change(0) >= wantedKPerSecond) return 0;
  if (change(1) <= wantedKPerSecond) return 1;
  const straight = (wantedKPerSecond - change(0)) / (change(1) - change(0));
  if (Math.abs(change(straight) - wantedKPerSecond) < CLOSE_KPERSECOND) return straight;
  let low = 0;
  let high = 1;
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (low + high) / 2;
    if (change(middle) < wantedKPerSecond) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function advance(
  run: Run,
  rates: KilnRates,
  drive: { readonly output: number; readonly roomC: number },
): void {
  run.state = stateAfter(rates, run.state, drive, STEP_SECONDS);
  run.seconds += STEP_SECONDS;
  run.fullSeconds += drive.output * STEP_SECONDS;
  if (run.seconds % (KEPT_EVERY * STEP_SECONDS) === 0) keep(run);
}

/** A point of the curve, so that no peak and no corner is lost between those that are kept anyway. */
function keep(run: Run): void {
  if (run.times.at(-1) === run.seconds) return;
  run.times.push(run.seconds);
  run.temps.push(run.state.hotC);
}

/** Power off and lid shut until 50 °C, or until it hardly falls any more. */
function coolDown(run: Run, rates: KilnRates, roomC: number): PredictedFiring["cooledTo"] {
  const reached: { tempC: number; seconds: number }[] = [];
  for (const tempC of WAITED_FOR_C) {
    const passed = passedAt(run, tempC);
    if (passed !== null) {
      reached.push({ tempC, seconds: passed });
      continue;
    }
    while (run.state.hotC > tempC) {
      const before = run.state.hotC;
      advance(run, rates, { output: 0, roomC });
      if (((before - run.state.hotC) * 3600) / STEP_SECONDS < STALLED_CPERHOUR) return reached;
    }
    reached.push({ tempC, seconds: run.seconds });
  }
  return reached;
}

/** When the programme itself had fallen to a temperature for good; null when it ends hotter. */
function passedAt(run: Run, tempC: number): number | null {
  if (run.state.hotC > tempC) return null;
  const last = run.temps.findLastIndex((temp) => temp > tempC);
  return last < 0 ? null : run.times[Math.min(last + 1, run.times.length - 1)]!;
}
