import { median } from "../statistics.ts";

/** Whether numbers count in steps that are mostly alike, as a time does and a temperature hardly ever. */
export function isEven(numbers: Float64Array): boolean {
  const known = numbers.filter((value) => !Number.isNaN(value));
  const steps = known.slice(1).map((value, i) => Math.abs(value - (known[i] as number)));
  const usual = median(steps);
  return steps.filter((step) => Math.abs(step - usual) <= 0.02 * usual).length > steps.length / 2;
}

/**
 * Whether numbers begin, or end, at zero, as elapsed time does and no thermocouple. A step from zero is
 * not near enough: so begins a kiln that heats fast in a coarse log, and so does its set point.
 */
export function isFromZero(numbers: Float64Array): boolean {
  const known = numbers.filter((value) => !Number.isNaN(value)).sort();
  const steps = known.slice(1).map((value, i) => value - (known[i] as number));
  return Math.abs(known[0] ?? Number.NaN) <= NEAR_ZERO * median(steps);
}

/** Share of a step within which a number is near zero. */
const NEAR_ZERO = 0.1;

/** Share of rows that may stand out of order in a column that counts evenly; one at least. */
const FEW_FALLS = 0.03;

/** Numbers that are not more than the one before, and all of them. */
function fallsIn(numbers: Float64Array): { readonly falls: number; readonly count: number } {
  let falls = 0;
  let count = 0;
  let before = Number.NEGATIVE_INFINITY;
  for (const value of numbers) {
    if (Number.isNaN(value)) continue;
    count++;
    if (value <= before) falls++;
    before = value;
  }
  return { falls, count };
}

/** The numbers sorted, each once, when they then count evenly and few rows stood out of order or twice; else as they are. */
export function inOrder(numbers: Float64Array): Float64Array {
  const { falls, count } = fallsIn(numbers);
  if (falls === 0 || falls > Math.max(1, FEW_FALLS * count)) return numbers;
  const known = numbers.filter((value) => !Number.isNaN(value));
  const sorted = Float64Array.from(new Set(known)).sort();
  return isEven(sorted) ? sorted : numbers;
}
