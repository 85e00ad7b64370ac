import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  conesDocument
} from "./chunk-BXT2HBEY.js";
import "./chunk-RLEK6R44.js";
import {
  reportText,
  seriesName
} from "./chunk-ZUGR3IIA.js";
import {
  capitalised,
  stopped
} from "./chunk-X6LO4HOH.js";
import {
  CONE_MODELS,
  ENTRY_SCATTER_K,
  anchored,
  isExtrapolatedRate,
  logArrheniusIntegral,
  logEffectiveRate,
  marginSigmaK,
  rampEndPointK
} from "./chunk-XM3JYZUM.js";
import "./chunk-OGOFPCXR.js";
import {
  EXIT,
  answer,
  answerJson,
  paintFor,
  refuse
} from "./chunk-QOSRWPWR.js";
import "./chunk-NHPGJLL4.js";
import {
  printDifference,
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import "./chunk-2Y6UMGL7.js";
import {
  CONES_SOURCES,
  CONE_TABLES,
  celsiusDeltaFromFahrenheitDelta,
  celsiusFromKelvin,
  parseCone,
  printedEndPoint
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";
import "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";

// src/core/cones/endPoint.ts
var RATE_LIMITS_CPERHOUR = { slowest: 1, fastest: 1e3 };
var REMEMBERED_SIGMA_K = 6;
function endPointC(query) {
  const { series, rateCPerHour } = query;
  const cone = parseCone(query.cone, { series, where: "cone" });
  if (!cone.ok) return cone;
  const { slowest, fastest } = RATE_LIMITS_CPERHOUR;
  if (!(rateCPerHour >= slowest && rateCPerHour <= fastest))
    return failed(rateProblem(rateCPerHour));
  const printed = printedEndPoint(CONE_TABLES[series], cone.value, rateCPerHour);
  if (printed !== null)
    return ok({
      tempC: printed.tempC,
      sigmaK: printed.confidence === "from-memory" ? REMEMBERED_SIGMA_K : ENTRY_SCATTER_K,
      basis: "printed",
      confidence: printed.confidence,
      extrapolated: false
    });
  if (!isModelled(series)) return failed(notPrintedProblem(series, cone.value, rateCPerHour));
  const model = CONE_MODELS[series].find((each) => each.cone === cone.value);
  if (model === void 0) return failed(notPrintedProblem(series, cone.value, rateCPerHour));
  const end = modelEndPoint(model, rateCPerHour);
  return ok({
    ...end,
    basis: "model",
    confidence: null,
    extrapolated: isExtrapolatedRate(rateCPerHour)
  });
}
function isModelled(series) {
  return series in CONE_MODELS;
}
function modelEndPoint(model, rateCPerHour) {
  const logHeatworkAt = (tempK2) => model.logPreFactor + logArrheniusIntegral(tempK2, model.activationKJ) - Math.log(rateCPerHour);
  let tempK = rampEndPointK(model.activationKJ, model.endPoint60K, rateCPerHour);
  for (let round = 0; round < 50; round++) {
    const { marginK } = anchored(model, tempK, logHeatworkAt(tempK));
    tempK -= marginK;
    if (Math.abs(marginK) < 1e-9) break;
  }
  const logRate = logEffectiveRate(model, tempK, logHeatworkAt(tempK));
  return { tempC: celsiusFromKelvin(tempK), sigmaK: marginSigmaK(model, logRate) };
}
function rateProblem(rateCPerHour) {
  const { slowest, fastest } = RATE_LIMITS_CPERHOUR;
  return {
    code: "cones/rate-out-of-range",
    what: `a rate of ${rateCPerHour} \xB0C/h is beyond anything cones can answer for`,
    where: "rate",
    expected: `${slowest} to ${fastest} \xB0C/h (2 to 1800 \xB0F/h), heating`,
    fix: "give the rate over the last 100 \xB0C (180 \xB0F) of heating; charts cover 15 to 150 \xB0C/h"
  };
}
function notPrintedProblem(series, cone, rateCPerHour) {
  const table = CONE_TABLES[series];
  const cells = table.ratesCPerHour.flatMap((rate) => {
    const cell = printedEndPoint(table, cone, rate);
    if (cell === null) return [];
    return [rate === null ? `${cell.tempC} \xB0C without a rate` : `${cell.tempC} \xB0C at ${rate} \xB0C/h`];
  });
  return {
    code: "cones/rate-not-printed",
    what: `the ${series} table has no end point of cone ${cone} at ${rateCPerHour} \xB0C/h`,
    where: "rate",
    expected: `a printed value; for cone ${cone} the table has ${cells.join(" and ")}`,
    fix: "use the printed value, or choose a series with a model, such as self-supporting"
  };
}

// src/core/reports/conesText.ts
var MARKS = {
  "two-copies": "",
  "one-copy": "\u2020",
  "from-memory": "*"
};
var EXPLANATIONS = {
  "two-copies": null,
  "one-copy": "\u2020 read in one copy of the table only.",
  "from-memory": "* from memory: not read again in any copy of the table, and the first to be replaced."
};
function conesText(input, options) {
  const { unit } = options;
  const used = new Set(input.rows.flatMap(({ cells }) => cells.map((cell) => cell?.confidence)));
  const explanations = ["one-copy", "from-memory"].flatMap(
    (confidence) => used.has(confidence) ? [EXPLANATIONS[confidence]] : []
  );
  const heads = input.ratesCPerHour.map((rate) => printRate(rate, unit));
  const widest = Math.max(1, ...input.rows.map(({ cells }) => cells.length));
  const blocks = [
    {
      kind: "table",
      caption: heads.length === 0 ? "End points" : `End points by the heating rate over the last ${printDifference(100, unit)}`,
      columns: [
        { head: "cone", align: "right" },
        ...Array.from(
          { length: widest },
          (_, column) => ({ head: heads[column] ?? "end point", align: "right" })
        )
      ],
      rows: input.rows.map(({ cone, cells }) => [
        cone,
        ...Array.from({ length: widest }, (_, column) => {
          const cell = cells[column] ?? null;
          return cell === null ? "\u2013" : `${printTemperature(cell.tempC, unit)}${MARKS[cell.confidence].padStart(1, " ")}`;
        })
      ])
    },
    ...explanations.map((text) => ({ kind: "sentence", text })),
    ...restsOn(input.sources)
  ];
  return reportText({ title: capitalised(seriesName(input.series)), blocks }, options.paint);
}
function coneText(input, options) {
  const { unit } = options;
  const blocks = [
    {
      kind: "sentence",
      text: "The slower the last stretch, the lower the temperature at which the cone goes down."
    },
    {
      kind: "table",
      caption: `Where cone ${input.cone} goes down`,
      columns: [
        { head: "heating at", align: "right" },
        { head: "down at", align: "right" },
        { head: "give or take", align: "right" },
        { head: "from", align: "left" }
      ],
      rows: input.rows.map((row) => [
        printRate(row.rateCPerHour, unit),
        printTemperature(row.tempC, unit),
        `\xB1 ${printDifference(Math.max(1, row.sigmaK), unit)}`,
        basisText(row, input.printedCPerHour)
      ])
    },
    ...restsOn(input.sources)
  ];
  const title = `Cone ${input.cone}, ${seriesName(input.series)}`;
  return reportText({ title, blocks }, options.paint);
}
function basisText(row, printed) {
  if (row.confidence === "from-memory") return "from memory, in no copy read again";
  if (row.confidence === "one-copy") return "printed, read in one copy of the table";
  if (row.basis === "printed") return "printed in the table";
  if (row.extrapolated) return "model, far beyond the rates in the table";
  if (row.rateCPerHour < Math.min(...printed)) return "model, slower than the table goes";
  if (row.rateCPerHour > Math.max(...printed)) return "model, faster than the table goes";
  return "model, between printed rates";
}
function restsOn(sources) {
  if (sources.length === 0) return [];
  return [
    { kind: "heading", text: "What this rests on" },
    { kind: "list", items: sources.map(stopped) }
  ];
}

// src/cli/commands/cones.ts
var SHOWN_RATES = {
  C: [10, 15, 30, 60, 100, 150, 200, 300],
  F: [50, 100, 150, 200, 300].map(celsiusDeltaFromFahrenheitDelta)
};
async function run(given, options) {
  const series = seriesFrom(options.series);
  if (!series.ok) return refuse(series.problems, options);
  const table = CONE_TABLES[series.value];
  const view = { unit: options.unit ?? "C", paint: paintFor(options) };
  if (given === void 0) {
    const input2 = tableInput(table);
    if (options.json) answerJson(conesDocument(input2));
    else answer(conesText(input2, view));
    return EXIT.fine;
  }
  const cone = parseCone(given, { series: series.value, where: "command line" });
  if (!cone.ok) return refuse(cone.problems, options);
  const input = coneInput(table, cone.value, options.json ? "C" : view.unit);
  if (options.json) answerJson(conesDocument(input));
  else answer(coneText(input, view));
  return EXIT.fine;
}
function seriesFrom(name) {
  const names = Object.keys(CONE_TABLES);
  const found = names.find((series) => series === name.toLowerCase());
  if (found) return ok(found);
  return failed({
    code: "command/series",
    where: "--series",
    what: `"${name}" is not a series of cones`,
    expected: names.join(", "),
    fix: "one of these names"
  });
}
function tableInput(table) {
  return {
    series: table.series,
    ratesCPerHour: table.ratesCPerHour.flatMap((rate) => rate === null ? [] : [rate]),
    rows: table.rows.map((row) => ({
      cone: row.cone,
      cells: row.endPoints.map(
        (cell) => cell && { tempC: cell.tempC, confidence: cell.confidence }
      )
    })),
    sources: sourceTitles(table.sources)
  };
}
function coneInput(table, cone, unit) {
  const printed = table.ratesCPerHour.flatMap((rate) => rate === null ? [] : [rate]);
  const rates = [.../* @__PURE__ */ new Set([...SHOWN_RATES[unit], ...printed])].sort((a, b) => a - b);
  return {
    series: table.series,
    cone,
    rows: rates.flatMap((rateCPerHour) => {
      const end = endPointC({ series: table.series, cone, rateCPerHour });
      return end.ok ? [{ rateCPerHour, ...end.value }] : [];
    }),
    printedCPerHour: printed,
    sources: sourceTitles(sourcesOf(table, cone))
  };
}
function sourcesOf(table, cone) {
  const cells = table.rows.find((row) => row.cone === cone)?.endPoints ?? [];
  const used = new Set(cells.flatMap((cell) => cell?.sources ?? []));
  return table.sources.filter((id) => used.has(id));
}
function sourceTitles(sources) {
  return sources.map((id) => {
    const { title, publisher, locator } = CONES_SOURCES[id];
    return `${title} (${publisher}; ${locator})`;
  });
}
export {
  run
};
