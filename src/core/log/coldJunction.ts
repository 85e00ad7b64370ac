import { median, shapeOf } from "../math/statistics.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { celsiusFrom, columnUnit, type LogUnit } from "./channels/unit.ts";
import type { OpenedLog } from "./openLog.ts";
import { type Decision, decision, type LogOptions } from "./reading/LogReading.ts";
import { OTHER_UNIT, OTHER_UNIT_IN_NAME, WORDS } from "./text/headerCells.ts";
import { type Column, findColumn } from "./text/logTable.ts";

/** How warm the terminals were where the thermocouple ends. */
export interface ColdJunction {
  /** Temperature in a row of the table [°C]. */
  readonly tempC: (row: number) => number;
  /** The column it stands in, with the scale it was read in; null when it was told. */
  readonly column: Column | null;
  readonly scale: LogUnit | null;
  readonly decision: Decision;
}

/** How warm or cold terminals may be in a studio or beside a kiln [°C]; own choice, set wide. */
export const TERMINALS_C = { least: -20, most: 85 };
/** Bare numbers up to here are °C, from there on °F; between, both are possible. Own choice. */
const SURE = { celsius: 48, fahrenheit: 61 };

const OPTION = "--cold-junction 25C";

/**
 * The temperature of the terminals: told, else the log's own column of it.
 * @returns it, or `log/cold-junction-unknown`.
 */
export function decideColdJunction(log: OpenedLog, options: LogOptions): Result<ColdJunction> {
  const told = options.coldJunctionC;
  if (told !== undefined)
    return ok({
      tempC: () => told,
      column: null,
      scale: null,
      decision: decision("cold junction", `${told} °C`, {
        confidence: "told",
        because: "it was given; its emf is added to every reading",
        option: OPTION,
        says: { coldJunctionC: told },
      }),
    });
  const named = toldColumn(log.table.columns, options);
  const column = named ?? coldColumn(log.table.columns);
  if (column === null)
    return failed(unknown(options, "no column says how warm the terminals were"));
  const middle = median(column.numbers);
  const written = columnUnit(column) ?? options.unit ?? log.preamble.unit;
  const scale = written ?? likelyScale(middle);
  if (scale === null)
    return failed(
      unknown(options, `"${column.name}" is about ${Math.round(middle)}, which could be °C or °F`),
    );
  const how = named !== null ? "told" : written !== null ? "certain" : "likely";
  return fromColumn(column, { scale, how, options });
}

/** The column that is told to be of the terminals. */
function toldColumn(columns: readonly Column[], { roles = {} }: LogOptions): Column | null {
  const told = Object.keys(roles).find((name) => roles[name] === "cold-junction");
  return told === undefined ? null : findColumn(columns, told);
}

/** Column of the terminals' temperature; one that names the junction goes before one that names the room. */
function coldColumn(columns: readonly Column[]): Column | null {
  const found = columns.filter(
    ({ kind, name, numbers }) =>
      kind === "number" &&
      WORDS.coldJunction.test(name.replace(/_/g, " ")) &&
      numbers.some((value) => !Number.isNaN(value)),
  );
  return found.find(({ name }) => /cold|junction|\bcj/i.test(name)) ?? found[0] ?? null;
}

function likelyScale(middle: number): LogUnit | null {
  if (middle <= SURE.celsius) return "C";
  return middle >= SURE.fahrenheit ? "F" : null;
}

function fromColumn(
  column: Column,
  {
    scale,
    how,
    options,
  }: {
    readonly scale: LogUnit;
    readonly how: "told" | "certain" | "likely";
    readonly options: LogOptions;
  },
): Result<ColdJunction> {
  const tempsC = column.numbers.map((value) => celsiusFrom(value, scale));
  const filled = carriedOver(tempsC);
  if (filled === null)
    return failed(
      unknown(options, `"${column.name}" holds no temperature that terminals may have`),
    );
  const carried =
    filled.count === 0
      ? ""
      : `; ${filled.count} without a possible value take that of the row before`;
  return ok({
    tempC: (row) => filled.tempsC[row]!,
    column,
    scale,
    decision: decision("cold junction", column.name, {
      confidence: how,
      because: `${how === "told" ? "it was given" : "its name says so"}${how === "likely" ? `, and its numbers are likely in °${scale}` : ""}; the emf of each row's value is added${carried}`,
      option: `${OPTION}; --role NAME=cold-junction`,
      says: { roles: { [column.name]: "cold-junction" }, unit: scale },
    }),
  });
}

