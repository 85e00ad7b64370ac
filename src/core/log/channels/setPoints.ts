import { shapeOf, steadyValues } from "../../math/statistics.ts";
import { exactShare, lastDigit } from "./exactLines.ts";
import { wildStretch } from "./wildRows.ts";

/** A column that may be a temperature or a programme. */
export interface OpenColumn {
  readonly name: string;
  readonly values: Float64Array;
}

/** Into how many places a log is cut, from fine to coarse: a ripple shows at one of them. */
const PLACES = [240, 80, 30] as const;
/** Share of runs of a set point on exact lines; the corners of its ramps break a few. */
const EXACT_SHARE = 0.6;
/** Share below which a column surely wavers; between the two it may be a programme with many corners. */
const WAVERING_SHARE = 0.35;
/** Rows below which columns without names must differ much to be told apart. */
const SHORT_ROWS = 40;
/** Measured columns lie on lines less than this many times as often; of one series of names, much less. */
const LESS_OFTEN = 0.4;
const MUCH_LESS_OFTEN = 0.25;
/** Share of runs on lines of a column that wavers throughout. */
const HARDLY_EVER = 0.05;
/** Least change in the unit of the log: what hardly moves cannot be told from a kiln that holds. */
const LEAST_RANGE = 50;

/** What was found of set points among temperatures. */
export interface FoundSetPoints {
  readonly setPoints: readonly Float64Array[];
  /** Columns of open names that may as well be set points: nothing in them shows that they were measured. */
  readonly doubtful: readonly string[];
}

/**
 * The columns among temperatures that are programmes and not measured: they run in exact lines and
 * steps, to within their last digit, while the others waver about. None when all do or none does.
 * A column whose name is that of a thermocouple or its place is measured, however straight it runs.
 * @param clock Even count of time for each row; null to take the rows as even.
 */
export function setPointsAmong(
  columns: readonly OpenColumn[],
  clock: Float64Array | null,
): FoundSetPoints {
  const calm = columns.filter(
    ({ values }) =>
      wildStretch(
        values,
        columns.filter((other) => other.values !== values).map((other) => other.values),
      ) === null,
  );
  const open = calm.filter(({ name }) => isOpenName(name, calm));
  if (calm.length < 2 || open.length === 0) return { setPoints: [], doubtful: [] };
  const parked = open.filter((column) => isParked(column, calm) || isStill(column, calm));
  if (parked.length > 0 && parked.length < calm.length && areLikely(parked, calm, []))
    return { setPoints: parked.map(({ values }) => values), doubtful: [] };
  const digits = calm.map(({ values }) => lastDigit(values));
  // Off the lines however closely it is looked at, or up and down: measured.
  const wavers = new Set<OpenColumn>();
  const offOnce = new Set<OpenColumn>();
  for (const holds of [false, true])
    for (const places of PLACES) {
      const shares = calm.map(({ values }, c) =>
        exactShare(values, digits[c]!, { clock, places, holds }),
      );
      const found = exactColumns(calm, shares).filter((column) => open.includes(column));
      if (found.length > 0 && found.length < calm.length && areLikely(found, calm, shares))
        return { setPoints: found.map(({ values }) => values), doubtful: [] };
      calm.forEach((column, c) => {
        const isOff = !holds && shares[c]! < WAVERING_SHARE;
        if (isOff && (offOnce.has(column) || turnsOften(column.values))) wavers.add(column);
        if (isOff) offOnce.add(column);
      });
    }
  const doubtful = open.filter((column) => !wavers.has(column) || holdsExactly(column, calm));
  return { setPoints: [], doubtful: doubtful.map(({ name }) => name) };
}

/** Several set points are hardly likely, nor is one of `T1`, `T2`, … unless the others waver throughout: it is zones that run straight. */
function areLikely(
  found: readonly OpenColumn[],
  all: readonly OpenColumn[],
  shares: readonly number[],
): boolean {
  const [only] = found;
  if (only === undefined || found.length > 1 || !isFollowed(only, all)) return false;
  const isOther = (column: OpenColumn) => column !== only;
  const isOfSeries =
    stem(only.name) === "t" && all.some((other) => isOther(other) && stem(other.name) === "t");
  const isOff = (column: OpenColumn, c: number) =>
    (shares[c] ?? 1) < HARDLY_EVER || turnsOften(column.values);
  return !isOfSeries || all.every((column, c) => !isOther(column) || isOff(column, c));
}

/** Share of a set point's range that a kiln moves at least, when it follows at all. Own choice. */
const FOLLOWED_SHARE = 0.25;

/** Whether another column moves about as far: a programme beside which nothing moves is the kiln. */
function isFollowed(column: OpenColumn, all: readonly OpenColumn[]): boolean {
  const rangeOf = ({ values }: OpenColumn) => {
    const { greatest, least } = shapeOf(steadyValues(values));
    return greatest - least;
  };
  const least = FOLLOWED_SHARE * rangeOf(column);
  return all.some((other) => other !== column && rangeOf(other) >= least);
}

/** Names of thermocouples, of what they measure, and of their places in a kiln. */
const PLACE_NAME =
  /thermo|\btc ?\d*|tc\d|zone|kiln|oven|furnace|chamber|probe|sensor|pyro|\b(?:top|middle|mid|bottom|upper|lower|front|back|rear|shelf|lid|floor|door|left|right)\b|\bpv\b|ofen|\bist\b|actual|measured|process/i;
/** Names that say nothing of what a column is, though several have them. */
const BARE_NAME = /^(?:t|column|col|channel|ch|input|in|analog|ai|value|data)?$/i;

