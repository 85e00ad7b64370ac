import { parseStamp } from "./stamp.ts";

/** The mark between whole number and fraction. */
export type DecimalMark = "." | ",";

/** What a cell holds. */
export type CellKind = "empty" | "number" | "grouped" | "stamp" | "missing" | "text";

/** Words that instruments and spreadsheets write where a reading is missing. */
const MISSING =
  /^(?:nan|-?1\.#(?:ind|qnan|inf).*|[+-]?inf(?:inity)?|n\/?a|n\.a\.|null|none|nil|[-–—._*?]+|o\.?l\.?|open|over(?:load|range|flow)?|under(?:range|flow)?|err(?:or)?[ .:]?\d*|fail(?:ed)?|fault|burn-?out|bad|invalid|no ?data|missing|disconnected|off ?line|#(?:div\/0!|n\/a|value!|ref!|num!|null!|name\?|wert!))$/i;

/** Blanks and the apostrophe that stand between thousands, beside the mark that is not the decimal one. */
const GROUP_BLANKS = " '’\\u00a0\\u2007\\u2009\\u202f";
/** A unit of temperature, a percent sign, a flag of one letter, or a unit of time behind a number. */
const SUFFIX = "([°º˚\ufffdÂ]{0,2}\\s?[CFK]|℃|℉|degC?F?|degrees? [CF])|%|[a-zA-Z*!]|min|sec|hrs?";

const NUMBER: Readonly<Record<DecimalMark, RegExp>> = {
  ".": numberShape("\\.", ","),
  ",": numberShape(",", "."),
};

function numberShape(decimal: string, group: string): RegExp {
  const groups = `\\d{1,3}(?:[${group}${GROUP_BLANKS}]\\d{3})+`;
  return new RegExp(
    `^([+-]?)(?:(${groups})|(\\d*))(?:${decimal}(\\d*))?(e[+-]?\\d+)?\\s*(?:${SUFFIX})?$`,
    "i",
  );
}

/** A cell's number with what was seen beside it. */
export interface CellNumber {
  readonly value: number;
  readonly isGrouped: boolean;
  /** Unit of temperature written in the cell. */
  readonly suffix: "C" | "F" | "K" | null;
}

/** The number in a cell, or NaN; quick for plain numbers, patient with signs, groups and units. */
export function parseNumber(cell: string, decimal: DecimalMark): number {
  const plain = plainNumber(cell, decimal);
  if (!Number.isNaN(plain)) return plain;
  return patientNumber(cell, decimal)?.value ?? Number.NaN;
}

/** The number in a cell if it is written plainly, else NaN; the quick way for most cells. */
export function plainNumber(cell: string, decimal: DecimalMark): number {
  const last = cell.charCodeAt(cell.length - 1);
  // Ends in a digit: shuts out blanks, words, and units; Number() itself would take "" for 0.
  if (!(last >= 48 && last <= 57)) return Number.NaN;
  const second = cell.charCodeAt(1) | 32;
  if (second === 120 || second === 98 || second === 111) return Number.NaN;
  if (decimal === ".") return finite(Number(cell));
  if (cell.includes(".")) return Number.NaN;
  return finite(Number(cell.replace(",", ".")));
}

/** The number in a cell that is written with groups, an odd minus, a unit or a flag; else null. */
export function patientNumber(cell: string, decimal: DecimalMark): CellNumber | null {
  const trimmed = cell.trim().replace(/^[−–]/, "-");
  if (trimmed.length === 0 || trimmed.length > 40) return null;
  const match = NUMBER[decimal].exec(trimmed);
  if (match === null) return null;
  const [, sign, groups, whole, fraction, exponent, suffix] = match;
  const digits = groups === undefined ? (whole ?? "") : groups.replace(/\D/g, "");
  if (digits === "" && (fraction ?? "") === "") return null;
  if (groups?.startsWith("0")) return null;
  const value = Number(`${sign}${digits || "0"}.${fraction || "0"}${exponent ?? ""}`);
  if (!Number.isFinite(value)) return null;
  return {
    value,
    isGrouped: groups !== undefined,
    suffix: suffix === undefined ? null : temperatureLetter(suffix),
  };
}

/** The scale that a written unit means, or null. */
function temperatureLetter(suffix: string): "C" | "F" | "K" | null {
  if (/℃|c$/i.test(suffix)) return "C";
  if (/℉|f$/i.test(suffix)) return "F";
  return /k$/i.test(suffix) ? "K" : null;
}

/** Whether a cell says in words that there is no reading. */
export function isMissingWord(cell: string): boolean {
  const trimmed = cell.trim();
  return trimmed.length > 0 && trimmed.length < 16 && MISSING.test(trimmed);
}

/** Cells that were looked at last: the same ones come again for each way to cut the rows. */
const KNOWN: Readonly<Record<DecimalMark, Map<string, CellKind>>> = {
  ".": new Map(),
  ",": new Map(),
};
const MOST_KNOWN = 10_000;
const LONGEST_KNOWN = 48;

/** What a cell holds, under a decimal mark. */
export function cellKind(cell: string, decimal: DecimalMark): CellKind {
  if (cell === "" || cell.trim() === "") return "empty";
  if (!Number.isNaN(plainNumber(cell, decimal))) return "number";
  const known = KNOWN[decimal];
  const before = known.get(cell);
  if (before !== undefined) return before;
  const kind = patientKind(cell, decimal);
  if (known.size >= MOST_KNOWN) known.clear();
  if (cell.length <= LONGEST_KNOWN) known.set(cell, kind);
  return kind;
}

function patientKind(cell: string, decimal: DecimalMark): CellKind {
  const number = patientNumber(cell, decimal);
  if (number !== null) return number.isGrouped ? "grouped" : "number";
  if (isMissingWord(cell)) return "missing";
  return parseStamp(cell) === null ? "text" : "stamp";
}

function finite(value: number): number {
  return Number.isFinite(value) ? value : Number.NaN;
}
