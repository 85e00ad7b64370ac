import type { ConeSeries } from "../cones/cone.ts";
import type { Witness } from "../cones/witnessOffset.ts";
import type { LogOptions } from "../log/reading/LogReading.ts";
import type { ThermocoupleType } from "../thermocouple/emf.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Body, WareGeometry } from "../ware/Ware.ts";
import type { Moment } from "./moment.ts";
import type { PieceSize } from "./trialSpacing.ts";

/** A piece or a kind of ware that was fired. */
export interface RecordedWare {
  readonly name: string;
  readonly clay: string;
  readonly state: "bone dry" | "damp" | "bisqued" | "glazed on bisque" | "glazed raw" | null;
  /** Body by whose properties stress is computed; null when the record names none. */
  readonly body: Body | null;
  readonly wallMm: number | null;
  readonly baseMm: number | null;
  readonly thickestMm: number | null;
  readonly widestMm: number | null;
  /** From shelf to rim. */
  readonly heightMm: number | null;
  readonly stands: WareGeometry["stands"] | null;
  /** Thickness of the shelf under it. */
  readonly shelfMm: number | null;
  /** Air under the foot. */
  readonly footGapMm: number | null;
  readonly glazedSides: WareGeometry["glazedSides"] | null;
  readonly count: number | null;
}

/** One test piece. */
export interface RecordedTrial {
  readonly piece: string;
  readonly clay: string;
  /** Body by whose properties the fit is computed; null when neither trial nor ware names one. */
  readonly body: Body | null;
  readonly glaze: string;
  /** Fired glaze [mm]; `coat` has how it is known. */
  readonly coatMm: number;
  readonly coat: TrialCoat;
  readonly glazedSides: "one" | "both";
  readonly shape: "flat tile" | "closed wall" | "bowl" | null;
  /** Wall without glaze [mm]. */
  readonly wallMm: number | null;
  readonly size: PieceSize | null;
  /** Where it stood in the kiln. */
  readonly place: string | null;
  /** From crack to crack, square across [mm]; `spacing` has how it is known. */
  readonly crackSpacingMm: number | null;
  readonly spacing: TrialSpacing;
  readonly cracked: "none" | "crackle" | "through" | null;
  readonly stain: string | null;
  readonly pings: {
    readonly count: number;
    /** When they were heard; empty when only counted. */
    readonly moments: readonly Moment[];
  } | null;
  readonly note: string | null;
}

/** Something heard, and when. */
interface RecordedSound {
  readonly what: string;
  readonly at: Moment;
  /** As written: `14:05`. */
  readonly said: string;
  readonly note: string | null;
}

/** What can be found on a piece, as a record names it. */
export const FOUND_WORDS = [
  "through-crack",
  "crackle",
  "crazing",
  "crack",
  "dunt",
  "S-crack",
  "drying crack",
  "bisque crack",
  "burst",
  "shivering",
  "chip",
  "blister",
  "pinhole",
  "crawling",
] as const;

/** What was found on the ware afterwards; null where nothing was noted. */
export interface FoundOnWare {
  readonly piece: string | null;
  /** `crack` when it is not known how deep it goes; the last three are no cracks. */
  readonly what: (typeof FOUND_WORDS)[number] | null;
  readonly edges: "sharp" | "rounded under glaze" | null;
  readonly where: "rim" | "foot" | "wall" | "base" | "handle" | null;
  readonly pattern: "one long line" | "spiral" | "network" | "star" | "S" | null;
  /** When it was first seen; before the firing, as in the bisque. */
  readonly when:
    | "before firing"
    | "before unloading"
    | "at unloading"
    | "hours later"
    | "days later"
    | null;
  readonly rings: "dull" | "clear" | null;
  readonly note: string | null;
}

/** A firing record in canonical units. */
export interface FiringRecord {
  /** File name, for problems. */
  readonly name: string;
  readonly title: string;
  readonly unit: TemperatureUnit;
  readonly schedule: string | null;
  readonly kiln: string | null;
  /** What the plate of the kiln gives as its highest temperature [°C]. */
  readonly kilnRatingC?: number | null;
  readonly thermocouple: {
    readonly type: ThermocoupleType | null;
    /** As written. */
    readonly class: string | null;
    /** Outer diameter of its metal sheath [mm]. */
    readonly sheathMm: number | null;
    /** Diameter of its wire [mm]. */
    readonly wireMm?: number | null;
  } | null;
  /** The cone aimed at, when the record says so; the schedule's goes before. */
  readonly cone: string | null;
  readonly series: ConeSeries | null;
  readonly witnesses: readonly Witness[];
  readonly ware: readonly RecordedWare[];
  readonly trials: readonly RecordedTrial[];
  /** To pass on to the reader of the log; what a person says on the command line goes before. */
  readonly log: Omit<LogOptions, "name">;
  readonly unloaded: {
    readonly at: Moment | null;
    /** As written; null when no time was given. */
    readonly said: string | null;
    readonly temperatureC: number | null;
  } | null;
  readonly heard: readonly RecordedSound[];
  readonly found: readonly FoundOnWare[];
  readonly notes: string | null;
  /** Made up as an example. */
  readonly invented: boolean;
}

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
