import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/document/hiddenEscaped.ts
var HIDDEN = (
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to escape
  new RegExp("[\\u0000-\\u0009\\u000b-\\u001f\\u007f-\\u009f\\u2028\\u2029\\p{Cs}\\p{Noncharacter_Code_Point}]|(?![\\u200c\\u200d])\\p{Cf}", "gu")
);
function hasHidden(text) {
  return text.search(HIDDEN) >= 0;
}
function hiddenEscaped(text) {
  return text.replace(
    HIDDEN,
    (character) => Array.from({ length: character.length }, (_, i) => unitEscaped(character.charCodeAt(i))).join(
      ""
    )
  );
}
function unitEscaped(code) {
  return `\\u${code.toString(16).padStart(4, "0")}`;
}

export {
  hasHidden,
  hiddenEscaped
};
