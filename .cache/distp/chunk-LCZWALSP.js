import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  writeOutput
} from "./chunk-QVADD2WS.js";
import {
  say
} from "./chunk-QOSRWPWR.js";
import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";
import {
  textWidth,
  wrappedToWidth
} from "./chunk-OEDHJ3SZ.js";

// src/cli/pictures.ts
import { extname } from "node:path";
async function drawn(charts) {
  const { drawSvg } = await import("./drawSvg-4WXKVVBL.js");
  const result = {};
  for (const name of Object.keys(charts))
    result[name] = {
      light: await drawSvg(charts[name](false)),
      dark: await drawSvg(charts[name](true))
    };
  return result;
}
async function writePictures(options, make) {
  if (options.html !== void 0) {
    const written2 = await writeOutput(options.html, await make.html(), {
      force: options.force === true
    });
    if (!written2.ok) return written2;
    say(`wrote ${written2.value}`, options);
  }
  if (options.chart === void 0) return ok(null);
  const content = await chartFile(options.chart, make.picture);
  if (!content.ok) return content;
  const written = await writeOutput(options.chart, content.value, {
    force: options.force === true
  });
  if (!written.ok) return written;
  say(`wrote ${written.value}`, options);
  return ok(null);
}
async function chartFile(path, picture) {
  const ending = extname(path).toLowerCase();
  if (ending !== ".svg" && ending !== ".png")
    return failed({
      code: "command/chart-ending",
      where: `--chart ${path}`,
      what: `a chart cannot be written as ${ending === "" ? "a file without an ending" : ending}`,
      expected: "a name that ends in .svg or .png",
      fix: `--chart ${path.slice(0, path.length - ending.length)}.svg`
    });
  const { drawSvg } = await import("./drawSvg-4WXKVVBL.js");
  const svg = await drawSvg(picture());
  if (ending === ".svg") return ok(svg);
  const { drawPng } = await import("./drawPng-PX3H3C6B.js");
  return ok(await drawPng(svg, { scale: 2 }));
}

// src/core/charts/chartSpec.ts
var VEGA_LITE_SCHEMA = "https://vega.github.io/schema/vega-lite/v6.json";
function drawn2(value) {
  return Number(value.toPrecision(7));
}

// src/core/charts/theme.ts
var FONT_STACK = '"Source Sans 3", "Source Sans Pro", "Segoe UI", "Helvetica Neue", Arial, sans-serif';
var LIGHT = {
  paper: "#fcf8f2",
  ink: "#2d2621",
  quiet: "#6d6157",
  grid: "#e9e0d5",
  band: "#c9a27c",
  bandOpacity: 0.26,
  ember: "#9c2f14",
  clay: "#bb5a34",
  ash: "#2f4a58",
  ochre: "#b8862b",
  moss: "#6f8f83",
  plan: "#7a6d62"
};
var DARK = {
  paper: "#1e1a17",
  ink: "#f3ebe1",
  quiet: "#b8aa9c",
  grid: "#3a332d",
  band: "#a9805a",
  bandOpacity: 0.28,
  ember: "#ff9d6e",
  clay: "#e07b4f",
  ash: "#b5cfdc",
  ochre: "#c79a45",
  moss: "#7c9c90",
  plan: "#a89a8c"
};
function theme(dark) {
  const { clay, ash, ochre, moss, plan, ...rest } = dark ? DARK : LIGHT;
  return {
    ...rest,
    measured: [
      line(clay, 2.6),
      line(ash, 1.5),
      line(ochre, 2),
      line(moss, 1.2),
      line(clay, 1.6, 12, 2, 2, 2),
      line(ash, 2.2, 2, 2)
    ],
    planned: line(plan, 1.6, 6, 4),
    computed: line(rest.ember, 1.2, 3, 2.5),
    compared: [
      line(clay, 2.6),
      line(ash, 1.8, 9, 3),
      line(ochre, 2.2, 2, 2.5),
      line(moss, 1.8, 9, 3, 2, 3),
      line(plan, 1.4),
      line(clay, 1.8, 14, 3),
      line(ash, 2.4, 2, 4),
      line(ochre, 1.6, 5, 2.5),
      line(moss, 2.8),
      line(plan, 2.2, 14, 3, 2, 3, 2, 3)
    ]
  };
}
function styleAt(styles, index) {
  return styles[index % styles.length];
}
function themeConfig(colours) {
  return {
    font: FONT_STACK,
    aria: false,
    view: { stroke: null },
    title: {
      anchor: "start",
      frame: "group",
      offset: 16,
      dx: -44,
      color: colours.ink,
      fontSize: 21,
      fontWeight: 600,
      subtitleColor: colours.quiet,
      subtitleFontSize: 14,
      subtitlePadding: 6
    },
    axis: {
      labelColor: colours.quiet,
      labelFontSize: 13,
      labelPadding: 7,
      labelFlush: false,
      labelOverlap: false,
      titleColor: colours.quiet,
      titleFontSize: 13,
      titleFontWeight: 400,
      domainColor: colours.quiet,
      domainWidth: 0.8,
      ticks: false,
      gridColor: colours.grid,
      gridWidth: 0.8
    },
    axisY: { domain: false }
  };
}
function line(stroke2, strokeWidth, ...strokeDash) {
  return { stroke: stroke2, strokeWidth, strokeDash };
}

