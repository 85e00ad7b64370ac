import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  pingRecordLines,
  pingsDocument
} from "./chunk-KBGTP5SK.js";
import {
  slowCrackExponent
} from "./chunk-FM7WVEFB.js";
import "./chunk-DQZAGW2O.js";
import "./chunk-RLEK6R44.js";
import {
  reviewPicture
} from "./chunk-CBVRRUI2.js";
import {
  PLOT_WIDTH,
  VEGA_LITE_SCHEMA,
  acrossAxis,
  drawn,
  drawn2,
  evenTicks,
  keyLayers,
  labelLayers,
  leaderLayer,
  lineLayer,
  pixelAt,
  placing,
  roundUp,
  styleAt,
  temperature,
  temperatureTicks,
  theme,
  themeConfig,
  upAxis,
  writePictures
} from "./chunk-LCZWALSP.js";
import {
  logOptionsFrom
} from "./chunk-3SHC6X7O.js";
import {
  reportHtml
} from "./chunk-Q77PV3QE.js";
import "./chunk-QVADD2WS.js";
import {
  chartBlocks
} from "./chunk-VTFWEP2W.js";
import {
  placedUnloading
} from "./chunk-I6LOXCIU.js";
import {
  readFiring
} from "./chunk-CQRY3XKN.js";
import {
  basisBlocks,
  cautionBlocks,
  findingBlocks,
  section
} from "./chunk-N5S6N4PS.js";
import {
  clockText
} from "./chunk-4ME6ZCIX.js";
import {
  reportText
} from "./chunk-ZUGR3IIA.js";
import "./chunk-X6LO4HOH.js";
import "./chunk-XM3JYZUM.js";
import "./chunk-M4BL2XKO.js";
import {
  CRISTOBALITE_BAND,
  QUARTZ_BAND,
  hasWarning,
  medianInPlace,
  peakOf,
  slopeMeter,
  temperatureAt
} from "./chunk-VFKPH3SJ.js";
import "./chunk-OGOFPCXR.js";
import {
  cautionsFor
} from "./chunk-4LHYQSW7.js";
import {
  seededEven
} from "./chunk-F6MWUWUD.js";
import {
  quoted
} from "./chunk-GU4RVAU5.js";
import {
  EXIT,
  answer,
  answerJson,
  paintFor,
  refuse,
  say
} from "./chunk-QOSRWPWR.js";
import "./chunk-NHPGJLL4.js";
import "./chunk-OQY4R7CT.js";
import {
  readBytes
} from "./chunk-WA5SZDQ5.js";
import {
  systemProblem
} from "./chunk-2NHG2YQ4.js";
import {
  printDuration,
  printElapsed,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import {
  MOMENT_FORMS,
  parseMoment,
  placeMoment
} from "./chunk-OBEK7CUI.js";
import "./chunk-PMYOLCKT.js";
import "./chunk-DDB2KZF2.js";
import "./chunk-2Y6UMGL7.js";
import "./chunk-PYB7INDF.js";
import {
  writtenQuantity
} from "./chunk-BKGWRYOW.js";
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

// src/core/charts/pingsTime.ts
var HOURS = { field: "elapsedHours", name: "h", seconds: 3600 };
var UNITS = [
  { field: "elapsedSeconds", name: "s", seconds: 1, upTo: 180 },
  { field: "elapsedMinutes", name: "min", seconds: 60, upTo: 3 * 3600 }
];
function recordingTime(seconds) {
  const unit = UNITS.find(({ upTo }) => seconds <= upTo) ?? HOURS;
  const end = seconds / unit.seconds;
  return {
    field: unit.field,
    axis: acrossAxis(
      `Time from the start of the recording (${unit.name})`,
      [0, end],
      evenTicks(0, end, 12)
    ),
    end,
    shown: (at) => at / unit.seconds
  };
}

// src/core/charts/pingsUnloading.ts
var BESIDE = 6;
var DOWN = 10;
function unloadingLayers(places, frame, { time, atSeconds }, colours) {
  if (atSeconds === null || atSeconds <= 0 || time.shown(atSeconds) >= time.end) return [];
  const { x } = pixelAt(frame, time.shown(atSeconds), 0);
  const isLate = x > frame.width * 0.8;
  const label = {
    text: "taken out of the kiln",
    at: { x: isLate ? x - BESIDE : x + BESIDE, y: DOWN },
    align: isLate ? "right" : "left"
  };
  return [
    ...leaderLayer(
      places,
      frame,
      [
        [
          { x, y: 0 },
          { x, y: frame.height }
        ]
      ],
      colours.quiet
    ),
    ...labelLayers(places, frame, [label], colours.quiet, colours.paper)
  ];
}

// src/core/charts/pingsCountChart.ts
var HEIGHT = 300;
var MOST_CORNERS = 1500;
function pingsCountChart(input) {
  const colours = theme(input.dark);
  const time = recordingTime(input.seconds);
  const top = roundUp(
    Math.max(5, input.times.length * 1.04, ...(input.law?.line ?? []).map(({ high }) => high))
  );
  const frame = { width: PLOT_WIDTH, height: HEIGHT, x: [0, time.end], y: [0, top] };
  const places = {
    xField: time.field,
    yField: "pings",
    x: time.axis,
    y: upAxis("Pings so far", frame.y, evenTicks(0, top, 6))
  };
  const heardStyle = styleAt(colours.measured, 0);
  const endY = pixelAt(frame, 0, input.times.length).y;
  const entries = [
    { name: "heard", details: ["a lower bound"], nearY: endY, style: heardStyle },
    ...input.law === null ? [] : [lawEntry(input.law, endY + 40, colours)]
  ];
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input),
    title: {
      text: input.title,
      subtitle: input.law === null ? "Up to 50 pings no law is fitted" : "The band holds 95 of 100 recordings of the fitted law, at each time"
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...input.law === null ? [] : lawLayers(places, input.law, time, colours),
      lineLayer(places, staircase(input, time), heardStyle, "order"),
      ...unloadingLayers(places, frame, { time, atSeconds: input.unloadedSeconds }, colours),
      ...keyLayers(places, frame, entries, colours)
    ],
    config: themeConfig(colours)
  };
}
function lawEntry(law, nearY, colours) {
  return {
    name: "1/(t + c)^p, fitted",
    details: [`p ${twoDigits(law.p)} (${twoDigits(law.pLow)} to ${twoDigits(law.pHigh)})`],
    nearY,
    style: styleAt(colours.measured, 1)
  };
}
function lawLayers(places, { line }, time, colours) {
  const at = (seconds) => drawn(time.shown(seconds));
  return [
    {
      data: {
        values: line.map(({ seconds, low, high }) => ({
          [time.field]: at(seconds),
          pings: drawn(low),
          high: drawn(high)
        }))
      },
      mark: { type: "area", color: styleAt(colours.measured, 1).stroke, opacity: 0.2 },
      encoding: { ...placing(places), y2: { field: "high" } }
    },
    lineLayer(
      places,
      line.map(({ seconds, count }, order) => ({
        [time.field]: at(seconds),
        pings: drawn(count),
        piece: 0,
        order
      })),
      styleAt(colours.measured, 1),
      "order"
    )
  ];
}
function staircase({ times, seconds }, time) {
  const stride = Math.max(1, Math.ceil(2 * times.length / MOST_CORNERS));
  const corners = [[0, 0]];
  for (let i = 0; i < times.length; i += stride) {
    corners.push([times[i], corners.at(-1)?.[1]], [times[i], i + 1]);
  }
  corners.push([seconds, times.length]);
  return corners.map(([at, pings], order) => ({
    [time.field]: drawn(time.shown(at)),
    pings,
    piece: 0,
    order
  }));
}
function descriptionOf({ title, times, seconds, law }) {
  const fitted = law === null ? "" : `; a fitted law thins out with an exponent of ${twoDigits(law.p)}, between ${twoDigits(law.pLow)} and ${twoDigits(law.pHigh)}`;
  return `${title}: the count grows to ${times.length} in ${printDuration(seconds)}${fitted}.`;
}
function twoDigits(value) {
  return value.toFixed(2).replace("-", "\u2212");
}

// src/core/charts/pingsLoudnessChart.ts
var HEIGHT2 = 240;
var MOST_DRAWN = 3e3;
function pingsLoudnessChart(input) {
  const colours = theme(input.dark);
  const time = recordingTime(input.seconds);
  const deep = new Set(input.kinds.length > 1 ? input.kinds[0] : []);
  const drawnPings = input.pings.map((ping, i) => ({ ...ping, isDeep: deep.has(i) })).toSorted((a, b) => b.overFloorDb - a.overFloorDb).slice(0, MOST_DRAWN);
  const top = roundUp(Math.max(20, drawnPings[0]?.overFloorDb ?? 0));
  const frame = { width: PLOT_WIDTH, height: HEIGHT2, x: [0, time.end], y: [0, top] };
  const places = {
    xField: time.field,
    yField: "overFloorDb",
    x: time.axis,
    y: upAxis("Over the quiet level (dB)", frame.y, evenTicks(0, top, 5))
  };
  const left = input.pings.length - drawnPings.length;
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: `${input.title}: ${drawnPings.length} pings in ${printDuration(input.seconds)} against time, with their loudness over the quiet level in decibels.`,
    title: {
      text: input.title,
      subtitle: left > 0 ? `Each ping as loud as it stood out; the ${left} faintest are left out of the picture` : "Each ping as loud as it stood out of the quiet"
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...looksOf(input, colours).map(
        ({ isDeep, dot, dotShape }) => ({
          data: {
            values: drawnPings.filter((ping) => ping.isDeep === isDeep).map(({ atSeconds, overFloorDb }) => ({
              [time.field]: drawn(time.shown(atSeconds)),
              overFloorDb: drawn(overFloorDb)
            }))
          },
          mark: {
            type: "point",
            shape: dotShape,
            size: (drawnPings.length > 300 ? 14 : 26) * (isDeep ? 1.6 : 1),
            filled: true,
            opacity: 0.75,
            color: dot
          },
          encoding: placing(places)
        })
      ),
      ...unloadingLayers(places, frame, { time, atSeconds: input.unloadedSeconds }, colours),
      ...keyLayers(places, frame, looksOf(input, colours), colours)
    ],
    config: themeConfig(colours)
  };
}
function looksOf({ pings, kinds }, colours) {
  const [deep, light] = kinds;
  const all = {
    name: "ping",
    details: [`${pings.length} heard`],
    nearY: HEIGHT2 / 3,
    isDeep: false,
    dot: styleAt(colours.measured, 0).stroke,
    dotShape: "circle"
  };
  if (deep === void 0 || light === void 0) return [all];
  return [
    {
      ...all,
      name: "deep ping",
      details: [`${deep.length} heard`],
      isDeep: true,
      dot: styleAt(colours.measured, 1).stroke,
      dotShape: "triangle-down"
    },
    { ...all, name: "light ping", details: [`${light.length} heard`], nearY: HEIGHT2 / 2 }
  ];
}

// src/core/charts/pingsTemperatureChart.ts
var HEIGHT3 = 260;
var HEAD_ROOM = 1.25;
function pingsTemperatureChart(input) {
  const colours = theme(input.dark);
  const { steps, unloading } = input.temperatures;
  const leftOut = unloading?.count ?? 0;
  const { shown, field, title } = temperature(input.unit);
  const frame = frameOf(input);
  const [hot, cold] = frame.x;
  const places = {
    xField: field,
    yField: "perHour",
    x: acrossAxis(
      `${title}, cooling to the right`,
      frame.x,
      temperatureTicks(cold, hot, input.unit)
    ),
    y: upAxis("Pings per hour", frame.y, evenTicks(0, frame.y[1], 5))
  };
  const bar = styleAt(colours.measured, 0).stroke;
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: `${input.title}: pings per hour against temperature from ${printTemperature(steps[0]?.highC ?? 0, input.unit)} to ${printTemperature(steps.at(-1)?.lowC ?? 0, input.unit)}; strips mark the quartz and the cristobalite inversion.`,
    title: {
      text: input.title,
      subtitle: `For the time that the recording listened in each step of temperature${leftOut > 0 ? `; ${leftOut} from after unloading left out` : ""}`
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...strips(places, frame, input, colours),
      {
        data: {
          values: steps.map(({ lowC, highC, perHour }) => ({
            [field]: drawn(shown(highC)),
            low: drawn(shown(lowC)),
            perHour: drawn(perHour),
            foot: 0
          }))
        },
        mark: { type: "rect", color: bar, opacity: 0.85, stroke: colours.paper, strokeWidth: 1.5 },
        encoding: { ...placing(places), x2: { field: "low" }, y2: { field: "foot" } }
      },
      ...stripNames(places, frame, input, colours),
      ...keyLayers(
        places,
        frame,
        [{ name: "pings per hour", details: ["while listened"], nearY: HEIGHT3 / 3, dot: bar }],
        colours
      )
    ],
    config: themeConfig(colours)
  };
}
function frameOf({ temperatures, unit }) {
  const { shown } = temperature(unit);
  const { steps } = temperatures;
  const most = Math.max(1, ...steps.map(({ perHour }) => perHour));
  return {
    width: PLOT_WIDTH,
    height: HEIGHT3,
    x: [drawn(shown(steps[0]?.highC ?? 100)), drawn(shown(steps.at(-1)?.lowC ?? 0))],
    y: [0, roundUp(most * HEAD_ROOM)]
  };
}
function shownBands({ temperatures }) {
  const hottest = temperatures.steps[0]?.highC ?? 100;
  const coldest = temperatures.steps.at(-1)?.lowC ?? 0;
  return [QUARTZ_BAND, CRISTOBALITE_BAND].map(({ name, lowC, highC }) => ({
    name,
    lowC: Math.max(lowC, coldest),
    highC: Math.min(highC, hottest)
  })).filter(({ lowC, highC }) => highC > lowC);
}
function strips(places, frame, input, colours) {
  const bands = shownBands(input);
  if (bands.length === 0) return [];
  const { shown } = temperature(input.unit);
  return [
    {
      data: {
        values: bands.map(({ name, lowC, highC }) => ({
          band: name,
          [places.xField]: drawn(shown(highC)),
          low: drawn(shown(lowC)),
          perHour: 0,
          top: frame.y[1]
        }))
      },
      mark: { type: "rect", color: colours.band, opacity: colours.bandOpacity },
      encoding: { ...placing(places), x2: { field: "low" }, y2: { field: "top" } }
    }
  ];
}
function stripNames(places, frame, input, colours) {
  const { shown } = temperature(input.unit);
  const labels = shownBands(input).map(({ name, lowC, highC }) => ({
    text: name.replace(" inversion", ""),
    at: { x: pixelAt(frame, shown((lowC + highC) / 2), 0).x, y: 12 },
    align: "center"
  }));
  return labelLayers(places, frame, labels, colours.quiet, null);
}

