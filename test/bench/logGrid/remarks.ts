import { seeded } from "../../support/demo/seeded.ts";
import { TIME_STYLES } from "./timeStyles.ts";
import type { TableContent } from "./writtenTable.ts";

/** Lines as loggers and people write them above a table: words, names, numbers, commas, blanks. */
const ABOVE = [
  "Logger serial 1047, site: shed",
  "Operator,A. Potter",
  "Cone;6",
  "Channels 3",
  "",
  "Comment: two shelves, bottom half full; tiles",
  "Firmware 1.0.2",
  "Weight,12.5,kg",
  "Lid closed 16:50",
  "Power 7.2 kW | 230 V",
  "----------------",
  "Alarm low,10,Alarm high,1300",
  "File\t7\tof\t12",
  "Ware: 40 cups; 12 bowls",
  "Limit 1300",
  "Page 1",
  "Coefficients 1.02 0.98 1.00",
];

const COMMENT_MARKS: Readonly<Record<string, string>> = {
  "# above": "#",
  "; above": ";",
  "// above": "//",
  "% above": "%",
  "! above": "!",
};

const UNIT_LINES = {
  C: ["Units: °C", "Temperature unit: Celsius", "Temperatures in degC", "Unit;°C"],
  F: ["Units: °F", "Temperature unit: Fahrenheit", "Temperatures in degF", "Unit;°F"],
  K: ["Unit: kelvin", "Temperature unit: Kelvin", "Temperatures in kelvin", "Unit (K)"],
} as const;

/** Lines above the table, with the unit and the sampling step where the log says them there. */
export function remarksAbove(content: TableContent, delimiter: string): readonly string[] {
  const { levels, stepSeconds, seed } = content;
  const random = seeded(seed + 1);
  const count = Number(levels.preamble);
  const from = Math.floor(random.even() * ABOVE.length);
  const lines = Array.from({ length: count }, (_, i) => ABOVE[(from + i) % ABOVE.length] as string);
  const insert = (line: string) =>
    lines.splice(Math.floor(random.even() * (lines.length + 1)), 0, line);
  if (levels.unitPlace === "preamble")
    insert(UNIT_LINES[levels.unit][Math.floor(random.even() * 4)] as string);
  if (saysInterval(content)) insert(intervalLine(stepSeconds, random.even()));
  const isPadded = delimiter !== " " && random.even() < 0.2;
  const padding = isPadded ? delimiter.repeat(content.columns.length) : "";
  const mark = COMMENT_MARKS[levels.comments];
  const marked = mark === undefined ? [] : [`${mark} exported log`, `${mark} channel list follows`];
  return [...lines.map((line) => line + padding), ...marked];
}

/** Whether the step between samples stands above the table; only a counted log needs it. */
export function saysInterval({ levels }: Pick<TableContent, "levels">): boolean {
  return TIME_STYLES[levels.time].kind === "counted" && levels.preamble !== "0";
}

function intervalLine(step: number, draw: number): string {
  const clock = [step / 3600, (step % 3600) / 60, step % 60]
    .map((part) => String(Math.floor(part)).padStart(2, "0"))
    .join(":");
  const lines = [
    `Sampling interval: ${step} s`,
    `Interval [s]: ${step}`,
    `Log interval ${clock}`,
    step % 60 === 0 ? `Period ${step / 60} min` : `Period ${step} sec`,
    `Sample rate: every ${step} seconds`,
  ];
  return lines[Math.floor(draw * lines.length)] as string;
}

/** Lines below the table: statistics, totals, a remark, what a spreadsheet leaves. */
export function remarksBelow(content: TableContent, delimiter: string): readonly string[] {
  const { levels, columns } = content;
  const numbers = columns.map(({ cells }) => cells[0] ?? "");
  const row = (...cells: readonly string[]) =>
    levels.quotes === "all"
      ? cells.map((cell) => `"${cell}"`).join(delimiter)
      : cells.join(delimiter);
  const open = delimiter === "," && levels.decimal === "comma" ? ["12", "20"] : numbers;
  const byFooter: Readonly<Record<typeof levels.footer, readonly string[]>> = {
    none: [],
    statistics: [row("Min", ...open), row("Max", ...open), row("Mean", ...open)],
    totals: [`Readings: ${content.rowOf.length}`, row("Energy", "12", "kWh")],
    remark: ["End of log, unloaded by A. Potter"],
    "blank lines and words": [
      "",
      delimiter === " " ? "" : delimiter.repeat(columns.length),
      "",
      "checked",
    ],
  };
  return byFooter[levels.footer];
}
