import type { Source } from "./source.ts";

/** Sources of the pings room: how clicks of cracking thin out, and how they are told apart. */
export const PINGS_SOURCES = {
  "utsu-1961": {
    title: "A statistical study on the occurrence of aftershocks",
    author: "T. Utsu",
    publisher: "Geophysical Magazine 30",
    year: 1961,
    locator: "modified Omori law: rate in proportion to 1/(t + c)^p",
    seen: "from memory",
  },
  "ogata-1983": {
    title: "Estimation of the parameters in the modified Omori formula by maximum likelihood",
    author: "Y. Ogata",
    publisher: "Journal of Physics of the Earth 31",
    year: 1983,
    locator: "likelihood of the times themselves",
    seen: "from memory",
  },
  "baro-2013": {
    title: "Statistical similarity between the compression of a porous material and earthquakes",
    author: "J. Baró et al.",
    publisher: "Physical Review Letters 110, 088702",
    year: 2013,
    locator: "cracking of porous silica keeps to the modified Omori law",
    seen: "abstract only",
  },
  "crack-growth-law": {
    title: "Clicks of slow crack growth: p = 1 − m/(n − 2)",
    publisher: "worked out here",
    year: 2026,
    locator:
      "constant stress, flaws of Weibull modulus m, crack speed as the n-th power of stress intensity; m 5 and n 18 give 0.69, m 10 gives 0.38",
    seen: "own computation",
  },
  "moisture-click-law": {
    title: "Clicks of moisture growth: p = 3/4",
    publisher: "worked out here",
    year: 2026,
    locator: "one click for every equal step of a growth that goes with the fourth root of time",
    seen: "own computation",
  },
  "ping-onset": {
    title: "First ping against misfit: set point minus onset = K(1 − ν)/(E Δα √(Z h))",
    publisher: "channel cracks in a thin coat",
    year: 2026,
    locator: "0.4 mm of glaze: misfit 1.0, 1.5, 2.0 millionths per kelvin give 306, 204, 153 K",
    seen: "own computation",
  },
  "kass-raftery-1995": {
    title: "Bayes factors",
    author: "R. E. Kass & A. E. Raftery",
    publisher: "Journal of the American Statistical Association 90",
    year: 1995,
    locator: "a BIC difference over 10 is very strong evidence",
    seen: "from memory",
  },
  "ashman-1994": {
    title: "Detecting bimodality in astronomical datasets",
    author: "K. M. Ashman, C. M. Bird & S. E. Zepf",
    publisher: "Astronomical Journal 108",
    year: 1994,
    locator: "two groups are clearly apart when D is over 2",
    seen: "from memory",
  },
  "kulldorff-1997": {
    title: "A spatial scan statistic",
    author: "M. Kulldorff",
    publisher: "Communications in Statistics: Theory and Methods 26",
    year: 1997,
    locator: "likelihood ratio of the best window against seeded random ones",
    seen: "from memory",
  },
} as const satisfies Record<string, Source>;