// src/core/charts/pingsCharts.ts
function pingsCharts(review, unit) {
  const { pings, heard, kinds, law, temperatures, sound } = review;
  const { seconds } = heard;
  const unloadedSeconds = temperatures?.unloading?.atSeconds ?? null;
  return {
    loudness: (dark) => pingsLoudnessChart({
      title: `Pings in ${sound.name}`,
      pings,
      kinds: kinds.kinds.map(({ members }) => members),
      seconds,
      unloadedSeconds,
      dark
    }),
    count: (dark) => pingsCountChart({
      title: "How they add up",
      times: pings.map(({ atSeconds }) => atSeconds),
      seconds,
      law,
      unloadedSeconds,
      dark
    }),
    ...temperatures === null || temperatures.steps.length === 0 ? {} : {
      temperature: (dark) => pingsTemperatureChart({ title: "At which temperature", temperatures, unit, dark })
    }
  };
}

// src/core/pings/clippedProblem.ts
var MOST_CLIPPED = 0.5;
var FEWEST = 4;
function clippedProblem(pings, name) {
  const clipped = pings.filter(({ isClipped }) => isClipped).length;
  if (pings.length < FEWEST || clipped <= MOST_CLIPPED * pings.length) return null;
  return {
    code: "pings/clipped",
    what: `${clipped} of ${pings.length} pings reach full scale: they were louder than recorded, and one may hide the next`,
    where: name,
    expected: "a recording in which most pings stay below full scale",
    fix: "record again at a lower level; or say --clipped to have the count as a lower bound, without loudness"
  };
}

// src/core/pings/hearingFindings.ts
var CLIPPED_PINGS_SHARE = 0.05;
var SILENT_SHARE = 0.2;
var NOISY_SHARE = 0.1;
var FEW_HZ = 8e3;
var MEASURED = "counted in the recording";
function hearingFindings(review) {
  return [
    ...countFindings(review),
    ...begunFindings(review),
    ...clippedFindings(review),
    ...noiseFindings(review),
    ...rateFindings(review),
    ...kindFindings(review)
  ];
}
function finding(topic, severity, said) {
  return {
    topic,
    severity,
    statement: said.statement,
    evidence: said.evidence ?? [],
    basis: said.basis ?? MEASURED,
    advice: said.advice ?? "",
    zone: null,
    span: said.span ?? null
  };
}
function countFindings({ pings, heard }) {
  const length = { name: "length", value: heard.seconds, kind: "duration" };
  if (pings.length === 0)
    return [
      finding("count", "note", {
        statement: "No ping was found in {length}. That is no proof that the glaze is quiet: what is fainter than the threshold, or falls into noise, is not heard.",
        advice: "Listen to the recording; try a lower --threshold if you hear clicks in it.",
        evidence: [length]
      })
    ];
  return [
    finding("count", "note", {
      statement: `{pings} ${pings.length === 1 ? "ping was" : "pings were"} found in {length}. The count is a lower bound: faint ones, those within a moment of another, and those under noise are missed.`,
      evidence: [{ name: "pings", value: pings.length, kind: "count" }, length]
    })
  ];
}
function begunFindings({ isBegun: isBegun2, pings }) {
  if (!isBegun2) return [];
  return [
    finding("beginning", "note", {
      statement: "Pings came from the very start of the recording, the first after {first}. If the pinging began earlier, its beginning was missed, and counts and shares leave it out.",
      advice: "Start the next recording earlier, at a safe distance from the kiln.",
      evidence: [{ name: "first", value: pings[0]?.atSeconds ?? 0, kind: "duration" }]
    })
  ];
}
function clippedFindings({ pings }) {
  const share = pings.filter(({ isClipped }) => isClipped).length / Math.max(1, pings.length);
  if (share < CLIPPED_PINGS_SHARE) return [];
  return [
    finding("clipped", "caution", {
      statement: "{share} of the pings reach full scale, so they were louder than recorded: their number stands, their loudness is a lower bound.",
      advice: "Record at a lower level next time.",
      evidence: [{ name: "share", value: share, kind: "percent" }]
    })
  ];
}
function noiseFindings({ heard }) {
  const noisy = heard.noisySeconds / heard.seconds;
  return [
    ...heard.zeroShare < SILENT_SHARE ? [] : [
      finding("gaps of silence", "caution", {
        statement: "{silent} of the samples are exactly zero: the recorder switches itself off when it is quiet (a noise gate), and faint pings are lost with it.",
        advice: "Switch off noise reduction and automatic level in the recorder.",
        evidence: [{ name: "silent", value: heard.zeroShare, kind: "percent" }]
      })
    ],
    ...noisy < NOISY_SHARE ? [] : [
      finding("noise", "caution", {
        statement: "For {noisy}, noise made the ear at least 12 dB duller than usual: pings are missed there, and rates come out too low.",
        advice: "Put the recorder where nobody talks and no fan blows.",
        evidence: [{ name: "noisy", value: heard.noisySeconds, kind: "duration" }]
      })
    ]
  ];
}
function rateFindings({ heard }) {
  if (heard.sampleRateHz >= FEW_HZ) return [];
  return [
    finding("sample rate", "caution", {
      statement: `The recording has ${heard.sampleRateHz} samples a second, fewer than ${FEW_HZ}: it carries nothing above ${Math.round(heard.sampleRateHz * 0.45 / 100) / 10} kHz, where light ticks are loudest.`,
      advice: "Record at 44.1 or 48 kHz."
    })
  ];
}
function kindFindings({ kinds, pings }) {
  const [deep, light] = kinds.kinds;
  if (!deep || !light || kinds.mixedShare === null) return [];
  const louder = deep.overFloorDb - light.overFloorDb;
  return [
    finding("two kinds", "note", {
      statement: `Two kinds of ping can be told apart by their tone: {deep} deep ones about ${khz(deep.pitchHz)} and {light} light ones about ${khz(light.pitchHz)}; the deep ones are ${Math.abs(louder).toFixed(0)} dB ${louder < 0 ? "fainter" : "louder"}. ${kinds.mixedShare < 0.01 ? "Fewer than 1 %" : "About {mixed}"} of the {pings} may stand with the wrong kind.`,
      basis: `two bell curves against one for the logarithm of the tone; ${basedOn("very strong evidence is asked for", "kass-raftery-1995")}, and ${basedOn("groups clearly apart", "ashman-1994")}; that single deep cracks come from the wall and light ticks from the glaze is lore, not measured`,
      advice: "Look whether the deep ones go with a crack through the wall: tap the pieces once they are cold; a dull ring speaks for one.",
      evidence: [
        { name: "deep", value: deep.count, kind: "count" },
        { name: "light", value: light.count, kind: "count" },
        { name: "mixed", value: kinds.mixedShare, kind: "percent" },
        { name: "pings", value: pings.length, kind: "count" }
      ]
    })
  ];
}
function khz(hertz) {
  return `${(hertz / 1e3).toFixed(1)} kHz`;
}

// src/core/pings/omoriLaw.ts
function omoriArea({ p, c }, seconds) {
  const stretch = Math.log1p(seconds / c);
  const power = 1 - p;
  const factor = Math.abs(power * stretch) < 1e-9 ? stretch : Math.expm1(power * stretch) / power;
  return c ** power * factor;
}
function omoriShare(law, seconds, wholeSeconds) {
  return omoriArea(law, seconds) / omoriArea(law, wholeSeconds);
}
function omoriTime(law, share, wholeSeconds) {
  const power = 1 - law.p;
  const stretch = Math.log1p(wholeSeconds / law.c);
  const grown = Math.abs(power * stretch) < 1e-9 ? share * stretch : Math.log1p(share * Math.expm1(power * stretch)) / power;
  return law.c * Math.expm1(grown);
}
function omoriTimes(law, given) {
  return Array.from(
    { length: given.count },
    () => omoriTime(law, given.even(), given.seconds)
  ).sort((a, b) => a - b);
}

// src/core/pings/fitOmori.ts
var P_LEAST = -0.5;
var P_MOST = 3;
var P_STEP = 0.01;
var C_STEPS = 60;
var HALF_CHI_SQUARED = 1.9207;
function fitOmori(times, seconds) {
  if (times.length < 3) throw new RangeError(`fitOmori: ${times.length} times`);
  const offsets = Array.from({ length: C_STEPS }, (_, i) => {
    const c = seconds * 1e-5 * 2e5 ** (i / (C_STEPS - 1));
    return { c, logs: times.reduce((sum, time) => sum + Math.log(time + c), 0) };
  });
  const tried = Array.from(
    { length: Math.round((P_MOST - P_LEAST) / P_STEP) + 1 },
    (_, i) => bestOffset(P_LEAST + i * P_STEP, offsets, { count: times.length, seconds })
  );
  const best = tried.reduce((a, b) => b.logLikelihood > a.logLikelihood ? b : a);
  const allowed = tried.filter(
    ({ logLikelihood }) => logLikelihood >= best.logLikelihood - HALF_CHI_SQUARED
  );
  return {
    p: best.p,
    c: best.c,
    pLow: Math.min(...allowed.map(({ p }) => p)),
    pHigh: Math.max(...allowed.map(({ p }) => p))
  };
}
function bestOffset(p, offsets, { count, seconds }) {
  let best = { p, c: 1, logLikelihood: Number.NEGATIVE_INFINITY };
  for (const { c, logs } of offsets) {
    const logLikelihood = -count * Math.log(omoriArea({ p, c }, seconds)) - p * logs;
    if (logLikelihood > best.logLikelihood) best = { p, c, logLikelihood };
  }
  return best;
}

