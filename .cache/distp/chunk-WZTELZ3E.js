import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  crackPitch,
  lineIntercept
} from "./chunk-VURM777N.js";
import {
  tQuantile
} from "./chunk-2JS2W74R.js";
import {
  parseCoatMass,
  parseSlipDensity
} from "./chunk-ZFLGP4NE.js";
import {
  MOMENT_FORMS,
  parseMoment
} from "./chunk-OBEK7CUI.js";
import {
  delimiterNamed
} from "./chunk-PMYOLCKT.js";
import {
  crackWords
} from "./chunk-DDB2KZF2.js";
import {
  dryGPerLitre,
  firedCoatMm,
  isBareNumber
} from "./chunk-DAQTYWBQ.js";
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
  parseLength
} from "./chunk-P7LYRYX6.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";
import {
  parseTemperature
} from "./chunk-PYB7INDF.js";
import {
  nearWord
} from "./chunk-O435DZD7.js";
import {
  parseCone
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/core/firing/FiringRecord.ts
var FOUND_WORDS = [
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
  "crawling"
];

// src/core/firing/writtenForms.ts
var WrittenLength = external_exports.union([external_exports.number().nonnegative(), external_exports.string()]).describe('millimetres, or with its unit: "0.8 mm", "1/4 in"');
var WrittenMoment = external_exports.string().describe(
  'a clock time "09:10", "3:40 pm" or "2026-03-15 09:10", or since the start of the log "+14:05"'
);
var Words = external_exports.string().min(1);

// src/core/firing/trialFormat.ts
var Thickness = WrittenLength.describe('with its unit: "0.8 mm", "1/32 in"');
var Coat = external_exports.union([Thickness, external_exports.array(Thickness).min(2)]);
var CountedLine = external_exports.strictObject({
  length: WrittenLength.describe("length of the line; millimetres or with a unit"),
  crossings: external_exports.number().nonnegative().multipleOf(0.5).describe("cracks crossed: a touch counts 1, a meeting point of three cracks 1.5"),
  direction: external_exports.enum(["along", "across"]).optional().describe("for a pattern with a direction: along the throwing lines, or across them")
});
var Trial = external_exports.strictObject({
  piece: Words.describe("the mark on the test piece; each piece has its own in a firing"),
  clay: Words.describe("the clay body"),
  body: GivenBodyFile.optional().describe(
    "kind of body, to compute its fit: earthenware, stoneware cone 6, porcelain cone 10; or one of your own. When left out, that of the ware of the same clay"
  ),
  glaze: Words.describe("the glaze, by your own name"),
  coat: Coat.optional().describe(
    'thickness of the fired glaze: "0.8 mm", or three and more readings [0.7 mm, 0.8 mm, 0.8 mm]'
  ),
  rawCoat: Coat.optional().describe("thickness of the dry coat before firing"),
  wetCoat: Coat.optional().describe(
    "thickness of the wet coat on a surface that does not suck; needs slip and loss"
  ),
  dryMass: external_exports.string().optional().describe('dry glaze on an area, "10 g/100 cm2"; needs loss, gives the fired thickness'),
  coatError: external_exports.union([external_exports.number().nonnegative(), external_exports.string()]).optional().describe(
    'usual error of the coat (one standard deviation): "0.1 mm" or "10 %"; 15 % is taken when left out'
  ),
  rawOverFired: external_exports.number().min(1).max(4).optional().describe("dry coat over fired coat, as you measured it; 1.8 is taken when left out"),
  loss: external_exports.number().min(0).lt(60).optional().describe("share of the dry glaze that fires away, in percent"),
  firedDensity: external_exports.number().min(1.5).max(7).optional().describe("density of the fired glaze [g/cm\xB3]; 2.45 is taken when left out"),
  slip: external_exports.string().optional().describe('density of the slip for wetCoat: "1.45", "65g/50mL"'),
  glazedSides: external_exports.enum(["one", "both"]).describe("one side or both"),
  shape: external_exports.enum(["flat tile", "closed wall", "bowl"]).optional().describe("flat tile, closed wall (a cup, a ring) or bowl"),
  wall: WrittenLength.optional().describe("thickness of the wall without glaze"),
  size: external_exports.strictObject({ length: WrittenLength, width: WrittenLength }).optional().describe("length and width of the glazed face; what an uncracked piece needs"),
  place: Words.optional().describe("where it stood in the kiln"),
  crackSpacing: WrittenLength.optional().describe(
    'mean distance between cracks, square across: "6 mm"'
  ),
  spacingRange: external_exports.array(WrittenLength).length(2).optional().describe("what crackSpacing may be, 95 in 100: [5.2 mm, 6.9 mm]"),
  spacingFrom: external_exports.enum(["ruler", "photo"]).optional().describe("what crackSpacing was measured from"),
  lines: external_exports.array(CountedLine).min(1).optional().describe("cracks counted along straight lines, instead of crackSpacing"),
  pattern: external_exports.enum(["net", "parallel"]).optional().describe("how the counted cracks run; net when left out"),
  cracked: external_exports.enum(["none", "crackle", "through"]).optional().describe("none, crackle (glaze only) or through (the wall as well)"),
  stain: Words.optional().describe("what the cracks were stained with"),
  pings: external_exports.union([
    external_exports.strictObject({ count: external_exports.number().int().nonnegative() }),
    external_exports.strictObject({ at: external_exports.array(WrittenMoment).min(1) })
  ]).optional().describe('pings heard from this piece: { count: 12 }, or { at: ["+14:05", "+14:20"] }'),
  note: external_exports.string().optional()
});

// src/core/firing/recordFormat.ts
var Temperature = external_exports.union([external_exports.number(), external_exports.string()]).describe(`a number in the file's unit, or with its unit: "180 C", "350 F"`);
var Ware = external_exports.strictObject({
  name: Words.describe("what was in the kiln: mugs, platter"),
  clay: Words.describe("the clay body, in your own words"),
  state: external_exports.enum(["bone dry", "damp", "bisqued", "glazed on bisque", "glazed raw"]).optional().describe("how it went into the kiln"),
  body: GivenBodyFile.optional().describe(
    "kind of body, to compute what it stands: earthenware, stoneware cone 6, porcelain cone 10; or one of your own, as base, name and properties"
  ),
  wall: WrittenLength.optional().describe("thickness of the wall; millimetres or with a unit"),
  base: WrittenLength.optional().describe("thickness of the base; millimetres or with a unit"),
  thickest: WrittenLength.optional().describe("thickest part; millimetres or with a unit"),
  widest: WrittenLength.optional().describe("widest piece; millimetres or with a unit"),
  height: WrittenLength.optional().describe(
    "from shelf to rim, the thickness alone for a tile; taken from the name and the width when left out"
  ),
  stands: external_exports.enum(["on the shelf", "on edge"]).optional().describe("on edge: a tile whose two faces are both free; on the shelf when left out"),
  shelf: WrittenLength.optional().describe("thickness of the shelf; 16 mm when left out"),
  footGap: WrittenLength.optional().describe(
    "air under the foot, 0.1 mm for a foot that stands flat; 3 mm when left out"
  ),
  glazedSides: external_exports.enum(["none", "one", "both"]).optional().describe("sides of the wall with glaze; noted only, the computed stress leaves glaze out"),
  count: external_exports.number().int().positive().optional().describe("how many pieces")
});
var WitnessCone = external_exports.strictObject({
  cone: external_exports.string().describe('the number on the cone, in quotes: "05", "5"'),
  bent: external_exports.string().describe(`upright, down, a clock position "4 o'clock" or degrees from upright "45 degrees"`)
});
var Found = external_exports.strictObject({
  piece: Words.optional().describe("which piece or ware, in your own words"),
  what: external_exports.union([external_exports.enum(FOUND_WORDS), Words]).optional().describe(
    "through-crack or split, crackle or crazing (glaze only), crack (depth not known), dunt, S-crack, drying crack, bisque crack, burst, shivering (glaze flakes off), chip, blister, pinhole, crawling"
  ),
  edges: external_exports.enum(["sharp", "rounded under glaze"]).optional().describe("edges of the crack: sharp, or rounded with glaze run over them"),
  where: external_exports.enum(["rim", "foot", "wall", "base", "handle"]).optional().describe("where it begins or is widest"),
  pattern: external_exports.enum(["one long line", "spiral", "network", "star", "S"]).optional().describe("how the cracks run"),
  when: external_exports.enum(["before firing", "before unloading", "at unloading", "hours later", "days later"]).optional().describe("when it was first seen; before firing: in the bisque or the dry pot"),
  rings: external_exports.enum(["dull", "clear"]).optional().describe("how the piece rings when tapped"),
  note: external_exports.string().optional()
}).describe("what was found on a piece");
var LogOverrides = external_exports.strictObject({
  unit: external_exports.enum(["C", "F", "K"]).optional().describe("unit of the temperatures in the log"),
  columns: external_exports.array(external_exports.string()).min(1).optional().describe("temperature columns to read, by name"),
  roles: external_exports.record(external_exports.string(), external_exports.enum(["temperature", "set-point", "output", "cold-junction", "other"])).optional().describe(
    "what a column is, by its name: temperature, set-point, output, cold-junction, other"
  ),
  timeColumn: external_exports.string().optional().describe("name of the time column"),
  timeKind: external_exports.enum([
    "elapsed",
    "clock-24h",
    "clock-12h",
    "epoch",
    "spreadsheet",
    "spreadsheet-1904",
    "count"
  ]).optional().describe(
    "what the time column holds: elapsed, clock-24h, clock-12h, epoch (since 1970), spreadsheet (days since 1900), spreadsheet-1904 (days since 1904), count (of samples)"
  ),
  timeUnit: external_exports.enum(["ms", "s", "min", "h", "d"]).optional().describe("unit of a bare number of time"),
  dayFirst: external_exports.boolean().optional().describe("whether 03/05 is 3 May"),
  yearFirst: external_exports.boolean().optional().describe("whether 26-03-05 is 5 March 2026"),
  header: external_exports.union([external_exports.int().positive(), external_exports.literal("none")]).optional().describe("line of the log with the names of the columns, counted from 1, or none"),
  layout: external_exports.enum(["wide", "long"]).optional().describe("wide: a column for each channel; long: a row for each channel at each time"),
  delimiter: external_exports.string().min(1).optional().describe("what stands between cells; tab, blanks and wide blanks by name"),
  decimal: external_exports.enum([".", ","]).optional().describe("decimal mark"),
  encoding: external_exports.string().optional().describe("text encoding: utf-8, windows-1252, utf-16le"),
  intervalSeconds: external_exports.number().positive().optional().describe("step when the log has no times [s]"),
  coldJunction: Temperature.optional().describe(
    "how warm the thermocouple's terminals were, for a log in millivolts"
  )
});
var FiringRecordFile = external_exports.strictObject({
  formatVersion: external_exports.literal(1).describe("1"),
  title: Words.describe("what this firing was, in one line"),
  unit: external_exports.enum(["C", "F"]).default("C").describe("unit of bare temperatures in this file"),
  schedule: Words.optional().describe(
    "file name of the schedule, beside this file or in ../schedules"
  ),
  cone: external_exports.string().optional().describe('the cone aimed at, in quotes: "05", "5"'),
  kiln: Words.optional().describe("which kiln, in your own words"),
  kilnRating: Temperature.optional().describe(
    "highest temperature that the kiln is rated for, as its plate gives it"
  ),
  thermocouple: external_exports.strictObject({
    type: external_exports.enum(["K", "N", "S", "R", "B", "J", "T"]).optional(),
    class: external_exports.union([external_exports.string(), external_exports.number()]).optional().describe("tolerance class, if known: standard, special, 1, 2 or 3"),
    sheath: WrittenLength.optional().describe("outer diameter of its metal sheath"),
    wire: WrittenLength.optional().describe("diameter of its wire")
  }).optional(),
  cones: external_exports.enum(["self-supporting", "self-supporting-iron-free", "large", "large-iron-free", "small"]).optional().describe("series of the cones in this file"),
  witnessCones: external_exports.array(WitnessCone).optional().describe("cones that stood by the thermocouple"),
  ware: external_exports.array(Ware).optional(),
  trials: external_exports.array(Trial).optional().describe("test pieces"),
  log: LogOverrides.optional().describe("how to read the log, when it cannot tell by itself"),
  unloaded: external_exports.strictObject({
    at: WrittenMoment.optional(),
    temperature: Temperature.optional().describe("what the kiln read when it was opened")
  }).optional().describe("when the kiln was opened, and how hot it was"),
  heard: external_exports.array(
    external_exports.strictObject({
      what: Words.describe("pinging, a crack, or your own words"),
      at: WrittenMoment,
      note: external_exports.string().optional()
    })
  ).optional().describe("what was heard, and when"),
  found: external_exports.array(Found).optional().describe("what was found on the ware afterwards"),
  notes: external_exports.string().optional(),
  invented: external_exports.literal(true).optional().describe("true when the firing was made up as an example")
}).describe("a firing record, beside its log and with the same name");

// src/core/firing/recordDocument.ts
var RECORD_DOCUMENT = {
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
    ...BODY_WORDS
  ]),
  expected: /* @__PURE__ */ new Map(),
  quotedKeys: ["cone"],
  shorten: /* @__PURE__ */ new Map()
};