// src/core/charts/frame.ts
var PLOT_WIDTH = 660;
function pixelAt(frame, x, y) {
  return {
    x: frame.width * (x - frame.x[0]) / (frame.x[1] - frame.x[0]),
    y: frame.height * (frame.y[1] - y) / (frame.y[1] - frame.y[0])
  };
}
function valueAt(frame, pixel) {
  return {
    x: frame.x[0] + pixel.x / frame.width * (frame.x[1] - frame.x[0]),
    y: frame.y[1] - pixel.y / frame.height * (frame.y[1] - frame.y[0])
  };
}

// src/core/charts/placement.ts
var LABEL_SIZE = 13;
var LINE_HEIGHT = 17;
function labelWidth(text) {
  return textWidth(text, LABEL_SIZE);
}
function freestBox(candidates, obstacles, frame) {
  let best;
  let least = Number.POSITIVE_INFINITY;
  for (const box of candidates) {
    const cost = covered(box, obstacles, frame);
    if (cost === 0) return box;
    if (cost < least) {
      best = box;
      least = cost;
    }
  }
  if (!best) throw new RangeError("freestBox: no candidates");
  return best;
}
function isFree(box, obstacles, frame) {
  return covered(box, obstacles, frame) === 0;
}
function densely(corners) {
  return corners.flatMap((corner, i) => {
    const next = corners[i + 1];
    if (!next) return [corner];
    const steps = Math.max(1, Math.ceil(Math.hypot(next.x - corner.x, next.y - corner.y) / 4));
    return Array.from({ length: steps }, (_, step) => ({
      x: corner.x + (next.x - corner.x) * step / steps,
      y: corner.y + (next.y - corner.y) * step / steps
    }));
  });
}
function spread(wanted, apart, low, high) {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a] - wanted[b]);
  const placed = new Array(wanted.length).fill(0);
  let previous = low - apart;
  for (const i of order) {
    previous = Math.max(wanted[i], previous + apart);
    placed[i] = previous;
  }
  let next = high + apart;
  for (const i of order.toReversed()) {
    next = Math.min(placed[i], next - apart);
    placed[i] = next;
  }
  return placed;
}
function covered(box, obstacles, frame) {
  const points = obstacles.lines.filter(
    ({ x, y }) => x > box.left - 5 && x < box.right + 5 && y > box.top - 3 && y < box.bottom + 3
  ).length;
  const boxes = obstacles.boxes.filter(
    (other) => other.left < box.right + 4 && other.right > box.left - 4 && other.top < box.bottom && other.bottom > box.top
  ).length;
  const outside = Math.max(0, -box.left) + Math.max(0, box.right - frame.width) + Math.max(0, -box.top) + Math.max(0, box.bottom - frame.height);
  return points + 30 * boxes + 5 * outside;
}

