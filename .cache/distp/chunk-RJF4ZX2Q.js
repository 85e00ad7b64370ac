import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  curveRows,
  rowPixels
} from "./chunk-ELCCSIMJ.js";
import {
  LABEL_SIZE,
  LINE_HEIGHT,
  PLOT_WIDTH,
  VEGA_LITE_SCHEMA,
  acrossAxis,
  bandRange,
  clockText,
  coolingRate,
  densely,
  drawn,
  evenTicks,
  freestBox,
  hourTicks,
  isFree,
  keyLayers,
  labelLayers,
  labelWidth,
  leaderLayer,
  lineLayer,
  pixelAt,
  placing,
  roundUp,
  spot,
  spread,
  stroke,
  styleAt,
  temperature,
  temperatureTicks,
  theme,
  themeConfig,
  upAxis
} from "./chunk-LCZWALSP.js";
import {
  AT_PEAK,
  linedUp
} from "./chunk-6U5UKUNG.js";
import {
  limitingRateAt
} from "./chunk-GKWIKIYP.js";
import {
  cumulateBudget,
  heatworkAtClock,
  logOf,
  runningPeakC
} from "./chunk-4ME6ZCIX.js";
import {
  anchored,
  coneModel
} from "./chunk-XM3JYZUM.js";
import {
  SAFE_RATIO,
  isJudged
} from "./chunk-BX5CJHE4.js";
import {
  sliced
} from "./chunk-S4DLFBTW.js";
import {
  makeCurve
} from "./chunk-M4BL2XKO.js";
import {
  CRISTOBALITE_BAND,
  QUARTZ_BAND,
  hasCristobalite,
  hottestZone,
  localSlopes,
  peakOf,
  temperatureAt
} from "./chunk-VFKPH3SJ.js";
import {
  printDuration,
  printElapsed,
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import {
  kelvinFromCelsius
} from "./chunk-R2H4YYDI.js";
import {
  wrappedToWidth
} from "./chunk-OEDHJ3SZ.js";

// src/core/cones/heatworkTrace.ts
var FIRST_SHOWN = 0.02;
var LAST_SHOWN = 2;
var SETTLED = 0.999;
function heatworkTrace(input) {
  const offsetK = input.offsetK ?? 0;
  const points = input.points ?? 121;
  if (points < 2) throw new RangeError(`heatworkTrace: ${points} points`);
  return input.cones.map((cone) => {
    const model = coneModel(input.series, cone);
    const window = fallingWindow(input.curve, heatworkAlong(model, input.curve, offsetK));
    const wanted = Float64Array.from(
      { length: points },
      (_, i) => window.from + (window.to - window.from) * i / (points - 1)
    );
    wanted[points - 1] = window.to;
    const finer = withPointsAt(input.curve, wanted);
    const heatwork = heatworkAlong(model, finer, offsetK);
    return { cone, timesSeconds: wanted, heatwork: pick(finer.timesSeconds, heatwork, wanted) };
  });
}
function heatworkAlong(model, curve, offsetK) {
  const peaksC = runningPeakC(curve.tempsC);
  const budget = new Float64Array(peaksC.length);
  cumulateBudget(model, { curve, offsetK, peakC: peaksC.at(-1) }, budget);
  let most = 0;
  return budget.map((value, i) => {
    const peakK = kelvinFromCelsius(peaksC[i]) + offsetK;
    if (value > 0) most = Math.max(most, anchored(model, peakK, logOf(value)).heatwork);
    return most;
  });
}
function fallingWindow(curve, heatwork) {
  const final = heatwork.at(-1);
  const start = heatwork.findIndex((value) => value >= FIRST_SHOWN * Math.min(1, final));
  const end = heatwork.findIndex((value) => value >= Math.min(LAST_SHOWN, SETTLED * final));
  return {
    from: curve.timesSeconds[Math.max(0, start - 1)],
    to: curve.timesSeconds[Math.max(1, end)]
  };
}
function withPointsAt(curve, wanted) {
  const { timesSeconds, tempsC, gaps } = curve;
  const times = [];
  const temps = [];
  let next = 0;
  for (let i = 0; i < timesSeconds.length; i++) {
    const end = timesSeconds[i];
    const start = timesSeconds[i - 1];
    const inGap = gaps.some((gap) => gap.fromSeconds === start);
    for (; next < wanted.length && wanted[next] <= end; next++) {
      const at = wanted[next];
      if (i === 0 || inGap || at <= start || at === end) continue;
      const share = (at - start) / (end - start);
      times.push(at);
      temps.push(
        tempsC[i - 1] + share * (tempsC[i] - tempsC[i - 1])
      );
    }
    times.push(end);
    temps.push(tempsC[i]);
  }
  return makeCurve(times, temps, gaps);
}
function pick(times, values, wanted) {
  let at = 0;
  return wanted.map((time) => {
    while (at + 1 < times.length && times[at + 1] <= time) at++;
    return values[at];
  });
}

// src/core/firing/alignmentWords.ts
function alignmentWords(alignment, unit) {
  if (alignment.at === "peak")
    return {
      title: "Firings aligned at the peak",
      subtitle: "Each firing with its peak at 0 h",
      zero: "the peak",
      where: "at their peaks"
    };
  if (alignment.at === "start")
    return {
      title: "Firings aligned at the start",
      subtitle: "Each log with its first reading at 0 h",
      zero: "the first reading",
      where: "from the first readings of their logs"
    };
  const { at, tempC } = alignment;
  const temp = printTemperature(tempC, unit);
  const way = at === "rising" ? "rises" : "falls";
  return {
    title: `Firings aligned at ${temp}, ${at}`,
    subtitle: `Each firing at 0 h as it first ${way} through ${temp}${at === "falling" ? " after its peak" : ""}`,
    zero: `${temp}, ${at}`,
    where: `where they first ${at === "rising" ? "rise" : "fall"} through ${temp}${at === "falling" ? " after the peak" : ""}`
  };
}

// src/core/ware/limitCurve.ts
var FROM_C = 700;
var TO_C = 100;
var PLAIN_TO_C = 300;
var STEP_C = 10;
function limitCurve(ware) {
  const toC = hasCristobalite(ware.body) ? TO_C : PLAIN_TO_C;
  return Array.from({ length: (FROM_C - toC) / STEP_C + 1 }, (_, i) => {
    const tempC = FROM_C - i * STEP_C;
    return { tempC, rateCPerHour: 0 - limitingRateAt(ware, { tempC, ratio: SAFE_RATIO }) };
  });
}

// src/core/charts/causesChart.ts
var CELL_WIDTH = 84;
var CELL_HEIGHT = 40;
var LOOKS = {
  cannot: { word: "cannot", opacity: 0.85 },
  partly: { word: "", opacity: 0.3 },
  apart: { word: "told apart", opacity: 0 },
  contained: { word: "part of it", opacity: 0 }
};
function causesChart({ title, confounding, dark }) {
  const { causes, pairs, tiles } = confounding;
  if (causes.length < 2) throw new RangeError("causesChart: fewer than two causes");
  const colours = theme(dark);
  const names = causes.map(({ name }) => name);
  const [across, down] = [names.slice(0, -1), names.slice(1)];
  const rows = pairs.map((pair) => rowOf(pair));
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(title, pairs),
    title: {
      text: title,
      subtitle: [...subtitleOf(tiles, pairs)]
    },
    background: colours.paper,
    padding: 18,
    width: across.length * CELL_WIDTH,
    height: down.length * CELL_HEIGHT,
    layer: [...["cannot", "partly", "apart", "contained"]].flatMap(
      (telling) => cellLayers(
        rows.filter((row) => row.telling === telling),
        { telling, colours, places: placesOf(across, down) }
      )
    ),
    config: themeConfig(colours)
  };
}
function subtitleOf(tiles, pairs) {
  const has = (telling) => pairs.some((pair) => pair.telling === telling);
  return [
    `${tiles} tiles, cause by cause`,
    ...has("cannot") ? ["cannot: changed together, so nobody can say which counts"] : [],
    ...has("partly") ? ["%: how much the one explains of the other"] : [],
    ...has("contained") ? ["part of it: belongs to the firing as a whole"] : []
  ];
}
function rowOf({ first, second, telling, shared }) {
  const { word } = LOOKS[telling];
  return {
    first,
    second,
    telling,
    word: word === "" ? `${Math.min(99, Math.round(100 * shared))} %` : word
  };
}
function placesOf(across, down) {
  const axis = { title: null, domain: false, grid: false };
  return {
    x: {
      field: "first",
      type: "nominal",
      scale: { domain: [...across], paddingInner: 0.06, paddingOuter: 0 },
      axis: {
        ...axis,
        orient: "bottom",
        labelAngle: 0,
        labelLimit: CELL_WIDTH,
        labelExpr: WORDS_BELOW,
        labelBaseline: "top"
      }
    },
    y: {
      field: "second",
      type: "nominal",
      scale: { domain: [...down], paddingInner: 0.1, paddingOuter: 0 },
      axis: { ...axis, labelLimit: 220 }
    }
  };
}
var WORDS_BELOW = "split(datum.label, ' ')";
function cellLayers(rows, by) {
  const { telling, colours, places } = by;
  if (rows.length === 0) return [];
  const { opacity } = LOOKS[telling];
  const isFull = telling === "cannot";
  return [
    {
      data: { values: [...rows] },
      mark: {
        type: "rect",
        fill: colours.ember,
        fillOpacity: opacity,
        stroke: isFull || telling === "partly" ? colours.ember : colours.grid,
        strokeWidth: 1.2
      },
      encoding: places
    },
    {
      data: { values: [...rows] },
      mark: {
        type: "text",
        fontSize: 13,
        fontWeight: isFull ? 600 : 400,
        color: isFull ? colours.paper : telling === "partly" ? colours.ink : colours.quiet
      },
      encoding: { ...places, text: { field: "word", type: "nominal" } }
    }
  ];
}
function descriptionOf(title, pairs) {
  const of = (telling) => pairs.filter((pair) => pair.telling === telling).map(({ first, second }) => `${first} with ${second}`);
  const said = [
    ["cannot be told apart", of("cannot")],
    ["partly mixed", of("partly")],
    ["told apart", of("apart")]
  ];
  const words = said.flatMap(
    ([what, list]) => list.length === 0 ? [] : [`${what}: ${list.join(", ")}`]
  );
  return `${title}: pairs of causes, ${words.join("; ")}.`;
}

