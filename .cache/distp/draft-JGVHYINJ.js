import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  draftDocument
} from "./chunk-RX6HAOND.js";
import {
  readBody
} from "./chunk-ZF4D2T4C.js";
import "./chunk-3W76GZHT.js";
import {
  costFigure
} from "./chunk-JORAX5YE.js";
import {
  ownKiln
} from "./chunk-7P5KF26O.js";
import "./chunk-YDD56ZKU.js";
import {
  scheduleYaml
} from "./chunk-R7HOELZO.js";
import "./chunk-DQZAGW2O.js";
import "./chunk-RLEK6R44.js";
import {
  draftCharts
} from "./chunk-RJF4ZX2Q.js";
import "./chunk-ELCCSIMJ.js";
import {
  reviewPicture
} from "./chunk-CBVRRUI2.js";
import {
  drawn2 as drawn,
  writePictures
} from "./chunk-LCZWALSP.js";
import {
  offsetFrom,
  tariffFrom,
  wattsFrom
} from "./chunk-3SHC6X7O.js";
import {
  reportHtml
} from "./chunk-Q77PV3QE.js";
import {
  writeOutput
} from "./chunk-QVADD2WS.js";
import "./chunk-6U5UKUNG.js";
import {
  bodyBlocks,
  coneTableBlocks,
  crossingBlocks,
  printSetRate,
  printSpan,
  printTravel,
  strainBlocks
} from "./chunk-46CWPLZJ.js";
import "./chunk-6GRKVVXC.js";
import {
  changedSchedule,
  draftSchedule,
  newSchedule,
  parsePace,
  parseStart,
  segmentsKWh,
  toldWare,
  wareSizeProblems
} from "./chunk-ETRUSM3K.js";
import {
  AT_TOP_END_SECONDS,
  REFERENCE_KILN,
  expandSchedule,
  pieceOf,
  topEndSeconds
} from "./chunk-GKWIKIYP.js";
import "./chunk-QVXNA4U3.js";
import "./chunk-I7PXXNWR.js";
import {
  chartBlocks
} from "./chunk-VTFWEP2W.js";
import "./chunk-I6LOXCIU.js";
import "./chunk-CQRY3XKN.js";
import {
  basisBlocks,
  cautionBlocks,
  findingBlocks,
  section
} from "./chunk-N5S6N4PS.js";
import {
  momentColumns,
  momentLines,
  momentText,
  startOfDayOf
} from "./chunk-4ME6ZCIX.js";
import {
  coneLabel,
  plusMinusSentence,
  positionSentence,
  reportText
} from "./chunk-ZUGR3IIA.js";
import {
  capitalised,
  stopped
} from "./chunk-X6LO4HOH.js";
import {
  CONE_MODELS
} from "./chunk-XM3JYZUM.js";
import "./chunk-BX5CJHE4.js";
import "./chunk-S4DLFBTW.js";
import "./chunk-BNESJYXC.js";
import "./chunk-M4BL2XKO.js";
import {
  hasWarning,
  peakOf,
  sizedAsMug
} from "./chunk-VFKPH3SJ.js";
import "./chunk-OGOFPCXR.js";
import "./chunk-4LHYQSW7.js";
import "./chunk-V6QCPP2T.js";
import "./chunk-F6MWUWUD.js";
import "./chunk-GU4RVAU5.js";
import {
  EXIT,
  answer,
  answerJson,
  paintFor,
  refuse,
  say
} from "./chunk-QOSRWPWR.js";
import "./chunk-NHPGJLL4.js";
import {
  readSchedule
} from "./chunk-KW2V662C.js";
import "./chunk-WNROHRXV.js";
import "./chunk-2XN66YSB.js";
import {
  parseDuration
} from "./chunk-OQY4R7CT.js";
import "./chunk-WA5SZDQ5.js";
import "./chunk-2NHG2YQ4.js";
import {
  printDifference,
  printDuration,
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import "./chunk-OBEK7CUI.js";
import "./chunk-PMYOLCKT.js";
import "./chunk-DDB2KZF2.js";
import {
  wareLength
} from "./chunk-X2IVNITG.js";
import "./chunk-BUYZUOGW.js";
import "./chunk-P7LYRYX6.js";
import "./chunk-2Y6UMGL7.js";
import "./chunk-GJAD4LJL.js";
import {
  parseTemperature
} from "./chunk-PYB7INDF.js";
import "./chunk-BKGWRYOW.js";
import {
  bodyNamed,
  nearWord
} from "./chunk-O435DZD7.js";
import {
  CONE_TABLES,
  parseCone
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";
import "./chunk-OEDHJ3SZ.js";
import "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";

// src/core/schedule/scheduleDifference.ts
function scheduleDifference(before, after, kiln = REFERENCE_KILN) {
  const old = linesOf(before, kiln);
  const young = linesOf(after, kiln);
  const common = commonLengths(old, young);
  const lines = [];
  let i = 0;
  let j = 0;
  while (i < old.length || j < young.length) {
    const was = old[i];
    const is = young[j];
    if (was && is && isSame(was, is)) {
      lines.push({ ...is, kind: "same" });
      i++;
      j++;
    } else if (was && (!is || lengthAt(common, i + 1, j) >= lengthAt(common, i, j + 1))) {
      lines.push({ ...was, kind: "removed" });
      i++;
    } else if (is) {
      lines.push({ ...is, kind: "added" });
      j++;
    }
  }
  return lines;
}
function linesOf(schedule, kiln) {
  const { timeline } = expandSchedule(schedule, { kiln });
  const energies = segmentsKWh({ schedule, kiln });
  return schedule.segments.map((segment, index) => {
    const rows = timeline.filter((row) => row.segment === index);
    return {
      segment,
      fromC: rows[0]?.fromC ?? segment.toC,
      seconds: rows.reduce((sum, row) => sum + row.endSeconds - row.startSeconds, 0),
      kWh: energies?.[index] ?? null
    };
  });
}
function isSame(a, b) {
  return a.fromC === b.fromC && a.segment.toC === b.segment.toC && a.segment.rateCPerHour === b.segment.rateCPerHour && a.segment.holdSeconds === b.segment.holdSeconds;
}
function commonLengths(old, young) {
  const table = Array.from(
    { length: old.length + 1 },
    () => new Array(young.length + 1).fill(0)
  );
  for (let i = old.length - 1; i >= 0; i--)
    for (let j = young.length - 1; j >= 0; j--)
      table[i][j] = isSame(old[i], young[j]) ? lengthAt(table, i + 1, j + 1) + 1 : Math.max(lengthAt(table, i + 1, j), lengthAt(table, i, j + 1));
  return table;
}
function lengthAt(table, i, j) {
  return table[i]?.[j] ?? 0;
}

// src/core/reports/sections/mendingBlocks.ts
var MARK = {
  same: " ",
  removed: "\u2212",
  added: "+"
};
function mendingBlocks(mending, unit) {
  const { before, after, repair, kiln } = mending;
  const lines = scheduleDifference(before, after, kiln);
  const changed = lines.some(({ kind }) => kind !== "same");
  const cost = repair === null || !changed ? [] : [{ kind: "sentence", text: `In all it costs ${costText(repair)}.` }];
  return [
    ...section("What was changed", [
      ...cost,
      changed ? differenceTable(lines, unit, before.unit) : { kind: "sentence", text: "Nothing; the schedule stays as it was." }
    ]),
    ...section(
      "Why, and what each mend costs",
      listOf((repair?.steps ?? []).map((step) => stepText(step)))
    ),
    ...section("What the kiln must do, and what cannot be mended", listOf(repair?.limits ?? []))
  ];
}
function differenceTable(lines, unit, own) {
  return {
    kind: "table",
    caption: "What changes: \u2212 goes, + comes",
    columns: [
      { head: "", align: "left" },
      { head: "from \u2192 to", align: "right" },
      { head: "rate", align: "right" },
      { head: "hold", align: "right" },
      { head: "lasts", align: "right" },
      { head: "kWh", align: "right" },
      { head: "reason", align: "left" }
    ],
    rows: lines.map((line) => [
      MARK[line.kind],
      printSpan(line.fromC, line.segment.toC, unit),
      line.segment.rateCPerHour === "free" ? "free" : printSetRate(line.segment.rateCPerHour, { unit, own }),
      line.segment.holdSeconds === 0 ? "" : printDuration(line.segment.holdSeconds),
      printDuration(line.seconds),
      line.kWh === null ? "" : line.kWh.toFixed(1),
      line.kind === "added" ? line.segment.why ?? "" : ""
    ])
  };
}
function stepText(step) {
  return `${stopped(capitalised(step.did))} It costs ${costText(step)}. ${step.reason}`;
}
function costText(cost) {
  const { costSeconds, costKWh } = cost;
  const time = `${printDuration(Math.abs(costSeconds))} ${costSeconds < 0 ? "less" : "more"}`;
  if (costKWh === null) return `${time}, electricity unknown`;
  return `${time} and ${Math.abs(costKWh).toFixed(1)} kWh ${costKWh < 0 ? "less" : "more"}`;
}
function listOf(items) {
  return items.length === 0 ? [] : [{ kind: "list", items }];
}

// src/core/reports/sections/ownKilnBlocks.ts
var SAME_CONE = 0.1;
var LEAST_OUTPUT = 0.01;
var COOL_C = [200, 100, 50];
function ownKilnBlocks(draft, when) {
  const { own } = draft;
  if (own === null) return [];
  return section("On your kiln", [
    { kind: "sentence", text: reliabilityText(own, when.unit) },
    { kind: "facts", facts: factsOf(draft, own, when) },
    ...own.segments.length === 0 ? [] : [segmentTable(own, when)],
    ...listBlocks(poweredItems(own, when.unit))
  ]);
}
function costText2(cost) {
  return cost === null ? "" : `, ${costFigure(cost)} at the tariff given`;
}
function reliabilityText({ powerFrom, bricksApart }, unit) {
  const [hot, low, lowest] = [1e3, 200, 100].map((tempC) => printTemperature(tempC, unit));
  const bricks = bricksApart ? "" : ` The logs do not tell bricks from ware, so the climb above ${hot} is counted at 85 %.`;
  const least = powerFrom === "output" ? "" : " They carry no output of the controller, so its speed is the least that it can do.";
  return `Simulated from your logs, with their load in their room: every number is about right, not exact.${bricks}${least} In a trial of our own on a simulated kiln, a firing that was not learned from came out within ${printDifference(18, unit)} at its peak, 0.2 h at ${low} and ${lowest}, 7 % in its rates and 1 % in its electricity; a real kiln will differ more.`;
}
function factsOf(draft, own, when) {
  const { unit } = when;
  return [
    { label: "cone", text: coneText(draft, own) },
    ...own.stall === null ? [] : [
      {
        label: "gets no further",
        text: `than about ${printTemperature(own.stall.tempC, unit)} in segment ${own.stall.segment + 1}, on its way to ${printTemperature(own.stall.toC, unit)}`
      }
    ],
    { label: "programme ends", text: endText(draft, own, when) },
    ...COOL_C.map((tempC) => ({
      label: `at ${printTemperature(tempC, unit)}`,
      text: coolText(own, tempC, when)
    })),
    { label: "electricity", text: electricityText(own) }
  ];
}
function coneText({ heatwork }, own) {
  const [plan, kiln] = [heatwork.position, own.heatwork.position];
  const same = plan.index === null || kiln.index === null ? plan.label === kiln.label : Math.abs(plan.index - kiln.index) < SAME_CONE;
  const off = own.stall?.rising ? ", switched off where it stalls" : "";
  return same ? `as planned, ${plan.label}${off}` : `${kiln.label}${off}; the plan makes ${plan.label}`;
}
function endText({ expansion }, own, when) {
  const { endSeconds } = own.firing;
  if (endSeconds === null) return "never: it waits for a temperature that does not come";
  const late = endSeconds - (expansion.timeline.at(-1)?.endSeconds ?? 0);
  const than = Math.abs(late) < 300 ? "as planned" : `about ${printDuration(Math.abs(late))} ${late > 0 ? "later" : "sooner"} than planned`;
  return `about ${momentText(when.startOfDaySeconds, endSeconds)}, ${than}`;
}
function coolText(own, tempC, when) {
  const reached = own.firing.cooledTo.find((each) => each.tempC === tempC);
  return reached === void 0 ? "not worked out: so near its room the kiln hardly falls any more" : `about ${momentText(when.startOfDaySeconds, reached.seconds)}, lid shut`;
}
function electricityText(own) {
  const { energyKWh, cost } = own.firing;
  if (energyKWh !== null) {
    const till = own.stall?.rising ? " up to where it stalls" : "";
    const noPrice = own.tariffPerKWh === null ? "; --tariff adds what it costs" : "";
    return `about ${Math.round(energyKWh)} kWh${till}${costText2(cost)}, counted at the power on the plate${noPrice}`;
  }
  const missing = [
    ...own.powerWatt === null ? ["the wattage from the plate of the kiln, by --power 10.5kW"] : [],
    ...own.powerFrom === "output" ? [] : ["a log with a column of the controller's output"]
  ];
  return `not known; missing: ${missing.join(" and ")}`;
}
function segmentTable({ segments }, { unit, startOfDaySeconds }) {
  return {
    kind: "table",
    caption: "Segment by segment, as your kiln will go",
    columns: [
      { head: "segment", align: "right" },
      { head: "from \u2192 to", align: "right" },
      { head: "asked", align: "right" },
      { head: "goes, about", align: "right" },
      { head: "late by", align: "right" },
      ...momentColumns("ends", startOfDaySeconds)
    ],
    rows: segments.map((went) => [
      String(went.segment + 1),
      printSpan(went.fromC, went.toC, unit),
      went.askedCPerHour === "free" ? "free" : printTravel(went.askedCPerHour, unit),
      printRate(Math.abs(went.meanCPerHour), unit),
      went.behindSeconds < 60 ? "" : printDuration(went.behindSeconds),
      ...momentLines(startOfDaySeconds, went.endSeconds)
    ])
  };
}
function poweredItems({ segments, powerFrom }, unit) {
  return segments.flatMap((went) => {
    const held = went.toC < went.fromC && went.askedCPerHour !== "free";
    if (!held || went.rampOutput < LEAST_OUTPUT) return [];
    const share = `${powerFrom === "output" ? "about" : "at most about"} ${Math.max(1, Math.round(went.rampOutput * 100))} % of full power`;
    const until = went.behindFromC === null ? "" : `, down to about ${printTemperature(went.behindFromC, unit)}; from there it falls more slowly than asked`;
    return [
      `Segment ${went.segment + 1}: left alone the kiln falls faster, so the elements have to slow it, ${share} on the mean${until}.`
    ];
  });
}
function listBlocks(items) {
  return items.length === 0 ? [] : [{ kind: "list", items }];
}

// src/core/reports/draftBlocks.ts
function draftBlocks(draft, context) {
  const { unit, charts = {}, sources = [] } = context;
  const { heatwork, expansion, crossings, findings } = draft;
  const startOfDaySeconds = startOfDayOf(draft.start);
  const when = { unit, startOfDaySeconds };
  return [
    {
      kind: "lead",
      text: `${capitalised(coneLabel(heatwork))}, peak ${printTemperature(peakOf(expansion.curve).tempC, unit)}`
    },
    {
      kind: "sentence",
      text: `${positionSentence(heatwork, "will be")} ${plusMinusSentence(heatwork, unit)}`
    },
    { kind: "facts", facts: headlineFacts(draft, when, context.thermocouple) },
    ...context.mending === void 0 ? [] : mendingBlocks(context.mending, unit),
    ...chartBlocks("The schedule, temperature against time", charts.firing),
    { kind: "heading", text: "Timeline" },
    timelineTable(expansion.timeline, when, draft.schedule.unit),
    ...reasonBlocks(draft.schedule),
    ...ownKilnBlocks(draft, when),
    ...findingBlocks(findings, when),
    ...section("Through the inversions", [
      ...crossingBlocks(crossings, { caption: "How fast it goes", ...when }),
      ...chartBlocks("Cooling through the inversions", charts.cooling)
    ]),
    ...section("Stress in the ware", [
      ...strainBlocks(draft.strains, { tense: "will be", ...when }),
      ...chartBlocks("Computed stress over strength against time", charts.strain)
    ]),
    ...section("Cones", [
      ...coneTableBlocks(heatwork, { tense: "will be", ...when }),
      ...chartBlocks("Cones going down during the firing", charts.cones)
    ]),
    ...section(
      "What had to be assumed",
      listBlocks2(
        [...expansion.assumptions, ...context.assumed ?? []].map(
          (each) => capitalised(stopped(each))
        )
      )
    ),
    ...bodyBlocks(draftedPieces(draft.schedule), {
      unit,
      ownIn: "the schedule under ware, body, or in a file named with --body"
    }),
    ...basisBlocks({ heatwork, crossings, findings, sources }, unit),
    ...cautionBlocks(draft.cautions)
  ];
}
function draftedPieces({ ware }) {
  const piece = pieceOf(ware);
  return [{ name: "the ware", ware: piece.ware, assumed: [] }];
}
function headlineFacts(draft, when, said) {
  const { schedule, start, expansion } = draft;
  const { unit, startOfDaySeconds } = when;
  const total = expansion.timeline.at(-1)?.endSeconds ?? 0;
  const ware = wareText(schedule);
  return [
    { label: "cone wanted", text: wantedText(draft, when) },
    ...said === void 0 ? [] : [{ label: "thermocouple", text: said }],
    ...start === null ? [] : [{ label: "starts", text: `${start.replace("T", " ").slice(0, 16)} by the clock` }],
    {
      label: "takes",
      text: `${printDuration(total)}, from ${printTemperature(schedule.startC, unit)}; ends ${momentText(startOfDaySeconds, total)}`
    },
    ...draft.energyKWh === null ? [] : [
      {
        label: "electricity",
        text: `about ${Math.round(draft.energyKWh)} kWh, as the logs of the kiln have it`
      }
    ],
    ...ware === "" ? [] : [{ label: "ware", text: ware }],
    ...schedule.notes === null ? [] : [{ label: "notes", text: schedule.notes }]
  ];
}
function wantedText(draft, { unit, startOfDaySeconds }) {
  const { schedule, heatwork, expansion } = draft;
  const { cone } = schedule;
  if (cone === null) return "none named in the schedule";
  const state = heatwork.cones.find((each) => each.cone === cone);
  if (state === void 0) return `cone ${cone}`;
  const { downAtSeconds, marginK } = state;
  if (downAtSeconds === null)
    return `cone ${cone}: ${state.bend}, ${printDifference(Math.abs(marginK), unit)} short of its end`;
  const topEnd = topEndSeconds(schedule, expansion);
  return `cone ${cone}: falls ${momentText(startOfDaySeconds, downAtSeconds)}${topEnd === null ? "" : `, ${endText2(downAtSeconds - topEnd)}`}`;
}
function endText2(afterSeconds) {
  if (Math.abs(afterSeconds) <= AT_TOP_END_SECONDS) return "as the top hold ends";
  const much = printDuration(Math.abs(afterSeconds));
  return afterSeconds < 0 ? `${much} before the top hold ends` : `${much} after the top hold has ended, while the kiln cools`;
}
function wareText(schedule) {
  const { thickestMm, widestMm, state, crackle } = schedule.ware;
  return [
    ...state === null ? [] : [state],
    ...thickestMm === null ? [] : [`thickest part ${Math.round(thickestMm)} mm`],
    ...widestMm === null ? [] : [`widest piece ${Math.round(widestMm)} mm`],
    ...crackle ? ["glaze meant to crackle"] : []
  ].join(", ");
}
function timelineTable(timeline, when, own) {
  const { unit, startOfDaySeconds } = when;
  return {
    kind: "table",
    caption: "Segment by segment",
    columns: [
      { head: "segment", align: "right" },
      { head: "from \u2192 to", align: "right" },
      { head: "rate", align: "right" },
      { head: "lasts", align: "right" },
      ...momentColumns("ends", startOfDaySeconds)
    ],
    rows: timeline.map((row) => [
      String(row.segment + 1),
      row.kind === "hold" ? printTemperature(row.toC, unit) : printSpan(row.fromC, row.toC, unit),
      rateText(row, unit, own),
      printDuration(row.endSeconds - row.startSeconds),
      ...momentLines(startOfDaySeconds, row.endSeconds)
    ])
  };
}
function rateText(row, unit, own) {
  if (row.kind === "hold") return "hold";
  return row.assumedRate ? `free, about ${printRate(row.rateCPerHour, unit)}` : `${row.rateCPerHour < 0 ? "down" : "up"} ${printSetRate(row.rateCPerHour, { unit, own })}`;
}
function reasonBlocks(schedule) {
  return listBlocks2(
    schedule.segments.flatMap(
      ({ why }, index) => why === null ? [] : [`Segment ${index + 1}: ${stopped(why)}`]
    )
  );
}
function listBlocks2(items) {
  return items.length === 0 ? [] : [{ kind: "list", items }];
}

// src/core/reports/draftHtml.ts
function draftHtml(draft, options) {
  return reportHtml({
    title: draft.schedule.title,
    language: "en",
    blocks: draftBlocks(draft, options)
  });
}

// src/core/reports/draftText.ts
function draftText(draft, options) {
  return reportText(
    { title: draft.schedule.title, blocks: draftBlocks(draft, options) },
    options.paint
  );
}

// src/cli/coneSeries.ts
function coneSeries(text) {
  const solvable = Object.keys(CONE_MODELS);
  const name = text.trim().toLowerCase().replaceAll(/\s+/g, "-");
  const found = solvable.find((series) => series === name);
  if (found !== void 0) return ok(found);
  const common = { where: "--series", expected: `one of ${solvable.join(", ")}` };
  if (Object.hasOwn(CONE_TABLES, name))
    return failed({
      ...common,
      code: "command/series-without-model",
      what: `no schedule can be worked out for ${name} cones: their end points are a table to look up, with no model of holds and rates`,
      fix: `--series self-supporting; to see the table, undunted cones --series ${name}`
    });
  const near = nearWord(name, solvable);
  return failed({
    ...common,
    code: "command/series",
    what: `"${text}" is not a series of cones`,
    fix: `--series ${near ?? "self-supporting"}`
  });
}

// src/cli/draftWishes.ts
function wishesFrom(options, unit) {
  const series = coneSeries(options.series ?? "self-supporting");
  const cone = series.ok ? coneFrom(options.cone, series.value) : ok("");
  const cooling = coolingFrom(options.cooling ?? "natural", unit);
  const paces = pacesFrom(options.atMost, unit);
  const within = withinFrom(options.within);
  if (series.ok && cone.ok && cooling.ok && paces.ok && within.ok)
    return ok({
      cone: cone.value,
      series: series.value,
      cooling: cooling.value,
      paces: paces.value,
      withinSeconds: within.value
    });
  return failed(
    ...[series, cone, cooling, paces, within].flatMap((part) => part.ok ? [] : part.problems)
  );
}
function pacesFrom(texts = [], unit) {
  const parsed = texts.map((text) => parsePace(text, { unit, where: "--at-most" }));
  const problems = parsed.flatMap((pace) => pace.ok ? [] : pace.problems);
  if (problems.length > 0) return failed(...problems);
  return ok(parsed.flatMap((pace) => pace.ok ? [pace.value] : []));
}
function withinFrom(text) {
  if (text === void 0) return ok(null);
  const span = parseDuration(text, { bareUnit: "h", where: "--within" });
  if (span.ok) return span;
  const expected = '"36 h", "30 h 30 min", "30:30" (hours and minutes), or a bare number of hours';
  return failed(...span.problems.map((problem) => ({ ...problem, expected, fix: "--within 36h" })));
}
function coneFrom(text, series) {
  if (text !== void 0) return parseCone(text, { series, where: "--cone" });
  return failed({
    code: "command/no-cone",
    where: "--cone",
    what: "no cone is named",
    expected: "the cone to reach, with its leading zero: 5, 05, 5.5",
    fix: "--cone 5"
  });
}
async function wareFrom(options, cone) {
  const body = options.body === void 0 ? ok(null) : await bodyFrom(options.body, cone);
  const [wall, base, width] = ["wall", "base", "width"].map((option) => {
    const text = options[option];
    const name = option === "width" ? "widest" : option;
    return text === void 0 ? ok(null) : wareLength(text, { name, where: `--${option}` });
  });
  if (body.ok && wall.ok && base.ok && width.ok) {
    const sizes = { wallMm: wall.value, baseMm: base.value, widestMm: width.value };
    const wrong = wareSizeProblems(sizes);
    return wrong.length > 0 ? failed(...wrong) : ok({ body: body.value, ...sizes });
  }
  return failed(...[body, wall, base, width].flatMap((part) => part.ok ? [] : part.problems));
}
var BODY_FILE = /\.(?:ya?ml|json)$/i;
async function bodyFrom(words, cone) {
  if (BODY_FILE.test(words)) return await readBody(words);
  const named = bodyNamed(words, "--body");
  if (cone === null || /\d/.test(words)) return named;
  const fired = bodyNamed(`${words} ${cone}`, "--body");
  return fired.ok ? fired : named;
}
var HOLD = /^hold\s+([\d.]+\s*°?\s*[cf]?)\s+(?:for\s+)?(\d.*)$/i;
function coolingFrom(text, unit) {
  const words = text.trim().toLowerCase();
  if (words === "natural" || words === "slow") return ok({ kind: words });
  const hold = HOLD.exec(words);
  const at = parseTemperature(hold?.[1] ?? "", { unit, where: "--cooling" });
  const span = parseDuration(hold?.[2] ?? "", { where: "--cooling" });
  if (at.ok && span.ok && span.value > 0)
    return ok({ kind: "hold", atC: at.value, seconds: span.value });
  return failed({
    code: "command/cooling",
    where: "--cooling",
    what: `"${text.trim().slice(0, 40)}" is no way of cooling that is known`,
    expected: 'natural, slow, or a hold on the way down with its length: "hold 900C 1h"',
    fix: nearestCooling(words, at.ok ? hold?.[1] ?? null : null)
  });
}
function nearestCooling(words, holdAt) {
  if (!/^h[oe]l/.test(words)) return `--cooling ${nearWord(words, ["natural", "slow"]) ?? "slow"}`;
  const at = holdAt ?? /\d+(?:\.\d+)?\s*°?\s*[cf]\b/.exec(words)?.[0] ?? "900C";
  const span = /\d+(?:\.\d+)?\s*(?:h|min)\b/.exec(words)?.[0] ?? "1h";
  return `--cooling "hold ${at.replace(/\s+/g, "").toUpperCase()} ${span}"`;
}

// src/cli/readScheduleWishes.ts
function newOnlyProblems(options) {
  return ["cooling", "within"].filter((name) => options[name] !== void 0).map((name) => ({
    code: "command/new-only",
    where: `--${name}`,
    what: "only a new schedule is made by it, and the schedule given is there already",
    expected: `--${name} together with --new`,
    fix: `leave --${name} out, or give --new and --cone in place of the schedule`
  }));
}
function wantedOfRead(read, options) {
  const series = options.series === void 0 ? ok(read.series) : coneSeries(options.series);
  const damp = dampState(read.ware.state, options.damp === true);
  const cone = series.ok ? wantedCone(read, { ...options, to: series.value }) : ok(null);
  if (!series.ok || !damp.ok || !cone.ok)
    return failed(...[series, cone, damp].flatMap((part) => part.ok ? [] : part.problems));
  const schedule = {
    ...read,
    cone: cone.value,
    series: series.value,
    ware: { ...read.ware, state: damp.value }
  };
  return ok({ schedule, said: gaveWay(read, schedule, options) });
}
function wantedCone(read, by) {
  if (by.cone !== void 0) return coneFrom(by.cone, by.to);
  if (read.cone === null || by.to === read.series) return ok(read.cone);
  const same = parseCone(read.cone, { series: by.to, where: "--series" });
  if (same.ok) return same;
  return failed(
    ...same.problems.map((problem) => ({
      ...problem,
      what: `the cone of the schedule, ${read.cone}, is not one of the ${by.to} series`,
      fix: `${problem.fix.replace("write ", "--cone ").replaceAll('"', "")}, or leave --series out`
    }))
  );
}
function dampState(state, damp) {
  if (!damp) return ok(state);
  if (state !== "bisqued" && state !== "glazed on bisque") return ok("damp");
  return failed({
    code: "command/damp-glazed",
    where: "--damp",
    what: `the ware of the schedule is ${state}, so its clay was fired before and cannot be damp`,
    expected: "raw clay, as ware.state of the schedule says it: bone dry, damp, glazed raw",
    fix: "leave --damp out; for raw ware, correct ware.state in the schedule"
  });
}
function gaveWay(read, now, options) {
  const judged = options.solve === void 0 && !options.repair;
  return [
    ...now.series === read.series ? [] : [`the schedule is made for ${read.series} cones; ${now.series} cones are judged here`],
    ...judged && read.cone !== null && now.cone !== null && now.cone !== read.cone ? [
      `the schedule is made for cone ${read.cone} and is judged by cone ${now.cone} as it stands; --solve peak changes it so that cone ${now.cone} goes down`
    ] : []
  ];
}

// src/cli/draftedInput.ts
async function draftedInput(path, options) {
  const clash = contradiction(path, options);
  if (clash !== null) return failed(clash);
  const offset = offsetFrom(options.offset);
  const power = wattsFrom(options.power);
  const tariff = tariffFrom(options.tariff);
  if (!power.ok || !tariff.ok)
    return failed(...[power, tariff].flatMap((part) => part.ok ? [] : part.problems));
  const told = { powerWatt: power.value, tariffPerKWh: tariff.value };
  const own = options.kiln === void 0 ? ok(null) : await ownKiln(options.kiln, told);
  if (!offset.ok || !own.ok)
    return failed(...[offset, own].flatMap((part) => part.ok ? [] : part.problems));
  const past = options.offset === void 0 ? own.value?.offset ?? null : null;
  const known = {
    offsetK: past?.offsetK ?? offset.value,
    ...past !== null && { offsetSigmaK: past.sigmaK },
    ...own.value && { kiln: own.value.kiln }
  };
  const made = path === void 0 ? await drafted(options, known) : await changedRead(path, options, known);
  if (!made.ok) return made;
  const unit = options.unit ?? made.value.schedule.unit;
  const thermocouple = past !== null ? pastText(past, unit) : offset.value === null ? null : toldText(offset.value, unit);
  return ok({ ...made.value, thermocouple });
}
async function drafted(options, known) {
  const unit = options.unit ?? "C";
  const wishes = wishesFrom(options, unit);
  const ware = await wareFrom(options, options.cone ?? null);
  if (!wishes.ok || !ware.ok)
    return failed(...[wishes, ware].flatMap((part) => part.ok ? [] : part.problems));
  const { body, widestMm } = ware.value;
  const { wallMm, baseMm } = sizedAsMug(ware.value);
  const made = newSchedule({
    ...wishes.value,
    ...known,
    unit,
    ware: {
      body,
      wallMm,
      baseMm,
      widestMm,
      damp: options.damp ?? false
    }
  });
  if (!made.ok) return made;
  const sizes = ware.value.wallMm === null && ware.value.baseMm === null ? [
    `wall ${wallMm} mm and base ${baseMm} mm, as of an ordinary mug, are assumed; --wall and --base say it`
  ] : [];
  return ok({
    schedule: made.value,
    mending: null,
    known,
    assumed: [...sizes, ...pieceOf(made.value.ware).assumed]
  });
}
async function changedRead(path, options, known) {
  const read = await readSchedule(path);
  const idle = newOnlyProblems(options);
  if (!read.ok || idle.length > 0) return failed(...read.ok ? [] : read.problems, ...idle);
  const wanted = wantedOfRead(read.value, options);
  if (!wanted.ok) return wanted;
  const { schedule, said } = wanted.value;
  const told = await wareFrom(options, schedule.cone);
  if (!told.ok) return told;
  const before = { ...schedule, ware: toldWare(schedule.ware, told.value) };
  const paces = pacesFrom(options.atMost, schedule.unit);
  if (!paces.ok) return paces;
  const assumed = [...said, ...pieceOf(before.ware).assumed];
  const asked = { paces: paces.value, repair: options.repair ?? false };
  if (!asked.repair && options.solve === void 0 && asked.paces.length === 0)
    return ok({ schedule: before, mending: null, known, assumed });
  const cone = before.cone === null ? coneFrom(void 0, before.series) : ok(before.cone);
  if (options.solve !== void 0 && !cone.ok) return cone;
  const solve = options.solve === void 0 || !cone.ok ? null : { part: options.solve, cone: cone.value };
  const changed = changedSchedule(before, { ...asked, solve, ...known });
  if (!changed.ok) return changed;
  const { after, repair } = changed.value;
  const kiln = known.kiln ?? REFERENCE_KILN;
  return ok({ schedule: after, mending: { before, after, repair, kiln }, known, assumed });
}
function pastText(past, unit) {
  const { sigmaK, firings } = past;
  const count = firings === 1 ? "one past firing" : `${firings} past firings`;
  return `${offText(past.offsetK, unit)} by the witness cones of ${count}, give or take ${printDifference(sigmaK, unit)}; the cones here allow for that`;
}
function toldText(offsetK, unit) {
  return `${offText(offsetK, unit)}, as --offset says; the cones here allow for that`;
}
function offText(offsetK, unit) {
  const size = printDifference(Math.abs(offsetK), unit);
  return size.startsWith("0 ") ? "reads right" : `reads ${size} too ${offsetK < 0 ? "high" : "low"}`;
}
function contradiction(path, options) {
  const common = { code: "command/contradiction", where: "command line" };
  if (options.new && path !== void 0)
    return {
      ...common,
      what: "both --new and a schedule are given",
      expected: "a schedule to draft, or --new for one that is not there yet",
      fix: "drop one"
    };
  if (!options.new && path === void 0)
    return {
      code: "command/no-schedule",
      where: "command line",
      what: "no schedule is given",
      expected: "a schedule file, - for standard input, or --new",
      fix: swallowed(options.kiln) ?? "undunted draft --new --cone 5"
    };
  const forKiln = ["power", "tariff"].find((name) => options[name] !== void 0);
  if (options.kiln === void 0 && forKiln !== void 0)
    return {
      code: "command/no-kiln",
      where: `--${forKiln}`,
      what: `--${forKiln} is given without --kiln`,
      expected: "logs of the kiln, from whose output column the electricity is worked out",
      fix: `add --kiln with its logs, or leave --${forKiln} out`
    };
  const changes = [options.solve && "--solve", options.repair && "--repair"];
  const asked = changes.filter((change) => change);
  if (!options.new || asked.length === 0) return null;
  return {
    ...common,
    what: `${["--new", ...asked].join(" and ")} are given together`,
    expected: "--new, or changes of a schedule that is there",
    fix: "write the new one with -o, then change that file"
  };
}
function swallowed(kiln) {
  const schedule = kiln?.find((path) => /\.(ya?ml|json)$/i.test(path));
  if (schedule === void 0) return null;
  const logs = kiln?.filter((path) => path !== schedule).join(" ");
  return `write the schedule before --kiln, which takes every name after it for a log: undunted draft ${schedule} --kiln ${logs}`;
}

// src/cli/commands/draft.ts
async function run(path, options) {
  const start = options.start === void 0 ? ok(null) : parseStart(options.start, "--start", wallNow());
  const input = await draftedInput(path, options);
  const unwanted = nothingToWrite(options);
  const problems = [
    ...[input, start].flatMap((result) => result.ok ? [] : result.problems),
    ...unwanted === null ? [] : [unwanted]
  ];
  if (!input.ok || !start.ok || problems.length > 0) return refuse(problems, options);
  const { schedule, known } = input.value;
  const draft = draftSchedule({ schedule, start: start.value, ...known });
  if (options.output === "-") answer(scheduleYaml(schedule));
  else {
    const shown = await report(draft, input.value, options);
    if (!shown.ok) return refuse(shown.problems, options);
  }
  return hasWarning(draft.findings) ? EXIT.no : EXIT.fine;
}
async function report(draft, input, options) {
  const { schedule, mending, assumed, thermocouple } = input;
  const unit = options.unit ?? schedule.unit;
  const context = {
    unit,
    assumed,
    ...thermocouple !== null && { thermocouple },
    ...mending && { mending }
  };
  const charts = draftCharts(draft);
  const { strain } = charts;
  const pictures = await writePictures(options, {
    html: async () => draftHtml(draft, {
      ...context,
      charts: await drawn({
        firing: (dark) => charts.firing({ unit, dark }),
        cooling: (dark) => charts.cooling({ unit, dark }),
        cones: (dark) => charts.cones({ unit, dark }),
        ...strain && { strain: (dark) => strain({ unit, dark }) }
      })
    }),
    picture: () => reviewPicture([
      charts.firing({ unit }),
      charts.cooling({ unit }),
      ...strain ? [strain({ unit })] : [],
      charts.cones({ unit })
    ])
  });
  if (!pictures.ok) return pictures;
  if (options.output !== void 0) {
    const written = await writeOutput(options.output, scheduleYaml(schedule), {
      force: options.force === true
    });
    if (!written.ok) return written;
    say(`wrote ${written.value}`, options);
  }
  if (options.json) answerJson(draftDocument(draft, mending?.repair ?? null));
  else answer(draftText(draft, { ...context, paint: paintFor(options) }));
  if (isMade(options) && options.output === void 0)
    say("not written; -o FILE writes it, -o - prints it alone", options);
  return ok(null);
}
function wallNow() {
  const now = /* @__PURE__ */ new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 6e4).toISOString().slice(0, 19);
}
function isMade(options) {
  return Boolean(
    options.new || options.solve || options.repair || (options.atMost ?? []).length > 0
  );
}
function nothingToWrite(options) {
  if (options.output === void 0 || isMade(options)) return null;
  return {
    code: "command/nothing-to-write",
    where: "-o",
    what: "the schedule is drafted as it is, so there is nothing new to write",
    expected: "-o together with --new, --solve, --repair or --at-most",
    fix: "add --repair, or leave -o out"
  };
}
export {
  run
};