// src/core/firing/witnessWords.ts
var BEND_FORMS = `upright, down, a clock position from 12 (upright) to 6 such as "4 o'clock", or degrees from upright such as "45 degrees"`;
var CLOCK = /^(\d{1,2}(?:\.\d+)?)\s*o['’ ]?\s*clock$/i;
var DEGREES = /^(\d{1,3}(?:\.\d+)?)\s*(?:degrees?|deg|°)$/i;
function parseBend(text) {
  const said = text.trim().toLowerCase();
  if (said === "upright") return { kind: "upright" };
  if (said === "down") return { kind: "down" };
  const clock = CLOCK.exec(said);
  if (clock) {
    const oClock = Number(clock[1]);
    return oClock === 12 || oClock >= 0 && oClock <= 6 ? { kind: "clock", oClock } : null;
  }
  const degrees = DEGREES.exec(said);
  if (degrees && Number(degrees[1]) <= 180) return { kind: "degrees", degrees: Number(degrees[1]) };
  return null;
}

// src/core/firing/recordValues.ts
var THICKEST_COAT_MM = 10;
function recordValues({ unit, series, placeOf }) {
  const problems = [];
  function taken(result, standIn) {
    if (result.ok) return result.value;
    problems.push(...result.problems);
    return standIn;
  }
  function length(value, path) {
    return taken(parseLength(value, { where: placeOf(path) }), 0);
  }
  function thickness(value, path) {
    const where = placeOf(path);
    const read = parseLength(value, { where });
    const expected = `a thickness with its unit, above 0 and at most ${THICKEST_COAT_MM} mm`;
    if (read.ok && isBareNumber(value)) {
      problems.push({
        code: "record/coat-without-unit",
        what: `the coat is written as ${value}, without a unit`,
        where,
        expected,
        fix: `write "${value} mm", if millimetres are meant`
      });
      return 0;
    }
    if (read.ok && read.value <= THICKEST_COAT_MM) return read.value;
    problems.push({
      code: "record/not-a-coat",
      what: `the coat is written as ${JSON.stringify(value)}`,
      where,
      expected,
      fix: 'write it like "0.8 mm"'
    });
    return 0;
  }
  return {
    problems,
    /** Of a glaze coat [mm]. */
    thickness,
    placeOf,
    /** Adds a problem of the file. */
    refuse(problem) {
      problems.push(problem);
    },
    /** Dry glaze on an area [g/cm²]. */
    coatMass: (text, path) => taken(parseCoatMass(text, { where: placeOf(path) }), 1),
    /** [g/cm³] */
    slipDensity: (text, path) => taken(parseSlipDensity(text, { where: placeOf(path) }), 1.5),
    /** An error as a share of what was read, from percent or a length; a mass has no length. */
    errorShare(value, readMm, path) {
      const percent = typeof value === "string" ? /^(\d+(?:\.\d+)?)\s*%$/.exec(value.trim()) : null;
      const share = percent !== null ? Number(percent[1]) / 100 : readMm === null || isBareNumber(value) ? Number.NaN : length(value, path) / readMm;
      if (share > 0 && share < 1) return share;
      if (readMm === null || percent !== null || isBareNumber(value) || share >= 1)
        problems.push({
          code: "record/coat-error",
          what: `the error of a coat is written as ${JSON.stringify(value)}`,
          where: placeOf(path),
          expected: readMm === null ? "a share of the mass in percent, above 0 and below 100" : "a length with its unit, or percent, above 0 and less than the coat itself",
          fix: 'write it like "10 %"'
        });
      return 0.5;
    },
    temperature: (value, path) => taken(parseTemperature(value, { unit, where: placeOf(path) }), 0),
    length,
    maybeLength: (value, path) => value === void 0 ? null : length(value, path),
    maybeWareLength(name, value, path) {
      if (value === void 0) return null;
      return taken(wareLength(value, { name, where: placeOf([...path, name]) }), null);
    },
    maybeBody: (given, path) => given === void 0 ? null : taken(
      bodyGiven(given, (inside) => placeOf([...path, ...inside])),
      null
    ),
    moment(text, path) {
      const moment = parseMoment(text);
      if (moment) return moment;
      problems.push({
        code: "record/not-a-moment",
        what: `"${text}" is not a moment`,
        where: placeOf(path),
        expected: MOMENT_FORMS,
        fix: 'write it like "09:10", with a 24-hour clock'
      });
      return { kind: "elapsed", seconds: 0 };
    },
    /** What was found, in one of the words that a record knows or as people call it. */
    foundWord(text, path) {
      const said = text.trim().toLowerCase();
      const word = FOUND_WORDS.find((each) => each.toLowerCase() === said) ?? crackWords(text).what;
      if (word !== null) return word;
      const near = nearWord(text, FOUND_WORDS);
      problems.push({
        code: "record/not-a-fault",
        what: `"${text}" is no fault that is known here`,
        where: placeOf(path),
        expected: listedOr(FOUND_WORDS),
        fix: near ? `write "${near}"` : 'write "crack", and the rest in its note'
      });
      return null;
    },
    bend(text, path) {
      const bend = parseBend(text);
      if (bend) return bend;
      const near = nearWord(text, ["upright", "down"]);
      problems.push({
        code: "record/not-a-bend",
        what: `"${text}" does not say how far the cone bent`,
        where: placeOf(path),
        expected: BEND_FORMS,
        fix: near ? `write "${near}"` : `write it like "4 o'clock"`
      });
      return { kind: "upright" };
    },
    cone: (text, path) => taken(parseCone(text, { series, where: placeOf(path) }), text)
  };
}
function listedOr(words) {
  return `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}

// src/core/firing/trialCoat.ts
var USUAL_ERROR = 0.15;
var LEAST_ERROR = 0.02;
var RAW_OVER_FIRED = { value: 1.8, sigma: 0.087 };
var FIRED_DENSITY = { value: 2.45, sigma: 0.03 };
var SOLIDS_DENSITY = { value: 2.6, sigma: 0.02 };
var NONE = {
  firedMm: 1,
  sigmaMm: USUAL_ERROR,
  sigmaIs: "assumed",
  how: "fired",
  sharedSigma: 0,
  taken: []
};
function trialCoat(trial, path, values) {
  const read = firedRead(trial, path, values) ?? massRead(trial, path, values) ?? rawRead(trial, path, values) ?? wetRead(trial, path, values);
  if (read !== null) return withError(read, { trial, path, values });
  values.refuse({
    code: "record/no-coat",
    what: `trial ${trial.piece} has no coat`,
    where: values.placeOf(path),
    expected: "one of coat (fired), dryMass, rawCoat or wetCoat",
    fix: 'measure the fired glaze and add coat: "0.8 mm"'
  });
  return NONE;
}
function firedRead({ coat }, path, values) {
  if (coat === void 0) return null;
  const read = meanOf(coat, [...path, "coat"], values);
  return { ...read, how: "fired", firedMm: read.readMm, sharedSigma: 0, taken: [] };
}
function rawRead({ rawCoat, rawOverFired }, path, values) {
  if (rawCoat === void 0) return null;
  const read = meanOf(rawCoat, [...path, "rawCoat"], values);
  return {
    ...read,
    how: "raw",
    firedMm: read.readMm / (rawOverFired ?? RAW_OVER_FIRED.value),
    sharedSigma: rawOverFired === void 0 ? RAW_OVER_FIRED.sigma : 0,
    taken: rawOverFired === void 0 ? [`dry coat ${RAW_OVER_FIRED.value} times the fired coat`] : []
  };
}
function massRead(trial, path, values) {
  if (trial.dryMass === void 0) return null;
  const dry = values.coatMass(trial.dryMass, [...path, "dryMass"]);
  return { how: "mass", readMm: null, scatter: null, ...fired(trial, dry, { path, values }) };
}
function wetRead(trial, path, values) {
  if (trial.wetCoat === void 0) return null;
  const read = meanOf(trial.wetCoat, [...path, "wetCoat"], values);
  if (trial.slip === void 0) return refuseMissing("slip", "1.45", { path, values });
  const slipGPerCm3 = values.slipDensity(trial.slip, [...path, "slip"]);
  const solidGPerCm3 = SOLIDS_DENSITY.value;
  const dryGPerCm2 = read.readMm / 10 * dryGPerLitre({ slipGPerCm3, solidGPerCm3 }) / 1e3;
  const coat = fired(trial, dryGPerCm2, { path, values });
  return {
    ...read,
    ...coat,
    how: "wet",
    sharedSigma: Math.hypot(coat.sharedSigma, SOLIDS_DENSITY.sigma),
    taken: [...coat.taken, `solids of ${solidGPerCm3} g/cm\xB3`]
  };
}
function fired(trial, dryGPerCm2, place) {
  if (trial.loss === void 0) refuseMissing("loss", "10", place);
  const assumed = trial.firedDensity === void 0;
  const coat = {
    lossFraction: (trial.loss ?? 0) / 100,
    firedGPerCm3: trial.firedDensity ?? FIRED_DENSITY.value
  };
  return {
    firedMm: firedCoatMm(dryGPerCm2, coat),
    sharedSigma: assumed ? FIRED_DENSITY.sigma : 0,
    taken: assumed ? [`fired glaze of ${FIRED_DENSITY.value} g/cm\xB3`] : []
  };
}
function refuseMissing(key, example, { path, values }) {
  const thing = key === "loss" ? "what the dry glaze loses in the fire" : "the density of the slip";
  values.refuse({
    code: `record/no-${key}`,
    what: `this coat needs ${thing}, and the trial does not say it`,
    where: values.placeOf(path),
    expected: key === "loss" ? "loss, in percent of the dry glaze" : "slip, its density",
    fix: `add ${key}: ${key === "slip" ? `"${example}"` : example}, or measure the fired coat`
  });
  return null;
}
function meanOf(given, path, values) {
  if (!Array.isArray(given)) return { readMm: values.thickness(given, path) || 1, scatter: null };
  const each = given.map((one, i) => values.thickness(one, [...path, i]));
  const mean = each.reduce((sum, one) => sum + one, 0) / each.length || 1;
  const squares = each.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const error = Math.sqrt(squares / (each.length - 1) / each.length) / mean;
  return { readMm: mean, scatter: Math.max(error, LEAST_ERROR) };
}
function withError({ readMm, scatter, ...read }, { trial, path, values }) {
  const noted = trial.coatError === void 0 ? null : values.errorShare(trial.coatError, readMm, [...path, "coatError"]);
  return {
    ...read,
    sigmaMm: read.firedMm * (noted ?? scatter ?? USUAL_ERROR),
    sigmaIs: noted !== null ? "noted" : scatter !== null ? "readings" : "assumed"
  };
}

// src/core/firing/spacingOfLines.ts
var SIGMAS_95 = 1.96;
var LEAST_VARIANCE = 1 / 6;
function spacingOfLines(lines, pattern) {
  const all = lineIntercept(lines);
  if (all.interceptMm === null) throw new RangeError("spacingOfLines: nothing was crossed");
  const ways = ["along", "across"].map(
    (way) => lines.filter(({ direction }) => direction === way)
  );
  const both = ways.every((way) => way.length > 0) ? ways : null;
  const found = both === null ? {
    interceptMm: all.interceptMm,
    intervalMm: around(all.interceptMm, reachOf(perLength(lines))),
    pitchOver: crackPitch(1, pattern)
  } : ofTwoWays(both, pattern);
  const directions = both === null ? [] : both.map(inDirection);
  const [along, across] = directions.map(({ interceptMm }) => interceptMm);
  return {
    kind: "measured",
    pitchMm: found.interceptMm * found.pitchOver,
    lowMm: found.intervalMm.low * found.pitchOver,
    highMm: found.intervalMm.high * found.pitchOver,
    interceptMm: found.interceptMm,
    lines: lines.length,
    lengthMm: all.lengthMm,
    crossings: all.crossings,
    pattern,
    from: "lines",
    directions,
    alongOverAcross: along && across ? along / across : null
  };
}
function reachOf({ error, freedom }) {
  return error * (freedom < 1 ? SIGMAS_95 : tQuantile(0.95, freedom));
}
function around(interceptMm, reach) {
  const factor = Math.exp(reach);
  return { low: interceptMm / factor, high: interceptMm * factor };
}
function ofTwoWays(ways, pattern) {
  const each = ways.map(perLength);
  const power = pattern === "net" ? 1 : 2;
  const weights = each.map(({ perMm }) => perMm ** power);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const error = Math.hypot(...each.map((way, i) => weights[i] / total * way.error));
  const freedom = each.reduce((sum, way) => sum + way.freedom, 0);
  const interceptMm = pattern === "net" ? 2 / total : 1 / Math.sqrt(total);
  return {
    interceptMm,
    intervalMm: around(interceptMm, reachOf({ error, freedom })),
    pitchOver: pattern === "net" ? crackPitch(1, "net") : 1
  };
}
function perLength(lines) {
  const { crossings, lengthMm, interceptMm, intervalMm } = lineIntercept(lines);
  const freedom = lines.length - 1;
  if (interceptMm === null) return { perMm: 0, error: 0, freedom };
  const error = intervalMm === null ? 1 / Math.sqrt(crossings) : Math.log(intervalMm.high / intervalMm.low) / (2 * tQuantile(0.95, freedom));
  const least = Math.sqrt(lines.length * LEAST_VARIANCE) / crossings;
  return { perMm: crossings / lengthMm, error: Math.max(error, least), freedom };
}
function inDirection(lines) {
  const { interceptMm, crossings } = lineIntercept(lines);
  const [{ direction }] = lines;
  return {
    direction,
    interceptMm,
    lines: lines.length,
    crossings
  };
}

// src/core/firing/trialSpacing.ts
function trialSpacing(trial, path, { values, size }) {
  const refuse = (problem, key) => values.refuse({ ...problem, where: values.placeOf([...path, key]) });
  const lines = linesOf(trial, path, values);
  const clash = contradiction(trial, lines);
  if (clash !== null) {
    refuse(clash.problem, clash.key);
    return { kind: "not measured", why: clash.problem.what };
  }
  if (size !== null) refuseLongLines(lines, size, { path, values });
  const spacing = spacingRead(trial, { path, values, lines, size });
  if (spacing.kind === "measured" && size !== null && spacing.pitchMm > size.longMm)
    refuse(
      {
        code: "record/spacing-wider-than-piece",
        what: `cracks ${spacing.pitchMm.toFixed(1)} mm apart on a piece of ${size.longMm} by ${size.shortMm} mm`,
        expected: "a spacing that fits on the piece",
        fix: "check the unit; when a piece shows no crack, write cracked: none and its size"
      },
      spacing.from === "lines" ? "lines" : "crackSpacing"
    );
  return spacing;
}
function refuseLongLines(lines, { longMm, shortMm }, { path, values }) {
  lines.forEach(({ lengthMm }, i) => {
    if (lengthMm <= Math.hypot(longMm, shortMm)) return;
    values.refuse({
      code: "record/line-longer-than-piece",
      what: `a line of ${lengthMm} mm on a piece of ${longMm} by ${shortMm} mm`,
      where: values.placeOf([...path, "lines", i, "length"]),
      expected: "a line that fits on the piece",
      fix: "check the unit; write several lines one by one, not as one length"
    });
  });
}
function spacingRead(trial, on) {
  const { lines, size } = on;
  const isCounted = lines.some(({ crossings }) => crossings > 0);
  if (isCounted) return spacingOfLines(lines, trial.pattern ?? "net");
  if (trial.crackSpacing !== void 0)
    return spacingWritten(trial, trial.crackSpacing, on.path, on.values);
  if (trial.cracked === "none" && size !== null)
    return { kind: "uncracked", atLeastMm: size.shortMm, from: "size" };
  if (lines.length > 0) {
    const atLeastMm = Math.max(...lines.map(({ lengthMm }) => lengthMm));
    return { kind: "uncracked", atLeastMm, from: "lines" };
  }
  const why = trial.cracked === "none" ? "it has no crack and no size is noted, so how wide a spacing it rules out is not known" : "no crack spacing is noted";
  return { kind: "not measured", why };
}
function spacingWritten(trial, written, path, values) {
  const pitchMm = values.length(written, [...path, "crackSpacing"]);
  const [low, high] = (trial.spacingRange ?? []).map(
    (end, i) => values.length(end, [...path, "spacingRange", i])
  );
  if (low !== void 0 && high !== void 0 && !(low <= pitchMm && pitchMm <= high))
    values.refuse({
      code: "record/spacing-outside-range",
      what: `crackSpacing of ${pitchMm} mm does not lie between ${low} and ${high} mm`,
      where: values.placeOf([...path, "spacingRange"]),
      expected: "the narrowest and the widest that crackSpacing may be, in this order",
      fix: "write the smaller number first, and check both"
    });
  return {
    kind: "measured",
    pitchMm,
    lowMm: low ?? null,
    highMm: high ?? null,
    interceptMm: null,
    lines: 0,
    lengthMm: 0,
    crossings: 0,
    pattern: trial.pattern ?? "net",
    from: trial.spacingFrom === "photo" ? "photo" : "spacing",
    directions: [],
    alongOverAcross: null
  };
}
function linesOf({ lines = [] }, path, values) {
  return lines.map(({ length, crossings, direction }, i) => ({
    // A length that cannot be read is a problem already; 1 mm stands in.
    lengthMm: values.length(length, [...path, "lines", i, "length"]) || 1,
    crossings,
    direction: direction ?? null
  }));
}
function contradiction(trial, lines) {
  const counted = lines.some(({ crossings }) => crossings > 0);
  const directed = lines.filter(({ direction }) => direction !== null).length;
  if (trial.cracked === "none" && (counted || trial.crackSpacing !== void 0))
    return {
      key: "cracked",
      problem: {
        code: "record/uncracked-with-spacing",
        what: `trial ${trial.piece} has no cracks and yet a crack spacing`,
        expected: "cracked: none, or a crack spacing",
        fix: "write cracked: crackle, or take the spacing out"
      }
    };
  if (lines.length > 0 && trial.crackSpacing !== void 0)
    return {
      key: "crackSpacing",
      problem: {
        code: "record/two-spacings",
        what: `trial ${trial.piece} has counted lines and a crack spacing`,
        expected: "one of them, so that it is clear which counts",
        fix: "keep the lines, and put the other into note"
      }
    };
  if (trial.spacingRange !== void 0 && trial.crackSpacing === void 0)
    return {
      key: "spacingRange",
      problem: {
        code: "record/range-without-spacing",
        what: `trial ${trial.piece} has a range of its crack spacing and no spacing`,
        expected: "crackSpacing beside spacingRange",
        fix: "add crackSpacing"
      }
    };
  if (directed > 0 && directed < lines.length)
    return {
      key: "lines",
      problem: {
        code: "record/line-without-direction",
        what: `${directed} of ${lines.length} lines of trial ${trial.piece} have a direction`,
        expected: "a direction for all of them or for none",
        fix: "add direction: along or direction: across to the others"
      }
    };
  return null;
}

// src/core/firing/trialOf.ts
function trialOf(trial, path, { values, ware }) {
  const coat = trialCoat(trial, path, values);
  const size = sizeOf(trial, path, values);
  const spacing = trialSpacing(trial, path, { values, size });
  return {
    piece: trial.piece,
    clay: trial.clay,
    body: values.maybeBody(trial.body, [...path, "body"]) ?? bodyOfClay(trial.clay, ware),
    glaze: trial.glaze,
    coatMm: coat.firedMm,
    coat,
    glazedSides: trial.glazedSides,
    shape: trial.shape ?? null,
    wallMm: values.maybeWareLength("wall", trial.wall, path),
    size,
    place: trial.place ?? null,
    crackSpacingMm: spacing.kind === "measured" ? spacing.pitchMm : null,
    spacing,
    cracked: trial.cracked ?? null,
    stain: trial.stain ?? null,
    pings: pingsOf(trial, path, values),
    note: trial.note ?? null
  };
}
function bodyOfClay(clay, ware) {
  const same = (a, b) => a.trim().toLowerCase() === b.trim().toLowerCase();
  const bodies = ware.flatMap(
    (each) => each.body !== null && same(each.clay, clay) ? [each.body] : []
  );
  const [first] = bodies;
  return first !== void 0 && bodies.every(({ name }) => name === first.name) ? first : null;
}
function sizeOf({ size }, path, values) {
  if (size === void 0) return null;
  const sides = [
    values.length(size.length, [...path, "size", "length"]),
    values.length(size.width, [...path, "size", "width"])
  ];
  return { longMm: Math.max(...sides), shortMm: Math.min(...sides) };
}
function pingsOf({ pings }, path, values) {
  if (pings === void 0) return null;
  if ("count" in pings) return { count: pings.count, moments: [] };
  const moments = pings.at.map((text, i) => values.moment(text, [...path, "pings", "at", i]));
  return { count: moments.length, moments };
}

// src/core/firing/record.ts
function parseRecord(text, name) {
  const read = fileRead(text, name);
  return read.ok ? inCanonicalUnits(read.value.file, name, read.value.placeOf) : read;
}
function parseRecordFile(text, name) {
  const read = fileRead(text, name);
  if (!read.ok) return read;
  const { file, placeOf } = read.value;
  const record = inCanonicalUnits(file, name, placeOf);
  return record.ok ? ok(file) : record;
}
function fileRead(text, name) {
  const document = readDocument(text, name, RECORD_DOCUMENT);
  if (!document.ok) return document;
  const shape = FiringRecordFile.safeParse(document.value.value);
  if (!shape.success)
    return failed(...schemaProblems(shape.error.issues, document.value, RECORD_DOCUMENT));
  return ok({ file: shape.data, placeOf: document.value.placeOf });
}
function inCanonicalUnits(file, name, placeOf) {
  const values = recordValues({
    unit: file.unit,
    series: file.cones ?? "self-supporting",
    placeOf
  });
  const ware = (file.ware ?? []).map((each, i) => wareOf(each, ["ware", i], values));
  const record = {
    name,
    title: file.title,
    unit: file.unit,
    schedule: file.schedule ?? null,
    kiln: file.kiln ?? null,
    kilnRatingC: file.kilnRating === void 0 ? null : values.temperature(file.kilnRating, ["kilnRating"]),
    thermocouple: thermocoupleOf(file.thermocouple, values),
    cone: file.cone === void 0 ? null : values.cone(file.cone, ["cone"]),
    series: file.cones ?? null,
    witnesses: (file.witnessCones ?? []).map((witness, i) => ({
      cone: values.cone(witness.cone, ["witnessCones", i, "cone"]),
      said: witness.bent,
      bend: values.bend(witness.bent, ["witnessCones", i, "bent"])
    })),
    ware,
    trials: (file.trials ?? []).map((trial, i) => trialOf(trial, ["trials", i], { values, ware })),
    log: logOptionsOf(file, values),
    unloaded: file.unloaded ? unloadedOf(file.unloaded, values) : null,
    heard: (file.heard ?? []).map((sound, i) => ({
      what: sound.what,
      at: values.moment(sound.at, ["heard", i, "at"]),
      said: sound.at,
      note: sound.note ?? null
    })),
    found: (file.found ?? []).map((found, i) => foundOf(found, ["found", i], values)),
    notes: file.notes ?? null,
    invented: file.invented ?? false
  };
  return values.problems.length > 0 ? failed(...values.problems) : ok(record);
}
function thermocoupleOf(given, values) {
  if (!given) return null;
  return {
    type: given.type ?? null,
    class: given.class === void 0 ? null : String(given.class),
    sheathMm: values.maybeLength(given.sheath, ["thermocouple", "sheath"]),
    ...given.wire !== void 0 && {
      wireMm: values.maybeLength(given.wire, ["thermocouple", "wire"])
    }
  };
}
function logOptionsOf({ log, thermocouple }, values) {
  const { coldJunction, delimiter, ...others } = log ?? {};
  return {
    ...withoutUndefined(others),
    ...delimiter !== void 0 && { delimiter: delimiterNamed(delimiter) },
    ...thermocouple?.type && { thermocouple: thermocouple.type },
    ...coldJunction !== void 0 && {
      coldJunctionC: values.temperature(coldJunction, ["log", "coldJunction"])
    }
  };
}
function wareOf(ware, path, values) {
  return {
    name: ware.name,
    clay: ware.clay,
    state: ware.state ?? null,
    body: values.maybeBody(ware.body, [...path, "body"]),
    wallMm: values.maybeWareLength("wall", ware.wall, path),
    baseMm: values.maybeWareLength("base", ware.base, path),
    thickestMm: values.maybeWareLength("thickest", ware.thickest, path),
    widestMm: values.maybeWareLength("widest", ware.widest, path),
    heightMm: values.maybeWareLength("height", ware.height, path),
    stands: ware.stands ?? null,
    shelfMm: values.maybeWareLength("shelf", ware.shelf, path),
    footGapMm: values.maybeWareLength("footGap", ware.footGap, path),
    glazedSides: ware.glazedSides ?? null,
    count: ware.count ?? null
  };
}
function foundOf(found, path, values) {
  return {
    piece: found.piece ?? null,
    what: found.what === void 0 ? null : values.foundWord(found.what, [...path, "what"]),
    edges: found.edges ?? null,
    where: found.where ?? null,
    pattern: found.pattern ?? null,
    when: found.when ?? null,
    rings: found.rings ?? null,
    note: found.note ?? null
  };
}
function unloadedOf(given, values) {
  return {
    at: given.at === void 0 ? null : values.moment(given.at, ["unloaded", "at"]),
    said: given.at ?? null,
    temperatureC: given.temperature === void 0 ? null : values.temperature(given.temperature, ["unloaded", "temperature"])
  };
}
function withoutUndefined(given) {
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== void 0));
}

export {
  FiringRecordFile,
  parseRecord,
  parseRecordFile
};
