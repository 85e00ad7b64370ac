import { newWireLimit, type WireClass } from "./newWireLimits.ts";
import type { ThermocoupleType } from "./ThermocoupleType.ts";

/**
 * One sigma of all but the wire's own limit: place in the kiln, wear, sheath [K]. Reported firings
 * scatter by 10 K, mostly with type K of the standard class at about 1222 °C, whose limit of 9.2 K
 * counts 5.3 K; √(10² − 5.3²) is left. Own estimate.
 */
const PLACE_AND_WEAR_SIGMA_K = 8.5;

/**
 * One sigma of thermocouple and place in the kiln [K] when type and class of the wire are known:
 * the new-wire limit over √3, as for an error that may lie anywhere within it, and what place and
 * wear add whatever the wire.
 *
 * @returns null where the class gives no limit at the temperature [°C].
 */
export function sensorSigmaK(
  type: ThermocoupleType,
  wireClass: WireClass,
  tempC: number,
): number | null {
  const { limitK } = newWireLimit(type, wireClass, tempC);
  return limitK === null ? null : Math.hypot(limitK / Math.sqrt(3), PLACE_AND_WEAR_SIGMA_K);
}
