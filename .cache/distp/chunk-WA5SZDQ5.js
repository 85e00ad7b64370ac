import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  systemProblem
} from "./chunk-2NHG2YQ4.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/node/readInput.ts
import { open } from "node:fs/promises";
var WRITTEN_TEXT = {
  bytes: 2 * 2 ** 20,
  expected: "a text that a person writes, of a few pages at most",
  fix: "check that this is the record, schedule or body, and not a log"
};
var CHUNK_BYTES = 1 << 16;
async function readText(path) {
  const bytes = await readBytes(path, WRITTEN_TEXT);
  if (!bytes.ok) return bytes;
  try {
    return ok(new TextDecoder("utf-8", { fatal: true }).decode(bytes.value));
  } catch {
    return failed({
      code: "file/not-text",
      where: path,
      what: "it is not UTF-8 text",
      expected: "a text file in UTF-8",
      fix: "save it as UTF-8 from a text editor"
    });
  }
}
async function readBytes(path, limit) {
  let file = null;
  try {
    if (path === "-") return await bounded(process.stdin, path, limit);
    file = await open(path);
    return await bounded(chunksOf(file), path, limit);
  } catch (error) {
    return failed(systemProblem(error, path, "read"));
  } finally {
    await file?.close();
  }
}
async function bounded(chunks, path, limit) {
  const kept = [];
  let total = 0;
  for await (const chunk of chunks) {
    total += chunk.length;
    if (total > limit.bytes) return failed(tooLarge(path, limit));
    kept.push(chunk);
  }
  return ok(Buffer.concat(kept));
}
async function* chunksOf(file) {
  for (; ; ) {
    const { buffer, bytesRead } = await file.read(new Uint8Array(CHUNK_BYTES), 0, CHUNK_BYTES);
    if (bytesRead === 0) return;
    yield buffer.subarray(0, bytesRead);
  }
}
function tooLarge(path, { bytes, expected, fix }) {
  return {
    code: "file/too-large",
    where: path,
    what: `it has more than ${Math.round(bytes / 2 ** 20)} MB`,
    expected,
    fix
  };
}

export {
  readText,
  readBytes
};
