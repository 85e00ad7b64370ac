import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  USUAL_OFFSET_BASIS,
  stretchText
} from "./chunk-4ME6ZCIX.js";
import {
  seriesName
} from "./chunk-ZUGR3IIA.js";
import {
  capitalised,
  stopped
} from "./chunk-X6LO4HOH.js";
import {
  ordered
} from "./chunk-VFKPH3SJ.js";
import {
  adviceText,
  statementText
} from "./chunk-GU4RVAU5.js";
import {
  printDifference,
  printRate
} from "./chunk-IOGTIVWI.js";
import {
  CONE_TABLES,
  printedEndPoint
} from "./chunk-R2H4YYDI.js";

// src/core/reports/section.ts
function section(text, blocks) {
  return blocks.length === 0 ? [] : [{ kind: "heading", text }, ...blocks];
}

// src/core/reports/sections/basisBlocks.ts
function basisBlocks(input, unit) {
  const items = [
    ...input.heatwork === null ? [] : coneItems(input.heatwork, unit),
    ...guideItems(input.crossings),
    ...input.findings.filter((finding) => finding.basis !== "" && !isGuide(finding.basis, input.crossings)).map((finding) => `${capitalised(finding.topic)}: ${stopped(finding.basis)}`),
    ...input.sources.map(stopped)
  ];
  return section(
    "What this rests on",
    items.length === 0 ? [] : [{ kind: "list", items: [...new Set(items)] }]
  );
}
function isGuide(basis, crossings) {
  return crossings.some((crossing) => crossing.limitBasis === basis);
}
function guideItems(crossings) {
  const bases = crossings.flatMap(({ limitBasis }) => limitBasis === null ? [] : [limitBasis]);
  return [...new Set(bases)].map((basis) => `Guides for cooling: ${stopped(basis)}`);
}
function memoryItems({ series, position }, unit) {
  const table = CONE_TABLES[series];
  const cones = [position.cone, position.next].filter((cone) => cone !== null);
  return cones.flatMap((cone) => {
    const rates = table.ratesCPerHour.filter(
      (rate) => printedEndPoint(table, cone, rate)?.confidence === "from-memory"
    );
    const said = rates.flatMap((rate) => rate === null ? [] : [printRate(rate, unit)]);
    return said.length === 0 ? [] : [`Cone ${cone}: its end point at ${said.join(" and ")} is from memory, not read again.`];
  });
}
function coneItems(heatwork, unit) {
  const { series, offsetK, offsetIs, extrapolations } = heatwork;
  const shift = Math.abs(offsetK);
  return [
    `Cones: a heatwork model of the whole curve, held to the published end points of ${seriesName(series)}. The \xB1 is one standard deviation.`,
    ...shift < 0.5 ? [] : [
      `${printDifference(shift, unit)} was ${offsetK < 0 ? "taken off" : "added to"} the readings before the cone was worked out, ${offsetIs === "usual" ? `as kilns are usually out. From ${USUAL_OFFSET_BASIS}.` : "after the witness cones."}`
    ],
    ...memoryItems(heatwork, unit),
    ...extrapolations.map((reason) => `Beyond what was published: ${stopped(reason)}`)
  ];
}

// src/core/reports/sections/cautionBlocks.ts
function cautionBlocks(cautions) {
  const once = cautions.filter(
    (caution, index) => cautions.findIndex((other) => other.text === caution.text) === index
  );
  if (once.length === 0) return [];
  return [
    { kind: "heading", text: "Take care" },
    ...once.map(({ topic, text }) => ({ kind: "caution", topic, text }))
  ];
}

// src/core/reports/sections/findingBlocks.ts
var WORST_FIRST = ["warning", "caution", "note"];
function findingBlocks(findings, context) {
  const { unit, startOfDaySeconds } = context;
  return [
    { kind: "heading", text: "Findings" },
    { kind: "sentence", text: countSentence(findings) },
    ...ordered(findings).map(
      (finding) => ({
        kind: "finding",
        severity: finding.severity,
        statement: statementText(finding, unit),
        advice: adviceText(finding, unit),
        where: whereText(finding, startOfDaySeconds)
      })
    )
  ];
}
function countSentence(findings) {
  if (findings.length === 0) return "Nothing stood out in what could be seen.";
  const counts = WORST_FIRST.flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [`${count} ${severity}${count === 1 ? "" : "s"}`];
  });
  return `${counts.join(", ")}.`;
}
function whereText(finding, startOfDaySeconds) {
  const parts = [
    ...finding.zone === null ? [] : [`thermocouple ${finding.zone}`],
    ...finding.span === null ? [] : [stretchText(startOfDaySeconds, finding.span)]
  ];
  return parts.length === 0 ? null : `${capitalised(parts.join(", "))}.`;
}

export {
  section,
  basisBlocks,
  cautionBlocks,
  findingBlocks
};