// src/core/pings/lawFindings.ts
var STEADY_FACTOR = 2;
var STILL_K = 10;
var TREND_SIGMAS = 1.96;
var LAW_BASIS = `${basedOn("rate in proportion to 1/(t + c)^p", "utsu-1961")}, which ${basedOn("cracking of porous silica keeps to", "baro-2013")}; ${basedOn("fitted to the times themselves", "ogata-1983")}; no published count of pinging pots was found, so this is theory with likenesses`;
var SLOW_CRACK_POWER = 18;
var READINGS = [
  { low: 0, high: 0, words: "a steady rate (p 0), as while the temperature still changes" },
  {
    low: slowCrackExponent(10, SLOW_CRACK_POWER),
    high: slowCrackExponent(5, SLOW_CRACK_POWER),
    words: `${basedOn("cracks that creep under a steady pull (p about 0.4 to 0.7)", "crack-growth-law")}`
  },
  {
    low: 0.75,
    high: 0.75,
    words: `${basedOn("moisture growth (p 0.75, a straight line against the fourth root of time)", "moisture-click-law", "wilson-2003")}`
  },
  { low: 1, high: 1, words: "a straight line against the logarithm of time (p 1)" }
];
function lawFindings(review) {
  return [...thinningFindings(review), ...burstFindings(review)];
}
function thinningFindings(review) {
  if (review.law !== null) return [exponentFinding(review.law, review)];
  return review.earliness === null ? [] : [trendFinding(review.earliness, review)];
}
function exponentFinding(law, review) {
  const { heard, pings, temperatures } = review;
  const isSteady = isSteadyRate(review);
  const rangeK = temperatures?.rangeK ?? 0;
  return {
    topic: "thinning out",
    severity: "note",
    statement: `The rate goes as 1/(t + c)^p from the start of the recording, with p ${two(law.p)} (95 %: ${intervalWords(law)}) and c {c}. In made-up recordings of this law the fit scatters by ${two(law.pSigma)} and lies ${two(Math.abs(law.pBias))} too ${law.pBias < 0 ? "low" : "high"} on average. ${readingWords(law, { review, rangeK, isSteady })}.${review.burst === null ? "" : " The second burst bends p as well."}`,
    evidence: [
      { name: "c", value: law.c, kind: "duration" },
      { name: "pings", value: pings.length, kind: "count" },
      { name: "length", value: heard.seconds, kind: "duration" },
      { name: "p", value: law.p, kind: "ratio" },
      { name: "p, least", value: law.pLow, kind: "ratio" },
      { name: "p, most", value: law.pHigh, kind: "ratio" },
      { name: "range", value: rangeK, kind: "difference" }
    ],
    basis: LAW_BASIS,
    advice: isSteady || rangeK > STILL_K ? "Record again once the ware is as cold as the room and stays so." : "A longer recording narrows the span of p; let the ware stand at one temperature meanwhile.",
    zone: null,
    span: null
  };
}
function isAllLogged(temperatures) {
  return temperatures !== null && temperatures.knownShare > 0.9;
}
function isTakenOutMeanwhile({ temperatures, heard }) {
  const unloading = temperatures?.unloading ?? null;
  return unloading !== null && unloading.atSeconds > 0 && unloading.atSeconds < heard.seconds;
}
function intervalWords({ pLow, pHigh }) {
  const low = `${two(pLow)}${pLow <= P_LEAST ? " or less" : ""}`;
  return `${low} to ${two(pHigh)}${pHigh >= P_MOST - 5e-3 ? " or more" : ""}`;
}
function isSteadyRate({ earliness, pings }) {
  if (earliness === null) return false;
  const most = (Math.abs(earliness) + TREND_SIGMAS) * Math.sqrt(12 / pings.length);
  return most < Math.log(STEADY_FACTOR);
}
function readingWords(law, {
  review,
  rangeK,
  isSteady
}) {
  const { temperatures } = review;
  if (isTakenOutMeanwhile(review))
    return "The ware was taken out meanwhile, so p mixes the cooling in the kiln with that on the shelf and speaks for nothing by itself";
  if (rangeK > STILL_K)
    return "The temperature changed by {range} meanwhile, so p says how the cooling went along with the pinging, and nothing of moisture or creeping cracks: look at the rate against temperature instead";
  if (isSteady)
    return `The rate is steady: over the whole recording it changes by less than a factor of ${STEADY_FACTOR} (95 %). That speaks for a temperature that still changes, not for moisture, unless the recording began long after the pinging did`;
  if (law.pHigh < 0)
    return "They come more often with time instead of thinning out: that speaks for a temperature that changes faster, or for water, not for moisture growth or creeping cracks";
  const allowed = READINGS.filter(({ low, high }) => law.pLow <= high && law.pHigh >= low);
  const words = allowed.length === 0 ? "none of the simple readings" : allowed.map((reading) => reading.words).join("; ");
  const open2 = allowed.length > 1 ? "; this recording alone does not tell them apart" : "";
  const proviso = isAllLogged(temperatures) ? "" : " (if the ware stood at one temperature, which no log shows)";
  return `That allows${proviso} ${words}${open2}`;
}
function trendFinding(earliness, { pings }) {
  const words = earliness > TREND_SIGMAS ? "They thin out with time, more than chance explains" : earliness < -TREND_SIGMAS ? "They become more frequent with time, more than chance explains; that speaks for a temperature that changes faster, or for water" : "Whether they thin out cannot be told: as uneven as this happens by chance";
  return {
    topic: "thinning out",
    severity: "note",
    statement: `${words} (their mean lies ${Math.abs(earliness).toFixed(1)} standard errors ${earliness < 0 ? "after" : "before"} the middle of the recording; 2 is a clear sign). With {pings} pings no exponent is told: it would be uncertain by as much as moisture, creeping cracks and a steady rate differ; that takes more than 50.`,
    evidence: [{ name: "pings", value: pings.length, kind: "count" }],
    basis: "test of Laplace: the mean of the times against the middle of the recording, own arithmetic",
    advice: "",
    zone: null,
    span: null
  };
}
function burstFindings({ burst, heard }) {
  if (burst === null) return [];
  return [
    {
      topic: "second burst",
      severity: "caution",
      statement: "From {from} to {to} of the recording there came {count} pings where thinning out alone expects {expected}: a second burst. It speaks for a step of temperature (a door, a draught, moving the ware) or for water on the ware, not for the fit of the glaze by itself.",
      evidence: [
        { name: "from", value: burst.fromSeconds, kind: "elapsed" },
        { name: "to", value: burst.toSeconds, kind: "elapsed" },
        { name: "count", value: burst.count, kind: "count" },
        { name: "expected", value: burst.expected, kind: "count" },
        { name: "length", value: heard.seconds, kind: "duration" }
      ],
      basis: `${basedOn("best window against the best of 199 seeded even recordings, which it beats", "kulldorff-1997")}`,
      advice: "Note what happened then. Do not use pings of a draught to judge the fit of the glaze.",
      zone: null,
      span: null
    }
  ];
}
function two(value) {
  const text = Math.abs(value).toFixed(2);
  return value < -5e-3 ? `\u2212${text}` : text;
}

// src/core/pings/pingBurst.ts
var FEWEST2 = 20;
var AFTER_SHARE = 0.1;
var MOST_SHARE = 0.5;
var CATALOGUES = 199;
var STEPS = 150;
function pingBurst(times, seconds) {
  if (times.length < FEWEST2) return null;
  const law = fitOmori(times, seconds);
  const places = times.map((time) => omoriShare(law, time, seconds));
  const found = densest(places);
  if (found === null) return null;
  const even = seededEven(2 * times.length + 1);
  for (let i = 0; i < CATALOGUES; i++) {
    const made = Array.from({ length: times.length }, () => even()).sort((a, b) => a - b);
    if ((densest(made)?.weight ?? 0) >= found.weight) return null;
  }
  const { first, last } = found;
  return {
    fromSeconds: times[first],
    toSeconds: times[last],
    count: last - first + 1,
    expected: times.length * (places[last] - places[first])
  };
}
function densest(places) {
  const step = Math.max(1, Math.ceil(places.length / STEPS));
  let best = null;
  for (let first = Math.ceil(AFTER_SHARE * places.length); first < places.length; first += step)
    for (let last = first + Math.max(4, step); last < Math.min(places.length, first + MOST_SHARE * places.length); last += step) {
      const width = places[last] - places[first];
      const weight = weightOf((last - first) / places.length, width) * places.length;
      if (weight > (best?.weight ?? 0)) best = { first, last, weight };
    }
  return best;
}
function weightOf(clicks, time) {
  if (clicks <= time) return 0;
  const width = Math.max(time, 1e-9);
  return clicks * Math.log(clicks / width) + (1 - clicks) * Math.log((1 - clicks) / (1 - width));
}

// src/core/pings/pingKinds.ts
var FEWEST_FOR_KINDS = 20;
var STRONG_EVIDENCE = 10;
var CLEAR_SEPARATION = 2;
var LEAST_SHARE = 0.1;
var LEAST_SIGMA = 0.05;
function pingKinds(pings) {
  const octaves = pings.map(({ pitchHz }) => Math.log2(pitchHz));
  const all = pings.map((_, i) => i);
  if (pings.length < FEWEST_FOR_KINDS)
    return { kinds: kindOf(pings, all), evidence: null, separation: null, mixedShare: null };
  const one = [groupOf(octaves, () => 1)];
  const two2 = fitTwo(octaves);
  const evidence = 2 * (logOf(octaves, two2) - logOf(octaves, one)) - 3 * Math.log(octaves.length);
  const [deep, light] = two2;
  const separation = Math.SQRT2 * (light.mean - deep.mean) / Math.hypot(light.sigma, deep.sigma);
  const isSplit = evidence > STRONG_EVIDENCE && separation > CLEAR_SEPARATION && Math.min(deep.weight, light.weight) >= LEAST_SHARE;
  if (!isSplit) return { kinds: kindOf(pings, all), evidence, separation, mixedShare: null };
  const shares = octaves.map((octave) => shareOfSecond(octave, two2));
  const mixedShare = shares.reduce((sum, share) => sum + Math.min(share, 1 - share), 0) / shares.length;
  const split = [
    all.filter((i) => shares[i] < 0.5),
    all.filter((i) => shares[i] >= 0.5)
  ];
  return {
    kinds: split.flatMap((members) => kindOf(pings, members)),
    evidence,
    separation,
    mixedShare
  };
}
function kindOf(pings, members) {
  if (members.length === 0) return [];
  const own = members.map((i) => pings[i]);
  const group = groupOf(
    own.map(({ pitchHz }) => Math.log2(pitchHz)),
    () => 1
  );
  return [
    {
      count: own.length,
      members,
      pitchHz: 2 ** group.mean,
      pitchFactor: 2 ** group.sigma,
      overFloorDb: own.reduce((sum, ping) => sum + ping.overFloorDb, 0) / own.length
    }
  ];
}
function fitTwo(values) {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = (sorted[0] + sorted.at(-1)) / 2;
  let groups = [
    groupOf(values, (value) => value < middle ? 0.9 : 0.1),
    groupOf(values, (value) => value < middle ? 0.1 : 0.9)
  ];
  for (let turn = 0; turn < 200; turn++) {
    const held = groups;
    groups = [
      groupOf(values, (value) => 1 - shareOfSecond(value, held)),
      groupOf(values, (value) => shareOfSecond(value, held))
    ];
  }
  return groups.toSorted((a, b) => a.mean - b.mean);
}
function groupOf(values, weightOf2) {
  let total2 = 1e-12;
  let sum = 0;
  for (const value of values) {
    total2 += weightOf2(value);
    sum += weightOf2(value) * value;
  }
  const mean2 = sum / total2;
  const squares = values.reduce((all, value) => all + weightOf2(value) * (value - mean2) ** 2, 0);
  return {
    weight: total2 / values.length,
    mean: mean2,
    sigma: Math.max(LEAST_SIGMA, Math.sqrt(squares / total2))
  };
}
function density({ weight, mean: mean2, sigma }, value) {
  return weight * Math.exp(-((value - mean2) ** 2) / (2 * sigma ** 2)) / (sigma * Math.sqrt(2 * Math.PI));
}
function shareOfSecond(value, [first, second]) {
  const a = density(first, value);
  const b = density(second, value);
  return a + b === 0 ? 0.5 : b / (a + b);
}
function logOf(values, groups) {
  return values.reduce(
    (sum, value) => sum + Math.log(groups.reduce((all, group) => all + density(group, value), 0) + 1e-300),
    0
  );
}

// src/core/pings/pingLaw.ts
var FEWEST_FOR_LAW = 50;
var CATALOGUES2 = 100;
var MOST_MADE_UP = 2e3;
var LINE_POINTS = 80;
function pingLaw(times, seconds) {
  if (times.length <= FEWEST_FOR_LAW) return null;
  const fit = fitOmori(times, seconds);
  const count = Math.min(times.length, MOST_MADE_UP);
  const even = seededEven(times.length);
  const catalogues = Array.from(
    { length: CATALOGUES2 },
    () => omoriTimes(fit, { count, seconds, even })
  );
  const fitted = catalogues.map((made) => fitOmori(made, seconds).p);
  const mean2 = fitted.reduce((sum, p) => sum + p, 0) / fitted.length;
  const variance = fitted.reduce((sum, p) => sum + (p - mean2) ** 2, 0) / (fitted.length - 1);
  return {
    ...fit,
    pSigma: Math.sqrt(variance * (count / times.length)),
    pBias: (mean2 - fit.p) * (count / times.length),
    line: lineOf(fit, times.length, seconds)
  };
}
function lineOf(fit, count, seconds) {
  return Array.from({ length: LINE_POINTS + 1 }, (_, i) => {
    const at = seconds * (i / LINE_POINTS) ** 2;
    const share = omoriShare(fit, at, seconds);
    const wide = 1.96 * Math.sqrt(count * share * (1 - share));
    return {
      seconds: at,
      count: count * share,
      low: Math.max(0, count * share - wide),
      high: Math.min(count, count * share + wide)
    };
  });
}

// src/core/pings/pingSpans.ts
var MINUTE = 60;
var HOUR = 3600;
var EDGES = [0, 10 * MINUTE, HOUR, 4 * HOUR, 24 * HOUR];
function pingSpans(times, seconds) {
  const edges = [...EDGES];
  while (edges.at(-1) < seconds) edges.push(edges.at(-1) + 24 * HOUR);
  return edges.slice(1).flatMap((edge, i) => {
    const fromSeconds = edges[i];
    const toSeconds = Math.min(edge, seconds);
    if (toSeconds <= fromSeconds) return [];
    const count = times.filter((time) => time >= fromSeconds && time < edge).length;
    return [
      {
        fromSeconds,
        toSeconds,
        count,
        share: times.length === 0 ? 0 : count / times.length,
        perHour: count * HOUR / (toSeconds - fromSeconds)
      }
    ];
  });
}

