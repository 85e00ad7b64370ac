import type { Problem } from "../core/problem.ts";
import type { CommonOptions } from "./conversation.ts";

/** Options of `review` that may not stand beside each other. */
interface Given extends CommonOptions {
  readonly record?: string;
  readonly heard?: readonly string[];
  readonly explain?: boolean;
}

/** Makes one answer, so it can be asked of one log only; the first that is given is told. */
const OF_ONE_LOG = ["json", "html", "chart", "record", "heard"] as const;
/** Other forms of the answer than lines of JSON, and than the text of --explain. */
const BESIDE_LINES = ["json", "html", "chart", "explain"] as const;
const BESIDE_EXPLAIN = ["json", "html", "chart", "heard", "against"] as const;

/** What contradicts itself in a command line of `review`; null when nothing does. */
export function reviewContradiction(logs: number, options: Given): Problem | null {
  const given = (names: readonly string[]) =>
    names.find((name) => options[name as keyof Given] !== undefined);
  const beside = options.jsonLines ? given(BESIDE_LINES) : undefined;
  if (beside !== undefined)
    return two("--json-lines", beside, "lines of JSON are the whole answer");
  const explained = options.explain ? given(BESIDE_EXPLAIN) : undefined;
  if (explained !== undefined)
    return two(
      "--explain",
      explained,
      "it tells in text how a log was read, and nothing of the firing",
    );
  const ofOne = given(OF_ONE_LOG);
  if (logs === 1 || ofOne === undefined) return null;
  return {
    code: "command/one-log",
    where: `--${ofOne}`,
    what: `${logs} logs are given`,
    expected: "one log, because this option speaks of one firing",
    fix: "one log at a time; or --json-lines for one JSON document a line, or undunted compare for a table of several",
  };
}

function two(one: string, other: string, because: string): Problem {
  return {
    code: "command/contradiction",
    where: "command line",
    what: `both ${one} and --${other} are given`,
    expected: `one of them: ${because}`,
    fix: "drop one",
  };
}
