import type { z } from "zod";
import { type PieceStrain, STRAIN_DRAWS } from "../../ware/pieceStrain.ts";
import { passageRisk, strainRisk } from "../../ware/strainRisk.ts";
import type { strainShape } from "./shapes.ts";

/** The stress in each piece as it stands in a document. */
export function strainsPiece(strains: readonly PieceStrain[]): z.infer<typeof strainShape>[] {
  return strains.map((strained) => ({
    piece: strained.name,
    body: strained.ware.body.name,
    state: strained.state,
    heating: strained.heating,
    draws: STRAIN_DRAWS.runs,
    seed: STRAIN_DRAWS.seed,
    passages: strained.passages.map(({ band, direction, measured, computed }) => ({
      band,
      direction,
      measured,
      ratio: computed?.ratio ?? null,
      low: computed?.low ?? null,
      high: computed?.high ?? null,
      shares: computed?.shares ?? null,
      risk:
        computed === null
          ? null
          : passageRisk({ band, direction, ratio: computed.ratio }, strained.ware.body),
      atSeconds: computed?.atSeconds ?? null,
      tempC: computed?.tempC ?? null,
      fromSeconds: computed?.fromSeconds ?? null,
      toSeconds: computed?.toSeconds ?? null,
    })),
    openings: strained.openings.map(({ way, tempC, ratio, low, high, shares }) => ({
      way,
      tempC,
      ratio,
      low,
      high,
      shares,
      risk: strainRisk(ratio),
    })),
    limits: strained.limits.map((limit) => ({ ...limit })),
  }));
}
