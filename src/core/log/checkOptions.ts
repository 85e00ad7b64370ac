import type { Problem } from "../problem.ts";
import type { LogOptions } from "./LogReading.ts";

/** Problems with the options themselves, before the file is looked at; empty when there are none. */
export function checkOptions(options: LogOptions): readonly Problem[] {
  const problems: Problem[] = [];
  const wrong = (option: string, value: unknown, rest: Pick<Problem, "expected" | "fix">) =>
    problems.push({
      code: "log/wrong-option",
      what: `${option} is ${JSON.stringify(value)}`,
      where: options.name,
      ...rest,
    });
  const { unit, timeUnit, delimiter, decimal, intervalSeconds } = options;
  if (unit !== undefined && !["C", "F", "K"].includes(unit))
    wrong("--log-unit", unit, {
      expected: "C, F or K",
      fix: "write --log-unit C, --log-unit F or --log-unit K",
    });
  if (timeUnit !== undefined && !["s", "min", "h"].includes(timeUnit))
    wrong("--time-unit", timeUnit, {
      expected: "s, min or h",
      fix: "write --time-unit s, --time-unit min or --time-unit h",
    });
  if (delimiter !== undefined && (delimiter.length !== 1 || /[\w"\r\n]/.test(delimiter)))
    wrong("--delimiter", delimiter, {
      expected: "one character that is no letter, digit, quote or line end",
      fix: "write the character between the cells, in quotes: --delimiter ';'",
    });
  if (decimal !== undefined && decimal !== "." && decimal !== ",")
    wrong("--decimal", decimal, {
      expected: "a point or a comma",
      fix: "write --decimal . or --decimal ,",
    });
  if (intervalSeconds !== undefined && !(intervalSeconds > 0 && Number.isFinite(intervalSeconds)))
    wrong("--interval", intervalSeconds, {
      expected: "a step above 0 seconds",
      fix: "write the seconds between two rows: --interval 60",
    });
  return problems;
}