// src/core/pings/pingTemperatures.ts
function wareTemperature(beside, atSeconds) {
  return isTakenOut(beside, atSeconds) ? null : temperatureAt(beside.curve, beside.startedSeconds + atSeconds);
}
function isTakenOut({ unloaded, startedSeconds }, atSeconds) {
  return unloaded !== null && startedSeconds + atSeconds >= unloaded.seconds;
}
var STEP_C = 50;
var FINE_STEP_C = 20;
var FINE_UP_TO_K = 150;
var WALK_SECONDS = 10;
var STEADY_C_PER_HOUR = 5;
var STEADY_WINDOW_SECONDS = 1800;
function pingTemperatures(pings, seconds, beside) {
  const { logName, channel, startedSeconds } = beside;
  const steps = Math.max(1, Math.round(seconds / WALK_SECONDS));
  const stepSeconds = seconds / steps;
  const moments = Array.from({ length: steps }, (_, i) => (i + 0.5) * stepSeconds);
  const walked = moments.map((at) => wareTemperature(beside, at));
  const known = walked.filter((tempC) => tempC !== null);
  const bandOf = (name, lowC, highC) => {
    const within = (tempC) => tempC !== null && tempC >= lowC && tempC < highC;
    const listened2 = walked.filter(within).length * stepSeconds;
    const count = pings.filter(({ tempC }) => within(tempC)).length;
    return {
      name,
      lowC,
      highC,
      count,
      seconds: listened2,
      perHour: listened2 === 0 ? 0 : count * 3600 / listened2
    };
  };
  const rangeK = known.length === 0 ? 0 : greatest(known) - least(known);
  const stepC = rangeK > FINE_UP_TO_K ? STEP_C : FINE_STEP_C;
  const hot = pings.filter(({ tempC }) => tempC !== null);
  return {
    logName,
    channel,
    startedSeconds,
    knownShare: known.length / walked.length,
    coldestC: known.length === 0 ? null : least(known),
    unloading: unloadingPart(pings, seconds, beside),
    rangeK,
    steps: stepsOver(known, stepC).map((lowC) => bandOf(null, lowC, lowC + stepC)),
    inversions: [QUARTZ_BAND, CRISTOBALITE_BAND].map(({ name, lowC, highC }) => bandOf(name, lowC, highC)).filter((band) => band.seconds > 0),
    firstC: hot[0]?.tempC ?? null,
    thirdC: hot[2]?.tempC ?? null,
    steady: steadyPart(pings, { moments, stepSeconds }, beside)
  };
}
function unloadingPart(pings, seconds, beside) {
  const { unloaded, startedSeconds } = beside;
  if (unloaded === null) return null;
  const atSeconds = unloaded.seconds - startedSeconds;
  return {
    atSeconds,
    tempC: unloaded.tempC,
    count: pings.filter((ping) => isTakenOut(beside, ping.atSeconds)).length,
    seconds: Math.min(seconds, Math.max(0, seconds - atSeconds))
  };
}
function greatest(values) {
  return values.reduce((a, b) => Math.max(a, b));
}
function least(values) {
  return values.reduce((a, b) => Math.min(a, b));
}
function stepsOver(known, stepC) {
  const edges = new Set(known.map((tempC) => stepC * Math.floor(tempC / stepC)));
  return [...edges].sort((a, b) => b - a);
}
function steadyPart(pings, walk, beside) {
  const meter = slopeMeter(beside.curve);
  const isSteady = (at) => {
    if (isTakenOut(beside, at)) return false;
    const slope = meter.slopeAt(beside.startedSeconds + at, STEADY_WINDOW_SECONDS);
    return slope !== null && Math.abs(slope) < STEADY_C_PER_HOUR;
  };
  return {
    count: pings.filter(({ atSeconds }) => isSteady(atSeconds)).length,
    seconds: walk.moments.filter(isSteady).length * walk.stepSeconds
  };
}

// src/core/pings/misfitOfOnset.ts
var TOUGHNESS = 0.7;
var STIFFNESS = 65e3;
var POISSON = 0.2;
var Z = 1.976;
function misfitOfOnset(fallK, coatMm) {
  if (!(fallK > 0 && coatMm > 0)) throw new RangeError(`misfitOfOnset: ${fallK} K, ${coatMm} mm`);
  const crackingMPa = TOUGHNESS / Math.sqrt(Z * coatMm / 1e3);
  return crackingMPa * (1 - POISSON) / STIFFNESS / fallK;
}

// src/core/pings/temperatureFindings.ts
var SET_POINTS_C = { low: 550, high: 650 };
var TOLD_COAT_MM = 0.4;
var LEAST_FALL_K = 50;
var STRONG_MISFIT_PER_K = 1e-6;
var KNOWN_SHARE = 0.9;
var MAY_BE_OUT_C = 150;
var STEADY_SECONDS = 3600;
var STEADY_PINGS = 5;
var ONSET_BASIS = `${basedOn("the earlier a glaze cracks on its way down, the stronger the misfit, and the thicker the coat the less misfit it takes", "ping-onset", "four-porous-bodies")}; toughness and stiffness of the glaze from memory; the log reads a thermocouple, not the ware`;
function temperatureFindings(review) {
  const { temperatures } = review;
  if (temperatures === null) return [];
  return [
    ...unloadedFindings(temperatures, review),
    ...knownFindings(temperatures, review),
    ...onsetFindings(temperatures, review),
    ...inversionFindings(temperatures),
    ...steadyFindings(temperatures)
  ];
}
function unloadedFindings({ unloading, logName, coldestC }, { pings, heard }) {
  if (unloading === null)
    return coldestC === null || coldestC >= MAY_BE_OUT_C ? [] : [unknownUnloading(logName)];
  if (unloading.seconds === 0) return [];
  const hot = unloading.tempC === null ? "" : ", the kiln being at {kiln}";
  const when = unloading.atSeconds <= 0 ? `before the recording began${hot}` : `{at} after the recording began${hot}`;
  const few = unloading.count === 1 ? "ping was" : "pings were";
  const all = unloading.seconds >= heard.seconds;
  return [
    {
      ...plain("after unloading", "caution"),
      statement: `The ware was taken out ${when}. {count} of the {pings} ${few} heard from then on${all ? "" : ", in {listened}"}: they are counted apart and have no temperature, for on the shelf the ware cools faster than the kiln that ${quoted(logName)} shows.`,
      evidence: [
        { name: "at", value: Math.max(0, unloading.atSeconds), kind: "duration" },
        ...unloading.tempC === null ? [] : [{ name: "kiln", value: unloading.tempC, kind: "temperature" }],
        { name: "count", value: unloading.count, kind: "count" },
        { name: "pings", value: pings.length, kind: "count" },
        { name: "listened", value: unloading.seconds, kind: "duration" }
      ],
      basis: "unloading as the firing record beside the log notes it",
      advice: "A burst just after unloading is the cold room, not the fit: do not read a misfit from it."
    }
  ];
}
function unknownUnloading(logName) {
  return {
    ...plain("unloading", "note"),
    statement: `No record beside ${quoted(logName)} says when the ware was taken out. From then on it is not as hot as the kiln, and the temperatures below do not hold.`,
    evidence: [],
    basis: "own reasoning",
    advice: "Write unloaded: with its at: into the firing record, and ask again."
  };
}
function knownFindings({ knownShare, logName, unloading }, { heard }) {
  const outShare = (unloading?.seconds ?? 0) / heard.seconds;
  if (knownShare >= KNOWN_SHARE * (1 - outShare)) return [];
  return [
    {
      ...plain("log beside the recording", "caution"),
      statement: `Only {known} of the recording lies within the readings of ${quoted(logName)}; pings outside it have no temperature.`,
      evidence: [{ name: "known", value: knownShare, kind: "percent" }],
      basis: "start of the recording placed on the log",
      advice: "Check --started if that surprises you."
    }
  ];
}
function onsetFindings({ firstC, thirdC }, { isBegun: isBegun2 }) {
  if (firstC === null) return [];
  const third = thirdC === null ? "" : ", the third at {third}, in case the first was a shelf";
  const begun = isBegun2 ? "; as pings came from the very start of the recording, the true onset may have been hotter" : "";
  return [
    {
      ...plain("onset", "note"),
      statement: `The first ping came at {first}${third}${begun}.${misfitWords(firstC)}`,
      evidence: [
        { name: "first", value: firstC, kind: "temperature" },
        ...thirdC === null ? [] : [{ name: "third", value: thirdC, kind: "temperature" }],
        { name: "setLow", value: SET_POINTS_C.low, kind: "temperature" },
        { name: "setHigh", value: SET_POINTS_C.high, kind: "temperature" }
      ],
      basis: ONSET_BASIS,
      advice: "Put coat and temperature under cracks: pings: of the glaze file: undunted glaze works out the misfit for your own coat, wall and set point."
    }
  ];
}
function misfitWords(firstC) {
  if (firstC > SET_POINTS_C.low - LEAST_FALL_K || firstC >= QUARTZ_BAND.lowC) return "";
  const [low, high] = [SET_POINTS_C.high, SET_POINTS_C.low].map(
    (setC) => misfitOfOnset(setC - firstC, TOLD_COAT_MM)
  );
  const strong = low >= STRONG_MISFIT_PER_K ? ", a strong one" : "";
  return ` If the kiln stayed shut, that is a misfit of glaze and clay of ${millionths(low)} to ${millionths(high)} millionths per \xB0C${strong}, for a coat of ${TOLD_COAT_MM} mm on a stout wall and a glaze that sets at {setLow} to {setHigh}; a coat twice as thick cracks so at 0.7 of it.`;
}
function millionths(perK) {
  return (perK * 1e6).toFixed(1);
}
function inversionFindings({ inversions }) {
  return inversions.filter(({ count }) => count > 0).map((band) => ({
    ...plain(`pings through the ${band.name}`, "caution"),
    statement: `{count} ${band.count === 1 ? "ping" : "pings"} came between {high} and {low}, where the ${band.name} lies: look for the inversion first, that is for a long crack through the wall, before reading them as crackle.`,
    evidence: [
      { name: "count", value: band.count, kind: "count" },
      { name: "high", value: band.highC, kind: "temperature" },
      { name: "low", value: band.lowC, kind: "temperature" },
      { name: "listened", value: band.seconds, kind: "duration" }
    ],
    basis: "bands of the two inversions as in a review; glaze that fits badly can crack there as well",
    advice: "Tap the pieces once they are cold and look for a line from the rim or the foot."
  }));
}
function steadyFindings({ steady }) {
  if (steady.seconds < STEADY_SECONDS) return [];
  const span = { name: "steady", value: steady.seconds, kind: "duration" };
  const basis = basedOn(
    "at one temperature only moisture or creeping cracks are left to pull; less than 5 \xB0C/h over half an hour counts as steady, our own choice",
    "wilson-2003"
  );
  if (steady.count === 0)
    return [
      {
        ...plain("steady temperature", "note"),
        statement: "No ping came in the {steady} for which the temperature held still: what was heard goes with cooling.",
        evidence: [span],
        basis,
        advice: ""
      }
    ];
  if (steady.count < STEADY_PINGS) return [];
  return [
    {
      ...plain("steady temperature", "note"),
      statement: "{count} pings came in {steady} for which the temperature held still; pinging that goes on so for days speaks for moisture or for cracks that creep.",
      evidence: [{ name: "count", value: steady.count, kind: "count" }, span],
      basis,
      advice: "Record again after some days."
    }
  ];
}
function plain(topic, severity) {
  return { topic, severity, zone: null, span: null };
}

// src/core/pings/reviewPings.ts
var FEWEST_FOR_TREND = 10;
function reviewPings(input) {
  const { sound, heard, started, log } = input;
  const { seconds } = heard;
  const pings = heard.pings.map((ping) => ({
    ...ping,
    tempC: log === null ? null : wareTemperature(log, ping.atSeconds)
  }));
  const times = pings.map(({ atSeconds }) => atSeconds);
  const law = pingLaw(times, seconds);
  const review = {
    sound,
    heard,
    started,
    pings,
    spans: pingSpans(times, seconds),
    law,
    earliness: earlinessOf(times, seconds),
    burst: pingBurst(times, seconds),
    kinds: pingKinds(pings),
    isBegun: isBegun(times),
    temperatures: log === null ? null : pingTemperatures(pings, seconds, log)
  };
  return {
    ...review,
    findings: [...hearingFindings(review), ...lawFindings(review), ...temperatureFindings(review)],
    cautions: cautionsFor({ listening: true, crackle: true })
  };
}
function earlinessOf(times, seconds) {
  if (times.length < FEWEST_FOR_TREND) return null;
  const mean2 = times.reduce((sum, time) => sum + time, 0) / times.length;
  return (seconds / 2 - mean2) / (seconds / Math.sqrt(12 * times.length));
}
function isBegun(times) {
  if (times.length < 6) return false;
  const steps = times.slice(1, 6).map((time, i) => time - times[i]);
  return times[0] < 3 * medianInPlace(steps);
}

// src/core/pings/quietLevels.ts
var SCATTER_FACTOR = 6.5;
var LEAST_THRESHOLD_DB = 9;
function quietLevels(frames, count, using) {
  const secondFrames = framesInSecond(frames.hopSeconds);
  const around = Math.max(1, Math.round(using.settings.floorSeconds / 2));
  const bands = frames.energies.map((energies, b) => {
    const band = frames.bands[b];
    const share = (band.highHz - band.lowHz) / (frames.sampleRateHz / 2);
    const levels = levelsOf(energies, count, using.leastEnergy * share);
    const seconds = secondsOf(levels, secondFrames);
    const floors = smoothed(seconds.medians, around);
    const scatters = smoothed(seconds.scatters, around);
    const thresholds = scatters.map(
      (scatter) => using.settings.thresholdDb ?? Math.max(LEAST_THRESHOLD_DB, SCATTER_FACTOR * scatter)
    );
    return { levels, floors, thresholds };
  });
  return {
    levelsDb: bands.map(({ levels }) => levels),
    floorsDb: bands.map(({ floors }) => floors),
    thresholdsDb: bands.map(({ thresholds }) => thresholds),
    secondFrames
  };
}
function framesInSecond(hopSeconds) {
  return Math.round(1 / hopSeconds);
}
function levelsOf(energies, count, least2) {
  const levels = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const next = energies[Math.min(i + 1, count - 1)];
    levels[i] = 10 * Math.log10((energies[i] + next) / 2 + least2);
  }
  return levels;
}
function secondsOf(levels, secondFrames) {
  const count = Math.max(1, Math.floor(levels.length / secondFrames));
  const medians = new Float64Array(count);
  const scatters = new Float64Array(count);
  for (let s = 0; s < count; s++) {
    const piece = levels.slice(s * secondFrames, (s + 1) * secondFrames);
    const middle = medianInPlace(piece);
    medians[s] = middle;
    scatters[s] = medianInPlace(piece.map((level) => Math.abs(level - middle)));
  }
  return { medians, scatters };
}
function smoothed(values, around) {
  return values.map((_, i) => medianInPlace(values.slice(Math.max(0, i - around), i + around + 1)));
}

