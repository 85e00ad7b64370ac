import type { DocumentFormat } from "../document/DocumentFormat.ts";
import { BODY_WORDS } from "../ware/bodyFormat.ts";
import { MOST_SEGMENTS, ScheduleFile } from "./scheduleFormat.ts";

/** A schedule as a document: its shape, and the words of its problems. */
export const SCHEDULE_DOCUMENT: DocumentFormat = {
  room: "schedule",
  thing: "a schedule",
  neededKeys: "formatVersion, title, unit and segments",
  example: "one of the shipped schedules",
  schema: ScheduleFile,
  missingCode: "schedule/missing-key",
  otherWords: new Map([
    ["target", "to"],
    ["temp", "to"],
    ["temperature", "to"],
    ["ramp", "rate"],
    ["speed", "rate"],
    ["soak", "hold"],
    ["dwell", "hold"],
    ["name", "title"],
    ["units", "unit"],
    ["steps", "segments"],
    ["version", "formatVersion"],
    ["thickness", "thickest"],
    ["width", "widest"],
    ["comment", "why"],
    ...BODY_WORDS,
  ]),
  expected: new Map([
    ["formatVersion", "formatVersion: 1"],
    ["title", "a title of 1 to 200 characters"],
    ["unit", "unit: C or unit: F"],
    ["cone", 'a cone in quotes: "05", "5", "5.5"'],
    ["start", 'a temperature: a number in the file\'s unit, or "68 F"'],
    [
      "ware",
      "ware with any of body, wall, base, thickest, widest, height, stands, shelf, footGap, glazedSides, state, crackle",
    ],
    [
      "body",
      "a body: earthenware, stoneware cone 6, porcelain cone 10; or your own: { base: stoneware, ruptureMPa: 30 }",
    ],
    ["wall", 'a length: a number of millimetres, or "1/4 in"'],
    ["thickest", 'a length: a number of millimetres, or "1/4 in"'],
    ["widest", 'a length: a number of millimetres, or "12 in"'],
    ["crackle", "true or false"],
    ["segments", `1 to ${MOST_SEGMENTS} segments, each with to and rate`],
    ["segments[]", "a segment: { to: 1080, rate: 150 }"],
    ["to", 'a temperature: a number in the file\'s unit, or "2165 F"'],
    ["rate", 'a rate: a number in the file\'s unit per hour, "108 F/h", or free'],
    ["hold", 'a span of time: a number of minutes, or "1 h 30 min"'],
    ["why", "a sentence of at most 300 characters"],
    ["notes", "text of at most 4000 characters"],
    ["basis", "text of at most 4000 characters"],
  ]),
  quotedKeys: ["cone"],
  shorten: new Map([["segments", "join neighbouring ramps of one rate"]]),
};
