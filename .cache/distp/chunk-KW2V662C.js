import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  parseSchedule
} from "./chunk-WNROHRXV.js";
import {
  readText
} from "./chunk-WA5SZDQ5.js";

// src/node/readSchedule.ts
import { basename } from "node:path";
async function readSchedule(path) {
  const text = await readText(path);
  if (!text.ok) return text;
  return parseSchedule(text.value, path === "-" ? "standard input" : basename(path));
}

export {
  readSchedule
};
