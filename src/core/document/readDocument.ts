import {
  type Document,
  isAlias,
  isCollection,
  isMap,
  isNode,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
  visit,
  type YAMLMap,
} from "yaml";
import type { z } from "zod";
import { failed, ok, type Problem, type Result } from "../problem.ts";

/** Longest text that is read as a document [characters]. */
const LONGEST_TEXT = 500_000;

/** Most times that aliases of one anchor may be expanded. */
const MOST_ALIASES = 100;

/** Most groups that merge keys (<<) may bring in, those inside of others counted each time. */
const MOST_MERGED = 1000;

/** Most faults of a text that are shown at once. */
const MOST_FAULTS = 10;

/** A place inside a document, from the outside in: `["segments", 2, "rate"]`. */
export type DocumentPath = readonly PropertyKey[];

/** A YAML or JSON text as plain values, and where each of them stood. */
export interface ReadDocument {
  readonly value: unknown;
  /** Line of a key or list item, from 1; that of the nearest one around it when it is not there. */
  readonly lineOf: (path: DocumentPath) => number | null;
  /** The value exactly as written (`05`), when it is a single value and not a group or list. */
  readonly sourceOf: (path: DocumentPath) => string | null;
  /** A path as people read it, with its line: `a.yaml: segments[2].rate, line 9`. */
  readonly placeOf: (path: DocumentPath) => string;
}

/**
 * Reads one YAML document; JSON is YAML.
 * Aliases and merge keys (`<<: *anchor`) are bounded, keys must be unique, and unknown tags are refused.
 *
 * @param name What to call the file in problems.
 * @returns All problems of the text, in the format's room: `too-long`, `empty-file`, `not-yaml`.
 */
export function readDocument(
  text: string,
  name: string,
  format: DocumentFormat,
): Result<ReadDocument> {
  if (text.length > LONGEST_TEXT)
    return failed({
      code: `${format.room}/too-long`,
      what: `the text has ${text.length} characters`,
      where: name,
      expected: `${format.thing} of at most ${LONGEST_TEXT} characters`,
      fix: `check that this is ${format.thing} and not a log`,
    });
  const plainText = text.replace(/^\uFEFF/, "");
  try {
    return parsed(plainText, name, format);
  } catch (error) {
    if (error instanceof ReferenceError) return failed(tooManyAliases(name, format));
    const message = error instanceof Error ? error.message : String(error);
    return failed(notYaml(name, message, format));
  }
}

function parsed(text: string, name: string, format: DocumentFormat): Result<ReadDocument> {
  const lines = new LineCounter();
  const document = parseDocument(text, {
    lineCounter: lines,
    prettyErrors: false,
    uniqueKeys: false,
    strict: true,
    merge: true,
  });
  const faults = faultsOf(document).slice(0, MOST_FAULTS);
  if (faults.length > 0)
    return failed(
      ...faults.map(({ at, message }) =>
        notYaml(`${name}: line ${lines.linePos(at).line}`, message, format),
      ),
    );
  if (mergedMaps(document) > MOST_MERGED) return failed(tooManyAliases(name, format));
  const value: unknown = document.toJS({ maxAliasCount: MOST_ALIASES });
  if (value === null || value === undefined) return failed(emptyFile(name, format));
  const lineOf = (path: DocumentPath): number | null => {
    for (let length = path.length; length >= 0; length--) {
      const at = startOf(document, path.slice(0, length));
      if (at !== null) return lines.linePos(at).line;
    }
    return null;
  };
  return ok({
    value,
    lineOf,
    sourceOf: (path) => {
      const node = resolved(document, nodeAt(document, path));
      return isScalar(node) ? (node.source ?? null) : null;
    },
    placeOf: (path) => placeText(name, path, lineOf(path)),
  });
}

/** What is wrong with the text itself, in order. */
function faultsOf(
  document: Document.Parsed,
): readonly { readonly at: number; readonly message: string }[] {
  const faults = [...document.errors, ...document.warnings].map(({ pos, message }) => ({
    at: pos[0],
    message,
  }));
  const deep = faults.find(({ message }) => isTooDeep(message));
  if (deep !== undefined) return [deep];
  if (faults.length > 0) return faults;
  return repeatedKeys(document).map((at) => ({ at, message: "a key stands there twice" }));
}

/** The parser goes down into a document by calls, and runs out of them. */
function isTooDeep(message: string): boolean {
  return /call stack/.test(message);
}

/** Where a key, or else a value, begins [characters from the start of the text]. */
function startOf(document: Document, path: DocumentPath): number | null {
  const holder = resolved(document, nodeAt(document, path.slice(0, -1)));
  const pair =
    path.length > 0 && isMap(holder)
      ? holder.items.find(({ key }) => isScalar(key) && key.value === path.at(-1))
      : undefined;
  const node = pair?.key ?? nodeAt(document, path);
  return isNode(node) ? (node.range?.[0] ?? null) : null;
}

function nodeAt(document: Document, path: DocumentPath): unknown {
  let node: unknown = document.contents;
  for (const part of path) {
    const holder = resolved(document, node);
    node = isCollection(holder) ? holder.get(part, true) : undefined;
  }
  return node;
}

