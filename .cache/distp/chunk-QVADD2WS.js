import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  systemProblem
} from "./chunk-2NHG2YQ4.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/node/writeOutput.ts
import { randomUUID } from "node:crypto";
import { link, lstat, rename, rm, stat, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
async function writeOutput(path, content, options) {
  const there = await kindOf(path);
  if (there === "other") return failed(notAFile(path));
  if (there === "file" && !options.force) return failed(exists(path));
  const beside = join(dirname(path), `.undunted-${randomUUID()}.tmp`);
  try {
    await writeFile(beside, content, { flag: "wx" });
    if (options.force) await rename(beside, path);
    else await placeNew(beside, path);
    return ok(path);
  } catch (error) {
    return failed(codeOf(error) === "EEXIST" ? exists(path) : systemProblem(error, path, "write"));
  } finally {
    await rm(beside, { force: true }).catch(() => void 0);
  }
}
async function placeNew(beside, path) {
  try {
    await link(beside, path);
  } catch (error) {
    if (codeOf(error) === "EEXIST") throw error;
    await rename(beside, path);
  }
}
async function kindOf(path) {
  const own = await lstat(path).catch(() => null);
  if (own === null) return "nothing";
  const facts = own.isSymbolicLink() ? await stat(path).catch(() => null) : own;
  return facts === null || facts.isFile() ? "file" : "other";
}
function codeOf(error) {
  return error instanceof Error && "code" in error ? String(error.code) : "";
}
function exists(path) {
  return {
    code: "file/exists",
    where: path,
    what: "the file is there already",
    expected: "a new name",
    fix: "another name, or --force to replace it"
  };
}
function notAFile(path) {
  return {
    code: "file/not-a-file",
    where: path,
    what: "a folder, a pipe or a device is there",
    expected: "a new name, or that of a file",
    fix: "name a file in a folder of your own"
  };
}

export {
  writeOutput
};