// src/core/charts/conesChart.ts
var HEIGHT = 260;
var TOP = 1.3;
var BENDING = [
  { heatwork: heatworkAtClock(0).heatwork, words: "starts to bend" },
  { heatwork: heatworkAtClock(3).heatwork, words: "half down" }
];
function conesChart(input) {
  if (input.traces.length === 0) throw new RangeError("conesChart: no traces");
  const colours = theme(input.dark);
  const lines = input.traces.map((trace, i) => lineOf(trace, styleAt(colours.compared, i)));
  const frame = frameOf(lines);
  const places = {
    xField: "elapsedHours",
    yField: "heatwork",
    x: acrossAxis("Elapsed time (h)", frame.x, hourTicks(frame.x[0], frame.x[1])),
    y: levelAxis(frame)
  };
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf2(input, lines),
    title: {
      text: input.title,
      subtitle: "Heatwork of each cone as a share of what brings it down"
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...levelLayers(places, frame, colours),
      ...lines.map((line) => lineLayer(places, rowsOf(line, frame), line.style, "elapsedHours")),
      ...labelLayers(places, frame, topLabels(lines, frame), colours.ink, colours.paper),
      ...keyLayers(
        places,
        frame,
        lines.filter((line) => line.leavesHours === null).map((line) => ({
          name: `cone ${line.cone}`,
          details: [stateText(line)],
          nearY: pixelAt(frame, 0, line.last).y,
          style: line.style
        })),
        colours
      )
    ],
    config: themeConfig(colours)
  };
}
function lineOf(trace, style) {
  const last = trace.heatwork.at(-1) ?? 0;
  return { ...trace, style, last, downHours: hoursAt(trace, 1), leavesHours: hoursAt(trace, TOP) };
}
function hoursAt({ timesSeconds, heatwork }, level) {
  const i = heatwork.findIndex((value) => value >= level);
  if (i < 0) return null;
  const to = timesSeconds[i];
  if (i === 0) return to / 3600;
  const from = timesSeconds[i - 1];
  const below = heatwork[i - 1];
  return (from + (level - below) / (heatwork[i] - below) * (to - from)) / 3600;
}
function frameOf(lines) {
  const all = lines.flatMap((line) => [
    line.timesSeconds[0],
    line.timesSeconds.at(-1)
  ]);
  const begins = lines.map((line) => hoursAt(line, 0.02)).filter((hours) => hours !== null);
  const ends = lines.map((line) => line.leavesHours ?? hoursAt(line, line.last * 0.995)).filter((hours) => hours !== null);
  const from = begins.length > 0 ? Math.min(...begins) : Math.min(...all) / 3600;
  const to = ends.length > 0 && Math.max(...ends) > from ? Math.max(...ends) : Math.max(...all) / 3600;
  const margin = (to - from) * 0.06;
  return {
    width: PLOT_WIDTH,
    height: HEIGHT,
    x: [
      drawn(Math.max(Math.min(...all) / 3600, from - margin)),
      drawn(Math.min(Math.max(...all) / 3600, to + margin))
    ],
    y: [0, TOP]
  };
}
function levelAxis(frame) {
  const plain = upAxis("Heatwork (1 = down)", frame.y, [
    0,
    ...BENDING.map((level) => level.heatwork),
    1
  ]);
  return { ...plain, axis: { ...plain.axis, grid: false } };
}
function levelLayers(places, frame, colours) {
  const levels = [...BENDING, { heatwork: 1, words: "down" }];
  const rule = (heatwork, mark) => ({
    data: { values: frame.x.map((elapsedHours) => ({ elapsedHours, heatwork })) },
    mark: { type: "line", ...mark },
    encoding: placing(places)
  });
  const labels = levels.map(
    ({ heatwork, words }) => ({
      text: words,
      at: { x: 2, y: pixelAt(frame, 0, heatwork).y - 10 },
      align: "left"
    })
  );
  return [
    ...BENDING.map(
      ({ heatwork }) => rule(heatwork, { color: colours.quiet, strokeWidth: 0.7, strokeDash: [2, 3] })
    ),
    rule(1, { color: colours.ink, strokeWidth: 1.2 }),
    ...labelLayers(places, frame, labels, colours.quiet, colours.paper)
  ];
}
function rowsOf(line, frame) {
  const rows = [];
  for (let i = 0; i < line.heatwork.length; i++) {
    const elapsedHours = line.timesSeconds[i] / 3600;
    const heatwork = line.heatwork[i];
    if (elapsedHours < frame.x[0]) continue;
    if (elapsedHours > frame.x[1]) break;
    rows.push({ elapsedHours: drawn(elapsedHours), heatwork: drawn(heatwork), piece: 0 });
    if (heatwork > TOP) break;
  }
  if (line.leavesHours === null)
    rows.push({ elapsedHours: frame.x[1], heatwork: drawn(line.last), piece: 0 });
  const stride = Math.ceil(rows.length / 600);
  return rows.filter((_, i) => i % stride === 0 || i === rows.length - 1);
}
function topLabels(lines, frame) {
  const leaving = lines.filter((line) => line.leavesHours !== null);
  const widest = Math.max(0, ...leaving.map((line) => labelWidth(stateText(line))));
  const xs = spread(
    leaving.map((line) => pixelAt(frame, line.leavesHours, 0).x),
    widest + 10,
    100 + widest / 2,
    frame.width
  );
  return leaving.flatMap((line, i) => {
    const x = xs[i];
    return [
      { text: `cone ${line.cone}`, at: { x, y: -28 }, align: "center" },
      { text: stateText(line), at: { x, y: -11 }, align: "center" }
    ];
  });
}
function stateText(line) {
  return line.downHours === null ? `heatwork ${line.last.toFixed(2)}` : `down at ${printElapsed(line.downHours * 3600)} h`;
}
function descriptionOf2(input, lines) {
  const states = lines.map(
    (line) => `cone ${line.cone} ${line.downHours === null ? `reaches ${line.last.toFixed(2)}` : stateText(line)}`
  );
  return `${input.title}: heatwork of each cone over time, where 1 is down; ${states.join(", ")}.`;
}

// src/core/charts/coolingLine.ts
var SLOPE_WINDOW_SECONDS = 15 * 60;
var STRETCH_SECONDS = 5 * 60;
var SHORT_PIECE_SECONDS = 20 * 60;
function measuredCooling(curve) {
  const slopes = localSlopes(curve, SLOPE_WINDOW_SECONDS);
  const points = [];
  let piece = 0;
  for (let i = peakOf(curve).index; i < slopes.length; i++) {
    const rateCPerHour = slopes[i];
    if (Number.isNaN(rateCPerHour)) piece += 1;
    else
      points.push({
        seconds: curve.timesSeconds[i],
        tempC: curve.tempsC[i],
        rateCPerHour,
        piece
      });
  }
  return fastestOfEach(points);
}
function plannedCooling(curve) {
  const cooling = sliced(curve, peakOf(curve).seconds, curve.timesSeconds.at(-1));
  if (!cooling) return [];
  const { timesSeconds, tempsC } = cooling;
  return Array.from(timesSeconds.subarray(1), (to, i) => {
    const from = timesSeconds[i];
    const fromC = tempsC[i];
    const fallC = tempsC[i + 1] - fromC;
    return sharesOf(to - from).map((share) => ({
      seconds: from + (to - from) * share,
      tempC: fromC + fallC * share,
      rateCPerHour: 3600 * fallC / (to - from),
      piece: 0
    }));
  }).flat();
}
function sharesOf(seconds) {
  if (seconds <= SHORT_PIECE_SECONDS) return [0.5];
  const steps = Math.ceil(seconds / STRETCH_SECONDS);
  return Array.from({ length: steps + 1 }, (_, step) => step / steps);
}
function coolingRows(points, unit) {
  const temp = temperature(unit);
  const rate = coolingRate(unit);
  return points.map((point) => ({
    elapsedHours: drawn(point.seconds / 3600),
    [temp.field]: drawn(temp.shown(point.tempC)),
    [rate.field]: drawn(rate.shown(point.rateCPerHour)),
    piece: point.piece
  }));
}
function fastestOfEach(points) {
  const fastest = /* @__PURE__ */ new Map();
  for (const point of points) {
    const stretch = Math.floor(point.seconds / STRETCH_SECONDS);
    const best = fastest.get(stretch);
    if (!best || point.rateCPerHour < best.rateCPerHour) fastest.set(stretch, point);
  }
  const kept = new Set(fastest.values());
  return points.filter(
    (point, i) => kept.has(point) || point.piece !== points[i - 1]?.piece || point.piece !== points[i + 1]?.piece
  );
}

// src/core/charts/coolingLimits.ts
function limitSteps(places, limits, unit, colours) {
  if (limits.length === 0) return [];
  const temp = temperature(unit);
  const rate = coolingRate(unit);
  const rows = limits.map(({ band, limitCPerHour }) => ({
    band: band.name,
    [temp.field]: drawn(temp.shown(band.highC)),
    low: drawn(temp.shown(band.lowC)),
    [rate.field]: drawn(rate.shown(-limitCPerHour)),
    foot: 0
  }));
  return [
    {
      data: { values: rows },
      mark: { type: "rect", color: colours.band, opacity: colours.bandOpacity },
      encoding: { ...placing(places), x2: { field: "low" }, y2: { field: "foot" } }
    },
    {
      data: { values: rows },
      mark: { type: "rule", color: colours.ember, strokeWidth: 2.4 },
      encoding: { ...placing(places), x2: { field: "low" } }
    }
  ];
}
function limitNames(places, frame, limits, unit, lines, colours) {
  const boxes = [];
  const labels = [];
  const leaders = [];
  for (const limit of limits) {
    const text = `${limit.label}: ${printRate(limit.limitCPerHour, unit)}`;
    const step = middleOf(limit, frame, unit);
    const others = limits.filter((each) => each !== limit);
    const covering = [...lines, ...others.flatMap((each) => stepPixels(each, frame, unit))];
    const box = freestBox(above(step, labelWidth(text)), { lines: covering, boxes }, frame);
    boxes.push(box);
    labels.push({ text, at: { x: box.left, y: (box.top + box.bottom) / 2 }, align: "left" });
    const x = Math.min(Math.max(step.x, box.left + 12), box.right - 16);
    const isAside = step.x < box.left || step.x > box.right;
    if (isAside || step.y - box.bottom > LINE_HEIGHT) leaders.push([{ x, y: box.bottom }, step]);
  }
  return [
    ...leaderLayer(places, frame, leaders, colours.quiet),
    ...labelLayers(places, frame, labels, colours.ink, colours.paper)
  ];
}
function overLimit(points, limits) {
  return points.filter(
    ({ tempC, rateCPerHour }) => limits.some(
      ({ band, limitCPerHour, isBroken }) => isBroken && tempC >= band.lowC && tempC <= band.highC && 0 - rateCPerHour > limitCPerHour
    )
  );
}
function overLimitDots(places, points, unit, colours) {
  if (points.length === 0) return [];
  return [
    {
      data: { values: [...coolingRows(points, unit)] },
      mark: {
        type: "point",
        shape: "circle",
        size: 26,
        filled: true,
        opacity: 1,
        clip: true,
        color: colours.ember
      },
      encoding: placing(places)
    }
  ];
}
function middleOf({ band, limitCPerHour }, frame, unit) {
  return pixelAt(
    frame,
    temperature(unit).shown((band.lowC + band.highC) / 2),
    coolingRate(unit).shown(-limitCPerHour)
  );
}
function stepPixels(limit, frame, unit) {
  const { y } = middleOf(limit, frame, unit);
  const xOf = (tempC) => pixelAt(frame, temperature(unit).shown(tempC), 0).x;
  return densely([
    { x: xOf(limit.band.highC), y },
    { x: xOf(limit.band.lowC), y }
  ]);
}
function above(step, width) {
  return [2, 22, 40, 60, 80, 105, 130, 155, 180, 205].flatMap(
    (up) => [-width / 2, -20, 20 - width, 30, -width - 30].map((aside) => ({
      left: step.x + aside,
      right: step.x + aside + width,
      top: step.y - up - LINE_HEIGHT,
      bottom: step.y - up
    }))
  );
}

