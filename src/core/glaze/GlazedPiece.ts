import type { Glazing } from "./laminate.ts";

/** A wall with its coat. */
export interface GlazedPiece {
  /** Wall without glaze [mm]. */
  readonly wallMm: number;
  /** Fired coat on a face [mm]. */
  readonly coatMm: number;
  /** One standard deviation of the coat, as a share of it; 0.15 is common where it is read off. */
  readonly coatSigma: number;
  readonly glazing: Glazing;
  /** Water absorption of the fired body [%]; null when it was not measured. */
  readonly absorptionPercent: number | null;
}

/** A first ping on cooling, and how it was heard. */
export interface MeasuredPing {
  /** Of the piece that pinged [mm]; it may differ from the piece in hand. */
  readonly coatMm: number;
  readonly onsetC: number;
  /** One standard deviation of that temperature [K], above 0. */
  readonly sigmaK: number;
  /** A draught or an open door cracks glaze by itself. */
  readonly kiln: "shut" | "opened" | "not noted";
}

/** What was measured of cracks on a piece of this glaze, body and wall. */
export interface MeasuredCracks {
  /** Whether the coat in hand cracked; null when nobody looked. */
  readonly cracked: boolean | null;
  readonly spacing: {
    readonly meanMm: number;
    /** The 10 and 90 % points of the mean [mm]. */
    readonly lowMm: number;
    readonly highMm: number;
    /** Lengths between cracks along random lines, or the pitch of cells. */
    readonly counted: "along lines" | "pitch";
  } | null;
  readonly pings: readonly MeasuredPing[];
}
