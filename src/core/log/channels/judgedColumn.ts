import type { ChannelRole } from "../LogReading.ts";
import { type Shape, shapeOf } from "../statistics.ts";
import type { Column } from "../text/table.ts";
import { columnUnit } from "./columnUnit.ts";
import { jumpsOnce } from "./setPoints.ts";
import { steadyValues } from "./steadyValues.ts";
import { OTHER_UNIT, OTHER_UNIT_IN_NAME, WORDS } from "./words.ts";

/** What a column was taken for by itself, before it is looked at beside the others. */
export interface Judged {
  readonly column: Column;
  readonly role: ChannelRole;
  readonly because: string;
  readonly shape: Shape;
  /** Named or labelled a temperature, told apart from merely looking like one. */
  readonly isSure: boolean;
}

/** Why a column that jumps about is no temperature. */
export const JUMPS = "it jumps about";
/** Why a column that stays nearly the same is no temperature by itself. */
export const HARDLY = "it hardly changes";
/** Why a column is a set point by its numbers alone. */
export const STRAIGHT = "it runs in exact lines and steps, as no kiln does";

/** What a column is by its name, its unit, or else its numbers. */
export function judge(column: Column): Judged {
  const shape = shapeOf(column.numbers);
  const say = (role: ChannelRole, because: string, isSure = true): Judged => ({
    column,
    role,
    because,
    isSure,
    shape,
  });
  if (column.kind === "stamp") return say("other", "times");
  if (column.kind === "text") return say("other", "words");
  if (shape.count === 0)
    return say(hasTemperatureWord(column) ? "temperature" : "other", "no number in it", false);
  return judgeNumbers(column, say);
}

function hasTemperatureWord(column: Column): boolean {
  return columnUnit(column) !== null || WORDS.temperature.test(column.name);
}

function judgeNumbers(
  column: Column,
  say: (role: ChannelRole, because: string, isSure?: boolean) => Judged,
): Judged {
  const { name, unitText } = column;
  const plain = name.replace(/_/g, " ");
  const unit = columnUnit(column);
  const isOther = unit === null && (OTHER_UNIT.test(unitText) || OTHER_UNIT_IN_NAME.test(name));
  if (WORDS.coldJunction.test(plain)) return say("cold-junction", "its name says so");
  if (WORDS.output.test(plain) && unit === null) return say("output", "its name says so");
  if (/^[([]?%[)\]]?$/.test(unitText.trim()) || /%/.test(name))
    return say("output", "its unit is %");
  if (WORDS.setPoint.test(plain) && !isOther) return say("set-point", "its name says so");
  if (isOther) return say("other", "its unit is none of temperature");
  if (unit !== null) return say("temperature", "its unit is one of temperature");
  if (WORDS.nothing.test(plain)) return say("other", "its name says so");
  if (WORDS.temperature.test(plain)) return say("temperature", "its name says so");
  return judgeByShape(column, say);
}

/** Share of numbers beside their like from which the rest are no readings, as 9999. */
const MOSTLY_STEADY = 0.75;

function judgeByShape(
  column: Column,
  say: (role: ChannelRole, because: string, isSure?: boolean) => Judged,
): Judged {
  const steady = steadyValues(column.numbers);
  const known = column.numbers.filter((value) => !Number.isNaN(value));
  const values = steady.length < MOSTLY_STEADY * known.length ? known : steady;
  const shape = shapeOf(values);
  const range = shape.greatest - shape.least;
  const wavers = wavering(values) > 0.12 * range;
  if (countsByOne(shape)) return say("other", "it counts the rows by one");
  if (shape.greatest <= 60 && shape.least >= 5 && range < 30)
    return say("other", "it stays near room temperature", false);
  if (shape.greatest <= 100.5 && shape.least >= -0.5 && (range <= 1 || wavers))
    return say("output", "it jumps about between 0 and 100", false);
  if (range < 30) return say("other", HARDLY, false);
  if (jumpsOnce(column.numbers)) return say("set-point", STRAIGHT, false);
  if (shape.greatest > 3300 || shape.least < -480)
    return say("other", "too large for a kiln", false);
  if (wavers) return say("other", JUMPS, false);
  return say("temperature", "it changes smoothly, as a kiln does", false);
}

/** Whether numbers count the rows, from the first or, in a log with the newest row first, from the last. */
function countsByOne({ isWhole, medianStep, risingShare, steadyShare }: Shape): boolean {
  return isWhole && Math.abs(medianStep) === 1 && (risingShare > 0.97 || steadyShare < 0.03);
}

/** Size by which a quarter of the numbers are off the line of their two neighbours. */
function wavering(values: Float64Array): number {
  const bends = new Float64Array(Math.max(0, values.length - 2));
  for (let i = 0; i < bends.length; i++)
    bends[i] = Math.abs(
      (values[i + 1] as number) - ((values[i] as number) + (values[i + 2] as number)) / 2,
    );
  return bends.sort()[Math.floor(0.75 * bends.length)] ?? 0;
}
