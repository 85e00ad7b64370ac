/** A reading this far from both its neighbours is no sign of anything, in any unit. */
const FAR = 90;

/**
 * The numbers of a column in their order, without those that no kiln gives: 9999, an end of scale,
 * a lone spike. The unit may be any.
 */
export function steadyValues(numbers: Float64Array): Float64Array {
  const values = numbers.filter((value) => value < 3300 && value > -460 && !isScaleEnd(value));
  return values.filter((value, i) => {
    const before = Math.abs(value - (values[i - 1] ?? Number.POSITIVE_INFINITY));
    const after = Math.abs(value - (values[i + 1] ?? Number.POSITIVE_INFINITY));
    return before < FAR || after < FAR;
  });
}

/** Ends of the scales of thermocouples K, S and B in °C, °F and K: IEC 60584-1. */
const SCALE_ENDS = [1372, 1768, 1820].flatMap((end) => [end, end * 1.8 + 32, end + 273.15]);
/** Below this is none of them; nearly all readings are. */
const LEAST_END = Math.min(...SCALE_ENDS) - 1;

/** Whether a number is the end of a thermocouple's scale in °C, °F or K, where open ones are parked. */
export function isScaleEnd(value: number): boolean {
  if (value < LEAST_END) return false;
  return SCALE_ENDS.some((end) => Math.abs(value - end) < 0.6);
}
