import { emfMillivolts } from "./emf.ts";
import type { ThermocoupleType } from "./ThermocoupleType.ts";
import { type EmfReading, temperatureFromEmf } from "./temperatureFromEmf.ts";

/**
 * Temperature of the tip from the emf [mV] measured at terminals that are themselves at a
 * temperature [°C]. The emf of the terminals is added before the emf is turned into a temperature;
 * adding their degrees afterwards would be wrong by up to 14 °C with type R.
 *
 * @throws RangeError when the cold junction is outside the range of the type.
 */
export function compensated(
  type: ThermocoupleType,
  measured: { readonly emfMv: number; readonly coldJunctionC: number },
): EmfReading {
  const ownMv = emfMillivolts(type, measured.coldJunctionC);
  if (ownMv === null)
    throw new RangeError(`compensated: ${measured.coldJunctionC} °C at the terminals of ${type}`);
  return temperatureFromEmf(type, measured.emfMv + ownMv);
}
