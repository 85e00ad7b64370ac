import { FOUND_WORDS } from "../../core/record/FiringRecord.ts";
import type { FiringRecordFile } from "../../core/record/recordFormat.ts";
import { writtenQuantity } from "../../core/units/quantity.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { BODIES } from "../../core/ware/bodies.ts";

/** One thing that a record can hold, as a field of the form. */
export interface RecordField {
  readonly key: string;
  readonly label: string;
  /** `quantity` takes a bare number as a number; `words` keeps it as written. */
  readonly kind: "words" | "quantity" | "temperature" | "count" | "long" | readonly string[];
  readonly hint?: string;
  readonly needed?: boolean;
}

/** A part of a record whose items are lists of the same fields. */
export interface RecordPart {
  readonly key: "witnessCones" | "ware" | "trials" | "heard" | "found";
  readonly title: string;
  /** On the button: `Add a cone`. */
  readonly add: string;
  readonly fields: readonly RecordField[];
}

const LENGTH = "mm, or with its unit: 1/4 in";
const MOMENT = "09:10, 2026-03-15 09:10, or +14:05 since the start";

/** Fields of the record itself. */
export const HEAD_FIELDS: readonly RecordField[] = [
  { key: "title", label: "Title", kind: "words", needed: true },
  { key: "kiln", label: "Kiln", kind: "words" },
  { key: "schedule", label: "Schedule", kind: "words", hint: "name of its file" },
  { key: "cone", label: "Cone aimed at", kind: "words" },
  {
    key: "cones",
    label: "Series of cones",
    kind: ["self-supporting", "self-supporting-iron-free", "large", "large-iron-free", "small"],
  },
  { key: "unit", label: "Bare temperatures are in", kind: ["C", "F"], needed: true },
];

/** Fields of the groups inside the record. */
export const GROUPS: readonly {
  readonly key: "thermocouple" | "unloaded";
  readonly title: string;
  readonly fields: readonly RecordField[];
}[] = [
  {
    key: "thermocouple",
    title: "Thermocouple",
    fields: [
      { key: "type", label: "Type", kind: ["K", "N", "S", "R", "B", "J", "T"] },
      { key: "class", label: "Tolerance class", kind: "words" },
    ],
  },
  {
    key: "unloaded",
    title: "Opened and unloaded",
    fields: [
      { key: "at", label: "When", kind: "words", hint: MOMENT },
      { key: "temperature", label: "What the kiln read", kind: "temperature", hint: "95 C, 200 F" },
    ],
  },
];

