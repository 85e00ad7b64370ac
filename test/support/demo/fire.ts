import { type Curve, makeCurve } from "../../../src/core/curve/Curve.ts";
import { kelvinFromCelsius } from "../../../src/core/units/temperature.ts";
import { controllerAfter, controllerAt, type Leg, relayShare } from "./controller.ts";
import { type KilnBuild, kilnAfter, type Opening, SHUT } from "./kiln.ts";
import { type Seeded, seeded } from "./seeded.ts";

/** A thermocouple and the place it sits in. */
export interface Probe {
  /** How much hotter its place is than the kiln on the whole, at 1000 °C above the room [K]. */
  readonly placeK: number;
  /** How late its place follows [s]. */
  readonly placeLagSeconds: number;
  /** How late the sheath follows its place [s]. */
  readonly sheathLagSeconds: number;
  /** How much too high it reads, at 1000 °C [K]. */
  readonly readsHighK: number;
  /** One sigma of a reading [K]. */
  readonly noiseK: number;
}

/** The lid or a vent, changed once the kiln has fallen below a reading. */
interface Opened {
  readonly belowC: number;
  readonly opening: Opening;
}

/** Everything that decides how a firing goes. */
export interface FiringPlan {
  readonly seed: number;
  readonly build: KilnBuild;
  /** Share of their first power that the elements still have. */
  readonly elements: number;
  readonly roomC: number;
  readonly legs: readonly Leg[];
  /** The controller follows the first. */
  readonly probes: readonly Probe[];
  readonly opened: readonly Opened[];
  /** The logger is stopped once the reading has fallen below this … */
  readonly stopBelowC: number;
  /** … or after this long. */
  readonly stopAfterHours: number;
  readonly intervalSeconds: number;
  /** Somebody switched the controller off then; null when the programme ran to its end. */
  readonly switchedOffAfterHours: number | null;
  /** A relay that sticks closed, whatever the controller asks for, until the breaker is thrown [h]. */
  readonly stuckRelay?: { readonly fromHours: number; readonly untilHours: number };
}

/** One row of the logger, before it is written down. */
export interface Sample {
  readonly seconds: number;
  readonly readingsC: readonly number[];
  /** Null once the programme has ended. */
  readonly setC: number | null;
  /** Share of full power, 0–1. */
  readonly output: number;
}

/** What happened, as the logger saw it and as the ware felt it. */
export interface Fired {
  readonly samples: readonly Sample[];
  /** The ware beside the first thermocouple; no instrument knows it. */
  readonly ware: Curve;
}

const STEP_SECONDS = 5;

interface ProbeState {
  readonly placeC: number;
  readonly sheathC: number;
}

/** Lets a kiln, a controller and thermocouples work through a plan. */
export function fire(plan: FiringPlan): Fired {
  const random = seeded(plan.seed);
  const samples: Sample[] = [];
  const wareTemps: number[] = [];
  let kiln = { hotC: plan.roomC, brickC: plan.roomC };
  let probes = plan.probes.map(() => ({ placeC: plan.roomC, sheathC: plan.roomC }));
  let controller = controllerAt(plan.roomC);
  let wareC = plan.roomC;
  let peakC = plan.roomC;
  for (let seconds = 0; seconds <= plan.stopAfterHours * 3600; seconds += STEP_SECONDS) {
    const readingsC = probes.map((probe, p) => reading(plan.probes[p] as Probe, probe, random));
    const firstC = readingsC[0] as number;
    peakC = Math.max(peakC, firstC);
    if (seconds % plan.intervalSeconds === 0) {
      samples.push({ seconds, readingsC, setC: controller.setC, output: controller.output });
      wareTemps.push(wareC);
      if (peakC > 900 && firstC < plan.stopBelowC) break;
    }
    controller = controllerAfter(legsAt(plan, seconds), controller, {
      readingC: firstC,
      seconds: STEP_SECONDS,
    });
    kiln = kilnAfter(plan.build, kiln, {
      power: plan.elements * powerShare(plan, controller.output, seconds),
      roomC: plan.roomC,
      opening: peakC > firstC + 50 ? openingAt(plan.opened, firstC) : SHUT,
      seconds: STEP_SECONDS,
    });
    probes = probes.map((probe, p) => probeAfter(plan.probes[p] as Probe, probe, kiln.hotC, plan));
    wareC += (((probes[0] as ProbeState).placeC - wareC) * STEP_SECONDS) / wareLagSeconds(wareC);
  }
  const times = samples.map(({ seconds }) => seconds);
  return { samples, ware: makeCurve(times, wareTemps) };
}

function legsAt({ legs, switchedOffAfterHours }: FiringPlan, seconds: number): readonly Leg[] {
  const off = switchedOffAfterHours !== null && seconds >= switchedOffAfterHours * 3600;
  return off ? [] : legs;
}

/** Share of power that goes into the elements: what the controller asks for, unless a relay sticks. */
function powerShare({ stuckRelay }: FiringPlan, output: number, seconds: number): number {
  if (stuckRelay === undefined || seconds < stuckRelay.fromHours * 3600)
    return relayShare(output, seconds, STEP_SECONDS);
  return seconds < stuckRelay.untilHours * 3600 ? 1 : 0;
}

function openingAt(opened: readonly Opened[], readingC: number): Opening {
  return opened.findLast(({ belowC }) => readingC < belowC)?.opening ?? SHUT;
}

function probeAfter(probe: Probe, state: ProbeState, hotC: number, plan: FiringPlan): ProbeState {
  const goalC = hotC + (probe.placeK * (hotC - plan.roomC)) / 1000;
  const placeC = state.placeC + nearing(goalC - state.placeC, probe.placeLagSeconds);
  const sheathC = state.sheathC + nearing(placeC - state.sheathC, probe.sheathLagSeconds);
  return { placeC, sheathC };
}

function reading(probe: Probe, state: ProbeState, random: Seeded): number {
  const highK = (probe.readsHighK * state.sheathC) / 1000;
  return state.sheathC + highK + probe.noiseK * random.normal();
}

/** Share of a difference that is made up in one step. */
function nearing(differenceK: number, lagSeconds: number): number {
  return differenceK * Math.min(1, STEP_SECONDS / Math.max(STEP_SECONDS, lagSeconds));
}

/** Ware takes up heat by radiation: twelve minutes late at 573 °C, two and a half at 1180 °C, an hour when cold. */
function wareLagSeconds(wareC: number): number {
  return Math.min(3600, 720 * (kelvinFromCelsius(573) / kelvinFromCelsius(wareC)) ** 3);
}
