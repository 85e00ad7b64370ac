import type { z } from "zod";
import type { FitStudy, GlazeOnClay } from "../../trials/FitStudy.ts";
import type { TileFit } from "../../trials/tileFits.ts";
import type { fitsShape } from "./trialsShape.ts";

type Fits = z.infer<typeof fitsShape>;

/** Fits as their part of the document. */
export function fitsPiece({ pairs, fits, leftOut }: FitStudy): Fits {
  return {
    pairs: pairs.map(pairPiece),
    tiles: fits.map(tilePiece),
    leftOut: leftOut.map(({ firing, piece, why }) => ({ firing, piece, why })),
  };
}

function pairPiece(pair: GlazeOnClay): Fits["pairs"][number] {
  return {
    glaze: pair.glaze,
    clay: pair.clay,
    body: pair.bodyName,
    expansionFrom: pair.expansionFrom,
    tiles: pair.tiles,
    computedPerK: { ...pair.computedPerK },
    found: pair.found.map((each) => ({ ...each, perK: { ...each.perK } })),
    foundOverExpected: pair.foundOverExpected && { ...pair.foundOverExpected },
    expectedIsFor: pair.expectedIsFor,
    expected: pair.expected.map((point) => ({ ...point })),
  };
}

function tilePiece({
  firing,
  piece,
  expected,
  crackingShare,
  measured,
}: TileFit): Fits["tiles"][number] {
  return {
    firing,
    piece,
    expected: { ...expected },
    crackingShare,
    found: measured.map(({ from, holds, mismatchPerK, glazePerK, agrees, ping }) => ({
      from,
      holds,
      perK: { ...mismatchPerK },
      glazePerK: { ...glazePerK },
      agrees,
      pingC: ping?.onsetC ?? null,
    })),
  };
}
