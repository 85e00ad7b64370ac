import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/reports/chartBlocks.ts
function chartBlocks(description, chart) {
  return chart === void 0 ? [] : [{ kind: "chart", description, chart }];
}

export {
  chartBlocks
};