// src/core/charts/coolingChart.ts
var HEIGHT2 = 260;
var LIMITS_HIGH = 5;
var SHOWN_WHOLE_BELOW_C = 700;
function coolingChart(input) {
  const colours = theme(input.dark);
  const lines = linesOf(input, colours);
  const frame = frameOf2(lines, input);
  const places = {
    xField: temperature(input.unit).field,
    yField: coolingRate(input.unit).field,
    x: acrossAxis(`${temperature(input.unit).title}, falling`, frame.x, ticksOf(frame, input.unit)),
    y: upAxis(coolingRate(input.unit).title, frame.y, evenTicks(0, frame.y[1], 5))
  };
  const withRows = lines.map((line) => ({ ...line, rows: coolingRows(line.points, input.unit) }));
  const pixels = withRows.flatMap(
    (line) => rowPixels(line.rows, places.xField, places.yField, frame)
  );
  const limitRows = limitCurveRows(input);
  const limitPixels = rowPixels(limitRows, places.xField, places.yField, frame);
  const tooFast = overLimit(judgedPoints(lines), input.limits);
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf3(input, lines, tooFast.length > 0),
    title: {
      text: input.title,
      subtitle: lines.some((line) => line.isMeasured) ? "After the peak; measured over 15 minutes at a time" : "After the peak"
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...limitSteps(places, input.limits, input.unit, colours),
      ...limitRows.length > 0 ? [lineLayer(places, limitRows, colours.computed, "order")] : [],
      ...withRows.map((line) => lineLayer(places, line.rows, line.style, "elapsedHours")),
      ...overLimitDots(places, tooFast, input.unit, colours),
      ...limitNames(places, frame, input.limits, input.unit, [...pixels, ...limitPixels], colours),
      ...labelLayers(places, frame, notes(lines, frame, input), colours.quiet, colours.paper),
      ...keyLayers(
        places,
        frame,
        keyEntries(lines, frame, tooFast.length > 0, input, colours),
        colours
      )
    ],
    config: themeConfig(colours)
  };
}
function linesOf(input, colours) {
  const measured = input.zones.map(({ name, curve }, i) => ({
    name,
    points: measuredCooling(curve),
    style: styleAt(colours.measured, i),
    isMeasured: true
  }));
  const planned = input.planned ? [
    {
      name: "planned",
      points: plannedCooling(input.planned),
      style: measured.length > 0 ? colours.planned : styleAt(colours.measured, 0),
      isMeasured: false
    }
  ] : [];
  return [...measured, ...planned].filter((line) => line.points.length > 0);
}
function frameOf2(lines, input) {
  const { shown } = temperature(input.unit);
  const rate = coolingRate(input.unit).shown;
  const points = lines.flatMap((line) => line.points);
  const temps = [
    ...points.map((point) => point.tempC),
    ...input.limits.flatMap(({ band }) => [band.lowC, band.highC])
  ];
  const limits = input.limits.map((limit) => limit.limitCPerHour);
  const low = points.filter((point) => point.tempC < SHOWN_WHOLE_BELOW_C).map((point) => 0 - point.rateCPerHour);
  const all = points.map((point) => 0 - point.rateCPerHour);
  const highestLimit = Math.max(0, ...limits);
  const everything = Math.max(10, 1.1 * Math.max(0, ...all), 1.5 * highestLimit);
  const readable = Math.max(1.15 * Math.max(0, ...low), LIMITS_HIGH * highestLimit);
  const wanted = highestLimit > 0 ? Math.min(everything, readable) : everything;
  return {
    width: PLOT_WIDTH,
    height: HEIGHT2,
    x: [
      drawn(shown(temps.length > 0 ? Math.max(...temps) : 1e3)),
      drawn(shown(temps.length > 0 ? Math.min(...temps) : 0))
    ],
    y: [0, roundUp(rate(-wanted))]
  };
}
function limitCurveRows({ limitCurve: limitCurve2, unit }) {
  const temp = temperature(unit);
  const rate = coolingRate(unit);
  return (limitCurve2?.points ?? []).map((point, order) => ({
    order,
    [temp.field]: drawn(temp.shown(point.tempC)),
    [rate.field]: drawn(rate.shown(point.rateCPerHour)),
    piece: 0
  }));
}
function ticksOf(frame, unit) {
  const step = unit === "C" ? 100 : 200;
  const first = Math.floor(frame.x[0] / step);
  const last = Math.ceil(frame.x[1] / step);
  return Array.from({ length: Math.max(0, first - last + 1) }, (_, i) => (first - i) * step);
}
function notes(lines, frame, input) {
  const fastest = fastestPoint(lines);
  if (!fastest)
    return [
      {
        text: "no cooling after the peak yet",
        at: { x: frame.width / 2, y: frame.height / 2 },
        align: "center"
      }
    ];
  if (coolingRate(input.unit).shown(fastest.rateCPerHour) <= frame.y[1]) return [];
  const text = `\u2191 up to ${printRate(fastest.rateCPerHour, input.unit)} at ${printTemperature(fastest.tempC, input.unit)}`;
  const half = labelWidth(text) / 2;
  const { x } = pixelAt(frame, temperature(input.unit).shown(fastest.tempC), 0);
  return [
    {
      text,
      at: { x: Math.min(Math.max(x, half + 110), frame.width - half), y: -11 },
      align: "center"
    }
  ];
}
function fastestPoint(lines) {
  const [first, ...others] = judgedPoints(lines);
  if (!first) return null;
  return others.reduce((a, b) => b.rateCPerHour < a.rateCPerHour ? b : a, first);
}
function judgedPoints(lines) {
  const measured = lines.filter((line) => line.isMeasured);
  return (measured.length > 0 ? measured : lines).flatMap((line) => line.points);
}
function keyEntries(lines, frame, isTooFast, input, colours) {
  const { shown } = coolingRate(input.unit);
  const entries = lines.map(({ name, style, points }) => {
    const last = points.at(-1);
    return {
      name,
      details: [],
      style,
      nearY: pixelAt(frame, 0, Math.min(frame.y[1], Math.max(0, shown(last.rateCPerHour)))).y
    };
  });
  const over = { name: "over the guide", details: [], dot: colours.ember, nearY: 0 };
  return [...isTooFast ? [over] : [], ...entries, ...limitCurveEntry(frame, input, colours)];
}
function limitCurveEntry(frame, { limitCurve: limitCurve2, unit }, colours) {
  const lowest = Math.min(
    ...(limitCurve2?.points ?? []).map(({ rateCPerHour }) => coolingRate(unit).shown(rateCPerHour))
  );
  if (!limitCurve2 || lowest > frame.y[1]) return [];
  return [
    {
      name: limitCurve2.label,
      details: [],
      style: colours.computed,
      nearY: pixelAt(frame, 0, lowest).y
    }
  ];
}
function descriptionOf3(input, lines, isTooFast) {
  const limits = input.limits.map(
    ({ label, limitCPerHour }) => `${label} ${printRate(limitCPerHour, input.unit)}`
  );
  const over = isTooFast ? "; dots mark where it was over a guide" : "";
  const names = lines.map((line) => line.name).join(", ");
  const steps = limits.length > 0 ? `, with steps for ${limits.join(" and ")}` : "";
  const changing = input.limitCurve ? `; dashed: ${input.limitCurve.label}` : "";
  return `${input.title}: cooling rate against falling temperature after the peak (${names})${steps}${changing}${over}.`;
}

// src/core/charts/drawnPrediction.ts
var DRAWN_TO_C = 100;
function drawnPrediction({ firing }, planned) {
  const { timesSeconds, tempsC } = firing.curve;
  const cold = firing.cooledTo.find(({ tempC }) => tempC === DRAWN_TO_C);
  const untilSeconds = Math.max(
    planned.timesSeconds.at(-1),
    firing.endSeconds ?? 0,
    cold?.seconds ?? Number.POSITIVE_INFINITY
  );
  const kept = Math.max(2, timesSeconds.filter((seconds) => seconds <= untilSeconds).length);
  return makeCurve(timesSeconds.slice(0, kept), tempsC.slice(0, kept));
}

