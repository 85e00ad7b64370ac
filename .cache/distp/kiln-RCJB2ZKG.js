import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  kilnDocument
} from "./chunk-ASLTPPUN.js";
import {
  costFigure
} from "./chunk-JORAX5YE.js";
import "./chunk-DQZAGW2O.js";
import "./chunk-RLEK6R44.js";
import {
  rowPixels
} from "./chunk-ELCCSIMJ.js";
import {
  LINE_HEIGHT,
  PLOT_WIDTH,
  VEGA_LITE_SCHEMA,
  acrossAxis,
  drawn,
  drawn2,
  evenTicks,
  freestBox,
  keyLayers,
  labelLayers,
  labelWidth,
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
  logOptionsFrom,
  tariffFrom,
  wattsFrom
} from "./chunk-3SHC6X7O.js";
import {
  reportHtml
} from "./chunk-Q77PV3QE.js";
import "./chunk-QVADD2WS.js";
import "./chunk-6GRKVVXC.js";
import {
  kilnFiringOf,
  learnKiln
} from "./chunk-QVXNA4U3.js";
import "./chunk-I7PXXNWR.js";
import {
  chartBlocks
} from "./chunk-VTFWEP2W.js";
import {
  readFiring
} from "./chunk-CQRY3XKN.js";
import {
  basisBlocks,
  cautionBlocks,
  findingBlocks
} from "./chunk-N5S6N4PS.js";
import "./chunk-4ME6ZCIX.js";
import {
  reportText
} from "./chunk-ZUGR3IIA.js";
import "./chunk-X6LO4HOH.js";
import "./chunk-XM3JYZUM.js";
import "./chunk-BNESJYXC.js";
import "./chunk-M4BL2XKO.js";
import {
  CRISTOBALITE_BAND,
  QUARTZ_BAND,
  hasWarning
} from "./chunk-VFKPH3SJ.js";
import "./chunk-OGOFPCXR.js";
import "./chunk-4LHYQSW7.js";
import "./chunk-GU4RVAU5.js";
import {
  EXIT,
  answer,
  answerJson,
  paintFor,
  refuse
} from "./chunk-QOSRWPWR.js";
import "./chunk-NHPGJLL4.js";
import "./chunk-OQY4R7CT.js";
import "./chunk-WA5SZDQ5.js";
import "./chunk-2NHG2YQ4.js";
import {
  printDifference,
  printDuration,
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import "./chunk-PMYOLCKT.js";
import "./chunk-DDB2KZF2.js";
import "./chunk-2Y6UMGL7.js";
import "./chunk-PYB7INDF.js";
import "./chunk-BKGWRYOW.js";
import "./chunk-O435DZD7.js";
import {
  fahrenheitDeltaFromCelsiusDelta
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";
import "./chunk-OEDHJ3SZ.js";
import "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";

// src/core/charts/reachChart.ts
var HEIGHT = 340;
function reachChart(input) {
  if (input.reach.length === 0) throw new RangeError("reachChart: no rows");
  const colours = theme(input.dark);
  const frame = frameOf(input);
  const speed = speedOf(input.unit);
  const { field, title } = temperature(input.unit);
  const places = {
    xField: field,
    yField: speed.field,
    x: acrossAxis(title, frame.x, temperatureTicks(frame.x[0], frame.x[1], input.unit)),
    y: upAxis(speed.title, frame.y, evenTicks(0, frame.y[1], 6))
  };
  const lines = linesOf(input, colours);
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input),
    title: {
      text: input.title,
      subtitle: "Learned from its logs; climbing and falling both drawn upward"
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...strips(places, frame, input, colours),
      ...lines.map((line) => lineLayer(places, line.rows, line.style, field)),
      ...bandNames(places, frame, input, lines, colours),
      ...keyLayers(
        places,
        frame,
        lines.map(({ name, details, rows, style }) => ({
          name,
          details,
          style,
          nearY: pixelAt(frame, 0, Number(rows.at(-1)?.[speed.field] ?? 0)).y
        })),
        colours
      )
    ],
    config: themeConfig(colours)
  };
}
function speedOf(unit) {
  return unit === "C" ? { field: "speedCPerHour", title: "Speed (\xB0C/h)", shown: (rate) => rate } : { field: "speedFPerHour", title: "Speed (\xB0F/h)", shown: fahrenheitDeltaFromCelsiusDelta };
}
function linesOf(input, colours) {
  const line = (of) => {
    const speed = speedOf(input.unit);
    const temp = temperature(input.unit);
    let piece = 0;
    return input.reach.flatMap((row) => {
      const rate = of(row);
      if (rate === null) {
        piece += 1;
        return [];
      }
      return [
        {
          [temp.field]: drawn(temp.shown(row.tempC)),
          [speed.field]: drawn(speed.shown(rate)),
          piece
        }
      ];
    });
  };
  const lines = [
    {
      name: "full power",
      details: [input.powerKnown ? "predicted" : "at least"],
      rows: line((row) => row.climbCPerHour),
      style: styleAt(colours.compared, 0)
    },
    {
      name: "fastest climb seen",
      details: ["any log, over 30 min"],
      rows: line((row) => row.seenCPerHour),
      style: styleAt(colours.compared, 2)
    },
    {
      name: "falling by itself",
      details: ["lid shut, power off"],
      rows: line((row) => row.fallCPerHour),
      style: styleAt(colours.compared, 1)
    }
  ];
  return lines.filter(({ rows }) => rows.length > 0);
}
function frameOf({ reach, unit }) {
  const { shown } = temperature(unit);
  const fastest = Math.max(
    10,
    ...reach.flatMap((row) => [row.climbCPerHour, row.fallCPerHour, row.seenCPerHour ?? 0])
  );
  return {
    width: PLOT_WIDTH,
    height: HEIGHT,
    x: [drawn(shown(reach[0].tempC)), drawn(shown(reach.at(-1).tempC))],
    y: [0, roundUp(speedOf(unit).shown(fastest) * 1.05)]
  };
}
function strips(places, frame, { bands, unit }, colours) {
  if (bands.length === 0) return [];
  const { shown } = temperature(unit);
  return [
    {
      data: {
        values: bands.map((band) => ({
          band: band.name,
          [places.xField]: drawn(shown(band.lowC)),
          high: drawn(shown(band.highC)),
          [places.yField]: frame.y[0],
          top: frame.y[1]
        }))
      },
      mark: { type: "rect", color: colours.band, opacity: colours.bandOpacity },
      encoding: { ...placing(places), x2: { field: "high" }, y2: { field: "top" } }
    }
  ];
}
function bandNames(places, frame, { bands, unit }, lines, colours) {
  const pixels = lines.flatMap(({ rows }) => rowPixels(rows, places.xField, places.yField, frame));
  const { shown } = temperature(unit);
  const labels = bands.map((band) => {
    const width = labelWidth(band.name);
    const middle = pixelAt(frame, shown((band.lowC + band.highC) / 2), 0).x;
    const box = freestBox(
      [6, 28, 60, 120, 180, 240].map((top) => ({
        left: middle - width / 2,
        right: middle + width / 2,
        top,
        bottom: top + LINE_HEIGHT
      })),
      { lines: pixels, boxes: [] },
      frame
    );
    return {
      text: band.name,
      at: { x: middle, y: (box.top + box.bottom) / 2 },
      align: "center"
    };
  });
  return labelLayers(places, frame, labels, colours.quiet, null);
}
function descriptionOf({ title, reach, bands, unit }) {
  const from = printTemperature(reach[0].tempC, unit);
  const to = printTemperature(reach.at(-1).tempC, unit);
  const names = bands.map((band) => band.name);
  const also = names.length > 0 ? `; strips mark ${names.join(" and ")}` : "";
  return `${title}: speed against temperature from ${from} to ${to}, climbing at full power, the fastest climb seen, and falling by itself${also}.`;
}

