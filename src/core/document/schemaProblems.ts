import type { z } from "zod";
import type { Problem } from "../problem.ts";
import { nearWord } from "../text/nearWord.ts";
import { shown } from "../units/quantity.ts";
import type { DocumentFormat, DocumentPath, ReadDocument } from "./readDocument.ts";

type Issue = z.core.$ZodIssue;

/** Most problems that are told at once; a person mends these and asks again. */
const MOST_PROBLEMS = 20;

/**
 * What the format's schema found wrong with a document, as problems that a person can fix; of very
 * many the first ones, and one that counts the rest.
 */
export function schemaProblems(
  issues: readonly Issue[],
  document: ReadDocument,
  format: DocumentFormat,
): readonly Problem[] {
  const tellings = flatIssues(issues).flatMap((issue) =>
    issue.code === "unrecognized_keys"
      ? issue.keys.map(
          (key) => () => unknownKey(document.placeOf([...issue.path, key]), key, issue, format),
        )
      : [() => wrongValue(issue, document, format)],
  );
  const told = tellings.slice(0, MOST_PROBLEMS).map((tell) => tell());
  const more = tellings.length - told.length;
  return more === 0 ? told : [...told, untold(more, document.placeOf([]), format)];
}

function untold(count: number, where: string, format: DocumentFormat): Problem {
  return {
    code: `${format.room}/more-problems`,
    what: `${count} more ${count === 1 ? "thing is" : "things are"} wrong in it`,
    where,
    expected: `${format.thing}: ${format.neededKeys}`,
    fix: `mend those above first, or start from ${format.example}`,
  };
}

function unknownKey(where: string, key: string, issue: Issue, format: DocumentFormat): Problem {
  const known = schemaAt(format.schema, issue.path)?.keys ?? [];
  const other = format.otherWords.get(key.toLowerCase());
  const near = other !== undefined && known.includes(other) ? other : nearWord(key, known);
  return {
    code: `${format.room}/unknown-key`,
    what: `${shown(key)} is not a key of ${format.thing} here`,
    where,
    expected: `one of ${known.join(", ")}`,
    fix:
      near === null ? "remove it, or write it in notes" : `write ${near} instead, if you mean it`,
  };
}

function wrongValue(issue: Issue, document: ReadDocument, format: DocumentFormat): Problem {
  const { path } = issue;
  const { room } = format;
  const key = String(path.findLast((part) => typeof part === "string") ?? "");
  const label = labelOf(path);
  const value = valueAt(document.value, path);
  const rest = { where: document.placeOf(path), expected: expectedAt(issue, format) };
  if (value === undefined)
    return { code: format.missingCode, what: `${label} is missing`, ...rest, fix: `add ${label}` };
  if (label === "formatVersion")
    return {
      code: `${room}/wrong-version`,
      what: `formatVersion is ${described(value)}`,
      ...rest,
      fix: "write formatVersion: 1; a higher number needs a newer program",
    };
  if (format.quotedKeys.includes(label) && typeof value === "number") {
    const source = document.sourceOf(path) ?? String(value);
    return {
      code: `${room}/${label}-without-quotes`,
      what: `the ${label} ${source} is written as a number`,
      where: rest.where,
      expected: `a ${label} in quotes, because "05" and "5" are different ${label}s`,
      fix: `write ${label}: "${source}"`,
    };
  }
  const shorten = format.shorten.get(label);
  if (issue.code === "too_big" && Array.isArray(value) && shorten !== undefined)
    return {
      code: `${room}/too-many-${label}`,
      what: `there are ${value.length} ${label}`,
      ...rest,
      fix: shorten,
    };
  return {
    code: `${room}/wrong-value`,
    what: label === "" ? `the file holds ${described(value)}` : `${label} is ${described(value)}`,
    ...rest,
    fix: label === "" ? `start from ${format.example}` : fixOf(issue, key, document),
  };
}

/** What may stand at the place of an issue: the format's own words, or those of its schema. */
function expectedAt(issue: Issue, format: DocumentFormat): string {
  const label = labelOf(issue.path).replaceAll(/\[\d+\]/g, "[]");
  if (label === "") return `${format.thing}: ${format.neededKeys}`;
  const own = format.expected.get(label);
  if (own !== undefined) return own;
  const wanted = expectation(issue);
  const description = schemaAt(format.schema, issue.path)?.description ?? wanted;
  return description === wanted ? wanted : `${wanted} (${description.replace(/\.$/, "")})`;
}

function fixOf(issue: Issue, key: string, document: ReadDocument): string {
  const value = valueAt(document.value, issue.path);
  const before = typeof issue.path.at(-1) === "number" ? "" : `${key}: `;
  if (issue.code === "invalid_value") {
    const choices = issue.values.map(String);
    const near = typeof value === "string" ? nearestChoice(value, choices) : null;
    return near === null ? `write ${listed(choices)}` : `write ${before}${near}`;
  }
  if (issue.code === "invalid_type" && issue.expected === "string" && typeof value === "number")
    return `write it in quotes: ${before}"${document.sourceOf(issue.path) ?? value}"`;
  if (typeof value === "boolean") return "put a value there instead of yes or no";
  return `change ${labelOf(issue.path)}`;
}

