import type { Source } from "./bibliography.ts";

/** A public copy of a chart, with its place; the common shape of most entries below. */
function copyOf(title: string, publisher: string, year: number | null, locator: string): Source {
  return { title, publisher, year, locator, seen: "copy" };
}

/** What somebody else quotes, with the place where it is quoted. */
function quoted(title: string, publisher: string, year: number | null, locator: string): Source {
  return { title, publisher, year, locator, seen: "at second hand" };
}

const CHART_C = "Temperature Equivalent Chart for pyrometric cones (°C), cones 022–14";
const CONE_MAKER = "Edward Orton Jr. Ceramic Foundation";
const POTTERS_LIST = "Clayart discussion list";
const ARTS_FORUM = "Ceramic Arts Network forum";

/** Sources of the cones room: the copies that every table row was read from, and the notes on behaviour. */
export const CONES_SOURCES = {
  "cones-ort-c1": copyOf(
    CHART_C,
    CONE_MAKER,
    null,
    "earlier edition, copy at formsbank.com/template/288043: rows 022–08 readable, with text",
  ),
  "cones-ort-c2016": copyOf(
    CHART_C,
    CONE_MAKER,
    2016,
    "copy at scribd.com/document/456397963: rows 022–014 readable, with text",
  ),
  "cones-chart-f": copyOf(
    "Cone table in °F, 108 and 270 °F/h, self-supporting cones 022–10",
    CONE_MAKER,
    null,
    "as copied on two web pages of one text, counted once",
  ),
  "cones-large-c": copyOf(
    "Large-cone table, 60 and 150 °C/h, cones 012–12, with notes on bending",
    CONE_MAKER,
    null,
    "as copied on a web page",
  ),
  "cones-clay06a": copyOf(
    "Orton cone chart",
    POTTERS_LIST,
    2006,
    "November, potters.org/subject81597",
  ),
  "cones-clay06b": quoted(
    "End points quoted by L. Krakowski",
    POTTERS_LIST,
    2006,
    "February, potters.org/subject91937",
  ),
  "cones-can-22092": copyOf(
    "Large-cone end points and heatwork of cooling",
    ARTS_FORUM,
    null,
    "topic 22092",
  ),
  "cones-can-23526": copyOf("Cone 5 and cone 6 at two rates", ARTS_FORUM, null, "topic 23526"),
  "cones-can-5036": copyOf("Soaks and witness cones", ARTS_FORUM, null, "topic 5036"),
  "cones-can-mp": copyOf("A kiln owner's own schedule", ARTS_FORUM, null, "user post"),
  "cones-hodaka": copyOf("Cone chart", "hodakapottery.wordpress.com", 2008, "20 November"),
  "cones-glacures": copyOf(
    "Les cônes Orton",
    CONE_MAKER,
    null,
    "as copied on a French page on glazes",
  ),
  "cones-ratings": copyOf("Cone ratings", CONE_MAKER, null, "as copied on a web page"),
  "cones-chart-notes": copyOf(
    "Notes printed with the temperature equivalent chart",
    CONE_MAKER,
    null,
    "as copied on a web page: bending time and soak rule",
  ),
  "cones-cone-list": copyOf("List of cones", CONE_MAKER, null, "as copied on a web page"),
  "cones-cone-13": copyOf("Cone 13", CONE_MAKER, null, "as copied on a web page"),
  "cones-otten": copyOf(
    "Crystalline glazes",
    "interestingcraftfacts.nancyottenbreit.com",
    null,
    "page on crystalline glazes",
  ),
  "cones-wyd": copyOf(
    "Cone temperatures in a newspaper piece",
    "wydailyarchives.com",
    2017,
    "20 February",
  ),
  "cones-russ": copyOf("A cone 05 firing", "russblib.blogspot.com", 2017, "March"),
  "cones-mosh": copyOf("Cone temperatures", "mightoughtashould.blogspot.com", 2010, "June"),
  "cones-artdict": copyOf("Glossary entry on cones", "freeartdictionary.com", null, "cones"),
  "cones-potter-chart": copyOf("Cone chart", CONE_MAKER, null, "as copied on a potter's page"),
  "cones-firing-chart": copyOf("Firing chart", CONE_MAKER, null, "as copied on a web page"),
  "cones-bcc": copyOf(
    "Firing Temperatures",
    "Bellevue Community College",
    null,
    "hand-out, scribd 458679152 and docslib 8883373",
  ),
  "cones-hamer": quoted(
    "F. and J. Hamer, The Potter's Dictionary",
    POTTERS_LIST,
    null,
    "as quoted at potters.org/subject29084 (table) and subject44697 (history)",
  ),
  "cones-chappell": quoted(
    "J. Chappell, The Potter's Complete Book of Clay and Glazes",
    POTTERS_LIST,
    2000,
    "as quoted at potters.org/subject29084",
  ),
  "cones-ginna": copyOf("Cone chart", "ginna.com", null, "ginna.com/cone_chart.html"),
  "cones-is-1528": quoted(
    "IS 1528-1: refractoriness, table of cones",
    "Bureau of Indian Standards",
    null,
    "as quoted on a web page on furnace temperatures",
  ),
  "cones-tneutron": copyOf("Cone page", "tneutron.net", null, "cone page"),
  "cones-igloss": copyOf("Seger cones (SK)", "igloss.web.fc2.com", null, "cray/sksetumei.htm"),
  "cones-jp-other": copyOf(
    "Seger cones (SK), single numbers",
    "Japanese dictionary and potters' pages",
    null,
    "dictionary entries and potters' pages, taken together",
  ),
  "cones-arteraku": copyOf("Coni Seger", "arteraku.it", null, "arteraku.it/pagine/coni_seger.asp"),
  "cones-mc6": quoted(
    "J. Hesselberth and R. Roy, Mastering Cone 6 Glazes",
    ARTS_FORUM,
    2014,
    "as quoted in a user post, and at bluestarrgallery.blogspot.com, August 2010",
  ),
  "cones-clay00b": copyOf(
    "Holding cone 10 half down",
    POTTERS_LIST,
    2000,
    "potters.org/subject29738",
  ),
  "cones-clay07": copyOf(
    "A cone 6 firing with a soak",
    POTTERS_LIST,
    2007,
    "potters.org/subject101184",
  ),
  "cones-clay20": copyOf("Holding after cone 6", "lists.clayartworld.com", 2020, "January"),
  "cones-mel05": copyOf("Cone 11 after cone 10", POTTERS_LIST, 2005, "potters.org/subject81497"),
  "cones-andersen": copyOf("A firing with its cones", "anthonyandersen.blogspot.com", 2010, "May"),
  "cones-knighten": copyOf("A firing with its cones", "carol.knighten.org", 2019, "26 July"),
  "cones-ward01": copyOf(
    "M. Ward, Heat work: what cones really measure",
    "Clay Times",
    2001,
    "March",
  ),
  "cones-from-memory": {
    title: "Cone charts as remembered",
    publisher: "no copy could be reached",
    year: null,
    locator: "single cells of several tables; to be checked against a printed chart",
    seen: "from memory",
  },
} as const satisfies Record<string, Source>;

/** Key of a source of the cones room. */
export type ConesSourceId = keyof typeof CONES_SOURCES;

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