// src/core/reports/kilnBlocks.ts
function kilnBlocks(kiln, context) {
  const { unit, charts = {}, sources = [] } = context;
  return [
    { kind: "lead", text: leadText(kiln, unit) },
    { kind: "facts", facts: headlineFacts(kiln, unit) },
    ...chartBlocks("How fast it goes, against temperature", charts.reach),
    ...findingBlocks(kiln.findings, { unit, startOfDaySeconds: null }),
    { kind: "heading", text: "How fast it goes" },
    reachTable(kiln, unit),
    { kind: "heading", text: "Firing by firing" },
    ...kiln.firings.flatMap((firing) => firingBlocks(firing, unit)),
    ...basisBlocks(
      {
        heatwork: null,
        crossings: [],
        findings: kiln.findings,
        sources: [...modelSentences(kiln, unit), ...sources]
      },
      unit
    ),
    ...cautionBlocks(kiln.cautions)
  ];
}
function leadText(kiln, unit) {
  const near = (tempC) => kiln.reach.find((row) => row.tempC === tempC);
  const [red, bright] = [near(600), near(1e3)];
  const count = kiln.firings.length === 1 ? "one firing" : `${kiln.firings.length} firings`;
  const orMore = kiln.power.from === "output" ? "" : " or more";
  const climbs = [red, bright].filter((row) => row !== void 0).map(
    ({ climbCPerHour, tempC }) => `${printRate(climbCPerHour, unit)}${orMore} at ${printTemperature(tempC, unit)}`
  );
  return `Learned from ${count}: at full power it climbs at ${climbs.join(" and ")}`;
}
function headlineFacts(kiln, unit) {
  const { power, cooling, ceilingC, twoNode } = kiln;
  return [
    {
      label: "power",
      text: power.from === "output" ? `from the output column of ${power.firing}` : `from the fastest climb, in ${power.firing}`
    },
    {
      label: "cooling",
      text: `seen by itself from ${printTemperature(cooling.highestC, unit)} down to ${printTemperature(cooling.lowestC, unit)}, in ${cooling.firings.join(", ")}`
    },
    {
      label: "ceiling",
      text: `${power.from === "output" ? "about" : "at least"} ${printTemperature(ceilingC, unit)} with everything on`
    },
    {
      label: "brick",
      text: twoNode === null ? "not told apart from the ware: that needs a firing with its output, from cold to cold" : `told apart from the ware in ${twoNode.firing}`
    },
    ...twoNode === null ? [] : [
      {
        label: "lag",
        text: `the thermocouple follows about ${printDuration(30 * Math.round(twoNode.lagSeconds / 30))} late, give or take a step of the log`
      }
    ]
  ];
}
function reachTable(kiln, unit) {
  return {
    kind: "table",
    caption: "Speed at a temperature",
    columns: [
      { head: "at", align: "right" },
      {
        head: kiln.power.from === "output" ? "full power" : "full power, at least",
        align: "right"
      },
      { head: "fastest climb seen", align: "right" },
      { head: "falling by itself", align: "right" }
    ],
    rows: kiln.reach.filter(({ tempC }) => tempC % 100 === 0).map((row) => [
      printTemperature(row.tempC, unit),
      row.climbCPerHour === 0 ? "hardly any" : printRate(row.climbCPerHour, unit),
      row.seenCPerHour === null ? "not seen" : printRate(row.seenCPerHour, unit),
      printRate(row.fallCPerHour, unit)
    ])
  };
}
function firingBlocks(firing, unit) {
  const rate = (value) => value === null ? "not seen" : printRate(value, unit);
  const { fullOnFraction, energyKWh, cost } = firing;
  const when = firing.start === null ? "" : `, started ${firing.start.replace("T", " ").slice(0, 16)}`;
  const facts = [
    { label: "peak", text: printTemperature(firing.peakC, unit) },
    {
      label: "by itself",
      text: `${rate(firing.fallAtQuartzCPerHour)} at ${printTemperature(573, unit)}, ${rate(firing.fallAtCristobaliteCPerHour)} at ${printTemperature(226, unit)}`
    },
    { label: "cool", text: coolText(firing.cooledTo, unit) },
    { label: "readings", text: `scatter by \xB1 ${scatterText(firing.noiseK, unit)}` },
    ...fullOnFraction === null ? [] : [
      {
        label: "fully on",
        text: fullOnFraction < 5e-3 ? "never: what it can do at full power is worked out from its output" : `${Math.round(fullOnFraction * 100)} % of the time up to the peak`
      }
    ],
    ...energyKWh === null ? [] : [
      {
        label: "energy",
        text: `${Math.round(energyKWh)} kWh${cost === null ? "" : `, ${costFigure(cost)} at the tariff given`}, or less: worn elements draw less than when new`
      }
    ]
  ];
  return [
    { kind: "sentence", text: `${firing.name}${when}`, style: "strong" },
    { kind: "facts", facts }
  ];
}
function coolText(cooledTo, unit) {
  if (cooledTo.length === 0) return "the log ends before, and the kiln was opened";
  return cooledTo.map(
    ({ tempC, secondsFromPeak, how }) => `${printTemperature(tempC, unit)} ${printDuration(secondsFromPeak)} after the peak${how === "measured" ? "" : " (worked out)"}`
  ).join(", ");
}
function scatterText(noiseK, unit) {
  const shown = unit === "C" ? noiseK : fahrenheitDeltaFromCelsiusDelta(noiseK);
  return `${shown.toFixed(1)} \xB0${unit}`;
}
function modelSentences({ twoNode }, unit) {
  return [
    "The constants of the balance fit these logs, with their loads in their room; they are no properties of the kiln",
    `Above ${printTemperature(1e3, unit)} the climb is counted at 85 % of what the balance gives, for bricks still soaking up heat`,
    ...twoNode === null ? [] : [
      `With brick and ware told apart, the simulated firing lies within ${printDifference(Math.max(1, twoNode.rmsK), unit)} of the log of ${twoNode.firing}, root mean square`
    ]
  ];
}