// src/core/reports/sections/pingTables.ts
var LISTED = 10;
function loudestPings(review, unit) {
  const { pings, started, temperatures } = review;
  if (pings.length === 0) return [];
  const loudest = pings.toSorted((a, b) => b.overFloorDb - a.overFloorDb).slice(0, LISTED);
  const hasClock = started.secondsOfDay !== null;
  return [
    {
      kind: "table",
      caption: pings.length > LISTED ? `The ${LISTED} loudest of ${pings.length}; --json lists all` : "All of them, loudest first",
      columns: [
        { head: { lines: ["after", "min:s"] }, align: "right" },
        ...hasClock ? [{ head: "clock", align: "right" }] : [],
        ...temperatures === null ? [] : [{ head: "at", align: "right" }],
        { head: { lines: ["over quiet", "dB"] }, align: "right" },
        { head: { lines: ["peak, full", "scale 0 dB"] }, align: "right" },
        { head: { lines: ["tone", "kHz"] }, align: "right" },
        { head: { lines: ["20 dB down", "in ms"] }, align: "right" }
      ],
      rows: loudest.map((ping) => [
        minutesText(ping.atSeconds),
        ...hasClock ? [clockText(started.secondsOfDay, ping.atSeconds) ?? ""] : [],
        ...temperatures === null ? [] : [tempText(ping, unit)],
        ping.overFloorDb.toFixed(0),
        `${ping.levelDbfs.toFixed(0).replace("-", "\u2212")}${ping.isClipped ? " or more" : ""}`,
        (ping.pitchHz / 1e3).toFixed(1),
        ping.decayMs === null ? "\u2014" : ping.decayMs.toFixed(0)
      ])
    }
  ];
}
function pingTemperatureBlocks({ temperatures }, unit) {
  if (temperatures === null) return [];
  const { inversions, steps, logName, channel, unloading } = temperatures;
  const named = (band) => `${printTemperature(band.highC, unit)} to ${printTemperature(band.lowC, unit)}${band.name === null ? "" : ` (${band.name})`}`;
  const row = (band) => [
    named(band),
    String(band.count),
    printDuration(band.seconds),
    rateText(band.perHour)
  ];
  const taken = unloading === null || unloading.seconds === 0 ? [] : [
    [
      "after unloading, not as hot as the kiln",
      String(unloading.count),
      printDuration(unloading.seconds),
      rateText(unloading.count * 3600 / unloading.seconds)
    ]
  ];
  return [
    {
      kind: "table",
      caption: `Pings against temperature, ${channel} of ${logName}`,
      columns: [
        { head: "from", align: "left" },
        { head: "pings", align: "right" },
        { head: "listened", align: "right" },
        { head: "per hour", align: "right" }
      ],
      rows: [...steps.map(row), ...inversions.map(row), ...taken]
    }
  ];
}
function rateText(perHour) {
  return perHour >= 10 ? String(Math.round(perHour)) : perHour.toFixed(1);
}
function tempText({ tempC }, unit) {
  return tempC === null ? "\u2014" : printTemperature(tempC, unit);
}
function minutesText(seconds) {
  const whole = Math.floor(seconds / 60);
  return `${whole}:${(seconds - 60 * whole).toFixed(2).padStart(5, "0")}`;
}

// src/core/reports/pingsBlocks.ts
function pingsBlocks(review, { unit, charts = {} }) {
  return [
    { kind: "lead", text: leadText(review) },
    { kind: "facts", facts: facts(review) },
    ...chartBlocks("Pings against time, with their loudness", charts.loudness),
    ...chartBlocks("How the pings add up", charts.count),
    ...findingBlocks(review.findings, { unit, startOfDaySeconds: null }),
    ...section("When they came", review.pings.length === 0 ? [] : [spansTable(review.spans)]),
    ...section("How hot it was", [
      ...pingTemperatureBlocks(review, unit),
      ...chartBlocks("Pings per hour against temperature", charts.temperature)
    ]),
    ...section("The loudest", loudestPings(review, unit)),
    { kind: "heading", text: "How they were told from other sounds" },
    { kind: "list", items: hearingItems(review) },
    ...section(
      "Lines for the firing record",
      pingRecordLines(review).length === 0 ? [] : [{ kind: "lines", lines: pingRecordLines(review) }]
    ),
    ...basisBlocks({ heatwork: null, crossings: [], findings: review.findings, sources: [] }, unit),
    ...cautionBlocks(review.cautions)
  ];
}
function leadText({ pings, heard, spans }) {
  const length = printDuration(heard.seconds);
  if (pings.length === 0) return `No ping found in ${length}`;
  const count = `${pings.length} ${pings.length === 1 ? "ping" : "pings"} or more in ${length}`;
  const early = spans[0];
  return spans.length > 1 && early ? `${count}, ${percent(early.share)} of them in the first 10 minutes` : count;
}
function facts(review) {
  const { sound, heard, kinds } = review;
  const [deep, light] = kinds.kinds;
  return [
    { label: "recording", text: [sound.format, ...sound.notes].join("; ") },
    { label: "started", text: startedText(review) },
    {
      label: "quiet level",
      text: heard.bands.map(
        ({ lowHz, highHz, floorDbfs }) => `${Math.round(floorDbfs).toString().replace("-", "\u2212")} dB at ${kilo(lowHz)}\u2013${kilo(highHz)}`
      ).join(", ").concat(" kHz, full scale being 0")
    },
    ...deep === void 0 ? [] : [
      {
        label: "tones",
        text: light === void 0 ? `one kind, about ${kilo(deep.pitchHz)} kHz, most within a factor of ${deep.pitchFactor.toFixed(1)}${kinds.evidence === null ? "; too few to look for two" : ""}` : `two kinds, ${deep.count} about ${kilo(deep.pitchHz)} kHz and ${light.count} about ${kilo(light.pitchHz)} kHz`
      }
    ]
  ];
}
function startedText({ started, temperatures }) {
  const { secondsOfDay, elapsedSeconds } = started;
  const clock = clockText(secondsOfDay, 0);
  const into = temperatures === null ? "the firing" : temperatures.logName;
  const parts = [
    ...elapsedSeconds === null ? [] : [`${printElapsed(elapsedSeconds)} into ${into}`],
    ...clock === null ? [] : [`${clock} by the clock`]
  ];
  return parts.length === 0 ? 'not said (--started "21:05")' : parts.join(", ");
}
function spansTable(spans) {
  return {
    kind: "table",
    caption: "Pings since the start of the recording",
    columns: [
      { head: "time", align: "left" },
      { head: "pings", align: "right" },
      { head: "share", align: "right" },
      { head: "per hour", align: "right" }
    ],
    rows: spans.map((span) => [
      span.fromSeconds === 0 ? `first ${printDuration(span.toSeconds)}` : `to ${printDuration(span.toSeconds)}`,
      String(span.count),
      percent(span.share),
      rate(span.perHour)
    ])
  };
}
function hearingItems({ heard }) {
  const { settings, others, bands } = heard;
  const thresholds = bands.map(({ thresholdDb }) => thresholdDb.toFixed(0)).join(", ");
  return [
    settings.thresholdDb === null ? `A ping stands out of the quiet level of a band by ${SCATTER_FACTOR} times its scatter (median absolute deviation), ${LEAST_THRESHOLD_DB} dB at least: here ${thresholds} dB from the deepest band up (--threshold).` : `A ping stands out of the quiet level of a band by ${settings.thresholdDb} dB, as told (--threshold).`,
    `The quiet level is the median over ${settings.floorSeconds} s (--floor).`,
    `A ping starts at once, ${settings.attackDb} dB within 6 ms (--attack), and dies away within a quarter of a second. Not counted: ${others.slow} that swelled up instead, ${others.lasting} that stayed, ${others.thuds} thuds (below 350 Hz), ${others.amongNoise} sharp ones among other noise, such as speech.`,
    `Pings within ${Math.round(settings.apartSeconds * 1e3)} ms of another are counted with it, so that an echo is no second one (--apart).`,
    "All these choices are our own, tried on made-up sounds only: there clicks 20 dB over the noise were all found and nothing else was; at 10 dB one in three can be missed. Times are good to 10 ms."
  ];
}
function percent(share) {
  return `${Math.round(share * 100)} %`;
}
function rate(perHour) {
  return perHour >= 10 ? String(Math.round(perHour)) : perHour.toFixed(1);
}
function kilo(hertz) {
  return (hertz / 1e3).toFixed(1);
}

// src/core/reports/pingsHtml.ts
function pingsHtml(review, context) {
  return reportHtml({
    title: `Pings in ${review.sound.name}`,
    language: "en",
    blocks: pingsBlocks(review, context)
  });
}

// src/core/reports/pingsText.ts
function pingsText(review, options) {
  return reportText(
    { title: `Pings in ${review.sound.name}`, blocks: pingsBlocks(review, options) },
    options.paint
  );
}

// src/node/readSound.ts
import { basename } from "node:path";

// src/core/pings/stretch.ts
function secondAt({ floorsDb, secondFrames }, i) {
  return Math.min(Math.floor(i / secondFrames), floorsDb[0].length - 1);
}
function quietBefore(levels, band, i) {
  const floors = levels.floorsDb[band];
  const second = secondAt(levels, i);
  return Math.min(floors[second], floors[Math.max(0, second - 1)]);
}

// src/core/pings/measuredPing.ts
var BEFORE = 1;
var AFTER = 4;
var ONSET_SHARE = 0.1;
var HEARD_DB = 3;
var DECAY_END_DB = 6;
var DECAY_SECONDS = 0.3;
var LEAST_DECAY_DB = 8;
function measuredPing(stretch, onset) {
  const { frames, levels, startSeconds, count } = stretch;
  const { frame, band } = onset;
  const floor = quietBefore(levels, band, frame);
  const from = Math.max(0, frame - BEFORE);
  const to = Math.min(count, frame + AFTER + 1);
  return {
    atSeconds: startSeconds + onsetFrame(stretch, onset) * frames.hopSeconds,
    overFloorDb: levels.levelsDb[band]?.[frame] - floor,
    levelDbfs: 20 * Math.log10(greatest2(frames.peaks, from, to) + 1e-9),
    pitchHz: pitchOf(stretch, onset, { from, to }),
    decayMs: decayOf(stretch, onset, floor),
    isClipped: greatest2(frames.fullScale, from, to) > 0
  };
}
function onsetFrame({ frames }, { frame, band }) {
  const energies = frames.energies[band];
  const from = Math.max(0, frame - 4);
  const enough = ONSET_SHARE * greatest2(energies, from, Math.min(energies.length, frame + 2));
  for (let i = from; i < frame; i++) if (energies[i] >= enough) return i;
  return frame;
}
function pitchOf({ frames, levels }, { frame }, { from, to }) {
  let weights = 0;
  let sum = 0;
  frames.bands.forEach(({ lowHz: lowHz2, highHz: highHz2 }, b) => {
    const quiet = 10 ** (quietBefore(levels, b, frame) / 10) * (to - from);
    const middle = Math.sqrt(lowHz2 * highHz2);
    const energy = total(frames.energies[b], from, to);
    if (energy < quiet * 10 ** (HEARD_DB / 10)) return;
    const inQuiet = quiet * 4 * Math.sin(Math.PI * middle / frames.sampleRateHz) ** 2;
    const steps = total(frames.steps[b], from, to) - inQuiet;
    const ratio = Math.max(0, steps) / (energy - quiet);
    const tone = frames.sampleRateHz / Math.PI * Math.asin(Math.min(1, Math.sqrt(ratio) / 2));
    weights += energy - quiet;
    sum += (energy - quiet) * Math.log(Math.min(Math.max(tone, lowHz2 / 2), highHz2 * 1.5));
  });
  if (weights > 0) return Math.exp(sum / weights);
  const { lowHz, highHz } = frames.bands[0];
  return Math.sqrt(lowHz * highHz);
}
function decayOf({ frames, levels, count }, onset, floor) {
  const level = levels.levelsDb[onset.band];
  const peak = level[onset.frame];
  const last = Math.min(count, onset.frame + Math.round(DECAY_SECONDS / frames.hopSeconds));
  let end = onset.frame + 1;
  while (end < last && level[end] > floor + DECAY_END_DB) end++;
  const n = end - onset.frame;
  if (n < 4 || peak - level[end - 1] < LEAST_DECAY_DB) return null;
  let moment = 0;
  let spread = 0;
  for (let i = 0; i < n; i++) {
    const x = i - (n - 1) / 2;
    moment += x * level[onset.frame + i];
    spread += x * x;
  }
  const dbPerFrame = moment / spread;
  return dbPerFrame < 0 ? -20 / dbPerFrame * frames.hopSeconds * 1e3 : null;
}
function greatest2(values, from, to) {
  let most = 0;
  for (let i = from; i < to; i++) most = Math.max(most, values[i]);
  return most;
}
function total(values, from, to) {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i];
  return sum;
}

