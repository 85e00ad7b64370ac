import { type Curve, curveOver, type Gap } from "../../curve/Curve.ts";
import type { LogFault } from "../LogReading.ts";
import { medianStep } from "../statistics.ts";
import { findSpikes } from "./spikes.ts";

/** A channel's readings without what was no reading. */
export interface CleanChannel {
  readonly curve: Curve | null;
  readonly readings: number;
  readonly dropped: number;
  readonly faults: readonly LogFault[];
}

/** No thermocouple reads beyond these [°C]: absolute zero, and the end of the type B tables with room. */
const POSSIBLE_C = { least: -273.15, most: 1850 };
/** Ends of scale at which instruments park an open thermocouple [°C], types K, S and R, B: IEC 60584-1. */
const SCALE_ENDS_C = [1372, 1768, 1820];
/** A gap is a step longer than this many usual ones, and than this many seconds. */
const GAP_STEPS = 5;
const GAP_SECONDS = 120;
/** A change to a neighbour by which an exact zero or end of scale cannot be a reading [K]. */
const OPEN_JUMP_K = 50;

/**
 * A channel as a clean Curve: impossible values and open circuits out, then spikes, gaps marked.
 * The Curve may keep both arrays, so they are not to be written to any more.
 * @param seconds Strictly rising [s from start].
 * @param tempsC Readings beside them [°C], NaN where the cell held none.
 */
export function cleanChannel(
  name: string,
  seconds: Float64Array,
  tempsC: Float64Array,
): CleanChannel {
  const open = openReadings(tempsC);
  const faults: LogFault[] = [];
  const valid = withoutIndices(seconds, tempsC, open);
  if (open.length > 0) faults.push(openFault(name, seconds, open));
  const spikes = findSpikes(valid.times, valid.temps);
  if (spikes.length > 0) faults.push(spikeFault(name, valid.times, { temps: valid.temps, spikes }));
  const good = spikes.length === 0 ? valid : withoutIndices(valid.times, valid.temps, spikes);
  return {
    curve: good.times.length < 2 ? null : curveOver(good.times, good.temps, findGaps(good.times)),
    readings: good.times.length,
    dropped: tempsC.length - good.times.length,
    faults,
  };
}

/**
 * Steps in which nothing was measured.
 * @param usualStep The middle step, when it is known already [s].
 */
export function findGaps(
  seconds: Float64Array,
  usualStep: number = medianStep(seconds),
): readonly Gap[] {
  const least = Math.max(GAP_STEPS * usualStep, GAP_SECONDS);
  const gaps: Gap[] = [];
  for (let i = 1; i < seconds.length; i++) {
    const fromSeconds = seconds[i - 1] as number;
    const toSeconds = seconds[i] as number;
    if (toSeconds - fromSeconds > least) gaps.push({ fromSeconds, toSeconds });
  }
  return gaps;
}

interface Samples {
  readonly times: Float64Array;
  readonly temps: Float64Array;
}

/** Samples that have a temperature and are not at the indices given, which rise. */
function withoutIndices(
  times: Float64Array,
  temps: Float64Array,
  left: readonly number[],
): Samples {
  if (left.length === 0 && !temps.some(Number.isNaN)) return { times, temps };
  const keptTimes = new Float64Array(times.length);
  const keptTemps = new Float64Array(times.length);
  let kept = 0;
  let next = 0;
  for (let i = 0; i < times.length; i++) {
    const temp = temps[i] as number;
    if (i === left[next]) next++;
    else if (!Number.isNaN(temp)) {
      keptTimes[kept] = times[i] as number;
      keptTemps[kept++] = temp;
    }
  }
  return { times: keptTimes.subarray(0, kept), temps: keptTemps.subarray(0, kept) };
}

/** A change from noughts at the beginning by which they cannot be readings [K]; in a coarse log a kiln may leave 0 °C fast. */
const LEADING_JUMP_K = 200;

/** The first reading that is not exactly 0, when it is far from it: then the noughts before it were none. NaN otherwise. */
function leadingParked(tempsC: Float64Array): number {
  const first = tempsC.find((temp) => temp !== 0 && !Number.isNaN(temp)) ?? Number.NaN;
  return Math.abs(first) > LEADING_JUMP_K ? first : Number.NaN;
}

/** Readings that an open or broken circuit gives: impossible ones, and exact parking values after a jump. */
function openReadings(tempsC: Float64Array): readonly number[] {
  const open: number[] = [];
  let last = leadingParked(tempsC);
  for (let i = 0; i < tempsC.length; i++) {
    const temp = tempsC[i] as number;
    if (Number.isNaN(temp)) continue;
    const isImpossible = temp < POSSIBLE_C.least || temp > POSSIBLE_C.most;
    const isParked =
      Math.abs(temp - last) > OPEN_JUMP_K &&
      (temp === 0 || SCALE_ENDS_C.includes(Math.round(temp)));
    if (isImpossible || isParked) open.push(i);
    else last = temp;
  }
  return open;
}

function openFault(name: string, seconds: Float64Array, open: readonly number[]): LogFault {
  const count = open.length;
  return {
    kind: "open",
    channel: name,
    fromSeconds: seconds[open[0] as number] as number,
    toSeconds: seconds[open[count - 1] as number] as number,
    count,
    what: `${name} gave ${count} ${count === 1 ? "value" : "values"} that no thermocouple gives, as an open circuit does; left out.`,
  };
}

function spikeFault(
  name: string,
  times: Float64Array,
  { temps, spikes }: { readonly temps: Float64Array; readonly spikes: readonly number[] },
): LogFault {
  const count = spikes.length;
  const values = spikes.slice(0, 3).map((i) => `${Math.round(temps[i] as number)} °C`);
  const more = count > 3 ? " and others" : "";
  return {
    kind: "spike",
    channel: name,
    fromSeconds: times[spikes[0] as number] as number,
    toSeconds: times[spikes[count - 1] as number] as number,
    count,
    what: `${name} has ${count} ${count === 1 ? "reading" : "readings"} far off the line of its neighbours (${values.join(", ")}${more}); left out.`,
  };
}
