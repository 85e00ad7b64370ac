import type { Problem } from "../problem.ts";
import type { SpacingFit } from "./SpacingFit.ts";
import type { SampleSizes } from "./sampleSizes.ts";
import type { ThroughCracks } from "./throughCracks.ts";

/** What the tiles of one glaze say. */
export interface GlazeStudy {
  readonly glaze: string;
  /** Null when `problems` says why there is none. */
  readonly spacing: SpacingFit | null;
  /** Why there is no fit, and groups too small to say anything of. */
  readonly problems: readonly Problem[];
  /** Null when nobody looked at any tile. */
  readonly through: ThroughCracks | null;
  readonly sizes: SampleSizes;
}
