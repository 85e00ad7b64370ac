import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  section
} from "./chunk-N5S6N4PS.js";
import {
  momentLines
} from "./chunk-4ME6ZCIX.js";
import {
  capitalised,
  stopped
} from "./chunk-X6LO4HOH.js";
import {
  STRAIN_RISK_WORDS,
  passageRisk,
  strainRisk
} from "./chunk-BX5CJHE4.js";
import {
  bandSaid,
  distinctBodies,
  hasCristobalite,
  publishedRates
} from "./chunk-VFKPH3SJ.js";
import {
  printDifference,
  printMm,
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import {
  BODY_PROPERTIES,
  YOURS
} from "./chunk-GJAD4LJL.js";
import {
  FROM_MEMORY,
  OWN_ESTIMATE,
  basedOn
} from "./chunk-O435DZD7.js";
import {
  fahrenheitDeltaFromCelsiusDelta
} from "./chunk-R2H4YYDI.js";

// src/core/reports/printSpan.ts
function printSpan(fromC, toC, unit) {
  return `${printTemperature(fromC, unit).split(" ")[0]} \u2192 ${printTemperature(toC, unit)}`;
}
function printTravel(rateCPerHour, unit) {
  return `${rateCPerHour < 0 ? "down" : "up"} ${printRate(rateCPerHour, unit)}`;
}
function printSetRate(rateCPerHour, { unit, own }) {
  const rate = Math.abs(rateCPerHour);
  const tenths = Math.round((unit === "C" ? rate : fahrenheitDeltaFromCelsiusDelta(rate)) * 10);
  if (unit !== own || tenths % 10 === 0) return printRate(rateCPerHour, unit);
  return `${(tenths / 10).toFixed(1)} \xB0${unit}/h`;
}

// src/core/reports/sections/bodyBlocks.ts
var SHOWN = {
  densityKgPerM3: { label: "density", unit: "kg/m\xB3", scale: 1 },
  heatCapacityJPerKgK: { label: "heat capacity", unit: "J/kgK", scale: 1 },
  conductivityWPerMK: { label: "heat conducted", unit: "W/mK", scale: 1 },
  youngGPa: { label: "stiffness (Young's modulus)", unit: "GPa", scale: 1 },
  ruptureMPa: { label: "strength in bending", unit: "MPa", scale: 1 },
  quartzFraction: { label: "free quartz, by volume", unit: "%", scale: 100 },
  cristobaliteFraction: { label: "cristobalite, by volume", unit: "%", scale: 100 },
  matrixExpansionPerK: { label: "expansion of the rest", unit: "\xD710\u207B\u2076/K", scale: 1e6 }
};
var GLAZED = {
  none: null,
  one: "glazed on one side (noted, not computed)",
  both: "glazed on both sides (noted, not computed)"
};
var PROPORTION = "Where a number of yours was given without low and high, its range is in proportion to that of the body it started from.";
function bodyBlocks(pieces, context) {
  if (pieces.length === 0) return [];
  const bodies = distinctBodies(pieces.map(({ ware }) => ware));
  return section("What the ware was taken to be", [
    { kind: "list", items: pieces.map(pieceText) },
    ...bodies.flatMap((body) => [
      bodyTable(body),
      ...weakSentences(body).map((text) => ({ kind: "sentence", text }))
    ]),
    ...bodies.some(hasOwn) ? [{ kind: "sentence", text: PROPORTION }] : [],
    {
      kind: "sentence",
      text: `Each range is the middle 80 % (10 to 90 %) of what such bodies may be; how uncertain the computed stress is rests on these ranges. Every number may be replaced, with a source of your own, in ${context.ownIn}. Heat capacity is that at ${printTemperature(573, context.unit)}.`
    }
  ]);
}
function pieceText({ name, ware, assumed }) {
  const { geometry, body } = ware;
  const said = `${capitalised(name)}: ${body.name}, ${geometryText(geometry)}`;
  return [said, ...assumed].map((each) => capitalised(stopped(each))).join(" ");
}
function geometryText(geometry) {
  return [
    `wall ${length(geometry.wallMm)}`,
    `base ${length(geometry.baseMm)}`,
    `${length(geometry.footprintRadiusMm * 2)} wide`,
    `shelf ${length(geometry.shelfMm)}`,
    `${length(geometry.footGapMm)} of air under the foot`,
    GLAZED[geometry.glazedSides]
  ].filter((part) => part !== null).join(", ");
}
function bodyTable(body) {
  return {
    kind: "table",
    caption: `The numbers of ${body.name}`,
    columns: [
      { head: "property", align: "left" },
      { head: "value", align: "right" },
      { head: "from \u2026 to", align: "left" },
      { head: "source", align: "left" }
    ],
    rows: BODY_PROPERTIES.map((name) => propertyRow(SHOWN[name], body[name]))
  };
}
function propertyRow({ label, unit, scale }, { value, low, high, source }) {
  const range = low === high ? "exact" : `${printed(low * scale)} to ${printed(high * scale)}`;
  return [label, `${printed(value * scale)} ${unit}`, range, source];
}
function weakSentences(body) {
  const labels = (weak) => BODY_PROPERTIES.filter((name) => weak(body[name].source)).map((name) => SHOWN[name].label);
  const remembered = labels((source) => source.includes(FROM_MEMORY));
  const guessed = labels((source) => source === OWN_ESTIMATE);
  return [
    ...remembered.length === 0 ? [] : [`From memory, whole or in part, and not read again: ${remembered.join("; ")}.`],
    ...guessed.length === 0 ? [] : [`Our own estimate: ${guessed.join("; ")}.`]
  ];
}
function hasOwn(body) {
  return BODY_PROPERTIES.some((name) => body[name].source === YOURS);
}
function length(mm) {
  return printMm(mm);
}
function printed(value) {
  return String(Number(value.toPrecision(4)));
}

// src/core/reports/sections/coneTableBlocks.ts
var SHOWN2 = 4;
function coneTableBlocks(heatwork, context) {
  const { unit, tense, startOfDaySeconds } = context;
  const nearest = nearestCones(heatwork.cones);
  if (nearest.length === 0) return [];
  return [
    {
      kind: "table",
      caption: tense === "was" ? "How cones in the kiln should have stood" : "How cones will stand",
      columns: [
        { head: "cone", align: "left" },
        { head: "stands", align: "left" },
        { head: "past (+) or short (\u2212) of its end", align: "right" },
        { head: "model \xB1", align: "right" },
        { head: "down (h:min after start)", align: "right" }
      ],
      rows: nearest.map((state) => [
        state.cone,
        state.bend,
        `${state.marginK < 0 ? "\u2212" : "+"}${printDifference(Math.abs(state.marginK), unit)}`,
        `\xB1 ${printDifference(Math.max(1, state.marginSigmaK), unit)}`,
        state.downAtSeconds === null ? "\u2013" : { lines: momentLines(startOfDaySeconds, state.downAtSeconds) }
      ])
    }
  ];
}
function nearestCones(cones) {
  const nearest = new Set(
    [...cones].sort((a, b) => Math.abs(a.marginK) - Math.abs(b.marginK)).slice(0, SHOWN2)
  );
  return cones.filter((state) => nearest.has(state));
}

// src/core/reports/sections/crossingBlocks.ts
var COLUMNS = [
  { head: "through", align: "left" },
  { head: "from \u2192 to", align: "right" },
  { head: "mean", align: "right" },
  { head: "fastest", align: "right" },
  { head: { lines: ["when (h:min", "after start)"] }, align: "right" },
  { head: "guide", align: "right" }
];
function crossingBlocks(crossings, context) {
  if (crossings.length === 0) return [];
  const remarks = crossings.flatMap((crossing) => remarksOf(crossing, context.unit));
  return [
    {
      kind: "table",
      caption: context.caption,
      columns: COLUMNS,
      rows: crossings.map((crossing) => crossingRow(crossing, context))
    },
    ...remarks.length === 0 ? [] : [{ kind: "list", items: remarks }]
  ];
}
function crossingRow(crossing, context) {
  const { unit, startOfDaySeconds } = context;
  const { meanCPerHour, fastestCPerHour, fastestAtSeconds } = crossing;
  return [
    { lines: [nameOf(crossing, unit), crossing.direction] },
    printSpan(crossing.fromC, crossing.toC, unit),
    meanCPerHour === null ? missing(crossing) : printRate(meanCPerHour, unit),
    fastestCell(crossing, unit),
    fastestCPerHour === null || fastestAtSeconds === null ? "\u2013" : { lines: momentLines(startOfDaySeconds, fastestAtSeconds) },
    limitCell(crossing, unit)
  ];
}
function missing(crossing) {
  if (crossing.measured === "no") return { lines: ["not", "reached"] };
  return { lines: ["partly", "seen"] };
}
function fastestCell(crossing, unit) {
  const { fastestCPerHour, windowMinutes } = crossing;
  if (fastestCPerHour === null) return "\u2013";
  const rate = printRate(fastestCPerHour, unit);
  return windowMinutes === null ? rate : { lines: [rate, `over ${Math.max(1, Math.round(windowMinutes))} min`] };
}
function nameOf(crossing, unit) {
  return bandSaid(crossing.band, { ...crossing, unit }).replace(/ inversion$/, "");
}
function limitCell(crossing, unit) {
  const { limitCPerHour, severity, openedC } = crossing;
  if (openedC !== null && crossing.measured !== "no")
    return { lines: ["open from", printTemperature(openedC, unit)] };
  if (limitCPerHour === null) return "none";
  const guide = printRate(limitCPerHour, unit);
  if (severity === null) return guide;
  return severity === "note" ? { lines: [guide, "bears it"], style: "good" } : { lines: [guide, severity === "caution" ? "hard on it" : "too fast"], style: "warning" };
}
function remarksOf(crossing, unit) {
  const name = bandSaid(crossing.band, { ...crossing, unit });
  return crossing.notes.map((note) => `${name}, ${crossing.direction}: ${stopped(note)}`);
}

// src/core/reports/sections/strainRatioText.ts
function strainRatioText(ratio) {
  return ratio.toFixed(ratio < 0.995 ? 2 : ratio < 9.95 ? 1 : 0);
}

// src/core/reports/sections/strainBlocks.ts
var WAYS = ["lid opened", "lifted out"];
function rangeItem(strains) {
  const ranges = strains.flatMap(({ passages, openings }) => [
    ...passages.flatMap(({ computed }) => computed === null ? [] : [computed]),
    ...openings
  ]);
  const worst = ranges.toSorted((a, b) => b.ratio - a.ratio)[0];
  const from = worst === void 0 ? "" : `; at the worst here, ${sharesText(worst.shares)}`;
  return `The range holds 8 in 10 of what may be: the body's quartz, cristobalite, expansion and heat, its strength, the shape of a real piece, and how heat passes in the kiln${from}. Not in it: the stress of the glaze, and flaws. Nothing of it was checked on cracked pots.`;
}
function sharesText({ body, strength, shape, kiln }) {
  const parts = [
    ["the body", body],
    ["its strength", strength],
    ["the shape", shape],
    ["the kiln", kiln]
  ];
  return parts.toSorted(([, a], [, b]) => b - a).map(([name, share]) => `${Math.round(share * 100)} % comes from ${name}`).join(", ");
}
function limitItems(strains) {
  const all = strains.flatMap(
    ({ limits }) => limits.filter(({ topic }) => topic !== PRACTISED).map(({ errs, why }) => `${ERRS[errs]}: ${why}`)
  );
  return [...new Set(all)].map(stopped);
}
var PRACTISED = "plain shrinkage";
var ERRS = {
  "too hard": "Likely too strict",
  "too soft": "Likely too mild",
  "either way": "Uncertain either way"
};
function besideIt(unit) {
  return [
    stopped(
      basedOn(
        `Below the quartz inversion it is too strict for ware without cristobalite, so that no word is put to it there and nothing is judged by it: sanitary ware is cooled from ${printTemperature(500, unit)} to ${printTemperature(50, unit)} faster than it would allow, and kilns are opened daily at ${printTemperature(150, unit)} to ${printTemperature(190, unit)} without loss`,
        "fortuna-2000",
        "opening-practice"
      )
    ),
    stopped(`Published, to be read beside it: ${publishedRates(unit).join("; ")}`)
  ];
}
function strainBlocks(strains, context) {
  if (strains.length === 0) return [];
  return [
    {
      kind: "sentence",
      text: "Computed stress over strength at its worst: 1 is where the ware is thought to break. It is good to a factor of two either way."
    },
    ...passageBlocks(strains, context),
    ...openingBlocks(strains, context),
    {
      kind: "list",
      items: [
        ...heatingItems(strains),
        stopped(STRAIN_RISK_WORDS),
        rangeItem(strains),
        ...limitItems(strains),
        ...besideIt(context.unit)
      ]
    }
  ];
}
function passageBlocks(strains, context) {
  const rows = strains.flatMap((strained) => passageRows(strained, context));
  if (rows.length === 0)
    return [
      {
        kind: "sentence",
        text: `No inversion ${context.tense === "was" ? "was" : "will be"} reached that could be computed.`
      }
    ];
  return [
    {
      kind: "table",
      caption: "On the way through",
      columns: [
        { head: "piece", align: "left" },
        { head: "through", align: "left" },
        { head: { lines: ["stress over", "strength"] }, align: "right" },
        { head: { lines: ["8 in 10", "between"] }, align: "right" },
        { head: { lines: ["worst (h:min", "after start)"] }, align: "right" }
      ],
      rows
    }
  ];
}
function passageRows({ name, passages, ware }, { startOfDaySeconds, unit }) {
  return passages.flatMap(
    ({ band, direction, measured, computed }) => computed === null ? [] : [
      [
        name,
        { lines: [bandNameOf(band, ware.body, unit), direction] },
        ratioCell(
          computed.ratio,
          measured,
          passageRisk({ band, direction, ratio: computed.ratio }, ware.body)
        ),
        rangeText(computed),
        { lines: momentLines(startOfDaySeconds, computed.atSeconds) }
      ]
    ]
  );
}
function openingBlocks(strains, { unit, tense }) {
  const rows = strains.flatMap((strained) => openingRows(strained, unit));
  if (rows.length === 0) return [];
  const is = tense === "was" ? "was" : "is";
  return [
    {
      kind: "table",
      caption: "At the opening; under each ratio the range of 8 in 10",
      columns: [
        { head: "piece", align: "left" },
        { head: "at", align: "right" },
        { head: { lines: ["if the kiln", `${is} opened`] }, align: "right" },
        { head: { lines: ["if the ware", `${is} lifted out`] }, align: "right" }
      ],
      rows
    },
    {
      kind: "sentence",
      text: "Opened: the lid is off and the ware stays on its shelf. Lifted out: it stands in the room on the hot shelf that it came with. A cold table or a draught is harder on it."
    }
  ];
}
function openingRows({ name, openings, ware }, unit) {
  const temps = [...new Set(openings.map(({ tempC }) => tempC))];
  return temps.map((tempC) => [
    name,
    printTemperature(tempC, unit),
    ...WAYS.map(
      (way) => openingCell(
        openings.find((each) => each.tempC === tempC && each.way === way),
        hasCristobalite(ware.body)
      )
    )
  ]);
}
function openingCell(opening, isJudged) {
  if (opening === void 0) return "\u2013";
  const risk = isJudged ? strainRisk(opening.ratio) : null;
  return {
    lines: [withRisk(opening.ratio, risk), rangeText(opening)],
    ...styled(risk)
  };
}
function ratioCell(ratio, measured, risk) {
  const words = withRisk(ratio, risk);
  return { lines: measured === "whole" ? [words] : [words, "or more"], ...styled(risk) };
}
function withRisk(ratio, risk) {
  return [strainRatioText(ratio), ...risk === null ? [] : [risk]].join(", ");
}
function bandNameOf(band, body, unit) {
  return bandSaid(band, { isCristobalitic: hasCristobalite(body), unit }).replace(
    / inversion$/,
    ""
  );
}
function styled(risk) {
  return risk === "high" ? { style: "warning" } : {};
}
function rangeText({ low, high }) {
  return `${strainRatioText(low)} to ${strainRatioText(high)}`;
}
function heatingItems(strains) {
  const goesUp = strains.filter(
    ({ passages }) => passages.some(({ direction }) => direction === "heating")
  );
  const partly = strains.some(
    ({ passages }) => passages.some(({ measured, computed }) => measured === "partly" && computed !== null)
  );
  return [
    ...["computed", "raw", "state not known"].flatMap((heating) => {
      const names = goesUp.filter((each) => each.heating === heating).map(({ name }) => name);
      return names.length === 0 ? [] : [`${capitalised(names.join(", "))}: ${HEATING[heating]}`];
    }),
    ...partly ? [
      '"or more": a gap or the end of the curve hides part of that passage, and the ware is taken to be at rest where it begins again.'
    ] : []
  ];
}
var HEATING = {
  computed: "on the way up the ware is taken to be the finished body already, as in a glaze firing over finished ware, and no word is put to the ratio. Bisque is weaker and softer, and its pores stop small cracks: it bears more than such a ratio says. Use it only to compare firings.",
  raw: "the way up is not computed. Raw clay is not yet the fired body whose properties are known.",
  "state not known": "the way up is not computed. It is not said whether the ware went in raw or bisqued."
};

export {
  printSpan,
  printTravel,
  printSetRate,
  bodyBlocks,
  coneTableBlocks,
  crossingBlocks,
  strainBlocks
};
