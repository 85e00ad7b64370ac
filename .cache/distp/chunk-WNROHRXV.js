import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  parseSegments,
  targetOf
} from "./chunk-2XN66YSB.js";
import {
  wareLength
} from "./chunk-X2IVNITG.js";
import {
  BODY_WORDS,
  GivenBodyFile,
  bodyGiven,
  readDocument,
  schemaProblems
} from "./chunk-BUYZUOGW.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";
import {
  parseCone
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/core/schedule/scheduleFormat.ts
var MOST_SEGMENTS = 200;
var Quantity = external_exports.union([external_exports.number(), external_exports.string().min(1)]);
var SegmentFile = external_exports.strictObject({
  to: Quantity.describe("Where the ramp ends: a number in the file's unit, or like 2165 F."),
  rate: Quantity.describe(
    "How fast, without a sign: a number in the file's unit per hour, like 108 F/h, or free: up as fast as the kiln heats, down as it falls by itself."
  ),
  hold: Quantity.optional().describe(
    "How long to stay there: a number of minutes, or like 1 h 30 min."
  ),
  why: external_exports.string().max(300).optional().describe("Why the segment is there.")
}).describe("One ramp, then an optional hold.");
var ScheduleFile = external_exports.strictObject({
  formatVersion: external_exports.literal(1).describe("Version of this format."),
  title: external_exports.string().min(1).max(200).describe("What the schedule is for, in plain words."),
  unit: external_exports.enum(["C", "F"]).describe("Unit of bare numbers: C or F."),
  cone: external_exports.string().min(1).optional().describe('Cone wanted, in quotes, because "05" and "5" are different cones.'),
  series: external_exports.enum(["self-supporting", "self-supporting-iron-free", "large", "large-iron-free", "small"]).optional().describe("Kind of witness cone; self-supporting when left out."),
  start: Quantity.optional().describe("Temperature at the start; 20 C when left out."),
  ware: external_exports.strictObject({
    body: GivenBodyFile.optional().describe(
      "Kind of body, to compute what it stands: stoneware cone 6, porcelain cone 10; or one of your own, as base, name and properties."
    ),
    wall: Quantity.optional().describe("Thickness of the wall: millimetres, or like 1/4 in."),
    base: Quantity.optional().describe("Thickness of the base: millimetres, or like 1/2 in."),
    thickest: Quantity.optional().describe("Thickest part: millimetres, or like 1/4 in."),
    widest: Quantity.optional().describe("Widest piece: millimetres, or like 12 in."),
    height: Quantity.optional().describe(
      "From shelf to rim, the thickness alone for a tile; taken from the width when left out."
    ),
    stands: external_exports.enum(["on the shelf", "on edge"]).optional().describe("On edge: a tile whose two faces are both free; on the shelf when left out."),
    shelf: Quantity.optional().describe("Thickness of the shelf; 16 mm when left out."),
    footGap: Quantity.optional().describe(
      "Air under the foot, 0.1 mm for a foot that stands flat; 3 mm when left out."
    ),
    glazedSides: external_exports.enum(["none", "one", "both"]).optional().describe(
      "Sides of the wall with glaze; noted only, the computed stress leaves glaze out."
    ),
    state: external_exports.enum(["bone dry", "damp", "bisqued", "glazed on bisque", "glazed raw"]).optional().describe("How the ware goes in."),
    crackle: external_exports.boolean().optional().describe("The glaze is meant to crackle.")
  }).optional().describe("What is fired."),
  kilnRating: Quantity.optional().describe(
    "Highest temperature that the kiln is rated for, as its plate gives it."
  ),
  thermocouple: external_exports.strictObject({
    type: external_exports.enum(["K", "N", "S", "R", "B", "J", "T"]),
    wire: external_exports.number().positive().max(10).optional().describe("Diameter of its wire in millimetres.")
  }).optional().describe("The kiln's thermocouple."),
  segments: external_exports.array(SegmentFile).min(1).max(MOST_SEGMENTS).describe("The firing, in order."),
  notes: external_exports.string().max(4e3).optional().describe("Anything else to know."),
  basis: external_exports.string().max(4e3).optional().describe("Which published ranges it was made from.")
}).describe("A firing schedule.");

// src/core/schedule/scheduleDocument.ts
var SCHEDULE_DOCUMENT = {
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
    ...BODY_WORDS
  ]),
  expected: /* @__PURE__ */ new Map([
    ["formatVersion", "formatVersion: 1"],
    ["title", "a title of 1 to 200 characters"],
    ["unit", "unit: C or unit: F"],
    ["cone", 'a cone in quotes: "05", "5", "5.5"'],
    ["start", `a temperature: a number in the file's unit, or "68 F"`],
    [
      "ware",
      "ware with any of body, wall, base, thickest, widest, height, stands, shelf, footGap, glazedSides, state, crackle"
    ],
    [
      "body",
      "a body: earthenware, stoneware cone 6, porcelain cone 10; or your own: { base: stoneware, ruptureMPa: 30 }"
    ],
    ["wall", 'a length: a number of millimetres, or "1/4 in"'],
    ["thickest", 'a length: a number of millimetres, or "1/4 in"'],
    ["widest", 'a length: a number of millimetres, or "12 in"'],
    ["crackle", "true or false"],
    ["segments", `1 to ${MOST_SEGMENTS} segments, each with to and rate`],
    ["segments[]", "a segment: { to: 1080, rate: 150 }"],
    ["to", `a temperature: a number in the file's unit, or "2165 F"`],
    ["rate", `a rate: a number in the file's unit per hour, "108 F/h", or free`],
    ["hold", 'a span of time: a number of minutes, or "1 h 30 min"'],
    ["why", "a sentence of at most 300 characters"],
    ["notes", "text of at most 4000 characters"],
    ["basis", "text of at most 4000 characters"]
  ]),
  quotedKeys: ["cone"],
  shorten: /* @__PURE__ */ new Map([["segments", "join neighbouring ramps of one rate"]])
};

