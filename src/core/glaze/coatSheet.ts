import { dryCoatGPerCm2, firedCoatMm } from "./firedCoat.ts";
import type { GlazeSheet } from "./GlazeSheet.ts";

/** Dry glaze on a surface against the fired coat. */
export interface CoatSheet {
  /** Share of the dry mass that fires away; null when there is no recipe, and 0 was counted. */
  readonly lossFraction: number | null;
  readonly firedGPerCm3: number;
  /** From a dry mass weighed; low and high from the density of the fired glaze. */
  readonly weighed: {
    readonly dryGPerCm2: number;
    readonly firedMm: number;
    readonly lowMm: number;
    readonly highMm: number;
  } | null;
  /** For the coat that the file gives. */
  readonly wanted: { readonly firedMm: number; readonly dryGPerCm2: number } | null;
}

/** The coat of a glaze, both ways; null when neither way is asked for. */
export function coatSheet(
  { parsed, glaze }: GlazeSheet,
  dryGPerCm2: number | null,
): CoatSheet | null {
  const { coatMm } = parsed.ware;
  if (dryGPerCm2 === null && coatMm === null) return null;
  const lossFraction = parsed.givenAs.kind === "recipe" ? parsed.givenAs.lossFraction : null;
  const { value, low, high } = glaze.firedDensityKgPerM3;
  const at = (kgPerM3: number) => ({
    lossFraction: lossFraction ?? 0,
    firedGPerCm3: kgPerM3 / 1000,
  });
  return {
    lossFraction,
    firedGPerCm3: value / 1000,
    weighed:
      dryGPerCm2 === null
        ? null
        : {
            dryGPerCm2,
            firedMm: firedCoatMm(dryGPerCm2, at(value)),
            lowMm: firedCoatMm(dryGPerCm2, at(high)),
            highMm: firedCoatMm(dryGPerCm2, at(low)),
          },
    wanted:
      coatMm === null ? null : { firedMm: coatMm, dryGPerCm2: dryCoatGPerCm2(coatMm, at(value)) },
  };
}
