import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/photo/lengthFigure.ts
function lengthFigure(lengthMm) {
  return lengthMm >= 100 ? lengthMm.toFixed(0) : lengthMm.toPrecision(lengthMm >= 10 ? 3 : 2);
}

export {
  lengthFigure
};
