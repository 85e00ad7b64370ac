import type { Caution } from "../cautions/Caution.ts";
import type { CrackPattern } from "../crackle/crackPitch.ts";
import type { Finding } from "../findings/Finding.ts";
import type { Mask } from "./aboveThreshold.ts";
import type { CrackDirection } from "./crackDirection.ts";
import type { CrackProfile } from "./crackWidth.ts";
import type { Crossings } from "./crossingsAlong.ts";
import type { Picture } from "./Picture.ts";

/** What a person can set; what is not set is found from the picture. */
export interface PhotoWishes {
  /** Full width of a crack [px], 3 or more. */
  readonly lineWidthPx?: number;
  /** Standard deviation of the background [px]. */
  readonly backgroundPx?: number;
  /** Least strength of a crack, as a share of the usual crack's, above 0 and below 1. */
  readonly thresholdShare?: number;
  /** Crossings closer than this are one [px]. */
  readonly mergePx?: number;
  /** Directions of the test lines [whole degrees], one or more. */
  readonly anglesDeg?: readonly number[];
  readonly pattern?: CrackPattern;
  /** Crossings that the person counted along line A and line B. */
  readonly ownCounts?: readonly [number, number];
}

/** A picture to measure, upright and cropped. */
export interface PhotoInput {
  readonly name: string;
  readonly picture: Picture;
  /** Length that a pixel stands for [mm]. */
  readonly mmPerPx: number;
  /** Where the scale comes from, in words. */
  readonly scaleFrom: string;
  /** Whether slant was taken out by four corners. */
  readonly isSquared: boolean;
  /** Whether the whole photograph is measured, with all that it shows. */
  readonly isWhole: boolean;
  readonly wishes: PhotoWishes;
  /** Told on a page with its own tools, so that no advice names an option of the command. */
  readonly isOnPage?: boolean;
}

/** One thing that was chosen, with its reason. */
export interface PhotoChoice {
  readonly what: string;
  readonly value: string;
  readonly because: string;
}

/** A line that is drawn and named, so that a person can count along it. */
export interface CheckLine {
  readonly name: "A" | "B";
  readonly crossings: Crossings;
  readonly lengthMm: number;
  /** What the person counted; null when not given. */
  readonly ownCount: number | null;
}

/** The spacing of cracks as counted in a picture. */
export interface CountedCracks {
  readonly profile: CrackProfile;
  /** Counted along all test lines. */
  readonly crossings: number;
  readonly lengthMm: number;
  /** Mean length of line from crack to crack, hidden cracks allowed for [mm]. */
  readonly interceptMm: number;
  /** 95 % interval, from the scatter between strips of the picture. */
  readonly intervalMm: { readonly low: number; readonly high: number };
  /** Half the interval over the intercept. */
  readonly relativeAccuracy: number;
  readonly testLines: number;
  /**
   * Share of cracks that are likely hidden behind a near neighbour, judged by the pairs just wide
   * enough apart to be told from one crack.
   */
  readonly hiddenShare: number;
  readonly direction: CrackDirection | null;
  readonly pattern: CrackPattern;
  readonly pitchMm: number;
  readonly pitchIntervalMm: { readonly low: number; readonly high: number };
  /** Pitches that fit into the shorter side. */
  readonly cellsAcross: number;
  readonly checkLines: readonly CheckLine[];
}

/** What a person changed of the count. */
export interface CorrectedCount {
  /** Crossings taken away and added. */
  readonly takenAway: number;
  readonly added: number;
  /** Areas left out, and the share of the length of the test lines that they take with them. */
  readonly areas: number;
  readonly leftOutShare: number;
  /** Corrections that meet no line or no crossing any more, and so change nothing. */
  readonly lost: number;
}

/** What a photograph of a tile shows. */
export interface PhotoMeasurement {
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly mmPerPx: number;
  readonly scaleFrom: string;
  readonly choices: readonly PhotoChoice[];
  /** Null when no crack was found. */
  readonly cracks: CountedCracks | null;
  /** What was corrected by hand; null when nothing was. */
  readonly corrected: CorrectedCount | null;
  /** Narrowest crack, inked to half the brightness of the ground, that would have been seen [mm]. */
  readonly leastVisibleMm: number;
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
  /**
   * What was found, for drawing and for correcting, in pixels of the mask; `factor` pixels of the
   * picture are one of the mask.
   */
  readonly found: {
    readonly lines: Mask;
    readonly factor: number;
    readonly counted: readonly Crossings[];
    /** Strip along the edges that no line enters. */
    readonly margin: number;
    /** Crossings closer than this are one. */
    readonly mergePx: number;
  };
}
