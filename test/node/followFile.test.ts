import { appendFileSync, mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Result } from "../../src/core/problem.ts";
import { type FileLook, followFile } from "../../src/node/followFile.ts";
import { emptyFolder } from "../support/undunted.ts";

/** What one look saw, as a test tells it. */
interface Seen {
  readonly text: string;
  readonly change: FileLook["change"];
  readonly restarts: number;
  readonly stillSeconds: number;
  readonly hasHalfLine: boolean;
  readonly lines: number;
}

/**
 * Follows a file while this happens to it, one thing between two looks; the clock is the test's own
 * and goes by a minute each time. Ends after ten still minutes, or with the last thing if told so.
 */
async function followed(
  path: string,
  happenings: readonly (() => void)[],
  encoding: "utf-8" | "utf-16le" = "utf-8",
): Promise<readonly (Seen | string)[]> {
  let seconds = 0;
  const left = [...happenings];
  const looks = followFile(path, {
    everySeconds: 60,
    untilStillSeconds: 600,
    signal: new AbortController().signal,
    clock: {
      seconds: () => seconds,
      wait: async (span) => {
        seconds += span;
        left.shift()?.();
      },
    },
  });
  const seen: (Seen | string)[] = [];
  for await (const look of looks) seen.push(told(look, encoding));
  return seen;
}

function told(look: Result<FileLook>, encoding: string): Seen | string {
  if (!look.ok) return (look.problems[0] as { code: string }).code;
  const { bytes, ...rest } = look.value;
  return { ...rest, text: new TextDecoder(encoding).decode(bytes) };
}

function logIn(folder = emptyFolder()): string {
  return join(folder, "firing.csv");
}

describe("following a file", () => {
  it("shows what is appended and ends when it has been still for long enough", async () => {
    const path = logIn();
    writeFileSync(path, "a\n");
    const seen = await followed(path, [
      () => appendFileSync(path, "b\n"),
      () => {},
      () => appendFileSync(path, "c\nd\n"),
    ]);
    expect(seen.slice(0, 4)).toMatchObject([
      { text: "a\n", change: "grown", lines: 1 },
      { text: "a\nb\n", change: "grown", stillSeconds: 0 },
      { text: "a\nb\n", change: "same", stillSeconds: 60 },
      { text: "a\nb\nc\nd\n", change: "grown", lines: 4 },
    ]);
    // Grown after three minutes, still for ten more.
    expect(seen).toHaveLength(14);
    expect(seen.at(-1)).toMatchObject({ change: "same", stillSeconds: 600 });
  });

  it("does not show a half line until it is whole", async () => {
    const path = logIn();
    writeFileSync(path, "12:00,11");
    const seen = await followed(path, [
      () => appendFileSync(path, "87\n12:01,1"),
      () => appendFileSync(path, "188\r\n"),
    ]);
    expect(seen.slice(0, 3)).toMatchObject([
      { text: "", lines: 0, hasHalfLine: true },
      { text: "12:00,1187\n", lines: 1, hasHalfLine: true },
      { text: "12:00,1187\n12:01,1188\r\n", lines: 2, hasHalfLine: false },
    ]);
  });

  it("does not take a half letter of UTF-16 for a line end", async () => {
    const path = logIn();
    // U+010A ends in the byte of a line feed: 0A 01.
    const whole = Buffer.from("\ufeffĊ,1\r\nĊ,2\r\n", "utf16le");
    writeFileSync(path, whole.subarray(0, 3));
    const seen = await followed(
      path,
      [
        () => writeFileSync(path, whole.subarray(0, 15)),
        () => writeFileSync(path, whole.subarray(0, 21)),
        () => writeFileSync(path, whole),
      ],
      "utf-16le",
    );
    expect(seen.slice(0, 4)).toMatchObject([
      { text: "", lines: 0 },
      { text: "Ċ,1\r\n", lines: 1, hasHalfLine: true },
      { text: "Ċ,1\r\n", lines: 1, hasHalfLine: true },
      { text: "Ċ,1\r\nĊ,2\r\n", lines: 2, hasHalfLine: false },
    ]);
  });

  it("begins anew when the file is cut, and when other bytes stand where it was read", async () => {
    const path = logIn();
    writeFileSync(path, "old,1\nold,2\n");
    const seen = await followed(path, [
      () => writeFileSync(path, "new,1\n"),
      () => writeFileSync(path, "other,1\nother,2\nother,3\n"),
    ]);
    expect(seen.slice(0, 3)).toMatchObject([
      { text: "old,1\nold,2\n", restarts: 0 },
      { text: "new,1\n", change: "anew", restarts: 1, stillSeconds: 0 },
      { text: "other,1\nother,2\nother,3\n", change: "anew", restarts: 2 },
    ]);
  });

  it("takes a replacement that begins alike for growth, and any other for a new log", async () => {
    const folder = emptyFolder();
    const path = logIn(folder);
    const replace = (text: string) => {
      writeFileSync(join(folder, "copy"), text);
      renameSync(join(folder, "copy"), path);
    };
    writeFileSync(path, "a,1\nb,2\n");
    const seen = await followed(path, [
      () => replace("a,1\nb,2\nc,3\n"),
      () => replace("a,1\nX,2\nc,3\nd,4\n"),
    ]);
    expect(seen.slice(1, 3)).toMatchObject([
      { text: "a,1\nb,2\nc,3\n", change: "grown", restarts: 0 },
      { text: "a,1\nX,2\nc,3\nd,4\n", change: "anew", restarts: 1 },
    ]);
  });

  it("waits for a file that is not there yet, and keeps what it read of one that goes away", async () => {
    const path = logIn();
    const seen = await followed(path, [
      () => writeFileSync(path, "a\n"),
      () => rmSync(path),
      () => writeFileSync(path, "a\nb\n"),
    ]);
    expect(seen.slice(0, 4)).toMatchObject([
      { text: "", change: "missing" },
      { text: "a\n", change: "grown" },
      { text: "a\n", change: "missing" },
      { text: "a\nb\n", change: "grown", restarts: 0 },
    ]);
  });

  it("ends after the time it was given when no file ever comes", async () => {
    const seen = await followed(logIn(), []);
    expect(seen.at(-1)).toMatchObject({ change: "missing", stillSeconds: 600 });
  });

  it("refuses a folder", async () => {
    const path = logIn();
    mkdirSync(path);
    expect(await followed(path, [])).toEqual(["file/folder"]);
  });

  it("refuses a file that is too large to be kept", async () => {
    const path = logIn();
    writeFileSync(path, Buffer.alloc(64 * 2 ** 20 + 1, "1\n"));
    expect(await followed(path, [])).toEqual(["watch/too-large"]);
  });

  it("stops at a signal", async () => {
    const path = logIn();
    writeFileSync(path, "a\n");
    const stop = new AbortController();
    const looks = followFile(path, {
      everySeconds: 60,
      untilStillSeconds: 600,
      signal: stop.signal,
      clock: { seconds: () => 0, wait: async () => stop.abort() },
    });
    let count = 0;
    for await (const _ of looks) count++;
    expect(count).toBe(1);
  });
});
