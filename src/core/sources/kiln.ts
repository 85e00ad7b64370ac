import type { Source } from "./source.ts";

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
