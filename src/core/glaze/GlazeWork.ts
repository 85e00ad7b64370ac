import type { Caution } from "../cautions/Caution.ts";
import type { BatchSheet } from "./batchSheet.ts";
import type { CoatSheet } from "./coatSheet.ts";
import type { FitOrMissing } from "./fitOfSheet.ts";
import type { GlazeSheet } from "./GlazeSheet.ts";
import type { SlipSheet } from "./slipSheet.ts";

/** What a potter wants to know at the scales and the bucket. */
export interface GlazeWishes {
  /** Mass to weigh out [g]. */
  readonly batchG: number | null;
  /** Density of the slip, measured or wanted [g/cm³]. */
  readonly slipGPerCm3: number | null;
  readonly bucketLitres: number | null;
  /** Dry glaze on a surface [g/cm²]. */
  readonly dryCoatGPerCm2: number | null;
}

/** One glaze, worked out, with what its potter asked for. */
export interface GlazeWork {
  readonly sheet: GlazeSheet;
  /** null for a glaze given by its oxides. */
  readonly batch: BatchSheet | null;
  /** null when neither a density nor a batch was asked for. */
  readonly slip: SlipSheet | null;
  /** null when neither the file nor the potter gives a coat. */
  readonly coat: CoatSheet | null;
  readonly onBody: FitOrMissing;
  readonly cautions: readonly Caution[];
}
