import type { Caution } from "../cautions/cautions.ts";
import type { EvidenceKind } from "../findings/Finding.ts";
import type { MeasuredFit } from "../glaze/measuredFit.ts";
import type { Spread } from "../math/statistics.ts";
import type { Problem } from "../problem.ts";
import type { Confounding } from "./Confounding.ts";
import type { FactDifference } from "./differences.ts";
import type { NextTest } from "./NextTest.ts";
import type { LabelTest } from "./permutationTest.ts";
import type { CoefficientInterval } from "./profileInterval.ts";
import type { SampleSizes } from "./sampleSizes.ts";
import type { FactorColumn } from "./spacingFactors.ts";
import type { GlazesCompared, ThroughCracks } from "./studyFirings.ts";
import type { TileSet } from "./Tile.ts";
import type { ExpectedPoint, TileFits } from "./tileFits.ts";

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

/** What is compared between firings. */
export type FactName =
  | "peak"
  | "cone"
  | "heatwork"
  | "above1100"
  | "quartzHeatingMean"
  | "quartzMean"
  | "quartzFastest"
  | "cristobaliteMean"
  | "cristobaliteFastest"
  | "coolingHold"
  | "openedAt"
  | "openedAfter"
  | "to100";

/** What a person can change in a firing; several facts show one of them. */
export type FiringCause = "heat" | "quartz" | "cristobalite" | "coolingHold" | "opening";

/** One number of one firing, with how well it is known. */
export interface FiringFact {
  readonly name: FactName;
  /** `quartz, cooling: mean`. */
  readonly label: string;
  readonly kind: EvidenceKind;
  /** Which part of the firing it shows; null for what follows from the other parts. */
  readonly cause: FiringCause | null;
  /** Rates are positive, whichever way they go; null when it was not measured or noted. */
  readonly value: number | null;
  /** One standard deviation of this reading alone, in the unit of the value. */
  readonly sigma: number;
  /** One standard deviation that thermocouple and place add; firings that share both share most of it. */
  readonly sensorSigma: number;
}

/** A firing in numbers. */
export interface FiringInNumbers {
  readonly title: string;
  /** File name of the record, by which tiles name their firing; null without a record. */
  readonly record: string | null;
  /** Kiln and thermocouple in one word, to know whether two firings share them; null when not noted. */
  readonly instrument: string | null;
  readonly facts: readonly FiringFact[];
}

/** How much wider the cracks of one group are than those of another, coats made equal. */
export interface GroupRatio extends Pick<FactorColumn, "factor" | "level" | "against"> {
  /** Pitch of `level` over pitch of `against`, with its 95 % interval. */
  readonly ratio: CoefficientInterval;
  readonly tiles: number;
  readonly tilesAgainst: number;
  /** True when another thing changed with it, so that the ratio belongs to both. */
  readonly isShared: boolean;
  /** Labels dealt anew within firings; null for firings, and where a firing has one group only. */
  readonly test: LabelTest | null;
}

/** The exponent over the tiles of one group alone. */
export interface GroupSlope extends Pick<FactorColumn, "factor" | "level"> {
  readonly exponent: CoefficientInterval;
  readonly tiles: number;
}

/** Spacing against coat for tiles of one glaze: pitch = constant × coat^exponent × groups. */
export interface SpacingFit {
  readonly glaze: string;
  /** Measured tiles. */
  readonly tiles: number;
  /** Tiles on which no crack was met; they count as wider than what they rule out. */
  readonly uncracked: number;
  /**
   * Of these, tiles with coats thinner than every cracked one: likely too thin to crack at all, which
   * is no wide spacing and drags the exponent down.
   */
  readonly thinUncracked: number;
  /** The exponent without those; null when there are none, or too few tiles are left. */
  readonly exponentWithoutThin: CoefficientInterval | null;
  readonly firings: number;
  readonly coatsMm: { readonly least: number; readonly most: number };
  /** With reading error of the coats taken out; 95 % interval. */
  readonly exponent: CoefficientInterval;
  /** With coats as read: too small by about `reliability`. */
  readonly exponentAsRead: number;
  /** The same with its 95 % interval, as if no coat were misread. */
  readonly exponentIfExact: CoefficientInterval;
  /** Share of the scatter of read coats that is scatter of coats, 0–1. */
  readonly reliability: number;
  /** Tiles whose reading error is assumed, not noted. */
  readonly coatErrorAssumed: number;
  /** Tiles with a spacing and no range. */
  readonly countingErrorUnknown: number;
  /** One standard deviation between like tiles, in logarithms of the pitch. */
  readonly tileSigma: number;
  /** The same without coats too thin to crack; null when there are none, or too few tiles are left. */
  readonly tileSigmaWithoutThin: number | null;
  /** One standard deviation between lines of one tile, in logarithms; null without counted lines. */
  readonly lineSigma: number | null;
  /** Share of the scatter of single lines that is scatter between tiles; null without lines. */
  readonly icc: number | null;
  /** What all counted lines are worth as independent ones; null without lines. */
  readonly effectiveLines: number | null;
  readonly ratios: readonly GroupRatio[];
  /** Levels that changed together with others and are in their ratios. */
  readonly untold: readonly Pick<FactorColumn, "factor" | "level" | "against">[];
  /** Of groups with enough tiles, to see whether one exponent does for all. */
  readonly slopes: readonly GroupSlope[];
  /** The fitted line for the most frequent groups, thinnest coat first; 95 % interval of the line. */
  readonly curve: readonly {
    readonly coatMm: number;
    readonly pitchMm: number;
    readonly lowMm: number;
    readonly highMm: number;
  }[];
  /** Groups of the curve: `Tarrow white, one, flat`. */
  readonly curveIsOf: readonly Pick<FactorColumn, "factor" | "level">[];
}
