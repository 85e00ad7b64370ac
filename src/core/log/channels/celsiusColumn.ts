import { celsiusFrom, type LogUnit } from "./unit.ts";

/** Numbers of a column as temperatures [°C]; the same array when they are in °C, so not to be written to. */
export function celsiusColumn(numbers: Float64Array, unit: LogUnit): Float64Array {
  return unit === "C" ? numbers : numbers.map((value) => celsiusFrom(value, unit));
}

/** The same of some rows in their order; the array itself when these are all rows as they stand. */
export function celsiusInRows(
  numbers: Float64Array,
  rows: Int32Array,
  unit: LogUnit,
): Float64Array {
  const areAll = rows.length === numbers.length && rows.every((row, i) => row === i);
  if (areAll) return celsiusColumn(numbers, unit);
  const picked = new Float64Array(rows.length);
  for (let i = 0; i < picked.length; i++)
    picked[i] = celsiusFrom(numbers[rows[i] as number] as number, unit);
  return picked;
}