function resolved(document: Document, node: unknown): unknown {
  return isAlias(node) ? node.resolve(document) : node;
}

function placeText(name: string, path: DocumentPath, line: number | null): string {
  const after = line === null ? "" : `, line ${line}`;
  const place = path
    .map((part) => (typeof part === "number" ? `[${part}]` : `.${String(part)}`))
    .join("")
    .replace(/^\./, "");
  return place === "" ? `${name}${after}` : `${name}: ${place}${after}`;
}

function emptyFile(name: string, format: DocumentFormat): Problem {
  return {
    code: `${format.room}/empty-file`,
    what: "the file is empty",
    where: name,
    expected: format.neededKeys,
    fix: `start from ${format.example}`,
  };
}

function tooManyAliases(name: string, format: DocumentFormat): Problem {
  return {
    code: `${format.room}/not-yaml`,
    what: "it cannot be read: an alias (*) repeats too much, or comes before its anchor (&)",
    where: name,
    expected: `at most ${MOST_ALIASES} uses of one anchor, each after it`,
    fix: "write the values out instead of repeating them with *",
  };
}

function notYaml(where: string, message: string, format: DocumentFormat): Problem {
  const flat = plainly(message).replaceAll(/\s+/g, " ").trim();
  return {
    code: `${format.room}/not-yaml`,
    what: `it cannot be read: ${flat.length > 160 ? `${flat.slice(0, 159)}…` : flat}`,
    where,
    expected: "YAML or JSON, each key once",
    fix: `check indentation, quotes, colons and brackets up to there against ${format.example}`,
  };
}

/** What the parser says in a programmer's words, in plain ones. */
function plainly(message: string): string {
  if (isTooDeep(message)) return "it is nested too deeply";
  if (/multiple documents/.test(message)) return "a line --- begins a second document";
  return message;
}

/**
 * Keys that stand twice in one group, as places in the text [characters from its start].
 * Takes time as the text is long, where the parser's own check takes the square of it.
 */
function repeatedKeys(document: Document): readonly number[] {
  const places: number[] = [];
  visit(document, {
    Map: (_, map) => {
      places.push(...repeatedIn(map));
    },
  });
  return places.sort((a, b) => a - b);
}

function repeatedIn(map: YAMLMap): readonly number[] {
  const seen = new Set<unknown>();
  return map.items.flatMap(({ key }) => {
    if (!isScalar(key)) return [];
    // A document as plain values has no other keys than words: 1 and "1" would be the same.
    const word = String(key.value);
    if (seen.has(word)) return [(key as Node).range?.[0] ?? 0];
    seen.add(word);
    return [];
  });
}

/**
 * How many groups the merge keys (`<<`) of a document bring in, each counted as often as it is
 * brought: a few lines that merge each other twice would otherwise take for ever. Without end where
 * a group merges itself.
 */
function mergedMaps(document: Document): number {
  const known = new Map<YAMLMap, number>();
  const within = (map: YAMLMap): number => {
    const before = known.get(map);
    if (before !== undefined) return before;
    known.set(map, Number.POSITIVE_INFINITY);
    const count = sourcesOf(document, map).reduce((sum, source) => sum + 1 + within(source), 0);
    known.set(map, count);
    return count;
  };
  let all = 0;
  visit(document, {
    Map: (_, map) => {
      all += within(map);
    },
  });
  return all;
}

/** The groups that the merge keys of a group name, one after the other. */
function sourcesOf(document: Document, map: YAMLMap): readonly YAMLMap[] {
  return map.items.flatMap(({ key, value }) => {
    if (!isScalar(key) || (key.value !== "<<" && typeof key.value !== "symbol")) return [];
    const given = resolved(document, value);
    const each = isSeq(given) ? given.items.map((item) => resolved(document, item)) : [given];
    return each.filter((one) => isMap(one));
  });
}

/** A kind of file that people write by hand, and the words to speak of it with. */
export interface DocumentFormat {
  /** First part of the problem codes: `schedule` in `schedule/not-yaml`. */
  readonly room: string;
  /** With its article: `a schedule`. */
  readonly thing: string;
  /** Keys that every such file needs: `formatVersion, title, unit and segments`. */
  readonly neededKeys: string;
  /** A file to compare with: `a shipped schedule`. */
  readonly example: string;
  /** The format itself; known keys and listed values are taken from it. */
  readonly schema: z.ZodType;
  /** Code for a key that is needed and not there. */
  readonly missingCode: Problem["code"];
  /** What other people call a key, in lower case, and the key. */
  readonly otherWords: ReadonlyMap<string, string>;
  /**
   * What may stand under a key, for the items of a list under `key[]`.
   * A key that is not here is explained from the schema and its description.
   */
  readonly expected: ReadonlyMap<string, string>;
  /** Keys whose digits count as written, so that 05 is not 5: a bare number is refused. */
  readonly quotedKeys: readonly string[];
  /** How to shorten a list that is too long, by key. */
  readonly shorten: ReadonlyMap<string, string>;
}
