import type { Curve } from "../../curve/Curve.ts";
import { lastAtOrBefore } from "../../curve/temperatureAt.ts";
import type { LogFault } from "../LogReading.ts";

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
      const value = Math.round(curve.tempsC[run.from] as number);
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
  const value = curve.tempsC[run.from] as number;
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
    const fromSeconds = timesSeconds[from] as number;
    const toSeconds = timesSeconds[i - 1] as number;
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
  if ((timesSeconds[i] as number) < run.fromSeconds) i++;
  for (; i < timesSeconds.length && (timesSeconds[i] as number) <= run.toSeconds; i++) {
    least = Math.min(least, tempsC[i] as number);
    greatest = Math.max(greatest, tempsC[i] as number);
  }
  return greatest - least;
}