// src/core/charts/bandStrips.ts
function bandStrips(places, frame, bands, unit, colours) {
  if (bands.length === 0) return [];
  const { shown, field } = temperature(unit);
  return [
    {
      data: {
        values: bands.map((band) => ({
          band: band.name,
          elapsedHours: frame.x[0],
          endHours: frame.x[1],
          [field]: drawn(shown(band.lowC)),
          high: drawn(shown(band.highC))
        }))
      },
      mark: { type: "rect", color: colours.band, opacity: colours.bandOpacity },
      encoding: { ...placing(places), x2: { field: "endHours" }, y2: { field: "high" } }
    }
  ];
}
function stripBoxes(frame, bands, unit) {
  const { shown } = temperature(unit);
  return bands.map((band) => ({
    left: 0,
    right: frame.width,
    top: pixelAt(frame, 0, shown(band.highC)).y,
    bottom: pixelAt(frame, 0, shown(band.lowC)).y
  }));
}
function bandLabels(frame, bands, unit, obstacles) {
  return bands.map((band) => {
    const [whole, short] = [`${band.name}, ${bandRange(band, unit)}`, band.name].map((text2) => ({
      text: text2,
      box: freestBox(besides(band, labelWidth(text2), frame, unit), obstacles, frame)
    }));
    const { text, box } = isFree(whole.box, obstacles, frame) ? whole : short;
    const at = { x: box.left, y: (box.top + box.bottom) / 2 };
    return { box, label: { text, at, align: "left" } };
  });
}
function besides(band, width, frame, unit) {
  const { shown } = temperature(unit);
  const upper = pixelAt(frame, 0, shown(band.highC)).y;
  const lower = pixelAt(frame, 0, shown(band.lowC)).y;
  const lefts = fromTheMiddle(frame.width - width);
  const over = (bottoms) => lefts.flatMap(
    (left) => bottoms.map((bottom) => ({ left, right: left + width, top: bottom - LINE_HEIGHT, bottom }))
  );
  const isTall = lower - upper > LINE_HEIGHT + 4;
  return [
    ...over([upper, lower + LINE_HEIGHT]),
    ...isTall ? over([(upper + lower + LINE_HEIGHT) / 2]) : []
  ];
}
function fromTheMiddle(room) {
  const middle = room / 2;
  return Array.from(
    { length: Math.max(1, Math.floor(room / 15)) },
    (_, i) => middle + (i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * 15
  );
}

// src/core/charts/firingMarks.ts
var NAMED_CONES = 5;
function coneMarks(places, frame, marks, colours) {
  const named = marks.slice(-NAMED_CONES);
  if (named.length === 0) return { layers: [], boxes: [] };
  const widest = Math.max(...named.map((mark) => labelWidth(mark.text)));
  const leftmost = Math.min(...named.map((mark) => mark.at.x));
  const rightmost = Math.max(...named.map((mark) => mark.at.x));
  const onLeft = leftmost - 16 - widest >= 0;
  const x = onLeft ? leftmost - 16 : rightmost + 16;
  const lowest = Math.max(...named.map((mark) => mark.at.y)) - 3;
  const ys = stair(named, lowest);
  const labels = named.map(
    (mark, i) => ({
      text: mark.text,
      at: { x, y: ys[i] },
      align: onLeft ? "right" : "left"
    })
  );
  const gap = onLeft ? 4 : -4;
  return {
    layers: [
      ...leaderLayer(
        places,
        frame,
        labels.map((label, i) => [{ x: x + gap, y: label.at.y }, named[i].at]),
        colours.quiet
      ),
      symbolLayer(places, frame, marks, "triangle-up", 70, colours),
      ...labelLayers(places, frame, labels, colours.ink, colours.paper)
    ],
    boxes: labels.map((label) => boxOf(label, widest))
  };
}
function stairHeight(count) {
  return Math.min(count, NAMED_CONES) * LINE_HEIGHT + 6;
}
function eventMarks(places, frame, marks, obstacles, colours) {
  if (marks.length === 0) return { layers: [], boxes: [] };
  const boxes = [];
  const labels = [];
  for (const mark of marks) {
    const width = labelWidth(mark.text);
    const box = freestBox(
      around(mark.at, width),
      { ...obstacles, boxes: [...obstacles.boxes, ...boxes] },
      frame
    );
    boxes.push(box);
    const before = box.right < mark.at.x;
    labels.push({
      text: mark.text,
      at: { x: before ? box.right : box.left, y: (box.top + box.bottom) / 2 },
      align: before ? "right" : "left"
    });
  }
  const leaders = marks.map((mark, i) => [
    nearestOn(boxes[i], mark.at),
    mark.at
  ]);
  return {
    layers: [
      ...leaderLayer(places, frame, leaders, colours.quiet),
      symbolLayer(places, frame, marks, "diamond", 60, colours),
      ...labelLayers(places, frame, labels, colours.ink, colours.paper)
    ],
    boxes
  };
}
function symbolLayer(places, frame, marks, shape, size, colours) {
  return {
    data: { values: marks.map((mark) => ({ ...spot(places, frame, mark.at), what: mark.text })) },
    mark: {
      type: "point",
      shape,
      size,
      filled: true,
      color: colours.ink,
      opacity: 1,
      stroke: colours.paper,
      strokeWidth: 1
    },
    encoding: placing(places)
  };
}
function stair(marks, lowest) {
  const order = marks.map((_, i) => lowest - i * 1e-6);
  const wanted = marks.map((mark, i) => Math.min(mark.at.y, order[i]));
  return spread(wanted, LINE_HEIGHT, Number.NEGATIVE_INFINITY, lowest);
}
function around(at, width) {
  return [0, -20, 20, -40, 40, -60, 60, -85, 85, -115, 115].flatMap(
    (down) => [14, 30, 60].flatMap((away) => [
      boxAt(at.x + away, at.y + down, width),
      boxAt(at.x - away - width, at.y + down, width)
    ])
  );
}
function boxAt(left, middle, width) {
  return {
    left,
    right: left + width,
    top: middle - LINE_HEIGHT / 2,
    bottom: middle + LINE_HEIGHT / 2
  };
}
function boxOf(label, width) {
  return boxAt(label.align === "right" ? label.at.x - width : label.at.x, label.at.y, width);
}
function nearestOn(box, at) {
  return {
    x: at.x < box.left ? box.left - 3 : box.right + 3,
    y: (box.top + box.bottom) / 2
  };
}

// src/core/charts/gapStrips.ts
var NARROWEST = 4;
function gapStrips(places, frame, curves, colours) {
  const gaps = commonGaps(curves).filter(
    ({ from, to }) => pixelAt(frame, to, 0).x - pixelAt(frame, from, 0).x >= NARROWEST
  );
  if (gaps.length === 0) return [];
  const labels = gaps.flatMap(
    ({ from, to }) => nameOf(pixelAt(frame, from, 0).x, pixelAt(frame, to, 0).x, frame)
  );
  return [
    {
      data: {
        values: gaps.map(({ from, to }) => ({
          elapsedHours: from,
          endHours: to,
          [places.yField]: frame.y[0],
          top: frame.y[1]
        }))
      },
      mark: { type: "rect", color: colours.grid, opacity: 0.55 },
      encoding: { ...placing(places), x2: { field: "endHours" }, y2: { field: "top" } }
    },
    ...labelLayers(places, frame, labels, colours.quiet, colours.paper)
  ];
}
function commonGaps(curves) {
  const [first, ...others] = curves;
  return (first?.gaps ?? []).flatMap((gap) => {
    const shared = others.map(
      ({ gaps }) => gaps.find((other) => other.fromSeconds < gap.toSeconds && other.toSeconds > gap.fromSeconds)
    );
    if (shared.includes(void 0)) return [];
    const from = Math.max(
      gap.fromSeconds,
      ...shared.map((other) => other?.fromSeconds ?? gap.fromSeconds)
    );
    const to = Math.min(gap.toSeconds, ...shared.map((other) => other?.toSeconds ?? gap.toSeconds));
    return [{ from: drawn(from / 3600), to: drawn(to / 3600) }];
  });
}
function nameOf(left, right, frame) {
  const words = ["no readings", "gap"].find((text) => labelWidth(text) + 6 <= right - left);
  return words ? [{ text: words, at: { x: (left + right) / 2, y: frame.height - 12 }, align: "center" }] : [];
}

// src/core/charts/firingChart.ts
var HEIGHT3 = 420;
function firingChart(input) {
  const colours = theme(input.dark);
  const lines = linesOf2(input, colours);
  const frame = frameOf3(lines, input);
  const places = placesOf2(frame, input);
  const { field } = temperature(input.unit);
  const drawnLines = lines.map((line) => ({ ...line, rows: curveRows(line.curve, input.unit) }));
  const linePixels = drawnLines.flatMap(
    (line) => rowPixels(line.rows, "elapsedHours", field, frame)
  );
  const cones = coneMarks(places, frame, coneTexts(input, frame), colours);
  const bands = bandLabels(frame, input.bands, input.unit, {
    lines: linePixels,
    boxes: cones.boxes
  });
  const taken = [
    ...cones.boxes,
    ...bands.map((band) => band.box),
    ...stripBoxes(frame, input.bands, input.unit)
  ];
  const events = eventMarks(
    places,
    frame,
    eventTexts(input, lines, frame),
    { lines: linePixels, boxes: taken },
    colours
  );
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf4(input, lines),
    title: { text: input.title, subtitle: subtitleOf2(input, lines) },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...bandStrips(places, frame, input.bands, input.unit, colours),
      ...gapStrips(
        places,
        frame,
        input.zones.map((zone) => zone.curve),
        colours
      ),
      ...drawnLines.map((line) => lineLayer(places, line.rows, line.style, "elapsedHours")),
      ...labelLayers(
        places,
        frame,
        bands.map((band) => band.label),
        colours.quiet,
        null
      ),
      ...cones.layers,
      ...events.layers,
      ...clockLayers(places, frame, input.startOfDaySeconds, colours),
      ...keyLayers(
        places,
        frame,
        lines.map((line) => keyEntry(line, frame, input.unit)),
        colours
      )
    ],
    config: themeConfig(colours)
  };
}
function linesOf2(input, colours) {
  const measured = input.zones.map((zone, i) => ({
    ...zone,
    style: styleAt(colours.measured, i),
    isMeasured: true
  }));
  if (!input.planned) {
    if (measured.length === 0)
      throw new RangeError("firingChart: neither a measured nor a planned Curve");
    return measured;
  }
  const style = measured.length === 0 ? styleAt(colours.measured, 0) : colours.planned;
  const plan = { name: "planned", curve: input.planned, style, isMeasured: false };
  if (!input.predicted) return [...measured, plan];
  const predicted = {
    name: "as your kiln will go",
    curve: input.predicted,
    style: styleAt(colours.compared, 1),
    isMeasured: false
  };
  return [...measured, { ...plan, name: "plan" }, predicted];
}
function frameOf3(lines, input) {
  const { shown } = temperature(input.unit);
  const starts = lines.map(({ curve }) => curve.timesSeconds[0]);
  const ends = lines.map(({ curve }) => curve.timesSeconds.at(-1));
  const highest = shown(Math.max(...lines.map(({ curve }) => peakOf(curve).tempC)));
  const lowest = shown(
    Math.min(0, ...lines.map(({ curve }) => curve.tempsC.reduce((a, b) => Math.min(a, b))))
  );
  const firstCone = input.conesDown.slice(-5).map((cone) => shown(cone.tempC));
  const room = 1 - stairHeight(firstCone.length) / HEIGHT3;
  const forNames = lowest + (Math.min(...firstCone, highest) - lowest) / room;
  const step = input.unit === "C" ? 50 : 100;
  const top = Math.ceil(Math.max(lowest + (highest - lowest) * 1.06, forNames) / step) * step;
  return {
    width: PLOT_WIDTH,
    height: HEIGHT3,
    x: [drawn(Math.min(0, ...starts) / 3600), drawn(Math.max(...ends) / 3600)],
    y: [drawn(lowest), top]
  };
}
function placesOf2(frame, input) {
  const { field, title } = temperature(input.unit);
  const ticks = hourTicks(frame.x[0], frame.x[1]);
  const x = input.startOfDaySeconds === null ? acrossAxis("Elapsed time (h)", frame.x, ticks) : acrossAxis("Elapsed time (h), time of day below", frame.x, ticks, 26);
  return {
    xField: "elapsedHours",
    yField: field,
    x,
    y: upAxis(title, frame.y, temperatureTicks(frame.y[0], frame.y[1], input.unit))
  };
}
function clockLayers(places, frame, startOfDaySeconds, colours) {
  if (startOfDaySeconds === null) return [];
  const labels = hourTicks(frame.x[0], frame.x[1]).map((hours) => ({
    text: clockText(startOfDaySeconds + hours * 3600),
    at: { x: pixelAt(frame, hours, 0).x, y: frame.height + 31 },
    align: "center"
  }));
  return labelLayers(places, frame, labels, colours.quiet, colours.paper);
}
function coneTexts(input, frame) {
  const { shown } = temperature(input.unit);
  return input.conesDown.toSorted((a, b) => a.atSeconds - b.atSeconds).map(({ cone, atSeconds, tempC }) => ({
    text: `cone ${cone} down at ${momentText(input, atSeconds)}`,
    at: pixelAt(frame, atSeconds / 3600, shown(tempC))
  }));
}
function eventTexts(input, lines, frame) {
  const measured = lines.filter((line) => line.isMeasured);
  const judged = measured.length > 0 ? measured : lines;
  const { shown } = temperature(input.unit);
  return input.events.filter(({ atSeconds }) => atSeconds / 3600 >= frame.x[0] && atSeconds / 3600 <= frame.x[1]).map(({ label, atSeconds }) => {
    const tempsC = judged.map(({ curve }) => temperatureAt(curve, atSeconds)).filter((tempC) => tempC !== null);
    const y = tempsC[0] === void 0 ? frame.y[0] : shown(tempsC[0]);
    return {
      text: `${label}, ${momentText(input, atSeconds)}`,
      at: pixelAt(frame, atSeconds / 3600, y)
    };
  });
}
function momentText(input, atSeconds) {
  return input.startOfDaySeconds === null ? `${printElapsed(atSeconds)} h` : clockText(input.startOfDaySeconds + atSeconds);
}
function keyEntry(line, frame, unit) {
  const { shown } = temperature(unit);
  return {
    name: line.name,
    details: [`peak ${printTemperature(peakOf(line.curve).tempC, unit)}`],
    nearY: pixelAt(frame, 0, shown(line.curve.tempsC.at(-1))).y,
    style: line.style
  };
}
function subtitleOf2(input, lines) {
  const { curve, name } = hottest(lines);
  const peak = peakOf(curve);
  const where = input.zones.length > 1 ? ` (${name})` : "";
  return `Peak ${printTemperature(peak.tempC, input.unit)}${where} after ${printDuration(peak.seconds)}`;
}
function descriptionOf4(input, lines) {
  const peak = peakOf(hottest(lines).curve);
  const measured = input.zones.map((zone) => zone.name).join(", ");
  const what = [
    ...measured ? [`measured (${measured}) as solid lines`] : [],
    ...input.planned ? [measured ? "planned as a dashed line" : "planned as a solid line"] : [],
    ...input.predicted ? ["as your kiln will go as a line of longer dashes"] : []
  ].join(", ");
  const also = [
    ...input.bands.map((band) => `${band.name} as a strip`),
    ...input.conesDown.map(
      (cone) => `cone ${cone.cone} down at ${momentText(input, cone.atSeconds)}`
    ),
    ...input.events.map((event) => `${event.label} at ${momentText(input, event.atSeconds)}`)
  ];
  const list = also.length > 0 ? `; marked are ${also.join(", ")}` : "";
  return `${input.title}: temperature against elapsed time, ${what}, rising to ${printTemperature(peak.tempC, input.unit)} after ${printDuration(peak.seconds)}${list}.`;
}
function hottest(lines) {
  const measured = lines.filter((line) => line.isMeasured);
  const candidates = measured.length > 0 ? measured : lines.slice(0, 1);
  return candidates.reduce((a, b) => peakOf(b.curve).tempC > peakOf(a.curve).tempC ? b : a);
}

