import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/charts/textWidth.ts
var ADVANCES = [
  200,
  289,
  426,
  497,
  497,
  824,
  609,
  249,
  303,
  303,
  418,
  497,
  249,
  311,
  249,
  350,
  497,
  497,
  497,
  497,
  497,
  497,
  497,
  497,
  497,
  497,
  249,
  249,
  497,
  497,
  497,
  425,
  847,
  543,
  588,
  571,
  615,
  527,
  494,
  617,
  652,
  263,
  479,
  579,
  486,
  727,
  647,
  664,
  566,
  664,
  569,
  534,
  536,
  645,
  515,
  786,
  513,
  476,
  539,
  303,
  350,
  303,
  497,
  500,
  542,
  504,
  553,
  456,
  555,
  496,
  292,
  504,
  544,
  246,
  247,
  495,
  255,
  829,
  547,
  542,
  555,
  555,
  347,
  419,
  338,
  544,
  467,
  719,
  446,
  467,
  425,
  303,
  241,
  303,
  497
];
var OTHER = 550;
var SPARE = 1.05;
function textWidth(text, fontSize) {
  let thousandths = 0;
  for (const letter of text)
    thousandths += ADVANCES[letter.codePointAt(0) - 32] ?? OTHER;
  return SPARE * thousandths * fontSize / 1e3;
}
function cutToWidth(text, fontSize, width) {
  if (textWidth(text, fontSize) <= width) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidth(`${letters.join("")}\u2026`, fontSize) > width) letters.pop();
  return `${letters.join("").trimEnd()}\u2026`;
}
function wrappedToWidth(text, fontSize, width, lines) {
  const words = text.split(" ");
  const wrapped = [];
  while (words.length > 0 && wrapped.length < lines - 1) {
    let line = words.shift();
    while (words.length > 0 && textWidth(`${line} ${words[0]}`, fontSize) <= width)
      line += ` ${words.shift()}`;
    wrapped.push(cutToWidth(line, fontSize, width));
  }
  return words.length > 0 ? [...wrapped, cutToWidth(words.join(" "), fontSize, width)] : wrapped;
}

export {
  textWidth,
  wrappedToWidth
};
