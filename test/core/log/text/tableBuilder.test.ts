import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byteTape } from "../../../../src/core/log/text/bytes.ts";
import { cellSplitter } from "../../../../src/core/log/text/cells.ts";
import { stampAt } from "../../../../src/core/log/text/columnStores.ts";
import { findLayout } from "../../../../src/core/log/text/layout.ts";
import type { Table } from "../../../../src/core/log/text/logTable.ts";
import { recordScanner } from "../../../../src/core/log/text/recordScanner.ts";
import { recordsOf } from "../../../../src/core/log/text/records.ts";
import { type TableForm, tableBuilder } from "../../../../src/core/log/text/tableBuilder.ts";
import { splitQuoted } from "../../../../src/node/readLogChunks.ts";

const OPENERS = ",;\t|";

interface Dialect {
  readonly delimiter: string;
  readonly decimal: "." | ",";
}

function formOf(text: string, { delimiter, decimal }: Dialect): TableForm | null {
  const split = cellSplitter(delimiter, splitQuoted);
  const layout = findLayout(recordsOf(text, OPENERS).texts, split, decimal);
  return layout === null
    ? null
    : { layout, delimiter, decimal, split, openers: OPENERS, textAt: () => "" };
}

/** With a splitter that has not seen a row yet: some look at the rows before. */
function anew(form: TableForm): TableForm {
  return { ...form, split: cellSplitter(form.delimiter, splitQuoted) };
}

/** The table by the patient way alone: every record as text. */
function byText(text: string, form: TableForm): Table {
  const { texts, lines } = recordsOf(text, OPENERS);
  const textAt = (line: number) => (texts[lines.indexOf(line)] as string).slice(0, 60);
  const builder = tableBuilder({ ...anew(form), textAt });
  texts.forEach((record, at) => {
    if (at >= form.layout.bodyStart) builder.addText(record, lines[at] as number);
  });
  return builder.finish();
}

/** The table from bytes that come in parts, by the quick way wherever it goes. */
function byBytes(
  text: string,
  form: TableForm,
  cuts: readonly number[],
): Table & { quick: number } {
  const tape = byteTape();
  const decode = (bytes: Uint8Array) => new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
  const textAt = (line: number) =>
    (recordsOf(decode(tape.fromLine(line)), OPENERS).texts[0] ?? "").slice(0, 60);
  const builder = tableBuilder({ ...anew(form), textAt });
  let record = 0;
  let quick = 0;
  const scanner = recordScanner(
    {
      quick: (bytes, from, line) => {
        const end = record < form.layout.bodyStart ? -1 : builder.addBytes(bytes, from, line);
        if (end >= 0) quick++;
        return end;
      },
      text: (each, line) => {
        if (record++ >= form.layout.bodyStart) builder.addText(each, line);
      },
      tooLong: () => {
        throw new Error("no line is that long");
      },
    },
    { decode, openers: OPENERS, tape },
  );
  const bytes = new TextEncoder().encode(text);
  let from = 0;
  for (const cut of [...cuts.map((each) => each % (bytes.length + 1)), bytes.length].sort(
    (a, b) => a - b,
  )) {
    scanner.push(bytes.subarray(from, cut));
    from = cut;
  }
  scanner.end();
  return { ...builder.finish(), quick };
}

/** All that a table holds, as plain values; −0 and 0 told apart by `toEqual`. */
function contents(table: Table) {
  const rows = Array.from({ length: table.rowCount }, (_, row) => row);
  return {
    lines: rows.map(table.lineOf),
    texts: rows.map(table.textOf),
    rejected: table.rejected.listed,
    columns: table.columns.map((column) => ({
      name: column.name,
      kind: column.kind,
      numbers: [...column.numbers],
      stamps: column.kind === "stamp" ? rows.map((row) => stampAt(column.stamps, row)) : [],
      words: rows.map((row) => column.words.known?.[column.words.wordOf[row] as number]),
      suffix: column.suffix,
      missing: [...column.missingWords],
    })),
  };
}

const digits = (most: number) => fc.stringMatching(new RegExp(`^[0-9]{1,${most}}$`));
const number = fc
  .tuple(fc.constantFrom("", "-", "+"), digits(18), fc.constantFrom("", "."), digits(9))
  .map(([sign, whole, point, part]) => sign + whole + (point === "" ? "" : point + part));
const two = digits(2);
const date = fc
  .tuple(fc.constantFrom("-", "/", "."), digits(4), two, digits(4))
  .map(([between, ...parts]) => parts.join(between));
const clock = fc
  .tuple(digits(4), two, fc.option(two), fc.option(digits(10)), fc.constantFrom(".", ",", ":"))
  .map(
    ([h, m, s, f, mark]) =>
      [h, m, ...(s === null ? [] : [s])].join(":") + (f === null ? "" : mark + f),
  );
const tail = fc.constantFrom(
  "",
  "",
  "",
  " AM",
  "pm",
  " p.m.",
  "Z",
  "z",
  "+02:00",
  "-0530",
  "-00:00",
  "+1",
  " +02",
);
const stamp = fc
  .tuple(fc.option(date), fc.constantFrom(" ", "T", "  ", "_", ""), fc.option(clock), tail)
  .map(
    ([day, between, time, end]) => (day ?? "") + (day && time ? between : "") + (time ?? "") + end,
  );
