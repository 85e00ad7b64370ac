import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  VEGA_LITE_SCHEMA
} from "./chunk-LCZWALSP.js";

// src/core/charts/reviewPicture.ts
function reviewPicture(charts) {
  const [first] = charts;
  if (!first) throw new RangeError("reviewPicture: no charts");
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: charts.map((chart) => chart.description ?? "").join(" "),
    ...shared(first),
    spacing: 46,
    bounds: "full",
    vconcat: charts.map(part)
  };
}
function shared({
  background,
  padding,
  config
}) {
  return {
    ...background === void 0 ? {} : { background },
    ...padding === void 0 ? {} : { padding },
    ...config === void 0 ? {} : { config }
  };
}
function part(chart) {
  const { $schema, background, padding, config, ...rest } = chart;
  return rest;
}

export {
  reviewPicture
};