// src/core/pings/clicksIn.ts
var ATTACK_FROM_SECONDS = 0.02;
var ATTACK_TO_SECONDS = 6e-3;
var PEAK_SECONDS = 8e-3;
var GONE_FROM_SECONDS = 0.06;
var GONE_TO_SECONDS = 0.26;
var GONE_DB = 8;
var AS_GOOD_AS_GONE_DB = 4;
var THUD_SECONDS = 0.04;
var THUD_RISE = 2;
var THUD_TIMES = 4;
var AROUND_SECONDS = 0.5;
var OWN_SECONDS = 0.12;
var NOISY_SHARE2 = 0.3;
var NOISY_DB = 6;
function clicksIn(stretch, settings) {
  const { hopSeconds } = stretch.frames;
  const apart = Math.max(1, Math.round(settings.apartSeconds / hopSeconds));
  const pings = [];
  const others = { slow: 0, lasting: 0, thuds: 0, amongNoise: 0 };
  let lastLoud = Number.NEGATIVE_INFINITY;
  for (let i = stretch.from; i < stretch.to; i++) {
    const band = loudestOver(stretch, i);
    if (band === null) continue;
    const isNew = i - lastLoud > apart;
    lastLoud = i;
    if (riseDb(stretch, band, i) < settings.attackDb) {
      if (isNew) others.slow += 1;
      continue;
    }
    const onset = peakNear(stretch, i);
    const verdict = judged(stretch, onset);
    if (verdict === "ping") pings.push(measuredPing(stretch, onset));
    else others[verdict] += 1;
    i = Math.max(i, onset.frame) + apart - 1;
    lastLoud = i;
  }
  return { pings, others };
}
function loudestOver({ levels }, i) {
  const second = secondAt(levels, i);
  let best = null;
  let most = 0;
  for (let b = 0; b < levels.levelsDb.length; b++) {
    const over = levels.levelsDb[b]?.[i] - levels.floorsDb[b]?.[second] - levels.thresholdsDb[b]?.[second];
    if (over > most) {
      most = over;
      best = b;
    }
  }
  return best;
}
function riseDb({ frames, levels, count }, band, i) {
  const from = Math.max(0, i - Math.round(ATTACK_FROM_SECONDS / frames.hopSeconds));
  const to = i - Math.round(ATTACK_TO_SECONDS / frames.hopSeconds);
  const energies = frames.energies[band];
  const level = levels.levelsDb[band];
  const ahead = Math.min(count - 1, i + 2);
  let now = level[i];
  for (let j = i + 1; j <= ahead; j++) now = Math.max(now, level[j]);
  if (to <= from) return now - levels.floorsDb[band]?.[0];
  const before = Math.max(
    10 * Math.log10(mean(energies, from, to) + 1e-30),
    quietBefore(levels, band, i)
  );
  return now - before;
}
function peakNear(stretch, i) {
  const { levels, frames, count } = stretch;
  const to = Math.min(count - 1, i + Math.round(PEAK_SECONDS / frames.hopSeconds));
  let best = { frame: i, band: 0 };
  let most = Number.NEGATIVE_INFINITY;
  for (let b = 0; b < levels.levelsDb.length; b++)
    for (let j = i; j <= to; j++) {
      const over = levels.levelsDb[b]?.[j] - quietBefore(levels, b, i);
      if (over > most) {
        most = over;
        best = { frame: j, band: b };
      }
    }
  return best;
}
function judged(stretch, onset) {
  if (isThud(stretch, onset)) return "thuds";
  if (!diesAway(stretch, onset)) return "lasting";
  return noisyShare(stretch, onset) > NOISY_SHARE2 ? "amongNoise" : "ping";
}
function isThud({ frames, count }, { frame }) {
  const wide = Math.round(THUD_SECONDS / frames.hopSeconds);
  const to = Math.min(count, frame + wide);
  const before = Math.max(0, frame - 5 * wide);
  const gain = (energies) => {
    const usual = mean(energies, before, Math.max(before + 1, frame - 3));
    const now = mean(energies, frame, to);
    return now > THUD_RISE * usual ? now - usual : 0;
  };
  const inBands = frames.energies.reduce((sum, energies) => sum + gain(energies), 0);
  return gain(frames.low) > THUD_TIMES * inBands;
}
function diesAway({ frames, levels, count }, { frame, band }) {
  const energies = frames.energies[band];
  const step = Math.round(0.02 / frames.hopSeconds);
  const last = Math.min(count, frame + Math.round(GONE_TO_SECONDS / frames.hopSeconds));
  const floor = quietBefore(levels, band, frame);
  const gone = Math.max(
    levels.levelsDb[band]?.[frame] - GONE_DB,
    floor + AS_GOOD_AS_GONE_DB
  );
  for (let i = frame + Math.round(GONE_FROM_SECONDS / frames.hopSeconds); i + step <= last; i += step)
    if (10 * Math.log10(mean(energies, i, i + step) + 1e-30) <= gone) return true;
  return last === count;
}
function noisyShare({ levels, frames, count }, { frame }) {
  const around = Math.round(AROUND_SECONDS / frames.hopSeconds);
  const own = Math.round(OWN_SECONDS / frames.hopSeconds);
  const voices = levels.levelsDb.slice(0, 2).map((level, b) => ({ level, loud: quietBefore(levels, b, frame) + NOISY_DB }));
  let noisy = 0;
  let seen = 0;
  for (let i = Math.max(0, frame - around); i < Math.min(count, frame + own + around); i++) {
    if (i >= frame - 3 && i < frame + own) continue;
    seen++;
    if (voices.some(({ level, loud }) => level[i] > loud)) noisy++;
  }
  return seen === 0 ? 0 : noisy / seen;
}
function mean(values, from, to) {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i];
  return sum / Math.max(1, to - from);
}

// src/core/pings/biquad.ts
function bandPass(lowHz, highHz, sampleRateHz) {
  const { cosine, alpha } = angles(
    Math.sqrt(lowHz * highHz),
    Math.sqrt(lowHz * highHz) / (highHz - lowHz),
    sampleRateHz
  );
  return biquad([alpha, 0, -alpha], [1 + alpha, -2 * cosine, 1 - alpha]);
}
function cutOff(side, cornerHz, sampleRateHz) {
  const make = (quality) => {
    const { cosine, alpha } = angles(cornerHz, quality, sampleRateHz);
    const edge = side === "below" ? (1 + cosine) / 2 : (1 - cosine) / 2;
    const middle = side === "below" ? -2 * edge : 2 * edge;
    return biquad([edge, middle, edge], [1 + alpha, -2 * cosine, 1 - alpha]);
  };
  return [make(0.5 / Math.cos(Math.PI / 8)), make(0.5 / Math.cos(3 * Math.PI / 8))];
}
function angles(frequencyHz, quality, sampleRateHz) {
  const turn = 2 * Math.PI * frequencyHz / sampleRateHz;
  return { cosine: Math.cos(turn), alpha: Math.sin(turn) / (2 * quality) };
}
function biquad(zeros, poles) {
  const [b0, b1, b2] = zeros.map((value) => value / poles[0]);
  const [, a1, a2] = poles.map((value) => value / poles[0]);
  const state = new Float64Array(2);
  return {
    run(input, output) {
      let [s1, s2] = state;
      for (let i = 0; i < input.length; i++) {
        const x = input[i];
        const y = b0 * x + s1;
        s1 = b1 * x - a1 * y + s2;
        s2 = b2 * x - a2 * y;
        output[i] = y;
      }
      state[0] = Math.abs(s1) < 1e-30 ? 0 : s1;
      state[1] = Math.abs(s2) < 1e-30 ? 0 : s2;
    }
  };
}

// src/core/pings/soundFrames.ts
var HOP_SECONDS = 2e-3;
var LOWER_EDGES_HZ = [700, 1400, 2800, 5600, 11200];
var HIGHEST_HZ = 2e4;
var HUM_BELOW_HZ = 500;
var THUD_BELOW_HZ = 350;
var FULL_SCALE = 0.99;
function soundBands(sampleRateHz) {
  const most = Math.min(HIGHEST_HZ, 0.45 * sampleRateHz);
  return LOWER_EDGES_HZ.filter((edge) => edge * 1.25 < most).map((lowHz) => ({
    lowHz,
    highHz: Math.min(2 * lowHz, most)
  }));
}
function hopSamples(sampleRateHz) {
  return Math.max(1, Math.round(HOP_SECONDS * sampleRateHz));
}
function emptyFrames(sampleRateHz, count) {
  const bands = soundBands(sampleRateHz);
  return {
    hopSeconds: hopSamples(sampleRateHz) / sampleRateHz,
    sampleRateHz,
    bands,
    energies: bands.map(() => new Float64Array(count)),
    steps: bands.map(() => new Float64Array(count)),
    low: new Float64Array(count),
    peaks: new Float64Array(count),
    fullScale: new Float64Array(count),
    zeros: new Float64Array(count)
  };
}
function frameMeter(sampleRateHz) {
  const hop = hopSamples(sampleRateHz);
  const noHum = cutOff("below", HUM_BELOW_HZ, sampleRateHz);
  const onlyLow = cutOff("above", THUD_BELOW_HZ, sampleRateHz);
  const bands = soundBands(sampleRateHz).map(({ lowHz, highHz }) => ({
    filter: bandPass(lowHz, highHz, sampleRateHz),
    last: { value: 0 }
  }));
  return {
    measure(block, into, from) {
      if (block.length % hop !== 0)
        throw new RangeError(`frameMeter: ${block.length} samples are no whole pieces of ${hop}`);
      const work = new Float64Array(block.length);
      const clear = new Float64Array(block.length);
      countExtremes(block, hop, into, from);
      onlyLow[0].run(block, work);
      onlyLow[1].run(work, work);
      meanSquares(work, hop, into.low, from);
      noHum[0].run(block, clear);
      noHum[1].run(clear, clear);
      peaksOf(clear, hop, into.peaks, from);
      bands.forEach(({ filter, last }, b) => {
        filter.run(clear, work);
        meanSquares(work, hop, into.energies[b], from);
        const end = work[work.length - 1];
        toSteps(work, last.value);
        last.value = end;
        meanSquares(work, hop, into.steps[b], from);
      });
    }
  };
}
function countExtremes(block, hop, into, from) {
  for (let piece = 0; piece * hop < block.length; piece++) {
    let full = 0;
    let zero = 0;
    for (let i = piece * hop; i < (piece + 1) * hop; i++) {
      const value = block[i];
      if (value >= FULL_SCALE || value <= -FULL_SCALE) full++;
      if (value === 0) zero++;
    }
    into.fullScale[from + piece] = full;
    into.zeros[from + piece] = zero;
  }
}
function meanSquares(block, hop, into, from) {
  for (let piece = 0; piece * hop < block.length; piece++) {
    let sum = 0;
    for (let i = piece * hop; i < (piece + 1) * hop; i++) sum += block[i] ** 2;
    into[from + piece] = sum / hop;
  }
}
function peaksOf(block, hop, into, from) {
  for (let piece = 0; piece * hop < block.length; piece++) {
    let most = 0;
    for (let i = piece * hop; i < (piece + 1) * hop; i++)
      most = Math.max(most, Math.abs(block[i]));
    into[from + piece] = most;
  }
}
function toSteps(block, before) {
  let previous = before;
  for (let i = 0; i < block.length; i++) {
    const value = block[i];
    block[i] = value - previous;
    previous = value;
  }
}

