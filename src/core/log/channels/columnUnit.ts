import { temperatureUnitIn } from "../text/preamble.ts";
import type { Column } from "../text/table.ts";

/** The scale that a column itself names, in its unit row, its cells or its name; null when none. */
export function columnUnit(column: Column): "C" | "F" | "K" | null {
  return (
    scaleOf(column.unitText) ??
    column.suffix ??
    temperatureUnitIn(column.name) ??
    bareUnit(column.name)
  );
}

function scaleOf(unitText: string): "C" | "F" | "K" | null {
  const text = unitText.trim().replace(/^[([]\s*|\s*[)\]]$/g, "");
  if (/^(?:[°º˚�Â]{0,2}\s?C|℃|deg\.? ?C|celsius)$/i.test(text)) return "C";
  if (/^(?:[°º˚�Â]{0,2}\s?F|℉|deg\.? ?F|fahrenheit)$/i.test(text)) return "F";
  return /^(?:[°º˚]?\s?K|kelvin|deg\.? ?K)$/i.test(text) ? "K" : null;
}

/** A name that ends in a bare letter after a temperature word or a digit: `TempC`, `Zone 1 F`; not `Zone C`. */
function bareUnit(name: string): "C" | "F" | "K" | null {
  const match = /(?:temp(?:erature)?\d*[ _.,-]*|\d[ _.,-]?)([CFK])$/i.exec(name);
  return match === null ? null : (match[1]?.toUpperCase() as "C" | "F" | "K");
}
