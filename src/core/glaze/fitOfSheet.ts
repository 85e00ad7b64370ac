import type { GlazeSheet } from "./GlazeSheet.ts";
import { type GlazeFit, glazeFit } from "./glazeFit.ts";

/** Draws of everything uncertain; the same seed every time. */
const DRAWS = { runs: 400, seed: 1 };

/** Where cooling ends [°C]. */
const ROOM_C = 20;

/** One standard deviation of a coat read off a piece, as a share of it; our own estimate. */
const COAT_SIGMA = 0.15;

/** How a glaze fits the body that its file names, or the keys that are missing for it. */
export type FitOrMissing = { readonly fit: GlazeFit } | { readonly missing: readonly string[] };

/** The fit of a glaze on the piece of its file; needs body, wall, coat and glazedSides. */
export function fitOfSheet({ parsed, glaze }: GlazeSheet): FitOrMissing {
  const { body, wallMm, coatMm, glazing, absorptionPercent, cracks } = parsed.ware;
  if (body === null || wallMm === null || coatMm === null || glazing === null)
    return {
      missing: [
        ...(body === null ? ["body"] : []),
        ...(wallMm === null ? ["wall"] : []),
        ...(coatMm === null ? ["coat"] : []),
        ...(glazing === null ? ["glazedSides"] : []),
      ],
    };
  return {
    fit: glazeFit({
      glaze,
      body,
      piece: { wallMm, coatMm, coatSigma: COAT_SIGMA, glazing, absorptionPercent },
      roomC: ROOM_C,
      measured: cracks,
      draws: DRAWS,
    }),
  };
}
