import type { Source } from "./source.ts";

/** Sources of the logs room. */
export const LOGS_SOURCES = {
  hampel: {
    title:
      "The Hampel identifier: outliers by the median and its absolute deviations (Pearson 1999)",
    publisher: "IEEE Transactions on Control Systems Technology 7, 55–63",
    year: 1999,
    locator: "as described in signal-processing documentation",
    seen: "copy",
  },
  "iec-60584-1": {
    title: "IEC 60584-1: Thermocouples, EMF specifications and tolerances",
    publisher: "International Electrotechnical Commission",
    year: 2013,
    locator: "upper ends of the reference tables: K 1372 °C, S and R 1768.1 °C, B 1820 °C",
    seen: "copy",
  },
  "csv-spectrum": {
    title: "csv-spectrum: a variety of CSV files to serve as an acid test",
    publisher: "npm package csv-spectrum 2.0.0, BSD-2-Clause",
    year: null,
    locator: "csvs/ and json/",
    seen: "read",
  },
  "vega-datasets": {
    title: "vega-datasets: example data for visualisation",
    publisher: "npm package vega-datasets 3.2.1",
    year: null,
    locator: "data/*.csv",
    seen: "read",
  },
  "firing-practice": {
    title: "How long firings last, how fast kilns heat, and how warm a studio is",
    publisher: "common practice",
    year: null,
    locator: "limits set wide on purpose, used only to choose between units",
    seen: "common practice",
  },
  "summer-time": {
    title: "Days and hours at which clocks are changed in Europe and America",
    publisher: "from memory",
    year: null,
    locator: "small hours of a Sunday",
    seen: "from memory",
  },
} as const satisfies Record<string, Source>;
