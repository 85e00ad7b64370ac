import type { Curve } from "../curve/Curve.ts";
import { peakOf } from "../curve/peakOf.ts";
import { type CoolingConstants, lossKPerSecond } from "./heatBalance.ts";
import type { OutputSeries, PullAt } from "./LearnedKiln.ts";
import { outputMean } from "./outputMean.ts";
import { SPEED_WINDOW_SECONDS, type Speed, speedsBetween } from "./speeds.ts";

/** Below this [°C] the bricks take up heat much faster than they lose it, and the balance says little. */
const FROM_C = 300;
/** Output under which a moment says little about full power. */
const TELLING_OUTPUT = 0.2;
/** Width of the stretches in which firings are compared [K]. */
const STRETCH_K = 100;
const ENOUGH_MOMENTS = 4;

/** A moment of climbing: what heated, over what the elements gave. */
interface Climb extends Speed {
  /** What the elements must have given [K/s]. */
  readonly givenKPerSecond: number;
  /** Share of full power; null without an output column. */
  readonly output: number | null;
}

/** How hard the elements pull, in one firing. */
export interface Pull {
  /** Power over heat capacity [K/s], by least squares over the climb, or by the fastest moment. */
  readonly pullKPerSecond: number;
  readonly from: "output" | "fastest climb";
  /** By stretches of temperature; empty without an output column. */
  readonly stretches: readonly PullAt[];
}

/**
 * Power over heat capacity from a climb: what heated the kiln and what it lost, over the output.
 * Without an output column the fastest moment is taken for full power, which is the least it can be.
 * @returns null when the log holds no climb from 300 °C up.
 */
export function pullOf(
  firing: { readonly curve: Curve; readonly output: OutputSeries | null; readonly roomC: number },
  cooling: CoolingConstants,
): Pull | null {
  const climbs = climbsOf(firing, cooling);
  const powered = climbs.filter(({ output }) => output !== null && output >= TELLING_OUTPUT);
  if (powered.length >= ENOUGH_MOMENTS)
    return { pullKPerSecond: ratio(powered), from: "output", stretches: stretchesOf(powered) };
  if (climbs.length < ENOUGH_MOMENTS) return null;
  return {
    pullKPerSecond: Math.max(...climbs.map(({ givenKPerSecond }) => givenKPerSecond)),
    from: "fastest climb",
    stretches: [],
  };
}

function climbsOf(
  {
    curve,
    output,
    roomC,
  }: { readonly curve: Curve; readonly output: OutputSeries | null; readonly roomC: number },
  cooling: CoolingConstants,
): readonly Climb[] {
  const half = SPEED_WINDOW_SECONDS / 2;
  return speedsBetween(curve, curve.timesSeconds[0]!, peakOf(curve).seconds)
    .filter(({ tempC, rateCPerHour }) => tempC >= FROM_C && rateCPerHour > 0)
    .map((speed) => ({
      ...speed,
      givenKPerSecond: speed.rateCPerHour / 3600 + lossKPerSecond(cooling, speed.tempC, roomC),
      output: output && outputMean(output, speed.seconds - half, speed.seconds + half),
    }));
}

function ratio(climbs: readonly Climb[]): number {
  let given = 0;
  let squared = 0;
  for (const { givenKPerSecond, output } of climbs) {
    given += givenKPerSecond * (output as number);
    squared += (output as number) ** 2;
  }
  return given / squared;
}

function stretchesOf(climbs: readonly Climb[]): readonly PullAt[] {
  const lows = [...new Set(climbs.map(({ tempC }) => STRETCH_K * Math.floor(tempC / STRETCH_K)))];
  return lows
    .sort((a, b) => a - b)
    .flatMap((lowC) => {
      const highC = lowC + STRETCH_K;
      const inside = climbs.filter(({ tempC }) => tempC >= lowC && tempC < highC);
      return inside.length < ENOUGH_MOMENTS ? [] : [{ lowC, highC, pullKPerSecond: ratio(inside) }];
    });
}