// src/core/schedule/scheduleFile.ts
var ROOM_C = 20;
function parseSchedule(text, name) {
  const document = readDocument(text, name, SCHEDULE_DOCUMENT);
  if (!document.ok) return document;
  const shape = ScheduleFile.safeParse(document.value.value);
  if (!shape.success)
    return failed(...schemaProblems(shape.error.issues, document.value, SCHEDULE_DOCUMENT));
  return meaningOf(shape.data, document.value.placeOf);
}
function meaningOf(file, at) {
  const { unit } = file;
  const series = file.series ?? "self-supporting";
  const cone = file.cone === void 0 ? ok(null) : parseCone(file.cone, { series, where: at(["cone"]) });
  const start = file.start === void 0 ? ok(ROOM_C) : targetOf(file.start, { unit, where: at(["start"]) });
  const rating = file.kilnRating === void 0 ? ok(null) : targetOf(file.kilnRating, { unit, where: at(["kilnRating"]) });
  const segments = parseSegments(file.segments, {
    unit,
    startC: start.ok ? start.value : null,
    placeOf: at
  });
  const ware = wareOfFile(file.ware ?? {}, at);
  if (cone.ok && start.ok && rating.ok && segments.ok && ware.ok)
    return ok({
      title: file.title,
      unit,
      cone: cone.value,
      series,
      startC: start.value,
      segments: segments.value,
      ware: ware.value,
      ...rating.value !== null && { kilnRatingC: rating.value },
      ...file.thermocouple && {
        thermocouple: {
          type: file.thermocouple.type,
          wireMm: file.thermocouple.wire ?? null
        }
      },
      notes: file.notes ?? null,
      basis: file.basis ?? null
    });
  const problems = [];
  for (const part of [cone, start, rating, ware, segments])
    if (!part.ok) problems.push(...part.problems);
  return failed(...problems);
}
function wareOfFile(file, at) {
  const problems = [];
  const taken = (result) => {
    if (result.ok) return result.value;
    problems.push(...result.problems);
    return null;
  };
  const body = file.body === void 0 ? null : taken(bodyGiven(file.body, (inside) => at(["ware", "body", ...inside])));
  const [wallMm, baseMm, thickestMm, widestMm, heightMm, shelfMm, footGapMm] = LENGTHS.map(
    (name) => {
      const value = file[name];
      return value === void 0 ? null : taken(wareLength(value, { name, where: at(["ware", name]) }));
    }
  );
  if (problems.length > 0) return failed(...problems);
  return ok({
    ...body && { body },
    ...wallMm !== null && { wallMm },
    ...baseMm !== null && { baseMm },
    thickestMm,
    widestMm,
    ...heightMm !== null && { heightMm },
    ...file.stands && { stands: file.stands },
    ...shelfMm !== null && { shelfMm },
    ...footGapMm !== null && { footGapMm },
    ...file.glazedSides && { glazedSides: file.glazedSides },
    state: file.state ?? null,
    crackle: file.crackle ?? false
  });
}
var LENGTHS = ["wall", "base", "thickest", "widest", "height", "shelf", "footGap"];

export {
  ScheduleFile,
  ROOM_C,
  parseSchedule
};
