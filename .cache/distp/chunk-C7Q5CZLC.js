import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/reports/inert.ts
var SPACING = /[\t\n\v\f\r\u0085\u2028\u2029]+/g;
var LOW_CONTROL = /[\u0000-\u001f\u007f]/g;
var UNSAFE = new RegExp("[\\u0080-\\u009f\\p{Cs}\\p{Noncharacter_Code_Point}]|(?![\\u200c\\u200d])\\p{Cf}", "gu");
function inert(text) {
  return text.replace(SPACING, " ").replace(LOW_CONTROL, (character) => pictureOf(character.charCodeAt(0))).replace(UNSAFE, "\uFFFD");
}
function pictureOf(code) {
  return String.fromCharCode(code === 127 ? 9249 : 9216 + code);
}

export {
  inert
};
