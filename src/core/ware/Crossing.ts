import type { BandPassage } from "../curve/Band.ts";

/** A passage judged against a limit. */
export interface Crossing extends BandPassage {
  /** Fastest rate that the limit allows in this direction [°C/h, positive]; null where none applies. */
  readonly limitCPerHour: number | null;
  /** Where the limit comes from, in words. */
  readonly limitBasis: string | null;
  /** Whom the limit is for: `ware of unknown thickness`; null where none applies. */
  readonly limitMeantFor: string | null;
  /** Computed stress over strength at its worst; null until the ware is computed. */
  readonly strainRatio: number | null;
  /** Its 10 and 90 % points by what the body may be; null with it. */
  readonly strainRatioLow: number | null;
  readonly strainRatioHigh: number | null;
}
