import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  HARD_SPACE,
  characterWidth,
  glued,
  visibleWidth
} from "./chunk-QOSRWPWR.js";

// src/core/reports/capitalised.ts
function capitalised(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
function stopped(text) {
  return /[.!?…]$/.test(text) ? text : `${text}.`;
}

// src/core/reports/wrap.ts
function wrap(text, options) {
  const { width, first = "", rest = "" } = options;
  const lines = [];
  let line = "";
  const room = () => width - visibleWidth(lines.length === 0 ? first : rest);
  const close = () => {
    lines.push(`${lines.length === 0 ? first : rest}${line}`.trimEnd());
    line = "";
  };
  if (room() < 2 || width - visibleWidth(rest) < 2)
    throw new RangeError(`wrap: no room for text in ${width} columns`);
  for (const word of glued(text).split(" ").filter(Boolean)) {
    if (line !== "" && visibleWidth(line) + 1 + visibleWidth(word) <= room()) {
      line += ` ${word}`;
      continue;
    }
    if (line !== "") close();
    line = word;
    while (visibleWidth(line) > room()) {
      const head = startThatFits(line, room());
      const tail = line.slice(head.length);
      line = head;
      close();
      line = tail;
    }
  }
  close();
  return lines.map((each) => each.replaceAll(HARD_SPACE, " "));
}
function startThatFits(word, room) {
  let head = "";
  let width = 0;
  for (const character of word) {
    width += characterWidth(character);
    if (width > room) break;
    head += character;
  }
  return head;
}

export {
  capitalised,
  stopped,
  wrap
};
