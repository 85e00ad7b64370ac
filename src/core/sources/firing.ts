import type { Source } from "./bibliography.ts";

/** Sources of the firing room: what a hold is, how two curves are compared, when kilns are opened. */
export const FIRING_SOURCES = {
  "iso-1182-2020": {
    title: "EN ISO 1182: reaction to fire tests for products, non-combustibility test",
    publisher: "ISO and CEN",
    year: 2020,
    locator: "7.2.4, furnace stabilization, in a public excerpt of BS EN ISO 1182:2020",
    seen: "copy",
  },
  "imo-ftp-2010": {
    title: "Fire Test Procedures Code, annex 1, part 3",
    publisher: "International Maritime Organization",
    year: 2010,
    locator: "8.3.1.3, deviation of the area under the furnace curve",
    seen: "read",
  },
  "ams-2750": {
    title:
      "AMS 2750F: pyrometry, as an article on temperature uniformity gives its furnace classes",
    publisher: "SAE International",
    year: 2020,
    locator: "furnace class 6, ± 28 °C",
    seen: "at second hand",
  },
  "opening-practice": {
    title: "When to open a kiln",
    publisher: "teaching notes and potters' lists",
    year: null,
    locator: "first crack at or below 200 to 250 °C, unloading at or below 100 to 120 °C",
    seen: "common practice",
  },
  "reading-cracks": {
    title: "Reading a crack: edges, pattern, place and ring",
    publisher: "potters' teaching notes",
    year: null,
    locator: "rounded edges are older than the glaze, sharp ones younger; a cracked pot rings dull",
    seen: "common practice",
  },
  "wilson-2003": {
    title: "Moisture expansion of fired clay with the fourth root of time",
    author: "Wilson et al.",
    publisher: "Physical Review Letters 90",
    year: 2003,
    locator: "125503",
    seen: "abstract only",
  },
  "freiman-1984": {
    title: "Effects of chemical environments on slow crack growth in glasses and ceramics",
    author: "S. W. Freiman",
    publisher: "Journal of Geophysical Research 89",
    year: 1984,
    locator: "p. 4072, growth that goes on under steady stress",
    seen: "abstract only",
  },
  "thouless-1990": {
    title: "Crack spacing in brittle films on elastic substrates",
    author: "M. D. Thouless",
    publisher: "Journal of the American Ceramic Society 73",
    year: 1990,
    locator: "p. 2144, spacing with the square root of thickness",
    seen: "at second hand",
  },
  "hutchinson-suo-1992": {
    title: "Mixed mode cracking in layered materials",
    author: "Hutchinson & Suo",
    publisher: "Advances in Applied Mechanics 29",
    year: 1992,
    locator: "p. 63, a layer in tension that cracks, and how deep; applied to glaze by us",
    seen: "at second hand",
  },
  "killick-2012": {
    title: "Optimal detection of changepoints with a linear computational cost",
    author: "Killick, Fearnhead & Eckley",
    publisher: "Journal of the American Statistical Association 107",
    year: 2012,
    locator: "p. 1590, pruning",
    seen: "abstract only",
  },
  "lemire-2007": {
    title: "A better alternative to piecewise linear time series segmentation",
    author: "D. Lemire",
    publisher: "SIAM Data Mining",
    year: 2007,
    locator: "arXiv cs/0605103, constant and linear pieces together",
    seen: "abstract only",
  },
} as const satisfies Record<string, Source>;

/** Sources of the schedules room: what is published or taught about firing, stage by stage. */
export const SCHEDULES_SOURCES = {
  "mastering-cone-6": {
    title: "Mastering Cone 6 Glazes, schedules as quoted by a reader in a forum post",
    publisher: "J. Hesselberth & R. Roy",
    year: 2002,
    locator: "bisque 100 °C/h from 100 to 900 °C; cone 6 medium glaze; slow cool 1900 to 1400 °F",
    seen: "at second hand",
  },
  "bisque-guide": {
    title: "Firing schedule guide",
    publisher: "a firing guide on the web",
    year: null,
    locator: "bisque 04, slow and medium: 150 to 200 °F/h to 1700 °F, 108 °F/h to 1945 °F",
    seen: "read",
  },
  "cautious-bisque": {
    title: "Bisque for thick work, post on the Clayart list",
    publisher: "potters' mailing list",
    year: 2020,
    locator: "180 °F for 3 h; 100 to 150 °F/h to 250 °F; 125 °F/h to 1900 °F",
    seen: "read",
  },
  "european-bisque": {
    title: "Bisque schedules, forum topic 4889",
    publisher: "Ceramic Arts Network community",
    year: null,
    locator: "damp ware 82 °C for 1 to 4 h; 100 °C/h to 600 °C; thin ware 200 °F/h to 220 °F",
    seen: "read",
  },
  "candling-sculpture": {
    title: "Sculptor's note on candling",
    publisher: "web page",
    year: 2014,
    locator: "6 h or more at 65 to 120 °C for sculpture",
    seen: "read",
  },
  "bisque-carbon": {
    title: "Notes on bisque: carbon out of the clay between 650 and 950 °C",
    publisher: "common teaching",
    year: null,
    locator: "700 to 900 °C at 60 to 80 °C/h",
    seen: "from memory",
  },
  "burn-out-hold": {
    title: "Hold for burning out, post on the Clayart list",
    publisher: "potters' mailing list",
    year: 2019,
    locator: "about 1500 °F for about 1 h",
    seen: "read",
  },
  "cone-chart-rates": {
    title: "Temperature equivalent chart for pyrometric cones",
    publisher: "Edward Orton Jr. Ceramic Foundation",
    year: 2016,
    locator: "rates hold for the last 100 °C; columns 15, 60 and 150 °C/h",
    seen: "copy",
  },
  "soak-length": {
    title: "How long a soak for gloss, post on the Clayart list",
    publisher: "potters' mailing list",
    year: 2002,
    locator: "15 to 20 min is enough; runs appear beyond 1 h",
    seen: "read",
  },
} as const satisfies Record<string, Source>;

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

/** Sources of the kiln room: how a hot body loses heat. */
export const KILN_SOURCES = {
  "bejan-kraus-2003": {
    title: "Heat Transfer Handbook",
    author: "Bejan & Kraus",
    publisher: "Wiley",
    year: 2003,
    locator: "lumped body cooled by radiation, equation 3.283",
    seen: "read",
  },
  "codata-2018": {
    title: "Recommended values of the fundamental physical constants",
    author: "CODATA",
    publisher: "National Institute of Standards and Technology",
    year: 2018,
    locator: "Stefan–Boltzmann constant",
    seen: "from memory",
  },
} as const satisfies Record<string, Source>;
