import { z } from "zod";
import { failed, ok, type Result } from "../problem.ts";
import type { FiringRecord, RecordedTrial, RecordedWare } from "./FiringRecord.ts";
import { readDocument } from "./readDocument.ts";
import { type RecordValues, recordValues } from "./recordValues.ts";
import { schemaProblems } from "./schemaProblems.ts";

export type { FiringRecord } from "./FiringRecord.ts";

const Temperature = z
  .union([z.number(), z.string()])
  .describe('a number in the file\'s unit, or with its unit: "180 C", "350 F"');

const Length = z
  .union([z.number().nonnegative(), z.string()])
  .describe('millimetres, or with its unit: "0.8 mm", "1/4 in"');

const At = z
  .string()
  .describe('a clock time "09:10" or "2026-03-15 09:10", or since the start of the log "+14:05"');

const Words = z.string().min(1);

const Ware = z.strictObject({
  name: Words.describe("what was in the kiln: mugs, platter"),
  clay: Words.describe("the clay body, in your own words"),
  state: z
    .enum(["bone dry", "damp", "bisqued", "glazed on bisque", "glazed raw"])
    .optional()
    .describe("how it went into the kiln"),
  thickest: Length.optional().describe("thickest part; millimetres or with a unit"),
  widest: Length.optional().describe("widest piece; millimetres or with a unit"),
  count: z.number().int().positive().optional().describe("how many pieces"),
});

const Trial = z.strictObject({
  piece: Words.describe("the mark on the test piece; pieces with one name are one trial"),
  clay: Words.describe("the clay body"),
  glaze: Words.describe("the glaze, by your own name"),
  coat: Length.describe('thickness of the fired glaze: "0.8 mm"'),
  glazedSides: z.enum(["one", "both"]).describe("one side or both"),
  crackSpacing: Length.optional().describe('mean distance between cracks: "6 mm"'),
  cracked: z
    .enum(["none", "crackle", "through"])
    .optional()
    .describe("none, crackle (glaze only) or through (the wall as well)"),
  note: z.string().optional(),
});

const WitnessCone = z.strictObject({
  cone: z.string().describe('the number on the cone, in quotes: "05", "5"'),
  bent: z
    .string()
    .describe('upright, down, a clock position "4 o\'clock" or degrees from upright "45 degrees"'),
});

const LogOverrides = z.strictObject({
  unit: z.enum(["C", "F", "K"]).optional().describe("unit of the temperatures in the log"),
  columns: z.array(z.string()).min(1).optional().describe("temperature columns to read, by name"),
  timeColumn: z.string().optional().describe("name of the time column"),
  timeUnit: z.enum(["s", "min", "h"]).optional().describe("unit of a bare number of time"),
  dayFirst: z.boolean().optional().describe("whether 03/05 is 3 May"),
  delimiter: z.string().min(1).optional().describe("what stands between cells"),
  decimal: z.enum([".", ","]).optional().describe("decimal mark"),
  encoding: z.string().optional().describe("text encoding: utf-8, windows-1252, utf-16le"),
  intervalSeconds: z.number().positive().optional().describe("step when the log has no times [s]"),
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
    thermocouple: z
      .strictObject({
        type: z.enum(["K", "N", "S", "R", "B", "J", "T"]).optional(),
        class: z.union([z.string(), z.number()]).optional().describe("tolerance class, if known"),
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
        at: At.optional(),
        temperature: Temperature.optional().describe("what the kiln read when it was opened"),
      })
      .optional()
      .describe("when the kiln was opened, and how hot it was"),
    heard: z
      .array(
        z.strictObject({
          what: Words.describe("pinging, a crack, or your own words"),
          at: At,
          note: z.string().optional(),
        }),
      )
      .optional()
      .describe("what was heard, and when"),
    notes: z.string().optional(),
    invented: z.literal(true).optional().describe("true when the firing was made up as an example"),
  })
  .describe("a firing record, beside its log and with the same name");

