import type { Source } from "./source.ts";

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
