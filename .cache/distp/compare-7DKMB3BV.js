import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  asGiven,
  fewDigits
} from "./chunk-FNCRCJUG.js";
import {
  readBody
} from "./chunk-ZF4D2T4C.js";
import "./chunk-3W76GZHT.js";
import {
  ownKiln
} from "./chunk-7P5KF26O.js";
import {
  scheduleYaml
} from "./chunk-R7HOELZO.js";
import {
  logPaths,
  manyLogs,
  tellLogs,
  workersFrom
} from "./chunk-SHH2OFVR.js";
import {
  alignmentWords,
  comparisonChart,
  studyCharts
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
  logOptionsFrom
} from "./chunk-3SHC6X7O.js";
import {
  reportHtml
} from "./chunk-Q77PV3QE.js";
import {
  writeOutput
} from "./chunk-QVADD2WS.js";
import {
  AT_PEAK,
  linedUp
} from "./chunk-6U5UKUNG.js";
import {
  compareParts
} from "./chunk-AXAUT6A2.js";
import "./chunk-AZI3ESL7.js";
import "./chunk-46CWPLZJ.js";
import "./chunk-6GRKVVXC.js";
import {
  MEND_REACH,
  WINDOW_REACH_HOURS,
  draftSchedule,
  newSchedule,
  paced,
  rateDown,
  secondsAbove,
  solveSchedule,
  temperatureDown,
  temperatureUp,
  untilCool
} from "./chunk-ETRUSM3K.js";
import {
  REFERENCE_KILN,
  expandSchedule,
  limitsFor,
  peakSegment
} from "./chunk-GKWIKIYP.js";
import "./chunk-QVXNA4U3.js";
import "./chunk-I7PXXNWR.js";
import {
  chartBlocks
} from "./chunk-VTFWEP2W.js";
import {
  placedOnce,
  placedUnloading
} from "./chunk-I6LOXCIU.js";
import "./chunk-CQRY3XKN.js";
import {
  cautionBlocks,
  section
} from "./chunk-N5S6N4PS.js";
import "./chunk-4ME6ZCIX.js";
import {
  plusMinus,
  reportText
} from "./chunk-ZUGR3IIA.js";
import {
  capitalised
} from "./chunk-X6LO4HOH.js";
import "./chunk-XM3JYZUM.js";
import "./chunk-BX5CJHE4.js";
import "./chunk-S4DLFBTW.js";
import {
  crossingTimes
} from "./chunk-BNESJYXC.js";
import "./chunk-M4BL2XKO.js";
import {
  CRISTOBALITE_BAND,
  QUARTZ_BAND,
  bandPassage,
  hottestZone,
  sizedAsMug,
  temperatureAt
} from "./chunk-VFKPH3SJ.js";
import "./chunk-OGOFPCXR.js";
import {
  MEAN_OVER_LEAST,
  fitDraws,
  fitRun,
  glazeFit
} from "./chunk-P6VZUHGE.js";
import {
  cautionsFor
} from "./chunk-4LHYQSW7.js";
import {
  spreadOf
} from "./chunk-V6QCPP2T.js";
import {
  seededEven
} from "./chunk-F6MWUWUD.js";
import {
  quoted,
  statementText
} from "./chunk-GU4RVAU5.js";
import {
  EXIT,
  answer,
  answerJson,
  answerJsonLine,
  paintFor,
  refuse,
  say
} from "./chunk-QOSRWPWR.js";
import {
  hiddenEscaped
} from "./chunk-NHPGJLL4.js";
import "./chunk-WNROHRXV.js";
import "./chunk-2XN66YSB.js";
import "./chunk-OQY4R7CT.js";
import "./chunk-WA5SZDQ5.js";
import "./chunk-2NHG2YQ4.js";
import {
  notNought,
  printDifference,
  printDuration,
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import {
  incompleteBeta,
  logGamma,
  tQuantile
} from "./chunk-2JS2W74R.js";
import "./chunk-OBEK7CUI.js";
import "./chunk-PMYOLCKT.js";
import "./chunk-DDB2KZF2.js";
import "./chunk-X2IVNITG.js";
import "./chunk-BUYZUOGW.js";
import "./chunk-P7LYRYX6.js";
import "./chunk-2Y6UMGL7.js";
import "./chunk-GJAD4LJL.js";
import {
  parseTemperature
} from "./chunk-PYB7INDF.js";
import "./chunk-BKGWRYOW.js";
import {
  basedOn
} from "./chunk-O435DZD7.js";
import "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";
import "./chunk-OEDHJ3SZ.js";
import "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";

// src/core/reports/sections/alignmentBlocks.ts
function alignmentBlocks({ firings }, alignment, unit2) {
  if (alignment.at === "peak") return [];
  const { where } = alignmentWords(alignment, unit2);
  return [
    { kind: "sentence", text: `The firings are laid over each other ${where}:` },
    {
      kind: "list",
      items: firings.map((firing, at) => `firing ${at + 1}: ${said(firing, alignment, unit2)}`)
    }
  ];
}
function said(firing, alignment, unit2) {
  const laid = linedUp(firing, alignment);
  if (laid === null) return `not laid over the others: ${whyNot(firing, alignment, unit2)}`;
  const { secondsFromPeak, secondsFromStart } = laid;
  const fromPeak = `${printDuration(Math.abs(secondsFromPeak))} ${secondsFromPeak < 0 ? "before" : "after"} its peak`;
  return alignment.at === "start" ? fromPeak : `${fromPeak}, ${printDuration(secondsFromStart)} after the first reading`;
}
function whyNot(firing, alignment, unit2) {
  if (!("tempC" in alignment)) return "";
  const { peakC, lastReadingC, aligned } = firing;
  const wanted = printTemperature(alignment.tempC, unit2);
  if (peakC < alignment.tempC)
    return `its peak, ${printTemperature(peakC, unit2)}, is below ${wanted}`;
  const seen = alignment.at === "rising" ? `its log begins at ${printTemperature(aligned.tempsC[0], unit2)}` : `its log ends at ${printTemperature(lastReadingC, unit2)}`;
  return `${seen} and has no reading on either side of ${wanted}`;
}

// src/core/reports/sections/shiftBlocks.ts
var SAID_K = 5;
function shiftBlocks({ firings, thermocoupleShifts }, unit2) {
  const said2 = thermocoupleShifts.filter(({ shiftK }) => Math.abs(shiftK) >= SAID_K);
  if (said2.length === 0) return [];
  const [first, last] = [firings[0], firings.at(-1)];
  return [
    { kind: "heading", text: "Thermocouples towards one another" },
    {
      kind: "list",
      items: said2.map(
        ({ zone, shiftK, fromC, toC }) => `From \u201C${first?.title}\u201D to \u201C${last?.title}\u201D ${zone} has come to read ${printDifference(Math.abs(shiftK), unit2)} ${shiftK < 0 ? "lower" : "higher"} against ${thermocoupleShifts.length === 1 ? "the other" : "the mean of the others"}, at equal heat of the kiln from ${printTemperature(fromC, unit2)} to ${printTemperature(toC, unit2)} on the way up.`
      )
    },
    {
      kind: "sentence",
      text: "Load, elements or a thermocouple has changed; a log shows the difference and not which of them is right. Witness cones beside each thermocouple would."
    }
  ];
}

// src/core/trials/differences.ts
var SAME_INSTRUMENT = 0.3;
function differencesOf(firings) {
  return firings.flatMap(
    (first, i) => firings.slice(i + 1).flatMap((second, k) => between({ first, second, i, j: i + 1 + k }))
  ).toSorted(bySize);
}
function differencesFrom(firings, base) {
  const first = firings[base];
  if (first === void 0) return [];
  return firings.flatMap((second, j) => j === base ? [] : between({ first, second, i: base, j }));
}
var EVERY_TWO_UP_TO = 30;
function reportedDifferences(firings) {
  if (firings.length <= EVERY_TWO_UP_TO) return differencesOf(firings);
  const names = new Set(firings.flatMap(({ facts }) => facts.map(({ name }) => name)));
  return [...names].flatMap((name) => {
    const valued = firings.flatMap((firing, at) => {
      const fact = firing.facts.find((each) => each.name === name);
      return fact === void 0 || fact.value === null ? [] : [{ at, value: fact.value, firing: { ...firing, facts: [fact] } }];
    });
    const sorted = valued.toSorted((a, b) => a.value - b.value);
    const [low, high] = [sorted[0], sorted.at(-1)];
    if (low === void 0 || high === void 0 || low === high) return [];
    return between({ first: low.firing, second: high.firing, i: low.at, j: high.at });
  }).toSorted(bySize);
}
function bySize(a, b) {
  return b.apart / b.sigma - a.apart / a.sigma;
}
function widestDifferences(differences) {
  return differences.filter(
    ({ name }, index) => differences.findIndex((other) => other.name === name) === index
  );
}
function between(pair) {
  const { first, second, i, j } = pair;
  const isShared = first.instrument !== null && first.instrument === second.instrument;
  return first.facts.flatMap((one) => {
    const other = second.facts.find(({ name }) => name === one.name);
    if (other === void 0 || one.value === null || other.value === null) return [];
    const sensor = Math.hypot(one.sensorSigma, other.sensorSigma) * (isShared ? SAME_INSTRUMENT : 1);
    const sigma = Math.max(1e-9, Math.hypot(one.sigma, other.sigma, sensor));
    const apart = Math.abs(one.value - other.value);
    const isRising = one.value <= other.value;
    return [
      {
        name: one.name,
        label: one.label,
        kind: one.kind,
        cause: one.cause,
        low: isRising ? i : j,
        high: isRising ? j : i,
        lowValue: Math.min(one.value, other.value),
        highValue: Math.max(one.value, other.value),
        apart,
        sigma,
        verdict: verdictOf(apart / sigma)
      }
    ];
  });
}
function verdictOf(score) {
  if (score > 2) return "differs";
  return score > 1 ? "perhaps" : "same";
}

// src/core/reports/sections/factWords.ts
function factText(kind2, value, unit2) {
  if (kind2 === "rate") return printRate(value, unit2);
  if (kind2 === "temperature") return printTemperature(value, unit2);
  if (kind2 === "difference") return printDifference(value, unit2).replace("-", "\u2212");
  return value === 0 ? "none" : printDuration(value);
}
function factDoubt(kind2, value, unit2) {
  return notNought(kind2 === "duration" ? printDuration(value) : factText(kind2, value, unit2));
}
function factLabel(label, unit2) {
  return label.replace(/\{(\d+)\}/, (_, tempC) => printTemperature(Number(tempC), unit2));
}

// src/core/reports/sections/againstBlocks.ts
var BESIDE = 3;
var MOST = 12;
function againstBlocks(firings, against, unit2) {
  const { base } = against;
  const others = firings.flatMap((_, at) => at === base ? [] : [at]);
  const shown2 = others.slice(0, MOST);
  const differences = differencesFrom(firings, base);
  const groups = Array.from(
    { length: Math.ceil(shown2.length / BESIDE) },
    (_, at) => shown2.slice(at * BESIDE, (at + 1) * BESIDE)
  );
  return [
    ...groups.map((group) => tableOf({ firings, differences, group, ...against }, unit2)),
    ...others.length > shown2.length ? [
      {
        kind: "sentence",
        text: `The first ${shown2.length} are held against firing ${base + 1}; ${others.length - shown2.length} more are not.`
      }
    ] : []
  ];
}
function tableOf(given, unit2) {
  const { firings, differences, group, base } = given;
  const facts = firings[base]?.facts ?? [];
  return {
    kind: "table",
    caption: `Against firing ${base + 1}: how much more (+) or less (\u2212), \xB1 one standard deviation`,
    columns: [
      { head: "", align: "left" },
      { head: `firing ${base + 1}`, align: "right" },
      ...group.map((at) => ({ head: `firing ${at + 1}`, align: "right" }))
    ],
    rows: facts.map((fact) => [
      factLabel(fact.label, unit2),
      baseCell(fact, given, unit2),
      ...group.map((at) => {
        const found = differences.find(
          ({ name, low, high }) => name === fact.name && (low === at || high === at)
        );
        return found === void 0 ? "not known" : apartCell(found, { at, unit: unit2 });
      })
    ])
  };
}
function baseCell({ kind: kind2, value }, { cones, base }, unit2) {
  if (value === null) return "not known";
  return kind2 === "cones" ? cones[base] ?? "" : factText(kind2, value, unit2);
}
function apartCell({ kind: kind2, apart, sigma, high, verdict }, { at, unit: unit2 }) {
  const doubt = `\xB1 ${notNought(amount(kind2, sigma, unit2))}`;
  if (verdict === "same") return { lines: ["not to be told", doubt], style: "faint" };
  const much = `${high === at ? "+" : "\u2212"}${amount(kind2, apart, unit2)}`;
  return { lines: [much, doubt, ...verdict === "perhaps" ? ["may be none"] : []] };
}
function amount(kind2, value, unit2) {
  if (kind2 === "cones") return `${value.toFixed(1)} cones`;
  return factText(kind2 === "temperature" ? "difference" : kind2, value, unit2);
}

// src/core/trials/firingCauses.ts
var FIRING_CAUSE_WORDS = {
  heat: "heat",
  quartz: "cooling through quartz",
  cristobalite: "cooling through cristobalite",
  coolingHold: "hold on the way down",
  opening: "opening"
};
function firingCauses(tiles, firings) {
  const used = firings.filter(({ record }) => tiles.some(({ firing }) => firing === record));
  const names = namesOf(tiles, firings);
  const whole = {
    name: "firing",
    of: "firing",
    levels: tiles.map(({ firing }) => firing),
    amounts: null,
    sayOf: (level) => `from ${names.get(level) ?? level}`,
    sayTile: (level) => names.get(level) ?? level
  };
  const differences = differencesOf(used);
  const parts = Object.keys(FIRING_CAUSE_WORDS).flatMap((cause) => {
    const groups = levelsOf(
      used,
      differences.filter((each) => each.cause === cause)
    );
    return groups === null ? [] : [partOf(cause, { tiles, used, groups, names })];
  });
  return [whole, ...parts];
}
function namesOf(tiles, firings) {
  return new Map(
    tiles.map(({ firing, firingTitle }) => {
      const at = firings.findIndex(({ record }) => record === firing);
      return [firing, at < 0 ? `\u201C${firingTitle}\u201D` : `firing ${at + 1}`];
    })
  );
}
function partOf(cause, given) {
  const { tiles, used, groups, names } = given;
  const members = (level) => used.filter((_, at) => groups[at] === level).map(({ record }) => names.get(record ?? "") ?? record).join(" and ");
  return {
    name: FIRING_CAUSE_WORDS[cause],
    of: "part of the firing",
    levels: tiles.map(
      ({ firing }) => groups[used.findIndex((each) => each.record === firing)] ?? null
    ),
    amounts: null,
    sayOf: (level) => `from ${members(level)}`,
    sayTile: members
  };
}
function levelsOf(firings, differences) {
  const differing = differences.filter(({ verdict }) => verdict === "differs");
  if (differing.length === 0) return null;
  const names = new Set(differing.map(({ name }) => name));
  const differs = (i, j) => differing.some(({ low, high }) => low === i && high === j || low === j && high === i);
  const isKnown = (at) => [...names].some(
    (name) => firings[at]?.facts.some((fact) => fact.name === name && fact.value !== null)
  );
  const levels = [];
  firings.forEach((_, at) => {
    if (!isKnown(at)) return;
    const home = levels.find((level) => level.every((other) => !differs(at, other)));
    if (home) home.push(at);
    else levels.push([at]);
  });
  return firings.map((_, at) => {
    const level = levels.findIndex((each) => each.includes(at));
    return level < 0 ? null : `level ${level + 1}`;
  });
}

// src/core/reports/sections/confoundingBlocks.ts
var PARTS = Object.values(FIRING_CAUSE_WORDS);
var MOST_NAMED = 6;
function confoundingBlocks(confounding, chart, heat) {
  const { pairs, tiles, causes } = confounding;
  const hasHeat = causes.some(({ name }) => name === FIRING_CAUSE_WORDS.heat);
  const lines = [
    ...togetherLines(confounding),
    ...apartFromGroups(confounding),
    ...jointLines(confounding)
  ];
  const partly = pairs.filter((pair) => pair.telling === "partly" && !isOfPartAndTile(pair));
  const apart = pairs.filter((pair) => pair.telling === "apart" && !isOfPartAndTile(pair));
  return [
    { kind: "heading", text: "What cannot be told apart" },
    sentence(
      lines.length > 0 ? `On ${counted(tiles)} some causes changed together, and no analysis can say which of them counts:` : pairs.length > 0 ? `Nothing changed wholly together on ${counted(tiles)}.` : `Fewer than two things varied on ${counted(tiles)}, so nothing could be mixed up.`
    ),
    ...lines.length === 0 ? [] : [{ kind: "list", items: lines }],
    ...hasHeat && heat.length > 0 ? [sentence(`Heat here is what differed at the top: ${listed(heat)}.`)] : [],
    ...partly.length === 0 ? [] : [
      sentence("Partly mixed, so that less is known of each than so many tiles would tell:"),
      {
        kind: "list",
        items: few(partly.toSorted((a, b) => b.shared - a.shared).map(partlyText))
      }
    ],
    ...apart.length === 0 ? [] : [sentence(`Told apart: ${few(apart.map(named)).join("; ")}.`)],
    ...silentSentences(confounding),
    ...chartBlocks("Which causes the tiles tell apart, pair by pair", chart)
  ];
}
function isOfPartAndTile({ first, second }) {
  return PARTS.includes(first) !== PARTS.includes(second);
}
function togetherLines({ together }) {
  return together.map(
    ({ causes, because }) => because.length === 0 ? `${capitalised(listed(causes))} changed together.` : `${capitalised(listed(causes))} changed together: ${because.join("; ")}.`
  );
}
function apartFromGroups({ pairs, together }) {
  const rest = pairs.filter(
    ({ first, second, telling }) => telling === "cannot" && !together.some(({ causes }) => causes.includes(first) && causes.includes(second))
  );
  const keys = [...new Set(rest.map(keyOf))];
  return keys.map((key) => {
    const own = rest.filter((pair) => keyOf(pair) === key);
    const { first, because, shared } = own[0];
    const seconds = listed(own.map(({ second }) => second));
    return because.length > 0 ? `${capitalised(first)} and ${seconds}, in part: ${because.join("; ")}.` : `${capitalised(first)} and ${seconds} rose and fell together (${percent(shared)} shared).`;
  });
}
function keyOf({ first, because, shared }) {
  return [first, ...because, because.length === 0 ? shared : ""].join("\n");
}
function jointLines({ jointly }) {
  return jointly.map(
    ({ cause, others }) => `${capitalised(cause)} goes with ${listed(others)} taken together, though with none alone.`
  );
}
function partlyText(pair) {
  const worth2 = Math.max(1, Math.round(pair.tiles * (1 - pair.shared)));
  return `${capitalised(named(pair))}: ${percent(pair.shared)} shared, so ${pair.tiles} tiles tell as much as ${worth2} would`;
}
function silentSentences({ constant, everyOwn, unknown }) {
  return [
    ...constant.length === 0 ? [] : [
      sentence(
        `The same on all tiles, so the tiles say nothing of it: ${constant.map(({ name, level }) => `${name} (${level})`).join("; ")}.`
      )
    ],
    ...everyOwn.length === 0 ? [] : [sentence(`Different on every tile, so nothing can be compared: ${listed(everyOwn)}.`)],
    ...unknown.length === 0 ? [] : [sentence(`Not noted on any tile: ${listed(unknown)}.`)]
  ];
}
function few(texts) {
  const more = texts.length - MOST_NAMED;
  return more > 1 ? [...texts.slice(0, MOST_NAMED), `and ${more} more pairs`] : texts;
}
function named({ first, second }) {
  return `${first} and ${second}`;
}
function percent(share) {
  return `${Math.min(99, Math.round(share * 100))} %`;
}
function counted(tiles) {
  return tiles === 1 ? "this one tile" : `these ${tiles} tiles`;
}
function listed(words) {
  return words.length < 2 ? words[0] ?? "" : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
function sentence(text) {
  return { kind: "sentence", text };
}

// src/core/reports/sections/differenceBlocks.ts
var LIST_ALL_UP_TO = 12;
function differenceBlocks(firings, differences, unit2) {
  if (firings.length < 2) return [];
  const widest = widestDifferences(differences);
  const of = (verdict) => widest.filter((difference) => difference.verdict === verdict);
  const differing = of("differs");
  const names = (list) => list.map((difference) => factLabel(difference.label, unit2)).join("; ");
  const [perhaps, same] = [of("perhaps"), of("same")];
  const compared = new Set(widest.map(({ name }) => name));
  const missing = [
    ...new Map(
      firings.flatMap(({ facts }) => facts).filter(({ name }) => !compared.has(name)).map(({ name, label }) => [name, label])
    ).values()
  ];
  return section("What differed", [
    {
      kind: "facts",
      facts: numbered(firings, widest)
    },
    ...differing.length === 0 ? [sentence2("Nothing differed beyond its uncertainty.")] : [
      ...firings.length > 2 ? [sentence2("Of each, the two firings that lie farthest apart for what is known:")] : [],
      {
        kind: "list",
        items: differing.map((difference) => differenceText(difference, unit2))
      }
    ],
    ...perhaps.length === 0 ? [] : [
      sentence2(
        `May be no difference: ${perhaps.map((each) => `${factLabel(each.label, unit2)} (${apartText(each, unit2)})`).join("; ")}.`
      )
    ],
    ...same.length === 0 ? [] : [sentence2(`No difference to be told: ${names(same)}.`)],
    ...missing.length === 0 ? [] : [
      sentence2(
        `Not measured or noted in two firings, so not compared: ${missing.map((label) => factLabel(label, unit2)).join("; ")}.`
      )
    ]
  ]);
}
function numbered(firings, spoken2) {
  const named2 = new Set(spoken2.flatMap(({ low, high }) => [low, high]));
  return firings.flatMap(
    ({ title }, at) => firings.length <= LIST_ALL_UP_TO || named2.has(at) ? [{ label: `firing ${at + 1}`, text: title }] : []
  );
}
function differenceText(difference, unit2) {
  const { label, kind: kind2, low, high, lowValue, highValue } = difference;
  const at = (firing, value) => `${factText(kind2, value, unit2)} in firing ${firing + 1}`;
  const said2 = kind2 === "cones" ? "" : `${at(low, lowValue)}, ${at(high, highValue)}: `;
  const which = kind2 === "cones" ? `most in firing ${high + 1}, least in firing ${low + 1}: ` : said2;
  return `${factLabel(label, unit2)}: ${which}${apartText(difference, unit2)}`;
}
function apartText({ kind: kind2, apart, sigma }, unit2) {
  if (kind2 === "cones") return `${apart.toFixed(1)} \xB1 ${sigma.toFixed(1)} cones apart`;
  const as = kind2 === "temperature" ? "difference" : kind2;
  return `${factText(as, apart, unit2)} \xB1 ${factDoubt(as, sigma, unit2)} apart`;
}
function sentence2(text) {
  return { kind: "sentence", text };
}

// src/core/reports/sections/fitStudyBlocks.ts
function fitStudyBlocks(study, chart, hasCommands) {
  if (study === null) return [];
  const { pairs, leftOut } = study;
  return section("How the glazes fit their clays", [
    ...pairs.length === 0 ? [] : [sentence3(MEANING)],
    ...pairs.map((pair) => sentence3(pairText(pair))),
    ...pairs.length === 0 ? [] : [pairTable(pairs)],
    ...boundSentences(pairs),
    ...chartBlocks("Fit by the files of glaze and body, and as the tiles say", chart),
    ...leftOutBlocks(leftOut, hasCommands)
  ]);
}
var MEANING = "A glaze that shrinks more than its clay is pulled and crackles. How much more is told twice: by the files of glaze and body, and by what the tiles did.";
function pairText(pair) {
  const { glaze, clay, computedPerK, found, expansionFrom } = pair;
  const by = expansionFrom === "measured" ? "by its measured expansion and the body" : "by its composition and the body";
  const name = `${capitalised(glaze)} on ${clay}`;
  const said2 = `${millionths(computedPerK)} millionths per \xB0C ${by}`;
  const measure = found.find(({ holds }) => holds === "about");
  const told = measure === void 0 ? "the tiles give no measure of it" : `${millionths(measure.perK)} by the ${WORDS[measure.from]} of ${tilesText(measure.tiles)}; ${agreement(measure)}`;
  return `${name}: ${said2}, ${told}.${spacingText(pair)}`;
}
var WORDS = {
  "crack spacing": "crack spacing",
  "cracks seen": "cracks",
  "no cracks": "lack of cracks",
  "first ping": "first ping"
};
function agreement({ agreeing, tiles }) {
  if (agreeing === tiles) return tiles === 1 ? "the two agree" : "all agree with the files";
  if (agreeing === 0)
    return "none agrees with the files: trust the tiles, and look for what recipe or body hides";
  return `${agreeing} of ${tiles} agree with the files`;
}
function spacingText({ foundOverExpected }) {
  if (foundOverExpected === null) return "";
  const { tiles, within, median } = foundOverExpected;
  const all = tiles === 1 ? "The one spacing lies" : `${within} of ${tiles} spacings lie`;
  const said2 = tiles === 1 && within === 0 ? "The one spacing lies outside" : `${all} within`;
  return ` ${said2} the range that the files let expect; the middle one is ${fewDigits(median)} times the expected.`;
}
function pairTable(pairs) {
  return {
    kind: "table",
    caption: "How much more the glaze shrinks than the clay [millionths per \xB0C]",
    columns: [
      { head: "glaze on clay", align: "left" },
      { head: "told by", align: "left" },
      { head: "tiles", align: "right" },
      { head: "middle", align: "right" },
      { head: "range", align: "right" },
      { head: { lines: ["agree with", "the files"] }, align: "right" }
    ],
    rows: pairs.flatMap(({ glaze, clay, computedPerK, found }) => [
      [
        { lines: [`${glaze} on`, clay] },
        "the files",
        "",
        fewDigits(1e6 * computedPerK.median),
        range(computedPerK),
        ""
      ],
      ...found.map((each) => [
        "",
        each.from,
        String(each.tiles),
        `${each.holds === "about" ? "" : `${each.holds} `}${fewDigits(1e6 * each.perK.median)}`,
        range(each.perK),
        `${each.agreeing} of ${each.tiles}`
      ])
    ])
  };
}
function boundSentences(pairs) {
  const kinds = new Set(
    pairs.flatMap(({ found }) => found.map(({ from, holds }) => `${from}, ${holds}`))
  );
  const sentences = [
    [
      "crack spacing, at least",
      "Cracks more than fifteen coats apart may be a weak pull, or a strong one with few flaws to start from: a lower bound only."
    ],
    ["cracks seen, at least", "That a coat cracked is a lower bound only."],
    [
      "no cracks, at most",
      "That a coat stayed whole is an upper bound, and none at all if it has no flaw to start from."
    ],
    [
      "first ping, about",
      "A listener may miss the first ping; then it came hotter, and the glaze shrinks still more than is said here."
    ]
  ];
  return sentences.flatMap(([kind2, text]) => kinds.has(kind2) ? [sentence3(text)] : []);
}
function leftOutBlocks(leftOut, hasCommands) {
  const reasons = [...new Set(leftOut.map(({ why }) => why))];
  if (reasons.length === 0) return [];
  const noFile = reasons.some((why) => why.startsWith("no glaze file"));
  return [
    {
      kind: "list",
      items: reasons.map((why) => {
        const tiles = leftOut.filter((each) => each.why === why).length;
        return `Of ${tilesText(tiles)} nothing is said of fit: ${why}`;
      })
    },
    ...noFile ? [
      sentence3(
        hasCommands ? "--glaze FILE names a glaze file; one called glaze-NAME.yaml beside the log, NAME as the tiles give it, is found by itself." : "Drop the file of the glaze beside the logs: it is known by its title, written as the tiles give it, or by being called glaze-NAME.yaml."
      )
    ] : []
  ];
}
function tilesText(tiles) {
  return tiles === 1 ? "one tile" : `${tiles} tiles`;
}
function millionths({ low, median, high }) {
  const [from, middle, to] = [low, median, high].map((perK) => fewDigits(1e6 * perK));
  return `${middle} (${from} to ${to})`;
}
function range({ low, high }) {
  return `${fewDigits(1e6 * low)} to ${fewDigits(1e6 * high)}`;
}
function sentence3(text) {
  return { kind: "sentence", text };
}

// src/core/reports/sections/nextTestBlocks.ts
function nextTestBlocks(next, unit2, hasCommands) {
  const { tiles, firing, open } = next;
  return [
    { kind: "heading", text: "Which test next" },
    ...firing === null ? [] : firingBlocks(firing, unit2, hasCommands),
    ...tiles === null ? [] : tileBlocks(tiles),
    { kind: "list", items: open }
  ];
}
function firingBlocks(firing, unit2, hasCommands) {
  const change = statementText(
    { topic: firing.kind, statement: firing.change, evidence: firing.evidence },
    unit2
  );
  return [
    sentence4(`${change} ${firing.reason}`),
    ...kilnBlocks(firing.onKiln, unit2),
    ...firing.schedule === null || !hasCommands ? [] : [sentence4("--next FILE.yaml writes this schedule, for undunted draft to lay out.")]
  ];
}
function kilnBlocks(onKiln, unit2) {
  if (onKiln === null) return [];
  const { basis, isEased, findings } = onKiln;
  const eased = isEased ? "; where it cannot keep a rate on the way up, the schedule asks for full power instead" : "";
  const does = findings.length === 0 ? " That kiln does all that it asks." : findings.some(({ severity }) => severity === "warning") ? " That kiln is not up to it as it stands; another kiln, or a schedule for a softer cone, would do:" : "";
  return [
    sentence4(`The schedule goes by ${basis}${eased}.${does}`),
    ...findings.length === 0 ? [] : [
      {
        kind: "list",
        items: findings.map((finding) => statementText(finding, unit2))
      }
    ]
  ];
}
function tileBlocks(tiles) {
  return [
    sentence4(tiles.reason),
    {
      kind: "table",
      caption: `${tiles.total} tiles to make`,
      columns: [
        { head: "clay", align: "left" },
        { head: "glaze", align: "left" },
        { head: "fired coat", align: "right" },
        { head: "glazed", align: "left" },
        { head: "shape", align: "left" },
        { head: "tiles", align: "right" }
      ],
      rows: tiles.tiles.map((tile) => [
        tile.clay,
        tile.glaze,
        `${asGiven(tile.coatMm)} mm`,
        tile.glazedSides === "one" ? "one side" : "both sides",
        tile.shape ?? "as so far",
        String(tile.count)
      ])
    },
    sentence4(whySoMany(tiles)),
    ...tiles.wanted.length === 0 ? [] : [{ kind: "list", items: tiles.wanted.map(wantedText) }]
  ];
}
function whySoMany({ ratio, scatter, scatterIs, fewest, wanted }) {
  const factor = Math.exp(scatter).toFixed(2);
  const from = scatterIs === "measured" ? `spacings scatter by a factor of ${factor} here from tile to tile, misread coats and counting included` : `spacings are taken to scatter by a factor of ${factor} from tile to tile, which is our own estimate until some are measured`;
  const least = wanted.length > 0 && fewest > 0 ? ` ${fewest} would tell the causes apart at all, but with an answer too blunt to use.` : "";
  return `So many because ${from}, and cracks ${ratio} times as far apart are to be noticed 8 times in 10.${least}`;
}
function wantedText({
  cause,
  contrast,
  before,
  after,
  needed
}) {
  const size = (error) => cause === "coat" ? fewDigits(error) : `a factor of ${Math.exp(error).toFixed(2)}`;
  const name = cause === "coat" ? "The power of the coat" : capitalised(contrast);
  const was = before === null ? "cannot be told now" : `its \xB1 is ${size(before)} now`;
  const short = after > needed ? `, short of the ${size(needed)} that it takes` : "";
  return `${name}: ${was}; with these tiles its \xB1 becomes ${size(after)}${short}`;
}
function sentence4(text) {
  return { kind: "sentence", text };
}

// src/core/reports/sections/throughBlocks.ts
function throughBlocks(through, sayLevel) {
  if (through === null) return [];
  const { all, byFactor, notLooked } = through;
  const unseen = notLooked > 0 ? `; on ${notLooked} more nobody looked` : "";
  const whole = {
    kind: "sentence",
    text: `Cracked through the wall: ${shareText(all)}${unseen}.`
  };
  if (all.found === 0 || byFactor.length === 0) return [whole];
  return [
    whole,
    {
      kind: "list",
      items: byFactor.map(({ factor, groups, p }) => {
        const said2 = groups.map(
          ({ level, share }) => `${sayLevel(factor, level)}: ${shareText(share)}`
        );
        const tested = p === null ? "" : `; shares as unequal come up in ${Math.round(100 * p)} % of cases by chance`;
        return `${capitalised(said2.join("; "))}${tested}`;
      })
    }
  ];
}
function shareText({ found, of, low, high }) {
  return `${found} of ${of} (${Math.round(100 * low)} to ${Math.round(100 * high)} %)`;
}

// src/core/reports/sections/spacingBlocks.ts
var MANY_UNCRACKED = 0.2;
var HARDLY = 0.05;
function spacingBlocks(study, charts) {
  const numbered2 = (firing) => `firing ${study.firings.findIndex(({ record }) => record === firing) + 1}`;
  return [
    { kind: "heading", text: "What governs the spacing" },
    ...study.glazes.flatMap((each) => [
      ...glazeBlocks(each, numbered2),
      ...chartBlocks(`Crack spacing against coat, ${each.glaze}`, charts[each.glaze])
    ]),
    ...comparedBlocks(study.glazesCompared, numbered2)
  ];
}
function glazeBlocks({ glaze, spacing, problems, through, sizes }, numbered2) {
  return [
    ...spacing === null ? [sentence5(`${capitalised(glaze)}: no power of the coat is worked out.`)] : fitBlocks(spacing, numbered2),
    ...problems.length === 0 ? [] : [{ kind: "list", items: problems.map(problemText) }],
    ...spacing === null ? [sentence5(sizesText(sizes))] : [],
    ...throughBlocks(through, (factor, level) => levelText(factor, level, numbered2))
  ];
}
function fitBlocks(spacing, numbered2) {
  return [
    ...gaugeBlocks(spacing),
    sentence5(exponentText(spacing)),
    ...warnings(spacing),
    ...spacing.ratios.length === 0 ? [] : [
      {
        kind: "list",
        items: spacing.ratios.map((ratio) => ratioText(ratio, numbered2))
      }
    ],
    ...untoldSentence(spacing, numbered2),
    ...slopesSentence(spacing, numbered2),
    sentence5(scatterText(spacing))
  ];
}
function gaugeBlocks(fit) {
  if (fit.coatErrorAssumed === 0) return [];
  const all = fit.tiles + fit.uncracked;
  const power = ({ value, low, high }) => `${fewDigits(value)} (${endText(low)} to ${endText(high)})`;
  return [
    sentence5(
      `How far may your gauge be off? The coats of ${fit.coatErrorAssumed} of ${all} tiles of ${fit.glaze} do not say; add coatError to them. Until then the power is ${power(fit.exponentIfExact)} if the coats are as read, and ${power(fit.exponent)} if each may be misread by 15 %, which is taken below.`
    )
  ];
}
function comparedBlocks(compared, numbered2) {
  if (compared === null) return [];
  return [
    sentence5(
      `Glaze against glaze, on ${compared.tiles} measured tiles, coats, clays, sides and firings made equal:`
    ),
    ...compared.ratios.length === 0 ? [] : [
      {
        kind: "list",
        items: compared.ratios.map((ratio) => ratioText(ratio, numbered2))
      }
    ],
    ...untoldSentence(compared, numbered2),
    ...slopesSentence(compared, numbered2)
  ];
}
function sizesText({ needed, scatter, scatterIs }) {
  const each = needed.map(({ ratio, tiles }) => `${tiles} for a ratio of ${ratio}`);
  const by = Math.exp(scatter).toFixed(2);
  const how = scatterIs === "measured" ? "as measured here" : "our own estimate";
  return `Tiles that each of two groups needs, if like tiles scatter by a factor of ${by} (${how}): ${each.join(", ")}.`;
}
function problemText({ what, expected, fix }) {
  return `${capitalised(what)}. It takes ${expected}: ${fix}.`;
}
function exponentText(fit) {
  const { exponent, coatsMm, tiles, uncracked, firings } = fit;
  const interval = `${fewDigits(exponent.value)} (${endText(exponent.low)} to ${endText(exponent.high)})`;
  const held = [0.5, 1].map(
    (guide) => Math.round(100 * exponent.low) <= 100 * guide && 100 * guide <= Math.round(100 * exponent.high)
  );
  const guides = held[0] && held[1] ? "Both guides lie within: \xBD as for cracks in a layer on a stiff body, 1 as for layers that dry." : held[0] ? "The guide \xBD, as for cracks in a layer on a stiff body, lies within; 1 does not." : held[1] ? "The guide 1, as for layers that dry, lies within; \xBD does not." : "Neither guide lies within, \xBD as for cracks in a layer on a stiff body or 1 as for layers that dry.";
  const of = `${tiles} measured ${tiles === 1 ? "tile" : "tiles"}${uncracked > 0 ? ` and ${uncracked} uncracked` : ""} of ${firings} ${firings === 1 ? "firing" : "firings"}, coats ${fewDigits(coatsMm.least)} to ${fewDigits(coatsMm.most)} mm`;
  const [low, twice, high] = [exponent.low, exponent.value, exponent.high].map(
    (power) => endText(2 ** power)
  );
  return `${capitalised(fit.glaze)}: a coat twice as thick has cracks ${twice} times as far apart (${low} to ${high}): spacing goes with the coat to the power ${interval}, the range holding the truth 95 times in 100; ${of}. ${guides}`;
}
function endText(end) {
  return Number.isFinite(end) ? fewDigits(end) : "without end";
}
function warnings(fit) {
  const all = fit.tiles + fit.uncracked;
  const share = fit.uncracked / all;
  const texts = [
    ...fit.uncracked > 0 ? [
      `${fit.uncracked} of ${all} tiles (${Math.round(100 * share)} %) did not crack. They count as wider than the tile${share > MANY_UNCRACKED ? "; with so many near the threshold of cracking the exponent may be too small or negative" : ""}.`
    ] : [],
    ...fit.thinUncracked > 0 ? [thinText(fit)] : []
  ];
  return texts.map((text) => sentence5(text));
}
function thinText({ thinUncracked, exponentWithoutThin }) {
  const left = exponentWithoutThin === null ? "too few tiles are left to work it out without them" : `without them it is ${fewDigits(exponentWithoutThin.value)} (${endText(exponentWithoutThin.low)} to ${endText(exponentWithoutThin.high)})`;
  return `${thinUncracked} of these ${thinUncracked === 1 ? "has a coat" : "have coats"} thinner than any that cracked, likely too thin to crack at all: that drags the power down, and ${left}.`;
}
function slopesSentence({ slopes }, numbered2) {
  if (slopes.length === 0) return [];
  const each = slopes.map(
    ({ factor, level, exponent }) => `${levelText(factor, level, numbered2)} ${fewDigits(exponent.value)} (${endText(exponent.low)} to ${endText(exponent.high)})`
  );
  const apart = slopes.some(
    ({ factor, exponent }) => slopes.some((other) => other.factor === factor && other.exponent.low > exponent.high)
  );
  const so = apart ? "These lie apart, so that one power for all and the ratios above stand for no single coat" : "These lie together, as the ratios above take for granted";
  return [sentence5(`The power of each group by itself: ${each.join("; ")}. ${so}.`)];
}
function ratioText(group, numbered2) {
  const { ratio, tiles, tilesAgainst, isShared, test } = group;
  const [level, against] = [group.level, group.against].map(
    (each) => levelText(group.factor, each, numbered2)
  );
  const said2 = `${capitalised(level ?? "")} against ${against}: cracks ${timesText(ratio.value)} times as far apart (${timesText(ratio.low)} to ${timesText(ratio.high)}), ${tiles} tiles against ${tilesAgainst}`;
  const shared = isShared ? "; something else changed with it, so the ratio belongs to both" : "";
  const tested = test === null ? "" : `; with tiles dealt into groups by chance as far apart in ${shareText2(test.p)} of dealings (so few tiles can show ${shareText2(test.leastP)} at the least)`;
  return `${said2}${shared}${tested}`;
}
function timesText(times) {
  if (!Number.isFinite(times)) return "without end";
  return times >= 0.1 && times < 10 ? times.toFixed(2) : fewDigits(times);
}
function shareText2(share) {
  return `${fewDigits(100 * share)} %`;
}
function levelText(factor, level, numbered2) {
  if (factor === "firing") return numbered2(level);
  if (factor === "sides") return level === "one" ? "glaze on one side" : "glaze on both sides";
  return level;
}
function untoldSentence({ untold }, numbered2) {
  if (untold.length === 0) return [];
  const pairs = untold.map(
    ({ factor, level, against }) => `${levelText(factor, level, numbered2)} against ${levelText(factor, against, numbered2)}`
  );
  return [
    sentence5(`No ratio of its own, since it changed together with others: ${pairs.join("; ")}.`)
  ];
}
function scatterText({
  tileSigma,
  lineSigma,
  icc,
  effectiveLines: effectiveLines2,
  countingErrorUnknown,
  thinUncracked
}) {
  const tiles = tileSigma < HARDLY ? "Like tiles scatter by no more than their coats can be misread" : `Like tiles scatter by a factor of ${Math.exp(tileSigma).toFixed(2)}`;
  const lines = lineSigma === null || icc === null || effectiveLines2 === null ? "" : `, lines of one tile by ${Math.exp(lineSigma).toFixed(2)}; so all lines counted are worth ${worth(effectiveLines2)}`;
  const thin = thinUncracked > 0 ? ", with coats too thin to crack among them" : "";
  const unknown = countingErrorUnknown > 0 ? ` ${countingErrorUnknown === 1 ? "One tile has" : `${countingErrorUnknown} tiles have`} a spacing without the lines it was counted on.` : "";
  return `${tiles}${thin}${lines}.${unknown}`;
}
function worth(lines) {
  const whole = Math.max(1, Math.round(lines));
  return whole === 1 ? "one independent line" : `${whole} independent ones`;
}
function sentence5(text) {
  return { kind: "sentence", text };
}

// src/core/reports/sections/tileTable.ts
function tileTable({ tiles, leftOut }, all) {
  const firings = [...new Set(tiles.map(({ firing }) => firing))];
  return [
    { kind: "heading", text: "The tiles" },
    ...firings.flatMap((firing) => {
      const own = tiles.filter((tile) => tile.firing === firing);
      const number = all.findIndex(({ record }) => record === firing) + 1;
      return [
        firingTable(own, `Firing ${number}: ${own[0]?.firingTitle ?? firing}`),
        ...moreOf(own)
      ];
    }),
    ...leftOutBlocks2(leftOut)
  ];
}
function firingTable(own, title) {
  const glazes = [...new Set(own.map(({ glaze }) => glaze))];
  const isOne = glazes.length === 1;
  return {
    kind: "table",
    caption: isOne ? `${title}; all ${glazes[0]}` : title,
    columns: [
      { head: "tile", align: "left" },
      { head: "clay", align: "left" },
      ...isOne ? [] : [{ head: "glaze", align: "left" }],
      { head: "coat, mm", align: "right" },
      { head: { lines: ["sides", "glazed"] }, align: "left" },
      { head: "spacing, mm", align: "right" },
      { head: "cracks", align: "left" }
    ],
    rows: own.map((tile) => tileRow(tile, isOne))
  };
}
function tileRow(tile, isOne) {
  return [
    tile.piece,
    tile.clay,
    ...isOne ? [] : [tile.glaze],
    `${fewDigits(tile.coat.firedMm)} \xB1 ${fewDigits(tile.coat.sigmaMm)}`,
    tile.glazedSides,
    spacingText2(tile),
    tile.cracked ?? "not noted"
  ];
}
function moreOf(own) {
  const ways = own.flatMap(
    ({ piece, spacing }) => spacing.kind === "measured" && spacing.alongOverAcross !== null ? [`${piece} ${fewDigits(spacing.alongOverAcross)}`] : []
  );
  const pings = own.flatMap(
    ({ piece, pings: heard }) => heard === null ? [] : [`${piece} ${heard.count}`]
  );
  return [
    ...ways.length === 0 ? [] : [
      {
        kind: "sentence",
        text: `From crack to crack along the tile, over the same across it (1 without a direction): ${ways.join(", ")}.`
      }
    ],
    ...pings.length === 0 ? [] : [{ kind: "sentence", text: `Pings heard: ${pings.join(", ")}.` }]
  ];
}
function spacingText2({ spacing }) {
  if (spacing.kind === "not measured") return "not measured";
  if (spacing.kind === "uncracked") return `over ${asGiven(spacing.atLeastMm)}`;
  const { pitchMm, lowMm, highMm } = spacing;
  return lowMm === null || highMm === null ? asGiven(pitchMm) : `${fewDigits(pitchMm)} (${fewDigits(lowMm)} to ${fewDigits(highMm)})`;
}
function leftOutBlocks2(leftOut) {
  const reasons = [...new Set(leftOut.map(({ from, why }) => `${from}
${why}`))];
  if (reasons.length === 0) return [];
  return [
    { kind: "sentence", text: "Left out:" },
    {
      kind: "list",
      items: reasons.map((reason) => {
        const own = leftOut.filter(({ from: from2, why: why2 }) => `${from2}
${why2}` === reason);
        const [from, why] = reason.split("\n");
        return `of ${from}: ${own.map(({ piece }) => piece).join(", ")}, because ${why}`;
      })
    }
  ];
}

// src/core/reports/sections/trialBlocks.ts
function trialBlocks(study, shown2) {
  const { unit: unit2, charts } = shown2;
  const { tiles, confounding, next } = study;
  const differences = [
    ...differenceBlocks(study.firings, study.differences, unit2),
    ...againstBlocks(study.firings, shown2.against, unit2)
  ];
  if (tiles.tiles.length === 0)
    return [
      ...differences,
      {
        kind: "sentence",
        text: "No record names trial tiles, so nothing is said of crack spacing."
      }
    ];
  return [
    ...differences,
    ...confounding === null ? [
      {
        kind: "sentence",
        text: "No tile says anything of spacing: on none were cracks measured or looked for."
      }
    ] : [
      ...confoundingBlocks(confounding, charts.causes, heatFacts(study, unit2)),
      ...spacingBlocks(study, charts.spacing ?? {})
    ],
    ...fitStudyBlocks(study.fits, charts.fits, shown2.hasCommands),
    ...tileTable(tiles, study.firings),
    ...next === null ? [] : nextTestBlocks(next, unit2, shown2.hasCommands)
  ];
}
function heatFacts({ differences }, unit2) {
  const labels = differences.filter(({ cause, verdict }) => cause === "heat" && verdict === "differs").map(({ name, label }) => (name === "above1100" ? "time " : "") + factLabel(label, unit2));
  return [...new Set(labels)];
}
function trialBasis({ tiles, differences, fits }) {
  return [
    ...differences.length === 0 ? [] : [
      "Thermocouple and place count for 10 \xB0C each way in what differed, for three tenths of that where two records name the same kiln and type of thermocouple; that share is our own estimate."
    ],
    ...tiles.tiles.length === 0 ? [] : [
      "The tile is what was repeated; lines and pictures of one tile are not. Causes are told apart by their columns in one design; parts of a firing that differed by no more than their uncertainty count as the same.",
      "Spacing is a fit with a free exponent on logarithms; nothing is forced to the guides. No published table of glaze crack spacing against thickness was found to hold it against.",
      basedOn("Guide \xBD: a thin brittle layer on a stiff body", "thouless-1990"),
      basedOn("Guide 1: mud and other layers that dry", "groisman-kaplan-1994")
    ],
    ...fits === null || fits.pairs.length === 0 ? [] : [
      "Fit: a range holds 8 of 10 drawn cases, with all that is uncertain of glaze, body, coat and counting; more tiles do not narrow it, since most of it is what nobody knows of glaze and body. Spacing is read back by the energy that cracks set free; it ranks glazes and promises nothing."
    ]
  ];
}

// src/core/reports/comparisonBlocks.ts
var SIDE_BY_SIDE = 3;
function comparisonBlocks(comparison, context) {
  const { unit: unit2, charts = {}, sources = [], study, alignment = AT_PEAK } = context;
  const { base = 0, hasCommands = true } = context;
  const { firings } = comparison;
  const apart = apartSentence(firings, study);
  return [
    ...apart === null ? [] : [{ kind: "lead", text: apart }],
    ...chartBlocks(
      `The firings laid over each other ${alignmentWords(alignment, unit2).where}`,
      charts.overlay
    ),
    ...alignmentBlocks(comparison, alignment, unit2),
    ...chartBlocks("Each firing by itself, with its inversions, peak and opening", charts.firings),
    { kind: "heading", text: "Side by side" },
    ...inThrees(firings).map((group, index) => groupTable(group, index * SIDE_BY_SIDE, unit2)),
    ...study === void 0 ? [] : trialBlocks(study, {
      unit: unit2,
      charts,
      hasCommands,
      against: { base, cones: firings.map(({ coneLabel }) => coneLabel) }
    }),
    ...shiftBlocks(comparison, unit2),
    { kind: "heading", text: "What this rests on" },
    {
      kind: "list",
      items: [
        "Every number is from the hottest thermocouple of its firing, the one named.",
        "Cones are worked out from the whole curve with a heatwork model; the \xB1 is one standard deviation (two of three readings lie within it), thermocouple and place in the kiln included.",
        "Two firings differ where they lie more than twice the \xB1 of their difference apart.",
        ...study === void 0 ? [] : trialBasis(study),
        ...sources
      ]
    },
    ...cautionBlocks([...comparison.cautions, ...study?.cautions ?? []])
  ];
}
function inThrees(firings) {
  return Array.from(
    { length: Math.ceil(firings.length / SIDE_BY_SIDE) },
    (_, group) => firings.slice(group * SIDE_BY_SIDE, (group + 1) * SIDE_BY_SIDE)
  );
}
function groupTable(firings, before, unit2) {
  return {
    kind: "table",
    caption: firings.length === 1 ? `Firing ${before + 1}` : `Firings ${before + 1} to ${before + firings.length}`,
    columns: [
      { head: "", align: "left" },
      ...firings.map(({ title }) => ({ head: title, align: "right" }))
    ],
    rows: measures(unit2).map(({ label, of }) => [label, ...firings.map(of)])
  };
}
function measures(unit2) {
  const rate = (value) => value === null ? "not measured" : printRate(value, unit2);
  return [
    { label: "thermocouple", of: (firing) => firing.zone },
    { label: "heat reached", of: heatCell },
    { label: "peak", of: (firing) => printTemperature(firing.peakC, unit2) },
    {
      label: `last ${printDifference(100, unit2)} to the peak`,
      of: (firing) => rate(firing.lastHundredCPerHour)
    },
    {
      label: `within ${printDifference(5, unit2)} of the peak`,
      of: (firing) => printDuration(firing.secondsWithinFiveOfPeak)
    },
    {
      label: `above ${printTemperature(1100, unit2)}`,
      of: (firing) => printDuration(firing.secondsAbove1100C)
    },
    {
      label: "quartz, cooling: mean",
      of: (firing) => rate(firing.quartzCooling.meanCPerHour)
    },
    {
      label: "quartz, cooling: fastest",
      of: (firing) => rate(firing.quartzCooling.fastestCPerHour)
    },
    {
      label: "cristobalite, cooling: mean",
      of: (firing) => rate(firing.cristobaliteCooling.meanCPerHour)
    },
    {
      label: "cristobalite, cooling: fastest",
      of: (firing) => rate(firing.cristobaliteCooling.fastestCPerHour)
    },
    { label: "last reading", of: (firing) => printTemperature(firing.lastReadingC, unit2) },
    { label: "length of the log", of: (firing) => printDuration(firing.totalSeconds) },
    { label: "warnings", of: warningCell }
  ];
}
function heatCell(firing) {
  return firing.sigmaCones === null ? firing.coneLabel : { lines: [firing.coneLabel, `\xB1 ${plusMinus(firing.sigmaCones)} cones`] };
}
function warningCell(firing) {
  return firing.warnings === 0 ? "none" : { lines: [String(firing.warnings)], style: "warning" };
}
function apartSentence(firings, study) {
  const placed = firings.flatMap((firing) => firing.coneIndex === null ? [] : [{ firing, index: firing.coneIndex }]).toSorted((a, b) => a.index - b.index);
  const [least, most] = [placed[0], placed.at(-1)];
  if (least === void 0 || most === void 0 || least === most) return null;
  const apart = most.index - least.index;
  if (apart < 0.05) return "All got the same heat, to a twentieth of a cone.";
  const clearest = study && clearestSentence(firings, study);
  if (clearest) return clearest;
  const doubt = Math.hypot(least.firing.sigmaCones ?? 0, most.firing.sigmaCones ?? 0);
  const among = placed.length < firings.length ? "Of those that can be placed: most" : "Most";
  return `${among} heat in \u201C${most.firing.title}\u201D, least in \u201C${least.firing.title}\u201D: ${apart.toFixed(1)} \xB1 ${plusMinus(doubt)} cones apart${isDifference(apart, doubt)}`;
}
function clearestSentence(firings, { differences }) {
  const heat = differences.find(({ name }) => name === "cone");
  const [low, high] = [firings[heat?.low ?? -1], firings[heat?.high ?? -1]];
  if (heat === void 0 || low === void 0 || high === void 0) return null;
  const first = firings.length > 2 ? "The clearest difference in heat: \u201C" : "\u201C";
  return `${first}${high.title}\u201D got ${heat.apart.toFixed(1)} \xB1 ${plusMinus(heat.sigma)} cones more than \u201C${low.title}\u201D${isDifference(heat.apart, heat.sigma)}`;
}
function isDifference(apart, doubt) {
  return apart > 2 * doubt ? ", which is more than twice the \xB1." : ". That is less than twice the \xB1, so it may be no difference at all.";
}

// src/core/reports/comparisonText.ts
function comparisonText(comparison, options) {
  return reportText(
    { title: comparisonTitle(comparison), blocks: comparisonBlocks(comparison, options) },
    options.paint
  );
}
function comparisonTitle(comparison) {
  const count = comparison.firings.length;
  return count === 1 ? "One firing" : `${count} firings compared`;
}

// src/core/reports/comparisonHtml.ts
function comparisonHtml(comparison, options) {
  return reportHtml({
    title: comparisonTitle(comparison),
    language: "en",
    blocks: comparisonBlocks(comparison, options)
  });
}

// src/core/trials/nextSchedule.ts
function nextSchedule({ tiles, next }) {
  const schedule = next?.firing?.schedule;
  if (schedule) return ok(schedule);
  return failed({
    code: "trials/no-next-firing",
    what: tiles.tiles.length === 0 ? "no record of these firings names trial tiles, so there is no next test" : "no schedule could be made for the next test",
    where: "--next",
    expected: "trial tiles in the records, and a record that names its schedule or a cone that was reached",
    fix: "note trials and schedule in the records beside the logs, or leave --next out"
  });
}

// src/core/trials/coexisting.ts
function coexisting(pair, tiles) {
  const groups = [];
  for (const tile of tiles) {
    const a = pair.first.levels[tile];
    const b = pair.second.levels[tile];
    if (a == null || b == null) continue;
    const [home, ...others] = groups.filter(({ first, second }) => first.has(a) || second.has(b));
    const group = home ?? { first: /* @__PURE__ */ new Set(), second: /* @__PURE__ */ new Set() };
    if (home === void 0) groups.push(group);
    group.first.add(a);
    group.second.add(b);
    for (const other of others) {
      for (const level of other.first) group.first.add(level);
      for (const level of other.second) group.second.add(level);
      groups.splice(groups.indexOf(other), 1);
    }
  }
  return groups.map(({ first, second }) => ({ first: [...first], second: [...second] }));
}

// src/core/trials/columnSpace.ts
var NOTHING = 1e-7;
function centred(column) {
  const mean = column.reduce((sum, value) => sum + value, 0) / Math.max(1, column.length);
  return column.map((value) => value - mean);
}
function basisOf(columns) {
  const basis = [];
  for (const column of columns) {
    const rest = without(without(column, basis), basis);
    const length = Math.sqrt(dot(rest, rest));
    if (length > NOTHING * Math.max(1e-300, Math.sqrt(dot(column, column))))
      basis.push(rest.map((value) => value / length));
  }
  return basis;
}
function without(column, basis) {
  const left = [...column];
  for (const unit2 of basis) {
    const along = dot(left, unit2);
    for (let i = 0; i < left.length; i++)
      left[i] = left[i] - along * unit2[i];
  }
  return left;
}
function sharedShare(one, other) {
  const [a, b] = [basisOf(one), basisOf(other)];
  if (a.length === 0 || b.length === 0) return 0;
  const cosines = a.map((unit2) => b.map((against) => dot(unit2, against)));
  const product2 = cosines.map((row) => cosines.map((against) => dot(row, against)));
  return Math.min(1, largestEigenvalue(product2));
}
function largestEigenvalue(matrix) {
  return Math.max(
    ...matrix.map((_, start) => {
      let vector = matrix.map((__, i) => i === start ? 1 : 0.01 * (i + 1));
      let value = 0;
      for (let step = 0; step < 500; step++) {
        const next = matrix.map((row) => dot(row, vector));
        const length = Math.sqrt(dot(next, next));
        if (length === 0) return 0;
        const previous = value;
        value = length / Math.sqrt(dot(vector, vector));
        vector = next.map((each) => each / length);
        if (step > 5 && Math.abs(value - previous) < 1e-13) break;
      }
      return value;
    })
  );
}
function dot(one, other) {
  let sum = 0;
  for (let i = 0; i < one.length; i++) sum += one[i] * other[i];
  return sum;
}

// src/core/trials/confoundedWords.ts
var MOST_SAID = 3;
function confoundedWords(pair, groups) {
  if (groups.length < 2) return [];
  const { first, second } = pair;
  if (first.of !== "tile" && second.of !== "tile") return [alikeInFirings(first, groups)];
  const said2 = groups.slice(0, MOST_SAID).map((group) => sentence6(pair, group));
  const more = groups.length - said2.length;
  return more > 0 ? [...said2, `and so on for ${more} more`] : said2;
}
function sentence6({ first, second }, group) {
  return first.of === "tile" && first.name !== "coat" ? `every ${spoken(group.first.map(first.sayTile))} tile is ${spoken(group.second.map(second.sayOf))}` : `every ${spoken(group.second.map(second.sayTile))} tile is ${spoken(group.first.map(first.sayOf))}`;
}
function alikeInFirings(cause, groups) {
  const members = groups.map(
    ({ first }) => first.flatMap((level) => cause.sayTile(level).split(" and "))
  );
  if (members.every(({ length }) => length === 1))
    return "no two firings were alike in any of them";
  return members.map(
    (firings) => firings.length === 1 ? `${firings[0]} stands by itself` : `${firings.slice(0, -1).join(", ")} and ${firings.at(-1)} are alike in each`
  ).join("; ");
}
function spoken(words) {
  return words.length < 2 ? words[0] ?? "" : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}

// src/core/trials/designColumns.ts
function designColumns(cause, tiles) {
  const { amounts, levels } = cause;
  if (amounts) return [centred(tiles.map((tile) => amounts[tile]))];
  const kinds = levelsOn(cause, tiles);
  return kinds.slice(1).map((kind2) => centred(tiles.map((tile) => levels[tile] === kind2 ? 1 : 0)));
}
function levelsOn({ levels }, tiles) {
  return [...new Set(tiles.flatMap((tile) => levels[tile] ?? []))];
}

// src/core/trials/confoundingOf.ts
var WHOLLY = 1 - 1e-9;
var ALL_BUT = 0.95;
var HARDLY2 = 0.1;
function confoundingOf(causes, tiles) {
  const all = Array.from({ length: tiles }, (_, tile) => tile);
  const levels = causes.map((cause) => levelsOn(cause, all));
  const varied = causes.filter(
    (cause, at) => isVaried(levels[at], cause, tiles)
  );
  const looked = varied.flatMap(
    (first, i) => varied.slice(i + 1).map((second) => pairOf({ first, second }, all))
  );
  const pairs = looked.map(({ pair }) => pair);
  return {
    tiles,
    causes: varied.map((cause) => ({ name: cause.name, levels: levelsOn(cause, all) })),
    pairs,
    together: togetherOf(varied, looked),
    jointly: jointlyOf(varied, pairs, all),
    constant: causes.flatMap((cause, at) => {
      const [level, another] = levels[at];
      return level === void 0 || another !== void 0 ? [] : [{ name: cause.name, level: cause.sayTile(level) }];
    }),
    everyOwn: causes.filter((cause, at) => isEveryOwn(levels[at], cause, tiles)).map(({ name }) => name),
    unknown: causes.filter((_, at) => levels[at]?.length === 0).map(({ name }) => name)
  };
}
function isEveryOwn(levels, cause, tiles) {
  return cause.amounts === null && cause.of === "tile" && levels.length > 2 && levels.length === tiles;
}
function isVaried(levels, cause, tiles) {
  return levels.length > 1 && !isEveryOwn(levels, cause, tiles);
}
function pairOf(pair, all) {
  const { first, second } = pair;
  const tiles = all.filter((tile) => first.levels[tile] != null && second.levels[tile] != null);
  const groups = coexisting(pair, tiles);
  const isContained = [first, second].some(({ of }) => of === "firing") && [first, second].some(({ of }) => of === "part of the firing");
  const shared = sharedOf(pair, tiles, groups);
  const telling = isContained ? "contained" : tellingOf(shared, pair);
  return {
    pair: {
      first: first.name,
      second: second.name,
      telling,
      shared,
      because: telling === "apart" ? [] : confoundedWords(pair, groups),
      tiles: tiles.length
    },
    isOneToOne: isOneToOne(groups)
  };
}
function sharedOf({ first, second }, tiles, groups) {
  if (groups.length > 1 && first.amounts === null && second.amounts === null) return 1;
  return sharedShare(designColumns(first, tiles), designColumns(second, tiles));
}
function isOneToOne(groups) {
  return groups.length > 1 && groups.every(({ first, second }) => first.length === 1 && second.length === 1);
}
function tellingOf(shared, { first, second }) {
  const isRead = first.amounts !== null || second.amounts !== null;
  if (shared > (isRead ? ALL_BUT : WHOLLY)) return "cannot";
  return shared > HARDLY2 ? "partly" : "apart";
}
var SAID_FIRST = [
  "tile tile",
  "firing tile",
  "part of the firing tile",
  "part of the firing part of the firing"
];
function togetherOf(causes, looked) {
  const groups = [];
  const taken = /* @__PURE__ */ new Set();
  const linked = looked.filter(
    ({ pair, isOneToOne: isOneToOne2 }) => isOneToOne2 && (pair.telling === "cannot" || pair.telling === "contained")
  );
  for (const { name } of causes) {
    if (taken.has(name)) continue;
    const group = causes.map((other) => other.name).filter(
      (other) => other === name || linked.some(
        ({ pair }) => pair.first === name && pair.second === other || pair.second === name && pair.first === other
      )
    );
    if (group.length < 2) continue;
    for (const each of group) taken.add(each);
    groups.push(group);
  }
  return groups.flatMap((names) => {
    const of = (name) => causes.find((cause) => cause.name === name)?.of;
    const isFiringAlone = names.filter((name) => of(name) !== "firing").length < 2;
    if (isFiringAlone && names.every((name) => of(name) !== "tile")) return [];
    const said2 = linked.filter(
      ({ pair }) => names.includes(pair.first) && names.includes(pair.second) && pair.because.length > 0
    );
    const kind2 = ({ pair }) => [pair.first, pair.second].map(of).toSorted().join(" ");
    const told = SAID_FIRST.flatMap((each) => said2.find((one) => kind2(one) === each) ?? []);
    const because = told.slice(0, 2).flatMap(({ pair }) => pair.because);
    return [{ causes: names, because: [...new Set(because)] }];
  });
}
function jointlyOf(causes, pairs, all) {
  const whole = causes.filter(
    ({ of, levels }) => of !== "part of the firing" && all.every((tile) => levels[tile] != null)
  );
  return whole.flatMap((cause) => {
    const isBound = pairs.some(
      ({ first, second, telling }) => telling === "cannot" && (first === cause.name || second === cause.name)
    );
    const others = whole.filter((other) => other !== cause);
    if (isBound || explained(cause, others, all) <= WHOLLY) return [];
    const few2 = others.reduce((kept, other) => {
      const rest = kept.filter((each) => each !== other);
      return explained(cause, rest, all) > WHOLLY ? rest : kept;
    }, others);
    return [{ cause: cause.name, others: few2.map(({ name }) => name) }];
  });
}
function explained(cause, others, tiles) {
  return sharedShare(
    designColumns(cause, tiles),
    others.flatMap((other) => designColumns(other, tiles))
  );
}

// src/core/trials/firingFacts.ts
var SENSOR_K = 10;
var NOISE_K = 1;
var GAIN_SHARE = 0.02;
var SOAKING_FROM_C = 1100;
var BELOW_PEAK_K = 20;
var HOLD_END_SECONDS = 4 * 60;
var NOTED_SECONDS = 5 * 60;
var COOL_C = 100;
function firingFacts(firings) {
  const zones = firings.map(({ review }) => hottestZone(review.zones));
  const cone = commonCone(zones);
  return firings.map(({ review, record }, at) => ({
    title: review.title,
    record: record?.name ?? null,
    instrument: instrumentOf(record),
    facts: factsOf({ review, record }, zones[at], cone)
  }));
}
function instrumentOf(record) {
  const type = record?.thermocouple?.type ?? null;
  return record === null || record.kiln === null || type === null ? null : `${record.kiln}, type ${type}`;
}
function commonCone(zones) {
  const indices = zones.flatMap(({ heatwork }) => heatwork.position.index ?? []);
  const series2 = new Set(zones.map(({ heatwork }) => heatwork.series));
  if (indices.length === 0 || series2.size > 1) return null;
  const margins = /* @__PURE__ */ new Map();
  for (const { heatwork } of zones)
    for (const { cone, marginK } of heatwork.cones)
      margins.set(cone, [...margins.get(cone) ?? [], Math.abs(marginK)]);
  const summed = [...margins].map(([cone, list]) => ({ cone, sum: list.reduce((a, b) => a + b) }));
  return summed.toSorted((a, b) => a.sum - b.sum)[0]?.cone ?? null;
}
var UNKNOWN = { value: null, sigma: 0, sensorSigma: 0 };
function factsOf({ review, record }, zone, cone) {
  const { curve, peakAtSeconds: peakAt } = zone;
  const unloading = placedUnloading(review.reading, zone, record);
  const opened = unloading.ok ? unloading.value : null;
  const fact = (name, told, reading) => ({
    name,
    ...told,
    ...reading
  });
  const rate = { kind: "rate" };
  const time = { kind: "duration" };
  return [
    fact("cone", { label: "heat reached", kind: "cones", cause: "heat" }, coneOf(zone)),
    ...cone === null ? [] : [
      fact(
        "heatwork",
        { label: `heatwork past cone ${cone} down`, kind: "difference", cause: "heat" },
        marginOf(zone, cone)
      )
    ],
    fact(
      "peak",
      { label: "peak", kind: "temperature", cause: "heat" },
      { value: zone.peakC, sigma: NOISE_K, sensorSigma: SENSOR_K }
    ),
    fact("above1100", { label: "above {1100}", ...time, cause: "heat" }, soakingOf(review, zone)),
    fact(
      "quartzHeatingMean",
      { label: "quartz, heating: mean", ...rate, cause: null },
      meanOf(zone, QUARTZ_BAND.name, "heating")
    ),
    fact(
      "quartzMean",
      { label: "quartz, cooling: mean", ...rate, cause: "quartz" },
      meanOf(zone, QUARTZ_BAND.name, "cooling")
    ),
    fact(
      "quartzFastest",
      { label: "quartz, cooling: fastest", ...rate, cause: "quartz" },
      fastestOf(review, zone, QUARTZ_BAND.name)
    ),
    fact(
      "cristobaliteMean",
      { label: "cristobalite, cooling: mean", ...rate, cause: "cristobalite" },
      meanOf(zone, CRISTOBALITE_BAND.name, "cooling")
    ),
    fact(
      "cristobaliteFastest",
      { label: "cristobalite, cooling: fastest", ...rate, cause: "cristobalite" },
      fastestOf(review, zone, CRISTOBALITE_BAND.name)
    ),
    fact(
      "coolingHold",
      { label: "held on the way down", ...time, cause: "coolingHold" },
      heldCoolingOf(zone)
    ),
    fact(
      "openedAt",
      { label: "opened at", kind: "temperature", cause: "opening" },
      opened === null ? UNKNOWN : { value: opened.tempC, sigma: NOISE_K, sensorSigma: SENSOR_K }
    ),
    fact(
      "openedAfter",
      { label: "opened, after the peak", ...time, cause: "opening" },
      openedAfterOf(opened, peakAt)
    ),
    fact("to100", { label: "peak to {100}", ...time, cause: null }, coolOf(curve, peakAt))
  ];
}
function coneOf({ heatwork }) {
  const { sigmaCones, modelSigmaCones: model, position } = heatwork;
  if (sigmaCones === null || model === null) return UNKNOWN;
  return {
    value: position.index,
    sigma: model,
    sensorSigma: Math.sqrt(Math.max(0, sigmaCones ** 2 - model ** 2))
  };
}
function marginOf({ heatwork }, cone) {
  const state = heatwork.cones.find((each) => each.cone === cone);
  if (state === void 0 || heatwork.position.index === null) return UNKNOWN;
  return { value: state.marginK, sigma: state.marginSigmaK, sensorSigma: SENSOR_K };
}
function soakingOf({ reading }, { curve }) {
  const [more, value, less] = [-SENSOR_K, 0, SENSOR_K].map(
    (by) => secondsAbove(curve, SOAKING_FROM_C + by)
  );
  return {
    value,
    sigma: (reading.intervalSeconds || 60) / Math.sqrt(6),
    sensorSigma: Math.abs(more - less) / 2
  };
}
function crossing(zone, band, direction) {
  return zone.crossings.find((each) => each.band === band && each.direction === direction);
}
function meanOf(zone, band, direction) {
  const found = crossing(zone, band, direction);
  const mean = found?.meanCPerHour ?? null;
  if (found === void 0 || mean === null) return UNKNOWN;
  const edges = Math.SQRT2 * NOISE_K / Math.abs(found.toC - found.fromC);
  return { value: Math.abs(mean), sigma: Math.abs(mean) * edges, sensorSigma: gain(mean) };
}
function fastestOf({ reading }, zone, band) {
  const found = crossing(zone, band, "cooling");
  const fastest = found?.fastestCPerHour ?? null;
  if (!found || fastest === null || found.windowMinutes === null) return UNKNOWN;
  const hours = found.windowMinutes / 60;
  const readings = Math.max(2, hours * 3600 / (reading.intervalSeconds || 60));
  return {
    value: Math.abs(fastest),
    sigma: NOISE_K * Math.sqrt(12 / readings) / hours,
    sensorSigma: gain(fastest)
  };
}
function gain(rateCPerHour) {
  return GAIN_SHARE * Math.abs(rateCPerHour);
}
function heldCoolingOf({ segments, peakC, peakAtSeconds, lastReadingC }) {
  if (lastReadingC > peakC - BELOW_PEAK_K) return UNKNOWN;
  const holds = segments.filter(
    ({ kind: kind2, startSeconds, fromC }) => kind2 === "hold" && startSeconds > peakAtSeconds && fromC < peakC - BELOW_PEAK_K && fromC > COOL_C
  );
  const value = holds.reduce((sum, each) => sum + each.endSeconds - each.startSeconds, 0);
  return {
    value,
    sigma: HOLD_END_SECONDS * Math.sqrt(2 * Math.max(1, holds.length)),
    sensorSigma: 0
  };
}
function openedAfterOf(opened, peakAt) {
  if (opened?.atSeconds == null) return UNKNOWN;
  return { value: opened.atSeconds - peakAt, sigma: NOTED_SECONDS, sensorSigma: 0 };
}
function coolOf(curve, peakAt) {
  const at = (tempC) => crossingTimes(curve, tempC).findLast(
    ({ seconds, direction }) => direction === "cooling" && seconds > peakAt
  )?.seconds ?? null;
  const there = at(COOL_C);
  const warmer = at(COOL_C + SENSOR_K);
  if (there === null || warmer === null) return UNKNOWN;
  const perNoise = (there - warmer) / SENSOR_K;
  return { value: there - peakAt, sigma: perNoise * NOISE_K, sensorSigma: there - warmer };
}

// src/core/trials/firstPings.ts
var TILE_K = 15;
var NOTED_SECONDS2 = 120;
function firstPings(firings) {
  const byRecord = new Map(
    firings.flatMap((firing) => firing.record === null ? [] : [[firing.record.name, firing]])
  );
  return (tile) => {
    const firing = byRecord.get(tile.firing);
    return firing === void 0 ? null : pingOf(tile, firing);
  };
}
function pingOf({ pings, coat }, { review, record }) {
  const zone = hottestZone(review.zones);
  const cooling = (pings?.moments ?? []).map((moment) => placedOnce(moment, review.reading, zone, "pinging")?.seconds ?? null).filter((seconds) => seconds !== null && seconds > zone.peakAtSeconds);
  const first = Math.min(...cooling.map(Number));
  const at = (seconds) => temperatureAt(zone.curve, seconds);
  const onsetC = cooling.length === 0 ? null : at(first);
  if (onsetC === null) return null;
  const [before, after] = [at(first - NOTED_SECONDS2), at(first + NOTED_SECONDS2)];
  const noted = before === null || after === null ? 0 : Math.abs(before - after) / 2;
  const unloading = placedUnloading(review.reading, zone, record);
  const openedAt = unloading.ok ? unloading.value?.atSeconds ?? null : null;
  return {
    coatMm: coat.firedMm,
    onsetC,
    sigmaK: Math.hypot(TILE_K, noted),
    kiln: openedAt === null ? "not noted" : first < openedAt ? "shut" : "opened"
  };
}

// src/core/trials/linearSystem.ts
var NO_PIVOT = 1e-10;
function solved(matrix, right) {
  const lower = factored(matrix);
  if (lower === null) return null;
  const forward = [];
  lower.forEach((row, i) => {
    forward.push((right[i] - dot2(row, forward)) / row[i]);
  });
  const solution = new Array(right.length).fill(0);
  for (let i = right.length - 1; i >= 0; i--) {
    let rest = forward[i];
    for (let j = i + 1; j < right.length; j++)
      rest -= lower[j][i] * solution[j];
    solution[i] = rest / lower[i][i];
  }
  return solution;
}
function dot2(a, b) {
  let sum = 0;
  for (let i = 0; i < Math.min(a.length, b.length); i++) sum += a[i] * b[i];
  return sum;
}
function factored(matrix) {
  const lower = [];
  for (const [i, row] of matrix.entries()) {
    const made = [];
    for (let j = 0; j < i; j++) {
      const other = lower[j];
      made.push((row[j] - dot2(made, other.slice(0, j))) / other[j]);
    }
    const left = row[i] - dot2(made, made);
    if (!(left > NO_PIVOT * row[i])) return null;
    lower.push([...made, Math.sqrt(left)]);
  }
  return lower;
}
function normalMatrix(rows, weights) {
  const size = rows[0]?.length ?? 0;
  const sums = Array.from({ length: size }, () => new Array(size).fill(0));
  rows.forEach((row, n) => {
    const weight = weights[n];
    for (let i = 0; i < size; i++) {
      const target = sums[i];
      const factor = weight * row[i];
      for (let j = 0; j < size; j++)
        target[j] = target[j] + factor * row[j];
    }
  });
  return sums;
}

// src/core/trials/normalTail.ts
var FAR = 3;
function normalDensity(z) {
  return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
}
function normalTail(z) {
  if (z < 0) return 1 - normalTail(-z);
  return z < FAR ? 0.5 - normalDensity(z) * series(z) : normalDensity(z) / fraction(z);
}
function logNormalTail(z) {
  if (z < FAR) return Math.log(normalTail(z));
  return -z * z / 2 - Math.log(2 * Math.PI) / 2 - Math.log(fraction(z));
}
function normalHazard(z) {
  return z < FAR ? normalDensity(z) / normalTail(z) : fraction(z);
}
function series(z) {
  let term = z;
  let sum = z;
  for (let k = 1; Math.abs(term) > 1e-17 * sum; k++) {
    term *= z * z / (2 * k + 1);
    sum += term;
  }
  return sum;
}
function fraction(z) {
  let value = z;
  for (let k = 60; k >= 1; k--) value = z + k / value;
  return value;
}

// src/core/trials/censoredModel.ts
var SIGMAS = [3, 0.6, 0.15, 0.04, 5e-3];
var BALANCED = 5e-4;
function censoredFit(rows, held = null) {
  const free = held === null ? rows : rows.map((row) => without2(row, held));
  let start = startOf(free);
  if (start === null) return null;
  const at = (logSigma) => {
    const fit = atSigma(free, Math.exp(logSigma), start);
    if (fit !== null) start = fit.coefficients;
    return fit;
  };
  const best = balanced(at);
  return best === null || held === null ? best : { ...best, coefficients: withHeld(best, held) };
}
function balanced(at) {
  const sides = bracket(at);
  if (sides === null || "only" in sides) return sides?.only ?? null;
  const { atLow, atHigh } = sides;
  let [low, high] = [Math.log(atLow.tileSigma), Math.log(atHigh.tileSigma)];
  let [below, above] = [atLow.tooSmall, atHigh.tooSmall];
  let best = atHigh;
  for (let round = 0; round < 60 && Math.abs(best.tooSmall) > BALANCED; round++) {
    const middle = at(low + (high - low) * below / (below - above));
    if (middle === null) return null;
    if (middle.tooSmall > 0)
      [low, below, above] = [Math.log(middle.tileSigma), middle.tooSmall, above / 2];
    else [high, above, below] = [Math.log(middle.tileSigma), middle.tooSmall, below / 2];
    best = middle;
  }
  return best;
}
function bracket(at) {
  let atHigh = at(Math.log(SIGMAS[0]));
  for (const sigma of SIGMAS.slice(1)) {
    const next = at(Math.log(sigma));
    if (atHigh === null || next === null) return null;
    if (next.tooSmall > 0) return { atLow: next, atHigh };
    atHigh = next;
  }
  return atHigh === null ? null : { only: atHigh };
}
function without2(row, { index, value }) {
  return {
    ...row,
    value: row.value - value * row.columns[index],
    columns: row.columns.toSpliced(index, 1)
  };
}
function withHeld({ coefficients }, { index, value }) {
  return coefficients.toSpliced(index, 0, value);
}
function startOf(rows) {
  const columns = rows.map((row) => row.columns);
  const ones = rows.map(() => 1);
  const values = rows.map(({ value }) => value);
  return solved(normalMatrix(columns, ones), sumsOf(columns, values));
}
function sumsOf(columns, factors) {
  return (columns[0] ?? []).map(
    (_, i) => columns.reduce((sum, row, n) => sum + row[i] * factors[n], 0)
  );
}
function slopesOf(row, sigma, mean) {
  const total2 = Math.sqrt(sigma * sigma + row.variance);
  const z = (row.value - mean) / total2;
  const share = (sigma / total2) ** 2;
  if (!row.isBound)
    return {
      found: share * z * z,
      taken: share,
      log: -z * z / 2 - Math.log(total2) - Math.log(2 * Math.PI) / 2,
      first: z / total2,
      bend: 1 / (total2 * total2)
    };
  const hazard = normalHazard(z);
  return {
    found: share * Math.max(0, hazard * z),
    taken: share * Math.max(0, -hazard * z),
    log: logNormalTail(z),
    first: hazard / total2,
    bend: Math.max(1e-12, hazard * (hazard - z) / (total2 * total2))
  };
}
function atSigma(rows, sigma, start) {
  const slopesAt = (coefficients2) => rows.map((row) => slopesOf(row, sigma, dot2(row.columns, coefficients2)));
  let coefficients = start;
  let slopes = slopesAt(coefficients);
  for (let step = 0; step < 60; step++) {
    const move = newtonMove(rows, slopes);
    if (move === null) return null;
    const next = betterPoint(coefficients, move, { slopesAt, now: totalOf(slopes) });
    if (next === null) break;
    ({ coefficients, slopes } = next);
    if (next.gain < 1e-9) break;
  }
  const tooSmall = Math.log(totalOf(slopes, "found") / totalOf(slopes, "taken")) / 2;
  return { coefficients, tileSigma: sigma, logLikelihood: totalOf(slopes), tooSmall };
}
function newtonMove(rows, slopes) {
  const columns = rows.map((row) => row.columns);
  const matrix = normalMatrix(
    columns,
    slopes.map(({ bend }) => bend)
  );
  return solved(
    matrix,
    sumsOf(
      columns,
      slopes.map(({ first }) => first)
    )
  );
}
function betterPoint(from, move, {
  slopesAt,
  now
}) {
  for (let share = 1; share > 1e-6; share /= 2) {
    const coefficients = from.map((value, i) => value + share * move[i]);
    const slopes = slopesAt(coefficients);
    const gain2 = totalOf(slopes) - now;
    if (gain2 >= 0) return { coefficients, slopes, gain: gain2 };
  }
  return null;
}
function totalOf(slopes, of = "log") {
  return slopes.reduce((sum, each) => sum + each[of], 0);
}
function informationOf(rows, fit) {
  const bends = rows.map(
    (row) => slopesOf(row, fit.tileSigma, dot2(row.columns, fit.coefficients)).bend
  );
  return normalMatrix(
    rows.map(({ columns }) => columns),
    bends
  );
}
function scoresOf(rows, fit) {
  return rows.map((row) => {
    const total2 = Math.sqrt(fit.tileSigma ** 2 + row.variance);
    return slopesOf(row, fit.tileSigma, dot2(row.columns, fit.coefficients)).first * total2;
  });
}

// src/core/trials/effectiveLines.ts
function effectiveLines({
  tiles,
  linesPerTile,
  icc
}) {
  return tiles * linesPerTile / (1 + (linesPerTile - 1) * icc);
}

// src/core/trials/calibratedCoats.ts
function calibratedCoats(coats, groups) {
  const read = coats.map(({ logMm }) => logMm);
  const basis = basisOf([coats.map(() => 1), ...groups]);
  const means = read.map(
    (_, i) => basis.reduce((sum, unit2) => sum + dot2(unit2, read) * unit2[i], 0)
  );
  const freedom = Math.max(1, coats.length - basis.length);
  const scatter = read.reduce((sum, log, i) => sum + (log - means[i]) ** 2, 0);
  const error = coats.reduce((sum, { sigma }) => sum + sigma ** 2, 0) / coats.length;
  const variance = Math.max(0, scatter / freedom - error);
  const shares = coats.map(
    ({ sigma }) => variance + sigma ** 2 === 0 ? 0 : variance / (variance + sigma ** 2)
  );
  return {
    logMm: read.map(
      (log, i) => means[i] + shares[i] * (log - means[i])
    ),
    variances: shares.map((share) => variance * (1 - share)),
    reliability: shares.reduce((sum, share) => sum + share, 0) / coats.length
  };
}

// src/core/trials/countingError.ts
var SIGMAS_95 = 1.96;
function countingError(spacings) {
  const counted3 = spacings.filter(({ from }) => from === "lines");
  const scatter = scatterOverCount(counted3);
  const lines = counted3.reduce((sum, each) => sum + each.lines, 0);
  const crossings = counted3.reduce((sum, each) => sum + each.crossings, 0);
  const variances = spacings.map(
    (spacing) => spacing.from === "lines" ? scatter / spacing.crossings : rangeVariance(spacing)
  );
  return {
    variances: variances.map((variance) => variance ?? 0),
    unknown: variances.filter((variance) => variance === null).length,
    perLine: counted3.length === 0 ? null : scatter * lines / crossings
  };
}
function rangeVariance({ lowMm, highMm }) {
  if (lowMm === null || highMm === null) return null;
  return (Math.log(highMm / lowMm) / (2 * SIGMAS_95)) ** 2;
}
function scatterOverCount(counted3) {
  let [weighted, freedoms] = [0, 0];
  for (const { lowMm, highMm, lines, crossings, directions } of counted3) {
    const freedom = lines - Math.max(1, directions.length);
    if (freedom < 1 || lowMm === null || highMm === null) continue;
    const error = Math.log(highMm / lowMm) / (2 * tQuantile(0.95, freedom));
    weighted += freedom * error ** 2 * crossings;
    freedoms += freedom;
  }
  return freedoms === 0 ? 1 : weighted / freedoms;
}

// src/core/trials/spacingFactors.ts
var LEVEL_OF = [
  ["glaze", ({ glaze }) => glaze],
  ["clay", ({ clay }) => clay],
  ["sides", ({ glazedSides }) => glazedSides],
  ["shape", ({ shape }) => shape],
  ["firing", ({ firing }) => firing]
];
function levelOf(tile, factor) {
  const entry = LEVEL_OF.find(([name]) => name === factor);
  return entry === void 0 ? null : entry[1](tile);
}
function spacingFactors(tiles, logCoats) {
  const columns = [];
  const untold = [];
  const fixed = [tiles.map(() => 1), logCoats];
  for (const [factor, of] of LEVEL_OF)
    for (const column of columnsOf(factor, tiles.map(of))) {
      const before = [...fixed, ...columns.map(({ values }) => values)];
      const rank = basisOf(before).length;
      (basisOf([...before, column.values]).length > rank ? columns : untold).push(column);
    }
  return { columns, untold, carrying: carryingOf(columns, untold, fixed) };
}
function columnsOf(factor, levels) {
  const counts = /* @__PURE__ */ new Map();
  for (const level of levels) if (level !== null) counts.set(level, (counts.get(level) ?? 0) + 1);
  const sorted = [...counts].toSorted(([, a], [, b]) => b - a).map(([level]) => level);
  const [against = "", ...others] = sorted;
  return others.map((level) => ({
    factor,
    level,
    against,
    values: levels.map((each) => each === level ? 1 : 0)
  }));
}
function carryingOf(columns, untold, fixed) {
  const all = [...fixed, ...columns.map(({ values }) => values)];
  const rows = (all[0] ?? []).map((_, n) => all.map((column) => column[n]));
  const matrix = normalMatrix(
    rows,
    rows.map(() => 1)
  );
  const shares = untold.map(
    ({ values }) => solved(
      matrix,
      all.map((column) => dot2(column, values))
    )
  );
  return columns.flatMap(
    (_, i) => shares.some((share) => Math.abs(share?.[fixed.length + i] ?? 0) > 1e-6) ? [i] : []
  );
}

// src/core/trials/spacingRows.ts
var EXPONENT_AT = 1;
var FACTORS_FROM = 2;
function spacingRows(tiles, factorsOf = spacingFactors) {
  const read = tiles.map(({ coat }) => ({
    logMm: Math.log(coat.firedMm),
    sigma: coat.sigmaMm / coat.firedMm
  }));
  const asRead = read.map(({ logMm }) => logMm);
  const factors = factorsOf(tiles, asRead);
  const columns = factors.columns.map(({ values }) => values);
  const coats = calibratedCoats(read, columns);
  const measured = tiles.flatMap(({ spacing }) => spacing.kind === "measured" ? [spacing] : []);
  const counting = countingError(measured);
  const counted3 = new Map(measured.map((each, i) => [each, counting.variances[i]]));
  const rowsOf = (logCoats, extra) => tiles.map((tile, i) => {
    const { value, isBound, variance } = foundOn(tile, counted3);
    return {
      value,
      isBound,
      variance: variance + extra(i),
      columns: [1, logCoats[i], ...columns.map((column) => column[i])]
    };
  });
  return {
    tiles,
    factors,
    coats,
    counting,
    asRead: rowsOf(asRead, () => 0),
    calibrated: (exponent) => rowsOf(coats.logMm, (i) => exponent ** 2 * coats.variances[i])
  };
}
function foundOn({ spacing, piece }, counted3) {
  if (spacing.kind === "measured")
    return {
      value: Math.log(spacing.pitchMm),
      isBound: false,
      variance: counted3.get(spacing)
    };
  if (spacing.kind === "uncracked")
    return { value: Math.log(spacing.atLeastMm), isBound: true, variance: 0 };
  throw new RangeError(`spacingRows: ${piece} was not measured`);
}

// src/core/trials/fittedRows.ts
function fittedRows(data) {
  const first = censoredFit(data.calibrated(0));
  if (first === null) return null;
  const rows = data.calibrated(first.coefficients[EXPONENT_AT]);
  const fit = censoredFit(rows);
  return fit === null ? null : { data, rows, fit };
}

// src/core/trials/labelTest.ts
var ALL_UP_TO = 2e4;
var DRAWN = 4999;
var SAME = 1e-9;
function labelTest(tiles, seed) {
  const groups = firingsOf(tiles);
  const dealings = groups.reduce((all, group) => all * choices(group.places.length, group.ones), 1);
  if (dealings <= 1) return null;
  const basis = basisOf([tiles.labels.map(() => 1), ...tiles.columns]);
  const scores = freeOf(tiles.scores, basis);
  const parting = (label) => partingOf(label, scores, basis);
  const found = parting(tiles.labels.map(Number)) * (1 - SAME);
  const isEven = groups.every(({ places, ones }) => 2 * ones === places.length);
  const leastOf = (isEven ? 2 : 1) / dealings;
  if (dealings <= ALL_UP_TO) {
    const as2 = countAll(groups, tiles.labels.length, (label) => parting(label) >= found);
    return { p: as2 / dealings, leastP: leastOf, dealings, looked: dealings };
  }
  const as = countDrawn(groups, tiles.labels, { seed, counts: (label) => parting(label) >= found });
  const p = (as + 1) / (DRAWN + 1);
  return { p, leastP: Math.max(leastOf, 1 / (DRAWN + 1)), dealings, looked: DRAWN + 1 };
}
function partingOf(label, scores, basis) {
  let free = dot2(label, label);
  for (const unit2 of basis) free -= dot2(unit2, label) ** 2;
  return free < SAME ? 0 : Math.abs(dot2(label, scores)) / Math.sqrt(free);
}
function firingsOf({ firings, labels }) {
  return [...new Set(firings)].map((firing) => {
    const places = firings.flatMap((each, i) => each === firing ? [i] : []);
    return { places, ones: places.filter((i) => labels[i]).length };
  });
}
function choices(n, k) {
  let ways = 1;
  for (let i = 1; i <= k; i++) ways = ways * (n - k + i) / i;
  return Math.round(ways);
}
function freeOf(values, basis) {
  const shares = basis.map((unit2) => dot2(unit2, values));
  return values.map(
    (value, i) => value - basis.reduce((sum, unit2, b) => sum + shares[b] * unit2[i], 0)
  );
}
function countAll(groups, tiles, counts) {
  const label = new Array(tiles).fill(0);
  const deal = (at) => {
    const group = groups[at];
    if (group === void 0) return counts(label) ? 1 : 0;
    return chosen(group.places, group.ones).reduce((sum, places) => {
      for (const place of places) label[place] = 1;
      const found = deal(at + 1);
      for (const place of places) label[place] = 0;
      return sum + found;
    }, 0);
  };
  return deal(0);
}
function chosen(places, count) {
  if (count === 0) return [[]];
  return places.flatMap(
    (place, i) => chosen(places.slice(i + 1), count - 1).map((rest) => [place, ...rest])
  );
}
function countDrawn(groups, labels, {
  seed,
  counts
}) {
  const even = seededEven(seed);
  const label = labels.map(Number);
  let as = 0;
  for (let draw = 0; draw < DRAWN; draw++) {
    for (const { places } of groups)
      for (let i = places.length - 1; i > 0; i--) {
        const [a, b] = [places[i], places[Math.floor(even() * (i + 1))]];
        [label[a], label[b]] = [label[b], label[a]];
      }
    if (counts(label)) as++;
  }
  return as;
}

// src/core/trials/profileInterval.ts
var FARTHEST = 12;
var CLOSE = 2e-3;
function profileInterval(rows, fit, index) {
  const measured = rows.filter(({ isBound }) => !isBound).length;
  const freedom = Math.max(1, measured - fit.coefficients.length);
  const t = tQuantile(0.95, freedom);
  const allowed = (freedom + fit.coefficients.length) / 2 * Math.log(1 + t * t / freedom);
  const value = fit.coefficients[index];
  const step = t * errorOf(rows, fit, index);
  const falls = (at) => {
    const other = censoredFit(rows, { index, value: at });
    return other === null ? Number.POSITIVE_INFINITY : fit.logLikelihood - other.logLikelihood;
  };
  const end = (sign) => value + sign * endOf((away) => falls(value + sign * away), step, allowed);
  return { value, low: end(-1), high: end(1) };
}
function errorOf(rows, fit, index) {
  const unit2 = fit.coefficients.map((_, i) => i === index ? 1 : 0);
  const column = solved(informationOf(rows, fit), unit2);
  return column === null ? 1 : Math.sqrt(column[index]);
}
function endOf(falls, step, allowed) {
  const over = (away) => Math.sqrt(Math.max(0, falls(away))) - Math.sqrt(allowed);
  let [inside, below] = [0, -Math.sqrt(allowed)];
  let [outside, above] = [step, over(step)];
  while (above < 0) {
    if (outside > FARTHEST * step) return Number.POSITIVE_INFINITY;
    [inside, below] = [outside, above];
    outside *= 1.6;
    above = over(outside);
  }
  for (let round = 0; round < 30 && outside - inside > CLOSE * step; round++) {
    const straight = inside + (outside - inside) * below / (below - above);
    const at = Number.isFinite(above) ? straight : (inside + outside) / 2;
    const value = over(at);
    if (Math.abs(value) < CLOSE) return at;
    if (value < 0) [inside, below] = [at, value];
    else [outside, above] = [at, value];
  }
  return (inside + outside) / 2;
}

// src/core/trials/groupRatios.ts
function groupRatios({ data, rows, fit }, seed) {
  const { columns, carrying } = data.factors;
  return columns.flatMap((column, i) => {
    const tiles = countOf(data, column, column.level);
    const tilesAgainst = countOf(data, column, column.against);
    if (tiles < 2 || tilesAgainst < 2) return [];
    const { factor, level, against } = column;
    return [
      {
        factor,
        level,
        against,
        ratio: ratioOf(profileInterval(rows, fit, FACTORS_FROM + i)),
        tiles,
        tilesAgainst,
        isShared: carrying.includes(i),
        test: factor === "firing" ? null : testOf(data, column, seed + i)
      }
    ];
  });
}
function ratioOf({ value, low, high }) {
  return { value: Math.exp(value), low: Math.exp(low), high: Math.exp(high) };
}
function countOf({ tiles }, { factor }, level) {
  return tiles.filter((tile) => levelOf(tile, factor) === level).length;
}
function testOf({ tiles }, { factor, level, against }, seed) {
  const pair = tiles.filter((tile) => [level, against].includes(levelOf(tile, factor) ?? ""));
  const data = spacingRows(pair, (own, logCoats) => {
    const all = spacingFactors(own, logCoats);
    return { ...all, columns: all.columns.filter((column) => column.factor !== factor) };
  });
  const fitted = fittedRows(data);
  if (fitted === null) return null;
  return labelTest(
    {
      scores: scoresOf(fitted.rows, fitted.fit),
      labels: pair.map((tile) => levelOf(tile, factor) === level),
      firings: pair.map(({ firing }) => firing),
      columns: [data.coats.logMm, ...data.factors.columns.map(({ values }) => values)]
    },
    seed
  );
}

// src/core/trials/spacingProblems.ts
var FREEDOM = 2;
var LEAST_RELIABILITY = 0.4;
var BARE_MINIMUM = 8;
function spacingProblems(tiles) {
  const measured = tiles.filter(({ spacing }) => spacing.kind === "measured");
  const glaze = tiles[0]?.glaze ?? "no glaze";
  const where = `tiles of ${glaze}`;
  const read = tiles.map(({ coat }) => ({
    logMm: Math.log(coat.firedMm),
    sigma: coat.sigmaMm / coat.firedMm
  }));
  const { columns } = spacingFactors(
    tiles,
    read.map(({ logMm }) => logMm)
  );
  const needed = 2 + columns.length + FREEDOM;
  if (measured.length < needed)
    return [
      {
        code: "trials/too-few-tiles",
        what: `${counted2(measured.length, "measured tile")} for the power of the coat${columns.length === 0 ? "" : ` and ${counted2(columns.length, "difference")} between groups`}`,
        where,
        expected: `${needed} measured tiles at least; ${Math.max(needed, BARE_MINIMUM)} for an answer worth having`,
        fix: columns.length === 0 ? "make more tiles" : "make more tiles, or compare fewer groups at once"
      }
    ];
  const coats = calibratedCoats(
    read,
    columns.map(({ values }) => values)
  );
  if (coats.reliability < LEAST_RELIABILITY)
    return [
      {
        code: "trials/coats-alike",
        what: "the coats differ hardly more than they can be misread",
        where,
        expected: "coats that differ by a factor of two and more, in every group",
        fix: "make tiles with coats of 0.3 to 1.2 mm, or measure the coats better and note coatError"
      }
    ];
  return columns.flatMap((column) => allUncracked(tiles, column.factor, column));
}
function counted2(count, thing) {
  return `${count} ${thing}${count === 1 ? "" : "s"}`;
}
function allUncracked(tiles, factor, { level, against }) {
  return [level, against].flatMap((each) => {
    const own = tiles.filter((tile) => levelOf(tile, factor) === each);
    if (own.some(({ spacing }) => spacing.kind === "measured")) return [];
    return [
      {
        code: "trials/group-uncracked",
        what: `no tile with ${factor} ${each} cracked (${own.length} of them)`,
        where: `tiles of ${own[0]?.glaze ?? "no glaze"}`,
        expected: "a cracked tile in every group whose spacing is compared",
        fix: "compare how many cracked, or leave this group out of the spacing"
      }
    ];
  });
}

// src/core/trials/fitSpacing.ts
var TILES_FOR_SLOPE = 6;
var CURVE_POINTS = 25;
function fitSpacing(tiles, seed) {
  const problems = spacingProblems(tiles);
  if (problems.length > 0) return failed(...problems);
  const data = spacingRows(tiles);
  const fitted = fittedRows(data);
  const asRead = censoredFit(data.asRead);
  if (fitted === null || asRead === null)
    throw new RangeError("fitSpacing: columns say the same twice");
  const coats = tiles.map(({ coat }) => coat.firedMm);
  const measured = tiles.filter(({ spacing }) => spacing.kind === "measured").length;
  return ok({
    glaze: tiles[0].glaze,
    tiles: measured,
    uncracked: tiles.length - measured,
    ...thinOnes(tiles),
    firings: new Set(tiles.map(({ firing }) => firing)).size,
    coatsMm: { least: Math.min(...coats), most: Math.max(...coats) },
    exponent: profileInterval(fitted.rows, fitted.fit, EXPONENT_AT),
    exponentAsRead: asRead.coefficients[EXPONENT_AT],
    exponentIfExact: profileInterval(data.asRead, asRead, EXPONENT_AT),
    reliability: data.coats.reliability,
    coatErrorAssumed: tiles.filter(({ coat }) => coat.sigmaIs === "assumed").length,
    countingErrorUnknown: data.counting.unknown,
    ...scatterOf(fitted, measured),
    ratios: groupRatios(fitted, seed),
    untold: data.factors.untold.map(({ factor, level, against }) => ({ factor, level, against })),
    slopes: slopesOf2(data),
    curve: curveOf(fitted, measured),
    curveIsOf: curveGroups(data)
  });
}
function thinOnes(tiles) {
  const cracked = tiles.filter(({ spacing }) => spacing.kind === "measured");
  const least = Math.min(...cracked.map(({ coat }) => coat.firedMm));
  const rest = tiles.filter(
    ({ spacing, coat }) => spacing.kind === "measured" || coat.firedMm >= least
  );
  const thinUncracked = tiles.length - rest.length;
  if (thinUncracked === 0 || spacingProblems(rest).length > 0)
    return { thinUncracked, exponentWithoutThin: null, tileSigmaWithoutThin: null };
  const fitted = fittedRows(spacingRows(rest));
  if (fitted === null)
    return { thinUncracked, exponentWithoutThin: null, tileSigmaWithoutThin: null };
  return {
    thinUncracked,
    exponentWithoutThin: profileInterval(fitted.rows, fitted.fit, EXPONENT_AT),
    tileSigmaWithoutThin: scatterOf(fitted, cracked.length).tileSigma
  };
}
function scatterOf({ data, fit }, measured) {
  const freedom = Math.max(1, measured - fit.coefficients.length);
  const tileSigma = fit.tileSigma * Math.sqrt(measured / freedom);
  const { perLine } = data.counting;
  if (perLine === null) return { tileSigma, lineSigma: null, icc: null, effectiveLines: null };
  const icc = tileSigma ** 2 / (tileSigma ** 2 + perLine);
  const lines = data.tiles.flatMap(
    ({ spacing }) => spacing.kind === "measured" && spacing.lines > 0 ? [spacing.lines] : []
  );
  return {
    tileSigma,
    lineSigma: Math.sqrt(perLine),
    icc,
    effectiveLines: lines.reduce(
      (sum, linesPerTile) => sum + effectiveLines({ tiles: 1, linesPerTile, icc }),
      0
    )
  };
}
function slopesOf2({ tiles, factors }) {
  const names = [...new Set(factors.columns.map(({ factor }) => factor))];
  return names.flatMap((factor) => {
    const levels = [...new Set(tiles.flatMap((tile) => levelOf(tile, factor) ?? []))];
    const slopes = levels.flatMap((level) => slopeOf(tiles, factor, level));
    return slopes.length > 1 ? slopes : [];
  });
}
function slopeOf(tiles, factor, level) {
  const own = tiles.filter((tile) => levelOf(tile, factor) === level);
  const measured = own.filter(({ spacing }) => spacing.kind === "measured").length;
  if (measured < TILES_FOR_SLOPE || spacingProblems(own).length > 0) return [];
  const fitted = fittedRows(spacingRows(own));
  if (fitted === null) return [];
  const exponent = profileInterval(fitted.rows, fitted.fit, EXPONENT_AT);
  return [{ factor, level, exponent, tiles: measured }];
}
function curveOf({ data, rows, fit }, measured) {
  const coats = data.tiles.map(({ coat }) => coat.firedMm);
  const [least, most] = [Math.min(...coats), Math.max(...coats)];
  const information = informationOf(rows, fit);
  const t = tQuantile(0.95, Math.max(1, measured - fit.coefficients.length));
  return Array.from({ length: CURVE_POINTS }, (_, i) => {
    const coatMm = least * (most / least) ** (i / (CURVE_POINTS - 1));
    const columns = fit.coefficients.map(
      (__, at) => at === 0 ? 1 : at === 1 ? Math.log(coatMm) : 0
    );
    const log = dot2(columns, fit.coefficients);
    const reach = t * Math.sqrt(dot2(columns, solved(information, columns) ?? []));
    return {
      coatMm,
      pitchMm: Math.exp(log),
      lowMm: Math.exp(log - reach),
      highMm: Math.exp(log + reach)
    };
  });
}
function curveGroups({ factors }) {
  const against = new Map(factors.columns.map(({ factor, against: level }) => [factor, level]));
  return [...against].map(([factor, level]) => ({ factor, level }));
}

// src/core/trials/glazesCompared.ts
var FEWEST = 2;
function glazesCompared(all, seed) {
  const measured = (glaze) => all.filter((tile) => tile.glaze === glaze && tile.spacing.kind === "measured").length;
  const glazes = new Set(all.map(({ glaze }) => glaze).filter((each) => measured(each) >= FEWEST));
  if (glazes.size < 2) return null;
  const tiles = all.filter(
    ({ glaze, spacing }) => glazes.has(glaze) && spacing.kind !== "not measured"
  );
  const fit = fitSpacing(tiles, seed);
  if (!fit.ok) return null;
  const ofGlazes = (groups) => groups.filter(({ factor }) => factor === "glaze");
  return {
    ratios: ofGlazes(fit.value.ratios),
    untold: ofGlazes(fit.value.untold),
    slopes: ofGlazes(fit.value.slopes),
    tiles: fit.value.tiles
  };
}

// src/core/trials/namedApart.ts
function namedApart(firings) {
  return firings.map((firing, at) => {
    const { record } = firing;
    if (record === null) return firing;
    const before = firings.slice(0, at).filter((other) => other.record?.name === record.name);
    if (before.some((other) => isSame(other, firing))) return { ...firing, record: null };
    return before.length === 0 ? firing : { ...firing, record: { ...record, name: `${record.name} (${before.length + 1})` } };
  });
}
function isSame(one, other) {
  return one.record?.title === other.record?.title && one.review.reading.name === other.review.reading.name && one.review.reading.start === other.review.reading.start;
}

// src/core/trials/oneChange.ts
var MATERIAL = 1.25;
var UNLOAD_C = 100;
var SAME_PEAK_K = 3;
var CHANGES = {
  quartz: { fact: "quartzMean", towards: "low", make: slowerThrough(QUARTZ_BAND) },
  cristobalite: {
    fact: "cristobaliteMean",
    towards: "low",
    make: slowerThrough(CRISTOBALITE_BAND)
  },
  opening: { fact: "openedAt", towards: "low", make: openedCooler },
  coolingHold: { fact: "coolingHold", towards: "high", make: heldOnTheWayDown },
  heat: { fact: "cone", towards: "high", make: hotter }
};
function slowerThrough(band) {
  return (plan, { value, other, known }) => {
    const { unit: unit2 } = plan;
    const kiln = known?.kiln ?? REFERENCE_KILN;
    const mostCPerHour = rateDown(value, unit2);
    const { meanCPerHour } = bandPassage(expandSchedule(plan, { kiln }).curve, band, "cooling");
    if (meanCPerHour === null || Math.abs(meanCPerHour) < MATERIAL * mostCPerHour) return null;
    const padK = mostCPerHour * WINDOW_REACH_HOURS;
    const name = band.name.replace(" inversion", "");
    const schedule = paced(
      untilCool(plan),
      {
        fromC: temperatureUp(band.highC + padK, unit2),
        toC: temperatureDown(band.lowC - padK, unit2),
        mostCPerHour,
        why: `${band.name}: as slow as in \u201C${other.review.title}\u201D, the one thing that changes`
      },
      kiln
    );
    return {
      schedule: titled(schedule, `slower through ${name}`),
      change: `Fire \u201C${quoted(plan.title)}\u201D with one change: {rate} through ${name}, as in \u201C${quoted(other.review.title)}\u201D; the heat stays as it is.`,
      evidence: [{ name: "rate", value: mostCPerHour, kind: "rate" }]
    };
  };
}
function openedCooler(plan, { value, other }) {
  const tempC = Math.min(value, UNLOAD_C);
  return {
    schedule: plan,
    change: `Fire \u201C${quoted(plan.title)}\u201D exactly as it is, with one change outside it: open at {opening} or cooler, as in \u201C${quoted(other.review.title)}\u201D.`,
    evidence: [{ name: "opening", value: tempC, kind: "temperature" }]
  };
}
function heldOnTheWayDown(plan, { other }) {
  const zone = hottestZone(other.review.zones);
  const hold = zone.segments.filter(({ kind: kind2, startSeconds }) => kind2 === "hold" && startSeconds > zone.peakAtSeconds).toSorted((a, b) => b.endSeconds - b.startSeconds - (a.endSeconds - a.startSeconds))[0];
  if (hold === void 0) return null;
  const atC = temperatureUp((hold.fromC + hold.toC) / 2, plan.unit, 5);
  const holdSeconds = Math.round((hold.endSeconds - hold.startSeconds) / 300) * 300;
  const at = fallThrough(plan, atC);
  if (at === null || holdSeconds === 0) return null;
  const segment = {
    toC: atC,
    rateCPerHour: plan.segments[at]?.rateCPerHour ?? "free",
    holdSeconds,
    why: `held as in \u201C${other.review.title}\u201D, the one thing that changes`
  };
  return {
    schedule: titled(
      { ...plan, segments: plan.segments.toSpliced(at, 0, segment) },
      "held on the way down"
    ),
    change: `Fire \u201C${quoted(plan.title)}\u201D with one change: held {hold} at {at} on the way down, as in \u201C${quoted(other.review.title)}\u201D.`,
    evidence: [
      { name: "hold", value: holdSeconds, kind: "duration" },
      { name: "at", value: atC, kind: "temperature" }
    ]
  };
}
function fallThrough(plan, atC) {
  const peakAt = peakSegment(plan)?.index ?? -1;
  const at = plan.segments.findIndex(
    ({ toC }, index) => index > peakAt && toC < atC && (plan.segments[index - 1]?.toC ?? 0) > atC
  );
  return at < 0 ? null : at;
}
function hotter(plan, { other, known }) {
  const { cone } = hottestZone(other.review.zones).heatwork.position;
  if (cone === null) return null;
  const solved2 = solveSchedule({ schedule: plan, cone, solve: "peak", ...known });
  const before = Math.max(...plan.segments.map(({ toC }) => toC));
  if (!solved2.ok) return null;
  const peakC = Math.max(...solved2.value.segments.map(({ toC }) => toC));
  if (Math.abs(peakC - before) < SAME_PEAK_K) return null;
  return {
    schedule: titled({ ...solved2.value, cone }, `to cone ${cone}`),
    change: `Fire \u201C${quoted(plan.title)}\u201D with one change: the peak at {peak}, for cone ${cone} as in \u201C${quoted(other.review.title)}\u201D; the cooling stays as it is.`,
    evidence: [{ name: "peak", value: peakC, kind: "temperature" }]
  };
}
function titled(schedule, what) {
  return { ...schedule, title: `${schedule.title}, ${what}` };
}

// src/core/trials/onThisKiln.ts
var OF_THE_KILN = ["reach while heating", "reach while cooling", "cone on your kiln"];
function onThisKiln(schedule, { kiln, offsetK }) {
  const judged = (each) => draftSchedule({
    schedule: each,
    start: null,
    kiln,
    offsetK,
    findingsOnly: true
  }).findings.filter(({ topic }) => OF_THE_KILN.includes(topic));
  const before = judged(schedule);
  const isLate = before.some(
    ({ topic, severity }) => topic === MEND_REACH.topic && severity !== "note"
  );
  const asIs = { schedule, basis: kiln.basis, isEased: false, findings: before };
  if (!isLate) return asIs;
  const limitFor = limitsFor(schedule.ware);
  const mended = MEND_REACH.mend(schedule, before, { kiln, limitFor, offsetK });
  if (!mended.ok || JSON.stringify(mended.schedule) === JSON.stringify(schedule)) return asIs;
  return {
    schedule: mended.schedule,
    basis: kiln.basis,
    isEased: true,
    findings: judged(mended.schedule)
  };
}

// src/core/trials/scheduleInstead.ts
function scheduleInstead({ review, record }) {
  const { heatwork } = hottestZone(review.zones);
  const cone = record?.cone ?? heatwork.position.cone;
  if (cone === null) return null;
  const ware = record?.ware[0];
  const made = newSchedule({
    cone,
    series: heatwork.series,
    unit: review.reading.unit === "F" ? "F" : "C",
    ware: {
      body: ware?.body ?? null,
      ...sizedAsMug({
        wallMm: ware?.wallMm ?? ware?.thickestMm ?? null,
        baseMm: ware?.baseMm ?? ware?.thickestMm ?? null
      }),
      widestMm: ware?.widestMm ?? null,
      damp: false
    },
    cooling: { kind: "slow" },
    withinSeconds: null
  });
  return made.ok ? { ...made.value, ware: { ...made.value.ware, crackle: true } } : null;
}

// src/core/trials/nextFiring.ts
var ORDER = ["quartz", "cristobalite", "opening", "coolingHold", "heat"];
var ONE_AT_A_TIME = "Only one thing changes, since with two no tile could say which of them did it.";
function nextFiring(given) {
  const next = bareNext(given);
  if (next === null || next.schedule === null || given.known === void 0)
    return next && { ...next, onKiln: null };
  const { schedule, ...onKiln } = onThisKiln(next.schedule, given.known);
  return { ...next, schedule, onKiln };
}
function bareNext(given) {
  const used = given.firings.flatMap((firing, at) => {
    const tiles = given.tiles.filter((tile) => tile.firing === firing.record?.name).length;
    const facts = given.facts[at];
    return tiles === 0 || facts === void 0 ? [] : [{ ...firing, facts, tiles }];
  });
  const most = used.toSorted((a, b) => b.tiles - a.tiles)[0];
  if (most === void 0) return null;
  if (given.tilesTell)
    return repeated(
      used.find(({ plan, tiles }) => plan !== null && tiles === most.tiles) ?? most,
      "Tiles alone can tell here: with the firing as it was, nothing but the tiles differs."
    );
  const mixed = mixedParts(given.confounding);
  for (const cause of ORDER.filter((each) => mixed.includes(each))) {
    const change = changed(cause, used, given.known);
    if (change !== null)
      return { ...change, reason: `${reasonFor(cause, given.confounding)} ${ONE_AT_A_TIME}` };
  }
  return repeated(
    used.find(({ plan }) => plan !== null) ?? most,
    "A second firing of the same schedule shows how far firings scatter by themselves; until then a difference between two firings has no measure."
  );
}
function mixedParts({ pairs }) {
  const words = Object.entries(FIRING_CAUSE_WORDS);
  const isPart = (name) => words.some(([, word]) => word === name);
  const mixed = pairs.filter(
    ({ first, second, telling }) => telling === "cannot" && isPart(first) && isPart(second)
  );
  return words.flatMap(
    ([cause, word]) => mixed.some(({ first, second }) => first === word || second === word) ? [cause] : []
  );
}
function reasonFor(cause, { pairs }) {
  const word = FIRING_CAUSE_WORDS[cause];
  const others = pairs.flatMap(
    ({ first, second, telling }) => telling === "cannot" && [first, second].includes(word) ? [first, second].filter((each) => each !== word && each !== "firing") : []
  );
  const parts = others.filter((each) => Object.values(FIRING_CAUSE_WORDS).includes(each));
  return `So far ${word} changed together with ${parts.join(", ")}.`;
}
function changed(cause, used, known) {
  const change = CHANGES[cause];
  const valued = used.flatMap((firing) => {
    const value = firing.facts.facts.find(({ name }) => name === change.fact)?.value ?? null;
    return value === null ? [] : [{ ...firing, value }];
  });
  const sorted = valued.toSorted((a, b) => a.value - b.value);
  const [to, ...others] = change.towards === "low" ? sorted : sorted.toReversed();
  for (const from of others.toReversed()) {
    const made = to && from.plan && change.make(from.plan, { value: to.value, other: to, known });
    if (made) return { kind: "one change", follows: from.review.title, ...made };
  }
  return null;
}
function repeated({ plan, review, record, facts }, reason) {
  const follows = review.title;
  const after = facts.facts.find(({ name }) => name === "openedAfter")?.value ?? null;
  const evidence = after === null ? [] : [{ name: "after", value: after, kind: "duration" }];
  const opening = after === null ? "" : ", {after} after the peak and below about 100 \xB0C";
  if (plan !== null)
    return {
      kind: "repeat",
      schedule: plan,
      follows,
      change: `Fire \u201C${quoted(plan.title)}\u201D again, exactly as it is, and open when it was opened then${opening}.`,
      evidence,
      reason
    };
  const schedule = scheduleInstead({ review, record });
  const why = record?.schedule ? `the schedule ${record.schedule} was not found` : "no schedule is named in its record";
  return {
    kind: "new",
    schedule,
    follows,
    change: schedule === null ? `Fire as in \u201C${follows}\u201D again; ${why}, and none could be made for it.` : `Of \u201C${follows}\u201D ${why}, so this one is made new for the cone it reached; it is no exact repeat, and the record should name the schedule that is fired.`,
    evidence: [],
    reason
  };
}

// src/core/trials/informationMatrix.ts
var BEFOREHAND = 10;
function knowingNothing(effects) {
  return {
    covariance: Array.from(
      { length: effects },
      (_, i) => Array.from({ length: effects }, (__, j) => i === j ? BEFOREHAND ** 2 : 0)
    )
  };
}
function withTile({ covariance }, row, scatter) {
  const along = covariance.map((each) => product(each, row));
  const weight = scatter ** 2 + product(along, row);
  return {
    covariance: covariance.map(
      (each, i) => each.map((value, j) => value - along[i] * along[j] / weight)
    )
  };
}
function varianceOf({ covariance }, contrast) {
  const variance = product(
    covariance.map((row) => product(row, contrast)),
    contrast
  );
  return Math.max(0, variance);
}
function isUnknown(variance) {
  return variance > (BEFOREHAND / 4) ** 2;
}
function product(one, other) {
  let sum = 0;
  for (let i = 0; i < one.length; i++) sum += one[i] * other[i];
  return sum;
}

// src/core/trials/chooseTiles.ts
function chooseTiles(choice) {
  const { rows, candidates, wanted, scatter } = choice;
  const effects = wanted[0]?.direction.length ?? 0;
  const before = rows.reduce(
    (known, row) => withTile(known, row, scatter),
    knowingNothing(effects)
  );
  const opened = openUp(choice, before);
  const filled = fillUp(choice, opened);
  const counts = takenBack(choice, filled.picked, before);
  const after = knowledgeOf(choice, counts, before);
  return {
    counts,
    isEnough: isEnough(choice, after, total(counts)),
    fewest: opened.fewest,
    before,
    after: candidates.length === 0 ? before : after
  };
}
function openUp({ candidates, wanted, scatter, most }, before) {
  let known = before;
  const picked = [];
  const isOpen = () => wanted.some(({ direction }) => isUnknown(varianceOf(known, direction)));
  while (isOpen() && picked.length < most) {
    const variances = candidates.map((row2) => varianceOf(known, row2));
    const best = variances.indexOf(Math.max(...variances));
    const row = candidates[best];
    if (row === void 0 || !isUnknown(variances[best]))
      return { picked, known, fewest: null };
    known = withTile(known, row, scatter);
    picked.push(best);
  }
  return { picked, known, fewest: isOpen() ? null : picked.length };
}
function fillUp(choice, opened) {
  const { candidates, scatter, most } = choice;
  let { known } = opened;
  const picked = [...opened.picked];
  while (picked.length < most && !isEnough(choice, known, picked.length)) {
    const lacks = candidates.map(
      (row2) => lacking(choice, withTile(known, row2, scatter), picked.length + 1)
    );
    const best = lacks.indexOf(Math.min(...lacks));
    const row = candidates[best];
    if (row === void 0) break;
    known = withTile(known, row, scatter);
    picked.push(best);
  }
  return { picked, known };
}
function takenBack(choice, picked, before) {
  let counts = choice.candidates.map(
    (_, at) => picked.filter((each) => each === at).length
  );
  if (!isEnough(choice, knowledgeOf(choice, counts, before), total(counts))) return counts;
  for (let at = 0; at < counts.length; at++)
    while (counts[at] > 0) {
      const fewer = counts.map((count, i) => i === at ? count - 1 : count);
      if (!isEnough(choice, knowledgeOf(choice, fewer, before), total(fewer))) break;
      counts = fewer;
    }
  return counts;
}
function knowledgeOf({ candidates, scatter }, counts, before) {
  return candidates.reduce((known, row, at) => {
    let more = known;
    for (let i = 0; i < counts[at]; i++) more = withTile(more, row, scatter);
    return more;
  }, before);
}
function isEnough(choice, known, added) {
  return lacking(choice, known, added) <= 0;
}
function lacking({ wanted, rows }, known, added) {
  return wanted.reduce((sum, { direction, needed }) => {
    const most = needed(rows.length + added);
    const excess = Math.sqrt(varianceOf(known, direction)) / Math.max(1e-6, most) - 1;
    return sum + Math.max(0, excess);
  }, 0);
}
function total(counts) {
  return counts.reduce((sum, count) => sum + count, 0);
}

// src/core/trials/coatBins.ts
var ONE_BIN = 1.25;
function coatBins(coatsMm) {
  const bins = [];
  for (const coat of [...coatsMm].toSorted((a, b) => a - b)) {
    const last = bins.at(-1);
    if (last?.[0] !== void 0 && coat <= last[0] * ONE_BIN) last.push(coat);
    else bins.push([coat]);
  }
  const means = bins.map((bin) => bin.reduce((sum, coat) => sum + Math.log(coat), 0) / bin.length);
  const binOf = coatsMm.map((coat) => bins.findIndex((bin) => coat <= bin.at(-1)));
  return {
    levels: binOf.map((bin) => rangeOf(bins[bin])),
    amounts: binOf.map((bin) => means[bin])
  };
}
function rangeOf(sorted) {
  const [least, most] = [sorted[0], sorted.at(-1)].map((mm) => Number(mm?.toPrecision(3)));
  return least === most ? `${least} mm` : `${least} to ${most} mm`;
}

// src/core/trials/neededError.ts
var POWER = 0.8;
var WITHIN = 0.95;
function neededError(difference, freedom) {
  if (freedom < 1) return 0;
  return difference / (tQuantile(WITHIN, freedom) + tQuantile(2 * POWER - 1, freedom));
}

// src/core/trials/tileDesign.ts
function kindOf({ clay, glaze, coat, glazedSides, shape }) {
  return { clay, glaze, coatMm: coat.firedMm, glazedSides, shape };
}
function tileDesign(tiles, candidates) {
  const kinds = [...tiles.map(kindOf), ...candidates];
  const firings = [...new Set(tiles.map(({ firing }) => firing))];
  const middle = kinds.reduce((sum, { coatMm }) => sum + Math.log(coatMm), 0) / Math.max(1, kinds.length);
  const factors = FACTORS.map((factor) => ({
    ...factor,
    levels: [...new Set(kinds.map(factor.levelOf))]
  }));
  const firstAt = 2 + firings.length;
  const starts = factors.map(
    (_, at) => factors.slice(0, at).reduce((sum, { levels }) => sum + levels.length - 1, firstAt)
  );
  const effects = factors.reduce((sum, { levels }) => sum + levels.length - 1, firstAt);
  const coatRow = (lnCoat) => unit(effects, [[1, lnCoat - middle]]);
  return {
    rowOf: (kind2, firing) => {
      const place = firing === "next" ? firings.length : firings.indexOf(firing);
      const row = [...coatRow(Math.log(kind2.coatMm))];
      row[0] = 1;
      if (place > 0) row[1 + place] = 1;
      factors.forEach(({ levels, levelOf: levelOf2 }, at) => {
        const level = levels.indexOf(levelOf2(kind2));
        if (level > 0) row[starts[at] + level - 1] = 1;
      });
      return row;
    },
    contrastsOf: (cause) => {
      if (cause === "coat") return [{ words: "exponent", direction: unit(effects, [[1, 1]]) }];
      const at = factors.findIndex(({ name }) => name === cause);
      const { levels, say: say2 } = factors[at];
      const sign = (level, weight) => level === 0 ? [] : [[starts[at] + level - 1, weight]];
      return levels.flatMap(
        (one, i) => levels.slice(i + 1).map((other, k) => ({
          words: `${say2(other)} against ${say2(one)}`,
          direction: unit(effects, [...sign(i, -1), ...sign(i + 1 + k, 1)])
        }))
      );
    }
  };
}
var FACTORS = [
  { name: "clay", levelOf: ({ clay }) => clay, say: (level) => level },
  { name: "glaze", levelOf: ({ glaze }) => glaze, say: (level) => level },
  {
    name: "sides",
    levelOf: ({ glazedSides }) => glazedSides,
    say: (level) => level === "one" ? "one side" : "both sides"
  },
  { name: "shape", levelOf: ({ shape }) => shape ?? "not noted", say: (level) => level }
];
function unit(length, entries) {
  const row = Array.from({ length }, () => 0);
  for (const [at, value] of entries) row[at] = value;
  return row;
}

// src/core/trials/nextTiles.ts
var WANTED_RATIO = 1.5;
var USUAL_SCATTER = 0.25;
var MOST_TILES = 40;
var BETWEEN_EXPONENTS = 0.5;
var MIXED = 0.5;
var TILE_CAUSES = ["clay", "glaze", "coat", "sides", "shape"];
function nextTiles(given) {
  const tiles = shapesEvened(given.tiles.filter(({ spacing }) => spacing.kind === "measured"));
  if (tiles.length === 0) return null;
  const scatter = given.scatter ?? USUAL_SCATTER;
  const mixed = TILE_CAUSES.filter((cause) => isMixed(cause, given.confounding));
  const wanted = mixed.length > 0 ? mixed : tooFew(tiles, given.confounding, scatter);
  if (wanted.length === 0) return null;
  const candidates = candidatesOf(tiles, wanted);
  const design = tileDesign(tiles, candidates);
  const contrasts = wanted.flatMap(
    (cause) => design.contrastsOf(cause).map((contrast) => ({ cause, ...contrast }))
  );
  const freedom = effectsOf(design, tiles);
  const chosen2 = chooseTiles({
    rows: tiles.map((tile) => design.rowOf(kindOf(tile), tile.firing)),
    candidates: candidates.map((kind2) => design.rowOf(kind2, "next")),
    wanted: contrasts.map(
      ({ cause, direction }) => ({
        direction,
        needed: (count) => neededError(differenceOf(cause), count - freedom)
      })
    ),
    scatter,
    most: MOST_TILES
  });
  const added = chosen2.counts.reduce((sum, count) => sum + count, 0);
  return {
    tiles: inOrder(
      candidates.map((kind2, at) => ({ ...kind2, count: chosen2.counts[at] ?? 0 }))
    ),
    total: added,
    wanted: contrasts.map(
      ({ cause, words, direction }) => wantedContrast(
        {
          cause,
          contrast: words,
          direction,
          needed: neededError(differenceOf(cause), tiles.length + added - freedom)
        },
        chosen2
      )
    ),
    isEnough: chosen2.isEnough,
    fewest: chosen2.fewest ?? added,
    scatter,
    scatterIs: given.scatter === null ? "assumed" : "measured",
    ratio: WANTED_RATIO,
    reason: mixed.length > 0 ? `These tiles part what changed together: ${listed2(mixed)}.` : `There are too few tiles yet to see the effect of ${listed2(wanted)}.`
  };
}
function shapesEvened(tiles) {
  return tiles.every(({ shape }) => shape !== null) ? tiles : tiles.map((tile) => ({ ...tile, shape: null }));
}
function listed2(words) {
  return words.length < 2 ? words[0] ?? "" : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
function isMixed(cause, { pairs, jointly }) {
  return jointly.some((each) => each.cause === cause) || pairs.some(
    ({ first, second, telling, shared }) => (first === cause || second === cause) && // The place in the kiln is no cause that tiles can be made for.
    first !== "place" && second !== "place" && (telling === "cannot" || telling === "partly" && shared > MIXED)
  );
}
function tooFew(tiles, { causes }, scatter) {
  const design = tileDesign(tiles, []);
  const freedom = effectsOf(design, tiles);
  const { after } = chooseTiles({
    rows: tiles.map((tile) => design.rowOf(kindOf(tile), tile.firing)),
    candidates: [],
    wanted: design.contrastsOf("coat").map(({ direction }) => ({ direction, needed: () => 1 })),
    scatter,
    most: 0
  });
  return TILE_CAUSES.filter((cause) => {
    if (cause !== "coat" && !causes.some(({ name }) => name === cause)) return false;
    const needed = neededError(differenceOf(cause), tiles.length - freedom);
    return design.contrastsOf(cause).some(({ direction }) => Math.sqrt(varianceOf(after, direction)) > needed);
  });
}
function differenceOf(cause) {
  return cause === "coat" ? BETWEEN_EXPONENTS : Math.log(WANTED_RATIO);
}
function effectsOf(design, tiles) {
  const [tile] = tiles;
  return tile === void 0 ? 0 : design.rowOf(kindOf(tile), tile.firing).length;
}
function candidatesOf(tiles, wanted) {
  const of = (cause, levelOf2) => {
    const levels = tiles.map(levelOf2);
    return wanted.includes(cause) ? [...new Set(levels)] : [mostCommon(levels)];
  };
  return of("clay", ({ clay }) => clay).flatMap(
    (clay) => of("glaze", ({ glaze }) => glaze).flatMap(
      (glaze) => of("sides", ({ glazedSides }) => glazedSides).flatMap(
        (glazedSides) => of("shape", ({ shape }) => shape).flatMap(
          (shape) => coatsOf(tiles, wanted).map((coatMm) => ({ clay, glaze, coatMm, glazedSides, shape }))
        )
      )
    )
  );
}
function coatsOf(tiles, wanted) {
  const { amounts } = coatBins(tiles.map(({ coat }) => coat.firedMm));
  const rounded = (amount2) => Number(Math.exp(amount2).toPrecision(2));
  if (!wanted.includes("coat")) return [rounded(mostCommon(amounts))];
  const [least, most] = [Math.min(...amounts), Math.max(...amounts)];
  return least === most ? [rounded(least), rounded(least + Math.LN2)] : [rounded(least), rounded(most)];
}
function mostCommon(levels) {
  const counts = /* @__PURE__ */ new Map();
  for (const level of levels) counts.set(level, (counts.get(level) ?? 0) + 1);
  return [...counts].reduce((best, each) => each[1] > best[1] ? each : best)[0];
}
function inOrder(tiles) {
  return tiles.filter(({ count }) => count > 0);
}
function wantedContrast(of, { before, after }) {
  const known = varianceOf(before, of.direction);
  return {
    cause: of.cause,
    contrast: of.contrast,
    before: isUnknown(known) ? null : Math.sqrt(known),
    after: Math.sqrt(varianceOf(after, of.direction)),
    needed: of.needed
  };
}

// src/core/trials/tilesPerGroup.ts
var MOST2 = 2e3;
var STEPS = 400;
function tilesPerGroup({ ratio, tileSigma, power }) {
  const distance = Math.log(ratio) / tileSigma;
  for (let tiles = 2; tiles <= MOST2; tiles++)
    if (chanceOfSeeing(distance * Math.sqrt(tiles / 2), 2 * (tiles - 1)) >= power) return tiles;
  throw new RangeError(`tilesPerGroup: a ratio of ${ratio} at a scatter of ${tileSigma}`);
}
function chanceOfSeeing(offset, freedom) {
  const limit = tQuantile(0.95, freedom);
  const front = Math.log(2) + freedom / 2 * Math.log(freedom / 2) - logGamma(freedom / 2);
  const density = (share) => share === 0 ? 0 : Math.exp(front + (freedom - 1) * Math.log(share) - freedom * share * share / 2);
  const most = 1 + 8 / Math.sqrt(freedom);
  const width = most / STEPS;
  let sum = 0;
  for (let i = 0; i <= STEPS; i++) {
    const share = i * width;
    const weight = i === 0 || i === STEPS ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * density(share) * normalTail(limit * share - offset);
  }
  return sum * width / 3;
}

// src/core/trials/nextTestOf.ts
var RATIO = 1.5;
var POWER2 = 0.8;
var USUAL_SCATTER2 = 0.25;
var AGAIN = 4;
function nextTestOf(given) {
  const { tiles, scatter } = given;
  const confounding = given.confounding ?? NOTHING_LOOKED_AT;
  const chosen2 = nextTiles({ tiles, confounding, scatter });
  const isUncracked = tiles.every(({ spacing }) => spacing.kind !== "measured");
  const firing = nextFiring({
    ...given,
    confounding,
    tilesTell: chosen2 !== null || isUncracked
  });
  const followed = tiles.filter(({ firingTitle }) => firingTitle === firing?.follows);
  const telling = chosen2 ?? sameAgain(followed.length > 0 ? followed : tiles, scatter);
  return { tiles: telling, firing, open: openAfter(telling, confounding, chosen2 !== null) };
}
var NOTHING_LOOKED_AT = {
  tiles: 0,
  causes: [],
  pairs: [],
  together: [],
  jointly: [],
  constant: [],
  everyOwn: [],
  unknown: []
};
function sameAgain(tiles, scatter) {
  const measured = tiles.filter(({ spacing }) => spacing.kind === "measured");
  const from = measured.length > 0 ? measured : tiles;
  const same = (one, other) => one.clay === other.clay && one.glaze === other.glaze && one.glazedSides === other.glazedSides && one.shape === other.shape;
  const most = from.map((tile2) => from.filter((other) => same(tile2, other))).reduce((best, each) => each.length > best.length ? each : best, []);
  const [tile] = most;
  if (tile === void 0) return null;
  const coats = most.map(({ coat }) => coat.firedMm).toSorted((a, b) => a - b);
  const usual = coats[Math.floor(coats.length / 2)];
  const isUncracked = measured.length === 0;
  const count = isUncracked ? AGAIN : tilesPerGroup({ ratio: RATIO, tileSigma: scatter ?? USUAL_SCATTER2, power: POWER2 });
  const kind2 = {
    clay: tile.clay,
    glaze: tile.glaze,
    coatMm: Number((isUncracked ? 2 * usual : usual).toPrecision(2)),
    glazedSides: tile.glazedSides,
    shape: tile.shape,
    count
  };
  return {
    tiles: [kind2],
    total: count,
    wanted: [],
    isEnough: !isUncracked,
    fewest: 1,
    scatter: scatter ?? USUAL_SCATTER2,
    scatterIs: scatter === null ? "assumed" : "measured",
    ratio: RATIO,
    reason: isUncracked ? "No tile has a spacing yet. A thicker coat cracks sooner, so the coat is doubled and all else stays." : "Tiles like most of those in that firing, so that the two can be held against each other by them."
  };
}
function openAfter(tiles, { pairs }, tilesTell) {
  const parts = Object.values(FIRING_CAUSE_WORDS);
  const mixed = pairs.filter(
    ({ first, second, telling }) => telling === "cannot" && parts.includes(first) && parts.includes(second)
  );
  const names = [...new Set(mixed.flatMap(({ first, second }) => [first, second]))];
  return [
    ...tilesTell && names.length > 0 ? [
      `Of the firings, ${names.join(", ")} changed together as well. That takes a firing with one change, and is left for the test after this one.`
    ] : [],
    ...tiles !== null && !tiles.isEnough && tiles.wanted.length > 0 ? [
      `Even ${tiles.total} tiles do not make every comparison sharp enough; a second firing of the same tiles would go on from there.`
    ] : [],
    "A firing is one firing, however many tiles are in it: how far firings of one schedule scatter shows only when one is repeated.",
    "Only clays, glazes, sides and shapes that were used before were looked at."
  ];
}

// src/core/trials/nameKey.ts
function nameKey(name) {
  return name.toLowerCase().split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "").join("-");
}

// src/core/trials/tileFits.ts
var DRAWS = { runs: 200, seed: 1 };
var ROOM_C = 20;
var TO_MIDDLE_80 = 1.2815515655446004 / 1.96;
function tileFits(tiles, named2, firstPingOf) {
  const read = tiles.map((tile) => ({ tile, input: inputOf(tile, named2, firstPingOf) }));
  return {
    fits: read.flatMap(
      ({ tile, input }) => typeof input === "string" ? [] : [fitOf(tile, input)]
    ),
    leftOut: read.flatMap(
      ({ tile: { firing, piece }, input }) => typeof input === "string" ? [{ firing, piece, why: input }] : []
    )
  };
}
function tileKind(tile, { glazes, bodies }) {
  const glaze = glazes.get(nameKey(tile.glaze));
  const glazing = glazingOf(tile);
  const body = tile.body ?? bodies.get(nameKey(tile.clay)) ?? null;
  const { wallMm } = tile;
  if (glaze === void 0) return `no glaze file is known for ${tile.glaze}`;
  if (body === null) return "no body is named for its clay";
  if (wallMm === null) return "its wall is not noted";
  if (glazing === null) return "its shape is not noted, and a glaze on one side may bend it";
  return { glaze, body, wallMm, glazing };
}
function expectedSpacings({ glaze, body, wallMm, glazing }, coatsMm) {
  return coatsMm.map((coatMm) => {
    const piece = { wallMm, coatMm, coatSigma: 0, glazing, absorptionPercent: null };
    return { coatMm, ...expectedPitch({ glaze, body, piece, roomC: ROOM_C }) };
  });
}
function expectedPitch(wall) {
  const pitches = fitDraws(wall, DRAWS).map((draw) => fitRun(draw, wall.piece.glazing, wall.roomC).leastSpacingMm).map((leastMm) => leastMm === null ? Number.POSITIVE_INFINITY : MEAN_OVER_LEAST * leastMm);
  const { low, median, high } = spreadOf(Float64Array.from(pitches));
  const [lowMm = null, medianMm = null, highMm = null] = [low, median, high].map(
    (mm) => Number.isFinite(mm) ? mm : null
  );
  return { lowMm, medianMm, highMm };
}
function glazingOf({ glazedSides, shape }) {
  if (glazedSides === "both") return "both faces";
  if (shape === null) return null;
  return shape === "flat" ? "one face, free to bend" : "one face, wall held";
}
function inputOf(tile, named2, firstPingOf) {
  const kind2 = tileKind(tile, named2);
  if (typeof kind2 === "string") return kind2;
  const { glaze, body, wallMm, glazing } = kind2;
  const { firedMm, sigmaMm, sharedSigma } = tile.coat;
  const coatSigma = Math.hypot(sigmaMm / firedMm, sharedSigma);
  const ping = firstPingOf(tile);
  return {
    glaze,
    body,
    piece: { wallMm, coatMm: firedMm, coatSigma, glazing, absorptionPercent: null },
    roomC: ROOM_C,
    measured: {
      cracked: tile.cracked === null ? null : tile.cracked !== "none",
      spacing: spacingOf(tile),
      pings: ping === null ? [] : [ping]
    },
    draws: DRAWS
  };
}
function spacingOf({ spacing }) {
  if (spacing.kind !== "measured") return null;
  const { pitchMm, lowMm, highMm } = spacing;
  const end = (to) => pitchMm * ((to ?? pitchMm) / pitchMm) ** TO_MIDDLE_80;
  return { meanMm: pitchMm, lowMm: end(lowMm), highMm: end(highMm), counted: "pitch" };
}
function fitOf(tile, input) {
  const { crazing, measured, mismatch } = glazeFit(input);
  return {
    firing: tile.firing,
    piece: tile.piece,
    glaze: tile.glaze,
    clay: tile.clay,
    bodyName: input.body.name,
    computedPerK: mismatch.perK,
    expected: expectedPitch(input),
    foundMm: tile.spacing.kind === "measured" ? tile.spacing.pitchMm : null,
    crackingShare: crazing.share,
    measured: measured.fits
  };
}

// src/core/trials/studyFits.ts
var CURVE_POINTS2 = 9;
var BEYOND = 1.1;
var MOST_TILES2 = 400;
function studyFits(tiles, named2, firstPingOf) {
  const { fits, leftOut } = tileFits(tiles.slice(0, MOST_TILES2), named2, firstPingOf);
  const keys = [...new Set(fits.map(pairKey))];
  const beyond = tiles.slice(MOST_TILES2).map(({ firing, piece }) => ({
    firing,
    piece,
    why: `fit is worked out for the first ${MOST_TILES2} tiles`
  }));
  return {
    fits,
    leftOut: [...leftOut, ...beyond],
    pairs: keys.map(
      (key) => pairOf2(
        fits.filter((fit) => pairKey(fit) === key),
        tiles,
        named2
      )
    ).toSorted((a, b) => b.tiles - a.tiles)
  };
}
function pairKey({ glaze, clay, bodyName }) {
  return [glaze, clay, bodyName].join("\n");
}
function pairOf2(fits, tiles, named2) {
  const { glaze, clay, bodyName, computedPerK } = fits[0];
  const own = tiles.filter(
    (tile) => fits.some(({ firing, piece }) => tile.firing === firing && tile.piece === piece)
  );
  const both = own.filter(({ glazedSides }) => glazedSides === "both").length;
  const expectedIsFor = 2 * both > own.length ? "both" : "one";
  const like = own.find(({ glazedSides }) => glazedSides === expectedIsFor);
  const kind2 = tileKind(like, named2);
  if (typeof kind2 === "string") throw new RangeError(`studyFits: ${kind2}`);
  return {
    glaze,
    clay,
    bodyName,
    expansionFrom: kind2.glaze.expansion.from,
    tiles: fits.length,
    computedPerK,
    found: foundIn(fits.flatMap(({ measured }) => measured)),
    foundOverExpected: foundAgainst(fits),
    expected: expectedSpacings(kind2, curveCoats(own)),
    expectedIsFor
  };
}
function foundAgainst(fits) {
  const both = fits.flatMap(
    ({ foundMm, expected: { lowMm, medianMm, highMm } }) => foundMm === null || lowMm === null || medianMm === null ? [] : [{ foundMm, lowMm, medianMm, highMm: highMm ?? Number.POSITIVE_INFINITY }]
  );
  if (both.length === 0) return null;
  const ratios = both.map(({ foundMm, medianMm }) => foundMm / medianMm).toSorted(rising);
  return {
    tiles: both.length,
    within: both.filter((each) => each.lowMm <= each.foundMm && each.foundMm <= each.highMm).length,
    least: ratios[0],
    median: middleOf(ratios),
    most: ratios.at(-1)
  };
}
function curveCoats(tiles) {
  const coats = tiles.map(({ coat }) => coat.firedMm);
  const [low, high] = [Math.min(...coats) / BEYOND, Math.max(...coats) * BEYOND];
  return Array.from(
    { length: CURVE_POINTS2 },
    (_, i) => low * (high / low) ** (i / (CURVE_POINTS2 - 1))
  );
}
function foundIn(measured) {
  const kindOf2 = ({ from, holds }) => `${from}
${holds}`;
  return [...new Set(measured.map(kindOf2))].map((kind2) => {
    const own = measured.filter((each) => kindOf2(each) === kind2).toSorted((a, b) => a.mismatchPerK.median - b.mismatchPerK.median);
    const { from, holds } = own[0];
    const middles = own.map(({ mismatchPerK }) => mismatchPerK.median);
    const [least, most] = [middles[0], middles.at(-1)];
    const end = (of) => middleOf(own.map(({ mismatchPerK }) => mismatchPerK[of]).toSorted(rising));
    const binding = holds === "at least" ? own.at(-1) : own[0];
    return {
      from,
      holds,
      tiles: own.length,
      perK: holds === "about" ? { low: end("low"), median: end("median"), high: end("high") } : binding.mismatchPerK,
      leastPerK: least,
      mostPerK: most,
      agreeing: own.filter(({ agrees }) => agrees).length
    };
  });
}
function middleOf(sorted) {
  const half = sorted.length / 2;
  return (sorted[Math.ceil(half) - 1] + sorted[Math.floor(half)]) / 2;
}
function rising(a, b) {
  return a - b;
}

// src/core/trials/exponentError.ts
var ERRORS_TO_SEE = 1.959964 + 0.841621;
var ERROR_TO_TELL = 0.5 / ERRORS_TO_SEE;
function exponentError(coatsMm, tileSigma) {
  const logs = coatsMm.map(Math.log);
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const squares = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0);
  if (!(squares > 0)) throw new RangeError("exponentError: coats are alike");
  return tileSigma / Math.sqrt(squares);
}

// src/core/trials/sampleSizes.ts
var USUAL_SCATTER3 = 0.25;
var RATIOS = [1.25, 1.5, 2];
var POWER3 = 0.8;
var LEAST_SCATTER = 0.05;
var ALIKE_COATS = 0.2;
var FREEDOM_FOR_SCATTER = 3;
var FOR_LABELS = 4;
var SIDES = { one: "one side", both: "both sides" };
var FACTORS2 = ["clay", "sides", "shape"];
function sampleSizes(tiles, fit) {
  const known = scatterOfLike(tiles, fit);
  const scatter = known ?? USUAL_SCATTER3;
  const coats = tiles.map(({ coat }) => coat.firedMm);
  return {
    needed: RATIOS.map((ratio) => ({ ratio, tiles: neededFor(ratio, scatter) })),
    scatter,
    scatterIs: known === null ? "assumed" : "measured",
    exponentError: new Set(coats).size > 1 ? exponentError(coats, scatter) : null,
    exponentErrorToTell: ERROR_TO_TELL,
    problems: FACTORS2.flatMap((factor) => lonelyGroups(tiles, factor, neededFor(1.5, scatter)))
  };
}
function scatterOfLike(tiles, fit) {
  const sigma = fit === null ? scatterOfRepeats(tiles) : fit.thinUncracked > 0 ? fit.tileSigmaWithoutThin : fit.tileSigma;
  return sigma === null ? null : Math.max(LEAST_SCATTER, sigma);
}
function scatterOfRepeats(tiles) {
  const groups = /* @__PURE__ */ new Map();
  for (const { clay, glazedSides, shape, firing, coat, spacing } of tiles) {
    if (spacing.kind !== "measured") continue;
    const coatStep = Math.round(Math.log(coat.firedMm) / ALIKE_COATS);
    const key = JSON.stringify([clay, glazedSides, shape, firing, coatStep]);
    groups.set(key, [...groups.get(key) ?? [], Math.log(spacing.pitchMm)]);
  }
  const repeated2 = [...groups.values()].filter((logs) => logs.length > 1);
  const freedom = repeated2.reduce((sum, logs) => sum + logs.length - 1, 0);
  if (freedom < FREEDOM_FOR_SCATTER) return null;
  const squares = repeated2.flatMap((logs) => {
    const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
    return logs.map((log) => (log - mean) ** 2);
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / freedom);
}
function neededFor(ratio, tileSigma) {
  return tilesPerGroup({ ratio, tileSigma, power: POWER3 });
}
function lonelyGroups(tiles, factor, enough) {
  const levels = tiles.flatMap((tile) => levelOf(tile, factor) ?? []);
  const kinds = [...new Set(levels)];
  if (kinds.length < 2) return [];
  return kinds.filter((kind2) => levels.filter((each) => each === kind2).length === 1).map((kind2) => ({
    code: "trials/group-of-one",
    what: factor === "sides" ? `one tile glazed on ${SIDES[kind2]}` : `one tile with ${factor} ${kind2}`,
    where: `tiles of ${tiles[0]?.glaze ?? "no glaze"}`,
    expected: `2 tiles to compare at all, ${FOR_LABELS} for a test of labels, ${enough} to see a ratio of 1.5`,
    fix: `make ${Math.max(FOR_LABELS, enough) - 1} more tiles like it, in one firing with the others`
  }));
}

// src/core/trials/fisherExact.ts
var SAME2 = 1 + 1e-9;
function fisherExact(one, other) {
  const yes = one.yes + other.yes;
  const all = choices(one.of + other.of, yes);
  const chance = (inOne) => choices(one.of, inOne) * choices(other.of, yes - inOne) / all;
  const found = chance(one.yes);
  let sum = 0;
  for (let inOne = Math.max(0, yes - other.of); inOne <= Math.min(one.of, yes); inOne++)
    if (chance(inOne) <= found * SAME2) sum += chance(inOne);
  return Math.min(1, sum);
}

// src/core/trials/shareInterval.ts
function shareInterval(found, of) {
  if (!(Number.isInteger(found) && found >= 0 && found <= of && of > 0))
    throw new RangeError(`shareInterval: ${found} of ${of}`);
  const ends = found === 0 || found === of ? "one" : "two";
  const beyond = ends === "one" ? 0.05 : 0.025;
  const low = found === 0 ? 0 : shareWith((share) => incompleteBeta(share, found, of - found + 1), beyond);
  const high = found === of ? 1 : 1 - shareWith((share) => incompleteBeta(share, of - found, found + 1), beyond);
  return { found, of, low, high, ends };
}
function shareWith(rising2, wanted) {
  let [low, high] = [0, 1];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (rising2(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

// src/core/trials/throughCracks.ts
var FACTORS3 = ["clay", "sides", "shape", "firing"];
function throughCracks(tiles) {
  const looked = tiles.filter(({ throughCrack }) => throughCrack !== null);
  if (looked.length === 0) return null;
  return {
    all: shareOf(looked),
    byFactor: FACTORS3.flatMap((factor) => {
      const levels = [...new Set(looked.flatMap((tile) => levelOf(tile, factor) ?? []))];
      if (levels.length < 2) return [];
      const groups = levels.map((level) => ({
        level,
        share: shareOf(looked.filter((tile) => levelOf(tile, factor) === level))
      }));
      return [{ factor, groups, p: testOf2(groups.map(({ share }) => share)) }];
    }),
    notLooked: tiles.length - looked.length
  };
}
function shareOf(tiles) {
  return shareInterval(tiles.filter(({ throughCrack }) => throughCrack).length, tiles.length);
}
function testOf2(shares) {
  const [one, other, ...more] = shares.map(({ found, of }) => ({ yes: found, of }));
  return one === void 0 || other === void 0 || more.length > 0 ? null : fisherExact(one, other);
}

// src/core/trials/studyGlaze.ts
function studyGlaze(glaze, all, seed) {
  const tiles = all.filter((tile) => tile.glaze === glaze);
  const looked = tiles.filter(({ spacing: spacing2 }) => spacing2.kind !== "not measured");
  const fit = fitSpacing(looked, seed);
  const spacing = fit.ok ? fit.value : null;
  const sizes = sampleSizes(looked, spacing);
  return {
    glaze,
    spacing,
    problems: [...fit.ok ? [] : fit.problems, ...sizes.problems],
    through: throughCracks(tiles),
    sizes
  };
}

// src/core/trials/tileCauses.ts
function tileCauses(tiles, firings) {
  const { levels, amounts } = coatBins(tiles.map(({ coat }) => coat.firedMm));
  return [
    ...firingCauses(tiles, firings),
    kind(
      "clay",
      tiles.map(({ clay }) => clay)
    ),
    kind(
      "glaze",
      tiles.map(({ glaze }) => glaze)
    ),
    {
      name: "coat",
      of: "tile",
      levels,
      amounts,
      sayOf: (level) => `${level} thick`,
      sayTile: (level) => level
    },
    {
      ...kind(
        "sides",
        tiles.map(({ glazedSides }) => glazedSides)
      ),
      sayOf: (level) => `glazed on ${level === "one" ? "one side" : "both sides"}`,
      sayTile: (level) => level === "one" ? "one-sided" : "two-sided"
    },
    kind(
      "shape",
      tiles.map(({ shape }) => shape)
    ),
    {
      ...kind(
        "place",
        tiles.map(({ place }) => place)
      ),
      sayOf: (level) => `from ${level}`,
      sayTile: (level) => level
    }
  ];
}
function kind(name, levels) {
  return {
    name,
    of: "tile",
    levels,
    amounts: null,
    sayOf: (level) => level,
    sayTile: (level) => level
  };
}

// src/core/trials/tilesOf.ts
function tilesOf(records) {
  const named2 = { clay: nameStore(), glaze: nameStore() };
  const tiles = [];
  const leftOut = [];
  for (const record of records) {
    const seen = /* @__PURE__ */ new Set();
    for (const trial of record.trials) {
      const at = { firing: record.name, piece: trial.piece };
      const mark = trial.piece.trim().toLowerCase();
      if (seen.has(mark)) {
        leftOut.push({
          ...at,
          from: "everything",
          why: "the firing has a row for this piece already, and a second reading is no second tile"
        });
        continue;
      }
      seen.add(mark);
      const tile = tileOf(record, trial, named2);
      tiles.push(tile);
      leftOut.push(...lessSaid(tile).map((less) => ({ ...at, ...less })));
    }
  }
  return { tiles, leftOut };
}
function tileOf(record, trial, named2) {
  const { piece, body, coat, glazedSides, wallMm, spacing, cracked, pings, place, stain } = trial;
  return {
    firing: record.name,
    firingTitle: record.title,
    kiln: record.kiln,
    piece,
    clay: named2.clay(trial.clay),
    glaze: named2.glaze(trial.glaze),
    body,
    coat,
    glazedSides,
    shape: trial.shape === null ? null : trial.shape === "flat tile" ? "flat" : "closed",
    wallMm,
    spacing,
    cracked,
    throughCrack: cracked === null ? null : cracked === "through",
    pings,
    place,
    stain,
    invented: record.invented
  };
}
function lessSaid({ spacing, throughCrack }) {
  return [
    ...spacing.kind === "not measured" ? [{ from: "crack spacing", why: spacing.why }] : [],
    ...throughCrack === null ? [{ from: "through cracks", why: "cracked is not noted" }] : []
  ];
}
function nameStore() {
  const met = /* @__PURE__ */ new Map();
  return (name) => {
    const words = name.trim().replace(/\s+/g, " ");
    const key = words.toLowerCase();
    const first = met.get(key) ?? words;
    met.set(key, first);
    return first;
  };
}

// src/core/trials/studyFirings.ts
var SEED = 1;
var NORMAL_95 = 1.96;
function studyFirings(given, asked = {}) {
  const firings = namedApart(given);
  const facts = firingFacts(firings);
  const tiles = tilesOf(firings.flatMap(({ record }) => record ?? []));
  const telling = tiles.tiles.filter(({ spacing }) => spacing.kind !== "not measured");
  const confounding = telling.length === 0 ? null : confoundedIn(telling, facts);
  const glazes = studiedGlazes(tiles.tiles);
  return {
    firings: facts,
    differences: reportedDifferences(facts),
    tiles,
    confounding,
    glazes,
    glazesCompared: glazesCompared(tiles.tiles, SEED),
    fits: asked.named === void 0 || tiles.tiles.length === 0 ? null : studyFits(tiles.tiles, asked.named, firstPings(firings)),
    next: tiles.tiles.length === 0 ? null : nextTestOf({
      firings,
      facts,
      tiles: tiles.tiles,
      confounding,
      scatter: scatterOf2(glazes, telling),
      known: asked.known
    }),
    cautions: cautionsFor({ crackle: tiles.tiles.length > 0 })
  };
}
function confoundedIn(tiles, facts) {
  return confoundingOf(tileCauses(tiles, facts), tiles.length);
}
function studiedGlazes(tiles) {
  const count = (glaze) => tiles.filter((tile) => tile.glaze === glaze).length;
  return [...new Set(tiles.map(({ glaze }) => glaze))].toSorted((a, b) => count(b) - count(a)).map((glaze) => studyGlaze(glaze, tiles, SEED));
}
function scatterOf2(glazes, tiles) {
  const fits = glazes.flatMap(
    ({ spacing, sizes }) => spacing !== null && sizes.scatterIs === "measured" ? [spacing] : []
  );
  const [fit] = fits.toSorted((a, b) => b.tiles - a.tiles);
  if (fit === void 0) return null;
  const own = tiles.filter(({ glaze }) => glaze === fit.glaze);
  const coat = own.map(({ coat: { sigmaMm, firedMm } }) => sigmaMm / firedMm);
  const counting = own.map(
    ({ spacing }) => spacing.kind === "measured" && spacing.lowMm !== null && spacing.highMm !== null ? Math.log(spacing.highMm / spacing.lowMm) / (2 * NORMAL_95) : 0
  );
  return Math.hypot(
    fit.tileSigma,
    fit.exponent.value * rootMeanSquare(coat),
    rootMeanSquare(counting)
  );
}
function rootMeanSquare(values) {
  return Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / Math.max(1, values.length));
}

// src/cli/compareAsked.ts
import { basename } from "node:path";

// src/core/firing/parseAlignment.ts
var LOWEST_C = 0;
var HIGHEST_C = 1500;
function parseAlignment(text, context) {
  const said2 = text.trim().toLowerCase();
  if (said2 === "peak" || said2 === "start") return ok({ at: said2 });
  const tempC = parseAlignmentTemperature(
    text.replace(/\b(?:rising|falling)\b/i, "").trim(),
    context
  );
  if (!tempC.ok) return tempC;
  return ok({ at: /\brising\b/.test(said2) ? "rising" : "falling", tempC: tempC.value });
}
function parseAlignmentTemperature(text, context) {
  const tempC = parseTemperature(text, context);
  if (tempC.ok && tempC.value >= LOWEST_C && tempC.value <= HIGHEST_C) return tempC;
  return failed({
    code: "firing/not-an-alignment",
    where: context.where,
    what: `firings cannot be lined up at \u201C${text}\u201D`,
    expected: "peak, start, or a temperature from 0 to 1500 \xB0C",
    fix: 'write 600C, or "600C rising" for the way up'
  });
}

// src/cli/compareAsked.ts
var MOST_STUDIED = 200;
async function compareAsked(given, options) {
  const logOptions = logOptionsFrom(options);
  const workers = workersFrom(options.workers);
  const files = await logPaths(given);
  const lines = linesAlone(options);
  const alignment = alignmentFrom(options);
  if (!logOptions.ok || !workers.ok || !files.ok || !lines.ok || !alignment.ok)
    return failed(
      ...[logOptions, workers, files, lines, alignment].flatMap(
        (part) => part.ok ? [] : part.problems
      )
    );
  for (const remark of files.value.remarks) say(remark, options);
  const { paths } = files.value;
  const isStudied = !options.jsonLines && paths.length <= MOST_STUDIED;
  if (!options.jsonLines && !isStudied)
    say(
      `trial tiles and what differed are studied for at most ${MOST_STUDIED} logs; of these ${paths.length} only the table is shown`,
      options
    );
  return ok({
    paths,
    task: { kind: "compare", logOptions: logOptions.value, isStudied },
    workers: workers.value,
    shown: { alignment: alignment.value, base: options.base ?? null }
  });
}
function linesAlone(options) {
  const beside = ["json", "html", "chart", "align", "base", "glaze", "kiln"].find(
    (name) => options[name] !== void 0
  );
  if (!options.jsonLines || beside === void 0) return ok(null);
  return failed({
    code: "command/contradiction",
    where: "command line",
    what: `both --json-lines and --${beside} are given`,
    expected: "one of them: lines of JSON are the whole answer",
    fix: "drop one"
  });
}
function alignmentFrom({ align, unit: unit2 = "C" }) {
  return align === void 0 ? ok(AT_PEAK) : parseAlignment(align, { unit: unit2, where: "--align" });
}
function baseOf(named2, paths) {
  if (named2 === null) return ok(0);
  const path = paths.indexOf(named2);
  const at = path >= 0 ? path : paths.findIndex((each) => basename(each) === basename(named2));
  if (at >= 0) return ok(at);
  return failed({
    code: "command/no-such-base",
    where: "--base",
    what: `${named2} is not among the logs that were read`,
    expected: "one of the logs that are compared",
    fix: `name one of them: ${paths.slice(0, 5).join(", ")}`
  });
}

// src/cli/namedWare.ts
import { dirname } from "node:path";

// src/node/wareBeside.ts
import { readdir } from "node:fs/promises";
import { extname, join } from "node:path";
var BESIDE2 = {
  glaze: join("..", "glazes"),
  body: join("..", "bodies")
};
var ENDINGS = /* @__PURE__ */ new Set([".yaml", ".yml", ".json"]);
async function wareBeside(kind2, given, read) {
  const folders = given.folders.flatMap((folder) => [folder, join(folder, BESIDE2[kind2])]);
  const paths = (await Promise.all([...new Set(folders)].map(filesIn))).flat();
  const found = /* @__PURE__ */ new Map();
  const unread = [];
  for (const key of new Set(given.names.map(nameKey))) {
    const path = fileFor(kind2, key, paths);
    if (path === void 0) continue;
    const ware = await read(path);
    if (ware.ok) found.set(key, ware.value);
    else unread.push({ path, problems: ware.problems });
  }
  return { found, unread };
}
function fileFor(kind2, key, files) {
  const named2 = (wanted) => files.find((file) => file.key === wanted)?.path;
  return named2(`${kind2}-${key}`) ?? named2(key);
}
async function filesIn(folder) {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  return entries.filter((entry) => entry.isFile() && ENDINGS.has(extname(entry.name).toLowerCase())).map(({ name }) => name).sort().map((name) => ({
    path: join(folder, name),
    key: nameKey(name.slice(0, -extname(name).length))
  }));
}

// src/cli/namedWare.ts
var NO_WISHES = {
  batchG: null,
  slipGPerCm3: null,
  bucketLitres: null,
  dryCoatGPerCm2: null
};
async function namedWare(firings, from) {
  const trials = firings.flatMap(({ record }) => record?.trials ?? []);
  const glazeNames = [...new Set(trials.map(({ glaze }) => glaze))];
  const folders = [...new Set(from.logs.filter((path) => path !== "-").map(dirname))];
  const given = await givenGlazes(from.glazes, glazeNames);
  if (!given.ok) return given;
  const names = glazeNames.filter((name) => !given.value.has(nameKey(name)));
  const glazes = await wareBeside("glaze", { names, folders }, glazeOf);
  const clays = trials.flatMap(({ clay, body }) => body === null ? [clay] : []);
  const bodies = await wareBeside("body", { names: clays, folders }, readBody);
  return ok({
    named: { glazes: new Map([...glazes.found, ...given.value]), bodies: bodies.found },
    remarks: [...glazes.unread, ...bodies.unread].map(
      ({ path, problems }) => `${path} is left aside: ${problems.map(({ what }) => what).join("; ")}`
    )
  });
}
async function givenGlazes(paths, onTiles) {
  const glazes = /* @__PURE__ */ new Map();
  const problems = [];
  for (const path of paths) {
    const glaze = await glazeOf(path);
    if (!glaze.ok) problems.push(...glaze.problems);
    else if (onTiles.some((name) => nameKey(name) === nameKey(glaze.value.name)))
      glazes.set(nameKey(glaze.value.name), glaze.value);
    else problems.push(onNoTile(path, glaze.value.name, onTiles));
  }
  return problems.length > 0 ? failed(...problems) : ok(glazes);
}
async function glazeOf(path) {
  const { readGlaze } = await import("./readGlaze-6OYHQK33.js");
  const work = await readGlaze(path, NO_WISHES);
  return work.ok ? ok(work.value.sheet.glaze) : work;
}
function onNoTile(path, title, onTiles) {
  return {
    code: "command/glaze-not-on-tiles",
    where: "--glaze",
    what: `${path} is titled \u201C${title}\u201D, and no tile of these firings has a glaze of that name`,
    expected: onTiles.length === 0 ? "records with trial tiles" : `a glaze file titled as the tiles name it: ${onTiles.join(", ")}`,
    fix: "write the same name as title of the glaze file and as glaze of the tiles"
  };
}

// src/cli/commands/compare.ts
var UNTOLD = { powerWatt: null, tariffPerKWh: null };
async function run(given, options) {
  const asked = await compareAsked(given, options);
  if (!asked.ok) return refuse(asked.problems, options);
  const { paths, task, workers } = asked.value;
  const known = options.kiln === void 0 ? ok(void 0) : await ownKiln(options.kiln, UNTOLD);
  if (!known.ok) return refuse(known.problems, options);
  const parts = [];
  const read = [];
  const planned = [];
  const broken = [];
  const textOf = async (outcome) => {
    broken.push(...outcome.problems);
    const { part } = outcome;
    if (part === null) return "";
    read.push(outcome.path);
    parts.push(options.jsonLines ? withoutCurve(part) : part);
    if (outcome.planned !== null) planned.push(outcome.planned);
    return options.jsonLines ? firingLine(part) : "";
  };
  const outcomes = manyLogs(paths, task, workers);
  if (options.json) for await (const outcome of outcomes) await textOf(outcome);
  const exit = options.json ? EXIT.fine : await tellLogs(outcomes, { total: paths.length, options, textOf });
  if (options.json && broken.length > 0) return refuse(broken, options);
  const hasTrials = planned.some(({ record }) => (record?.trials.length ?? 0) > 0);
  const comparison = compareParts(parts, hasTrials ? 1 : 2);
  if (!comparison.ok) return refuse(comparison.problems, options);
  const allFahrenheit = parts.every(({ isFahrenheit }) => isFahrenheit);
  const study = await studied(planned, options, { logs: paths, known: known.value });
  if (!study.ok) return refuse(study.problems, options);
  if (known.value !== void 0 && study.value?.next == null)
    say("--kiln is not used: no record names trial tiles, so there is no next test", options);
  const base = baseOf(asked.value.shown.base, read);
  if (!base.ok) return refuse(base.problems, options);
  const { alignment } = asked.value.shown;
  const answered = {
    comparison: comparison.value,
    study: study.value,
    alignment,
    base: base.value
  };
  return Math.max(exit, await shown(answered, options, allFahrenheit ? "F" : "C"));
}
async function studied(planned, options, from) {
  if (planned.length === 0) return ok(null);
  const { logs, known } = from;
  const ware = await namedWare(planned, { logs, glazes: options.glaze ?? [] });
  if (!ware.ok) return ware;
  for (const remark of ware.value.remarks) say(remark, options);
  return ok(
    studyFirings(planned, {
      named: ware.value.named,
      ...known && { known: { kiln: known.kiln, offsetK: known.offset?.offsetK ?? null } }
    })
  );
}
function withoutCurve(part) {
  const { aligned } = part.firing;
  const ends = {
    ...aligned,
    timesSeconds: aligned.timesSeconds.slice(0, 2),
    tempsC: aligned.tempsC.slice(0, 2),
    gaps: []
  };
  return { ...part, firing: { ...part.firing, aligned: ends } };
}
async function firingLine(part) {
  const { comparedLine } = await import("./lineDocuments-LRTQBBC4.js");
  return hiddenEscaped(JSON.stringify(comparedLine(part)));
}
async function shown(answered, options, logsUnit) {
  const { comparison, study, alignment, base } = answered;
  const unit2 = options.unit ?? logsUnit;
  const written = await writePictures(options, {
    html: async () => comparisonHtml(comparison, {
      unit: unit2,
      alignment,
      base,
      ...study && { study },
      charts: await drawnCharts(answered, unit2)
    }),
    picture: () => {
      const charts = study && studyCharts(comparison, study);
      return reviewPicture([
        ...[comparisonChart(comparison, alignment)].flatMap((make) => make?.({ unit: unit2 }) ?? []),
        ...charts ? [charts.firings({ unit: unit2 })] : [],
        ...charts?.spacing.map(({ chart }) => chart({ unit: unit2 })) ?? [],
        ...charts?.fits ? [charts.fits({ unit: unit2 })] : [],
        ...charts?.causes ? [charts.causes({ unit: unit2 })] : []
      ]);
    }
  });
  if (!written.ok) return refuse(written.problems, options);
  const next = await writeNext(study, options);
  if (!next.ok) return refuse(next.problems, options);
  if (options.jsonLines) {
    const { comparisonLine } = await import("./lineDocuments-LRTQBBC4.js");
    answerJsonLine(comparisonLine(comparison));
  } else if (options.json) {
    const { comparisonDocument } = await import("./comparisonDocument-SPYQRYRZ.js");
    answerJson(comparisonDocument(comparison, { study, alignment, base }));
  } else {
    answer(
      comparisonText(comparison, {
        unit: unit2,
        alignment,
        base,
        ...study && { study },
        paint: paintFor(options)
      })
    );
  }
  return EXIT.fine;
}
async function drawnCharts({ comparison, study, alignment }, unit2) {
  const laid = comparisonChart(comparison, alignment);
  const overlay = laid && { overlay: (dark) => laid({ unit: unit2, dark }) };
  if (study === null) return drawn({ ...overlay });
  const { firings, spacing, causes, fits } = studyCharts(comparison, study);
  const each = await drawn({
    ...overlay,
    firings: (dark) => firings({ unit: unit2, dark }),
    ...causes && { causes: (dark) => causes({ unit: unit2, dark }) },
    ...fits && { fits: (dark) => fits({ unit: unit2, dark }) }
  });
  const byGlaze = Object.fromEntries(
    spacing.map(({ glaze, chart }) => [glaze, (dark) => chart({ unit: unit2, dark })])
  );
  return { ...each, spacing: await drawn(byGlaze) };
}
async function writeNext(study, options) {
  if (options.next === void 0) return ok(null);
  if (study === null)
    return failed({
      code: "command/not-studied",
      where: "--next",
      what: "the trials of these logs are not studied, so there is no next test to write",
      expected: `at most ${MOST_STUDIED} logs, and no --json-lines`,
      fix: "name the logs of the tests that belong together"
    });
  const schedule = nextSchedule(study);
  if (!schedule.ok) return schedule;
  const written = await writeOutput(options.next, scheduleYaml(schedule.value), {
    force: options.force === true
  });
  if (!written.ok) return written;
  say(`wrote ${written.value}`, options);
  return ok(null);
}
export {
  run
};
