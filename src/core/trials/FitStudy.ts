import type { MeasuredFit } from "../glaze/measuredFit.ts";
import type { Spread } from "../ware/spreadOf.ts";
import type { ExpectedPoint, TileFits } from "./tileFits.ts";

/** What one kind of evidence on like tiles says of the mismatch. */
export interface FoundMismatch {
  readonly from: MeasuredFit["from"];
  /** `about` for a measure; a bound where cracks are wide, only seen, or absent. */
  readonly holds: MeasuredFit["holds"];
  readonly tiles: number;
  /**
   * Of the tile in the middle [1/K]: more tiles do not narrow it, since most of it is what nobody
   * knows of glaze and body and all tiles share. Of bounds, that of the tile that binds most.
   */
  readonly perK: Spread;
  /** Middles of the single tiles [1/K]. */
  readonly leastPerK: number;
  readonly mostPerK: number;
  /** Tiles that lie within the spread of what the files say. */
  readonly agreeing: number;
}

/** One glaze on one clay: what its files say of the fit, beside what its tiles say. */
export interface GlazeOnClay {
  readonly glaze: string;
  readonly clay: string;
  /** As the body is called by whose properties it is computed. */
  readonly bodyName: string;
  readonly expansionFrom: "measured" | "computed";
  readonly tiles: number;
  /** How much more the glaze shrinks than the body by their files, to the room [1/K]. */
  readonly computedPerK: Spread;
  readonly found: readonly FoundMismatch[];
  /** Pitch found over pitch expected, tile by tile; null when no tile has both. */
  readonly foundOverExpected: {
    readonly tiles: number;
    /** Tiles whose pitch lies within the middle 80 % of what is expected. */
    readonly within: number;
    readonly least: number;
    readonly median: number;
    readonly most: number;
  } | null;
  /** Spacing to expect against the coat, glazed as most of the tiles are. */
  readonly expected: readonly ExpectedPoint[];
  readonly expectedIsFor: "one" | "both";
}

/** Fit by the files of glazes and bodies beside what the tiles of the study say. */
export interface FitStudy extends TileFits {
  /** The pair with most tiles first. */
  readonly pairs: readonly GlazeOnClay[];
}
