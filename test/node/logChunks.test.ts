import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { afterAll, describe, expect, it } from "vitest";
import type { LogReading } from "../../src/core/log/reading/LogReading.ts";
import { problemText, type Result } from "../../src/core/problem.ts";
import { logChunks } from "../../src/node/readFiring.ts";
import { readLogChunks } from "../../src/node/readLogChunks.ts";
import { firing, writeLog } from "../core/log/logBuilder.ts";

const folder = mkdtempSync(join(tmpdir(), "undunted-"));
afterAll(() => rmSync(folder, { recursive: true }));

async function read(name: string, bytes: Uint8Array): Promise<Result<LogReading>> {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  const chunks = await logChunks(path);
  return chunks.ok ? readLogChunks(chunks.value, name, { name: "log.csv" }) : chunks;
}

async function problems(name: string, bytes: Uint8Array): Promise<string> {
  const result = await read(name, bytes);
  if (result.ok) throw new Error("it was read");
  return result.problems.map(problemText).join("\n");
}

// 40 000 rows are 0.6 MB, so that they come in several parts.
const log = new TextEncoder().encode(writeLog(firing(40_000, 10)));

describe("a log from a file", () => {
  it("reads the same compressed with gzip, whatever its name", async () => {
    const plain = await read("plain.csv", log);
    expect(plain.ok && plain.value.rows.accepted).toBe(40_000);
    expect(await read("log.csv.gz", gzipSync(log))).toEqual(plain);
    expect(await read("log.csv", gzipSync(log))).toEqual(plain);
  });

  it("that was compressed in two pieces is read whole", async () => {
    const half = log.length >> 1;
    const pieces = [gzipSync(log.subarray(0, half)), gzipSync(log.subarray(half))];
    expect(await read("pieces.gz", Buffer.concat(pieces))).toEqual(await read("one.csv", log));
  });

  it("whose compressed data break off or are damaged says so", async () => {
    const whole = gzipSync(log);
    expect(await problems("cut.gz", whole.subarray(0, whole.length >> 1))).toContain(
      "cut.gz: its compressed data break off before their end",
    );
    const damaged = Uint8Array.from(whole);
    damaged.fill(0xff, 1000, 1100);
    expect(await problems("damaged.gz", damaged)).toContain("(file/broken-gzip)");
  });

  it("that is empty, or one byte long, or a folder, says what is wrong", async () => {
    expect(await problems("empty.csv", new Uint8Array(0))).toContain("holds nothing (0 bytes)");
    expect(await problems("one.csv", Uint8Array.from([0x1f]))).toContain("(log/");
    const folderChunks = await logChunks(folder);
    expect(folderChunks.ok ? "" : folderChunks.problems[0]?.code).toBe("file/folder");
    const missing = await logChunks(join(folder, "missing.csv"));
    expect(missing.ok ? "" : missing.problems[0]?.code).toBe("file/missing");
  });

  it("is not read on when it cannot be a log", async () => {
    let parts = 0;
    async function* endless(): AsyncGenerator<Uint8Array> {
      for (;;) {
        parts++;
        yield new TextEncoder().encode("words and only words\n".repeat(10_000));
      }
    }
    const result = await readLogChunks(endless(), "endless", { name: "endless" });
    expect(result.ok ? "" : result.problems[0]?.code).toBe("log/no-table");
    // Parts of 210 kB until 4 MB (4 194 304 bytes) are there: 19.97 of them.
    expect(parts).toBe(20);
  });
});
