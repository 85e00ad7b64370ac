import type { z } from "zod";
import type { Problem } from "../problem.ts";
import { shown } from "../units/parseQuantity.ts";
import { nearWord } from "./nearWord.ts";
import { MOST_SEGMENTS } from "./scheduleFormat.ts";
import type { DocumentPath, ReadDocument } from "./yamlText.ts";

type Issue = z.core.$ZodIssue;

const ROOT_KEYS = [
  "formatVersion",
  "title",
  "unit",
  "cone",
  "series",
  "start",
  "ware",
  "segments",
  "notes",
  "basis",
];

/** Keys that are known inside each part of the file. */
const KNOWN_KEYS: Readonly<Record<string, readonly string[]>> = {
  root: ROOT_KEYS,
  ware: ["thickest", "widest", "state", "crackle"],
  segments: ["to", "rate", "hold", "why"],
};

/** Words for what other people call our keys. */
const OTHER_WORDS: Readonly<Record<string, string>> = {
  target: "to",
  temp: "to",
  temperature: "to",
  ramp: "rate",
  speed: "rate",
  soak: "hold",
  dwell: "hold",
  name: "title",
  units: "unit",
  steps: "segments",
  version: "formatVersion",
  thickness: "thickest",
  width: "widest",
  comment: "why",
};

const EXPECTED: Readonly<Record<string, string>> = {
  formatVersion: "formatVersion: 1",
  title: "a title of 1 to 200 characters",
  unit: "unit: C or unit: F",
  cone: 'a cone in quotes: "05", "5", "5.5"',
  series: "self-supporting, self-supporting-iron-free, large, large-iron-free or small",
  start: 'a temperature: a number in the file\'s unit, or "68 F"',
  ware: "ware with any of thickest, widest, state, crackle",
  thickest: 'a length: a number of millimetres, or "1/4 in"',
  widest: 'a length: a number of millimetres, or "12 in"',
  state: "bone dry, damp, bisqued, glazed on bisque or glazed raw",
  crackle: "true or false",
  segments: `1 to ${MOST_SEGMENTS} segments, each with to and rate`,
  to: 'a temperature: a number in the file\'s unit, or "2165 F"',
  rate: 'a rate: a number in the file\'s unit per hour, "108 F/h", or full',
  hold: 'a span of time: a number of minutes, or "1 h 30 min"',
  why: "a sentence of at most 300 characters",
  notes: "text of at most 4000 characters",
  basis: "text of at most 4000 characters",
};

/** A path as people read it, with the line when it is known: `a.yaml: segments[2].rate, line 9`. */
export function placeOf(name: string, path: DocumentPath, document: ReadDocument): string {
  const line = document.lineOf(path);
  const after = line === null ? "" : `, line ${line}`;
  const place = path
    .map((part) => (typeof part === "number" ? `[${part}]` : `.${String(part)}`))
    .join("")
    .replace(/^\./, "");
  return place === "" ? `${name}${after}` : `${name}: ${place}${after}`;
}

/** What the schema found wrong with the shape of a file, in a potter's words. */
export function shapeProblems(
  issues: readonly Issue[],
  name: string,
  document: ReadDocument,
): readonly Problem[] {
  return issues.flatMap((issue) =>
    issue.code === "unrecognized_keys"
      ? issue.keys.map((key) => unknownKey(key, issue.path, name, document))
      : [wrongValue(issue, name, document)],
  );
}

function unknownKey(
  key: string,
  path: DocumentPath,
  name: string,
  document: ReadDocument,
): Problem {
  const part = path.length === 0 ? "root" : String(path[0]);
  const known = KNOWN_KEYS[part] ?? ROOT_KEYS;
  const other = Object.hasOwn(OTHER_WORDS, key.toLowerCase())
    ? OTHER_WORDS[key.toLowerCase()]
    : undefined;
  const near = other !== undefined && known.includes(other) ? other : nearWord(key, known);
  return {
    code: "schedule/unknown-key",
    what: `${shown(key)} is not a key of a schedule here`,
    where: placeOf(name, [...path, key], document),
    expected: `one of ${known.join(", ")}`,
    fix:
      near === null ? "remove it, or write it in notes" : `write ${near} instead, if you mean it`,
  };
}

function wrongValue(issue: Issue, name: string, document: ReadDocument): Problem {
  const { path } = issue;
  const key = String(path.findLast((part) => typeof part === "string") ?? "");
  const value = valueAt(document.value, path);
  const inArray = key === "segments" && path.length > 1;
  const expected = inArray
    ? "a segment: { to: 1080, rate: 150 }"
    : (EXPECTED[key] ?? "a schedule: formatVersion, title, unit and segments");
  const where = placeOf(name, path, document);
  if (value === undefined)
    return {
      code: "schedule/missing-key",
      what: `${key} is missing`,
      where,
      expected,
      fix: `add ${key}`,
    };
  if (key === "formatVersion")
    return {
      code: "schedule/wrong-version",
      what: `formatVersion is ${described(value)}`,
      where,
      expected,
      fix: "write formatVersion: 1; a higher number needs a newer program",
    };
  if (key === "cone" && typeof value === "number")
    return coneWithoutQuotes(document.sourceOf(path) ?? String(value), where);
  if (key === "segments" && Array.isArray(value) && value.length > MOST_SEGMENTS)
    return {
      code: "schedule/too-many-segments",
      what: `there are ${value.length} segments`,
      where,
      expected,
      fix: "join neighbouring ramps of one rate",
    };
  return {
    code: "schedule/wrong-value",
    what: key === "" ? `the file holds ${described(value)}` : `${key} is ${described(value)}`,
    where,
    expected,
    fix: fixFor(key, value),
  };
}

function coneWithoutQuotes(source: string, where: string): Problem {
  return {
    code: "schedule/cone-without-quotes",
    what: `the cone ${source} is written as a number`,
    where,
    expected: 'a cone in quotes, because "05" and "5" are different cones',
    fix: `write cone: "${source}"`,
  };
}

function fixFor(key: string, value: unknown): string {
  const choices: Readonly<Record<string, readonly string[]>> = {
    unit: ["C", "F"],
    state: ["bone dry", "damp", "bisqued", "glazed on bisque", "glazed raw"],
    series: ["self-supporting", "self-supporting-iron-free", "large", "large-iron-free", "small"],
  };
  const listed = choices[key];
  const near = listed && typeof value === "string" ? nearestChoice(value, listed) : null;
  if (near !== null) return `write ${key}: ${near}`;
  if (["title", "notes", "basis", "why"].includes(key) && typeof value === "number")
    return `write it in quotes: ${key}: "${value}"`;
  if (typeof value === "boolean") return "put a value there instead of yes or no";
  return key === "" ? "start from one of the shipped schedules" : `change ${key}`;
}

function nearestChoice(value: string, choices: readonly string[]): string | null {
  const initial = value.trim().replace(/^°/, "").charAt(0).toUpperCase();
  if (choices.includes(initial)) return initial;
  return nearWord(value, choices);
}

function valueAt(root: unknown, path: DocumentPath): unknown {
  let value = root;
  for (const part of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, part))
      return undefined;
    value = (value as Record<PropertyKey, unknown>)[part];
  }
  return value;
}

function described(value: unknown): string {
  if (value === null) return "empty";
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : "a list";
  if (typeof value === "object") return "a group of keys";
  if (typeof value === "string") return value === "" ? "empty" : shown(value);
  return String(value);
}
