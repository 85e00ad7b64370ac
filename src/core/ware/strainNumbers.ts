import { fillStrainTable, newStrainTable } from "./bodyExpansion.ts";
import { SHELF_DENSITY, SHELF_HEAT_CAPACITY, stackShare } from "./heatExchange.ts";
import { isFlat, type PieceShape, pieceShape } from "./pieceShape.ts";
import { type PieceStress, pieceStress } from "./pieceStress.ts";
import type { Ware } from "./Ware.ts";

/** A piece as the integration sees it. */
export interface StrainNumbers {
  readonly shape: PieceShape;
  /** Heat held by the body and by the shelf at 573 °C [J/m³K, J/m²K]. */
  readonly heatPerM3: number;
  readonly shelfHeat: number;
  readonly conductivity: number;
  readonly wallM: number;
  readonly baseM: number;
  readonly footGapM: number;
  /** Both faces of a tile are free, and there is no shelf. */
  readonly onEdge: boolean;
  /** Share of its own part of a load's lag that the piece sees. */
  readonly stackShare: number;
  /** Share of what the base and the inside of the wall see that is outside the piece. */
  readonly baseSeesOut: number;
  readonly wallSeesOut: number;
  /** Inside area of the base over that of the wall; 0 without a wall. */
  readonly baseOverWall: number;
  /** Strain at which a test bar breaks: strength over Young's modulus. */
  readonly strainToFailure: number;
  /** Free strain of the body against temperature. */
  readonly strain: Float64Array;
  readonly stress: PieceStress;
}

const known = new WeakMap<Ware, StrainNumbers>();

/** A piece in the numbers of the integration, every property at its middle value; worked out once. */
export function wareNumbers(ware: Ware): StrainNumbers {
  const found = known.get(ware);
  if (found !== undefined) return found;
  const { body, geometry } = ware;
  const shape = pieceShape(geometry);
  const strain = newStrainTable();
  fillStrainTable(strain, {
    quartz: body.quartzFraction.value,
    cristobalite: body.cristobaliteFraction.value,
    matrixPerK: body.matrixExpansionPerK.value,
  });
  const numbers: StrainNumbers = {
    shape,
    heatPerM3: body.densityKgPerM3.value * body.heatCapacityJPerKgK.value,
    shelfHeat: (SHELF_DENSITY * SHELF_HEAT_CAPACITY * geometry.shelfMm) / 1000,
    conductivity: body.conductivityWPerMK.value,
    wallM: shape.wallMm / 1000,
    baseM: shape.baseMm / 1000,
    footGapM: geometry.footGapMm / 1000,
    onEdge: geometry.stands === "on edge",
    // What stands on edge does not reach across the shelf.
    stackShare: geometry.stands === "on edge" ? 0 : stackShare(shape.rimRadiusMm),
    ...insideSeen(shape),
    strainToFailure: body.ruptureMPa.value / (1000 * body.youngGPa.value),
    strain,
    stress: pieceStress(shape),
  };
  known.set(ware, numbers);
  return numbers;
}

/** What the inside of a piece sees, as a pot with a round base and a round mouth. */
function insideSeen(shape: PieceShape) {
  if (isFlat(shape)) return { baseSeesOut: 1, wallSeesOut: 0, baseOverWall: 0 };
  const deep = shape.heightMm - shape.baseMm;
  const base = Math.max(1, shape.footRadiusMm - shape.wallMm);
  const mouth = Math.max(1, shape.rimRadiusMm - shape.wallMm);
  const baseArea = base * base;
  const wallArea = (base + mouth) * Math.sqrt(deep * deep + (mouth - base) * (mouth - base));
  const baseSeesOut = discToDisc(base / deep, mouth / deep);
  // What leaves by the mouth comes from base and wall.
  const wallSeesOut = (mouth * mouth - baseArea * baseSeesOut) / wallArea;
  return { baseSeesOut, wallSeesOut, baseOverWall: baseArea / wallArea };
}

/** Share of what a disc sees that is another, both over one axis at distance 1. */
function discToDisc(radius: number, other: number): number {
  const sum = 1 + (1 + other * other) / (radius * radius);
  return (sum - Math.sqrt(sum * sum - 4 * ((other * other) / (radius * radius)))) / 2;
}
