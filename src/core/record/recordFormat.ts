import { z } from "zod";
import type { DocumentFormat } from "../document/readDocument.ts";
import { BODY_WORDS, GivenBodyFile } from "../ware/bodyFormat.ts";
import { FOUND_WORDS } from "./FiringRecord.ts";
import { Trial, Words, WrittenLength, WrittenMoment } from "./trialFormat.ts";

const Temperature = z
  .union([z.number(), z.string()])
  .describe('a number in the file\'s unit, or with its unit: "180 C", "350 F"');

/** Ware in the kiln, as the file writes it. */
export const Ware = z.strictObject({
  name: Words.describe("what was in the kiln: mugs, platter"),
  clay: Words.describe("the clay body, in your own words"),
  state: z
    .enum(["bone dry", "damp", "bisqued", "glazed on bisque", "glazed raw"])
    .optional()
    .describe("how it went into the kiln"),
  body: GivenBodyFile.optional().describe(
    "kind of body, to compute what it stands: earthenware, stoneware cone 6, porcelain cone 10; or one of your own, as base, name and properties",
  ),
  wall: WrittenLength.optional().describe("thickness of the wall; millimetres or with a unit"),
  base: WrittenLength.optional().describe("thickness of the base; millimetres or with a unit"),
  thickest: WrittenLength.optional().describe("thickest part; millimetres or with a unit"),
  widest: WrittenLength.optional().describe("widest piece; millimetres or with a unit"),
  height: WrittenLength.optional().describe(
    "from shelf to rim, the thickness alone for a tile; taken from the name and the width when left out",
  ),
  stands: z
    .enum(["on the shelf", "on edge"])
    .optional()
    .describe("on edge: a tile whose two faces are both free; on the shelf when left out"),
  shelf: WrittenLength.optional().describe("thickness of the shelf; 16 mm when left out"),
  footGap: WrittenLength.optional().describe(
    "air under the foot, 0.1 mm for a foot that stands flat; 3 mm when left out",
  ),
  glazedSides: z
    .enum(["none", "one", "both"])
    .optional()
    .describe("sides of the wall with glaze; noted only, the computed stress leaves glaze out"),
  count: z.number().int().positive().optional().describe("how many pieces"),
});

const WitnessCone = z.strictObject({
  cone: z.string().describe('the number on the cone, in quotes: "05", "5"'),
  bent: z
    .string()
    .describe('upright, down, a clock position "4 o\'clock" or degrees from upright "45 degrees"'),
});

/** What was found on the ware afterwards, as the file writes it. */
export const Found = z
  .strictObject({
    piece: Words.optional().describe("which piece or ware, in your own words"),
    what: z
      .union([z.enum(FOUND_WORDS), Words])
      .optional()
      .describe(
        "through-crack or split, crackle or crazing (glaze only), crack (depth not known), dunt, S-crack, drying crack, bisque crack, burst, shivering (glaze flakes off), chip, blister, pinhole, crawling",
      ),
    edges: z
      .enum(["sharp", "rounded under glaze"])
      .optional()
      .describe("edges of the crack: sharp, or rounded with glaze run over them"),
    where: z
      .enum(["rim", "foot", "wall", "base", "handle"])
      .optional()
      .describe("where it begins or is widest"),
    pattern: z
      .enum(["one long line", "spiral", "network", "star", "S"])
      .optional()
      .describe("how the cracks run"),
    when: z
      .enum(["before firing", "before unloading", "at unloading", "hours later", "days later"])
      .optional()
      .describe("when it was first seen; before firing: in the bisque or the dry pot"),
    rings: z.enum(["dull", "clear"]).optional().describe("how the piece rings when tapped"),
    note: z.string().optional(),
  })
  .describe("what was found on a piece");