/** The record as it stands in the file, checked. */
export type FiringRecordFile = z.output<typeof FiringRecordFile>;

/**
 * A firing record from the text of its file (YAML or JSON), in canonical units.
 *
 * @param name File name, for problems.
 * @returns All problems of the file at once, each with the place where it stands.
 */
export function parseRecord(text: string, name: string): Result<FiringRecord> {
  const document = readDocument(text, name, "record", ["cone"]);
  if (!document.ok) return document;
  const checked = FiringRecordFile.safeParse(document.value);
  if (!checked.success)
    return failed(
      ...schemaProblems(checked.error.issues, {
        data: document.value,
        name,
        room: "record",
        schema: FiringRecordFile,
      }),
    );
  return inCanonicalUnits(checked.data, name);
}

function inCanonicalUnits(file: FiringRecordFile, name: string): Result<FiringRecord> {
  const values = recordValues(name, file.unit, file.cones ?? "self-supporting");
  const record: FiringRecord = {
    name,
    title: file.title,
    unit: file.unit,
    schedule: file.schedule ?? null,
    kiln: file.kiln ?? null,
    thermocouple: thermocoupleOf(file.thermocouple),
    cone: file.cone === undefined ? null : values.cone(file.cone, "cone"),
    series: file.cones ?? null,
    witnesses: (file.witnessCones ?? []).map((witness, i) => ({
      cone: values.cone(witness.cone, `witnessCones[${i}].cone`),
      said: witness.bent,
      bend: values.bend(witness.bent, `witnessCones[${i}].bent`),
    })),
    ware: (file.ware ?? []).map((ware, i) => wareOf(ware, `ware[${i}]`, values)),
    trials: (file.trials ?? []).map((trial, i) => trialOf(trial, `trials[${i}]`, values)),
    log: withoutUndefined(file.log ?? {}),
    unloaded: file.unloaded ? unloadedOf(file.unloaded, values) : null,
    heard: (file.heard ?? []).map((sound, i) => ({
      what: sound.what,
      at: values.moment(sound.at, `heard[${i}].at`),
      said: sound.at,
      note: sound.note ?? null,
    })),
    notes: file.notes ?? null,
    invented: file.invented ?? false,
  };
  return values.problems.length > 0 ? failed(...values.problems) : ok(record);
}

function thermocoupleOf(given: FiringRecordFile["thermocouple"]): FiringRecord["thermocouple"] {
  if (!given) return null;
  return {
    type: given.type ?? null,
    class: given.class === undefined ? null : String(given.class),
  };
}

function wareOf(ware: z.output<typeof Ware>, place: string, values: RecordValues): RecordedWare {
  return {
    name: ware.name,
    clay: ware.clay,
    state: ware.state ?? null,
    thickestMm: values.maybeLength(ware.thickest, `${place}.thickest`),
    widestMm: values.maybeLength(ware.widest, `${place}.widest`),
    count: ware.count ?? null,
  };
}

function trialOf(
  trial: z.output<typeof Trial>,
  place: string,
  values: RecordValues,
): RecordedTrial {
  return {
    piece: trial.piece,
    clay: trial.clay,
    glaze: trial.glaze,
    coatMm: values.length(trial.coat, `${place}.coat`),
    glazedSides: trial.glazedSides,
    crackSpacingMm: values.maybeLength(trial.crackSpacing, `${place}.crackSpacing`),
    cracked: trial.cracked ?? null,
    note: trial.note ?? null,
  };
}

function unloadedOf(
  given: NonNullable<FiringRecordFile["unloaded"]>,
  values: RecordValues,
): FiringRecord["unloaded"] {
  return {
    at: given.at === undefined ? null : values.moment(given.at, "unloaded.at"),
    said: given.at ?? null,
    temperatureC:
      given.temperature === undefined
        ? null
        : values.temperature(given.temperature, "unloaded.temperature"),
  };
}

/** The same keys but those that are undefined, which an exact optional property may not be. */
function withoutUndefined<T extends object>(
  given: T,
): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
}
