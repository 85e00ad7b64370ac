import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  printDifference,
  printDuration,
  printElapsed,
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";

// src/core/findings/findingText.ts
function evidenceText(evidence, unit) {
  const { value } = evidence;
  switch (evidence.kind) {
    case "temperature":
      return printTemperature(value, unit);
    case "difference":
      return printDifference(value, unit);
    case "rate":
      return printRate(value, unit);
    case "duration":
      return printDuration(value);
    case "elapsed":
      return printElapsed(value);
    case "percent":
      return `${Math.round(value * 100)} %`;
    case "ratio":
      return value.toFixed(value < 0.995 ? 2 : 1);
    case "cones":
      return value.toFixed(1);
    case "count":
      return String(Math.round(value));
  }
}
function statementText(finding, unit) {
  return placed(finding.statement, finding, unit);
}
function adviceText(finding, unit) {
  return placed(finding.advice, finding, unit);
}
var KEPT = "\u2060";
function quoted(text) {
  return text.replaceAll("{", `{${KEPT}`).replaceAll(/\s+/g, " ").trim();
}
function placed(text, finding, unit) {
  return text.replaceAll(/\{\u2060|\{([^{}\u2060]+)\}/g, (whole, name) => {
    if (name === void 0) return "{";
    const evidence = finding.evidence.find((item) => item.name === name);
    return evidence === void 0 ? whole : evidenceText(evidence, unit);
  });
}

// src/core/ware/interpolated.ts
function interpolated(rows, tempC) {
  const last = rows.at(-1);
  if (last === void 0 || rows.length < 2)
    throw new RangeError(`interpolated: ${rows.length} rows`);
  if (tempC >= last[0]) return last[1];
  const found = rows.findIndex(([rowC]) => rowC > tempC);
  const upper = Math.max(1, found);
  const [lowC, low] = rows[upper - 1];
  const [highC, high] = rows[upper];
  return low + (high - low) * (tempC - lowC) / (highC - lowC);
}

// src/core/ware/cristobalite.ts
var CRISTOBALITE_INVERSION_C = 225;
var CRISTOBALITE_SPREAD_K = 12;
var ALPHA_CRISTOBALITE = [
  [20, 0],
  [100, 0.244],
  [150, 0.396],
  [200, 0.547],
  [225, 0.622]
];
var BETA_CRISTOBALITE = [
  [225, 2.026],
  [250, 2.031],
  [270, 2.036],
  [300, 2.042],
  [400, 2.062],
  [477, 2.078],
  [600, 2.103],
  [800, 2.144],
  [1e3, 2.184]
];
var ALPHA_SLOPE_PERCENT_PER_K = (0.622 - 0.547) / 25;
function cristobaliteExpansionPercent(tempC) {
  const share = normalShareBelow((tempC - CRISTOBALITE_INVERSION_C) / CRISTOBALITE_SPREAD_K);
  return (1 - share) * alphaPercent(tempC) + share * betaPercent(tempC);
}
function alphaPercent(tempC) {
  const beyondK = Math.max(0, tempC - CRISTOBALITE_INVERSION_C);
  return interpolated(ALPHA_CRISTOBALITE, tempC) + beyondK * ALPHA_SLOPE_PERCENT_PER_K;
}
function betaPercent(tempC) {
  return interpolated(BETA_CRISTOBALITE, tempC);
}
function normalShareBelow(sigmas) {
  const x = Math.abs(sigmas) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const series = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = series * Math.exp(-x * x) / 2;
  return sigmas < 0 ? tail : 1 - tail;
}

// src/core/ware/quartzTables.ts
var CARPENTER_MEAN = {
  source: "carpenter-1998",
  note: "cube root of the cell volume by neutron diffraction; the rows at 700 and 900 \xB0C are rounded to 0.001; the step into 397 \xB0C is steeper than its neighbours and is kept as found",
  rows: [
    [20, 0],
    [35, 0.0175],
    [110, 0.1059],
    [161, 0.1774],
    [211, 0.2552],
    [251, 0.3197],
    [291, 0.3865],
    [332, 0.4608],
    [372, 0.5451],
    [397, 0.6265],
    [427, 0.6853],
    [447, 0.7319],
    [466, 0.7833],
    [488, 0.8397],
    [508, 0.9019],
    [543, 1.0581],
    [551, 1.1105],
    [559, 1.1738],
    [568, 1.2707],
    [575, 1.4469],
    [578, 1.4702],
    [580, 1.4713],
    [586, 1.4744],
    [593, 1.4767],
    [598, 1.4778],
    [608, 1.4793],
    [700, 1.485],
    [900, 1.478]
  ]
};
var CARPENTER_C_AXIS = {
  source: "carpenter-1998",
  note: "cell edge c by neutron diffraction; the rows at 700 and 900 \xB0C are rounded to 0.001",
  rows: [
    [20, 0],
    [34.9, 0.0111],
    [109.9, 0.0659],
    [160.9, 0.1134],
    [210.8, 0.1654],
    [250.8, 0.2087],
    [290.8, 0.254],
    [331.8, 0.304],
    [371.8, 0.3606],
    [396.8, 0.4209],
    [426.8, 0.4603],
    [446.8, 0.4906],
    [465.8, 0.5267],
    [487.8, 0.5639],
    [507.8, 0.6059],
    [542.8, 0.7112],
    [550.8, 0.7472],
    [558.8, 0.7896],
    [567.8, 0.8527],
    [574.8, 0.9635],
    [577.8, 0.9864],
    [579.8, 0.9868],
    [585.8, 0.989],
    [592.8, 0.9881],
    [597.8, 0.9885],
    [607.8, 0.9868],
    [700, 0.988],
    [900, 0.96]
  ]
};

// src/core/ware/quartz.ts
function quartzExpansionPercent(tempC, axis) {
  const table = axis === "c" ? CARPENTER_C_AXIS : CARPENTER_MEAN;
  return interpolated(table.rows, tempC);
}

// src/core/ware/bodyExpansion.ts
var QUARTZ_SPREAD_K = 6;
var CRISTOBALITE_FELT = 0.66;
var COOLEST_C = -50;
var ROWS = 1501;
var felt = null;
function newStrainTable() {
  return new Float64Array(ROWS);
}
function fillStrainTable(table, mixture) {
  const { quartz, cristobalite } = feltMinerals();
  const matrix = (1 - mixture.quartz - mixture.cristobalite) * mixture.matrixPerK;
  for (let row = 0; row < ROWS; row++)
    table[row] = matrix * (COOLEST_C + row - 20) + mixture.quartz * quartz[row] + mixture.cristobalite * cristobalite[row];
}
function strainIn(table, tempC) {
  const place = tempC - COOLEST_C;
  const row = place < 0 ? 0 : place > ROWS - 2 ? ROWS - 2 : Math.floor(place);
  const low = table[row];
  return low + (table[row + 1] - low) * (place - row);
}
function feltMinerals() {
  felt ??= {
    quartz: Float64Array.from({ length: ROWS }, (_, row) => smearedQuartz(COOLEST_C + row)),
    cristobalite: Float64Array.from(
      { length: ROWS },
      (_, row) => CRISTOBALITE_FELT * cristobaliteExpansionPercent(COOLEST_C + row) / 100
    )
  };
  return felt;
}
function smearedQuartz(tempC) {
  let sum = 0;
  let weights = 0;
  for (let sigmas = -3.5; sigmas <= 3.5; sigmas += 0.25) {
    const weight = Math.exp(-sigmas * sigmas / 2);
    sum += weight * quartzExpansionPercent(tempC + sigmas * QUARTZ_SPREAD_K, "c");
    weights += weight;
  }
  return sum / weights / 100;
}

export {
  newStrainTable,
  fillStrainTable,
  strainIn,
  statementText,
  adviceText,
  quoted
};
