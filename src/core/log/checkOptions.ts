import type { Problem } from "../problem.ts";
import { THERMOCOUPLE_TYPES } from "../thermocouple/emf.ts";
import { TERMINALS_C } from "./coldJunction.ts";
import type { LogOptions } from "./reading/LogReading.ts";
import { WIDE_BLANKS } from "./text/cells.ts";
import { TIME_KINDS, TIME_UNITS } from "./time/timeUnit.ts";

/** What an option of the reader may be, and what to say when it is not. */
interface OptionRule {
  readonly option: string;
  readonly givenIn: (options: LogOptions) => unknown;
  /** Asked only of an option that was given. */
  readonly fits: (value: unknown) => boolean;
  readonly expected: string;
  readonly fix: string;
}

const oneOf =
  (...words: readonly string[]) =>
  (value: unknown) =>
    typeof value === "string" && words.includes(value);

const inside = (least: number, most: number) => (value: unknown) =>
  typeof value === "number" && value >= least && value <= most;

const RULES: readonly OptionRule[] = [
  {
    option: "--time-kind",
    givenIn: ({ timeKind }) => timeKind,
    fits: oneOf(...TIME_KINDS),
    expected: TIME_KINDS.join(", "),
    fix: "write what the time column holds: --time-kind elapsed",
  },
  {
    option: "--header",
    givenIn: ({ header }) => header,
    fits: (value) => typeof value !== "number" || (Number.isInteger(value) && value > 0),
    expected: "a line of the file, counted from 1, or none",
    fix: "write the line with the names of the columns: --header 3",
  },
  {
    option: "--log-unit",
    givenIn: ({ unit }) => unit,
    fits: oneOf("C", "F", "K"),
    expected: "C, F or K",
    fix: "write --log-unit C, --log-unit F or --log-unit K",
  },
  {
    option: "--time-unit",
    givenIn: ({ timeUnit }) => timeUnit,
    fits: oneOf(...TIME_UNITS),
    expected: TIME_UNITS.join(", "),
    fix: "write --time-unit s, --time-unit min or --time-unit h",
  },
  {
    option: "--delimiter",
    givenIn: ({ delimiter }) => delimiter,
    fits: (value) => value === WIDE_BLANKS || /^[^\w"\r\n]$/.test(String(value)),
    expected: "one character that is no letter, digit, quote or line end",
    fix: "write the character between the cells, in quotes: --delimiter ';'",
  },
  {
    option: "--decimal",
    givenIn: ({ decimal }) => decimal,
    fits: oneOf(".", ","),
    expected: "a point or a comma",
    fix: "write --decimal . or --decimal ,",
  },
  {
    option: "--interval",
    givenIn: ({ intervalSeconds }) => intervalSeconds,
    fits: inside(Number.MIN_VALUE, Number.MAX_VALUE),
    expected: "a step above 0 seconds",
    fix: "write the seconds between two rows: --interval 60",
  },
  {
    option: "--thermocouple",
    givenIn: ({ thermocouple }) => thermocouple,
    fits: oneOf(...THERMOCOUPLE_TYPES),
    expected: "the letter of a type: K, N, S, R, B, J or T",
    fix: "write the letter that is on the plug or the order: --thermocouple K",
  },
  {
    option: "--cold-junction",
    givenIn: ({ coldJunctionC }) => coldJunctionC,
    fits: inside(TERMINALS_C.least, TERMINALS_C.most),
    expected: `a temperature of terminals, ${TERMINALS_C.least} to ${TERMINALS_C.most} °C`,
    fix: "write how warm it was where the thermocouple's wire ends: --cold-junction 25C",
  },
];

/** Problems with the options themselves, before the file is looked at; empty when there are none. */
export function checkOptions(options: LogOptions): readonly Problem[] {
  return RULES.flatMap(({ option, givenIn, fits, expected, fix }): readonly Problem[] => {
    const value = givenIn(options);
    if (value === undefined || fits(value)) return [];
    return [
      {
        code: "log/wrong-option",
        what: `${option} is ${JSON.stringify(value)}`,
        where: options.name,
        expected,
        fix,
      },
    ];
  });
}
