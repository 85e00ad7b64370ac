import type { Problem } from "../problem.ts";
import { printDuration, printTemperature } from "../units/print.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { UNLOAD_C } from "./checks/unloading.ts";
import type { WantedCooling } from "./newCooling.ts";

/** A hold on the way down lies at least this far below the peak [K]. */
export const BELOW_PEAK_K = 20;

/** A new schedule ends here, so no hold on the way down is cooler [°C]. */
export const COOLEST_HOLD_C = UNLOAD_C;

/** A hold asked for on the way down. */
type Hold = Extract<WantedCooling, { kind: "hold" }>;

/** The problem of a hold hotter than the peak, or so near to it or so long that it makes the cone by itself. */
export function holdTooHot(hold: Hold, peakC: number, unit: TemperatureUnit): Problem {
  const near = hold.atC > peakC - BELOW_PEAK_K;
  const at = `${printDuration(hold.seconds)} at ${printTemperature(hold.atC, unit)}`;
  const peak = printTemperature(peakC, unit);
  return {
    code: "schedule/hold-too-hot",
    what: near
      ? `a hold of ${at} on the way down, and the peak of this cone is ${peak}`
      : `a hold of ${at} on the way down makes more of the cone than it may: no peak above it is left`,
    where: "--cooling",
    expected: near
      ? `a hold at least ${unit === "C" ? "20 °C" : "36 °F"} below the peak, for its heat works on the cone too`
      : `a hold that leaves the peak above it, which is ${peak} before the hold is counted`,
    fix: "a cooler hold",
  };
}

/** The problem of a hold below the end of the schedule; none for another cooling. */
export function holdTooCool(cooling: WantedCooling, unit: TemperatureUnit): readonly Problem[] {
  if (cooling.kind !== "hold" || cooling.atC > COOLEST_HOLD_C) return [];
  return [
    {
      code: "schedule/hold-too-cool",
      what: `a hold at ${printTemperature(cooling.atC, unit)} on the way down`,
      where: "--cooling",
      expected: `a temperature above ${printTemperature(COOLEST_HOLD_C, unit)}, where the schedule ends`,
      fix: `crystals in a glaze want a hold like --cooling "hold ${unit === "C" ? "900C" : "1650F"} ${printDuration(cooling.seconds)}"`,
    },
  ];
}
