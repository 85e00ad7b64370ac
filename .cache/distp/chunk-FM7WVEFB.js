import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/pings/slowCrackExponent.ts
function slowCrackExponent(m, n) {
  if (!(n > 2 && m > 0)) throw new RangeError(`slowCrackExponent: m ${m}, n ${n}`);
  return 1 - m / (n - 2);
}

export {
  slowCrackExponent
};