// src/core/charts/places.ts
function acrossAxis(title, domain, values, titlePadding = 8) {
  return {
    title,
    scale: { domain: [domain[0], domain[1]], nice: false, zero: false, clamp: false },
    axis: {
      grid: false,
      format: ".2~f",
      titleAngle: 0,
      titleAnchor: "start",
      titleAlign: "left",
      values: [...values],
      titlePadding
    }
  };
}
function upAxis(title, domain, values) {
  return {
    title,
    scale: { domain: [domain[0], domain[1]], nice: false, zero: false, clamp: false },
    axis: {
      grid: true,
      format: ".2~f",
      titleAngle: 0,
      titleAnchor: "end",
      titleAlign: "left",
      values: [...values],
      titleX: -44,
      titleY: -16
    }
  };
}
function placing(places) {
  return {
    x: { field: places.xField, type: "quantitative", ...places.x },
    y: { field: places.yField, type: "quantitative", ...places.y }
  };
}
function spot(places, frame, pixel) {
  const value = valueAt(frame, pixel);
  return { [places.xField]: drawn2(value.x), [places.yField]: drawn2(value.y) };
}

// src/core/charts/layers.ts
function lineLayer(places, rows, style, order) {
  return {
    data: { values: [...rows] },
    mark: {
      type: "line",
      clip: true,
      strokeJoin: "round",
      strokeCap: style.strokeDash.length > 0 ? "butt" : "round",
      ...stroke(style)
    },
    encoding: {
      ...placing(places),
      detail: { field: "piece", type: "nominal" },
      order: { field: order, type: "quantitative" }
    }
  };
}
function labelLayers(places, frame, labels, colour, rim) {
  return ["left", "center", "right"].flatMap((align) => {
    const rows = labels.filter((label) => label.align === align).map((label) => ({ ...spot(places, frame, label.at), text: label.text }));
    if (rows.length === 0) return [];
    const text = {
      type: "text",
      align,
      baseline: "middle",
      fontSize: LABEL_SIZE
    };
    const encoding = { ...placing(places), text: { field: "text", type: "nominal" } };
    const words = { data: { values: rows }, mark: { ...text, color: colour }, encoding };
    if (rim === null) return [words];
    const around = { stroke: rim, strokeWidth: 4, strokeJoin: "round", color: rim };
    return [{ data: { values: rows }, mark: { ...text, ...around }, encoding }, words];
  });
}
function leaderLayer(places, frame, leaders, colour) {
  if (leaders.length === 0) return [];
  return [
    {
      data: {
        values: leaders.flatMap(
          (ends, piece) => ends.map((end, order) => ({ ...spot(places, frame, end), piece, order }))
        )
      },
      mark: { type: "line", stroke: colour, strokeWidth: 0.8 },
      encoding: {
        ...placing(places),
        detail: { field: "piece", type: "nominal" },
        order: { field: "order", type: "quantitative" }
      }
    }
  ];
}
function stroke(style) {
  return {
    stroke: style.stroke,
    strokeWidth: style.strokeWidth,
    ...style.strokeDash.length > 0 ? { strokeDash: [...style.strokeDash] } : {}
  };
}

