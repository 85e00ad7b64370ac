import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  densely,
  drawn,
  pixelAt,
  temperature
} from "./chunk-LCZWALSP.js";
import {
  thinned
} from "./chunk-6GRKVVXC.js";

// src/core/charts/curveLines.ts
var POINTS = 1e3;
function curveRows(curve, unit) {
  const { timesSeconds, tempsC, gaps } = thinned(curve, POINTS);
  const { field, shown } = temperature(unit);
  const gapEnds = new Set(gaps.map((gap) => gap.toSeconds));
  let piece = 0;
  return Array.from(timesSeconds, (seconds, i) => {
    if (gapEnds.has(seconds)) piece += 1;
    return {
      elapsedHours: drawn(seconds / 3600),
      [field]: drawn(shown(tempsC[i])),
      piece
    };
  });
}
function rowPixels(rows, xField, yField, frame) {
  const pieces = /* @__PURE__ */ new Map();
  for (const row of rows) {
    const piece = pieces.get(row.piece) ?? [];
    piece.push(pixelAt(frame, Number(row[xField]), Number(row[yField])));
    pieces.set(row.piece, piece);
  }
  return [...pieces.values()].flatMap(densely);
}

export {
  curveRows,
  rowPixels
};
