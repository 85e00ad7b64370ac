import { readFile, stat } from "node:fs/promises";
import { failed, ok, type Result } from "../core/problem.ts";
import { systemProblem } from "./systemProblem.ts";

/** Largest file that is read whole [bytes]; a year of one-second readings is about half of it. */
const LARGEST_BYTES = 2 ** 31 - 1;

/** The bytes of a file, or of standard input for `-`. */
export async function readInput(path: string): Promise<Result<Uint8Array>> {
  if (path === "-") return ok(await standardInput());
  try {
    const facts = await stat(path);
    if (facts.isDirectory())
      return failed(systemProblem(Object.assign(new Error(), { code: "EISDIR" }), path, "read"));
    if (facts.size > LARGEST_BYTES)
      return failed({
        code: "file/too-large",
        where: path,
        what: `it has ${facts.size} bytes`,
        expected: `at most ${LARGEST_BYTES} bytes`,
        fix: "cut the log into single firings",
      });
    return ok(await readFile(path));
  } catch (error) {
    return failed(systemProblem(error, path, "read"));
  }
}

/** The text of a UTF-8 file; a byte-order mark is dropped. */
export async function readText(path: string): Promise<Result<string>> {
  const bytes = await readInput(path);
  if (!bytes.ok) return bytes;
  try {
    return ok(new TextDecoder("utf-8", { fatal: true }).decode(bytes.value));
  } catch {
    return failed({
      code: "file/not-text",
      where: path,
      what: "it is not UTF-8 text",
      expected: "a text file in UTF-8",
      fix: "save it as UTF-8 from a text editor",
    });
  }
}

async function standardInput(): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks);
}
