import { isScalar, LineCounter, parseDocument } from "yaml";
import { failed, ok, type Problem, type Result } from "../problem.ts";

/** Longest text that is read as a schedule [characters]. */
const LONGEST_TEXT = 200_000;

/** Most times that aliases of one anchor may be expanded. */
const MOST_ALIASES = 100;

/** A place inside a document, from the outside in: `["segments", 2, "rate"]`. */
export type DocumentPath = readonly PropertyKey[];

/** A YAML or JSON text as plain values, and where each of them stood. */
export interface ReadDocument {
  readonly value: unknown;
  /** Line of the value at a path, from 1; that of the nearest value around it when there is none. */
  readonly lineOf: (path: DocumentPath) => number | null;
  /** The value exactly as written (`05`), when it is a plain scalar. */
  readonly sourceOf: (path: DocumentPath) => string | null;
}

/**
 * Reads one YAML document; JSON is YAML.
 * Aliases are bounded, keys must be unique, and unknown tags are refused.
 *
 * @returns all problems of the text: `schedule/empty-file`, `schedule/not-yaml`, `schedule/too-long`.
 */
export function readYaml(text: string, name: string): Result<ReadDocument> {
  if (text.length > LONGEST_TEXT)
    return failed({
      code: "schedule/too-long",
      what: `the text has ${text.length} characters`,
      where: name,
      expected: `a schedule of at most ${LONGEST_TEXT} characters`,
      fix: "check that this is the schedule and not a log",
    });
  if (text.replace(/^\uFEFF/, "").trim() === "") return failed(emptyFile(name));
  try {
    return parsed(text, name);
  } catch (error) {
    return failed(notYaml(name, error instanceof Error ? error.message : String(error)));
  }
}

function parsed(text: string, name: string): Result<ReadDocument> {
  const lines = new LineCounter();
  const document = parseDocument(text.replace(/^\uFEFF/, ""), {
    lineCounter: lines,
    prettyErrors: false,
    uniqueKeys: true,
    strict: true,
  });
  const faults = [...document.errors, ...document.warnings];
  if (faults.length > 0)
    return failed(
      ...faults
        .slice(0, 10)
        .map((fault) =>
          notYaml(`${name}: line ${lines.linePos(fault.pos[0]).line}`, fault.message),
        ),
    );
  const value: unknown = document.toJS({ maxAliasCount: MOST_ALIASES });
  if (value === null || value === undefined) return failed(emptyFile(name));
  const rangeStart = (path: DocumentPath): number | null => {
    const node = path.length === 0 ? document.contents : document.getIn(path, true);
    const range = (node as { range?: readonly number[] | null } | null | undefined)?.range;
    return range?.[0] ?? null;
  };
  return ok({
    value,
    lineOf: (path) => {
      for (let length = path.length; length >= 0; length--) {
        const at = rangeStart(path.slice(0, length));
        if (at !== null) return lines.linePos(at).line;
      }
      return null;
    },
    sourceOf: (path) => {
      const node = document.getIn(path, true);
      return isScalar(node) ? (node.source ?? null) : null;
    },
  });
}

function emptyFile(name: string): Problem {
  return {
    code: "schedule/empty-file",
    what: "the file is empty",
    where: name,
    expected: "formatVersion, title, unit and segments",
    fix: "start from one of the shipped schedules",
  };
}

function notYaml(where: string, message: string): Problem {
  return {
    code: "schedule/not-yaml",
    what: `it cannot be read: ${plain(message)}`,
    where,
    expected: "YAML or JSON, each key once",
    fix: "compare the indentation, colons and brackets with a shipped schedule",
  };
}

function plain(message: string): string {
  const flat = message.replaceAll(/\s+/g, " ").trim();
  return flat.length > 160 ? `${flat.slice(0, 159)}…` : flat;
}