const LogOverrides = z.strictObject({
  unit: z.enum(["C", "F", "K"]).optional().describe("unit of the temperatures in the log"),
  columns: z.array(z.string()).min(1).optional().describe("temperature columns to read, by name"),
  roles: z
    .record(z.string(), z.enum(["temperature", "set-point", "output", "cold-junction", "other"]))
    .optional()
    .describe(
      "what a column is, by its name: temperature, set-point, output, cold-junction, other",
    ),
  timeColumn: z.string().optional().describe("name of the time column"),
  timeKind: z
    .enum([
      "elapsed",
      "clock-24h",
      "clock-12h",
      "epoch",
      "spreadsheet",
      "spreadsheet-1904",
      "count",
    ])
    .optional()
    .describe(
      "what the time column holds: elapsed, clock-24h, clock-12h, epoch (since 1970), spreadsheet (days since 1900), spreadsheet-1904 (days since 1904), count (of samples)",
    ),
  timeUnit: z
    .enum(["ms", "s", "min", "h", "d"])
    .optional()
    .describe("unit of a bare number of time"),
  dayFirst: z.boolean().optional().describe("whether 03/05 is 3 May"),
  yearFirst: z.boolean().optional().describe("whether 26-03-05 is 5 March 2026"),
  header: z
    .union([z.int().positive(), z.literal("none")])
    .optional()
    .describe("line of the log with the names of the columns, counted from 1, or none"),
  layout: z
    .enum(["wide", "long"])
    .optional()
    .describe("wide: a column for each channel; long: a row for each channel at each time"),
  delimiter: z
    .string()
    .min(1)
    .optional()
    .describe("what stands between cells; tab, blanks and wide blanks by name"),
  decimal: z.enum([".", ","]).optional().describe("decimal mark"),
  encoding: z.string().optional().describe("text encoding: utf-8, windows-1252, utf-16le"),
  intervalSeconds: z.number().positive().optional().describe("step when the log has no times [s]"),
  coldJunction: Temperature.optional().describe(
    "how warm the thermocouple's terminals were, for a log in millivolts",
  ),
});

/** A firing record as a file: what a person noted beside the log. */
export const FiringRecordFile = z
  .strictObject({
    formatVersion: z.literal(1).describe("1"),
    title: Words.describe("what this firing was, in one line"),
    unit: z.enum(["C", "F"]).default("C").describe("unit of bare temperatures in this file"),
    schedule: Words.optional().describe(
      "file name of the schedule, beside this file or in ../schedules",
    ),
    cone: z.string().optional().describe('the cone aimed at, in quotes: "05", "5"'),
    kiln: Words.optional().describe("which kiln, in your own words"),
    kilnRating: Temperature.optional().describe(
      "highest temperature that the kiln is rated for, as its plate gives it",
    ),
    thermocouple: z
      .strictObject({
        type: z.enum(["K", "N", "S", "R", "B", "J", "T"]).optional(),
        class: z
          .union([z.string(), z.number()])
          .optional()
          .describe("tolerance class, if known: standard, special, 1, 2 or 3"),
        sheath: WrittenLength.optional().describe("outer diameter of its metal sheath"),
        wire: WrittenLength.optional().describe("diameter of its wire"),
      })
      .optional(),
    cones: z
      .enum(["self-supporting", "self-supporting-iron-free", "large", "large-iron-free", "small"])
      .optional()
      .describe("series of the cones in this file"),
    witnessCones: z.array(WitnessCone).optional().describe("cones that stood by the thermocouple"),
    ware: z.array(Ware).optional(),
    trials: z.array(Trial).optional().describe("test pieces"),
    log: LogOverrides.optional().describe("how to read the log, when it cannot tell by itself"),
    unloaded: z
      .strictObject({
        at: WrittenMoment.optional(),
        temperature: Temperature.optional().describe("what the kiln read when it was opened"),
      })
      .optional()
      .describe("when the kiln was opened, and how hot it was"),
    heard: z
      .array(
        z.strictObject({
          what: Words.describe("pinging, a crack, or your own words"),
          at: WrittenMoment,
          note: z.string().optional(),
        }),
      )
      .optional()
      .describe("what was heard, and when"),
    found: z.array(Found).optional().describe("what was found on the ware afterwards"),
    notes: z.string().optional(),
    invented: z.literal(true).optional().describe("true when the firing was made up as an example"),
  })
  .describe("a firing record, beside its log and with the same name");

/** The record as it stands in the file, checked. */
export type FiringRecordFile = z.output<typeof FiringRecordFile>;

/** A firing record as a document: its shape, and the words of its problems. */
export const RECORD_DOCUMENT: DocumentFormat = {
  room: "record",
  thing: "a firing record",
  neededKeys: "formatVersion and title",
  example: "the record of an example firing",
  schema: FiringRecordFile,
  missingCode: "record/missing",
  otherWords: new Map([
    ["name", "title"],
    ["units", "unit"],
    ["version", "formatVersion"],
    ["series", "cones"],
    ["witnesses", "witnessCones"],
    ["bend", "bent"],
    ["thickness", "thickest"],
    ["width", "widest"],
    ["pieces", "count"],
    ["body", "clay"],
    ["opened", "unloaded"],
    ["sounds", "heard"],
    ["damage", "found"],
    ["cracks", "found"],
    ["faults", "found"],
    ["time", "at"],
    ["comment", "notes"],
    ...BODY_WORDS,
  ]),
  expected: new Map(),
  quotedKeys: ["cone"],
  shorten: new Map(),
};
