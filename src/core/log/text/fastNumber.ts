/** A place in bytes that a reader moves on; −1 when what stands there is not written plainly. */
export interface Cursor {
  at: number;
}

/** Most digits whose value a floating-point number holds exactly, whatever they are. */
const EXACT_DIGITS = 15;
/** Powers of ten by which one division of such a value is rounded as the decimal itself would be. */
const POWERS = Float64Array.from({ length: EXACT_DIGITS + 1 }, (_, i) => Number(`1e${i}`));

/**
 * The number at the cursor if it is written as digits, perhaps with a sign and a fraction, bit for
 * bit what `Number` gives. The cursor is left after it, or at −1 for any other writing.
 */
export function fastNumber(bytes: Uint8Array, cursor: Cursor, mark: number): number {
  let at = cursor.at;
  const sign = bytes[at] as number;
  if (sign === 45 || sign === 43) at++;
  const start = at;
  let value = 0;
  let digit = (bytes[at] as number) - 48;
  while (digit >= 0 && digit <= 9) {
    value = value * 10 + digit;
    digit = (bytes[++at] as number) - 48;
  }
  let count = at - start;
  if (count > 0 && digit === mark - 48) {
    const first = ++at;
    digit = (bytes[at] as number) - 48;
    while (digit >= 0 && digit <= 9) {
      value = value * 10 + digit;
      digit = (bytes[++at] as number) - 48;
    }
    const places = at - first;
    count = places === 0 ? 0 : count + places;
    if (count <= EXACT_DIGITS) value /= POWERS[places] as number;
  }
  cursor.at = count > 0 && count <= EXACT_DIGITS ? at : -1;
  return sign === 45 ? -value : value;
}
