import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  readLog
} from "./chunk-AZI3ESL7.js";
import {
  bodyBlocks,
  coneTableBlocks,
  crossingBlocks,
  printSpan,
  printTravel,
  strainBlocks
} from "./chunk-46CWPLZJ.js";
import {
  thinned
} from "./chunk-6GRKVVXC.js";
import {
  asFile,
  rejectedCount,
  reviewFiring,
  secondsAbove,
  shellQuoted
} from "./chunk-ETRUSM3K.js";
import {
  kilnFiringOf
} from "./chunk-QVXNA4U3.js";
import {
  chartBlocks
} from "./chunk-VTFWEP2W.js";
import {
  readFiring,
  readRecordedLog,
  splitQuoted
} from "./chunk-CQRY3XKN.js";
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
  stretchText
} from "./chunk-4ME6ZCIX.js";
import {
  coneLabel,
  plusMinus,
  plusMinusSentence,
  positionSentence,
  reportText,
  seriesName
} from "./chunk-ZUGR3IIA.js";
import {
  capitalised,
  stopped
} from "./chunk-X6LO4HOH.js";
import {
  shifted
} from "./chunk-S4DLFBTW.js";
import {
  CRISTOBALITE_BAND,
  QUARTZ_BAND,
  QUESTIONS,
  hasWarning,
  hottestZone,
  linesToRecord,
  medianInPlace,
  onlyInLogs,
  runawayIn,
  tellingApart,
  temperatureAt
} from "./chunk-VFKPH3SJ.js";
import {
  CRACK_KINDS,
  SAYABLE_FROM
} from "./chunk-OGOFPCXR.js";
import {
  adviceText,
  statementText
} from "./chunk-GU4RVAU5.js";
import {
  EXIT,
  paintWith
} from "./chunk-QOSRWPWR.js";
import {
  hiddenEscaped
} from "./chunk-NHPGJLL4.js";
import {
  readText
} from "./chunk-WA5SZDQ5.js";
import {
  printDifference,
  printDuration,
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import {
  delimiterTold
} from "./chunk-PMYOLCKT.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";
import {
  inert
} from "./chunk-C7Q5CZLC.js";

// src/core/reports/sections/alarmBlocks.ts
function alarmBlocks(findings, unit) {
  const found = runawayIn(findings);
  if (found === null) return [];
  return [{ kind: "alarm", text: `${statementText(found, unit)} ${adviceText(found, unit)}` }];
}

// src/core/reports/sections/diagnosisBlocks.ts
var CRACKS_HEADING = "What kind of crack is it?";
var TELL_MORE_HEADING = "Tell me more";
function diagnosisBlocks(causes, unit, pieces = []) {
  const [first] = causes;
  if (first === void 0) return [];
  const running = causes.filter(({ likelihood }, at) => at < 2 || likelihood !== "unlikely");
  const others = causes.filter((cause) => !running.includes(cause));
  return [
    { kind: "heading", text: CRACKS_HEADING },
    sentence(
      first.posterior < SAYABLE_FROM ? "It can't be said from what is noted: several kinds of crack are as good as level." : "By what was heard and found, held against the log. The log alone settles nothing; look at the pots."
    ),
    { kind: "list", items: running.map((cause) => causeText(cause, unit)) },
    ...others.length === 0 ? [] : [sentence(`Unlikely: ${listed(others.map(({ name }) => name))}`)],
    ...pieceBlocks(pieces),
    ...reasonBlocks(running, unit),
    ...apartBlocks(causes),
    ...missingBlocks(causes)
  ];
}
function diagnosisBases(causes) {
  if (causes.length === 0) return [];
  const questions = /* @__PURE__ */ new Map();
  for (const { basis, question } of observations(causes))
    questions.set(basis, (questions.get(basis) ?? /* @__PURE__ */ new Set()).add(question));
  return [
    "Kinds of crack: how often each comes in a usual firing, times how much more often what is known here is seen with it. Likely means six times in ten or more, possible one and a half in ten or more, unlikely less; how often is our own estimate.",
    ...[...questions].map(
      ([basis, about]) => `Evidence about cracks (${[...about].join(", ")}): ${basis}`
    )
  ];
}
function causeText(cause, unit) {
  const reasons = ["for", "against"].flatMap(
    (direction) => ["strong", "fair", "weak"].flatMap((weight) => {
      const said = cause.evidence.filter((each) => each.direction === direction && each.weight === weight).map((each) => shortText(each, unit));
      return said.length === 0 ? [] : [`${POINTS[direction][weight]}: ${said.join("; ")}.`];
    })
  );
  return [`${capitalised(cause.likelihood)}: ${cause.name}.`, ...reasons].join(" ");
}
var POINTS = {
  for: {
    strong: "Points to it strongly",
    fair: "Points to it",
    weak: "Hints at it"
  },
  against: {
    strong: "Speaks strongly against it",
    fair: "Speaks against it",
    weak: "Hints against it"
  }
};
function pieceBlocks(pieces) {
  if (pieces.length < 2) return [];
  return [
    { kind: "heading", text: "Piece by piece" },
    { kind: "list", items: pieces.map(pieceText) }
  ];
}
function pieceText({ piece, what, causes }) {
  const named2 = (likelihood) => listed(
    causes.filter((cause) => cause.likelihood === likelihood).map(({ name }) => name),
    "or"
  );
  const canSay = (causes[0]?.posterior ?? 0) >= SAYABLE_FROM;
  const [likely, possible] = [named2("likely"), named2("possible")];
  const said = [
    ...canSay ? [] : ["can't say"],
    ...likely === "" ? [] : [`likely ${likely}`],
    ...possible === "" ? [] : [`possible ${possible}`]
  ];
  return stopped(`${piece ?? "A piece"}, ${what}: ${said.join("; ")}`);
}
function shortText(each, unit) {
  return statementText({ ...each, topic: each.question, statement: each.short }, unit);
}
function reasonBlocks(causes, unit) {
  const items = observations(causes).map(
    (each) => statementText({ ...each, topic: each.question }, unit)
  );
  if (items.length === 0) return [];
  return [
    { kind: "heading", text: "Why this counts" },
    { kind: "list", items: [...new Set(items)] }
  ];
}
function apartBlocks(causes) {
  const apart = tellingApart(causes);
  return [
    { kind: "heading", text: "How to tell which" },
    apart.length === 0 ? sentence(
      "Nothing else that a log or a record can hold would tell: look at each cracked piece by itself, and fire like pieces with one thing changed."
    ) : { kind: "list", items: apart.map(apartText) }
  ];
}
function apartText({ ask, look, answers }) {
  const sides = /* @__PURE__ */ new Map();
  for (const { answer, speaksFor, speaksAgainst } of answers) {
    const side = [
      ...speaksFor === null ? [] : [`for \u201C${CRACK_KINDS[speaksFor]}\u201D`],
      ...speaksAgainst === null ? [] : [`against \u201C${CRACK_KINDS[speaksAgainst]}\u201D`]
    ].join(" and ");
    sides.set(side, [...sides.get(side) ?? [], answer]);
  }
  const told = [...sides].map(
    ([side, given]) => `${capitalised(listed(given, "or"))}: speaks ${side}.`
  );
  return [ask, look, ...told].join(" ");
}
function missingBlocks(causes) {
  const lines = linesToRecord(causes);
  const logs = onlyInLogs(causes);
  return [
    ...logs.length === 0 ? [] : [sentence(`Not in this log: ${logs.join(" ")}`)],
    ...lines.length === 0 ? [] : [
      { kind: "heading", text: TELL_MORE_HEADING },
      sentence("Lines to copy into the record; keep what you saw, and drop the rest"),
      { kind: "lines", lines }
    ]
  ];
}
function observations(causes) {
  const all = causes.flatMap(({ evidence }) => evidence);
  return Object.keys(QUESTIONS).flatMap(
    (question) => all.filter(
      (each, at) => each.question === question && all.findIndex(
        (other) => other.statement === each.statement && other.evidence.every(({ value }, i) => each.evidence[i]?.value === value)
      ) === at
    )
  );
}
function sentence(text) {
  return { kind: "sentence", text: stopped(text) };
}
function listed(words, last = "and") {
  const end = words.at(-1) ?? "";
  return words.length < 2 ? end : `${words.slice(0, -1).join(", ")} ${last} ${end}`;
}

// src/core/reports/sections/logBlocks.ts
var REJECTED_SHOWN = 10;
var CONFIDENCE_WORDS = {
  told: "as you said",
  certain: "certain",
  likely: "likely",
  guessed: "a guess"
};
function logBlocks(reading) {
  return [
    { kind: "heading", text: "How the log was read" },
    { kind: "sentence", text: rowsSentence(reading) },
    ...reading.decisions.length === 0 ? [] : [{ kind: "facts", facts: reading.decisions.map(decisionFact) }],
    ...channelBlocks(reading.channels),
    ...troubleBlocks(reading),
    ...rejectedBlocks(reading.rows)
  ];
}
function rowsSentence(reading) {
  const { total, accepted } = reading.rows;
  const count = rejectedCount(reading.rows);
  const left = count === 0 ? "none was left out" : `${count} ${count === 1 ? "was" : "were"} left out`;
  return `${reading.name}: ${accepted} of ${total} rows gave readings, ${left}. One reading every ${intervalText(reading.intervalSeconds)}.`;
}
function intervalText(seconds) {
  if (seconds < 10) return `${Number(seconds.toPrecision(2))} s`;
  const whole = Math.round(seconds);
  if (whole >= 600 || whole % 60 === 0) return printDuration(seconds);
  return whole < 120 ? `${whole} s` : `${Math.floor(whole / 60)} min ${whole % 60} s`;
}
function decisionFact(decision) {
  const { about, choice, confidence, because, runnerUp, option } = decision;
  const isSure = confidence === "told" || confidence === "certain";
  const reason = because === "" ? "" : ` ${stopped(capitalised(because))}`;
  const other = runnerUp === null || isSure ? "" : ` Next best: ${stopped(runnerUp)}`;
  const override = option === null || isSure ? "" : ` To say otherwise: ${stopped(option)}`;
  return {
    label: about,
    text: `${choice} (${CONFIDENCE_WORDS[confidence]}).${reason}${other}${override}`
  };
}
function channelBlocks(channels) {
  if (channels.length === 0) return [];
  return [
    {
      kind: "table",
      caption: "Columns of the log",
      columns: [
        { head: "column", align: "left" },
        { head: "taken as", align: "left" },
        { head: "readings kept", align: "right" },
        { head: "cells dropped", align: "right" }
      ],
      rows: channels.map((channel) => [
        channel.name,
        channel.role === "other" ? "not used" : channel.role.replace("-", " "),
        String(channel.readings),
        String(channel.dropped)
      ])
    }
  ];
}
function troubleBlocks(reading) {
  const { startOfDaySeconds } = reading;
  const items = [
    ...reading.gaps.map(
      (gap) => `Nothing was measured ${stretchText(startOfDaySeconds, gap)}, ${printDuration(gap.toSeconds - gap.fromSeconds)}; no number here reaches across it.`
    ),
    ...reading.faults.filter((fault) => fault.kind !== "gap").map((fault) => {
      const whose = fault.channel === null || fault.what.includes(fault.channel) ? "" : `Column ${fault.channel}: `;
      return `${whose}${stopped(fault.what)} First at ${momentText(startOfDaySeconds, fault.fromSeconds)}.`;
    })
  ];
  return items.length === 0 ? [] : [{ kind: "list", items }];
}
function rejectedBlocks(rows) {
  const count = rejectedCount(rows);
  if (count === 0) return [];
  const more = count - REJECTED_SHOWN;
  return [
    {
      kind: "table",
      caption: "Rows left out",
      columns: [
        { head: "line", align: "right" },
        { head: "why", align: "left" },
        { head: "what stood there", align: "left" }
      ],
      rows: rows.rejected.slice(0, REJECTED_SHOWN).map((row) => [String(row.line), row.reason, row.text])
    },
    ...more > 0 ? [{ kind: "sentence", text: `\u2026 and ${more} more ${more === 1 ? "row" : "rows"}.` }] : []
  ];
}

// src/core/reports/sections/foldedCommand.ts
var WIDEST = 74;
function foldedCommand(command) {
  const lines = [];
  let line2 = "";
  for (const word of withValues(command.match(/(?:'[^']*'|\\'|[^\s'\\]+|\\)+/g) ?? [])) {
    if (line2 !== "" && line2.length + 1 + word.length > WIDEST) {
      lines.push(`${line2} \\`);
      line2 = `  ${word}`;
    } else line2 = line2 === "" ? word : `${line2} ${word}`;
  }
  return [...lines, line2];
}
function withValues(words) {
  const kept = [];
  for (const word of words) {
    const last = kept.at(-1);
    if (last?.startsWith("-") && !last.includes(" ") && !word.startsWith("-"))
      kept[kept.length - 1] = `${last} ${word}`;
    else kept.push(word);
  }
  return kept;
}

// src/core/reports/sections/nextTimeBlocks.ts
var STANDING = {
  firm: "Firm",
  "worth trying": "Only worth trying",
  "too close to tell": "Too close to tell"
};
function nextTimeBlocks(nextTime, unit) {
  if (nextTime === null) return [];
  const { changes, advice, command, commandSays } = nextTime;
  return [
    { kind: "heading", text: "What to change next time" },
    ...changes.length === 0 ? [] : [
      { kind: "list", items: changes.map((change) => changeText(change, unit)) }
    ],
    ...advice.map((text) => ({ kind: "sentence", text })),
    { kind: "sentence", text: commandSays },
    ...command === null ? [] : [{ kind: "lines", lines: foldedCommand(command) }]
  ];
}
function changeText(change, unit) {
  const placed = (statement) => statementText({ topic: change.about, statement, evidence: change.evidence }, unit);
  return `${STANDING[change.standing]}: ${placed(change.change)} ${placed(change.because)}`;
}

// src/core/reports/sections/planBlocks.ts
function planBlocks(comparison, context) {
  if (comparison === null) return [];
  const { unit, startOfDaySeconds } = context;
  const farthest = momentText(startOfDaySeconds, comparison.largestDeviationAtSeconds);
  return [
    { kind: "heading", text: "Against the plan" },
    {
      kind: "facts",
      facts: [
        { label: "plan", text: `${comparison.title}; measured by thermocouple ${comparison.zone}` },
        { label: "lined up by", text: shiftText(comparison.shiftSeconds) },
        {
          label: "farthest from plan",
          text: `${offBy(comparison.largestDeviationC, unit)} at ${farthest}`
        },
        { label: "peak", text: offBy(comparison.peakDeviationC, unit) },
        { label: "time taken", text: delayText(comparison.peakDelaySeconds) },
        { label: "area between curves", text: areaText(comparison.areaDeviation) }
      ]
    }
  ];
}
function offBy(deviationC, unit) {
  const size = printDifference(Math.abs(deviationC), unit);
  if (size.startsWith("0 ")) return "as planned, to the degree";
  return `${size} ${deviationC < 0 ? "below" : "above"} the plan`;
}
function shiftText(seconds) {
  if (Math.abs(seconds) < 30) return "nothing: both start together";
  return `moving the plan ${printDuration(Math.abs(seconds))} ${seconds < 0 ? "earlier" : "later"}`;
}
function delayText(seconds) {
  if (Math.abs(seconds) < 30) return "as planned, over the part that both have";
  return `${printDuration(Math.abs(seconds))} ${seconds < 0 ? "shorter" : "longer"} than planned, over the part that both have`;
}
function areaText(ratio) {
  const percent = (Math.abs(ratio) * 100).toFixed(1);
  if (percent === "0.0") return "under 0.1 % of the area under the plan";
  return `${percent} % of the area under the plan, on the ${ratio < 0 ? "cool" : "hot"} side`;
}

// src/core/reports/sections/recordBlocks.ts
function recordBlocks(review, unit) {
  return [
    ...heardBlocks(review, unit),
    ...witnessBlocks(review.offset, unit),
    ...review.recordLines.length === 0 ? [] : [
      { kind: "heading", text: "From the firing record" },
      { kind: "facts", facts: review.recordLines }
    ]
  ];
}
function heardBlocks(review, unit) {
  if (review.heard.length === 0) return [];
  const { startOfDaySeconds } = review.reading;
  return [
    { kind: "heading", text: "What was heard" },
    {
      kind: "list",
      items: review.heard.map(({ what, atSeconds, tempC, note }) => {
        const when = atSeconds === null ? ", at a time the log does not cover" : `: ${momentText(startOfDaySeconds, atSeconds)}`;
        const hot = tempC === null ? "" : `, at ${printTemperature(tempC, unit)}`;
        return `${stopped(`${capitalised(what)}${when}${hot}`)}${note === null ? "" : ` ${stopped(capitalised(note))}`}`;
      })
    }
  ];
}
function witnessBlocks(offset, unit) {
  if (offset === null) return [];
  return [
    { kind: "heading", text: "What the witness cones say" },
    { kind: "sentence", text: offsetSentence(offset, unit) },
    {
      kind: "table",
      caption: `Witness cones: ${seriesName(offset.series)}`,
      columns: [
        { head: "cone", align: "left" },
        { head: "was seen", align: "left" },
        { head: "asks for", align: "right" }
      ],
      rows: offset.witnesses.map((witness) => [
        witness.cone,
        witness.said,
        witness.impliedK === null ? "no exact value" : signed(witness.impliedK, unit)
      ])
    }
  ];
}
function offsetSentence(offset, unit) {
  const size = printDifference(Math.abs(offset.offsetK), unit);
  const reads = size.startsWith("0 ") ? "The thermocouple agrees with the witness cones to the degree" : `Judged by the witness cones the thermocouple reads about ${size} too ${offset.offsetK < 0 ? "high" : "low"}, give or take ${printDifference(offset.sigmaK, unit)}`;
  const { lowK, highK } = offset;
  if (lowK !== null && highK !== null)
    return `${reads}; anything from ${signed(lowK, unit)} to ${signed(highK, unit)} would fit what was seen.`;
  if (lowK !== null) return `${reads}; what was seen asks for at least ${signed(lowK, unit)}.`;
  if (highK !== null) return `${reads}; what was seen asks for at most ${signed(highK, unit)}.`;
  return `${reads}.`;
}
function signed(deltaK, unit) {
  return `${deltaK < 0 ? "\u2212" : "+"}${printDifference(Math.abs(deltaK), unit)}`;
}

// src/core/firing/fellByItself.ts
var ROOM_C = 20;
var POWER = { least: 0.6, most: 3 };
var LEAST_RAMPS = 3;
var QUICKENED = 1.3;
function fellByItself(segments) {
  const found = [];
  let calm = Number.POSITIVE_INFINITY;
  for (let at = 0; at < segments.length; ) {
    let end = at;
    while (end + 1 < segments.length && follows(segments[end], segments[end + 1])) end++;
    const run = segments.slice(at, end + 1);
    const [first, last] = [run[0], run.at(-1)];
    const isOwn = run.length >= LEAST_RAMPS && forHeight(first) <= QUICKENED * calm;
    if (isOwn) {
      calm = forHeight(last);
      found.push({
        kind: "fell by itself",
        startSeconds: first.startSeconds,
        endSeconds: last.endSeconds,
        fromC: first.fromC,
        toC: last.toC,
        firstCPerHour: first.rateCPerHour,
        lastCPerHour: last.rateCPerHour
      });
    } else found.push(...run);
    at = end + 1;
  }
  return found;
}
function follows(one, next) {
  if (one.kind !== "ramp" || next.kind !== "ramp") return false;
  if (one.rateCPerHour >= 0 || next.rateCPerHour >= 0) return false;
  if (Math.abs(next.startSeconds - one.endSeconds) > 1) return false;
  const [above, below] = [heightK(one), heightK(next)];
  if (below <= 0 || above <= below) return false;
  const power = Math.log(next.rateCPerHour / one.rateCPerHour) / Math.log(below / above);
  return power >= POWER.least && power <= POWER.most;
}
function heightK({ fromC, toC }) {
  return (fromC + toC) / 2 - ROOM_C;
}
function forHeight(segment) {
  return -segment.rateCPerHour / heightK(segment);
}

// src/core/reports/sections/segmentBlocks.ts
var LEAST_DRIFT_CPERHOUR = 1;
function segmentBlocks(segments, context) {
  const { caption, unit, startOfDaySeconds } = context;
  if (segments.length === 0) return [];
  return [
    {
      kind: "table",
      caption,
      columns: [
        { head: "", align: "left" },
        { head: "from \u2192 to", align: "right" },
        { head: "rate", align: "right" },
        { head: "lasted", align: "right" },
        ...momentColumns("ended", startOfDaySeconds)
      ],
      rows: fellByItself(segments).map((segment) => [
        segment.kind === "hold" && segment.stable ? "steady hold" : segment.kind,
        spanCell(segment, unit),
        rateCell(segment, unit),
        printDuration(segment.endSeconds - segment.startSeconds),
        ...momentLines(startOfDaySeconds, segment.endSeconds)
      ])
    }
  ];
}
function spanCell(segment, unit) {
  const from = printTemperature(segment.fromC, unit);
  const to = printTemperature(segment.toC, unit);
  return segment.kind === "hold" && from === to ? to : printSpan(segment.fromC, segment.toC, unit);
}
function rateCell(segment, unit) {
  if (segment.kind === "fell by itself")
    return `${printTravel(segment.firstCPerHour, unit)}, in the end ${printRate(-segment.lastCPerHour, unit)}`;
  if (segment.kind === "ramp") return printTravel(segment.rateCPerHour, unit);
  if (Math.abs(segment.rateCPerHour) < LEAST_DRIFT_CPERHOUR) return "held";
  const direction = segment.rateCPerHour < 0 ? "drifting down" : "drifting up";
  return `${direction} ${printRate(segment.rateCPerHour, unit)}`;
}

// src/core/reports/sections/zoneBlocks.ts
function zoneBlocks(review, unit) {
  const { zones, spread, reading } = review;
  if (zones.length < 2) return [];
  const { startOfDaySeconds } = reading;
  return [
    { kind: "heading", text: "Where in the kiln" },
    {
      kind: "table",
      caption: "The thermocouples side by side",
      columns: [
        { head: "thermocouple", align: "left" },
        { head: "peak", align: "right" },
        { head: "when (h:min after start)", align: "right" },
        { head: `within ${printDifference(5, unit)} of peak`, align: "right" },
        { head: "heat reached", align: "right" },
        { head: "last reading", align: "right" }
      ],
      rows: zones.map((zone) => zoneRow(zone, { unit, startOfDaySeconds }))
    },
    ...spread === null ? [] : [
      {
        kind: "sentence",
        text: `They were farthest apart, ${printDifference(spread.largestC, unit)}, at ${momentText(startOfDaySeconds, spread.largestAtSeconds)}, and ${printDifference(spread.atPeakC, unit)} apart at the peak of the hottest.`
      }
    ]
  ];
}
function zoneRow(zone, context) {
  const { unit, startOfDaySeconds } = context;
  const { sigmaCones, position } = zone.heatwork;
  return [
    zone.name,
    printTemperature(zone.peakC, unit),
    { lines: momentLines(startOfDaySeconds, zone.peakAtSeconds) },
    printDuration(zone.secondsWithinFiveOfPeak),
    {
      lines: [position.label, ...sigmaCones === null ? [] : [`\xB1 ${plusMinus(sigmaCones)} cones`]]
    },
    printTemperature(zone.lastReadingC, unit)
  ];
}

// src/core/reports/reviewBlocks.ts
function reviewBlocks(review, context) {
  const { unit, charts = {}, sources = [] } = context;
  const { zones, reading, findings } = review;
  const { startOfDaySeconds } = reading;
  const when = { unit, startOfDaySeconds };
  const hottest = zones.length === 0 ? null : hottestZone(zones);
  const nameOf = (zone) => zones.length > 1 ? `, thermocouple ${zone.name}` : "";
  return [
    ...alarmBlocks(findings, unit),
    ...headlineBlocks(review, hottest, unit),
    ...chartBlocks("Temperature against time, whole firing", charts.firing),
    ...findingBlocks(findings, when),
    ...diagnosisBlocks(review.diagnosis, unit, review.diagnosedPieces),
    ...nextTimeBlocks(review.nextTime, unit),
    ...section("Through the inversions", [
      ...zones.flatMap(
        (zone) => crossingBlocks(zone.crossings, { caption: `How fast it went${nameOf(zone)}`, ...when })
      ),
      ...chartBlocks("Cooling through the inversions", charts.cooling)
    ]),
    ...section("Stress in the ware", [
      ...strainBlocks(review.strains, { tense: "was", ...when }),
      ...chartBlocks("Computed stress over strength against time", charts.strain)
    ]),
    ...section("Cones", [
      ...hottest === null ? [] : coneTableBlocks(hottest.heatwork, { tense: "was", ...when }),
      ...chartBlocks("Cones going down during the firing", charts.cones)
    ]),
    ...section(
      "Ramps and holds",
      zones.flatMap(
        (zone) => segmentBlocks(zone.segments, { caption: `Found in the log${nameOf(zone)}`, ...when })
      )
    ),
    ...zoneBlocks(review, unit),
    ...planBlocks(review.comparison, when),
    ...recordBlocks(review, unit),
    ...logBlocks(reading),
    ...bodyBlocks(review.pieces, { unit, ownIn: "the firing record under ware, body" }),
    ...basisBlocks(
      {
        heatwork: hottest?.heatwork ?? null,
        crossings: zones.flatMap((zone) => zone.crossings),
        findings,
        sources: [...diagnosisBases(review.diagnosis), ...sources]
      },
      unit
    ),
    ...cautionBlocks(review.cautions)
  ];
}
function headlineBlocks(review, hottest, unit) {
  if (hottest === null)
    return [{ kind: "lead", text: "The log holds no temperature that could be read." }];
  const { heatwork } = hottest;
  return [
    {
      kind: "lead",
      text: `${capitalised(coneLabel(heatwork))}, peak ${printTemperature(hottest.peakC, unit)}`
    },
    {
      kind: "sentence",
      text: `${positionSentence(heatwork, "was")} ${plusMinusSentence(heatwork, unit)}`
    },
    { kind: "facts", facts: headlineFacts(review, hottest, unit) }
  ];
}
function headlineFacts(review, hottest, unit) {
  const { startOfDaySeconds, start } = review.reading;
  const { lastHundredCPerHour, effectiveRateCPerHour } = hottest.heatwork;
  const which = review.zones.length > 1 ? `; thermocouple ${hottest.name}, the hottest` : "";
  const nearPeak = printDuration(hottest.secondsWithinFiveOfPeak);
  const measured = lastHundredCPerHour === null ? "not measured" : `${printRate(lastHundredCPerHour, unit)} over the last ${printDifference(100, unit)} to the peak`;
  const same = effectiveRateCPerHour === null ? "" : `; for the cones, the same as a plain ramp at ${printRate(effectiveRateCPerHour, unit)}`;
  return [
    {
      label: "peak",
      text: `${momentText(startOfDaySeconds, hottest.peakAtSeconds)}${which}; ${nearPeak} within ${printDifference(5, unit)} of it`
    },
    { label: "climb", text: `${measured}${same}` },
    {
      label: "log",
      text: `${start === null ? "" : `starts ${start.replace("T", " ").slice(0, 16)}, `}lasts ${printDuration(hottest.lastReadingAtSeconds)}, ends at ${printTemperature(hottest.lastReadingC, unit)}`
    }
  ];
}

// src/core/reports/reviewText.ts
function reviewText(review, options) {
  return reportText({ title: review.title, blocks: reviewBlocks(review, options) }, options.paint);
}

// src/core/firing/pastFiringOf.ts
function pastFiringOf(path, files) {
  const { reading, record, plan } = files;
  const review = record === null ? null : reviewFiring({ reading, record, plan });
  return {
    name: reading.name,
    path,
    firing: kilnFiringOf(reading, record),
    offset: review?.ok ? review.value.offset : null,
    thermocouple: record?.thermocouple?.type ?? null
  };
}

// src/node/readEarlierLogs.ts
async function readEarlierLogs(paths) {
  const logs = [];
  for (const path of paths) {
    const files = await readFiring(path, { options: {}, recordPath: null, schedulePath: null });
    logs.push(
      files.ok ? pastFiringOf(path, files.value) : { name: path, broken: files.problems.map(({ what }) => what).join("; ") }
    );
  }
  return logs;
}

// src/core/firing/thermocoupleShift.ts
var LEVELS_C = [400, 500, 600, 700, 800, 900, 1e3, 1100, 1200];
var FEWEST_LEVELS = 3;
function thermocoupleShifts(earlier, later) {
  const names = earlier.map(({ name }) => name).filter((name) => later.some((zone) => zone.name === name));
  if (names.length < 2) return [];
  const before = standings(named(earlier, names));
  const after = standings(named(later, names));
  const shared = LEVELS_C.filter((level) => before.has(level) && after.has(level));
  if (shared.length < FEWEST_LEVELS) return [];
  const told = names.length === 2 ? names.slice(0, 1) : names;
  return told.map((zone, place) => ({
    zone,
    shiftK: medianInPlace(
      shared.map(
        (level) => after.get(level)?.[place] - before.get(level)?.[place]
      )
    ),
    fromC: shared[0],
    toC: shared.at(-1)
  }));
}
function named(zones, names) {
  return names.map((name) => zones.find((zone) => zone.name === name).curve);
}
function standings(curves) {
  const found = /* @__PURE__ */ new Map();
  let next = 0;
  for (const seconds of curves[0].timesSeconds) {
    const temps = curves.map((curve) => temperatureAt(curve, seconds));
    if (temps.some((tempC) => tempC === null)) continue;
    const known = temps;
    const mean = known.reduce((sum, tempC) => sum + tempC, 0) / known.length;
    for (; next < LEVELS_C.length && mean >= LEVELS_C[next]; next++) {
      const others = known.length - 1;
      const apart = known.map((tempC) => tempC - (mean * known.length - tempC) / others);
      found.set(LEVELS_C[next], apart);
    }
  }
  return found;
}

// src/core/firing/compareFirings.ts
var SOAKING_FROM_C = 1100;
var CHART_POINTS = 1200;
function comparisonPart(review) {
  return {
    name: review.reading.name,
    isFahrenheit: review.reading.unit === "F",
    firing: comparedFiring(review),
    zones: review.zones.map(({ name, curve }) => ({ name, curve })),
    cautions: review.cautions
  };
}
function compareParts(parts, least = 2) {
  if (parts.length < least)
    return failed({
      code: "firing/too-few",
      what: parts.length === 0 ? "there is no firing" : "there is only one firing",
      where: parts[0]?.name ?? "the command",
      expected: "two firings or more",
      fix: "name another log as well"
    });
  return ok({
    firings: parts.map(({ firing }) => firing),
    thermocoupleShifts: thermocoupleShifts(parts[0]?.zones ?? [], parts.at(-1)?.zones ?? []),
    cautions: onceEach(parts.flatMap(({ cautions }) => cautions))
  });
}
function onceEach(cautions) {
  return cautions.filter(
    ({ topic }, index) => cautions.findIndex((caution) => caution.topic === topic) === index
  );
}
function comparedFiring(review) {
  const zone = hottestZone(review.zones);
  const { position, sigmaCones, lastHundredCPerHour } = zone.heatwork;
  return {
    title: review.title,
    zone: zone.name,
    aligned: thinned(shifted(zone.curve, -zone.peakAtSeconds), CHART_POINTS),
    peakC: zone.peakC,
    coneLabel: position.label,
    coneIndex: position.index,
    sigmaCones,
    lastHundredCPerHour,
    secondsWithinFiveOfPeak: zone.secondsWithinFiveOfPeak,
    secondsAbove1100C: secondsAbove(zone.curve, SOAKING_FROM_C),
    quartzCooling: coolingRates(zone, QUARTZ_BAND.name),
    cristobaliteCooling: coolingRates(zone, CRISTOBALITE_BAND.name),
    lastReadingC: zone.lastReadingC,
    totalSeconds: zone.lastReadingAtSeconds - zone.curve.timesSeconds[0],
    warnings: review.findings.filter((finding) => finding.severity === "warning").length
  };
}
function coolingRates(zone, band) {
  const crossing = zone.crossings.find(
    (each) => each.band === band && each.direction === "cooling"
  );
  return {
    meanCPerHour: crossing?.meanCPerHour ?? null,
    fastestCPerHour: crossing?.fastestCPerHour ?? null
  };
}

// src/cli/aroundFiring.ts
import { basename as basename2, extname as extname2 } from "node:path";

// src/node/earlierBeside.ts
import { open, readdir, stat } from "node:fs/promises";
import { basename, dirname, extname, join } from "node:path";
var RECORDS = [".yaml", ".yml", ".json"];
var MOST_LOGS = 8;
var HEAD_BYTES = 32768;
async function earlierBeside(path, now) {
  const folder = dirname(path);
  const names = await readdir(folder).catch(() => []);
  const own = basename(path);
  const logs = names.filter((name) => name !== own && !RECORDS.includes(extname(name))).flatMap((name) => {
    const stem = name.replace(/(\.[^.]+)?(\.gz)?$/, "");
    const record = RECORDS.map((ending) => stem + ending).find((each) => names.includes(each));
    return record === void 0 || name.endsWith(".gz") ? [] : [{ name, record }];
  }).toSorted((a, b) => nearness(a.name, own) - nearness(b.name, own) || compare(b.name, a.name));
  const found = [];
  for (const { name, record } of logs.slice(0, MOST_LOGS)) {
    const start = await startOf({ folder, name, record, kiln: now.kiln });
    if (start !== null && start < now.start) found.push({ path: beside(path, name), start });
  }
  return found.toSorted((a, b) => compare(a.start, b.start)).map((each) => each.path);
}
function nearness(name, own) {
  return name < own ? 0 : 1;
}
function compare(a, b) {
  return a < b ? -1 : a > b ? 1 : 0;
}
function beside(path, name) {
  return path === basename(path) ? name : join(dirname(path), name);
}
async function startOf(log) {
  const record = await recordIn(join(log.folder, log.record), log.record);
  if (record === null || record.kiln !== log.kiln) return null;
  const head = await headOf(join(log.folder, log.name));
  if (head === null) return null;
  const reading = readLog(head, { ...record.log, name: log.name }, splitQuoted);
  return reading.ok ? reading.value.start : null;
}
async function recordIn(path, name) {
  const facts = await stat(path).catch(() => null);
  const text = facts?.isFile() ? await readText(path) : null;
  if (!text?.ok) return null;
  const { parseRecord } = await import("./record-I2I552FM.js");
  const record = parseRecord(text.value, name);
  return record.ok ? record.value : null;
}
async function headOf(path) {
  const facts = await stat(path).catch(() => null);
  const file = facts?.isFile() ? await open(path).catch(() => null) : null;
  if (file === null) return null;
  try {
    const { buffer, bytesRead } = await file.read(new Uint8Array(HEAD_BYTES), 0, HEAD_BYTES, 0);
    return buffer.subarray(0, bytesRead);
  } catch {
    return null;
  } finally {
    await file.close();
  }
}

// src/node/freeName.ts
import { access } from "node:fs/promises";
async function freeName(stem, ending) {
  for (let count = 1; ; count++) {
    const name = count === 1 ? `${stem}${ending}` : `${stem}-${count}${ending}`;
    if (!await isThere(name)) return name;
  }
}
async function isThere(path) {
  return access(path).then(
    () => true,
    () => false
  );
}

// src/cli/aroundFiring.ts
var MOST_OFFERED = 5;
async function aroundFiring(path, files, around) {
  const remarks = around.earlier === null && around.offers ? await offered(path, files) : [];
  const { planPath } = files;
  const isNamed = planPath !== null && planPath !== "-";
  const stem = isNamed ? `${basename2(planPath, extname2(planPath))}-next` : "next";
  return {
    earlier: around.earlier ?? [],
    remarks,
    next: {
      log: path === "-" || !around.asWritten ? null : path,
      recordBeside: !around.recordNamed,
      schedule: isNamed ? planPath : null,
      output: await freeName(stem, ".yaml")
    }
  };
}
async function offered(path, files) {
  const kiln = files.record?.kiln ?? null;
  const { start } = files.reading;
  if (path === "-" || kiln === null || start === null) return [];
  const beside2 = await earlierBeside(path, { kiln, start });
  if (beside2.length === 0) return [];
  const logs = beside2.slice(-MOST_OFFERED).map(asFile).map(shellQuoted).join(" ");
  return [
    `earlier logs of this kiln lie beside it; to see what has changed: undunted review ${shellQuoted(asFile(path))} --kiln ${logs}`
  ];
}

// src/cli/reviewedLog.ts
async function reviewedLog(path, ways) {
  const files = await readFiring(path, {
    options: ways.logOptions,
    recordPath: ways.recordPath,
    schedulePath: ways.schedulePath
  });
  if (!files.ok) return { review: files, remarks: [] };
  const around = await aroundFiring(path, files.value, {
    earlier: ways.earlier,
    offers: ways.offers,
    recordNamed: ways.recordPath !== null,
    asWritten: Object.keys(ways.logOptions).length === 0
  });
  const { earlier, next, remarks } = around;
  return {
    review: reviewFiring({ ...files.value, heard: ways.heard, earlier, next }),
    remarks: [...files.value.remarks, ...remarks]
  };
}

// src/cli/logWork.ts
import { basename as basename4 } from "node:path";

// src/cli/explainedLog.ts
import { basename as basename3 } from "node:path";

// src/core/firing/logSaidLines.ts
function guessedSaid(decisions) {
  const guessed = decisions.filter(({ confidence }) => confidence === "likely" || confidence === "guessed").flatMap(({ says }) => says === void 0 ? [] : [says]);
  const roles = Object.assign({}, ...guessed.map((each) => each.roles));
  const all = Object.assign({}, ...guessed);
  return Object.keys(roles).length > 0 ? { ...all, roles } : all;
}
function logSaidLines(said) {
  const { thermocouple } = said;
  const lines = LINES.flatMap(([key, value]) => {
    const text = value(said);
    return text === null || text === void 0 ? [] : [`  ${key}: ${text}`];
  });
  return [
    ...thermocouple === void 0 ? [] : ["thermocouple:", `  type: ${thermocouple}`],
    ...lines.length === 0 ? [] : ["log:", ...lines]
  ];
}
var LINES = [
  ["unit", ({ unit }) => unit],
  ["columns", ({ columns }) => columns && `[${columns.map(quoted).join(", ")}]`],
  ["roles", ({ roles }) => roles && `{ ${Object.entries(roles).map(roleText).join(", ")} }`],
  ["timeColumn", ({ timeColumn }) => timeColumn && quoted(timeColumn)],
  ["timeKind", ({ timeKind }) => timeKind],
  ["timeUnit", ({ timeUnit }) => timeUnit],
  ["dayFirst", ({ dayFirst }) => dayFirst?.toString()],
  ["yearFirst", ({ yearFirst }) => yearFirst?.toString()],
  ["header", ({ header }) => header?.toString()],
  ["layout", ({ layout }) => layout],
  ["delimiter", ({ delimiter }) => delimiter && quoted(delimiterTold(delimiter))],
  ["decimal", ({ decimal }) => decimal && quoted(decimal)],
  ["encoding", ({ encoding }) => encoding && quoted(encoding)],
  ["intervalSeconds", ({ intervalSeconds }) => intervalSeconds?.toString()],
  ["coldJunction", ({ coldJunctionC: tempC }) => tempC === void 0 ? null : `"${tempC} C"`]
];
function roleText([name, role]) {
  return `${quoted(name)}: ${role}`;
}
function quoted(text) {
  return JSON.stringify(text);
}

// src/core/reports/sections/explainBlocks.ts
function explainBlocks(steps, reading) {
  return [
    { kind: "sentence", text: reading === null ? unreadSentence(steps) : rowsSentence(reading) },
    ...steps.decisions.flatMap(decisionBlocks),
    ...columnBlocks(steps.columns, reading),
    ...reading === null ? [] : leftOutBlocks(reading),
    ...recordBlocks2(linesToKeep(steps), reading !== null)
  ];
}
function linesToKeep({ decisions }) {
  return logSaidLines(guessedSaid(decisions));
}
function unreadSentence({ decisions }) {
  return decisions.length === 0 ? "It could not be read, and nothing was decided before that." : "It could not be read to its end. This is what was decided before that:";
}
function decisionBlocks(decision) {
  const { about, choice, confidence, because, runnerUp, option } = decision;
  return [
    { kind: "heading", text: capitalised(about) },
    {
      kind: "facts",
      facts: [
        { label: "taken", text: `${choice} (${CONFIDENCE_WORDS[confidence]})` },
        ...because === "" ? [] : [{ label: "why", text: stopped(capitalised(because)) }],
        { label: "next best", text: runnerUp ?? "nothing else came near" },
        { label: "or say", text: option ?? "nothing; this cannot be otherwise" }
      ]
    }
  ];
}
function columnBlocks(columns, reading) {
  if (columns.length === 0) return [];
  const kept = (at) => {
    const channel = reading?.channels[at];
    return channel === void 0 ? [] : [String(channel.readings), String(channel.dropped)];
  };
  return [
    { kind: "heading", text: "What each column was taken for" },
    {
      kind: "table",
      caption: "Beside the time",
      columns: [
        { head: "column", align: "left" },
        { head: "taken as", align: "left" },
        { head: "why", align: "left" },
        ...reading === null ? [] : [
          { head: "readings kept", align: "right" },
          { head: "cells dropped", align: "right" }
        ]
      ],
      rows: columns.map(({ name, role, because }, at) => [
        name,
        role === "other" ? "not used" : role.replace("-", " "),
        because,
        ...kept(at)
      ])
    }
  ];
}
function leftOutBlocks(reading) {
  const blocks = [...troubleBlocks(reading), ...rejectedBlocks(reading.rows)];
  const nothing = {
    kind: "sentence",
    text: "No row was left out, and no fault was seen."
  };
  return [
    { kind: "heading", text: "What was left out or looks wrong" },
    ...blocks.length === 0 ? [nothing] : blocks
  ];
}
function recordBlocks2(lines, isRead) {
  const nothing = isRead ? "Nothing was guessed, so nothing need be told." : "Nothing of this was guessed. What the problem asks for can be told in the firing record as well as by its option.";
  const some = "What was likely or a guess can be told once and for all. Check it, and copy these lines into the firing record, the .yaml file of the same name beside the log:";
  return [
    { kind: "heading", text: "To keep it so" },
    { kind: "sentence", text: lines.length === 0 ? nothing : some }
  ];
}

// src/core/reports/explainText.ts
function explainText(log, paint) {
  const { name, steps, reading } = log;
  const blocks = explainBlocks(steps, reading);
  const text = reportText({ title: `How ${name} was read`, blocks }, paint);
  const lines = linesToKeep(steps).map((line2) => `${inert(line2)}
`);
  return lines.length === 0 ? text : `${text}
${lines.join("")}`;
}

// src/cli/explainedLog.ts
async function explainedLog(path, ways, paint) {
  const { logOptions, recordPath } = ways;
  const log = await readRecordedLog(path, { options: logOptions, recordPath });
  if (!log.ok) return { text: "", problems: log.problems, exit: EXIT.wrongUse };
  const { reading, steps } = log.value;
  const name = path === "-" ? "standard input" : basename3(path);
  const text = explainText({ name, steps, reading: reading.ok ? reading.value : null }, paint);
  return reading.ok ? { text, problems: [], exit: EXIT.fine } : { text, problems: reading.problems, exit: EXIT.wrongUse };
}

// src/cli/logWork.ts
async function logWork(task) {
  const work = await taskWork(task);
  return async (item) => {
    try {
      return await work(item);
    } catch (error) {
      return faultOutcome(item, error instanceof Error ? error.message : String(error));
    }
  };
}
function faultOutcome({ path }, why) {
  return {
    ...NOTHING,
    path,
    exit: EXIT.ourBug,
    problems: [
      {
        code: "undunted/fault",
        where: path,
        what: `undunted failed on it (${why})`,
        expected: "no such thing",
        fix: "review it alone, and report what is said then"
      }
    ]
  };
}
var NOTHING = {
  path: "",
  text: "",
  remarks: [],
  problems: [],
  exit: EXIT.fine,
  part: null,
  planned: null
};
async function taskWork(task) {
  if (task.kind === "compare") return (item) => compared(item, task);
  if (task.kind === "explain")
    return async ({ path }) => ({
      ...NOTHING,
      path,
      ...await explainedLog(path, task.ways, paintWith(task.coloured))
    });
  const earlier = task.kilnLogs === null ? null : await readEarlierLogs(task.kilnLogs);
  return async ({ path }) => {
    const { review, remarks } = await reviewedLog(path, { ...task.ways, earlier });
    if (!review.ok) return unread(path, review.problems);
    const text = task.asLine ? await line(review.value) : reviewText(review.value, inText(review.value, task));
    const exit = hasWarning(review.value.findings) ? EXIT.no : EXIT.fine;
    return { ...NOTHING, path, text, remarks, exit };
  };
}
function unread(path, problems) {
  return { ...NOTHING, path, problems, exit: EXIT.wrongUse };
}
async function line(review) {
  const { reviewDocument } = await import("./reviewDocument-BMTNFZZB.js");
  return hiddenEscaped(JSON.stringify(reviewDocument(review)));
}
function inText(review, { unit, coloured }) {
  return { unit: unit ?? readersUnit(review), paint: paintWith(coloured) };
}
function readersUnit(review) {
  return review.reading.unit === "F" ? "F" : "C";
}
async function compared({ path, isEnd }, task) {
  const files = await readFiring(path, {
    options: task.logOptions,
    recordPath: null,
    schedulePath: null
  });
  const review = files.ok ? reviewFiring({ ...files.value, heard: [] }) : files;
  if (!files.ok || !review.ok) return unread(path, review.ok ? [] : review.problems);
  const part = comparisonPart(review.value);
  const { record, plan } = files.value;
  return {
    ...NOTHING,
    path,
    planned: task.isStudied ? { review: review.value, record, plan } : null,
    part: {
      ...part,
      zones: isEnd ? part.zones : []
    }
  };
}
async function unreadLine({ path, problems }) {
  const { unreadLogLine } = await import("./lineDocuments-LRTQBBC4.js");
  return hiddenEscaped(JSON.stringify(unreadLogLine({ name: basename4(path), path }, problems)));
}

export {
  reviewBlocks,
  reviewText,
  readEarlierLogs,
  compareParts,
  reviewedLog,
  logWork,
  faultOutcome,
  readersUnit,
  unreadLine
};