/** Whether a name leaves open that the column is a set point: no place, and not one of several alike. */
function isOpenName(name: string, all: readonly OpenColumn[]): boolean {
  if (PLACE_NAME.test(name.replaceAll("_", " "))) return false;
  const own = stem(name);
  if (/^column \d+$/.test(name) || BARE_NAME.test(own)) return true;
  return !all.some((other) => other.name !== name && stem(other.name) === own);
}

/** Whether a column is exactly one value throughout while another one moves, or exactly 0 beside warm ones: a programme that is off, or stuck. */
function isStill({ values }: OpenColumn, others: readonly OpenColumn[]): boolean {
  if (!isConstant(values)) return false;
  const warm = others.filter((other) => shapeOf(steadyValues(other.values)).least > LEAST_RANGE);
  if (warm.length === others.length - 1 && values.find((value) => !Number.isNaN(value)) === 0)
    return true;
  return others.some((other) => {
    const { greatest, least } = shapeOf(steadyValues(other.values));
    return greatest - least > LEAST_RANGE;
  });
}

/** Fewest rows, and share of all, at exactly one value beside a column that moves, as no thermocouple writes. */
const EXACT_HOLD = { rows: 20, share: 0.05, change: 5 };

/** Whether a column stays long at exactly one value while all others go on moving: a programme, or a thermocouple that is stuck. */
function holdsExactly({ values }: OpenColumn, others: readonly OpenColumn[]): boolean {
  let from = 0;
  for (let at = 1; at <= values.length; at++) {
    if (values[at] === values[from] || Number.isNaN(values[at])) continue;
    const isLong = at - from >= Math.max(EXACT_HOLD.rows, EXACT_HOLD.share * values.length);
    const moves = (other: OpenColumn) => {
      const { greatest, least } = shapeOf(steadyValues(other.values.subarray(from, at)));
      return greatest - least > EXACT_HOLD.change;
    };
    if (isLong && others.every((other) => other.values === values || moves(other))) return true;
    from = at;
  }
  return false;
}

/** Share of its range that a set point jumps in one step when its programme begins or ends. */
const PARKED_SHARE = 0.5;
/** Fewest rows to each side of the jump; fewer are spikes. */
const PARKED_ROWS = 5;

/**
 * Whether a column jumps once by most of its range from one row to the next and is exactly one value
 * on one side of it, while no other column jumps there: a programme that begins or has ended.
 */
function isParked({ values }: OpenColumn, others: readonly OpenColumn[]): boolean {
  if (!jumpsOnce(values)) return false;
  const { at, size } = largestJump(values);
  return others.every(
    (other) => other.values === values || !(jumpAt(other.values, at) > PARKED_SHARE * size),
  );
}

/** Whether a column jumps by most of its range from one row to the next, and is exactly one value on one side. */
export function jumpsOnce(values: Float64Array): boolean {
  const { at, size } = largestJump(values);
  const { greatest, least } = shapeOf(steadyValues(values));
  const range = greatest - least;
  if (!(range > LEAST_RANGE && size > PARKED_SHARE * range)) return false;
  return isConstant(values.subarray(0, at)) || isConstant(values.subarray(at));
}

/** Turns from up to down and back of a programme: its corners, and a share of rows out of order. */
const TURNS = { most: 8, share: 0.02 };

/** Whether a column goes up and down more often than a programme does. */
function turnsOften(values: Float64Array): boolean {
  let turns = 0;
  let way = 0;
  let last = Number.NaN;
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    const sign = Math.sign(value - last);
    if (sign * way < 0) turns++;
    if (sign === 1 || sign === -1) way = sign;
    last = value;
  }
  return turns > TURNS.most + TURNS.share * values.length;
}

function isConstant(values: Float64Array): boolean {
  const known = values.filter((value) => !Number.isNaN(value));
  return known.length >= PARKED_ROWS && known.every((value) => value === known[0]);
}

function jumpAt(values: Float64Array, at: number): number {
  return Math.abs(values[at]! - values[at - 1]!);
}

function largestJump(values: Float64Array): { readonly at: number; readonly size: number } {
  let at = 0;
  for (let i = 1; i < values.length; i++)
    if (at === 0 || jumpAt(values, i) > jumpAt(values, at)) at = i;
  return { at, size: jumpAt(values, at) };
}

function exactColumns(
  columns: readonly OpenColumn[],
  shares: readonly number[],
): readonly OpenColumn[] {
  const loosest = Math.max(...shares.filter((share) => !(share >= EXACT_SHARE)));
  if (!Number.isFinite(loosest)) return [];
  return columns.filter(({ name, values }, c) => {
    const share = shares[c]!;
    if (!(share >= EXACT_SHARE)) return false;
    const { greatest, least } = shapeOf(values);
    const isOfSeries = columns.some(
      (other) => other.name !== name && stem(other.name) === stem(name),
    );
    const isShort = values.length < SHORT_ROWS && /^column \d+$/.test(name);
    const isApart = loosest < (isOfSeries || isShort ? MUCH_LESS_OFTEN : LESS_OFTEN) * share;
    const isOfSize = greatest - least > LEAST_RANGE;
    return share >= EXACT_SHARE && isOfSize && isApart && !turnsOften(values);
  });
}

/** A name without its number: columns of one stem are mostly of one kind. */
function stem(name: string): string {
  return /^column \d+$/.test(name)
    ? name
    : name
        .replace(/[([][^)\]]*[)\]]/g, "")
        .replace(/[\d\s_().-]+/g, "")
        .toLowerCase();
}