// src/core/charts/firingsChart.ts
var COLUMNS = 3;
var WIDTH = 226;
var HEIGHT4 = 150;
var OPENED_AT = 34;
var MOST = 12;
function firingsChart(input) {
  if (input.firings.length === 0) throw new RangeError("firingsChart: no firings");
  const colours = theme(input.dark);
  const shown = input.firings.slice(0, MOST);
  const frame = frameOf4({ ...input, firings: shown });
  const left = input.firings.length - shown.length;
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf5(input),
    title: {
      text: input.title,
      subtitle: left > 0 ? `The first ${MOST}; ${left} more are not drawn` : "Hours from the peak; a diamond stands where the kiln was opened"
    },
    background: colours.paper,
    padding: 18,
    columns: COLUMNS,
    spacing: { row: 34, column: 30 },
    concat: shown.map((firing, at) => panel(firing, { input, frame, colours, number: at + 1 })),
    config: {
      ...themeConfig(colours),
      // The whole has one title; over a panel stands its name, small.
      title: { ...themeConfig(colours).title, offset: 16 }
    }
  };
}
function panel(firing, by) {
  const { input, frame, colours, number } = by;
  const { unit } = input;
  const { field, shown } = temperature(unit);
  const places = {
    xField: "elapsedHours",
    yField: field,
    x: acrossAxis(
      "",
      frame.x,
      hourTicks(frame.x[0], frame.x[1]).filter((_, at) => at % 2 === 0)
    ),
    y: upAxis("", frame.y, evenTicks(frame.y[0], frame.y[1], 4))
  };
  const peak = peakOf(firing.curve);
  const peakAt = pixelAt(frame, 0, shown(peak.tempC));
  const { opened } = firing;
  const layer = [
    ...bandStrips(places, frame, input.bands, unit, colours),
    lineLayer(places, curveRows(firing.curve, unit), styleAt(colours.measured, 0), "elapsedHours"),
    ...opened === null ? [] : [
      openingMark(
        places,
        { hours: opened.atSeconds / 3600, temp: shown(opened.tempC) },
        colours
      )
    ],
    ...labelLayers(
      places,
      frame,
      [
        {
          text: printTemperature(peak.tempC, unit),
          at: { x: peakAt.x + 9, y: peakAt.y + 2 },
          align: "left"
        }
      ],
      colours.ink,
      colours.paper
    ),
    ...opened === null ? [] : labelLayers(
      places,
      frame,
      [
        {
          text: `opened, ${printTemperature(opened.tempC, unit)}`,
          at: { x: frame.width, y: OPENED_AT },
          align: "right"
        }
      ],
      colours.quiet,
      colours.paper
    )
  ];
  return {
    title: {
      text: [...wrappedToWidth(`${number}. ${firing.name}`, 13, WIDTH, 2)],
      fontSize: 13,
      fontWeight: 600,
      offset: 6,
      dx: 0,
      anchor: "start",
      frame: "group"
    },
    width: frame.width,
    height: frame.height,
    layer: [...layer]
  };
}
function openingMark(places, { hours, temp }, colours) {
  return {
    data: { values: [{ [places.xField]: drawn(hours), [places.yField]: drawn(temp) }] },
    mark: {
      type: "point",
      shape: "diamond",
      size: 70,
      fill: colours.paper,
      stroke: colours.ember,
      strokeWidth: 1.8,
      opacity: 1
    },
    encoding: placing(places)
  };
}
function frameOf4({ firings, unit }) {
  const { shown } = temperature(unit);
  const highest = Math.max(...firings.map(({ curve }) => peakOf(curve).tempC));
  const step = unit === "C" ? 100 : 200;
  const hours = (seconds) => drawn(seconds / 3600);
  return {
    width: WIDTH,
    height: HEIGHT4,
    x: [
      hours(Math.min(...firings.map(({ curve }) => curve.timesSeconds[0]))),
      hours(
        Math.max(
          ...firings.map(
            ({ curve, opened }) => Math.max(curve.timesSeconds.at(-1), opened?.atSeconds ?? 0)
          )
        )
      )
    ],
    y: [drawn(shown(0)), Math.ceil(shown(highest) * 1.06 / step) * step]
  };
}
function descriptionOf5({ title, firings, unit, bands }) {
  const each = firings.slice(0, MOST).map(({ name, curve, opened }, at) => {
    const opening = opened === null ? "" : `, opened at ${printTemperature(opened.tempC, unit)}`;
    return `${at + 1}. ${name} (peak ${printTemperature(peakOf(curve).tempC, unit)}${opening})`;
  });
  const strips = bands.map(({ name }) => name).join(" and ");
  return `${title}: each by itself with its peak at 0 h, ${each.join("; ")}${strips === "" ? "" : `; strips mark ${strips}`}.`;
}

// src/core/charts/fitsChart.ts
var ROW = 30;
var ROOM = 0.08;
function fitsChart({ title, pairs, dark }) {
  if (pairs.length === 0) throw new RangeError("fitsChart: no glaze on any clay");
  const colours = theme(dark);
  const rows = rowsOf2(pairs);
  const frame = frameOf5(rows);
  const places = {
    xField: "perMillion",
    yField: "row",
    x: acrossAxis(
      "Glaze shrinks more than the clay (millionths per \xB0C)",
      frame.x,
      evenTicks(frame.x[0], frame.x[1], 8)
    ),
    y: upAxis("", frame.y, [])
  };
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf6(title, pairs),
    title: { text: title, subtitle: "The farther right, the harder the glaze is pulled" },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...zeroLayers(places, frame, colours),
      ...rangeLayers(places, rows, colours),
      ...wordLayers(places, frame, { rows, colours })
    ],
    config: themeConfig(colours)
  };
}
function rowsOf2(pairs) {
  const rows = pairs.flatMap(({ glaze, clay, computedPerK, found }) => [
    { heading: `${glaze} on ${clay}`, label: "", perK: null, found: null },
    { heading: null, label: "by the files", perK: computedPerK, found: null },
    ...found.map((each) => ({
      heading: null,
      label: `${each.from}, ${each.tiles === 1 ? "one tile" : `${each.tiles} tiles`}`,
      perK: each.perK,
      found: each
    }))
  ]);
  return rows.map((row, at) => ({ ...row, y: rows.length - at - 0.5 }));
}
function frameOf5(rows) {
  const ends = rows.flatMap(({ perK, found }) => [
    ...perK === null ? [] : [perK.low, perK.high],
    ...found === null ? [] : [found.leastPerK, found.mostPerK]
  ]);
  const [low, high] = [Math.min(0, ...ends) * 1e6, Math.max(0, ...ends) * 1e6];
  const room = ROOM * (high - low);
  return {
    width: PLOT_WIDTH,
    height: ROW * rows.length,
    x: [drawn(low - room), drawn(high + room)],
    y: [0, rows.length]
  };
}
function zeroLayers(places, frame, colours) {
  const rows = frame.y.map((row, order) => ({ perMillion: 0, row, piece: 0, order }));
  return [lineLayer(places, rows, { ...colours.planned, strokeWidth: 1.2 }, "order")];
}
function rangeLayers(places, rows, colours) {
  const encoding = placing(places);
  const files = styleAt(colours.measured, 1);
  const tiles = styleAt(colours.measured, 0);
  return rows.flatMap(({ y, perK, found }) => {
    if (perK === null) return [];
    const colour = (found === null ? files : tiles).stroke;
    const at = (value) => drawn(value * 1e6);
    return [
      {
        data: { values: [{ perMillion: at(perK.low), end: at(perK.high), row: y }] },
        mark: { type: "rule", color: colour, strokeWidth: found === null ? 1.6 : 3 },
        encoding: { ...encoding, x2: { field: "end" } }
      },
      {
        data: { values: [{ perMillion: at(perK.median), row: y }] },
        mark: {
          type: "point",
          shape: found === null ? "diamond" : pointShape(found),
          size: 90,
          fill: found === null ? colours.paper : colour,
          stroke: colour,
          strokeWidth: 1.8,
          opacity: 1
        },
        encoding
      }
    ];
  });
}
function pointShape({ holds }) {
  if (holds === "about") return "circle";
  return holds === "at least" ? "triangle-right" : "triangle-left";
}
function wordLayers(places, frame, { rows, colours }) {
  const at = (y) => pixelAt(frame, frame.x[0], y).y;
  const words = (isHeading) => rows.filter(({ heading }) => heading !== null === isHeading).map(({ heading, label, y }) => ({
    text: heading ?? label,
    at: { x: frame.width + 14, y: at(y) },
    align: "left"
  }));
  const zero = pixelAt(frame, 0, 0).x;
  const ways = [
    { text: "squeezed", at: { x: zero - 8, y: at(frame.y[1]) + 6 }, align: "right" },
    { text: "pulled", at: { x: zero + 8, y: at(frame.y[1]) + 6 }, align: "left" }
  ].filter(({ align }) => align === "left" || zero > 90);
  return [
    ...labelLayers(places, frame, words(true), colours.ink, colours.paper),
    ...labelLayers(places, frame, [...words(false), ...ways], colours.quiet, colours.paper)
  ];
}
function descriptionOf6(title, pairs) {
  const of = (perK) => (perK.median * 1e6).toFixed(1);
  const said = pairs.map(
    ({ glaze, clay, computedPerK, found }) => [
      `${glaze} on ${clay} ${of(computedPerK)} by the files`,
      ...found.map(({ from, holds, perK }) => `${holds} ${of(perK)} by ${from}`)
    ].join(", ")
  );
  return `${title}: difference in shrinking between glaze and clay in millionths per \xB0C; ${said.join("; ")}.`;
}

