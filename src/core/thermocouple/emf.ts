import { type DirectSegment, REFERENCE_FUNCTIONS } from "./referenceFunctions.ts";
import type { ThermocoupleType } from "./ThermocoupleType.ts";

/** Temperatures that the reference function of a type covers, ends included [°C]. */
export function emfRangeC(type: ThermocoupleType): {
  readonly fromC: number;
  readonly toC: number;
} {
  const { direct } = REFERENCE_FUNCTIONS[type];
  return {
    fromC: direct[0]!.fromC,
    toC: (direct.at(-1) as DirectSegment).toC,
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
