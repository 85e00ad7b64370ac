import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/reports/spreadWords.ts
function asGiven(value) {
  return String(Number(value.toPrecision(3))).replace("-", "\u2212");
}
function fewDigits(value) {
  const size = Number(Math.abs(value).toPrecision(2));
  const decimals = size >= 10 || size === 0 ? 0 : Math.min(3, 1 - Math.floor(Math.log10(size)));
  const digits = Math.abs(value).toFixed(decimals);
  if (Number(digits) === 0) return "0";
  return value < 0 ? `\u2212${digits}` : digits;
}
function spreadWords(spread, unit, scale = 1) {
  const [low, median, high] = [spread.low, spread.median, spread.high].map(
    (value) => fewDigits(value * scale)
  );
  const behind = unit === "" ? "" : ` ${unit}`;
  return low === high ? `${median}${behind}` : `${median} (${low} to ${high})${behind}`;
}
function sharePer100(share) {
  if (share > 0 && share < 0.01) return "fewer than 1 of 100";
  if (share < 1 && share > 0.99) return "more than 99 of 100";
  if (share === 0) return "none of 100";
  return share === 1 ? "all 100" : `${Math.round(share * 100)} of 100`;
}

export {
  asGiven,
  fewDigits,
  spreadWords,
  sharePer100
};
