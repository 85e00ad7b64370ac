/**
 * A table of readings in a small part of its size: lines that differ from the one before in nothing
 * but digits are kept as the differences of their numbers, column by column.
 */
export interface PackedLog {
  /** What stands before the decimals of its numbers. */
  readonly mark: "." | ",";
  /** A line as it is, and how many after it differ from the one before in digits alone. */
  readonly runs: readonly (readonly [line: string, more: number])[];
  /** Differences of the numbers of these lines by their place in the line, as letters. */
  readonly columns: readonly string[];
}

/** A log packed; `unpackedLog` gives the very same text again. */
export function packedLog(text: string): PackedLog {
  const runs: [string, number][] = [];
  const columns: number[][] = [];
  const mark = text.includes(";") ? "," : ".";
  let before: Line | null = null;
  for (const line of text.split("\n")) {
    const now = lineOf(line, mark);
    const run = runs.at(-1);
    if (before !== null && run !== undefined && before.shape === now.shape) {
      run[1]++;
      for (const [at, number] of now.numbers.entries()) {
        columns[at] ??= [];
        columns[at].push(number - before.numbers[at]!);
      }
    } else runs.push([line, 0]);
    before = now;
  }
  return { mark, runs, columns: columns.map((column) => column.map(letterOf).join("")) };
}

/** The text of a packed log. */
export function unpackedLog({ mark, runs, columns }: PackedLog): string {
  const lines: string[] = [];
  const differences = columns.map(differencesOf);
  const taken = columns.map(() => 0);
  for (const [first, more] of runs) {
    lines.push(first);
    const pieces = first.split(NUMBERS[mark]);
    const numbers = pieces.map((piece) => amountOf(piece, mark));
    for (let row = 0; row < more; row++) {
      for (let piece = 1; piece < pieces.length; piece += 2) {
        const column = (piece - 1) / 2;
        const difference = differences[column]?.[taken[column]!] ?? 0;
        taken[column] = taken[column]! + 1;
        numbers[piece] = numbers[piece]! + difference;
        if (difference !== 0) pieces[piece] = written(numbers[piece]!, pieces[piece]!, mark);
      }
      lines.push(pieces.join(""));
    }
  }
  return lines.join("\n");
}

/** Numbers whose digits are exact together; every second piece of a line split by them is one. */
const NUMBERS = { ".": /(\d{1,8}\.\d{1,7}|\d{1,15})/, ",": /(\d{1,8},\d{1,7}|\d{1,15})/ };

type Mark = PackedLog["mark"];

/** A number without its decimal mark. */
function amountOf(piece: string, mark: Mark): number {
  return Number(piece.replace(mark, ""));
}

/** A number in as many digits as another, with its mark in the same place. */
function written(amount: number, like: string, mark: Mark): string {
  const at = like.indexOf(mark);
  if (at < 0) return String(amount).padStart(like.length, "0");
  const digits = String(amount).padStart(like.length - 1, "0");
  return digits.slice(0, at) + mark + digits.slice(at);
}

/** Letters for 0, −1, 1, −2, 2 and so on: none that text in quotes has to escape. */
const LETTERS =
  "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789!#%&*+,-./:;=>?@[]^_{|}~";

function letterOf(difference: number): string {
  return LETTERS[difference < 0 ? -2 * difference - 1 : 2 * difference] ?? `(${difference})`;
}

function differencesOf(column: string): readonly number[] {
  return (column.match(/\([^)]*\)|./g) ?? []).map((letter) => {
    if (letter.startsWith("(")) return Number(letter.slice(1, -1));
    const at = LETTERS.indexOf(letter);
    return at % 2 === 0 ? at / 2 : -(at + 1) / 2;
  });
}

interface Line {
  /** Everything but the digits themselves: what stands between them, and how many they are. */
  readonly shape: string;
  readonly numbers: readonly number[];
}

function lineOf(line: string, mark: Mark): Line {
  const pieces = line.split(NUMBERS[mark]);
  return {
    shape: pieces
      .map((piece, at) => (at % 2 === 0 ? piece : piece.replaceAll(/\d/g, "\0")))
      .join(""),
    numbers: pieces.filter((_, at) => at % 2 === 1).map((piece) => amountOf(piece, mark)),
  };
}
