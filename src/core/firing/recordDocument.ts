import type { DocumentFormat } from "../document/DocumentFormat.ts";
import { BODY_WORDS } from "../ware/bodyFormat.ts";
import { FiringRecordFile } from "./recordFormat.ts";

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
