import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  capitalised,
  wrap
} from "./chunk-X6LO4HOH.js";
import {
  HARD_SPACE,
  glued,
  visibleWidth
} from "./chunk-QOSRWPWR.js";
import {
  printDifference
} from "./chunk-IOGTIVWI.js";
import {
  inert
} from "./chunk-C7Q5CZLC.js";

// src/core/reports/sections/coneWords.ts
var SERIES_NAMES = {
  "self-supporting": "self-supporting cones",
  "self-supporting-iron-free": "self-supporting cones, iron-free",
  large: "large cones",
  "large-iron-free": "large cones, iron-free",
  small: "small cones",
  "large-legacy": "large cones, older table",
  "fairchild-peters-1926": "cones as measured by Fairchild and Peters, 1926",
  pce: "cones for refractories (PCE)",
  "seger-jis": "Seger cones, Japanese standard",
  "seger-european": "Seger cones, European"
};
function seriesName(series) {
  return SERIES_NAMES[series] ?? series;
}
function positionSentence(heatwork, tense) {
  const { cone, fraction, next } = heatwork.position;
  const isMeasured = tense === "was";
  const down = isMeasured ? "was down" : "goes down";
  if (cone === null) {
    const softest = heatwork.cones[0]?.cone;
    const which = softest === void 0 ? "the softest cone" : `cone ${softest}, the softest`;
    return `Not even ${which} of the series, ${down}.`;
  }
  if (next === null || fraction === null)
    return `Cone ${cone} ${down}; the series has no harder cone to measure the rest by.`;
  if (fraction < 0.1) return `Cone ${cone} ${isMeasured ? "was just down" : "just goes down"}.`;
  const carried = isMeasured ? "carried on" : "carries on";
  return `Cone ${cone} ${down}, and the heat ${carried} ${shareWords(fraction)} of the way to cone ${next}.`;
}
function plusMinusSentence(heatwork, unit) {
  const allowed = usualText(heatwork, unit);
  if (heatwork.sigmaCones === null)
    return `How far off this may be is not known, so no \xB1 is given.${allowed}`;
  return `Two firings in three lie within ${plusMinus(heatwork.sigmaCones)} cones of this: cone model, thermocouple and place in the kiln taken together.${allowed}`;
}
function usualText({ offsetIs, offsetK }, unit) {
  if (offsetIs !== "usual" || Math.abs(offsetK) < 0.5) return "";
  return ` Kilns usually run a little hotter for the cone than they read; ${printDifference(offsetK, unit)} is allowed for, and witness cones would tell what yours does.`;
}
function coneLabel(heatwork) {
  const { label } = heatwork.position;
  return heatwork.sigmaCones === null ? label : `${label} (\xB1 ${plusMinus(heatwork.sigmaCones)} cones)`;
}
function plusMinus(sigmaCones) {
  return Math.max(0.1, sigmaCones).toFixed(1);
}
function shareWords(fraction) {
  if (fraction < 0.18) return "a little";
  if (fraction < 0.29) return "about a quarter";
  if (fraction < 0.42) return "about a third";
  if (fraction < 0.58) return "about half";
  if (fraction < 0.71) return "about two thirds";
  return fraction < 0.9 ? "about three quarters" : "nearly all";
}

// src/core/reports/table.ts
var BETWEEN = "  ";
var NARROWEST = 4;
function table(input) {
  const { columns, rows, width, indent, paint } = input;
  const heads = columns.map((column) => laid(column.head, "faint"));
  const body = rows.map((row) => {
    if (row.length !== columns.length)
      throw new RangeError(`table: ${row.length} cells in ${columns.length} columns`);
    return row.map((cell) => laid(cell, null));
  });
  const room = width - visibleWidth(indent) - BETWEEN.length * (columns.length - 1);
  const widths = fitted([heads, ...body], room);
  return [heads, ...body].flatMap((row) => rowLines({ row, widths, columns, indent, paint }));
}
function laid(cell, style) {
  return typeof cell === "string" ? { lines: [inert(cell)], style } : { lines: cell.lines.map(inert), style: cell.style ?? style };
}
function fitted(rows, room) {
  const count = rows[0]?.length ?? 0;
  const measure = (cell, of) => Math.max(0, ...(cell?.lines ?? []).map(of));
  const widest = (column, of) => Math.max(NARROWEST, ...rows.map((row) => measure(row[column], of)));
  const longestWords = Array.from({ length: count }, (_, column) => widest(column, longestWord));
  const widths = Array.from({ length: count }, (_, column) => widest(column, visibleWidth));
  for (const floors of [longestWords, longestWords.map(() => NARROWEST)])
    while (sum(widths) > room) {
      const column = widestAbove(widths, floors);
      if (column < 0) break;
      widths[column] = widths[column] - 1;
    }
  return widths;
}
function widestAbove(widths, floors) {
  let found = -1;
  widths.forEach((width, column) => {
    if (width > floors[column] && width > (widths[found] ?? 0)) found = column;
  });
  return found;
}
function longestWord(line) {
  return Math.max(0, ...glued(line).split(" ").map(visibleWidth));
}
function sum(values) {
  return values.reduce((total, value) => total + value, 0);
}
function rowLines(input) {
  const { row, widths, columns, indent, paint } = input;
  const cells = row.map(
    (cell, column) => cell.lines.flatMap((line) => wrap(line, { width: widths[column] }))
  );
  const height = Math.max(...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) => {
    const pieces = cells.map((lines, column) => {
      const text = lines[line] ?? "";
      const padding = " ".repeat(Math.max(0, widths[column] - visibleWidth(text)));
      const style = row[column]?.style ?? null;
      const painted2 = text === "" || style === null ? text : paint(style, text);
      return columns[column]?.align === "right" ? padding + painted2 : painted2 + padding;
    });
    return (indent + pieces.join(BETWEEN)).replaceAll(HARD_SPACE, " ").trimEnd();
  });
}

