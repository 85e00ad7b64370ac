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
