import { type Seeded, seeded } from "../../support/demo/seeded.ts";
import type { Levels } from "./axes.ts";

/** What the thermocouples of a made-up kiln show, and what its controller wants. */
export interface FiredZones {
  /** Temperature of each zone at each sample [°C], before it is written. */
  readonly zonesC: readonly (readonly number[])[];
  /** The programme's exact temperature [°C]. */
  readonly setPointC: readonly number[];
}

/** One ramp and hold of an invented programme. */
interface Leg {
  readonly rateCPerHour: number;
  readonly targetC: number;
  readonly holdHours: number;
}

/** Invented programmes of common shapes; the last cools by itself after them. */
const PROGRAMMES: Readonly<Record<Levels["shape"], readonly Leg[]>> = {
  bisque: [
    { rateCPerHour: 60, targetC: 120, holdHours: 1 },
    { rateCPerHour: 100, targetC: 600, holdHours: 0 },
    { rateCPerHour: 150, targetC: 1000, holdHours: 0.25 },
  ],
  "cone 5": [
    { rateCPerHour: 120, targetC: 600, holdHours: 0 },
    { rateCPerHour: 180, targetC: 1090, holdHours: 0 },
    { rateCPerHour: 60, targetC: 1190, holdHours: 0.25 },
  ],
  "cone 10": [
    { rateCPerHour: 120, targetC: 600, holdHours: 0 },
    { rateCPerHour: 200, targetC: 1180, holdHours: 0 },
    { rateCPerHour: 60, targetC: 1285, holdHours: 0.3 },
  ],
  "cooling only": [],
  "hold only": [{ rateCPerHour: 150, targetC: 905, holdHours: 400 }],
  candling: [{ rateCPerHour: 45, targetC: 115, holdHours: 400 }],
};

/** Hours in which a made-up kiln loses 63 % of its heat by itself. */
const COOLING_HOURS = 6;
/** Hours by which the kiln lags behind its programme. */
const LAG_HOURS = 0.06;
const ROOM_C = 19;

/** A firing sampled at times [s from the start of the log]. */
export function firedZones(
  levels: Levels,
  seconds: readonly number[],
  { seed, zones }: { readonly seed: number; readonly zones: number },
): FiredZones {
  const random = seeded(seed);
  const programme = programmeOf(levels, startOf(levels, random));
  const parksAtZero = random.even() < 0.5;
  const setPointC = seconds.map((second) => wantedC(programme, second / 3600, parksAtZero));
  const lead = seconds.map((second) => measuredC(programme, second / 3600 - LAG_HOURS));
  const sigma = { none: 0, "0.3 K": 0.3, "1 K": 1 }[levels.noise];
  const zonesC = Array.from({ length: zones }, (_, zone) => {
    const share = 1 - 0.013 * zone;
    const phase = random.even() * 6;
    return lead.map((tempC, i) => {
      const second = seconds[i] as number;
      const slow = 2 * zone * Math.sin(second / 4000 + phase);
      // The controller switches, and the kiln answers: no measured ramp is an exact line.
      const ripple = 1.5 * Math.sin(second / 170 + 2 * phase) + 0.8 * Math.sin(second / 61 + phase);
      const sway = (slow + ripple) * warmth(tempC);
      return ROOM_C + (tempC - ROOM_C) * share + sway + sigma * random.normal();
    });
  });
  return { zonesC, setPointC };
}

/** How far a kiln is from cold, from 0 to 1: zones sway only when it is hot. */
function warmth(tempC: number): number {
  return Math.min(1, Math.max(0, tempC - 40) / 300);
}

function startOf(levels: Levels, random: Seeded): number {
  if (levels.shape === "cooling only") return 900 + Math.round(random.even() * 330);
  if (levels.shape === "hold only") return 903;
  return levels.begin === "cold" ? 14 + random.even() * 14 : 60 + Math.round(random.even() * 220);
}

interface Ramp extends Leg {
  readonly fromHours: number;
  readonly untilHours: number;
  readonly fromC: number;
}

interface Programme {
  readonly startC: number;
  readonly ramps: readonly Ramp[];
  readonly endHours: number;
  readonly endC: number;
}

function programmeOf(levels: Levels, startC: number): Programme {
  const ramps: Ramp[] = [];
  let fromHours = 0;
  let fromC = startC;
  for (const leg of PROGRAMMES[levels.shape].filter(({ targetC }) => targetC > startC)) {
    const untilHours = fromHours + (leg.targetC - fromC) / leg.rateCPerHour + leg.holdHours;
    ramps.push({ ...leg, fromHours, untilHours, fromC });
    fromHours = untilHours;
    fromC = leg.targetC;
  }
  return { startC, ramps, endHours: fromHours, endC: fromC };
}

function rampC(programme: Programme, hours: number): number {
  if (hours < 0) return programme.startC;
  const ramp = programme.ramps.find(({ untilHours }) => hours < untilHours);
  if (ramp === undefined) return programme.endC;
  return Math.min(ramp.targetC, ramp.fromC + ramp.rateCPerHour * (hours - ramp.fromHours));
}

/** After its end a controller parks its set point at zero, or runs it down in a line. */
function wantedC(programme: Programme, hours: number, parksAtZero: boolean): number {
  const after = hours - programme.endHours;
  if (after < 0) return rampC(programme, hours);
  return parksAtZero ? 0 : Math.max(ROOM_C, programme.endC - 150 * after);
}

/** The kiln behind its programme, which cools by itself after it. */
function measuredC(programme: Programme, hours: number): number {
  const after = hours - programme.endHours;
  if (after < 0) return rampC(programme, hours);
  return ROOM_C + (programme.endC - ROOM_C) * Math.exp(-after / COOLING_HOURS);
}
