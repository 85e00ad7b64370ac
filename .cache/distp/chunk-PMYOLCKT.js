import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/log/text/namedDelimiters.ts
var WIDE_BLANKS = "  ";
var BY_NAME = {
  tab: "	",
  "\\t": "	",
  blanks: " ",
  "wide blanks": WIDE_BLANKS,
  "wide-blanks": WIDE_BLANKS
};
function delimiterNamed(told) {
  return Object.hasOwn(BY_NAME, told) ? BY_NAME[told] : told;
}
function delimiterTold(delimiter) {
  return Object.keys(BY_NAME).find((name) => BY_NAME[name] === delimiter) ?? delimiter;
}

export {
  WIDE_BLANKS,
  delimiterNamed,
  delimiterTold
};