// src/core/reports/kilnHtml.ts
function kilnHtml(kiln, options) {
  return reportHtml({ title: options.title, language: "en", blocks: kilnBlocks(kiln, options) });
}

// src/core/reports/kilnText.ts
function kilnText(kiln, options) {
  return reportText({ title: options.title, blocks: kilnBlocks(kiln, options) }, options.paint);
}

// src/cli/commands/kiln.ts
async function run(paths, options) {
  const power = wattsFrom(options.power);
  const tariff = tariffFrom(options.tariff);
  const logs = await readLogs(paths, options);
  if (!power.ok || !tariff.ok || !logs.ok)
    return refuse(
      [power, tariff, logs].flatMap((result) => result.ok ? [] : result.problems),
      options
    );
  const { firings, isFahrenheit } = logs.value;
  const learned = learnKiln(firings, {
    ...power.value !== null && { powerWatt: power.value },
    ...tariff.value !== null && { tariffPerKWh: tariff.value }
  });
  if (!learned.ok) return refuse(learned.problems, options);
  const unit = options.unit ?? (isFahrenheit ? "F" : "C");
  const name = firings.map(({ kiln }) => kiln).find((kiln) => kiln) ?? null;
  const title = name ?? "A kiln as its logs show it";
  const chart = (dark) => reachChart({
    title: name === null ? "How fast the kiln goes" : `How fast it goes: ${name}`,
    reach: learned.value.reach,
    bands: [QUARTZ_BAND, CRISTOBALITE_BAND],
    powerKnown: learned.value.power.from === "output",
    unit,
    dark
  });
  const written = await writePictures(options, {
    html: async () => kilnHtml(learned.value, { unit, title, charts: await drawn2({ reach: chart }) }),
    picture: () => chart(false)
  });
  if (!written.ok) return refuse(written.problems, options);
  if (options.json) answerJson(kilnDocument(learned.value, name));
  else answer(kilnText(learned.value, { unit, title, paint: paintFor(options) }));
  return hasWarning(learned.value.findings) ? EXIT.no : EXIT.fine;
}
async function readLogs(paths, options) {
  const logOptions = logOptionsFrom(options);
  if (!logOptions.ok) return logOptions;
  const firings = [];
  const problems = [];
  let isFahrenheit = true;
  for (const path of paths) {
    const files = await readFiring(path, {
      options: logOptions.value,
      recordPath: null,
      schedulePath: null
    });
    if (!files.ok) {
      problems.push(...files.problems);
      continue;
    }
    const { reading, record } = files.value;
    isFahrenheit &&= reading.unit === "F";
    const firing = kilnFiringOf(reading, record);
    if (firing === null) problems.push(noTemperatures(reading.name));
    else firings.push(firing);
  }
  return problems.length > 0 ? failed(...problems) : ok({ firings, isFahrenheit });
}
function noTemperatures(name) {
  return {
    code: "kiln/no-temperatures",
    where: name,
    what: "no temperature column has two readings or more",
    expected: "a column of temperatures over a whole firing",
    fix: "name the column with --column"
  };
}
export {
  run
};
