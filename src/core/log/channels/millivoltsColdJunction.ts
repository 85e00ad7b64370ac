import { failed, ok, type Problem, type Result } from "../../problem.ts";
import { decision } from "../decision.ts";
import type { Decision, LogOptions } from "../LogReading.ts";
import type { OpenedLog } from "../openLog.ts";
import { median } from "../statistics.ts";
import { findColumn } from "../text/columnNames.ts";
import type { Column } from "../text/table.ts";
import { columnUnit } from "./columnUnit.ts";
import { celsiusFrom, type LogUnit } from "./unit.ts";
import { WORDS } from "./words.ts";

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
    tempC: (row) => filled.tempsC[row] as number,
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