const usualStamp = fc
  .tuple(
    fc.integer({ min: 1, max: 28 }),
    fc.integer({ min: 0, max: 23 }),
    fc.integer({ min: 0, max: 59 }),
  )
  .map((parts) => parts.map((part) => String(part).padStart(2, "0")))
  .map(([day, hour, minute]) => `2026-03-${day} ${hour}:${minute}:30`);
const odd = fc.constantFrom(
  "",
  " ",
  "NaN",
  "OPEN",
  "---",
  "21 °C",
  "70F",
  "1,234.5",
  "1.234,5",
  "1e3",
  "0x10",
  "−5",
  ".5",
  "5.",
  "-",
  "heating",
  "hold a while",
  "#",
  "# a remark",
  "//",
  "%",
  "\u00a05",
  "\t",
  "'",
  "1d 02:03:00",
  "PT2H",
  "20260314T170500",
);
const cell = fc.oneof(
  { weight: 4, arbitrary: number },
  { weight: 2, arbitrary: usualStamp },
  { weight: 2, arbitrary: stamp },
  { weight: 1, arbitrary: odd },
);
const dressed = fc
  .tuple(cell, fc.constantFrom("", "", "", "", " ", '"', '"', '" ', '""', "\n"), fc.boolean())
  .map(([text, dress, before]) => {
    if (dress === '"') return `"${text}"`;
    if (dress === '" ') return `"${text}" `;
    if (dress === '""') return before ? `"${text}""x"` : `"${text}`;
    return before ? dress + text : text + dress;
  });
const dialects = fc.constantFrom<Dialect>(
  { delimiter: ",", decimal: "." },
  { delimiter: ";", decimal: "," },
  { delimiter: "\t", decimal: "." },
  { delimiter: "|", decimal: "," },
  { delimiter: " ", decimal: "." },
  { delimiter: "  ", decimal: "." },
  { delimiter: ",", decimal: "," },
  { delimiter: "^", decimal: "." },
);

/** A log whose first rows are plain and whose others hold anything. */
const logs = fc
  .record({
    dialect: dialects,
    words: fc.boolean(),
    rows: fc.array(fc.array(dressed, { minLength: 0, maxLength: 5 }), { maxLength: 25 }),
    plain: fc.array(fc.tuple(usualStamp, number, number), { minLength: 4, maxLength: 30 }),
    lineEnd: fc.constantFrom("\n", "\r\n", "\r", "\n\n"),
    last: fc.boolean(),
  })
  .map(({ dialect, words, rows, plain, lineEnd, last }) => {
    const inDialect = (text: string) => (dialect.decimal === "," ? text.replace(".", ",") : text);
    const all = [
      ["Time", "Top (°C)", "Base", ...(words ? ["State"] : [])],
      ...plain.map(([time, a, b], i) => [
        time,
        inDialect(a),
        inDialect(b),
        ...(words ? [i % 5 < 3 ? "heating" : "hold"] : []),
      ]),
      ...rows.map((cells) => cells.map(inDialect)),
    ];
    const text =
      all.map((cells) => cells.join(dialect.delimiter)).join(lineEnd) + (last ? lineEnd : "");
    return { dialect, text };
  });

describe("the quick way through bytes", () => {
  it("gives the table that the patient way through text gives, for any log and any parts", () => {
    let quickRows = 0;
    fc.assert(
      fc.property(logs, fc.array(fc.nat(100_000), { maxLength: 6 }), ({ dialect, text }, cuts) => {
        const form = formOf(text, dialect);
        if (form === null) return;
        const { quick, ...table } = byBytes(text, form, cuts);
        quickRows += quick;
        expect(contents(table)).toEqual(contents(byText(text, form)));
      }),
      { numRuns: 600 },
    );
    // Else nothing would have been compared.
    expect(quickRows).toBeGreaterThan(1500);
  });

  it("gives the same table wherever the bytes are cut in two", () => {
    const text =
      'Time;Top;Base\r\n2026-03-14 17:05:00;20,5;"19,8"\r\n14.03.2026 17:05;"20;5";+3\r2026-03-14T17:05:02.25Z;-0;7 °C\n"2026-03-14 17:05:03";"a\nb";1\n\n5;;\r\n';
    const form = formOf(text, { delimiter: ";", decimal: "," });
    if (form === null) throw new Error("no table");
    const whole = contents(byText(text, form));
    for (let cut = 0; cut <= new TextEncoder().encode(text).length; cut++)
      expect(contents(byBytes(text, form, [cut]))).toEqual({ ...whole });
  });

  it("leaves a clock together with its AM or PM between blanks", () => {
    const text = `Time State Temp\n${"5:00:00 off 20.5\n".repeat(5)}5:00:00 am 21.5\n5:00:00 at 22.5\n`;
    const form = formOf(text, { delimiter: " ", decimal: "." });
    if (form === null) throw new Error("no table");
    expect(form.layout.kinds).toEqual(["stamp", "text", "number"]);
    expect(contents(byBytes(text, form, []))).toEqual(contents(byText(text, form)));
  });

  it("reads every decimal of up to fifteen digits as its nearest number", () => {
    const form = formOf("t,v\n1,2\n2,3\n", { delimiter: ",", decimal: "." });
    if (form === null) throw new Error("no table");
    fc.assert(
      fc.property(fc.array(number, { minLength: 1, maxLength: 40 }), (cells) => {
        const table = byBytes(
          `t,v\n${cells.map((each, i) => `${i},${each}`).join("\n")}`,
          form,
          [],
        );
        expect([...(table.columns[1]?.numbers ?? [])]).toEqual(cells.map(Number));
      }),
      { numRuns: 300 },
    );
  });
});
