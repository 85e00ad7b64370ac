/** The fired coat of a test piece and how well it is known. */
export interface TrialCoat {
  /** Fired glaze on one face [mm], above 0. */
  readonly firedMm: number;
  /** One standard deviation of this piece's own reading [mm]; it differs from piece to piece. */
  readonly sigmaMm: number;
  /** `noted` by the record, from the scatter of several `readings`, or taken as is usual. */
  readonly sigmaIs: "noted" | "readings" | "assumed";
  /** What was read; all but `fired` are worked into fired thickness. */
  readonly how: "fired" | "raw" | "wet" | "mass";
  /**
   * One standard deviation of what all coats worked out in this way share, as a share of the coat:
   * raw over fired, density. It moves all these pieces together and leaves the exponent alone.
   */
  readonly sharedSigma: number;
  /** What was taken because the record does not say it, in words; empty when nothing was. */
  readonly taken: readonly string[];
}

/** Spacing along lines of one direction. */
export interface SpacingInDirection {
  readonly direction: "along" | "across";
  /** Mean length of line between two cracks [mm]; null when nothing was crossed. */
  readonly interceptMm: number | null;
  readonly lines: number;
  readonly crossings: number;
}

/** Crack spacing that was measured on a piece. */
export interface MeasuredSpacing {
  readonly kind: "measured";
  /** From crack to crack, square across [mm]. */
  readonly pitchMm: number;
  /** 95 % interval of `pitchMm` [mm]; null when the record gives a spacing and no more. */
  readonly lowMm: number | null;
  readonly highMm: number | null;
  /** Mean lineal intercept [mm]; null when the record gives a pitch. */
  readonly interceptMm: number | null;
  /** Lines counted; 0 when the record gives a spacing. */
  readonly lines: number;
  /** All their length [mm]; 0 when the record gives a spacing. */
  readonly lengthMm: number;
  /** Cracks crossed on all lines; 0 when the record gives a spacing. */
  readonly crossings: number;
  readonly pattern: "net" | "parallel";
  readonly from: "lines" | "spacing" | "photo";
  /** Both directions when lines of both were counted, else empty. */
  readonly directions: readonly SpacingInDirection[];
  /** Intercept along over intercept across; null without both. */
  readonly alongOverAcross: number | null;
}

/** What a piece says of crack spacing. */
export type TrialSpacing =
  | MeasuredSpacing
  | {
      readonly kind: "uncracked";
      /** Nothing closer than this [mm]: shorter side of the piece, or the longest line counted. */
      readonly atLeastMm: number;
      readonly from: "size" | "lines";
    }
  | {
      readonly kind: "not measured";
      /** In words, after "because". */
      readonly why: string;
    };
