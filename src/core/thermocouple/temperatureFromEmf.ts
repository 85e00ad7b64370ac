import { emfMillivolts, emfRangeC, seebeckMicrovoltsPerK } from "./emf.ts";
import { type InverseSegment, REFERENCE_FUNCTIONS } from "./referenceFunctions.ts";
import type { ThermocoupleType } from "./ThermocoupleType.ts";

/** What an emf says of the temperature, when it says one. */
export type EmfReading =
  | { readonly kind: "temperature"; readonly tempC: number }
  /** Lower or higher than the type gives in its range. */
  | { readonly kind: "below" | "above" }
  /** So low that two temperatures give it, or nearly: type B under 250 °C. */
  | { readonly kind: "ambiguous" };

/** Ends of the printed inverse stretches are rounded to this much [mV]. */
const ROUNDING_MV = 0.001;
/** Newton steps; from a printed error of 0.06 K two would do. */
const STEPS = 4;

/**
 * Temperature [°C] of the tip from the emf [mV] of a thermocouple whose cold junction is at 0 °C:
 * the printed inverse polynomial, of overlapping ones that with the smaller printed error, then
 * Newton's method on the reference function itself, so that emf and temperature fit each other.
 * Type B gives no single temperature below 250 °C (0.291 mV), which is said and never guessed.
 *
 * @see SOURCES["nist-monograph-175"]
 */
export function temperatureFromEmf(type: ThermocoupleType, emfMv: number): EmfReading {
  const { inverse } = REFERENCE_FUNCTIONS[type];
  const lowest = inverse[0]!;
  const fromMv = emfMillivolts(type, lowest.fromC) as number;
  const toMv = emfMillivolts(type, emfRangeC(type).toC) as number;
  if (Number.isNaN(emfMv)) throw new RangeError("temperatureFromEmf: the emf is not a number");
  if (emfMv > toMv) return { kind: "above" };
  if (emfMv < fromMv) return { kind: isAmbiguous(type, emfMv) ? "ambiguous" : "below" };
  return { kind: "temperature", tempC: refined(type, emfMv, bestInverse(inverse, emfMv)) };
}

/**
 * Temperature [°C] by the printed inverse polynomial alone, with its printed error [K].
 * @returns null where none is printed.
 * @see SOURCES["nist-monograph-175"]
 */
export function printedInverse(
  type: ThermocoupleType,
  emfMv: number,
): { readonly tempC: number; readonly errorK: InverseSegment["errorK"] } | null {
  const segment = bestInverse(REFERENCE_FUNCTIONS[type].inverse, emfMv);
  return segment === null
    ? null
    : { tempC: polynomial(segment.coefficients, emfMv), errorK: segment.errorK };
}

/** The stretch around an emf; of two the one that errs less. */
function bestInverse(segments: readonly InverseSegment[], emfMv: number): InverseSegment | null {
  let best: InverseSegment | null = null;
  for (const segment of segments) {
    const isIn = emfMv >= segment.fromMv - ROUNDING_MV && emfMv <= segment.toMv + ROUNDING_MV;
    if (isIn && (best === null || widest(segment) < widest(best))) best = segment;
  }
  return best;
}

function widest({ errorK }: InverseSegment): number {
  return Math.max(Math.abs(errorK[0]), Math.abs(errorK[1]));
}

function refined(type: ThermocoupleType, emfMv: number, segment: InverseSegment | null): number {
  if (segment === null)
    throw new RangeError(`temperatureFromEmf: no inverse of ${type} at ${emfMv} mV`);
  const { fromC, toC } = emfRangeC(type);
  const within = (tempC: number) => Math.min(toC, Math.max(fromC, tempC));
  let tempC = within(polynomial(segment.coefficients, emfMv));
  for (let step = 0; step < STEPS; step++) {
    const offMv = (emfMillivolts(type, tempC) as number) - emfMv;
    const slope = (seebeckMicrovoltsPerK(type, tempC) as number) / 1000;
    tempC = within(tempC - offMv / slope);
  }
  return tempC;
}

/** Type B falls to its least emf at 21 °C and rises again: from there up to 250 °C none is printed. */
function isAmbiguous(type: ThermocoupleType, emfMv: number): boolean {
  return type === "B" && emfMv >= LEAST_OF_B_MV;
}

/** Least emf of type B, at 21 °C, with a digit of the print to spare [mV]. */
const LEAST_OF_B_MV = -0.003;

function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * x + coefficients[i]!;
  return sum;
}
