import type { ConeSeries } from "../cones/cone.ts";
import type { Witness } from "../cones/witnessOffset.ts";
import type { LogOptions } from "../log/LogReading.ts";
import type { ThermocoupleType } from "../thermocouple/ThermocoupleType.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Body, WareGeometry } from "../ware/Ware.ts";
import type { Moment } from "./moment.ts";
import type { TrialCoat, TrialSpacing } from "./TrialMeasurements.ts";
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
