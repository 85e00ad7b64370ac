import { seededEven } from "../../src/core/math/distributions.ts";

/** A damaged log. */
export interface Mutant {
  readonly bytes: Uint8Array;
  /** What was done to it, in order. */
  readonly steps: readonly string[];
}

/** Damage to a text in which every character stands for one byte. */
type Mutation = (text: string, draw: Draw) => string;

/** Numbers from the seed. */
interface Draw {
  /** A whole number from 0, below `end`. */
  readonly below: (end: number) => number;
  readonly of: <T>(choices: readonly T[]) => T;
}

/** Most acts of damage to one log. */
const MOST_STEPS = 5;
/** Characters of a line that is far too long. */
const HUGE = 20_000;

/** Any character as the bytes that UTF-8 has for it. */
function utf8(text: string): string {
  return Buffer.from(text, "utf8").toString("latin1");
}

const BYTE_ORDER_MARKS = ["\u00ef\u00bb\u00bf", "\u00ff\u00fe", "\u00fe\u00ff"];

/** Multi-byte characters that break off: of two, three and four bytes, and of Shift-JIS. */
const BROKEN_OFF = ["\u00c2", "\u00e2\u0084", "\u00f0\u009f\u0094", "\u0081"];

const CELLS: readonly string[] = [
  ..."1e308 -1e308 1e309 1e-320 -0 -0.0 +5 0x1F 1_000 1e5 5E3 .5 5. -. . , - + ' \"".split(" "),
  `1${"0".repeat(400)}`,
  "9".repeat(5000),
  `0.${"3".repeat(3000)}`,
  ..."NaN nan Infinity -Infinity inf NULL null true OL #N/A #DIV/0! ---".split(" "),
  ..."__proto__ constructor toString hasOwnProperty".split(" "),
  '=HYPERLINK("http://x")',
  "=1+1",
  "@SUM(A1)",
  "+cmd|'/c x'!A0",
  "<script>alert(1)</script>",
  "\u001b[31mred\u001b[0m",
  "\u0007",
  "\u009b2J",
  utf8("\u202eabc\u2066"),
  utf8("\u200b\ufeff\u00ad"),
  utf8("１２３"),
  utf8("٣٤"),
  utf8("−5"),
  utf8("20 °C"),
  utf8("½"),
  ..."2026-02-30 2026-13-01 0000-00-00 31/02/2026 29/02/2027 99:99:99 24:00:00 -1:00".split(" "),
  "2026-03-14T17:05:60",
  "9999-12-31 23:59:59",
  "275760-09-14",
  "1969-12-31",
  "32767",
  "9999",
  "-273.16",
  "1850.1",
  "",
  " ",
  "0",
];

const AT_BYTES: Readonly<Record<string, Mutation>> = {
  "flip a bit": (text, draw) => {
    const at = draw.below(text.length);
    const flipped = text.charCodeAt(at) ^ (1 << draw.below(8));
    return spliced(text, at, { cut: 1, put: String.fromCharCode(flipped & 0xff) });
  },
  "put a byte in": (text, draw) =>
    spliced(text, draw.below(text.length + 1), { put: String.fromCharCode(draw.below(256)) }),
  "cut bytes out": (text, draw) =>
    spliced(text, draw.below(text.length + 1), { cut: 1 + draw.below(30) }),
  "repeat bytes": (text, draw) => {
    const at = draw.below(text.length + 1);
    const piece = text.slice(at, at + 1 + draw.below(60));
    return spliced(text, at, { put: piece.repeat(1 + draw.below(20)) });
  },
  "copy a piece elsewhere": (text, draw) => {
    const from = draw.below(text.length + 1);
    const piece = text.slice(from, from + draw.below(400));
    return spliced(text, draw.below(text.length + 1), { put: piece });
  },
  "put zero bytes in": (text, draw) =>
    spliced(text, draw.below(text.length + 1), { put: "\0".repeat(1 + draw.below(600)) }),
  "break a character off": (text, draw) =>
    spliced(text, draw.below(text.length + 1), { put: draw.of(BROKEN_OFF) }),
  "put a byte-order mark in": (text, draw) =>
    spliced(text, draw.of([0, draw.below(text.length + 1)]), { put: draw.of(BYTE_ORDER_MARKS) }),
  "break off": (text, draw) => text.slice(0, draw.below(text.length + 1)),
  "lose the beginning": (text, draw) => text.slice(draw.below(text.length + 1)),
};

