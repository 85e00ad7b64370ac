import type { Caution } from "../cautions/Caution.ts";
import type { Confounding } from "./Confounding.ts";
import type { FactDifference } from "./differences.ts";
import type { FiringInNumbers } from "./FiringFact.ts";
import type { FitStudy } from "./FitStudy.ts";
import type { GlazeStudy } from "./GlazeStudy.ts";
import type { GlazesCompared } from "./glazesCompared.ts";
import type { NextTest } from "./NextTest.ts";
import type { TileSet } from "./tilesOf.ts";

/** What differed between firings, what their tiles tell, and what they leave open. */
export interface FiringStudy {
  readonly firings: readonly FiringInNumbers[];
  readonly differences: readonly FactDifference[];
  readonly tiles: TileSet;
  /** Null without tiles that say something of spacing. */
  readonly confounding: Confounding | null;
  /** Spacing and through cracks, the glaze with most tiles first. */
  readonly glazes: readonly GlazeStudy[];
  /** Glazes against each other; null with one glaze, or too few tiles. */
  readonly glazesCompared: GlazesCompared | null;
  /** Null when no files of glazes were looked for, or there is no tile. */
  readonly fits: FitStudy | null;
  /** Null without any tile. */
  readonly next: NextTest | null;
  readonly cautions: readonly Caution[];
}
