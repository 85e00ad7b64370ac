import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/ware/seededEven.ts
function seededEven(seed) {
  let state = seed >>> 0;
  return () => {
    state = state + 1831565813 >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ mixed >>> 15, mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ mixed >>> 7, mixed | 61);
    return ((mixed ^ mixed >>> 14) >>> 0) / 4294967296;
  };
}

export {
  seededEven
};