// src/core/charts/overlayChart.ts
var HEIGHT5 = 420;
function overlayChart(input) {
  const colours = theme(input.dark);
  const drawnFirings = firingsOf(input, colours);
  if (drawnFirings.length === 0) throw new RangeError("overlayChart: no firings");
  const frame = frameOf6(drawnFirings, input.unit);
  const { field, title } = temperature(input.unit);
  const places = {
    xField: "elapsedHours",
    yField: field,
    x: acrossAxis(`Time from ${input.zero} (h)`, frame.x, hourTicks(frame.x[0], frame.x[1])),
    y: upAxis(title, frame.y, temperatureTicks(frame.y[0], frame.y[1], input.unit))
  };
  const lines = drawnFirings.map((firing) => ({
    ...firing,
    rows: curveRows(firing.curve, input.unit)
  }));
  const pixels = lines.flatMap((line) => rowPixels(line.rows, places.xField, places.yField, frame));
  const bands = bandLabels(frame, input.bands, input.unit, { lines: pixels, boxes: [] });
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf7(input, drawnFirings),
    title: { text: input.title, subtitle: input.subtitle },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...bandStrips(places, frame, input.bands, input.unit, colours),
      ...lines.map((line) => lineLayer(places, line.rows, line.style, "elapsedHours")),
      ...labelLayers(
        places,
        frame,
        bands.map((band) => band.label),
        colours.quiet,
        null
      ),
      ...keyLayers(
        places,
        frame,
        lines.map(({ name, curve, style }, i) => ({
          name,
          details: [`peak ${printTemperature(peakOf(curve).tempC, input.unit)}`],
          nearY: i,
          style
        })),
        colours
      )
    ],
    config: themeConfig(colours)
  };
}
function firingsOf({ firings }, { compared }) {
  return firings.flatMap(
    ({ name, curve }, i) => curve === null ? [] : [{ name, curve, style: styleAt(compared, i) }]
  );
}
function frameOf6(firings, unit) {
  const { shown } = temperature(unit);
  const curves = firings.map((firing) => firing.curve);
  const highest = Math.max(...curves.map((curve) => peakOf(curve).tempC));
  const lowest = Math.min(
    0,
    ...curves.map((curve) => curve.tempsC.reduce((a, b) => Math.min(a, b)))
  );
  const step = unit === "C" ? 50 : 100;
  return {
    width: PLOT_WIDTH,
    height: HEIGHT5,
    x: [
      drawn(Math.min(...curves.map((curve) => curve.timesSeconds[0])) / 3600),
      drawn(Math.max(...curves.map((curve) => curve.timesSeconds.at(-1))) / 3600)
    ],
    y: [drawn(shown(lowest)), Math.ceil(shown(highest) * 1.03 / step) * step]
  };
}
function descriptionOf7(input, firings) {
  const peaks = firings.map(
    ({ name, curve }) => `${name} (peak ${printTemperature(peakOf(curve).tempC, input.unit)})`
  );
  const strips = input.bands.map((band) => band.name);
  const also = strips.length > 0 ? `; strips mark ${strips.join(" and ")}` : "";
  return `${input.title}: temperature against time from ${input.zero} for ${peaks.join(", ")}${also}.`;
}

// src/core/charts/logAxis.ts
var FINE = [1, 1.5, 2, 3, 4, 5, 6, 8];
var COARSE = [1, 2, 5];
function logAxis(axis) {
  return {
    ...axis,
    axis: { ...axis.axis, labelExpr: "format(pow(10, datum.value), '.2~f')" }
  };
}
function logTicks([low, high]) {
  const leads = high - low > 1.2 ? COARSE : FINE;
  const powers = Array.from(
    { length: Math.ceil(high) - Math.floor(low) + 1 },
    (_, i) => Math.floor(low) + i
  );
  return powers.flatMap((power) => leads.map((lead) => drawn(Math.log10(lead) + power))).filter((tick) => tick >= low - 1e-9 && tick <= high + 1e-9);
}

// src/core/charts/spacingExpected.ts
function expectedStyle(colour) {
  return { stroke: colour, strokeWidth: 1.6, strokeDash: [1.5, 3.5] };
}
function expectedLayers(places, curves, marks) {
  return curves.flatMap(({ clay, points }) => {
    const colour = marks.find((mark) => mark.clay === clay)?.colour;
    const rows = points.flatMap(
      ({ coatMm, medianMm }, order) => medianMm === null ? [] : [
        {
          logCoat: drawn(Math.log10(coatMm)),
          logSpacing: drawn(Math.log10(medianMm)),
          piece: 0,
          order
        }
      ]
    );
    if (colour === void 0 || rows.length < 2) return [];
    return [lineLayer(places, rows, expectedStyle(colour), "order")];
  });
}

// src/core/charts/spacingGuides.ts
var GUIDES = [
  { power: 0.5, name: "power \xBD" },
  { power: 1, name: "power 1" }
];
var LEAST_SPREAD = Math.log10(1.25);
function guideLayers(given) {
  const { places, frame, colours } = given;
  const middle = guideMiddle(given);
  if (middle === null) return [];
  const ends = GUIDES.map(({ power, name }) => ({
    name,
    power,
    rows: frame.x.map((x) => ({ x, y: middle.y + power * (x - middle.x) }))
  }));
  return [
    ...ends.map(
      ({ rows }, piece) => lineLayer(
        places,
        rows.map(({ x, y }, order) => ({
          logCoat: drawn(x),
          logSpacing: drawn(y),
          piece,
          order
        })),
        { ...colours.planned, strokeWidth: 1.2 },
        "order"
      )
    ),
    ...labelLayers(
      places,
      frame,
      ends.map(({ name, power }) => ({ text: name, at: labelAt(power), align: "left" })),
      colours.quiet,
      colours.paper
    )
  ];
  function labelAt(power) {
    const { x: centre, y: level } = middle;
    const bottom = centre + (frame.y[0] + 0.03 * (frame.y[1] - frame.y[0]) - level) / power;
    const x = Math.max(frame.x[0] + 0.025 * (frame.x[1] - frame.x[0]), bottom);
    const { x: left, y: top } = pixelAt(frame, x, level + power * (x - centre));
    return { x: left + 4, y: power < 1 ? top - 14 : top + 2 };
  }
}
function guideMiddle(given) {
  const at = given.fit?.curve[Math.floor(given.fit.curve.length / 2)];
  if (at !== void 0) return { x: Math.log10(at.coatMm), y: Math.log10(at.pitchMm) };
  const measured = given.tiles.flatMap(
    ({ coat, spacing }) => spacing.kind === "measured" ? [{ x: Math.log10(coat.firedMm), y: Math.log10(spacing.pitchMm) }] : []
  );
  const coats = measured.map(({ x }) => x);
  if (measured.length === 0 || Math.max(...coats) - Math.min(...coats) < LEAST_SPREAD) return null;
  const mean = (of) => measured.reduce((sum, point) => sum + of(point), 0) / measured.length;
  return { x: mean(({ x }) => x), y: mean(({ y }) => y) };
}

// src/core/charts/spacingTiles.ts
var CLAY_SHAPES = ["circle", "square", "triangle-up", "diamond", "triangle-down", "cross"];
var ARROW = 0.09;
function tileMarks(tiles, colours) {
  const clays = [...new Set(tiles.map(({ clay }) => clay))];
  return clays.flatMap(
    (clay, at) => ["one", "both"].flatMap(
      (glazedSides) => tiles.some((tile) => tile.clay === clay && tile.glazedSides === glazedSides) ? [
        {
          clay,
          glazedSides,
          shape: CLAY_SHAPES[at % CLAY_SHAPES.length],
          colour: styleAt(colours.compared, at).stroke,
          filled: glazedSides === "both"
        }
      ] : []
    )
  );
}
function tileLayers(places, tiles, colours) {
  return tileMarks(tiles, colours).flatMap((mark) => {
    const own = tiles.filter(
      ({ clay, glazedSides }) => clay === mark.clay && glazedSides === mark.glazedSides
    );
    return [
      ...rangeLayers2(places, own, mark.colour),
      ...arrowLayers(places, own, { mark, paper: colours.paper }),
      ...pointLayers(places, own, { mark, paper: colours.paper })
    ];
  });
}
function rangeLayers2(places, tiles, colour) {
  const encoding = placing(places);
  const mark = { type: "rule", color: colour, strokeWidth: 1, opacity: 0.55 };
  const up = tiles.flatMap(
    ({ coat, spacing }) => spacing.kind === "measured" && spacing.lowMm !== null && spacing.highMm !== null ? [{ logCoat: log(coat.firedMm), logSpacing: log(spacing.lowMm), end: log(spacing.highMm) }] : []
  );
  const across = tiles.flatMap(
    ({ coat: { firedMm, sigmaMm }, spacing }) => spacing.kind === "measured" && sigmaMm > 0 ? [
      {
        logCoat: log(Math.max(firedMm / 2, firedMm - sigmaMm)),
        end: log(firedMm + sigmaMm),
        logSpacing: log(spacing.pitchMm)
      }
    ] : []
  );
  return [
    ...up.length === 0 ? [] : [{ data: { values: [...up] }, mark, encoding: { ...encoding, y2: { field: "end" } } }],
    ...across.length === 0 ? [] : [{ data: { values: [...across] }, mark, encoding: { ...encoding, x2: { field: "end" } } }]
  ];
}
function arrowLayers(places, tiles, { mark, paper }) {
  const arrows = tiles.flatMap(({ coat, spacing }) => {
    if (spacing.kind !== "uncracked") return [];
    const from = log(spacing.atLeastMm);
    return [{ logCoat: log(coat.firedMm), logSpacing: from, end: drawn(from + ARROW) }];
  });
  if (arrows.length === 0) return [];
  const encoding = placing(places);
  return [
    {
      data: { values: [...arrows] },
      mark: { type: "rule", color: mark.colour, strokeWidth: 1.4 },
      encoding: { ...encoding, y2: { field: "end" } }
    },
    {
      data: { values: arrows.map((row) => ({ ...row, logSpacing: row.end })) },
      mark: arrowHead(mark.colour, paper),
      encoding
    }
  ];
}
function pointLayers(places, tiles, { mark, paper }) {
  const points = tiles.flatMap(
    ({ coat, spacing }) => spacing.kind === "not measured" ? [] : [
      {
        logCoat: log(coat.firedMm),
        logSpacing: log(spacing.kind === "measured" ? spacing.pitchMm : spacing.atLeastMm)
      }
    ]
  );
  if (points.length === 0) return [];
  return [
    { data: { values: [...points] }, mark: pointMark(mark, paper), encoding: placing(places) }
  ];
}
function arrowHead(colour, paper) {
  return {
    type: "point",
    shape: "triangle-up",
    size: 60,
    fill: paper,
    stroke: colour,
    strokeWidth: 1.4,
    opacity: 1
  };
}
function pointMark(mark, paper) {
  return {
    type: "point",
    shape: mark.shape,
    size: 80,
    fill: mark.filled ? mark.colour : paper,
    stroke: mark.colour,
    strokeWidth: 1.8,
    opacity: 1
  };
}
function log(amount) {
  return drawn(Math.log10(amount));
}

