import type { Source } from "./source.ts";

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
