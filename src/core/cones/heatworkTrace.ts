import { type Curve, makeCurve } from "../curve/Curve.ts";
import { kelvinFromCelsius } from "../units/temperature.ts";
import { cumulateBudget, runningPeakC } from "./budget.ts";
import type { ConeSeries } from "./cone.ts";
import { anchored, type ConeModel, coneModel } from "./coneModel.ts";
import { logOf } from "./followCone.ts";

/** Heatwork at which a trace begins and ends: before it nothing shows, after it the cone lies flat. */
const FIRST_SHOWN = 0.02;
const LAST_SHOWN = 2;
/** A trace that stays below the last shown value ends when this share of its final value is reached. */
const SETTLED = 0.999;

/** One cone falling: its heatwork against time, 1 = down. */
export interface HeatworkTrace {
  readonly cone: string;
  /** [s from start], rising. */
  readonly timesSeconds: Float64Array;
  /** Share of the budget, anchored to the table as in `heatworkOf`; never falls. */
  readonly heatwork: Float64Array;
}

/**
 * How cones fell during a Curve, for a chart.
 * Each trace covers the time in which its cone does something, from 2 % of the budget to twice the
 * budget or to where it settles, at evenly spaced moments; the same anchoring as `heatworkOf`.
 *
 * @param input.cones Names of the series, as parsed; an unknown one throws a RangeError.
 * @param input.points Samples a trace, at least 2; 121 unless said.
 */
export function heatworkTrace(input: {
  readonly curve: Curve;
  readonly series: ConeSeries;
  readonly cones: readonly string[];
  readonly offsetK?: number;
  readonly points?: number;
}): readonly HeatworkTrace[] {
  const offsetK = input.offsetK ?? 0;
  const points = input.points ?? 121;
  if (points < 2) throw new RangeError(`heatworkTrace: ${points} points`);
  return input.cones.map((cone) => {
    const model = coneModel(input.series, cone);
    const window = fallingWindow(input.curve, heatworkAlong(model, input.curve, offsetK));
    const wanted = Float64Array.from(
      { length: points },
      (_, i) => window.from + ((window.to - window.from) * i) / (points - 1),
    );
    wanted[points - 1] = window.to;
    const finer = withPointsAt(input.curve, wanted);
    const heatwork = heatworkAlong(model, finer, offsetK);
    return { cone, timesSeconds: wanted, heatwork: pick(finer.timesSeconds, heatwork, wanted) };
  });
}

/** Anchored heatwork at each point of a Curve; a cone that has fallen does not rise again. */
function heatworkAlong(model: ConeModel, curve: Curve, offsetK: number): Float64Array {
  const peaksC = runningPeakC(curve.tempsC);
  const budget = new Float64Array(peaksC.length);
  cumulateBudget(model, { curve, offsetK, peakC: peaksC.at(-1)! }, budget);
  let most = 0;
  return budget.map((value, i) => {
    const peakK = kelvinFromCelsius(peaksC[i]!) + offsetK;
    if (value > 0) most = Math.max(most, anchored(model, peakK, logOf(value)).heatwork);
    return most;
  });
}

function fallingWindow(curve: Curve, heatwork: Float64Array): { from: number; to: number } {
  const final = heatwork.at(-1)!;
  const start = heatwork.findIndex((value) => value >= FIRST_SHOWN * Math.min(1, final));
  const end = heatwork.findIndex((value) => value >= Math.min(LAST_SHOWN, SETTLED * final));
  return {
    from: curve.timesSeconds[Math.max(0, start - 1)]!,
    to: curve.timesSeconds[Math.max(1, end)]!,
  };
}

/** The same Curve with extra points on its straight pieces; none inside gaps. */
function withPointsAt(curve: Curve, wanted: Float64Array): Curve {
  const { timesSeconds, tempsC, gaps } = curve;
  const times: number[] = [];
  const temps: number[] = [];
  let next = 0;
  for (let i = 0; i < timesSeconds.length; i++) {
    const end = timesSeconds[i]!;
    const start = timesSeconds[i - 1]!;
    const inGap = gaps.some((gap) => gap.fromSeconds === start);
    for (; next < wanted.length && wanted[next]! <= end; next++) {
      const at = wanted[next]!;
      if (i === 0 || inGap || at <= start || at === end) continue;
      const share = (at - start) / (end - start);
      times.push(at);
      temps.push(tempsC[i - 1]! + share * (tempsC[i]! - tempsC[i - 1]!));
    }
    times.push(end);
    temps.push(tempsC[i]!);
  }
  return makeCurve(times, temps, gaps);
}

/** Values at the wanted times; inside a gap, the last value before it. */
function pick(times: Float64Array, values: Float64Array, wanted: Float64Array): Float64Array {
  let at = 0;
  return wanted.map((time) => {
    while (at + 1 < times.length && times[at + 1]! <= time) at++;
    return values[at]!;
  });
}
