import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  hiddenEscaped
} from "./chunk-NHPGJLL4.js";
import {
  inert
} from "./chunk-C7Q5CZLC.js";

// src/cli/conversation.ts
import { once } from "node:events";
import { styleText } from "node:util";

// src/core/reports/glued.ts
var NUMBER_AND_UNIT = /(?<=\d) (?=(?:°[CF]|%|h|min|s|mm|kWh|cones?)(?![\p{L}\d]))/gu;
var NAMED_NUMBER = /(?<=\b(?:day|cone)) (?=\d)/g;
var SIGN_AND_NUMBER = /(?<=[±×÷]|\d \+) (?=\d)|(?<=\d) (?=\+ \d)/g;
var HARD_SPACE = "\xA0";
function glued(text) {
  return text.replace(NUMBER_AND_UNIT, HARD_SPACE).replace(NAMED_NUMBER, HARD_SPACE).replace(SIGN_AND_NUMBER, HARD_SPACE);
}

// src/core/reports/visibleWidth.ts
var COLOUR_CODE = /\u001b\[[0-9;]*m/g;
var NO_WIDTH = /[\p{Mn}\p{Me}\p{Cf}]/u;
var TWO_COLUMNS = new RegExp("[\\u1100-\\u115f\\u2e80-\\u303e\\u3041-\\ua4cf\\uac00-\\ud7a3\\uf900-\\ufaff\\ufe30-\\ufe6f\\uff00-\\uff60\\uffe0-\\uffe6\\u{20000}-\\u{3fffd}]|\\p{Emoji_Presentation}", "u");
function visibleWidth(text) {
  let width = 0;
  for (const character of text.replace(COLOUR_CODE, "")) width += characterWidth(character);
  return width;
}
function characterWidth(character) {
  if (character >= " " && character <= "~") return 1;
  if (NO_WIDTH.test(character)) return 0;
  return TWO_COLUMNS.test(character) ? 2 : 1;
}

// src/core/reports/problemLines.ts
var COLUMNS = 80;
var UNDER_PLACE = " ".repeat(4);
var UNDER_WORDS = " ".repeat(12);
var QUOTED = /"[^"\n]{1,60}"/g;
var OPTION_AND_VALUE = /(?<=(?:^|\s)--[a-z][a-z-]*) (?=[^\s-])/g;
function problemLines({ where, what, expected, fix, code }) {
  const tried = broken("  try       ", fix, UNDER_WORDS);
  const end = tried.at(-1);
  const last = `${end}     (${code})`;
  return [
    ...broken(`${where}: `, what, UNDER_PLACE),
    ...broken("  expected  ", expected, UNDER_WORDS),
    ...tried.slice(0, -1),
    ...visibleWidth(last) <= COLUMNS ? [last] : [end, `${UNDER_WORDS}(${code})`]
  ];
}
function broken(first, text, rest) {
  if (visibleWidth(first) + visibleWidth(text) <= COLUMNS) return [`${first}${text}`];
  const lines = [];
  let line = first.trimEnd();
  let gap = first.slice(line.length);
  for (const word of unbroken(text).split(" ")) {
    if (visibleWidth(line + gap + word) <= COLUMNS) line += gap + word;
    else {
      lines.push(line);
      line = rest + word;
    }
    gap = " ";
  }
  return [...lines, line].map((each) => each.replaceAll(HARD_SPACE, " "));
}
function unbroken(text) {
  return text.replace(QUOTED, (quoted) => quoted.replaceAll(" ", HARD_SPACE)).replace(OPTION_AND_VALUE, HARD_SPACE);
}

// src/cli/conversation.ts
var EXIT = { fine: 0, no: 1, wrongUse: 2, ourBug: 70 };
function answer(text) {
  process.stdout.write(text.endsWith("\n") ? text : `${text}
`);
}
function answerJson(document) {
  answer(hiddenEscaped(JSON.stringify(document, null, 2)));
}
function answerJsonLine(document) {
  answer(hiddenEscaped(JSON.stringify(document)));
}
function say(text, options) {
  if (!options.quiet) process.stderr.write(`${inert(text)}
`);
}
function sayLines(text) {
  process.stderr.write(`${text.split("\n").map(inert).join("\n")}
`);
}
function refuse(problems, options) {
  const document = { schemaVersion: 1, ok: false, problems };
  if (options.json) answerJson(document);
  else if (options.jsonLines) answerJsonLine(document);
  return complain(problems);
}
function complain(problems) {
  const texts = problems.map((problem) => problemLines(harmless(problem)).join("\n"));
  process.stderr.write(`${texts.join("\n\n")}
`);
  return EXIT.wrongUse;
}
function harmless(problem) {
  return {
    code: problem.code,
    what: inert(problem.what),
    where: inert(problem.where),
    expected: inert(problem.expected),
    fix: inert(problem.fix)
  };
}
var STYLES = {
  heading: ["bold"],
  strong: ["bold"],
  faint: ["dim"],
  warning: ["red", "bold"],
  caution: ["yellow"],
  note: ["cyan"],
  good: ["green"]
};
async function answerSlowly(text) {
  const goesOn = process.stdout.write(text.endsWith("\n") ? text : `${text}
`);
  if (!goesOn) await once(process.stdout, "drain");
}
function paintFor(options) {
  return paintWith(coloured(options));
}
function paintWith(isColoured) {
  if (!isColoured) return (_, text) => text;
  return (style, text) => STYLES[style].reduce(
    (painted, format) => styleText(format, painted, { validateStream: false }),
    text
  );
}
function coloured(options) {
  if (process.argv.includes("--color")) return true;
  if (options.color === false) return false;
  const { NO_COLOR, FORCE_COLOR, TERM } = process.env;
  if (NO_COLOR) return false;
  if (FORCE_COLOR !== void 0) return FORCE_COLOR !== "0";
  return process.stdout.isTTY === true && TERM !== "dumb";
}

export {
  HARD_SPACE,
  glued,
  visibleWidth,
  characterWidth,
  EXIT,
  answer,
  answerJson,
  answerJsonLine,
  say,
  sayLines,
  refuse,
  complain,
  answerSlowly,
  paintFor,
  paintWith,
  coloured
};
