import { seededNormal } from "../math/distributions.ts";
import { fillStrainTable, newStrainTable, strainIn } from "../ware/bodyExpansion.ts";
import { type Draws, drawn } from "../ware/strainSpread.ts";
import type { Body } from "../ware/Ware.ts";
import { moistureGrowth, STANDSTILL } from "./crackedWall.ts";
import type { Glaze, GlazedPiece } from "./Glaze.ts";
import { BODY_POISSON, type Layers, type ShrinkingPair, toughnessOf } from "./laminate.ts";

/** A glaze on a body as a wall, before anything is worked out. */
export interface GlazedWall {
  readonly glaze: Glaze;
  readonly body: Body;
  readonly piece: GlazedPiece;
  /** Where cooling ends [°C]. */
  readonly roomC: number;
}

/** One way in which all that is uncertain may be. */
export interface FitDraw {
  readonly layers: Layers;
  readonly pair: ShrinkingPair;
  /** Of the glaze [MPa·√m]. */
  readonly toughnessMPaRootM: number;
  readonly bodyToughnessMPaRootM: number;
  readonly ruptureMPa: number;
  /** Growth by moisture over ten years [length over length]. */
  readonly growth: number;
  /** Toughness below which a crack stands still, over toughness. */
  readonly standstill: number;
  /** What quartz and cristobalite of the body shrink from the set point down [length over length]. */
  readonly silicaStrain: number;
}

/** Quartz and cristobalite together never take more of a body than this. */
const MOST_SILICA = 0.95;

/** Coolest set point over the room that is drawn [K]; a guard against a hopeless spread. */
const LEAST_FALL_K = 50;

/**
 * Draws everything that is uncertain, apart from each other; same seed, same draws.
 *
 * @throws RangeError when fewer than 10 runs are asked for.
 */
export function fitDraws(wall: GlazedWall, { runs, seed }: Draws): readonly FitDraw[] {
  if (!(runs >= 10)) throw new RangeError(`fitDraws: ${runs} runs`);
  const normal = seededNormal(seed);
  return Array.from({ length: runs }, () => fitDraw(wall, normal));
}

/** Everything at its middle. */
export function middleDraw(wall: GlazedWall): FitDraw {
  return fitDraw(wall, () => 0);
}

function fitDraw(wall: GlazedWall, normal: () => number): FitDraw {
  const { glaze, body, piece, roomC } = wall;
  const setC = Math.max(
    roomC + LEAST_FALL_K,
    glaze.setPoint.valueC + glaze.setPoint.sigmaK * normal(),
  );
  const glazePerK = Math.max(0, glaze.expansion.meanPerK + glaze.expansion.sigmaPerK * normal());
  const { table, silicaStrain } = drawnBody(body, { setC, roomC, normal });
  return {
    pair: { glazePerK, setC, body: table },
    silicaStrain,
    layers: {
      glazeGPa: drawn(glaze.youngGPa, normal()),
      glazePoisson: drawn(glaze.poisson, normal()),
      bodyGPa: drawn(body.youngGPa, normal()),
      bodyPoisson: drawn(BODY_POISSON, normal()),
      coatMm: piece.coatMm * Math.exp(piece.coatSigma * normal()),
      wallMm: piece.wallMm,
    },
    toughnessMPaRootM: drawn(glaze.toughnessMPaRootM, normal()),
    bodyToughnessMPaRootM: drawn(toughnessOf(body), normal()),
    ruptureMPa: drawn(body.ruptureMPa, normal()),
    growth: drawn(moistureGrowth(body, piece.absorptionPercent), normal()),
    standstill: Math.min(1, drawn(STANDSTILL, normal())),
  };
}

function drawnBody(
  body: Body,
  { setC, roomC, normal }: { setC: number; roomC: number; normal: () => number },
): { readonly table: Float64Array; readonly silicaStrain: number } {
  const shares = [drawn(body.quartzFraction, normal()), drawn(body.cristobaliteFraction, normal())];
  const scale = Math.min(1, MOST_SILICA / (shares[0]! + shares[1]!));
  const mixture = {
    quartz: shares[0]! * scale,
    cristobalite: shares[1]! * scale,
    matrixPerK: drawn(body.matrixExpansionPerK, normal()),
  };
  const table = newStrainTable();
  fillStrainTable(table, mixture);
  const matrix = (1 - mixture.quartz - mixture.cristobalite) * mixture.matrixPerK;
  return {
    table,
    silicaStrain: strainIn(table, setC) - strainIn(table, roomC) - matrix * (setC - roomC),
  };
}
