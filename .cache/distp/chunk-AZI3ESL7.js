import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  logReader
} from "./chunk-CQRY3XKN.js";

// src/core/log/readLog.ts
function readLog(bytes, options, splitQuoted) {
  const reader = logReader(options, splitQuoted);
  reader.push(bytes);
  return reader.end();
}

export {
  readLog
};
