import type { Decision, LogSaid } from "../log/LogReading.ts";
import { delimiterTold } from "../log/text/namedDelimiters.ts";

/** What would tell decisions that were only likely or guessed, all together. */
export function guessedSaid(decisions: readonly Decision[]): LogSaid {
  const guessed = decisions
    .filter(({ confidence }) => confidence === "likely" || confidence === "guessed")
    .flatMap(({ says }) => (says === undefined ? [] : [says]));
  const roles = Object.assign({}, ...guessed.map((each) => each.roles));
  const all: LogSaid = Object.assign({}, ...guessed);
  return Object.keys(roles).length > 0 ? { ...all, roles } : all;
}

/** Lines of YAML for a firing record that say the same of a log; empty when nothing is said. */
export function logSaidLines(said: LogSaid): readonly string[] {
  const { thermocouple } = said;
  const lines = LINES.flatMap(([key, value]) => {
    const text = value(said);
    return text === null || text === undefined ? [] : [`  ${key}: ${text}`];
  });
  return [
    ...(thermocouple === undefined ? [] : ["thermocouple:", `  type: ${thermocouple}`]),
    ...(lines.length === 0 ? [] : ["log:", ...lines]),
  ];
}

type Written = string | null | undefined;

/** The keys of a record's `log` in its order, each with its value as YAML; nothing when it is not said. */
const LINES: readonly (readonly [key: string, value: (said: LogSaid) => Written])[] = [
  ["unit", ({ unit }) => unit],
  ["columns", ({ columns }) => columns && `[${columns.map(quoted).join(", ")}]`],
  ["roles", ({ roles }) => roles && `{ ${Object.entries(roles).map(roleText).join(", ")} }`],
  ["timeColumn", ({ timeColumn }) => timeColumn && quoted(timeColumn)],
  ["timeKind", ({ timeKind }) => timeKind],
  ["timeUnit", ({ timeUnit }) => timeUnit],
  ["dayFirst", ({ dayFirst }) => dayFirst?.toString()],
  ["yearFirst", ({ yearFirst }) => yearFirst?.toString()],
  ["header", ({ header }) => header?.toString()],
  ["layout", ({ layout }) => layout],
  ["delimiter", ({ delimiter }) => delimiter && quoted(delimiterTold(delimiter))],
  ["decimal", ({ decimal }) => decimal && quoted(decimal)],
  ["encoding", ({ encoding }) => encoding && quoted(encoding)],
  ["intervalSeconds", ({ intervalSeconds }) => intervalSeconds?.toString()],
  ["coldJunction", ({ coldJunctionC: tempC }) => (tempC === undefined ? null : `"${tempC} C"`)],
];

function roleText([name, role]: readonly [string, string]): string {
  return `${quoted(name)}: ${role}`;
}

/** A text in double quotes, whose escapes YAML shares with JSON. */
function quoted(text: string): string {
  return JSON.stringify(text);
}
