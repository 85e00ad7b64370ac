import { toughnessOf } from "./bodyStrength.ts";
import { releaseNumber } from "./channelCracking.ts";
import { loneBacking } from "./crackedWall.ts";
import { spacingTableEnds } from "./crackSpacing.ts";
import { type GlazedWall, middleDraw } from "./fitDraws.ts";
import { leastPull } from "./throughCrack.ts";

/**
 * Where the fit of a glaze leaves what is tabled or known, in words without temperatures.
 * At the middle of everything.
 */
export function fitLimits(wall: GlazedWall): readonly string[] {
  const { layers } = middleDraw(wall);
  const { glazing, coatMm, wallMm } = wall.piece;
  const lone = loneBacking(layers, glazing);
  const spacing = { ...lone, wallOverCoat: wallMm / coatMm };
  return [
    ...releaseNumber(lone).past,
    ...spacingTableEnds(spacing),
    ...leastPull({ ...lone, glazeMPa: 1, coatMm, wallMm, glazing }).past,
    ...(toughnessOf(wall.body).source === "our own estimate"
      ? ["how tough the body is was guessed: its name says no common kind of clay"]
      : []),
  ];
}
