import { z } from "zod";
import type { ConeSeries } from "../cones/cone.ts";
import type { Curve } from "../curve/Curve.ts";
import type { ThermocoupleType } from "../thermocouple/emf.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { GivenBodyFile } from "../ware/bodyFormat.ts";
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

/** Most segments that a file may have. */
export const MOST_SEGMENTS = 200;

const Quantity = z.union([z.number(), z.string().min(1)]);

/** One ramp, then an optional hold, as the file writes it. */
const SegmentFile = z
  .strictObject({
    to: Quantity.describe("Where the ramp ends: a number in the file's unit, or like 2165 F."),
    rate: Quantity.describe(
      "How fast, without a sign: a number in the file's unit per hour, like 108 F/h, or free: up as fast as the kiln heats, down as it falls by itself.",
    ),
    hold: Quantity.optional().describe(
      "How long to stay there: a number of minutes, or like 1 h 30 min.",
    ),
    why: z.string().max(300).optional().describe("Why the segment is there."),
  })
  .describe("One ramp, then an optional hold.");

/**
 * A schedule file, as YAML or JSON; the only definition of its format.
 * Quantities are not yet understood here: `parseSchedule` gives them meaning.
 */
export const ScheduleFile = z
  .strictObject({
    formatVersion: z.literal(1).describe("Version of this format."),
    title: z.string().min(1).max(200).describe("What the schedule is for, in plain words."),
    unit: z.enum(["C", "F"]).describe("Unit of bare numbers: C or F."),
    cone: z
      .string()
      .min(1)
      .optional()
      .describe('Cone wanted, in quotes, because "05" and "5" are different cones.'),
    series: z
      .enum(["self-supporting", "self-supporting-iron-free", "large", "large-iron-free", "small"])
      .optional()
      .describe("Kind of witness cone; self-supporting when left out."),
    start: Quantity.optional().describe("Temperature at the start; 20 C when left out."),
    ware: z
      .strictObject({
        body: GivenBodyFile.optional().describe(
          "Kind of body, to compute what it stands: stoneware cone 6, porcelain cone 10; or one of your own, as base, name and properties.",
        ),
        wall: Quantity.optional().describe("Thickness of the wall: millimetres, or like 1/4 in."),
        base: Quantity.optional().describe("Thickness of the base: millimetres, or like 1/2 in."),
        thickest: Quantity.optional().describe("Thickest part: millimetres, or like 1/4 in."),
        widest: Quantity.optional().describe("Widest piece: millimetres, or like 12 in."),
        height: Quantity.optional().describe(
          "From shelf to rim, the thickness alone for a tile; taken from the width when left out.",
        ),
        stands: z
          .enum(["on the shelf", "on edge"])
          .optional()
          .describe("On edge: a tile whose two faces are both free; on the shelf when left out."),
        shelf: Quantity.optional().describe("Thickness of the shelf; 16 mm when left out."),
        footGap: Quantity.optional().describe(
          "Air under the foot, 0.1 mm for a foot that stands flat; 3 mm when left out.",
        ),
        glazedSides: z
          .enum(["none", "one", "both"])
          .optional()
          .describe(
            "Sides of the wall with glaze; noted only, the computed stress leaves glaze out.",
          ),
        state: z
          .enum(["bone dry", "damp", "bisqued", "glazed on bisque", "glazed raw"])
          .optional()
          .describe("How the ware goes in."),
        crackle: z.boolean().optional().describe("The glaze is meant to crackle."),
      })
      .optional()
      .describe("What is fired."),
    kilnRating: Quantity.optional().describe(
      "Highest temperature that the kiln is rated for, as its plate gives it.",
    ),
    thermocouple: z
      .strictObject({
        type: z.enum(["K", "N", "S", "R", "B", "J", "T"]),
        wire: z
          .number()
          .positive()
          .max(10)
          .optional()
          .describe("Diameter of its wire in millimetres."),
      })
      .optional()
      .describe("The kiln's thermocouple."),
    segments: z.array(SegmentFile).min(1).max(MOST_SEGMENTS).describe("The firing, in order."),
    notes: z.string().max(4000).optional().describe("Anything else to know."),
    basis: z.string().max(4000).optional().describe("Which published ranges it was made from."),
  })
  .describe("A firing schedule.");

/** A schedule file whose shape is right. */
export type ScheduleFile = z.infer<typeof ScheduleFile>;
