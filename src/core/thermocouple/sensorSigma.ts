import { newWireLimit, type WireClass } from "./newWireLimits.ts";
import type { ThermocoupleType } from "./ThermocoupleType.ts";

/**
 * One sigma of thermocouple and place in the kiln [K] when type and class of the wire are known.
 * The usual one stands mostly on type K of the standard class, so its new-wire limit over √3 (as for
 * an error that may lie anywhere within it) is taken out of it and that of this wire put in: what
 * place, sheath and wear add stays, whatever the wire.
 *
 * @param usualSigmaK What reported firings scatter by at that temperature [K].
 * @returns null where the class gives no limit at the temperature [°C].
 */
export function sensorSigmaK(
  wire: { readonly type: ThermocoupleType; readonly wireClass: WireClass },
  tempC: number,
  usualSigmaK: number,
): number | null {
  const { limitK } = newWireLimit(wire.type, wire.wireClass, tempC);
  const common = newWireLimit("K", "standard", tempC).limitK ?? 0;
  const rest = Math.max(0, usualSigmaK ** 2 - common ** 2 / 3);
  return limitK === null ? null : Math.sqrt(limitK ** 2 / 3 + rest);
}
