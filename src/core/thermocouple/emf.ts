import { type Curve, makeCurve } from "../curve/Curve.ts";
import {
  type DirectSegment,
  type InverseSegment,
  REFERENCE_FUNCTIONS,
} from "./referenceFunctions.ts";

/** Letter of a standardised thermocouple: two wires with a published emf. */
export type ThermocoupleType = "K" | "N" | "S" | "R" | "B" | "J" | "T";

/** The letters, those of kilns first. */
export const THERMOCOUPLE_TYPES: readonly ThermocoupleType[] = ["K", "N", "S", "R", "B", "J", "T"];

/** Temperatures that the reference function of a type covers, ends included [°C]. */
export function emfRangeC(type: ThermocoupleType): {
  readonly fromC: number;
  readonly toC: number;
} {
  const { direct } = REFERENCE_FUNCTIONS[type];
  return {
    fromC: direct[0]!.fromC,
    toC: direct.at(-1)!.toC,
  };
}

/**
 * Emf [mV] of a thermocouple whose tip is at a temperature [°C] and whose cold junction is at 0 °C.
 * @returns null outside the range of the type.
 * @see SOURCES["nist-monograph-175"]
 */
export function emfMillivolts(type: ThermocoupleType, tempC: number): number | null {
  const segment = directSegment(type, tempC);
  return segment === null ? null : emfIn(segment, tempC);
}

/**
 * Seebeck coefficient [µV/K] of a thermocouple: how much its emf grows with each degree at the tip.
 * @returns null outside the range of the type.
 * @see SOURCES["nist-monograph-175"]
 */
export function seebeckMicrovoltsPerK(type: ThermocoupleType, tempC: number): number | null {
  const segment = directSegment(type, tempC);
  return segment === null ? null : 1000 * slopeIn(segment, tempC);
}

function directSegment(type: ThermocoupleType, tempC: number): DirectSegment | null {
  return (
    REFERENCE_FUNCTIONS[type].direct.find(({ fromC, toC }) => tempC >= fromC && tempC <= toC) ??
    null
  );
}

function emfIn({ coefficients, bump }: DirectSegment, tempC: number): number {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * tempC + coefficients[i]!;
  return bump === undefined ? sum : sum + bumpAt(bump, tempC);
}

/** Emf growth [mV/K]. */
function slopeIn({ coefficients, bump }: DirectSegment, tempC: number): number {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 1; i--) sum = sum * tempC + i * coefficients[i]!;
  return bump === undefined ? sum : sum + 2 * bump[1] * (tempC - bump[2]) * bumpAt(bump, tempC);
}

function bumpAt([a0, a1, a2]: NonNullable<DirectSegment["bump"]>, tempC: number): number {
  return a0 * Math.exp(a1 * (tempC - a2) ** 2);
}

/** What an emf says of the temperature, when it says one. */
type EmfReading =
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

/**
 * Temperature of the tip from the emf [mV] measured at terminals that are themselves at a
 * temperature [°C]. The emf of the terminals is added before the emf is turned into a temperature;
 * adding their degrees afterwards would be wrong by up to 14 °C with type R.
 *
 * @throws RangeError when the cold junction is outside the range of the type.
 */
export function compensated(
  type: ThermocoupleType,
  measured: { readonly emfMv: number; readonly coldJunctionC: number },
): EmfReading {
  const ownMv = emfMillivolts(type, measured.coldJunctionC);
  if (ownMv === null)
    throw new RangeError(`compensated: ${measured.coldJunctionC} °C at the terminals of ${type}`);
  return temperatureFromEmf(type, measured.emfMv + ownMv);
}

/** A thermocouple at an instrument that is set to another type. */
export interface WrongType {
  /** What the wire is. */
  readonly wire: ThermocoupleType;
  /** What the instrument takes it for. */
  readonly setTo: ThermocoupleType;
  /** Temperature of the instrument's terminals [°C]. */
  readonly coldJunctionC: number;
}

/**
 * What an instrument shows [°C] for a wire of another type at a true temperature [°C].
 * @returns null when the instrument is over or under its range, or the wire is.
 */
export function shownC(tempC: number, { wire, setTo, coldJunctionC }: WrongType): number | null {
  return carried(tempC, { from: wire, to: setTo, coldJunctionC });
}

/**
 * The true temperature [°C] behind what an instrument shows [°C] that is set to another type.
 * @returns null where neither type gives one.
 */
export function trueC(tempC: number, { wire, setTo, coldJunctionC }: WrongType): number | null {
  return carried(tempC, { from: setTo, to: wire, coldJunctionC });
}

/** A Curve as it would be if the wire were of another type; null with under two points left. */
export function trueCurve(curve: Curve, wrong: WrongType): Curve | null {
  const times: number[] = [];
  const temps: number[] = [];
  for (const [i, tempC] of curve.tempsC.entries()) {
    const real = trueC(tempC, wrong);
    if (real === null) continue;
    times.push(curve.timesSeconds[i]!);
    temps.push(real);
  }
  if (times.length < 2) return null;
  const gaps = curve.gaps.filter(({ fromSeconds, toSeconds }) => {
    const at = times.indexOf(fromSeconds);
    return at >= 0 && times[at + 1] === toSeconds;
  });
  return makeCurve(times, temps, gaps);
}

/** A temperature by the emf that one type gives at the terminals, read by the other. */
function carried(
  tempC: number,
  way: {
    readonly from: ThermocoupleType;
    readonly to: ThermocoupleType;
    readonly coldJunctionC: number;
  },
): number | null {
  const hotMv = emfMillivolts(way.from, tempC);
  const coldMv = emfMillivolts(way.from, way.coldJunctionC);
  if (hotMv === null || coldMv === null) return null;
  const read = compensated(way.to, { emfMv: hotMv - coldMv, coldJunctionC: way.coldJunctionC });
  return read.kind === "temperature" ? read.tempC : null;
}
