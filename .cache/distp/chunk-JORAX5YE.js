import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/reports/costFigure.ts
function costFigure(cost) {
  return cost.toFixed(cost < 10 ? 1 : 0);
}

export {
  costFigure
};