const AT_LINES: Readonly<Record<string, Mutation>> = {
  "drop lines": onLines((lines, at, draw) => lines.toSpliced(at, 1 + draw.below(5))),
  "double a line": onLines((lines, at) => lines.toSpliced(at, 0, lines[at] as string)),
  "repeat the first line": onLines((lines, at) => lines.toSpliced(at, 0, lines[0] as string)),
  "swap two lines": onLines((lines, at, draw) => {
    const other = draw.below(lines.length);
    return lines.with(at, lines[other] as string).with(other, lines[at] as string);
  }),
  "put a huge line in": onLines((lines, at, draw) =>
    lines.toSpliced(at, 0, draw.of(["x", "1,", "9", '"', " ", ";", "é"]).repeat(HUGE)),
  ),
  "put blank lines in": onLines((lines, at, draw) =>
    lines.toSpliced(at, 0, ...Array<string>(1 + draw.below(30)).fill(draw.of(["", " ", ",,,,"]))),
  ),
  "open a quote": onLines((lines, at, draw) =>
    lines.with(at, draw.of([`"${lines[at]}`, `${lines[at]}"`, `'${lines[at]}`, `""${lines[at]}`])),
  ),
  "put a remark in": onLines((lines, at, draw) =>
    lines.toSpliced(at, 0, draw.of(["# remark", "// x", "sep=;", "total;5;6", "Time,Temp"])),
  ),
  "mix the line ends": (text, draw) =>
    text.replace(/\r?\n/g, (end) => (draw.below(4) === 0 ? draw.of(["\r", "\r\n", "\n\n"]) : end)),
  "take another delimiter from here": onLines((lines, at, draw) => {
    const other = draw.of([",", ";", "\t", "|", " "]);
    return lines.map((line, i) => (i < at ? line : line.replaceAll(/[,;\t|]/g, other)));
  }),
};

const AT_CELLS: Readonly<Record<string, Mutation>> = {
  "change a cell": (text, draw) => inCell(text, draw, () => draw.of(CELLS)),
  "lengthen a cell": (text, draw) => inCell(text, draw, (cell) => cell + draw.of(CELLS)),
  "change many cells": (text, draw) => {
    const cell = draw.of(CELLS);
    const every = 2 + draw.below(20);
    return text.replace(/[^,;\t|\r\n]+/g, (old) => (draw.below(every) === 0 ? cell : old));
  },
  "drop a cell": (text, draw) => inCell(text, draw, () => ""),
  "change a name above": (text, draw) => text.replace(/[a-z]{3,}/i, () => draw.of(CELLS)),
  "change all digits of a line": onLines((lines, at, draw) =>
    lines.with(
      at,
      (lines[at] as string).replaceAll(/\d/g, () => String(draw.below(10))),
    ),
  ),
};

const MUTATIONS = Object.entries({ ...AT_BYTES, ...AT_LINES, ...AT_CELLS });

/** A log damaged one to five times; the same for the same log and seed. */
export function mutantOf(bytes: Uint8Array, seed: number): Mutant {
  const even = seededEven(Math.imul(seed, 0x9e3779b1));
  const below = (end: number) => Math.floor(even() * Math.max(1, end));
  const draw: Draw = { below, of: (choices) => choices[below(choices.length)] as never };
  const steps: string[] = [];
  let text = Buffer.from(bytes).toString("latin1");
  for (let left = 1 + below(MOST_STEPS); left > 0; left--) {
    const [name, mutation] = draw.of(MUTATIONS);
    text = mutation(text, draw);
    steps.push(name);
  }
  return { bytes: Uint8Array.from(Buffer.from(text, "latin1")), steps };
}

function spliced(
  text: string,
  at: number,
  { cut = 0, put = "" }: { readonly cut?: number; readonly put?: string },
): string {
  return text.slice(0, at) + put + text.slice(at + cut);
}

/** A mutation of lines; `at` is one of them. */
function onLines(
  change: (lines: readonly string[], at: number, draw: Draw) => readonly string[],
): Mutation {
  return (text, draw) => {
    const lines = text.split("\n");
    return change(lines, draw.below(lines.length), draw).join("\n");
  };
}

/** A text with one of its cells written anew. */
function inCell(text: string, draw: Draw, write: (cell: string) => string): string {
  const cells = [...text.matchAll(/[^,;\t|\r\n]+/g)];
  const cell = cells[draw.below(cells.length)];
  if (cell === undefined) return text;
  return spliced(text, cell.index, { cut: cell[0].length, put: write(cell[0]) });
}