/** Parts of the record that are lists. */
export const PARTS: readonly RecordPart[] = [
  {
    key: "witnessCones",
    title: "Witness cones",
    add: "Add a cone",
    fields: [
      { key: "cone", label: "Cone", kind: "words", needed: true },
      {
        key: "bent",
        label: "How far it bent",
        kind: "words",
        needed: true,
        hint: "upright, down, 4 o'clock or 45 degrees",
      },
    ],
  },
  {
    key: "ware",
    title: "Ware",
    add: "Add ware",
    fields: [
      { key: "name", label: "What", kind: "words", needed: true, hint: "mugs, platter" },
      { key: "clay", label: "Clay", kind: "words", needed: true },
      { key: "body", label: "Kind of body", kind: BODIES.map(({ name }) => name) },
      {
        key: "state",
        label: "How it went in",
        kind: ["bone dry", "damp", "bisqued", "glazed on bisque", "glazed raw"],
      },
      { key: "wall", label: "Wall", kind: "quantity", hint: LENGTH },
      { key: "base", label: "Base", kind: "quantity" },
      { key: "thickest", label: "Thickest part", kind: "quantity" },
      { key: "widest", label: "Widest piece", kind: "quantity" },
      { key: "height", label: "Height", kind: "quantity" },
      { key: "stands", label: "Stands", kind: ["on the shelf", "on edge"] },
      { key: "shelf", label: "Shelf", kind: "quantity" },
      { key: "footGap", label: "Air under the foot", kind: "quantity" },
      { key: "glazedSides", label: "Sides with glaze", kind: ["none", "one", "both"] },
      { key: "count", label: "How many", kind: "count" },
    ],
  },
  {
    key: "heard",
    title: "Heard",
    add: "Add a sound",
    fields: [
      { key: "what", label: "What", kind: "words", needed: true, hint: "a crack, pinging" },
      { key: "at", label: "When", kind: "words", needed: true, hint: MOMENT },
      { key: "note", label: "Note", kind: "words" },
    ],
  },
  {
    key: "found",
    title: "Found on the ware",
    add: "Add a piece",
    fields: [
      { key: "piece", label: "Piece", kind: "words", needed: true },
      { key: "what", label: "What", kind: FOUND_WORDS },
      { key: "edges", label: "Edges", kind: ["sharp", "rounded under glaze"] },
      { key: "where", label: "Where", kind: ["rim", "foot", "wall", "base", "handle"] },
      {
        key: "pattern",
        label: "Pattern",
        kind: ["one long line", "spiral", "network", "star", "S"],
      },
      {
        key: "when",
        label: "First seen",
        kind: ["before firing", "before unloading", "at unloading", "hours later", "days later"],
      },
      { key: "rings", label: "Rings", kind: ["dull", "clear"] },
      { key: "note", label: "Note", kind: "words" },
    ],
  },
  {
    key: "trials",
    title: "Test pieces",
    add: "Add a test piece",
    fields: [
      { key: "piece", label: "Mark", kind: "words", needed: true },
      { key: "clay", label: "Clay", kind: "words", needed: true },
      { key: "glaze", label: "Glaze", kind: "words", needed: true },
      { key: "coat", label: "Fired coat", kind: "quantity", needed: true, hint: "0.8 mm" },
      { key: "glazedSides", label: "Glazed on", kind: ["one", "both"], needed: true },
      { key: "crackSpacing", label: "Cracks apart", kind: "quantity", hint: "6 mm" },
      { key: "cracked", label: "Cracked", kind: ["none", "crackle", "through"] },
      { key: "note", label: "Note", kind: "words" },
    ],
  },
];

/** A place in a record: keys of groups and places in lists, from the outside in. */
export type RecordPath = readonly (string | number)[];

/** What stands at a place of a record; undefined when nothing does. */
export function valueAt(file: FiringRecordFile, path: RecordPath): unknown {
  return path.reduce<unknown>(
    (inside, key) => (inside as Record<string | number, unknown> | undefined)?.[key],
    file,
  );
}

/** The record with another value at a place, or with nothing there; groups left empty go too. */
export function withValue(
  file: FiringRecordFile,
  path: RecordPath,
  value: unknown,
): FiringRecordFile {
  return replaced(file, path, value) as FiringRecordFile;
}

function replaced(inside: unknown, [key, ...rest]: RecordPath, value: unknown): unknown {
  if (key === undefined) return value;
  if (typeof key === "number") {
    const list = [...((inside as readonly unknown[] | undefined) ?? [])];
    const next = replaced(list[key], rest, value);
    if (next === undefined) list.splice(key, 1);
    else list[key] = next;
    return list.length === 0 ? undefined : list;
  }
  const { [key]: was, ...others } = (inside ?? {}) as Readonly<Record<string, unknown>>;
  const next = replaced(was, rest, value);
  if (next !== undefined) return { ...(inside as object), [key]: next };
  return Object.keys(others).length === 0 ? undefined : others;
}

/** Units that bare temperatures are in. */
interface BareUnits {
  /** On the page, where they are typed. */
  readonly page: TemperatureUnit;
  /** In the record's file. */
  readonly file: TemperatureUnit;
}

/**
 * What was typed into a field as the record holds it; undefined for an empty field. A bare
 * temperature is in the page's unit, which is written behind it where the file has another.
 */
export function typedValue(field: RecordField, text: string, units: BareUnits): unknown {
  const trimmed = text.trim();
  if (trimmed === "") return undefined;
  if (field.kind === "temperature") return typedTemperature(trimmed, units);
  const isNumber = /^-?\d+(?:\.\d+)?$/.test(trimmed);
  return isNumber && (field.kind === "quantity" || field.kind === "count")
    ? Number(trimmed)
    : trimmed;
}

function typedTemperature(text: string, { page, file }: BareUnits): number | string {
  const written = writtenQuantity(text, "thousands");
  if (written === null || (written.unit !== "" && written.unit !== "°")) return text;
  return page === file ? written.value : `${written.value} ${page}`;
}
