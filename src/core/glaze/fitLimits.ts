import { toughnessOf } from "./bodyStrength.ts";
import { releaseNumber } from "./channelCracking.ts";
import { loneBacking } from "./crackedWall.ts";
import { spacingTableEnds } from "./crackSpacing.ts";
import { type GlazedWall, middleDraw } from "./fitDraws.ts";
import { leastPull } from "./throughCrack.ts";

/** Stiffnesses further apart than this are not the equal ones of the depth tables; our own choice. */
const UNLIKE_STIFFNESS = 1.3;

/**
 * Where the fit of a glaze leaves what is tabled or known, in words without temperatures.
 * At the middle of everything.
 */
export function fitLimits(wall: GlazedWall): readonly string[] {
  const { layers } = middleDraw(wall);
  const { glazing, coatMm, wallMm } = wall.piece;
  const lone = loneBacking(layers, glazing);
  const spacing = { ...lone, wallOverCoat: wallMm / coatMm };
  const unlike = Math.max(lone.stiffnessRatio, 1 / lone.stiffnessRatio) > UNLIKE_STIFFNESS;
  return [
    ...releaseNumber(lone).past,
    ...spacingTableEnds(spacing),
    ...leastPull({ glazeMPa: 1, coatMm, wallMm, glazing }).past,
    ...(unlike
      ? [
          `depth is tabled for a body as stiff as its glaze; here it has ${lone.stiffnessRatio.toFixed(1)} of that`,
        ]
      : []),
    ...(toughnessOf(wall.body).source === "our own estimate"
      ? ["how tough the body is was guessed: its name says no common kind of clay"]
      : []),
  ];
}