/** The choice that was meant, also by its one letter: `celsius` for C, `hours` for h. */
function nearestChoice(value: string, choices: readonly string[]): string | null {
  const word = value.trim().replace(/^°/, "");
  const initial = word.charAt(0).toLowerCase();
  const letter = choices.find((choice) => choice.length === 1 && choice.toLowerCase() === initial);
  if (letter !== undefined && /^[a-z]+$/i.test(word)) return letter;
  return word.length > 2 ? nearWord(word, choices) : null;
}

/** The last key of a path with the indexes behind it: `rate`, `segments[2]`; empty at the root. */
function labelOf(path: DocumentPath): string {
  const from = path.findLastIndex((part) => typeof part === "string");
  return path
    .slice(Math.max(0, from))
    .map((part) => (typeof part === "number" ? `[${part}]` : String(part)))
    .join("");
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

/** What is read of a zod schema, whichever kind it is. */
interface SchemaPart {
  readonly description?: string | undefined;
  readonly def: {
    readonly innerType?: unknown;
    readonly element?: unknown;
    /** What stands under every key of a record. */
    readonly valueType?: unknown;
    /** Of a union. */
    readonly options?: readonly unknown[];
    readonly shape?: Readonly<Record<string, unknown>>;
  };
}

/** What a schema says of one place in a document. */
interface SchemaPlace {
  /** Keys that may stand there; empty when it is no group of keys. */
  readonly keys: readonly string[];
  /** The schema's own description of the place. */
  readonly description: string | null;
}

/**
 * What a schema of groups, records, lists and unions says of the place at a path; null when it
 * knows none there. Where a union offers several, the keys are those of all, the description the
 * first.
 */
function schemaAt(schema: z.ZodType, path: readonly PropertyKey[]): SchemaPlace | null {
  let places = choicesOf(schema);
  for (const step of path) {
    places = places.flatMap((layers) => {
      const next = stepInto(layers, step);
      return next === undefined ? [] : choicesOf(next);
    });
    if (places.length === 0) return null;
  }
  const parts = places.flat();
  return {
    keys: [...new Set(parts.flatMap((part) => Object.keys(part.def.shape ?? {})))],
    description: parts.find((part) => part.description !== undefined)?.description ?? null,
  };
}

function stepInto(layers: readonly SchemaPart[], step: PropertyKey): unknown {
  const { def } = layers.at(-1)!;
  if (typeof step === "number") return def.element;
  return ownPart(def.shape, String(step)) ?? def.valueType;
}

function ownPart(shape: SchemaPart["def"]["shape"], key: string): unknown {
  return shape !== undefined && Object.hasOwn(shape, key) ? shape[key] : undefined;
}

/** A schema and what it wraps (optional, default), from the outside in; of a union each option. */
function choicesOf(schema: unknown): readonly (readonly SchemaPart[])[] {
  const layers = [schema as SchemaPart];
  for (let inner = layers[0]?.def.innerType; inner !== undefined; ) {
    layers.push(inner as SchemaPart);
    inner = (inner as SchemaPart).def.innerType;
  }
  const options = layers.at(-1)?.def.options;
  if (options === undefined) return [layers];
  return options.flatMap((option) => choicesOf(option).map((inside) => [...layers, ...inside]));
}

const TYPES: ReadonlyMap<string, string> = new Map([
  ["string", "text"],
  ["number", "a number"],
  ["int", "a whole number"],
  ["boolean", "true or false"],
  ["array", "a list, one line each beginning with -"],
  ["object", "a group of lines, each a key and its value"],
]);

/** What a schema wanted where it found something else, in plain words: `C or F`, `a number`. */
function expectation(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return TYPES.get(issue.expected) ?? issue.expected;
    case "invalid_value":
      return listed(issue.values.map(String));
    case "invalid_union":
      return [...new Set(issue.errors.flat().map(expectation))].join(" or ");
    case "too_small":
      return sizeText(issue.inclusive === false ? "more than" : "at least", issue.minimum, issue);
    case "too_big":
      return sizeText(issue.inclusive === false ? "less than" : "at most", issue.maximum, issue);
    default:
      return issue.message;
  }
}

/** Words as a list to choose from: `none, crackle or through`. */
function listed(words: readonly string[]): string {
  return words.join(", ").replace(/, ([^,]+)$/, " or $1");
}

function sizeText(bound: string, limit: number | bigint, issue: { readonly origin: string }) {
  if (issue.origin === "string" && limit === 1) return "text that is not empty";
  if (issue.origin === "string") return `text of ${bound} ${limit} characters`;
  if (issue.origin === "array") return `a list of ${bound} ${limit}`;
  return `a number, ${bound} ${limit}`;
}

/**
 * Issues with those of a choice put in its place, where only one of the shapes to choose from is
 * of the kind that was written: then what is wrong inside it can be said where it stands.
 */
function flatIssues(issues: readonly Issue[]): readonly Issue[] {
  return issues.flatMap((issue) => {
    if (issue.code !== "invalid_union") return [issue];
    const meant = issue.errors.filter((branch) => !branch.some(isOtherKind));
    const [only] = meant;
    if (only === undefined || meant.length > 1) return [issue];
    return flatIssues(only.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] })));
  });
}

function isOtherKind(issue: Issue): boolean {
  return issue.code === "invalid_type" && issue.path.length === 0;
}
