/** A property of a body: what is taken, what it may be, and where that comes from. */
export interface Property {
  readonly value: number;
  /** The 10 and 90 % points of what it may be. */
  readonly low: number;
  readonly high: number;
  /** In words: a source, `from memory`, or `yours`. */
  readonly source: string;
}

/** A fired clay body, as far as stress on cooling needs it. */
export interface Body {
  /** `stoneware, cone 5 to 6`. */
  readonly name: string;
  readonly densityKgPerM3: Property;
  readonly heatCapacityJPerKgK: Property;
  readonly conductivityWPerMK: Property;
  readonly youngGPa: Property;
  /** Modulus of rupture in bending [MPa]. */
  readonly ruptureMPa: Property;
  /** Free quartz, share of volume 0–1. */
  readonly quartzFraction: Property;
  readonly cristobaliteFraction: Property;
  /** Linear expansion of the rest of the body [1/K]. */
  readonly matrixExpansionPerK: Property;
}

/** Shape of a piece and what it stands on. */
export interface WareGeometry {
  readonly wallMm: number;
  readonly baseMm: number;
  /** Half the widest dimension [mm]. */
  readonly footprintRadiusMm: number;
  /** Outer radius of what stands on the shelf [mm]; as wide as the piece where it is not known. */
  readonly footRadiusMm?: number | undefined;
  /** From shelf to rim [mm]; guessed from the width where it is not known. */
  readonly heightMm?: number | undefined;
  readonly shelfMm: number;
  /** Air under the foot [mm]. */
  readonly footGapMm: number;
  /** On edge both faces of a tile are free; on the shelf where nothing is said. */
  readonly stands?: "on the shelf" | "on edge" | undefined;
  readonly glazedSides: "none" | "one" | "both";
}

/** What is in the kiln: the piece that stands the least. */
export interface Ware {
  readonly body: Body;
  readonly geometry: WareGeometry;
}

/** The worst moment of a Curve for a piece, inside one band and direction. */
interface WorstMoment {
  readonly band: string;
  readonly direction: "heating" | "cooling";
  /** Computed stress over strength; uncertain by a factor of two either way. */
  readonly ratio: number;
  readonly atSeconds: number;
  readonly tempC: number;
}

/** What a Curve does to a piece. */
export interface WareStrain {
  readonly timesSeconds: Float64Array;
  /** Stress over strength at each time; worked out when it is first asked for. */
  readonly ratio: Float64Array;
  readonly wallC: Float64Array;
  readonly baseC: Float64Array;
  readonly shelfC: Float64Array;
  readonly worst: readonly WorstMoment[];
}

/** As much of the ware as published advice for heating knows: its thickest part and its widest piece [mm]. */
export interface WareSize {
  readonly thickestMm: number | null;
  readonly widestMm: number | null;
}

/** Walls of sanitary ware, whose practice is published, are up to this thick [mm]. */
const SANITARY_WALL_MM = 12;

/** Pieces from this width on are judged as large [mm]; our own estimate. */
const WIDE_MM = 300;

/** Thick or wide ware is judged harder. */
export function isDemanding(ware: WareSize): boolean {
  return (ware.thickestMm ?? 0) > SANITARY_WALL_MM || (ware.widestMm ?? 0) >= WIDE_MM;
}
