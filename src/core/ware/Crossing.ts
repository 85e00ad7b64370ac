import type { BandPassage } from "../curve/Band.ts";
import type { Severity } from "../findings/Finding.ts";

/** A passage judged by the stress in the piece that bears it least. */
export interface Crossing extends BandPassage {
  /** The guide: rate at which the stress is half the strength [°C/h, positive]; null where none applies. */
  readonly limitCPerHour: number | null;
  /** The part of the band in which the guide is to be kept [°C]; null with it. */
  readonly limitFromC: number | null;
  readonly limitToC: number | null;
  /** Where the guide comes from, in words. */
  readonly limitBasis: string | null;
  /** Whom the guide is for: `an ordinary stoneware mug`; null where none applies. */
  readonly limitMeantFor: string | null;
  /** Whether that piece's body has cristobalite, so that the lower band is one. */
  readonly isCristobalitic: boolean;
  /** By the stress; null where it is not judged: on the way up, part of it unseen, the lid off. */
  readonly severity: Severity | null;
  /** The kiln was opened in it or before, at this [°C]: from there the rate is not the ware's; else null. */
  readonly openedC: number | null;
  /** Computed stress over strength at its worst; null until the ware is computed. */
  readonly strainRatio: number | null;
  /** Its 10 and 90 % points by what the body may be; null with it. */
  readonly strainRatioLow: number | null;
  readonly strainRatioHigh: number | null;
}
