import type { ConeSeries } from "../cones/cone.ts";
import type { Curve } from "../curve/Curve.ts";
import type { ThermocoupleType } from "../thermocouple/ThermocoupleType.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Body, WareGeometry } from "../ware/Ware.ts";

/** One ramp, then an optional hold, in canonical units. */
export interface Segment {
  readonly toC: number;
  /** Signed [°C/h], or as fast as the kiln heats, or as it falls by itself. */
  readonly rateCPerHour: number | "free";
  readonly holdSeconds: number;
  /** Why the segment is there, when the file says. */
  readonly why: string | null;
}

/** A schedule as its file means it, in canonical units. */
export interface Schedule {
  readonly title: string;
  readonly unit: TemperatureUnit;
  /** Cone wanted, or null when the file names none. */
  readonly cone: string | null;
  readonly series: ConeSeries;
  /** Where the kiln starts [°C]. */
  readonly startC: number;
  readonly segments: readonly Segment[];
  readonly ware: {
    /** Body by whose properties stress is computed, when the file names one. */
    readonly body?: Body | null;
    /** Of that piece [mm]. */
    readonly wallMm?: number | null;
    readonly baseMm?: number | null;
    /** Thickest part of the ware [mm]. */
    readonly thickestMm: number | null;
    /** Widest piece [mm]. */
    readonly widestMm: number | null;
    /** From shelf to rim, when the file says [mm]. */
    readonly heightMm?: number | null;
    readonly stands?: WareGeometry["stands"] | null;
    /** Thickness of the shelf, and air under the foot, when the file says [mm]. */
    readonly shelfMm?: number | null;
    readonly footGapMm?: number | null;
    readonly glazedSides?: WareGeometry["glazedSides"] | null;
    readonly state: "bone dry" | "damp" | "bisqued" | "glazed on bisque" | "glazed raw" | null;
    /** The glaze is meant to crackle. */
    readonly crackle: boolean;
  };
  /** What the plate of the kiln gives as its highest temperature, when the file says [°C]. */
  readonly kilnRatingC?: number;
  /** The kiln's thermocouple, when the file says; diameter of its wire [mm]. */
  readonly thermocouple?: { readonly type: ThermocoupleType; readonly wireMm: number | null };
  readonly notes: string | null;
  /** Which published ranges it was made from, when the file says. */
  readonly basis?: string | null;
}

/** A ramp or a hold as laid out in time. */
export interface TimelineRow {
  /** Index of the segment it comes from. */
  readonly segment: number;
  readonly kind: "ramp" | "hold";
  readonly fromC: number;
  readonly toC: number;
  /** As programmed, or how it goes on the whole where it is left free; signed, 0 on a hold. */
  readonly rateCPerHour: number;
  /** The rate was `free`, so it is the kiln's, not the file's. */
  readonly assumedRate: boolean;
  readonly startSeconds: number;
  readonly endSeconds: number;
}

/** A schedule laid out: the Curve, its rows, and what had to be assumed. */
export interface Expansion {
  readonly curve: Curve;
  readonly timeline: readonly TimelineRow[];
  /** Plain sentences, such as what `free` was taken to be and where that comes from. */
  readonly assumptions: readonly string[];
}
