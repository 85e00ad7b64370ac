import type { LabelTest } from "./labelTest.ts";
import type { CoefficientInterval } from "./profileInterval.ts";
import type { FactorColumn } from "./spacingFactors.ts";

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