// src/core/charts/key.ts
var KEY_WIDTH = 130;
function keyLayers(places, frame, entries, colours) {
  const blocks = fitting(entries, frame.height);
  const apart = tallestOf(blocks) * LINE_HEIGHT + 6;
  const tops = spread(
    entries.map((entry) => entry.nearY - LINE_HEIGHT / 2),
    apart,
    LINE_HEIGHT / 2,
    frame.height - apart + LINE_HEIGHT / 2
  );
  const first = blocks.flatMap(({ name }, i) => column(frame, name, tops[i]));
  const rest = blocks.flatMap(
    ({ name, details }, i) => column(frame, details, tops[i] + name.length * LINE_HEIGHT)
  );
  return [
    ...entries.flatMap((entry, i) => sample(places, frame, entry, tops[i])),
    ...labelLayers(places, frame, first, colours.ink, colours.paper),
    ...labelLayers(places, frame, rest, colours.quiet, colours.paper)
  ];
}
function fitting(entries, height) {
  const blocksOf = (lines, isFull) => entries.map((entry) => ({
    name: wrappedToWidth(entry.name, LABEL_SIZE, KEY_WIDTH, lines),
    details: isFull ? entry.details : []
  }));
  const fits = (blocks) => blocks.length * (tallestOf(blocks) * LINE_HEIGHT + 6) <= height;
  return [blocksOf(3, true), blocksOf(2, true), blocksOf(2, false)].find(fits) ?? blocksOf(1, false);
}
function tallestOf(blocks) {
  return Math.max(1, ...blocks.map(({ name, details }) => name.length + details.length));
}
function column(frame, lines, top) {
  return lines.map((text, n) => ({
    text,
    at: { x: frame.width + 46, y: top + n * LINE_HEIGHT },
    align: "left"
  }));
}
function sample(places, frame, { style, dot, dotShape = "circle" }, y) {
  const encoding = placing(places);
  const at = (x) => spot(places, frame, { x: frame.width + x, y });
  return [
    ...style ? [
      {
        data: { values: [at(14), at(38)] },
        mark: { type: "line", ...stroke(style) },
        encoding
      }
    ] : [],
    ...dot ? [
      {
        data: { values: [at(26)] },
        mark: {
          type: "point",
          shape: dotShape,
          size: 34,
          filled: true,
          opacity: 1,
          color: dot
        },
        encoding
      }
    ] : []
  ];
}

// src/core/charts/quantities.ts
function temperature(unit) {
  return unit === "C" ? { field: "tempC", title: "Temperature (\xB0C)", shown: (tempC) => tempC } : { field: "tempF", title: "Temperature (\xB0F)", shown: fahrenheitFromCelsius };
}
function coolingRate(unit) {
  return unit === "C" ? { field: "coolingCPerHour", title: "Cooling rate (\xB0C/h)", shown: (rate) => 0 - rate } : {
    field: "coolingFPerHour",
    title: "Cooling rate (\xB0F/h)",
    shown: (rate) => 0 - fahrenheitDeltaFromCelsiusDelta(rate)
  };
}
function bandRange(band, unit) {
  const { shown } = temperature(unit);
  return `${Math.round(shown(band.lowC))}\u2013${Math.round(shown(band.highC))} \xB0${unit}`;
}
function clockText(secondsOfDay) {
  const minutes = Math.round((secondsOfDay % 86400 + 86400) % 86400 / 60) % 1440;
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}
function evenTicks(bottom, top, most) {
  const power = 10 ** Math.floor(Math.log10((top - bottom) / most));
  const step = power * ([1, 2, 2.5, 5, 10].find((lead) => (top - bottom) / (lead * power) <= most) ?? 10);
  const first = Math.ceil(bottom / step - 1e-9);
  return Array.from(
    { length: Math.floor(top / step + 1e-9) - first + 1 },
    (_, i) => (first + i) * step
  );
}
function temperatureTicks(bottom, top, unit) {
  const ticks = evenTicks(bottom, top, 8);
  return unit === "F" && bottom === 32 ? [32, ...ticks] : ticks;
}
function hourTicks(fromHours, toHours) {
  const span = toHours - fromHours;
  const step = [0.25, 0.5, 1, 2, 3, 4, 6, 12, 24, 48, 96].find((hours) => span / hours <= 13) ?? span;
  const first = Math.ceil(fromHours / step - 1e-9);
  const last = Math.floor(toHours / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
}
function roundUp(value) {
  const power = 10 ** Math.floor(Math.log10(value));
  const lead = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10].find(
    (step) => step * power >= value * (1 - 1e-9)
  );
  return (lead ?? 10) * power;
}

export {
  VEGA_LITE_SCHEMA,
  drawn2 as drawn,
  theme,
  styleAt,
  themeConfig,
  PLOT_WIDTH,
  pixelAt,
  LABEL_SIZE,
  LINE_HEIGHT,
  labelWidth,
  freestBox,
  isFree,
  densely,
  spread,
  acrossAxis,
  upAxis,
  placing,
  spot,
  lineLayer,
  labelLayers,
  leaderLayer,
  stroke,
  keyLayers,
  temperature,
  coolingRate,
  bandRange,
  clockText,
  evenTicks,
  temperatureTicks,
  hourTicks,
  roundUp,
  drawn as drawn2,
  writePictures
};
