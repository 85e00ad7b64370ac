import { failed, ok, type Result } from "../problem.ts";
import { parseTemperature } from "../units/parseTemperature.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Alignment } from "./Alignment.ts";

/** Temperatures that firings can be lined up at [°C]: what a kiln has. */
const LOWEST_C = 0;
const HIGHEST_C = 1500;

/**
 * Where firings are lined up, from what a person wrote: `peak`, `start`, `600C`, `"1100 F rising"`.
 * A temperature without a direction is meant on the way down, where cracks are made.
 *
 * @returns `firing/not-an-alignment` for anything else, and outside of 0 to 1500 °C.
 */
export function parseAlignment(
  text: string,
  context: { readonly unit: TemperatureUnit; readonly where: string },
): Result<Alignment> {
  const said = text.trim().toLowerCase();
  if (said === "peak" || said === "start") return ok({ at: said });
  const tempC = parseAlignmentTemperature(
    text.replace(/\b(?:rising|falling)\b/i, "").trim(),
    context,
  );
  if (!tempC.ok) return tempC;
  return ok({ at: /\brising\b/.test(said) ? "rising" : "falling", tempC: tempC.value });
}

/**
 * A temperature that firings are lined up at [°C], from what a person wrote.
 * @returns `firing/not-an-alignment` for anything else, and outside of 0 to 1500 °C.
 */
export function parseAlignmentTemperature(
  text: string,
  context: { readonly unit: TemperatureUnit; readonly where: string },
): Result<number> {
  const tempC = parseTemperature(text, context);
  if (tempC.ok && tempC.value >= LOWEST_C && tempC.value <= HIGHEST_C) return tempC;
  return failed({
    code: "firing/not-an-alignment",
    where: context.where,
    what: `firings cannot be lined up at “${text}”`,
    expected: "peak, start, or a temperature from 0 to 1500 °C",
    fix: 'write 600C, or "600C rising" for the way up',
  });
}