/** Possible temperatures, with the last one before where there is none; null when none is possible. */
function carriedOver(
  tempsC: Float64Array,
): { readonly tempsC: Float64Array; readonly count: number } | null {
  const isPossible = (tempC: number) => tempC >= TERMINALS_C.least && tempC <= TERMINALS_C.most;
  let last = tempsC.find(isPossible);
  if (last === undefined) return null;
  let count = 0;
  const filled = tempsC.map((tempC) => {
    if (isPossible(tempC)) last = tempC;
    else count++;
    return last as number;
  });
  return { tempsC: filled, count };
}

function unknown(options: LogOptions, what: string): Problem {
  return {
    code: "log/cold-junction-unknown",
    what: `holds millivolts, and ${what}`,
    where: options.name,
    expected:
      "the temperature of the terminals at which the thermocouple ends, as a column or told",
    fix: `say it with ${OPTION}, or as log.coldJunction in the firing record; 0C when the logger has added it already`,
  };
}

/** Emf of thermocouples in kilns with a cold junction at room [mV]: type E, the liveliest, gives 76. */
const POSSIBLE_MV = { least: -1, most: 80 };
/** Share of the cells that must lie there; an open circuit puts some at the end of scale. */
const MOSTLY = 0.9;

const UNIT_ROW = /^\s*[([]?\s*mV\s*[)\]]?\s*$/;
const IN_NAME = /\s*[([]\s*mV\s*[)\]]|[_ ,.-]+(?:mV|mv)$/;

/**
 * Whether a column holds the emf of a thermocouple: mV in its name or unit row (a capital MV is a
 * controller's output), at least two decimals, within what thermocouples give, and no other subject.
 */
export function isMillivolts(column: Column): boolean {
  if (column.kind !== "number" || !saysMillivolts(column)) return false;
  const subject = nameWithoutMillivolts(column.name)
    .replace(/_/g, " ")
    .replace(/volt\w*/i, "");
  const isOther = [WORDS.nothing, WORDS.coldJunction, WORDS.output, WORDS.setPoint].some((words) =>
    words.test(subject),
  );
  return !isOther && areThermocoupleMillivolts(column.numbers);
}

/** Whether a column is a measured kiln temperature already: by its unit or its name, and not all near room. */
export function isOtherTemperature(column: Column): boolean {
  if (column.kind !== "number" || saysMillivolts(column)) return false;
  const plain = column.name.replace(/_/g, " ");
  if (WORDS.coldJunction.test(plain) || WORDS.setPoint.test(plain)) return false;
  const unit = columnUnit(column);
  const greatestC = celsiusFrom(shapeOf(column.numbers).greatest, unit ?? "C");
  if (greatestC <= TERMINALS_C.most) return false;
  if (unit !== null) return true;
  const hasOtherUnit = OTHER_UNIT.test(column.unitText) || OTHER_UNIT_IN_NAME.test(column.name);
  return !hasOtherUnit && !WORDS.nothing.test(plain) && WORDS.temperature.test(plain);
}

/** A column's name without the unit: `Kiln (mV)` is `Kiln`; the whole name when nothing else is in it. */
export function nameWithoutMillivolts(name: string): string {
  const short = name.replace(IN_NAME, "").trim();
  return short === "" ? name : short;
}

/** Greatest emf of columns that is possible for a thermocouple [mV]. */
export function greatestMillivolts(columns: readonly Column[]): number {
  const possible = columns.map(({ numbers }) =>
    shapeOf(numbers.filter((value) => value <= POSSIBLE_MV.most)),
  );
  return Math.max(...possible.map(({ greatest }) => greatest));
}

function saysMillivolts({ unitText, name }: Column): boolean {
  return UNIT_ROW.test(unitText) || IN_NAME.test(name);
}

function areThermocoupleMillivolts(numbers: Float64Array): boolean {
  let count = 0;
  let inside = 0;
  let fine = 0;
  for (const value of numbers) {
    if (Number.isNaN(value)) continue;
    count++;
    if (value >= POSSIBLE_MV.least && value <= POSSIBLE_MV.most) inside++;
    if (Math.abs(10 * value - Math.round(10 * value)) > 1e-6) fine++;
  }
  return count > 0 && inside >= MOSTLY * count && fine > 0;
}
