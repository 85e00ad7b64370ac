import type { z } from "zod";
import type { Problem } from "../problem.ts";
import { nearWord } from "../schedule/nearWord.ts";

interface Context {
  /** What was checked. */
  readonly data: unknown;
  /** File name. */
  readonly name: string;
  /** First part of the problem codes. */
  readonly room: string;
  readonly schema: z.ZodType;
}

type Issue = z.core.$ZodIssue;

/** What a schema found wrong with a file, as problems a person can fix, near words suggested. */
export function schemaProblems(issues: readonly Issue[], context: Context): readonly Problem[] {
  return issues.flatMap((issue) =>
    issue.code === "unrecognized_keys"
      ? issue.keys.map((key) => unknownKey(key, issue.path, context))
      : [wrongValue(issue, context)],
  );
}

function unknownKey(key: string, path: readonly PropertyKey[], context: Context): Problem {
  const known = knownKeys(context.schema, path);
  const near = nearWord(key, known);
  return {
    code: `${context.room}/unknown-key`,
    what: `"${key}" is not a word of this format`,
    where: `${context.name}: ${placeOf([...path, key])}`,
    expected: `one of ${known.join(", ")}`,
    fix: near ? `write "${near}"` : `remove "${key}", or move it to notes`,
  };
}

function wrongValue(issue: Issue, context: Context): Problem {
  const value = valueAt(context.data, issue.path);
  const where = `${context.name}: ${placeOf(issue.path)}`;
  const expected = expectation(issue);
  if (value === undefined)
    return {
      code: `${context.room}/missing`,
      what: `${lastOf(issue.path)} is missing`,
      where,
      expected: `${lastOf(issue.path)}: ${expected}`,
      fix: `add a line "${lastOf(issue.path)}: …"`,
    };
  const near =
    issue.code === "invalid_value" && typeof value === "string" && value.length > 2
      ? nearWord(value, issue.values.map(String))
      : null;
  return {
    code: `${context.room}/wrong-value`,
    what: `${shown(value)} cannot stand here`,
    where,
    expected,
    fix: near ? `write "${near}"` : `replace it by ${expected}`,
  };
}

function expectation(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return TYPES[issue.expected] ?? issue.expected;
    case "invalid_value":
      return issue.values
        .map((value) => String(value))
        .join(", ")
        .replace(/, ([^,]+)$/, " or $1");
    case "invalid_union":
      return [...new Set(issue.errors.flat().map(expectation))].join(" or ");
    case "too_small":
      return sizeText("at least", "more than", issue.inclusive, issue.minimum, issue.origin);
    case "too_big":
      return sizeText("at most", "less than", issue.inclusive, issue.maximum, issue.origin);
    default:
      return issue.message;
  }
}

const TYPES: Readonly<Record<string, string>> = {
  string: "text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list, one line each beginning with -",
  object: "a group of lines, each a word and its value",
};

function sizeText(
  from: string,
  beyond: string,
  inclusive: boolean | undefined,
  limit: number | bigint,
  origin: string,
): string {
  if (origin === "string") return "text that is not empty";
  if (origin === "array") return `${from} ${limit} in the list`;
  return `a number, ${inclusive === false ? beyond : from} ${limit}`;
}

/** The keys that a schema knows at a path; empty when there is no group of keys there. */
function knownKeys(schema: z.ZodType, path: readonly PropertyKey[]): readonly string[] {
  let here: unknown = schema;
  for (const step of path) {
    const { def } = unwrapped(here);
    here = typeof step === "number" ? def.element : def.shape?.[String(step)];
    if (here === undefined) return [];
  }
  return Object.keys(unwrapped(here).def.shape ?? {});
}

interface Definition {
  readonly def: {
    readonly innerType?: unknown;
    readonly element?: unknown;
    readonly shape?: Readonly<Record<string, unknown>>;
  };
}

function unwrapped(schema: unknown): Definition {
  let here = schema as Definition;
  while (here.def.innerType !== undefined) here = here.def.innerType as Definition;
  return here;
}

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (here, step) =>
      here !== null && typeof here === "object"
        ? (here as Record<PropertyKey, unknown>)[step]
        : undefined,
    data,
  );
}

function placeOf(path: readonly PropertyKey[]): string {
  if (path.length === 0) return "the whole file";
  return path
    .map((step, i) =>
      typeof step === "number" ? `[${step}]` : `${i > 0 ? "." : ""}${String(step)}`,
    )
    .join("");
}

function lastOf(path: readonly PropertyKey[]): string {
  const last = path.at(-1);
  return last === undefined ? "the file" : String(last);
}

function shown(value: unknown): string {
  if (value === null) return "nothing";
  const text = typeof value === "string" ? `"${value}"` : JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