// src/core/pings/listener.ts
var STRETCH_SECONDS = 60;
var DULL_DB = 12;
function listener(given) {
  const { sampleRateHz, settings } = given;
  const hop = hopSamples(sampleRateHz);
  const second = framesInSecond(hop / sampleRateHz);
  const margin = (Math.ceil(settings.floorSeconds / 2) + 2) * second;
  const room = STRETCH_SECONDS * second + 2 * margin;
  const frames = emptyFrames(sampleRateHz, room);
  if (frames.bands.length === 0) throw new RangeError(`listener: ${sampleRateHz} Hz`);
  const meter = frameMeter(sampleRateHz);
  const tally = emptyTally(frames.bands.length);
  let pending = new Float64Array(0);
  let count = 0;
  let first = 0;
  let from = 0;
  function judge(to) {
    const levels = quietLevels(frames, count, given);
    const startSeconds = first * hop / sampleRateHz;
    const heard = clicksIn({ frames, levels, count, from, to, startSeconds }, settings);
    addTo(tally, heard, settings);
    rememberSeconds(tally, levels, { from, to });
    countSamples(tally, frames, { from, to });
  }
  function makeRoom() {
    judge(count - margin);
    const dropped = count - 2 * margin;
    for (const values of arraysOf(frames)) values.copyWithin(0, dropped, count);
    first += dropped;
    count = 2 * margin;
    from = margin;
  }
  function add(block) {
    let at = 0;
    while (at < block.length) {
      if (count === room) makeRoom();
      const pieces = Math.min(room - count, (block.length - at) / hop);
      meter.measure(block.subarray(at, at + pieces * hop), frames, count);
      count += pieces;
      at += pieces * hop;
    }
  }
  return {
    push(samples) {
      const all = new Float64Array(pending.length + samples.length);
      all.set(pending);
      all.set(samples, pending.length);
      const whole = Math.floor(all.length / hop) * hop;
      add(all.subarray(0, whole));
      pending = all.slice(whole);
    },
    finish() {
      if (count > 0) judge(count);
      return listened(tally, frames, { seconds: (first + count) * hop / sampleRateHz, settings });
    }
  };
}
function emptyTally(bands) {
  return {
    pings: [],
    others: { slow: 0, lasting: 0, thuds: 0, amongNoise: 0 },
    floors: Array.from({ length: bands }, () => []),
    thresholds: Array.from({ length: bands }, () => []),
    samples: 0,
    fullScale: 0,
    zeros: 0,
    peak: 0
  };
}
function addTo(tally, heard, { apartSeconds }) {
  for (const ping of heard.pings) {
    const last = tally.pings.at(-1);
    if (last === void 0 || ping.atSeconds - last.atSeconds >= apartSeconds)
      tally.pings.push(ping);
  }
  const { slow: slow2, lasting, thuds, amongNoise } = tally.others;
  tally.others = {
    slow: slow2 + heard.others.slow,
    lasting: lasting + heard.others.lasting,
    thuds: thuds + heard.others.thuds,
    amongNoise: amongNoise + heard.others.amongNoise
  };
}
function rememberSeconds(tally, { floorsDb, thresholdsDb, secondFrames }, { from, to }) {
  floorsDb.forEach((floors, b) => {
    const last = Math.min(floors.length, Math.ceil(to / secondFrames));
    for (let s = Math.floor(from / secondFrames); s < last; s++) {
      tally.floors[b]?.push(floors[s]);
      tally.thresholds[b]?.push(thresholdsDb[b]?.[s]);
    }
  });
}
function countSamples(tally, { fullScale, zeros, peaks, hopSeconds, sampleRateHz }, { from, to }) {
  for (let i = from; i < to; i++) {
    tally.fullScale += fullScale[i];
    tally.zeros += zeros[i];
    tally.peak = Math.max(tally.peak, peaks[i]);
  }
  tally.samples += (to - from) * Math.round(hopSeconds * sampleRateHz);
}
function listened(tally, frames, { seconds, settings }) {
  const bands = frames.bands.map((band, b) => ({
    ...band,
    floorDbfs: medianInPlace([...tally.floors[b] ?? []]),
    thresholdDb: medianInPlace([...tally.thresholds[b] ?? []])
  }));
  const isDull = (_, s) => {
    const dull = bands.filter(({ floorDbfs, thresholdDb }, b) => {
      const needed = tally.floors[b]?.[s] + tally.thresholds[b]?.[s];
      return needed >= floorDbfs + thresholdDb + DULL_DB;
    });
    return 2 * dull.length >= bands.length;
  };
  return {
    pings: tally.pings,
    others: tally.others,
    seconds,
    sampleRateHz: frames.sampleRateHz,
    settings,
    bands,
    noisySeconds: (tally.floors[0] ?? []).filter(isDull).length,
    fullScaleShare: tally.fullScale / Math.max(1, tally.samples),
    zeroShare: tally.zeros / Math.max(1, tally.samples),
    peakDbfs: tally.peak > 0 ? 20 * Math.log10(tally.peak) : null
  };
}
function arraysOf(frames) {
  return [
    ...frames.energies,
    ...frames.steps,
    frames.low,
    frames.peaks,
    frames.fullScale,
    frames.zeros
  ];
}

// src/core/pings/samplesOf.ts
function samplesOf(bytes, format, channel) {
  const frameBytes = format.sampleBytes * format.channels;
  if (bytes.length % frameBytes !== 0)
    throw new RangeError(`samplesOf: ${bytes.length} bytes are no whole frames of ${frameBytes}`);
  if (channel === "right" && format.channels < 2) throw new RangeError("samplesOf: one channel");
  const sample = sampleReader(new DataView(bytes.buffer, bytes.byteOffset, bytes.length), format);
  const result = new Float64Array(bytes.length / frameBytes);
  const chosen = channel === "mix" ? Array.from({ length: format.channels }, (_, i) => i) : [channel === "right" ? 1 : 0];
  for (let i = 0; i < result.length; i++) {
    let sum = 0;
    for (const one of chosen) sum += sample(i * frameBytes + one * format.sampleBytes);
    result[i] = Number.isFinite(sum) ? sum / chosen.length : 0;
  }
  return result;
}
function sampleReader(view, { coding, sampleBytes }) {
  if (coding === "float")
    return sampleBytes === 4 ? (at) => view.getFloat32(at, true) : (at) => view.getFloat64(at, true);
  switch (sampleBytes) {
    case 1:
      return (at) => (view.getUint8(at) - 128) / 128;
    case 2:
      return (at) => view.getInt16(at, true) / 32768;
    case 3:
      return (at) => (view.getInt8(at + 2) << 16 | view.getUint16(at, true)) / 8388608;
    default:
      return (at) => view.getInt32(at, true) / 2147483648;
  }
}

// src/core/pings/soundKind.ts
var OTHERS = [
  [0, "OggS", "an Ogg file (Vorbis or Opus)"],
  [0, "fLaC", "a FLAC file"],
  [0, "ID3", "an MP3 file"],
  [0, "\xFF\xFB", "an MP3 file"],
  [0, "\xFF\xF3", "an MP3 file"],
  [4, "ftyp", "an MP4 or M4A file, as telephones record"],
  [0, "FORM", "an AIFF file"],
  [0, "caff", "a Core Audio file"],
  [0, "RIFX", "a WAV file with its bytes the other way round (RIFX)"],
  [0, "#!AMR", "an AMR file, as telephones record"],
  [0, "E\xDF\xA3", "a WebM or Matroska file"]
];
function soundKind(start) {
  const text = Array.from(start.subarray(0, 12), (byte) => String.fromCharCode(byte)).join("");
  const isRiff = ["RIFF", "RF64", "BW64"].some((mark) => text.startsWith(mark));
  if (isRiff && text.slice(8, 12) === "WAVE") return { kind: "wav" };
  const other = OTHERS.find(([at, mark]) => text.startsWith(mark, at));
  return other === void 0 ? { kind: "unknown" } : { kind: "other", name: other[2] };
}

// src/core/pings/soundProblems.ts
var SHORTEST_SECONDS = 10;
var SILENT_DBFS = -80;
var OVERDRIVEN_SHARE = 0.05;
function soundProblems(heard, where) {
  if (heard.seconds < SHORTEST_SECONDS)
    return [
      {
        code: "sound/too-short",
        where,
        what: `it lasts ${heard.seconds.toFixed(1)} s`,
        expected: `at least ${SHORTEST_SECONDS} s, better hours: the quiet level is taken over ${heard.settings.floorSeconds} s`,
        fix: "record for longer"
      }
    ];
  if (heard.peakDbfs === null || heard.peakDbfs < SILENT_DBFS)
    return [
      {
        code: "sound/silent",
        where,
        what: heard.peakDbfs === null ? "it is silent throughout" : `its loudest sound above the hum is at ${heard.peakDbfs.toFixed(0)} dB of full scale`,
        expected: `some sound above ${SILENT_DBFS} dB of full scale`,
        fix: "check microphone and level; with two channels, try --channel right"
      }
    ];
  if (heard.fullScaleShare > OVERDRIVEN_SHARE)
    return [
      {
        code: "sound/overdriven",
        where,
        what: `${Math.round(heard.fullScaleShare * 100)} % of its samples are at full scale`,
        expected: `at most ${OVERDRIVEN_SHARE * 100} %; above, even the quiet between clicks is cut off`,
        fix: "record anew at a lower level"
      }
    ];
  return [];
}

// src/core/pings/waveFormat.ts
var PCM = 1;
var FLOAT = 3;
var EXTENSIBLE = 65534;
var COMPRESSED = {
  2: "ADPCM",
  6: "A-law",
  7: "mu-law",
  17: "IMA ADPCM",
  80: "MPEG",
  85: "MP3",
  255: "AAC"
};
var LEAST_RATE_HZ = 4e3;
function waveFormat(chunk, where) {
  if (chunk.length < 16) return failed(broken(where, "its description of the samples is cut off"));
  const view = new DataView(chunk.buffer, chunk.byteOffset, chunk.byteLength);
  const written = view.getUint16(0, true);
  const tag = written === EXTENSIBLE && chunk.length >= 26 ? view.getUint16(24, true) : written;
  const format = {
    coding: tag === FLOAT ? "float" : "whole",
    sampleBytes: Math.ceil(view.getUint16(14, true) / 8),
    channels: view.getUint16(2, true),
    sampleRateHz: view.getUint32(4, true)
  };
  if (tag !== PCM && tag !== FLOAT) return failed(compressed(where, tag));
  const widths = tag === FLOAT ? [4, 8] : [1, 2, 3, 4];
  if (!widths.includes(format.sampleBytes))
    return failed(bits(where, format.sampleBytes * 8, widths));
  if (format.channels === 0 || format.sampleRateHz === 0)
    return failed(broken(where, "it claims no channel, or no samples in a second"));
  if (format.sampleRateHz < LEAST_RATE_HZ) return failed(slow(where, format.sampleRateHz));
  return ok(format);
}
function broken(where, what) {
  return {
    code: "sound/format",
    where,
    what,
    expected: "a WAV file with channels and a sample rate",
    fix: 'open it in a sound editor and "save as uncompressed WAV"'
  };
}
function compressed(where, tag) {
  const name = COMPRESSED[tag];
  return {
    code: "sound/compressed",
    where,
    what: `its samples are compressed (${name === void 0 ? `code ${tag}` : `${name}, code ${tag}`})`,
    expected: "uncompressed samples: whole numbers of 8 to 32 bits, or floating point",
    fix: 'open it in a sound editor and "save as uncompressed WAV", 16 bits, one channel'
  };
}
function bits(where, found, widths) {
  return {
    code: "sound/bits",
    where,
    what: `its samples have ${found} bits`,
    expected: `${widths.map((bytes) => bytes * 8).join(", ")} bits`,
    fix: 'open it in a sound editor and "save as uncompressed WAV", 16 bits'
  };
}
function slow(where, rateHz) {
  return {
    code: "sound/slow-sampling",
    where,
    what: `it holds ${rateHz} samples a second; the tone of a click lies above what these can carry`,
    expected: `at least ${LEAST_RATE_HZ} samples a second, better 44100`,
    fix: "record anew at 44.1 or 48 kHz; converting this file cannot bring the clicks back"
  };
}

// src/node/byteSource.ts
import { open } from "node:fs/promises";
var HELD_WHOLE = {
  bytes: 2 ** 30,
  expected: "at most 1 GB on standard input, which has to be held as a whole",
  fix: "give the name of the file instead"
};
async function byteSource(path) {
  if (path === "-") return wholeInput();
  try {
    const file = await open(path, "r");
    const facts2 = await file.stat();
    if (facts2.isDirectory()) {
      await file.close();
      return failed(systemProblem(Object.assign(new Error(), { code: "EISDIR" }), path, "read"));
    }
    let buffer = Buffer.alloc(0);
    return ok({
      size: facts2.size,
      async read(at, bytes) {
        if (buffer.length < bytes) buffer = Buffer.alloc(bytes);
        const { bytesRead } = await file.read(buffer, 0, bytes, at);
        return buffer.subarray(0, bytesRead);
      },
      close: () => file.close()
    });
  } catch (error) {
    return failed(systemProblem(error, path, "read"));
  }
}
async function wholeInput() {
  const bytes = await readBytes("-", HELD_WHOLE);
  if (!bytes.ok) return bytes;
  const whole = bytes.value;
  return ok({
    size: whole.length,
    read: async (at, count) => whole.subarray(at, at + count),
    close: async () => {
    }
  });
}

// src/node/soundChannel.ts
var PIECES = 40;
var PIECE_SECONDS = 0.5;
var SAME_SHARE = 0.01;
var DEAD_SHARE = 1e-3;
async function chosenChannel(data, { asked, where }) {
  const { channels } = data.format;
  if (asked === "right" && channels < 2)
    return failed({
      code: "sound/no-such-channel",
      where,
      what: "it has one channel only",
      expected: "--channel left or mix, or none at all",
      fix: "leave --channel out"
    });
  if (asked !== null)
    return ok({ channel: asked, notes: channels < 2 ? [] : [`listened to: ${asked}`] });
  if (channels === 1) return ok({ channel: "left", notes: [] });
  if (channels > 2) return failed(choose(where, `it has ${channels} channels`));
  const { left, right, difference } = await loudnessOf(data);
  const most = Math.max(left, right);
  if (difference <= SAME_SHARE * most)
    return ok({ channel: "left", notes: ["both channels are the same; the left one was heard"] });
  if (right <= DEAD_SHARE * most)
    return ok({ channel: "left", notes: ["the right channel is dead; the left one was heard"] });
  if (left <= DEAD_SHARE * most)
    return ok({ channel: "right", notes: ["the left channel is dead; the right one was heard"] });
  const ratio = 20 * Math.log10(left / right);
  return failed(
    choose(
      where,
      `its two channels differ; the left one is ${Math.abs(ratio).toFixed(0)} dB ${ratio < 0 ? "quieter" : "louder"}`
    )
  );
}
function choose(where, what) {
  return {
    code: "sound/channels",
    where,
    what,
    expected: "one channel to listen to: --channel left, right or mix (the mean of all)",
    fix: "--channel left, or the one whose microphone was nearer; mix when both heard the same"
  };
}
async function loudnessOf({ source, from, bytes, format }) {
  const frameBytes = format.sampleBytes * format.channels;
  const frames = Math.floor(bytes / frameBytes);
  const piece = Math.min(frames, Math.ceil(PIECE_SECONDS * format.sampleRateHz));
  const sums = { left: 0, right: 0, difference: 0 };
  for (let k = 0; k < PIECES; k++) {
    const first = Math.floor((frames - piece) * k / (PIECES - 1));
    const got = await source.read(from + first * frameBytes, piece * frameBytes);
    const whole = got.subarray(0, got.length - got.length % frameBytes);
    const left = samplesOf(whole, format, "left");
    const right = samplesOf(whole, format, "right");
    for (let i = 0; i < left.length; i++) {
      const [l, r] = [left[i], right[i]];
      sums.left += l * l;
      sums.right += r * r;
      sums.difference += (l - r) ** 2;
    }
  }
  return {
    left: Math.sqrt(sums.left),
    right: Math.sqrt(sums.right),
    difference: Math.sqrt(sums.difference)
  };
}

