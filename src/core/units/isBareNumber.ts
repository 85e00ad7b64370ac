/** Whether a quantity is written without any unit: `0.8`, `"1/32"`. */
export function isBareNumber(written: number | string): boolean {
  return typeof written === "number" || /^[\s\d.,/+-]+$/.test(written);
}