// src/core/charts/spacingKey.ts
var KEY_WIDTH = 130;
function spacingKey(given) {
  const { places, frame, tiles, fit, colours, hasExpected } = given;
  const entries = [
    ...tileMarks(tiles, colours).map((mark) => ({
      words: [
        ...wrappedToWidth(mark.clay, LABEL_SIZE, KEY_WIDTH, 2),
        mark.filled ? "both sides" : "one side"
      ],
      mark: pointMark(mark, colours.paper)
    })),
    ...tiles.some(({ spacing }) => spacing.kind === "uncracked") ? [
      {
        words: ["uncracked", "wider than this"],
        mark: arrowHead(colours.ink, colours.paper)
      }
    ] : [],
    ...fit === null ? [] : [{ words: ["fitted", "band 95 %"], line: styleAt(colours.measured, 1) }],
    ...guideMiddle(given) === null ? [] : [{ words: ["powers \xBD and 1", "to compare with"], line: colours.planned }],
    ...hasExpected ? [{ words: ["expected by files", "on each clay"], line: expectedStyle(colours.ink) }] : []
  ];
  const tops = entries.map(
    (_, at) => entries.slice(0, at).reduce((sum, { words }) => sum + words.length * LINE_HEIGHT + 8, LINE_HEIGHT / 2)
  );
  return [
    ...entries.flatMap((entry, at) => sample(places, frame, { entry, y: tops[at] })),
    ...entries.flatMap(
      ({ words }, at) => words.flatMap(
        (word, line) => labelLayers(
          places,
          frame,
          [
            {
              text: word,
              at: { x: frame.width + 46, y: tops[at] + line * LINE_HEIGHT },
              align: "left"
            }
          ],
          line < words.length - 1 ? colours.ink : colours.quiet,
          null
        )
      )
    )
  ];
}
function sample(places, frame, { entry, y }) {
  const at = (x) => spot(places, frame, { x: frame.width + x, y });
  const encoding = placing(places);
  if (entry.line)
    return [
      {
        data: { values: [at(14), at(38)] },
        mark: { type: "line", ...stroke(entry.line) },
        encoding
      }
    ];
  return entry.mark ? [{ data: { values: [at(26)] }, mark: entry.mark, encoding }] : [];
}

// src/core/charts/spacingChart.ts
var HEIGHT6 = 400;
var ROOM2 = 0.06;
function spacingChart(input) {
  const tiles = input.tiles.filter(({ spacing }) => spacing.kind !== "not measured");
  if (tiles.length === 0) throw new RangeError("spacingChart: no tile says anything of spacing");
  const colours = theme(input.dark);
  const fitted = styleAt(colours.measured, 1);
  const { fit, expected = [] } = input;
  const frame = frameOf7(tiles, fit, expected);
  const places = {
    xField: "logCoat",
    yField: "logSpacing",
    x: logAxis(acrossAxis("Fired coat (mm)", frame.x, logTicks(frame.x))),
    y: logAxis(upAxis("Crack spacing (mm)", frame.y, logTicks(frame.y)))
  };
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf8(input, tiles),
    title: { text: input.title, subtitle: [subtitleOf3(fit), CAUTION] },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...fit === null ? [] : bandLayers(places, fit, fitted.stroke),
      ...guideLayers({ places, frame, tiles, fit, colours }),
      ...fit === null ? [] : [lineOf2(places, fit, fitted)],
      ...expectedLayers(places, expected, tileMarks(tiles, colours)),
      ...tileLayers(places, tiles, colours),
      ...spacingKey({ places, frame, tiles, fit, colours, hasExpected: expected.length > 0 })
    ],
    config: themeConfig(colours)
  };
}
function frameOf7(tiles, fit, expected) {
  const coats = tiles.flatMap(({ coat: { firedMm, sigmaMm } }) => [
    Math.max(firedMm / 2, firedMm - sigmaMm),
    firedMm + sigmaMm
  ]);
  const spacings = [
    ...tiles.flatMap(({ spacing }) => {
      if (spacing.kind === "uncracked") return [spacing.atLeastMm, spacing.atLeastMm * 1.35];
      if (spacing.kind !== "measured") return [];
      return [spacing.pitchMm, spacing.lowMm ?? spacing.pitchMm, spacing.highMm ?? spacing.pitchMm];
    }),
    ...fit?.curve.flatMap(({ lowMm, highMm }) => [lowMm, highMm]) ?? [],
    ...expected.flatMap(({ points }) => points.flatMap(({ medianMm }) => medianMm ?? []))
  ];
  return { width: PLOT_WIDTH, height: HEIGHT6, x: rangeOf(coats), y: rangeOf(spacings) };
}
function rangeOf(amounts) {
  const logs = amounts.map((amount) => Math.log10(amount));
  return [drawn(Math.min(...logs) - ROOM2), drawn(Math.max(...logs) + ROOM2)];
}
function bandLayers(places, { curve }, colour) {
  return [
    {
      data: {
        values: curve.map(({ coatMm, lowMm, highMm }) => ({
          logCoat: drawn(Math.log10(coatMm)),
          logSpacing: drawn(Math.log10(lowMm)),
          high: drawn(Math.log10(highMm))
        }))
      },
      mark: { type: "area", color: colour, opacity: 0.18, clip: true },
      encoding: { ...placing(places), y2: { field: "high" } }
    }
  ];
}
function lineOf2(places, { curve }, style) {
  return lineLayer(
    places,
    curve.map(({ coatMm, pitchMm }, order) => ({
      logCoat: drawn(Math.log10(coatMm)),
      logSpacing: drawn(Math.log10(pitchMm)),
      piece: 0,
      order
    })),
    style,
    "order"
  );
}
var CAUTION = "A crackled surface is not for food or drink.";
function subtitleOf3(fit) {
  if (fit === null) return "Too little for a line; both axes are logarithmic";
  const { value, low, high } = fit.exponent;
  const range = [low, high].map((end) => Number.isFinite(end) ? end.toFixed(2) : "no end");
  const levels = fit.curveIsOf.filter(({ factor }) => factor !== "firing").map(levelWords);
  const of = levels.length === 0 ? "" : `; the line is for ${levels.join(", ")}`;
  return `Power ${value.toFixed(2)} (${range.join(" to ")}) from ${fit.tiles} tiles${of}`;
}
function levelWords({ factor, level }) {
  if (factor === "sides") return level === "one" ? "one side glazed" : "both sides glazed";
  return level;
}
function descriptionOf8({ title, fit }, tiles) {
  const uncracked = tiles.filter(({ spacing }) => spacing.kind === "uncracked").length;
  const measured = tiles.length - uncracked;
  const said = fit === null ? "no line is fitted" : `the fitted line rises with the power ${fit.exponent.value.toFixed(2)} of the coat`;
  return `${title}: crack spacing against fired coat for ${measured} measured and ${uncracked} uncracked tiles on logarithmic axes; ${said}; lines of the powers \xBD and 1 to hold it against.`;
}

// src/core/charts/strainLine.ts
var POINTS = 800;
var FACTOR_OF_TWO = { lowFactor: 0.5, highFactor: 2 };
var LEAST_FACTOR = 0.01;
function drawnPassages(strained) {
  return strained.passages.flatMap(
    ({ band, direction, computed }) => computed === null || direction === "heating" || !isJudged({ band, direction }, strained.ware.body) ? [] : [{ band, direction, ...computed }]
  );
}
function strainRows(strain, curve, passages) {
  const { timesSeconds, ratio } = strain;
  const gapEnds = new Set(curve.gaps.map((gap) => gap.toSeconds));
  const stride = Math.max(1, Math.ceil(timesSeconds.length / POINTS));
  const kept = /* @__PURE__ */ new Map();
  let piece = 0;
  for (let i = 0; i < timesSeconds.length; i++) {
    if (gapEnds.has(timesSeconds[i])) piece += 1;
    const stretch = `${piece} ${Math.floor(i / stride)}`;
    const best = kept.get(stretch);
    if (!best || ratio[i] > ratio[best.i]) kept.set(stretch, { i, piece });
  }
  return [...kept.values()].map(({ i, piece: of }) => {
    const seconds = timesSeconds[i];
    const middle = ratio[i];
    const { lowFactor, highFactor } = factorsAt(passages, seconds);
    return {
      elapsedHours: drawn(seconds / 3600),
      strain: drawn(middle),
      low: drawn(middle * lowFactor),
      high: drawn(middle * highFactor),
      piece: of
    };
  });
}
function drawnStrain(strained, peakSeconds) {
  return since(strained.strain, peakSeconds);
}
function since(strain, fromSeconds) {
  const from = strain.timesSeconds.findIndex((seconds) => seconds >= fromSeconds);
  return {
    timesSeconds: strain.timesSeconds.subarray(from),
    ratio: strain.ratio.subarray(from),
    wallC: strain.wallC.subarray(from),
    baseC: strain.baseC.subarray(from),
    shelfC: strain.shelfC.subarray(from),
    worst: strain.worst.filter(({ direction }) => direction === "cooling")
  };
}
function factorsAt(passages, seconds) {
  const before = passages.findLast((passage) => passage.atSeconds <= seconds);
  const after = passages.find((passage) => passage.atSeconds > seconds);
  if (!before || !after) return factorsOf(before ?? after);
  const [from, to] = [factorsOf(before), factorsOf(after)];
  const share = (seconds - before.atSeconds) / (after.atSeconds - before.atSeconds);
  const between = (low, high) => low * (high / low) ** share;
  return {
    lowFactor: between(from.lowFactor, to.lowFactor),
    highFactor: between(from.highFactor, to.highFactor)
  };
}
function factorsOf(passage) {
  if (passage === void 0 || passage.ratio <= 0) return FACTOR_OF_TWO;
  return {
    lowFactor: Math.max(LEAST_FACTOR, passage.low / passage.ratio),
    highFactor: passage.high / passage.ratio
  };
}

