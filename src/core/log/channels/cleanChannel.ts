import { type Curve, curveOver, type Gap, lastAtOrBefore } from "../../curve/Curve.ts";
import { medianStep } from "../../math/statistics.ts";
import type { Channel, LogFault } from "../reading/LogReading.ts";
import type { Column } from "../text/logTable.ts";
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
    const fromSeconds = seconds[i - 1]!;
    const toSeconds = seconds[i]!;
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
    const temp = temps[i]!;
    if (i === left[next]) next++;
    else if (!Number.isNaN(temp)) {
      keptTimes[kept] = times[i]!;
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
    const temp = tempsC[i]!;
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
    fromSeconds: seconds[open[0]!] as number,
    toSeconds: seconds[open[count - 1]!] as number,
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
  const values = spikes.slice(0, 3).map((i) => `${Math.round(temps[i]!)} °C`);
  const more = count > 3 ? " and others" : "";
  return {
    kind: "spike",
    channel: name,
    fromSeconds: times[spikes[0]!] as number,
    toSeconds: times[spikes[count - 1]!] as number,
    count,
    what: `${name} has ${count} ${count === 1 ? "reading" : "readings"} far off the line of its neighbours (${values.join(", ")}${more}); left out.`,
  };
}

/** A named Curve. */
export interface NamedCurve {
  readonly name: string;
  readonly curve: Curve;
}

/** Least length of a run of one value that is looked at [s], and least number of readings in it. */
const LEAST_SECONDS = 1200;
const LEAST_READINGS = 10;
/** Change of another column meanwhile that this one should have followed [K]. */
const MOVED_K = 40;

/** Stretches in which a thermocouple shows one and the same value while another column moves, or, alone, before a jump. */
export function stuckFaults(
  temperatures: readonly NamedCurve[],
  witnesses: readonly NamedCurve[],
): readonly LogFault[] {
  return temperatures.flatMap(({ name, curve }) => {
    const others = [...temperatures, ...witnesses].filter((other) => other.curve !== curve);
    if (others.length === 0) return runsOf(curve).flatMap((run) => frozen(name, curve, run));
    return runsOf(curve).flatMap((run) => {
      const mover = others.find((other) => changeOver(other.curve, run) > MOVED_K);
      if (mover === undefined) return [];
      const value = Math.round(curve.tempsC[run.from]!);
      const fault: LogFault = {
        kind: "stuck",
        channel: name,
        fromSeconds: run.fromSeconds,
        toSeconds: run.toSeconds,
        count: run.to - run.from + 1,
        what: `${name} stays at exactly ${value} °C while ${mover.name} moves by ${Math.round(changeOver(mover.curve, run))} K.`,
      };
      return [fault];
    });
  });
}

/** A run that ends in a jump, as a reading that was frozen and let go does. */
function frozen(name: string, curve: Curve, run: Run): readonly LogFault[] {
  const value = curve.tempsC[run.from]!;
  const next = curve.tempsC[run.to + 1];
  const isGap = curve.gaps.some((gap) => gap.fromSeconds === run.toSeconds);
  if (next === undefined || isGap || Math.abs(next - value) <= MOVED_K) return [];
  return [
    {
      kind: "stuck",
      channel: name,
      fromSeconds: run.fromSeconds,
      toSeconds: run.toSeconds,
      count: run.to - run.from + 1,
      what: `${name} stays at exactly ${Math.round(value)} °C, then jumps by ${Math.round(Math.abs(next - value))} K from one reading to the next.`,
    },
  ];
}

interface Run {
  readonly from: number;
  readonly to: number;
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

function runsOf(curve: Curve): readonly Run[] {
  const { timesSeconds, tempsC } = curve;
  const runs: Run[] = [];
  let from = 0;
  for (let i = 1; i <= tempsC.length; i++) {
    if (i < tempsC.length && tempsC[i] === tempsC[from]) continue;
    const fromSeconds = timesSeconds[from]!;
    const toSeconds = timesSeconds[i - 1]!;
    if (toSeconds - fromSeconds >= LEAST_SECONDS && i - from >= LEAST_READINGS)
      runs.push({ from, to: i - 1, fromSeconds, toSeconds });
    from = i;
  }
  return runs;
}

/** Largest less smallest value of a Curve over the time of a run [K]. */
function changeOver({ timesSeconds, tempsC }: Curve, run: Run): number {
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  let i = Math.max(0, lastAtOrBefore(timesSeconds, run.fromSeconds));
  if (timesSeconds[i]! < run.fromSeconds) i++;
  for (; i < timesSeconds.length && timesSeconds[i]! <= run.toSeconds; i++) {
    least = Math.min(least, tempsC[i]!);
    greatest = Math.max(greatest, tempsC[i]!);
  }
  return greatest - least;
}

/** Highest share and highest percentage that a controller writes, rounding allowed for. */
const WHOLE = 1.001;
const WHOLE_PERCENT = 100.5;

/**
 * An output column as share of full power, 0–1: as it stands, or from percent when the heading says
 * so or a number is over 1. Cells without a number are left out.
 * @returns null when its numbers are no share of anything, or fewer than two.
 */
export function outputFraction(
  column: Column,
  rows: Int32Array,
  seconds: Float64Array,
): NonNullable<Channel["outputFraction"]> | null {
  const times = new Float64Array(rows.length);
  const values = new Float64Array(rows.length);
  let count = 0;
  let lowest = 0;
  let highest = 0;
  for (let i = 0; i < rows.length; i++) {
    const value = column.numbers[rows[i]!] as number;
    if (!Number.isFinite(value)) continue;
    lowest = Math.min(lowest, value);
    highest = Math.max(highest, value);
    times[count] = seconds[i]!;
    values[count++] = value;
  }
  if (count < 2 || lowest < 0 || highest > WHOLE_PERCENT) return null;
  const whole =
    highest > WHOLE || /%|percent|prozent/i.test(`${column.name} ${column.unitText}`) ? 100 : 1;
  return {
    timesSeconds: times.subarray(0, count),
    fraction: values.subarray(0, count).map((value) => Math.min(1, value / whole)),
  };
}
