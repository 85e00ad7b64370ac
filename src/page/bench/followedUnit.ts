import type { TemperatureUnit } from "../../core/units/temperature.ts";
import type { Work } from "./state.ts";

/**
 * The work in the unit of what was laid down: °F is taken up until somebody picks a unit by hand.
 * Nothing goes back to °C by itself, which is what a page shows that knows nothing of its reader.
 */
export function followedUnit(work: Work, found: TemperatureUnit): Work {
  const follows = found === "F" && work.unit !== found && !work.unitChosen;
  return follows ? { ...work, unit: found } : work;
}