// src/core/reports/reportText.ts
var REPORT_WIDTH = 80;
var INDENT = "  ";
var SEVERITY_COLUMN = "          ";
var WIDEST_LABEL = 24;
function reportText(report, paint) {
  const alarms = report.blocks.filter(({ kind }) => kind === "alarm");
  const lines = [
    ...alarms.flatMap((block) => [...blockLines(block, paint), ""]),
    ...titleLines(report.title, paint)
  ];
  let previous = null;
  for (const block of report.blocks) {
    if (block.kind === "alarm") continue;
    const added = blockLines(block, paint);
    if (added.length === 0) continue;
    if (hasSpaceBefore(block.kind, previous)) lines.push("");
    lines.push(...added);
    previous = block.kind;
  }
  return `${lines.join("\n")}
`;
}
function titleLines(title, paint) {
  const lines = wrap(inert(title), { width: REPORT_WIDTH });
  const width = Math.max(...lines.map(visibleWidth));
  return [...lines.map((line) => paint("heading", line)), paint("faint", "\u2500".repeat(width))];
}
function hasSpaceBefore(kind, previous) {
  if (previous === null || previous === "heading") return false;
  if (kind === "heading" || kind === "table" || kind === "finding") return true;
  if (kind === "facts") return previous !== "facts";
  return previous === "table" || previous === "facts" || previous === "finding" || previous === "lead";
}
function blockLines(block, paint) {
  switch (block.kind) {
    case "heading":
      return painted(paint, "heading", wrap(inert(block.text), { width: REPORT_WIDTH }));
    case "alarm":
      return painted(paint, "warning", wrap(inert(block.text), { width: REPORT_WIDTH }));
    case "lead":
      return painted(paint, "strong", wrap(inert(block.text), { width: REPORT_WIDTH }));
    case "sentence": {
      const lines = wrap(inert(block.text), indented);
      return block.style ? painted(paint, block.style, lines) : lines;
    }
    case "list":
      return block.items.flatMap((item) => hanging(item, `${INDENT}\u2022 `));
    case "lines":
      return block.lines.map((line) => `${INDENT}${inert(line)}`);
    case "facts":
      return factLines(block.facts, paint);
    case "finding":
      return findingLines(block, paint);
    case "table":
      return [
        ...painted(paint, "strong", wrap(inert(block.caption), indented)),
        ...table({ ...block, width: REPORT_WIDTH, indent: INDENT, paint })
      ];
    case "caution":
      return hanging(`${capitalised(block.topic)}: ${block.text}`, `${INDENT}\u2022 `);
    case "chart":
    case "picture":
      return [];
  }
}
var indented = { width: REPORT_WIDTH, first: INDENT, rest: INDENT };
function hanging(text, first) {
  return wrap(inert(text), { width: REPORT_WIDTH, first, rest: " ".repeat(visibleWidth(first)) });
}
function painted(paint, style, lines) {
  return lines.map((line) => paint(style, line));
}
function factLines(facts, paint) {
  const labels = facts.map(({ label }) => wrap(inert(label), { width: WIDEST_LABEL }));
  const width = Math.max(0, ...labels.flat().map(visibleWidth));
  return facts.flatMap(({ text }, index) => {
    const label = labels[index];
    const room = REPORT_WIDTH - visibleWidth(INDENT) - width - 2;
    const lines = wrap(inert(text), { width: room });
    return Array.from({ length: Math.max(label.length, lines.length) }, (_, line) => {
      const left = label[line] ?? "";
      const padding = " ".repeat(width - visibleWidth(left) + 2);
      return `${INDENT}${left === "" ? "" : paint("faint", left)}${padding}${lines[line] ?? ""}`.trimEnd();
    });
  });
}
function findingLines(block, paint) {
  const rest = INDENT + SEVERITY_COLUMN;
  const word = capitalised(block.severity);
  const [head = "", ...more] = wrap(inert(block.statement), {
    width: REPORT_WIDTH,
    first: rest,
    rest
  });
  const gap = " ".repeat(SEVERITY_COLUMN.length - word.length);
  return [
    `${INDENT}${paint(block.severity, word)}${gap}${head.slice(rest.length)}`,
    ...more,
    ...block.advice === "" ? [] : wrap(inert(block.advice), { width: REPORT_WIDTH, first: `${rest}\u2192 `, rest: `${rest}  ` }),
    ...block.where === null ? [] : painted(
      paint,
      "faint",
      wrap(inert(block.where), { width: REPORT_WIDTH, first: rest, rest })
    )
  ];
}

export {
  seriesName,
  positionSentence,
  plusMinusSentence,
  coneLabel,
  plusMinus,
  reportText
};
