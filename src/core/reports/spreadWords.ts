import type { Spread } from "../ware/spreadOf.ts";

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
