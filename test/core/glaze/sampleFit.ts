import type { Glaze } from "../../../src/core/glaze/Glaze.ts";
import type { GlazeFitInput } from "../../../src/core/glaze/glazeFit.ts";
import type { Body, Property } from "../../../src/core/ware/Ware.ts";

/** A property that is known exactly. */
export function exactly(value: number): Property {
  return { value, low: value, high: value, source: "test" };
}

/** A property from its middle and its 10 and 90 % points. */
export function between(value: number, low: number, high: number): Property {
  return { value, low, high, source: "test" };
}

/** A glaze of 65 GPa and 0.70 MPa√m that sets at 620 °C; known exactly. */
export function exactGlaze(millionths: number): Glaze {
  return {
    name: "a glaze",
    oxides: {},
    expansion: {
      meanPerK: millionths * 1e-6,
      sigmaPerK: 0,
      relativeSigmaPerK: 0,
      fromC: 20,
      toC: 400,
      from: "computed",
      source: "test",
    },
    setPoint: { valueC: 620, sigmaK: 0, from: "given", source: "test" },
    youngGPa: exactly(65),
    poisson: exactly(0.2),
    toughnessMPaRootM: exactly(0.7),
    firedDensityKgPerM3: exactly(2450),
  };
}

/** A stoneware of 65 GPa that shrinks evenly by 6 millionths per kelvin; known exactly. */
export function evenBody(change: Partial<Body> = {}): Body {
  return {
    name: "stoneware, even",
    densityKgPerM3: exactly(2300),
    heatCapacityJPerKgK: exactly(1080),
    conductivityWPerMK: exactly(1.2),
    youngGPa: exactly(65),
    ruptureMPa: exactly(40),
    quartzFraction: exactly(0),
    cristobaliteFraction: exactly(0),
    matrixExpansionPerK: exactly(6e-6),
    ...change,
  };
}

/** What a test wants otherwise. */
type FitChange = Partial<Omit<GlazeFitInput, "piece">> & {
  readonly piece?: Partial<GlazeFitInput["piece"]>;
};

/** A glaze on an even body: 0.4 mm on both faces of 8 mm; nothing measured. */
export function fitInput(millionths: number, change: FitChange = {}): GlazeFitInput {
  return {
    glaze: exactGlaze(millionths),
    body: evenBody(),
    roomC: 20,
    measured: { cracked: null, spacing: null, pings: [] },
    draws: { runs: 60, seed: 1 },
    ...change,
    piece: {
      wallMm: 8,
      coatMm: 0.4,
      coatSigma: 0,
      glazing: "both faces",
      absorptionPercent: null,
      ...change.piece,
    },
  };
}
