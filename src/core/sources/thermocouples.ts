import type { Source } from "./source.ts";

/** Sources of the thermocouple room: emf and temperature, limits of new wire, drift, lag. */
export const THERMOCOUPLES_SOURCES = {
  "nist-monograph-175": {
    title:
      "Temperature-Electromotive Force Reference Functions and Tables for the Letter-Designated Thermocouple Types Based on the ITS-90",
    author: "Burns, Scroger, Strouse, Croarkin & Guthrie",
    publisher: "NIST Monograph 175",
    year: 1993,
    locator: "coefficients and tables of types B, J, K, N, R, S, T, from its files of plain text",
    seen: "copy",
  },
  "astm-e230": {
    title: "ASTM E230/E230M-12: temperature-emf tables for standardized thermocouples",
    publisher: "ASTM International",
    year: 2012,
    locator: "tolerances on initial values, standard and special, in a summary of the document",
    seen: "at second hand",
  },
  "astm-e230-service": {
    title: "ASTM E230: suggested upper temperature limits of protected thermocouples, by gauge",
    publisher: "ASTM International",
    year: 2012,
    locator: "table of limits in closed-end protecting tubes, as several summaries give it",
    seen: "at second hand",
  },
  "iec-60584-tolerances": {
    title: "IEC 60584-1: thermocouples, EMF specifications and tolerances",
    publisher: "International Electrotechnical Commission",
    year: 2013,
    locator: "tolerance classes 1, 2 and 3, in summaries and a comparison table",
    seen: "at second hand",
  },
  "webster-2021": {
    title: "On base-metal thermocouples: their tolerances predict error in use poorly",
    author: "Webster",
    publisher: "Measurement Science and Technology 32",
    year: 2021,
    locator: "085007",
    seen: "at second hand",
  },
  "kollie-1975": {
    title: "On errors of type K thermocouples by short-range ordering in the Ni–Cr leg",
    author: "Kollie et al.",
    publisher: "Oak Ridge National Laboratory, ORNL-TM-4862",
    year: 1975,
    locator: "errors up to 1.7 % after annealed wire was heated above 200 °C; gone above 600 °C",
    seen: "at second hand",
  },
  "sheath-response": {
    title: "Response times of mineral-insulated thermocouples",
    publisher: "a data sheet of sheathed thermocouples",
    year: null,
    locator: "air at 2 m/s, 90 %: 0.5 mm 5.5 s, 1.0 mm 10 s, 1.5 mm 25 s, 3.0 mm 80 s",
    seen: "read",
  },
} as const satisfies Record<string, Source>;
