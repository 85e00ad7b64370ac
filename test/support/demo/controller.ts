/** One ramp of a controller's programme, then an optional hold. */
export interface Leg {
  readonly toC: number;
  /** Positive, whichever way it goes. */
  readonly rateCPerHour: number | "free";
  readonly holdMinutes?: number;
}

/** Where a controller stands in its programme. */
export interface ControllerState {
  /** Null once the programme has ended and the elements stay off. */
  readonly setC: number | null;
  readonly leg: number;
  readonly heldSeconds: number;
  /** Integral part of the output. */
  readonly integral: number;
  /** Output asked for, 0–1. */
  readonly output: number;
}

/** What a controller sees in a moment. */
export interface ControllerMoment {
  readonly readingC: number;
  readonly seconds: number;
}

/** The programme waits while the reading is further than this from the set point [K]. */
const WAITS_BEYOND_K = 12;
/** Rate of the set point where the programme says `free` [°C/h]. */
const FREE_CPERHOUR = 2000;
/** Output per kelvin of error. */
const GAIN_PER_K = 0.02;
/** Time in which a steady error adds as much output again [s]. */
const RESET_SECONDS = 900;

/** A controller as it is switched on at a reading. */
export function controllerAt(readingC: number): ControllerState {
  return { setC: readingC, leg: 0, heldSeconds: 0, integral: 0, output: 0 };
}

/** The controller a moment later: the set point moves, then a PI rule asks for power. */
export function controllerAfter(
  legs: readonly Leg[],
  state: ControllerState,
  moment: ControllerMoment,
): ControllerState {
  const moved = programmeAfter(legs, state, moment);
  if (moved.setC === null) return { ...moved, integral: 0, output: 0 };
  const errorK = moved.setC - moment.readingC;
  const wanted = GAIN_PER_K * errorK + state.integral;
  const stuck = (wanted > 1 && errorK > 0) || (wanted < 0 && errorK < 0);
  const gained = stuck ? 0 : (GAIN_PER_K * errorK * moment.seconds) / RESET_SECONDS;
  const output = Math.min(1, Math.max(0, wanted));
  return { ...moved, integral: state.integral + gained, output };
}

function programmeAfter(
  legs: readonly Leg[],
  state: ControllerState,
  { readingC, seconds }: ControllerMoment,
): ControllerState {
  const leg = legs[state.leg];
  if (leg === undefined || state.setC === null) return { ...state, setC: null };
  if (state.setC === leg.toC) return held(leg, state, seconds);
  const up = leg.toC > state.setC;
  const aheadK = up ? state.setC - readingC : readingC - state.setC;
  if (aheadK > WAITS_BEYOND_K) return state;
  const rate = leg.rateCPerHour === "free" ? FREE_CPERHOUR : leg.rateCPerHour;
  const stepK = (rate * seconds) / 3600;
  const setC = up ? Math.min(leg.toC, state.setC + stepK) : Math.max(leg.toC, state.setC - stepK);
  return { ...state, setC, heldSeconds: 0 };
}

function held(leg: Leg, state: ControllerState, seconds: number): ControllerState {
  const heldSeconds = state.heldSeconds + seconds;
  if (heldSeconds < (leg.holdMinutes ?? 0) * 60) return { ...state, heldSeconds };
  return { ...state, leg: state.leg + 1, heldSeconds: 0 };
}

/** Time after which the relay starts anew [s]. */
const RELAY_CYCLE_SECONDS = 20;

/** Share of a step for which the relay is closed: on first, then off, once a cycle. */
export function relayShare(output: number, fromSeconds: number, stepSeconds: number): number {
  const phase = fromSeconds % RELAY_CYCLE_SECONDS;
  const onSeconds = output * RELAY_CYCLE_SECONDS - phase;
  return Math.min(1, Math.max(0, onSeconds / stepSeconds));
}
