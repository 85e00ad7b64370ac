import { describe, expect, it } from "vitest";
import {
  type LogOptions,
  type LogReading,
  rejectedCount,
} from "../../../src/core/log/reading/LogReading.ts";
import { logReader } from "../../../src/core/log/readLog.ts";
import { problemText, type Result } from "../../../src/core/problem.ts";
import { splitQuoted } from "../../../src/node/readLogChunks.ts";
import { choiceOf, firing, pairs, readText, wall, writeLog } from "./logBuilder.ts";

function inParts(
  parts: Iterable<Uint8Array>,
  options: Partial<LogOptions> = {},
): Result<LogReading> {
  const reader = logReader({ name: "log.csv", ...options }, splitQuoted);
  for (const part of parts) reader.push(part);
  return reader.end();
}

function* cut(bytes: Uint8Array, size: number): Iterable<Uint8Array> {
  // One memory for all parts, as a file is read.
  const memory = new Uint8Array(size);
  for (let at = 0; at < bytes.length; at += size) {
    const part = bytes.subarray(at, at + size);
    memory.set(part);
    yield memory.subarray(0, part.length);
  }
}

function readingOf(result: Result<LogReading>): LogReading {
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

const encode = (text: string) => new TextEncoder().encode(text);

/** Rows `time,temperature,note` at one a second, of about 95 bytes. */
function seconds(count: number, row: (i: number, temp: string) => string): string {
  const rows: string[] = [];
  for (let i = 0; i < count; i++) rows.push(row(i, (20 + 1000 * Math.sin(i / 3e4)).toFixed(2)));
  return rows.join("");
}

const NOTE = "all is well ".repeat(7);
const plain = (i: number, temp: string) => `${i},${temp},${NOTE}\n`;
const HEADER = "Time (s),Temp (°C),Note\n";
/** Rows of more than the 4 MB on which everything is decided: these are about 44 000. */
const BEYOND = 60_000;

describe("a log in parts", () => {
  const logs: readonly (readonly [string, Uint8Array])[] = [
    ["plain", encode(writeLog(firing(400)))],
    [
      "with returns and quotes",
      encode(
        writeLog(firing(400), {
          lineEnd: "\r\n",
          header: '"Date","Time","Temp (°C)"',
          time: (s) => `"${wall(s).date}","${wall(s).clock}"`,
        }),
      ),
    ],
    ["in UTF-16", Uint8Array.from(Buffer.from(`\ufeff${writeLog(firing(400))}`, "utf16le"))],
    ["in windows-1252", Uint8Array.from(Buffer.from(writeLog(firing(400)), "latin1"))],
  ];

  it.each(logs)("%s, reads the same in parts of any size", (_, bytes) => {
    const whole = readText(bytes);
    expect(whole.ok).toBe(true);
    for (const size of [1, 2, 3, 7, 64, 4096]) expect(inParts(cut(bytes, size))).toEqual(whole);
  });

  it("reads on beyond the bytes on which all was decided", () => {
    const log = readingOf(inParts(cut(encode(HEADER + seconds(BEYOND, plain)), 99_991)));
    expect(log.rows).toEqual({ total: BEYOND, accepted: BEYOND, rejected: [] });
    const last = BEYOND - 1;
    const expected = Number((20 + 1000 * Math.sin(last / 3e4)).toFixed(2));
    expect(pairs(log).at(-1)).toEqual([last, expected]);
  });

  it("reads UTF-16 on beyond those bytes", () => {
    const text = `\ufeff${HEADER}${seconds(BEYOND, plain)}`;
    const log = readingOf(inParts(cut(Uint8Array.from(Buffer.from(text, "utf16le")), 65_537)));
    expect(log.rows.accepted).toBe(BEYOND);
  });

  it("needs no more once it cannot be read", () => {
    const reader = logReader({ name: "log.csv" }, splitQuoted);
    const words = encode("nothing but words here, and more words\n".repeat(30_000));
    const wanted = Array.from({ length: 6 }, () => reader.push(words));
    expect(wanted).toEqual([true, true, true, false, false, false]);
    const result = reader.end();
    expect(result.ok ? "" : result.problems[0]?.code).toBe("log/no-table");
  });
});

describe("a log that changes on its way", () => {
  const changed = (from: number) => (i: number, temp: string) =>
    i < from ? plain(i, temp) : `${i};${temp.replace(".", ",")};${NOTE}\n`;

  it("is refused with the line when the greater part of what follows is written otherwise", () => {
    const result = inParts([encode(HEADER + seconds(BEYOND, changed(47_000)))]);
    const text = result.ok ? "" : result.problems.map(problemText).join("\n");
    // The header is line 1, so row 47 000 (from 0) is line 47 002.
    expect(text).toContain("log.csv: line 47002");
    expect(text).toContain("(log/changes-midway)");
  });

  it("is read with a doubt and the line when a part of what follows is written otherwise", () => {
    const log = readingOf(inParts([encode(HEADER + seconds(BEYOND, changed(58_000)))]));
    const delimiter = log.decisions.find(({ about }) => about === "delimiter");
    expect(delimiter?.confidence).toBe("guessed");
    expect(delimiter?.because).toContain("from line 58002");
    expect(rejectedCount(log.rows)).toBe(2000);
    expect(log.rows.accepted).toBe(58_000);
  });

  it("that only has remarks in between is no other", () => {
    const remarks = (i: number, temp: string) =>
      (i % 20 === 10 ? "# remark\n" : "") + plain(i, temp);
    const log = readingOf(inParts([encode(HEADER + seconds(BEYOND, remarks))]));
    expect(log.decisions.find(({ about }) => about === "delimiter")?.confidence).toBe("certain");
  });

  it("whose later words are not UTF-8 says so", () => {
    const ascii = encode(`Time (s),Temp C,Note\n${seconds(BEYOND, plain)}`);
    const log = readingOf(
      inParts([ascii, Uint8Array.from([53, 48, 48, 48, 48, 48, 44, 53, 48, 44, 0xe9, 10])]),
    );
    const encoding = log.decisions.find(({ about }) => about === "encoding");
    expect(encoding?.because).toContain("1 later record is not");
    expect(log.rows.accepted).toBe(BEYOND + 1);
  });
});

describe("a hostile log", () => {
  it("is accounted for in full while only the first ten thousand rejected rows are listed", () => {
    const mixed = HEADER + seconds(500, plain) + "# no reading\n".repeat(25_000);
    const { rows } = readingOf(readText(mixed));
    expect(rows.rejected.length).toBe(10_000);
    expect(rows.unlisted).toEqual([{ reason: "a comment", count: 15_000 }]);
    expect(rows.accepted + rejectedCount(rows)).toBe(rows.total);
  });

  it("may hold a line of a million characters, which is left out with its beginning", () => {
    const long = `${"x".repeat(1_000_000)}\n`;
    const log = readingOf(
      inParts(
        cut(
          encode(HEADER + seconds(300, plain) + long + seconds(20, (i, t) => plain(300 + i, t))),
          5000,
        ),
      ),
    );
    expect(log.rows).toEqual({
      total: 321,
      accepted: 320,
      rejected: [{ line: 302, reason: "a line far too long for a row", text: "x".repeat(60) }],
    });
  });

  it("may end in runs of zero bytes, as after a power cut", () => {
    const text = HEADER + seconds(300, plain);
    const log = readingOf(inParts([encode(text), new Uint8Array(3_000_000)]));
    expect(log.rows.accepted).toBe(300);
  });
});

describe("rows that are left out late", () => {
  it("still show what stood there, from all over the log", () => {
    const rows = Array.from({ length: 500 }, (_, i) => `${i},${i % 100 === 7 ? "OPEN" : 20 + i}`);
    const log = readingOf(readText(`Time (s),Temp (°C)\n${rows.join("\n")}\n499,519\n`));
    expect(log.rows.rejected).toEqual([
      ...[7, 107, 207, 307, 407].map((i) => ({
        line: i + 2,
        reason: "no temperature in it",
        text: `${i},OPEN`,
      })),
      { line: 502, reason: "the same row again", text: "499,519" },
    ]);
    expect(choiceOf(log, "delimiter")).toBe("comma");
  });
});
