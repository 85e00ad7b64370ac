import type { Curve } from "../curve/Curve.ts";
import { peakOf } from "../curve/peakOf.ts";
import { type CoolingConstants, climbShare, lossKPerSecond } from "./heatBalance.ts";
import type { ReachRow } from "./LearnedKiln.ts";
import { type Speed, speedsBetween } from "./speeds.ts";
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
export function climbCPerHour(balance: Balance, tempC: number): number {
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
