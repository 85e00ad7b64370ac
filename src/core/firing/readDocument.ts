import { isScalar, parseDocument, visit } from "yaml";
import { failed, ok, type Problem, type Result } from "../problem.ts";

/** Most times that aliases of one anchor may be expanded. */
const MOST_ALIASES = 100;

/**
 * The value of a YAML or JSON document.
 * Under the keys of `asWritten` a bare number keeps its text, so that cone 05 is not read as cone 5.
 *
 * @param room First part of the problem code: `record/not-yaml`.
 */
export function readDocument(
  text: string,
  name: string,
  room: string,
  asWritten: readonly string[],
): Result<unknown> {
  const document = parseDocument(text, { prettyErrors: true });
  if (document.errors.length > 0)
    return failed(
      ...document.errors.map(
        (error): Problem => ({
          code: `${room}/not-yaml`,
          what: `${lowerFirst(error.message.split("\n")[0] ?? "").replace(/ at line .*$/, "")}`,
          where: `${name}: line ${error.linePos?.[0].line ?? 1}`,
          expected: "a YAML or JSON document",
          fix: "mend that line: check the indentation, the quotes and the brackets before it",
        }),
      ),
    );
  visit(document, {
    Pair(_, pair) {
      if (
        isScalar(pair.key) &&
        asWritten.includes(String(pair.key.value)) &&
        isScalar(pair.value) &&
        typeof pair.value.value === "number" &&
        pair.value.source !== undefined
      )
        pair.value.value = pair.value.source;
    },
  });
  try {
    return ok(document.toJS({ maxAliasCount: MOST_ALIASES }) as unknown);
  } catch (error) {
    return failed({
      code: `${room}/not-yaml`,
      what: error instanceof Error ? lowerFirst(error.message) : "an alias cannot be resolved",
      where: name,
      expected: `a document with at most ${MOST_ALIASES} uses of one anchor`,
      fix: "write the values out instead of repeating them with *",
    });
  }
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