// src/node/waveChunks.ts
var NO_SIZE = 4294967295;
var LARGEST_FORMAT = 1024;
async function waveChunks(source) {
  let format = null;
  let longSize = null;
  let at = 12;
  while (at + 8 <= source.size) {
    const head = await source.read(at, 8);
    const id = new TextDecoder("latin1").decode(head.subarray(0, 4));
    const size = new DataView(head.buffer, head.byteOffset, 8).getUint32(4, true);
    const body = at + 8;
    if (id === "data") return { format, data: dataAt(source, body, { size, longSize }) };
    if (id === "fmt ")
      format = Uint8Array.from(await source.read(body, Math.min(size, LARGEST_FORMAT)));
    if (id === "ds64") longSize = await longDataSize(source, body);
    at = body + size + size % 2;
  }
  return { format, data: null };
}
function dataAt(source, from, { size, longSize }) {
  const there = source.size - from;
  const claimed = size === NO_SIZE && longSize !== null ? longSize : size;
  if (claimed === 0 || claimed === NO_SIZE) return { from, bytes: there, missing: null };
  return { from, bytes: Math.min(claimed, there), missing: Math.max(0, claimed - there) };
}
async function longDataSize(source, at) {
  const bytes = await source.read(at, 16);
  if (bytes.length < 16) return null;
  return Number(new DataView(bytes.buffer, bytes.byteOffset, 16).getBigUint64(8, true));
}

// src/node/readSound.ts
var BLOCK_BYTES = 2 ** 20;
var PROGRESS_SECONDS = 3600;
var FLOAT_LEAST_ENERGY = 1e-12;
async function readSound(path, options) {
  const source = await byteSource(path);
  if (!source.ok) return source;
  const name = path === "-" ? "standard input" : basename(path);
  try {
    const start = await source.value.read(0, 12);
    const kind = soundKind(start);
    if (kind.kind !== "wav")
      return failed(notWav(name, kind.kind === "other" ? kind.name : null, source.value.size));
    return await listenTo(source.value, name, options);
  } finally {
    await source.value.close();
  }
}
async function listenTo(source, name, options) {
  const chunks = await waveChunks(source);
  if (chunks.format === null || chunks.data === null) return failed(noSamples(name, chunks));
  const format = waveFormat(chunks.format, name);
  if (!format.ok) return format;
  const data = { source, ...chunks.data, format: format.value };
  const channel = await chosenChannel(data, { asked: options.channel, where: name });
  if (!channel.ok) return channel;
  const heard = await heardBlocks(data, channel.value.channel, options);
  const problems = soundProblems(heard, name);
  if (problems.length > 0) return failed(...problems);
  return ok({
    sound: {
      name,
      format: formatWords(format.value),
      notes: [...missingNotes(chunks.data, format.value), ...channel.value.notes]
    },
    heard
  });
}
async function heardBlocks({ source, from, bytes, format }, channel, { settings, progress }) {
  const ear = listener({
    sampleRateHz: format.sampleRateHz,
    leastEnergy: format.coding === "float" ? FLOAT_LEAST_ENERGY : 4 ** (1 - 8 * format.sampleBytes) / 12,
    settings
  });
  const frameBytes = format.sampleBytes * format.channels;
  const block = frameBytes * Math.max(1, Math.floor(BLOCK_BYTES / frameBytes));
  const bytesInPart = PROGRESS_SECONDS * format.sampleRateHz * frameBytes;
  for (let at = 0; at + frameBytes <= bytes; at += block) {
    const wanted = Math.floor(Math.min(block, bytes - at) / frameBytes) * frameBytes;
    const got = await source.read(from + at, wanted);
    ear.push(samplesOf(got.subarray(0, got.length - got.length % frameBytes), format, channel));
    if (Math.floor((at + block) / bytesInPart) > Math.floor(at / bytesInPart))
      progress?.(
        (at + block) / (bytesInPart / PROGRESS_SECONDS),
        bytes / (bytesInPart / PROGRESS_SECONDS)
      );
    if (got.length < wanted) break;
  }
  return ear.finish();
}
function formatWords({ coding, sampleBytes, channels, sampleRateHz }) {
  const samples = `${sampleBytes * 8}-bit ${coding === "float" ? "floating point" : "whole numbers"}`;
  return `${samples}, ${channels === 1 ? "one channel" : `${channels} channels`}, ${sampleRateHz} samples a second`;
}
function missingNotes({ missing }, { sampleBytes, channels, sampleRateHz }) {
  if (missing === null)
    return [
      "the file never says how long it is, as when a recorder is cut off: all that is there was heard"
    ];
  if (missing === 0) return [];
  const seconds = missing / (sampleBytes * channels * sampleRateHz);
  return [
    `the file is cut short: it claims ${printDuration(seconds)} more than it holds; what is there was heard`
  ];
}
function notWav(where, name, bytes) {
  return {
    code: "sound/not-wav",
    where,
    what: name !== null ? `it is ${name}` : bytes === 0 ? "it is empty" : "its first bytes are those of no sound file that is known here",
    expected: "a WAV recording (RIFF or RF64), whatever the file is called",
    fix: 'open it in a sound editor and "save as uncompressed WAV", 16 bits, one channel'
  };
}
function noSamples(where, { format }) {
  return {
    code: "sound/no-samples",
    where,
    what: format === null ? "nothing in it describes its samples before they begin" : "it holds no samples",
    expected: "a WAV file with a description (fmt) and samples (data)",
    fix: "copy it from the recorder again; what was cut off while copying is lost"
  };
}

// src/core/pings/Ping.ts
var USUAL_SETTINGS = {
  thresholdDb: null,
  apartSeconds: 0.06,
  attackDb: 7,
  floorSeconds: 10
};

// src/cli/pingSettings.ts
var DECIBELS = { db: 1, "": 1 };
var TIMES = { ms: 1e-3, s: 1 };
var ASKED = {
  threshold: { option: "--threshold", units: DECIBELS, least: 3, most: 80, example: "12dB" },
  attack: { option: "--attack", units: DECIBELS, least: 1, most: 60, example: "7dB" },
  apart: { option: "--apart", units: TIMES, least: 0.01, most: 5, example: "60ms" },
  floor: { option: "--floor", units: TIMES, least: 2, most: 60, example: "10s" }
};
function pingSettingsFrom(given) {
  const values = {};
  const problems = [];
  for (const name of Object.keys(ASKED)) {
    const text = given[name];
    if (text === void 0) continue;
    const value = settingOf(text, ASKED[name]);
    if (value.ok) values[name] = value.value;
    else problems.push(...value.problems);
  }
  if (problems.length > 0) return failed(...problems);
  return ok({
    thresholdDb: values.threshold ?? USUAL_SETTINGS.thresholdDb,
    attackDb: values.attack ?? USUAL_SETTINGS.attackDb,
    apartSeconds: values.apart ?? USUAL_SETTINGS.apartSeconds,
    floorSeconds: values.floor ?? USUAL_SETTINGS.floorSeconds
  });
}
function settingOf(text, { option, units, least: least2, most, example }) {
  const written = writtenQuantity(text);
  const value = written ? written.value * (units[written.unit] ?? Number.NaN) : Number.NaN;
  if (value >= least2 && value <= most) return ok(value);
  const [unit] = Object.keys(units);
  const factor = units[unit];
  const bounds = `${least2 / factor} to ${most / factor} ${unit === "db" ? "dB" : unit}`;
  return failed({
    code: "command/ping-setting",
    where: option,
    what: `"${text}" cannot be used`,
    expected: `${bounds}, with its unit`,
    fix: `${option} ${example}`
  });
}

// src/cli/recordingStart.ts
var DAY_SECONDS = 86400;
var UNKNOWN = {
  started: { secondsOfDay: null, elapsedSeconds: null },
  log: null,
  notes: [],
  isFahrenheit: false
};
async function recordingStart(options) {
  const { log, started } = options;
  const moment = started === void 0 ? null : parseMoment(started);
  if (started !== void 0 && moment === null) return failed(notAMoment(started));
  if (log === void 0) return ok(moment === null ? UNKNOWN : withoutLog(moment));
  if (moment === null) return failed(noStart(log));
  const logOptions = logOptionsFrom(options);
  if (!logOptions.ok) return logOptions;
  const files = await readFiring(log, {
    options: logOptions.value,
    recordPath: null,
    schedulePath: null
  });
  return files.ok ? onLog(files.value, moment, started ?? "") : files;
}
function withoutLog(moment) {
  return {
    ...UNKNOWN,
    started: moment.kind === "clock" ? { secondsOfDay: moment.secondsOfDay, elapsedSeconds: null } : { secondsOfDay: null, elapsedSeconds: moment.seconds }
  };
}
function onLog({ reading, record }, moment, said) {
  const curves = reading.channels.flatMap(
    ({ name, role, curve }) => role === "temperature" && curve !== null ? [{ name, curve }] : []
  );
  const [first, ...others] = curves;
  if (!first) return failed(noTemperatures(reading.name));
  const placed = placeMoment(moment, reading);
  if (placed === null) return failed(noClock(reading.name, said));
  const hottest = others.reduce(
    (best, each) => peakOf(each.curve).tempC > peakOf(best.curve).tempC ? each : best,
    first
  );
  const peakAtSeconds = peakOf(hottest.curve).seconds;
  const unloading = placedUnloading(reading, { curve: hottest.curve, peakAtSeconds }, record);
  if (!unloading.ok) return unloading;
  const unloaded = unloading.value;
  const { startedSeconds, notes } = onTheWayDown(placed, moment, {
    peakAtSeconds,
    lastSeconds: Math.max(hottest.curve.timesSeconds.at(-1) ?? 0, unloaded?.atSeconds ?? 0)
  });
  const ofDay = reading.startOfDaySeconds;
  return ok({
    started: {
      secondsOfDay: ofDay === null ? null : (ofDay + startedSeconds) % 86400,
      elapsedSeconds: startedSeconds
    },
    log: {
      logName: reading.name,
      channel: hottest.name,
      curve: hottest.curve,
      startedSeconds,
      unloaded: unloaded === null || unloaded.atSeconds === null ? null : { seconds: unloaded.atSeconds, tempC: unloaded.tempC }
    },
    notes,
    isFahrenheit: reading.unit === "F"
  });
}
function onTheWayDown(placed, moment, { peakAtSeconds, lastSeconds }) {
  const isFree = moment.kind === "clock" && moment.date === null;
  const days = Math.max(0, Math.ceil((peakAtSeconds - placed) / DAY_SECONDS));
  const later = placed + days * DAY_SECONDS;
  if (!isFree || days === 0 || later > lastSeconds) return { startedSeconds: placed, notes: [] };
  return {
    startedSeconds: later,
    notes: [
      "its time of day comes more than once in the log and was taken on the way down; put the date into --started to be sure"
    ]
  };
}
function notAMoment(said) {
  return {
    code: "pings/not-a-moment",
    where: "--started",
    what: `"${said}" is not a moment`,
    expected: MOMENT_FORMS,
    fix: '--started "21:05"'
  };
}
function noStart(log) {
  return {
    code: "pings/no-start",
    where: "--log",
    what: `nothing says when the recording began, so ${log} cannot be laid beside it`,
    expected: `--started with ${MOMENT_FORMS}`,
    fix: '--started "21:05"'
  };
}
function noClock(log, said) {
  return {
    code: "pings/no-clock",
    where: "--started",
    what: `"${said}" is a clock time, and ${log} has no clock or no date to place it on`,
    expected: "a time since the start of the log (h:mm)",
    fix: '--started "+14:05"'
  };
}
function noTemperatures(log) {
  return {
    code: "pings/no-temperatures",
    where: log,
    what: "no temperature column has two readings or more",
    expected: "a column of temperatures",
    fix: "name the column with --column"
  };
}

// src/cli/commands/pings.ts
async function run(path, options) {
  const settings = pingSettingsFrom(options);
  const start = await recordingStart(options);
  if (!settings.ok || !start.ok)
    return refuse(
      [settings, start].flatMap((result) => result.ok ? [] : result.problems),
      options
    );
  const read = await readSound(path, {
    channel: options.channel ?? null,
    settings: settings.value,
    progress: (seconds, whole) => say(`heard ${printDuration(seconds)} of ${printDuration(whole)}`, options)
  });
  if (!read.ok) return refuse(read.problems, options);
  const { sound, heard } = read.value;
  const clipped = options.clipped ? null : clippedProblem(heard.pings, path);
  if (clipped !== null) return refuse([clipped], options);
  const { started, log, notes } = start.value;
  const review = reviewPings({
    sound: { ...sound, notes: [...sound.notes, ...notes] },
    heard,
    started,
    log
  });
  const unit = options.unit ?? (start.value.isFahrenheit ? "F" : "C");
  const charts = pingsCharts(review, unit);
  const written = await writePictures(options, {
    html: async () => pingsHtml(review, { unit, charts: await drawn2(charts) }),
    picture: () => reviewPicture(Object.values(charts).map((chart) => chart(false)))
  });
  if (!written.ok) return refuse(written.problems, options);
  if (options.json) answerJson(pingsDocument(review));
  else answer(pingsText(review, { unit, paint: paintFor(options) }));
  return hasWarning(review.findings) ? EXIT.no : EXIT.fine;
}
export {
  run
};
