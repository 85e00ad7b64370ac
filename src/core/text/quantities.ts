import type { Spread } from "../math/statistics.ts";
import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  type TemperatureUnit,
} from "../units/temperature.ts";

/** A temperature in the reader's unit, to a whole degree: `1186 °C`, `2167 °F`. */
export function printTemperature(tempC: number, unit: TemperatureUnit): string {
  const value = unit === "C" ? tempC : fahrenheitFromCelsius(tempC);
  return `${whole(value)} °${unit}`;
}

/** A temperature difference in the reader's unit, to a whole degree: `12 °C`, `22 °F`. */
export function printDifference(deltaC: number, unit: TemperatureUnit): string {
  const value = unit === "C" ? deltaC : fahrenheitDeltaFromCelsiusDelta(deltaC);
  return `${whole(value)} °${unit}`;
}

/** A rate without its sign, the direction being said in words: `60 °C/h`, `108 °F/h`. */
export function printRate(rateCPerHour: number, unit: TemperatureUnit): string {
  const rate = Math.abs(rateCPerHour);
  return `${whole(unit === "C" ? rate : fahrenheitDeltaFromCelsiusDelta(rate))} °${unit}/h`;
}

/**
 * How far a quantity may be off, in the reader's unit: never a bare 0, which would promise too much.
 * @param printed As it is printed: `3 °C/h`, `0 °C/h`.
 */
export function notNought(printed: string): string {
  return printed.replace(/^[−-]?0 (?=\D)/, "under 1 ");
}

/** A length of ware in millimetres, one decimal at most, two under 2 mm: `9.5 mm`, `300 mm`. */
export function printMm(mm: number): string {
  return `${Number(mm.toFixed(mm < 2 ? 2 : mm < 100 ? 1 : 0))} mm`;
}

/** A span of time, to the minute: `45 min`, `1 h 05 min`, `12 h`. Under a minute: `20 s`. */
export function printDuration(seconds: number): string {
  const sign = seconds < 0 ? "−" : "";
  const span = Math.abs(seconds);
  if (span < 59.5) return `${sign}${Math.round(span)} s`;
  const minutes = Math.round(span / 60);
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return `${sign}${minutes} min`;
  return rest === 0
    ? `${sign}${hours} h`
    : `${sign}${hours} h ${String(rest).padStart(2, "0")} min`;
}

/** Elapsed time as hours and minutes: `0:00`, `11:42`, `102:05`. */
export function printElapsed(seconds: number): string {
  const minutes = Math.round(Math.abs(seconds) / 60);
  const clock = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
  return seconds < 0 && minutes > 0 ? `−${clock}` : clock;
}

function whole(value: number): string {
  const rounded = Math.round(value);
  return rounded < 0 ? `−${-rounded}` : String(Math.abs(rounded));
}

/** A number as it was given, to three digits at most: `0.4`, `6`, `12.5`. */
export function asGiven(value: number): string {
  return String(Number(value.toPrecision(3))).replace("-", "−");
}

/** A number to two digits, all before the point, three behind it at most: `0.35`, `12`, `−140`. */
export function fewDigits(value: number): string {
  const size = Number(Math.abs(value).toPrecision(2));
  const decimals = size >= 10 || size === 0 ? 0 : Math.min(3, 1 - Math.floor(Math.log10(size)));
  const digits = Math.abs(value).toFixed(decimals);
  if (Number(digits) === 0) return "0";
  return value < 0 ? `−${digits}` : digits;
}

/** The middle of a spread with its range: `25 (19 to 31) MPa`. */
export function spreadWords(spread: Spread, unit: string, scale = 1): string {
  const [low, median, high] = [spread.low, spread.median, spread.high].map((value) =>
    fewDigits(value * scale),
  );
  const behind = unit === "" ? "" : ` ${unit}`;
  return low === high ? `${median}${behind}` : `${median} (${low} to ${high})${behind}`;
}

/** A share of draws in whole hundredths: `66 of 100`; never all or none unless it is so. */
export function sharePer100(share: number): string {
  if (share > 0 && share < 0.01) return "fewer than 1 of 100";
  if (share < 1 && share > 0.99) return "more than 99 of 100";
  if (share === 0) return "none of 100";
  return share === 1 ? "all 100" : `${Math.round(share * 100)} of 100`;
}

/** Two temperatures in the order of travel, the unit said once: `620 → 520 °C`. */
export function printSpan(fromC: number, toC: number, unit: TemperatureUnit): string {
  return `${printTemperature(fromC, unit).split(" ")[0]} → ${printTemperature(toC, unit)}`;
}

/** A signed rate [°C/h] with its direction in words: `up 150 °C/h`, `down 60 °C/h`. */
export function printTravel(rateCPerHour: number, unit: TemperatureUnit): string {
  return `${rateCPerHour < 0 ? "down" : "up"} ${printRate(rateCPerHour, unit)}`;
}

/**
 * A rate that somebody set [°C/h], without its sign: as it was written in the unit of its file
 * (`72.5 °F/h`), to a whole degree in the other.
 */
export function printSetRate(
  rateCPerHour: number,
  { unit, own }: { readonly unit: TemperatureUnit; readonly own: TemperatureUnit },
): string {
  const rate = Math.abs(rateCPerHour);
  const tenths = Math.round((unit === "C" ? rate : fahrenheitDeltaFromCelsiusDelta(rate)) * 10);
  if (unit !== own || tenths % 10 === 0) return printRate(rateCPerHour, unit);
  return `${(tenths / 10).toFixed(1)} °${unit}/h`;
}

/** A cost with the digits that an estimate of the electricity can carry: `20`, `3.4`. */
export function costFigure(cost: number): string {
  return cost.toFixed(cost < 10 ? 1 : 0);
}

/** Stress over strength with the digits that it can carry: `0.36`, `1.5`, `12`. */
export function strainRatioText(ratio: number): string {
  return ratio.toFixed(ratio < 0.995 ? 2 : ratio < 9.95 ? 1 : 0);
}

/** Eighths of an inch are how inches are given [mm]. */
const EIGHTH_MM = 25.4 / 8;
const EIGHTHS = ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"] as const;

/** A length [mm] as people of that unit say it: `6 mm`; beside °F `1/4 in`, `1 1/2 in`. */
export function printLength(mm: number, unit: TemperatureUnit): string {
  if (unit === "C") return printMm(mm);
  const eighths = Math.round(mm / EIGHTH_MM);
  if (eighths === 0 || Math.abs(mm - eighths * EIGHTH_MM) > 0.06 * mm)
    return `${asGiven(Number((mm / 25.4).toPrecision(2)))} in`;
  const inches = Math.floor(eighths / 8);
  return `${[...(inches === 0 ? [] : [inches]), EIGHTHS[eighths % 8]].join(" ").trim()} in`;
}
