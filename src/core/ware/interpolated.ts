/**
 * Value of a table at a temperature, straight between its rows.
 * Below the first row it goes on with the first slope; above the last it keeps the last value.
 *
 * @param rows At least two, temperature [°C] first, coolest first.
 * @throws RangeError when there are fewer than two rows.
 */
export function interpolated(
  rows: readonly (readonly [tempC: number, value: number])[],
  tempC: number,
): number {
  const last = rows.at(-1);
  if (last === undefined || rows.length < 2)
    throw new RangeError(`interpolated: ${rows.length} rows`);
  if (tempC >= last[0]) return last[1];
  const found = rows.findIndex(([rowC]) => rowC > tempC);
  const upper = Math.max(1, found);
  const [lowC, low] = rows[upper - 1] as readonly [number, number];
  const [highC, high] = rows[upper] as readonly [number, number];
  return low + ((high - low) * (tempC - lowC)) / (highC - lowC);
}
