import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  parseBody
} from "./chunk-3W76GZHT.js";
import {
  readText
} from "./chunk-WA5SZDQ5.js";

// src/node/readBody.ts
import { basename } from "node:path";
async function readBody(path) {
  const text = await readText(path);
  return text.ok ? parseBody(text.value, basename(path)) : text;
}

export {
  readBody
};
