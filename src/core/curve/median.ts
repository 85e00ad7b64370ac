/** Middle value, the mean of the middle two when their number is even; sorts what it is given. */
export function medianInPlace(values: number[] | Float64Array): number {
  if (values instanceof Float64Array) values.sort();
  else values.sort((a, b) => a - b);
  const middle = values.length >>> 1;
  const high = values[middle] as number;
  return values.length % 2 === 1 ? high : ((values[middle - 1] as number) + high) / 2;
}
