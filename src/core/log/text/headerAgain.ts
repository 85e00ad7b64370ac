import type { Layout } from "./layout.ts";
import { temperatureUnitIn } from "./preamble.ts";

/**
 * Whether a row is the header again, with another scale of temperature in it: as a logger writes that
 * was switched from °C to °F and goes on in the same file.
 */
export function isHeaderInOtherUnits(
  cells: readonly string[],
  { names, units, hasHeader }: Pick<Layout, "names" | "units" | "hasHeader">,
): boolean {
  if (!hasHeader || cells.length < 2) return false;
  let changed = 0;
  for (let c = 0; c < names.length; c++) {
    const name = names[c] as string;
    const cell = (cells[c] ?? "").trim().replace(/^"|"$/g, "");
    if (plain(cell) !== plain(name)) return false;
    const unit = temperatureUnitIn(`${name} ${units[c] ?? ""}`);
    const now = temperatureUnitIn(cell);
    if (unit !== null && now !== null && now !== unit) changed++;
  }
  return changed > 0;
}

/** A name without its unit, in small letters. */
function plain(name: string): string {
  return name
    .replace(/[([][^)\]]*[)\]]/g, "")
    .replace(/[°º˚�]\s?[CFK]\b|\b(?:deg\.?\s?[CFK]|celsius|fahrenheit|kelvin)\b/gi, "")
    .replace(/[\s_]+/g, "")
    .toLowerCase();
}
