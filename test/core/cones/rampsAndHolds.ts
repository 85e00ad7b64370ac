import { type Curve, makeCurve } from "../../../src/core/curve/Curve.ts";
import {
  celsiusDeltaFromFahrenheitDelta,
  celsiusFromFahrenheit,
} from "../../../src/core/units/temperature.ts";

/** One step of a firing: a ramp, or a hold. */
export type Step =
  | { readonly toC: number; readonly rateCPerHour: number }
  | { readonly holdHours: number };

/** A ramp in the units of most quoted schedules. */
export function rampF(rateFPerHour: number, toF: number): Step {
  return {
    toC: celsiusFromFahrenheit(toF),
    rateCPerHour: celsiusDeltaFromFahrenheitDelta(rateFPerHour),
  };
}

/** A ramp up or down, the rate without its sign. */
export function ramp(rateCPerHour: number, toC: number): Step {
  return { toC, rateCPerHour };
}

/** A hold. */
export function hold(hours: number): Step {
  return { holdHours: hours };
}

/** A Curve from steps, beginning at 25 °C. */
export function firing(...steps: readonly Step[]): Curve {
  const times = [0];
  const temps = [25];
  let hours = 0;
  let tempC = 25;
  for (const step of steps) {
    if ("holdHours" in step) {
      hours += step.holdHours;
    } else {
      hours += Math.abs(step.toC - tempC) / step.rateCPerHour;
      tempC = step.toC;
    }
    times.push(hours * 3600);
    temps.push(tempC);
  }
  return makeCurve(times, temps);
}
