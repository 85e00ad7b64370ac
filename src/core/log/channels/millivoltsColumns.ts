import { shapeOf } from "../statistics.ts";
import type { Column } from "../text/table.ts";
import { columnUnit } from "./columnUnit.ts";
import { TERMINALS_C } from "./millivoltsColdJunction.ts";
import { celsiusFrom } from "./unit.ts";
import { OTHER_UNIT, OTHER_UNIT_IN_NAME, WORDS } from "./words.ts";

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