// src/core/charts/strainChart.ts
var HEIGHT7 = 240;
var ASIDE_PIXELS = 12;
var LEVELS = [
  { strain: 0.5, words: "half its strength" },
  { strain: 1, words: "its strength" }
];
function strainChart(input) {
  const colours = theme(input.dark);
  const { curve, strained } = input;
  const passages = drawnPassages(strained);
  const strain = drawnStrain(strained, peakOf(curve).seconds);
  const rows = strainRows(strain, curve, passages);
  const frame = frameOf8(rows, strain.timesSeconds);
  const places = {
    xField: "elapsedHours",
    yField: "strain",
    x: acrossAxis("Elapsed time (h)", frame.x, hourTicks(frame.x[0], frame.x[1])),
    y: titledAbove(upAxis("Stress over strength", frame.y, evenTicks(0, frame.y[1], 5)))
  };
  const style = styleAt(colours.measured, 0);
  const pixels = rowPixels(rows, places.xField, places.yField, frame);
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf9(input, passages),
    title: {
      text: input.title,
      subtitle: subtitleOf4(strained)
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...passageStrips(places, frame, passages, colours),
      rangeLayer(places, rows, style.stroke),
      ...levelLines(places, frame, colours),
      lineLayer(places, rows, style, "elapsedHours"),
      ...labelLayers(places, frame, levelLabels(frame, pixels), colours.ink, colours.paper),
      ...passageNames(places, frame, passages, colours.quiet),
      ...keyLayers(
        places,
        frame,
        [
          {
            name: strained.name,
            details: [],
            style,
            nearY: pixelAt(frame, 0, Number(rows.at(-1)?.strain ?? 0)).y
          }
        ],
        colours
      )
    ],
    config: themeConfig(colours)
  };
}
function frameOf8(rows, timesSeconds) {
  const from = (timesSeconds[0] ?? 0) / 3600;
  const to = (timesSeconds.at(-1) ?? 0) / 3600;
  const highest = Math.max(0, ...rows.map((row) => Number(row.high)));
  return {
    width: PLOT_WIDTH,
    height: HEIGHT7,
    x: [from, Math.max(to, from + 1 / 60)],
    y: [0, roundUp(Math.max(1.2, 1.05 * highest))]
  };
}
function passageStrips(places, frame, passages, colours) {
  if (passages.length === 0) return [];
  return [
    {
      data: {
        values: passages.map((passage) => ({
          band: `${passage.band}, ${passage.direction}`,
          elapsedHours: drawn(passage.fromSeconds / 3600),
          endHours: drawn(passage.toSeconds / 3600),
          strain: frame.y[1],
          foot: 0
        }))
      },
      mark: { type: "rect", color: colours.band, opacity: colours.bandOpacity },
      encoding: { ...placing(places), x2: { field: "endHours" }, y2: { field: "foot" } }
    }
  ];
}
function rangeLayer(places, rows, colour) {
  return {
    data: {
      values: rows.map(({ elapsedHours, low, high, piece }) => ({
        elapsedHours,
        strain: high,
        low,
        piece
      }))
    },
    mark: { type: "area", clip: true, color: colour, opacity: 0.22 },
    encoding: {
      ...placing(places),
      y2: { field: "low" },
      detail: { field: "piece", type: "nominal" }
    }
  };
}
function levelLines(places, frame, colours) {
  return LEVELS.map(({ strain }) => ({
    data: { values: frame.x.map((elapsedHours) => ({ elapsedHours, strain })) },
    mark: {
      type: "line",
      color: colours.ember,
      ...strain < 1 ? { strokeWidth: 1, strokeDash: [2, 3] } : { strokeWidth: 1.6 }
    },
    encoding: placing(places)
  }));
}
function levelLabels(frame, lines) {
  const boxes = [];
  return LEVELS.map(({ strain, words }) => {
    const { y } = pixelAt(frame, 0, strain);
    const width = labelWidth(words);
    const lefts = Array.from({ length: 30 }, (_, i) => 4 + i * (frame.width - width - 8) / 29);
    const box = freestBox(
      [y - 2, y + LINE_HEIGHT + 2].flatMap(
        (bottom) => lefts.map((left) => ({ left, right: left + width, top: bottom - LINE_HEIGHT, bottom }))
      ),
      { lines, boxes },
      frame
    );
    boxes.push(box);
    return { text: words, at: { x: box.left, y: (box.top + box.bottom) / 2 }, align: "left" };
  });
}
function passageNames(places, frame, passages, colour) {
  const named = passages.map((passage) => ({
    ...passage,
    name: passage.band.replace(/ inversion$/, "")
  }));
  const widest = Math.max(
    0,
    ...named.flatMap(({ name, direction }) => [labelWidth(name), labelWidth(direction)])
  );
  const middles = named.map(
    ({ fromSeconds, toSeconds }) => pixelAt(frame, (fromSeconds + toSeconds) / 7200, 0).x
  );
  const xs = spread(middles, widest + 10, widest / 2, frame.width);
  const labels = named.flatMap(({ name, direction }, i) => {
    const x = xs[i];
    return [
      { text: name, at: { x, y: -36 }, align: "center" },
      { text: direction, at: { x, y: -19 }, align: "center" }
    ];
  });
  const leaders = middles.flatMap((x, i) => {
    const from = { x: xs[i], y: -9 };
    return Math.abs(from.x - x) < ASIDE_PIXELS ? [] : [[from, { x, y: 0 }]];
  });
  return [
    ...leaderLayer(places, frame, leaders, colour),
    ...labelLayers(places, frame, labels, colour, null)
  ];
}
function titledAbove(axis) {
  return { ...axis, axis: { ...axis.axis, titleY: -58 } };
}
function subtitleOf4({ name }) {
  return [
    `Computed for ${name}, from the peak on, the kiln shut`,
    "The shade holds 8 in 10 of what may be"
  ];
}
function descriptionOf9({ title, strained }, passages) {
  const worst = passages.map(
    ({ band, direction, ratio, low, high }) => `${band}, ${direction}: ${ratio.toFixed(2)} of its strength (8 in 10 between ${low.toFixed(2)} and ${high.toFixed(2)})`
  );
  const most = worst.length > 0 ? `; at most ${worst.join("; ")}` : "; no inversion was reached";
  return `${title}: computed stress over strength of ${strained.name} against time from the peak on, with lines at half its strength and at its strength${most}.`;
}

// src/core/charts/chartsOf.ts
var BANDS = [QUARTZ_BAND, CRISTOBALITE_BAND];
var NEIGHBOURS = 2;
function reviewCharts(review) {
  const hottest2 = hottestZone(review.zones);
  return chartsFor({
    title: review.title,
    zones: review.zones,
    planned: review.comparison?.planned ?? null,
    curve: hottest2.curve,
    heatwork: hottest2.heatwork,
    crossings: hottest2.crossings,
    events: review.heard.flatMap(
      (heard) => heard.atSeconds === null ? [] : [{ label: heard.what, atSeconds: heard.atSeconds }]
    ),
    startOfDaySeconds: review.reading.startOfDaySeconds,
    weakest: review.strains[0] ?? null
  });
}
function draftCharts(draft) {
  return chartsFor({
    title: draft.schedule.title,
    zones: [],
    planned: draft.expansion.curve,
    predicted: draft.own && drawnPrediction(draft.own, draft.expansion.curve),
    curve: draft.expansion.curve,
    heatwork: draft.heatwork,
    crossings: draft.crossings,
    events: [],
    startOfDaySeconds: draft.start === null ? null : secondsOfDay(draft.start),
    weakest: draft.strains[0] ?? null
  });
}
function comparisonChart({ firings }, alignment = AT_PEAK) {
  const laid = firings.map((firing) => ({
    name: firing.title,
    curve: linedUp(firing, alignment)?.curve ?? null
  }));
  if (laid.every(({ curve }) => curve === null)) return null;
  return (style) => overlayChart({
    ...alignmentWords(alignment, style.unit),
    firings: laid,
    bands: BANDS,
    ...style
  });
}
function studyCharts(comparison, study) {
  const { confounding } = study;
  return {
    firings: ({ unit, dark }) => firingsChart({
      title: "The firings one by one",
      firings: comparison.firings.map(({ title, aligned }, at) => ({
        name: title,
        curve: aligned,
        opened: openedOf(study, at)
      })),
      bands: BANDS,
      unit,
      ...dark !== void 0 && { dark }
    }),
    causes: confounding !== null && confounding.causes.length > 1 ? ({ dark }) => causesChart({
      title: "What moved with what",
      confounding,
      ...dark !== void 0 && { dark }
    }) : null,
    fits: fitsOf(study),
    spacing: study.glazes.filter(hasSpacing(study)).map(({ glaze, spacing }) => ({
      glaze,
      chart: ({ dark }) => spacingChart({
        title: `Crack spacing against coat, ${glaze}`,
        tiles: study.tiles.tiles.filter((tile) => tile.glaze === glaze),
        fit: spacing,
        expected: expectedOf(study, glaze),
        ...dark !== void 0 && { dark }
      })
    }))
  };
}
function fitsOf({ fits }) {
  const pairs = fits?.pairs ?? [];
  if (pairs.length === 0) return null;
  return ({ dark }) => fitsChart({
    title: "How the glazes fit their clays",
    pairs,
    ...dark !== void 0 && { dark }
  });
}
function expectedOf({ fits }, glaze) {
  const own = fits?.pairs.filter((pair) => pair.glaze === glaze) ?? [];
  return own.filter(({ clay }, at) => own.findIndex((pair) => pair.clay === clay) === at).map(({ clay, expected }) => ({ clay, points: expected }));
}
function hasSpacing({ tiles }) {
  return ({ glaze }) => tiles.tiles.some((tile) => tile.glaze === glaze && tile.spacing.kind !== "not measured");
}
function openedOf({ firings }, at) {
  const factOf = (name) => firings[at]?.facts.find((fact) => fact.name === name)?.value ?? null;
  const [atSeconds, tempC] = [factOf("openedAfter"), factOf("openedAt")];
  return atSeconds === null || tempC === null ? null : { atSeconds, tempC };
}
function chartsFor(firing) {
  const { title, planned, heatwork, weakest } = firing;
  const zones = firing.zones.map(({ name, curve }) => ({ name, curve }));
  return {
    firing: (style) => firingChart({
      title,
      zones,
      planned,
      predicted: firing.predicted ?? null,
      bands: firing.crossings.some(({ isCristobalitic }) => isCristobalitic) ? BANDS : [QUARTZ_BAND],
      conesDown: conesDown(firing.curve, heatwork),
      events: firing.events,
      startOfDaySeconds: firing.startOfDaySeconds,
      ...style
    }),
    cooling: (style) => coolingChart({
      title: zones.length > 0 ? "How fast it cooled" : "How fast it will cool",
      zones,
      planned,
      limits: guidesOf(firing.crossings),
      limitCurve: weakest && {
        label: `half the strength of ${weakest.name}, computed`,
        points: limitCurve(weakest.ware)
      },
      ...style
    }),
    cones: (style) => conesChart({
      title: zones.length > 0 ? "How the cones fell" : "How the cones will fall",
      traces: heatworkTrace({
        curve: firing.curve,
        series: heatwork.series,
        cones: neighbours(heatwork),
        offsetK: heatwork.offsetK
      }),
      ...style
    }),
    strain: weakest?.passages.some(({ direction }) => direction === "cooling") ? ({ dark = false }) => strainChart({ title: "Stress in the ware", curve: firing.curve, strained: weakest, dark }) : null
  };
}
function guidesOf(crossings) {
  return crossings.flatMap(
    ({ band, direction, limitCPerHour, limitFromC, limitToC, severity }) => direction === "heating" || limitCPerHour === null || limitFromC === null || limitToC === null ? [] : [
      {
        band: { name: band, lowC: limitToC, highC: limitFromC },
        limitCPerHour,
        label: `guide, ${band}`,
        isBroken: severity === "caution" || severity === "warning"
      }
    ]
  );
}
function neighbours(heatwork) {
  const names = heatwork.cones.map((state) => state.cone).filter((cone) => !cone.includes("."));
  const reached = names.indexOf(heatwork.position.cone ?? names[0]);
  return names.slice(Math.max(0, reached - NEIGHBOURS + 1), reached + NEIGHBOURS + 1);
}
function conesDown(curve, heatwork) {
  const shown = new Set(neighbours(heatwork));
  return heatwork.cones.flatMap(({ cone, downAtSeconds }) => {
    const tempC = downAtSeconds === null ? null : temperatureAt(curve, downAtSeconds);
    return downAtSeconds === null || tempC === null || !shown.has(cone) ? [] : [{ cone, atSeconds: downAtSeconds, tempC }];
  });
}
function secondsOfDay(wallTime) {
  const [hours, minutes, seconds] = wallTime.slice(11).split(":").map(Number);
  return (hours ?? 0) * 3600 + (minutes ?? 0) * 60 + (seconds ?? 0);
}

export {
  alignmentWords,
  reviewCharts,
  draftCharts,
  comparisonChart,
  studyCharts
};
