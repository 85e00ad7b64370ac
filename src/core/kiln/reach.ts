import { type Curve, peakOf } from "../curve/Curve.ts";
import {
  type AssumedKiln,
  type CoolingConstants,
  climbShare,
  type LearnedKiln,
  lossKPerSecond,
  type OutputSeries,
  type PullAt,
  type ReachRow,
} from "./LearnedKiln.ts";
import { outputMean, SPEED_WINDOW_SECONDS, type Speed, speedsBetween } from "./naturalFall.ts";
import { type TwoNodeConstants, twoNodeRates } from "./twoNode.ts";

/** What climbs and falls are worked out from. */
export interface Balance {
  readonly cooling: CoolingConstants;
  /** Power over heat capacity [K/s]. */
  readonly pullKPerSecond: number;
  readonly roomC: number;
}

const EVERY_C = 50;
const FROM_C = 100;
const TO_C = 1300;

/** Hottest that is ever asked of the balance [°C]. */
const HOTTEST_C = 2000;

/** Climb with everything on [°C/h], with less above 1000 °C; negative where the kiln cannot hold. */
function climbCPerHour(balance: Balance, tempC: number): number {
  const { cooling, pullKPerSecond, roomC } = balance;
  return 3600 * climbShare(tempC) * (pullKPerSecond - lossKPerSecond(cooling, tempC, roomC));
}

/**
 * Hottest that can be held with everything on [°C], to a degree: with the brick soaked through where
 * it is told apart from the ware, otherwise by the simple balance.
 */
export function ceilingOf(balance: Balance, twoNode: TwoNodeConstants | null): number {
  const { roomC } = balance;
  const climbs = twoNode === null ? null : twoNodeRates(twoNode);
  const gains = (hotC: number) => {
    if (climbs === null || twoNode === null) return climbCPerHour(balance, hotC);
    const { soakPerSecond, outwardPerSecond } = twoNode;
    const brickC =
      (soakPerSecond * hotC + outwardPerSecond * roomC) / (soakPerSecond + outwardPerSecond);
    return climbs({ hotC, brickC }, { output: 1, roomC }).hotC;
  };
  let low = roomC;
  let high = HOTTEST_C;
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    if (gains(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * How fast a kiln goes both ways, every 50 °C up to a little above what its logs reached.
 * A faster climb that was seen goes before the balance: full power does no less.
 */
export function reachRows(curves: readonly Curve[], balance: Balance): readonly ReachRow[] {
  const climbs = curves.flatMap((curve) =>
    speedsBetween(curve, curve.timesSeconds[0]!, peakOf(curve).seconds),
  );
  const hottestC = Math.max(...curves.map((curve) => peakOf(curve).tempC));
  const last = Math.min(TO_C, EVERY_C * Math.ceil(hottestC / EVERY_C));
  return Array.from({ length: Math.floor((last - FROM_C) / EVERY_C) + 1 }, (_, i) => {
    const tempC = FROM_C + i * EVERY_C;
    const seenCPerHour = fastestNear(climbs, tempC);
    return {
      tempC,
      seenCPerHour,
      climbCPerHour: Math.max(0, seenCPerHour ?? 0, climbCPerHour(balance, tempC)),
      fallCPerHour: 3600 * lossKPerSecond(balance.cooling, tempC, balance.roomC),
    };
  });
}

function fastestNear(climbs: readonly Speed[], tempC: number): number | null {
  const rates = climbs
    .filter((climb) => Math.abs(climb.tempC - tempC) <= EVERY_C / 2 && climb.rateCPerHour > 0)
    .map(({ rateCPerHour }) => rateCPerHour);
  return rates.length === 0 ? null : Math.max(...rates);
}

/** Below this [°C] the bricks take up heat much faster than they lose it, and the balance says little. */
const PULL_FROM_C = 300;
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
    .filter(({ tempC, rateCPerHour }) => tempC >= PULL_FROM_C && rateCPerHour > 0)
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

/** A learned kiln in place of the assumed one, for drafting and checking schedules. */
export function asAssumedKiln(learned: LearnedKiln): AssumedKiln {
  const { cooling, power, roomC, powerWatt } = learned;
  const balance = { cooling, pullKPerSecond: power.pullKPerSecond, roomC };
  return {
    fullHeatingCPerHour: (tempC) => Math.max(0, climbCPerHour(balance, tempC)),
    naturalCoolingCPerHour: (tempC) => Math.max(0, 3600 * lossKPerSecond(cooling, tempC, roomC)),
    ...(powerWatt !== null &&
      power.from === "output" && { heatCapacityJPerK: powerWatt / power.pullKPerSecond }),
    learned,
    basis: basisOf(learned),
  };
}

function basisOf({ firings, power }: LearnedKiln): string {
  const names = firings.map(({ name }) => name);
  const logs = names.length === 1 ? names[0] : `${names.length} logs, ${names.join(", ")}`;
  const least =
    power.from === "output" ? "" : "; full heating is the fastest climb seen, the least it can do";
  return `your kiln as learned from ${logs}${least}`;
}
