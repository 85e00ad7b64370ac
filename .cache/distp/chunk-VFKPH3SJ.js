import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  CRACK_KINDS,
  KINDS,
  WEIGHTS,
  likelihoodOf
} from "./chunk-OGOFPCXR.js";
import {
  fillStrainTable,
  newStrainTable,
  strainIn
} from "./chunk-GU4RVAU5.js";
import {
  printMm,
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import {
  crackWords
} from "./chunk-DDB2KZF2.js";
import {
  ORDINARY_BODY,
  basedOn,
  cited
} from "./chunk-O435DZD7.js";
import {
  ZERO_CELSIUS_K
} from "./chunk-R2H4YYDI.js";

// src/core/ware/inversionBands.ts
var QUARTZ_BAND = {
  name: "quartz inversion",
  lowC: 520,
  highC: 620
};
var CRISTOBALITE_BAND = {
  name: "cristobalite inversion",
  lowC: 170,
  highC: 280
};
var SOME_CRISTOBALITE = 0.02;
function hasCristobalite(body) {
  return body.cristobaliteFraction.value >= SOME_CRISTOBALITE;
}
function bandSaid(band, ware) {
  if (band !== CRISTOBALITE_BAND.name || ware.isCristobalitic) return band;
  return ware.unit === "F" ? "below 570 \xB0F" : "below 300 \xB0C";
}
function publishedRates(unit) {
  const at = (tempC) => printTemperature(tempC, unit);
  const rate = (rateCPerHour) => printRate(rateCPerHour, unit);
  return [
    basedOn(`A textbook has ${rate(50)} through ${at(573)}`, "fraser-1986"),
    basedOn(
      `sanitary ware with walls of 12 mm is cooled at ${rate(60)} from ${at(600)} to ${at(500)}, and at ${rate(300)} and more below`,
      "fortuna-2000"
    ),
    `neither knows your ware; ${unit === "F" ? "below 570 \xB0F" : "below 300 \xB0C"} no rate was found that is published for pots`
  ];
}

// src/core/findings/runaway.ts
var RUNAWAY = "runaway";
function runawayIn(findings) {
  return findings.find(({ topic }) => topic === RUNAWAY) ?? null;
}

// src/core/findings/ordered.ts
var RANK = {
  warning: 0,
  caution: 1,
  note: 2
};
function ordered(findings) {
  return [...findings].sort(
    (a, b) => Number(b.topic === RUNAWAY) - Number(a.topic === RUNAWAY) || RANK[a.severity] - RANK[b.severity] || (a.span?.fromSeconds ?? -1) - (b.span?.fromSeconds ?? -1) || (a.topic < b.topic ? -1 : a.topic > b.topic ? 1 : 0)
  );
}
function hasWarning(findings) {
  return findings.some((finding) => finding.severity === "warning");
}

// src/core/curve/temperatureAt.ts
function temperatureAt(curve, seconds) {
  const { timesSeconds, tempsC } = curve;
  const last = timesSeconds.length - 1;
  if (!(seconds >= timesSeconds[0] && seconds <= timesSeconds[last]))
    return null;
  const left = lastAtOrBefore(timesSeconds, seconds);
  const from = timesSeconds[left];
  if (from === seconds) return tempsC[left];
  if (curve.gaps.some((gap) => gap.fromSeconds === from)) return null;
  const to = timesSeconds[left + 1];
  const share = (seconds - from) / (to - from);
  return tempsC[left] * (1 - share) + tempsC[left + 1] * share;
}
function lastAtOrBefore(timesSeconds, seconds) {
  let low = 0;
  let high = timesSeconds.length;
  while (low < high) {
    const middle = low + high >>> 1;
    if (timesSeconds[middle] <= seconds) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

// src/core/firing/hottestZone.ts
function hottestZone(zones) {
  const [first, ...others] = zones;
  if (!first) throw new RangeError("hottestZone: no zone");
  return others.reduce((best, zone) => zone.peakC > best.peakC ? zone : best, first);
}

// src/core/curve/peakOf.ts
function peakOf(curve) {
  const { tempsC } = curve;
  let index = 0;
  let tempC = tempsC[0];
  for (let i = 1; i < tempsC.length; i++)
    if (tempsC[i] > tempC) {
      index = i;
      tempC = tempsC[i];
    }
  return {
    tempC,
    seconds: curve.timesSeconds[index],
    index
  };
}

// src/core/ware/pieceShape.ts
var MUG_WIDE_MM = 120;
var PLATE_WIDE_MM = 240;
var MUG_HEIGHT = 1.15;
var PLATE_HEIGHT = 0.09;
var FLAT_HEIGHT = 1.5;
function pieceShape(geometry) {
  const { wallMm, baseMm, footprintRadiusMm } = geometry;
  const heightMm = geometry.heightMm ?? likelyHeightMm(2 * footprintRadiusMm);
  const flat = geometry.stands === "on edge" || heightMm <= FLAT_HEIGHT * Math.max(baseMm, wallMm);
  return {
    wallMm,
    baseMm,
    footRadiusMm: Math.max(geometry.footRadiusMm ?? footprintRadiusMm, baseMm),
    rimRadiusMm: Math.max(footprintRadiusMm, baseMm),
    heightMm: flat ? baseMm : heightMm
  };
}
function isFlat({ heightMm, baseMm }) {
  return heightMm <= baseMm;
}
var NAMED = [
  [
    /\b(?:tiles?|slabs?|plaques?|trivets?|coasters?|bricks?|discs?|test bars?)\b/i,
    { flat: true, heightOverWidth: 0, footOverWidth: 1 }
  ],
  [
    /\b(?:plates?|platters?|saucers?|trays?)\b/i,
    { flat: false, heightOverWidth: PLATE_HEIGHT, footOverWidth: 1 }
  ],
  [/\bbowls?\b/i, { flat: false, heightOverWidth: 0.45, footOverWidth: 0.55 }],
  [
    /\b(?:mugs?|cups?|beakers?|tumblers?|jars?|cylinders?)\b/i,
    { flat: false, heightOverWidth: MUG_HEIGHT, footOverWidth: 1 }
  ],
  [
    /\b(?:vases?|bottles?|jugs?|pitchers?)\b/i,
    { flat: false, heightOverWidth: 1.8, footOverWidth: 0.8 }
  ]
];
function shapeNamed(name) {
  return NAMED.find(([words]) => words.test(name))?.[1] ?? null;
}
function likelyHeightMm(wideMm) {
  const share = (wideMm - MUG_WIDE_MM) / (PLATE_WIDE_MM - MUG_WIDE_MM);
  const plate = Math.min(1, Math.max(0, share));
  return tenths(wideMm * (MUG_HEIGHT + (PLATE_HEIGHT - MUG_HEIGHT) * plate));
}
function tenths(mm) {
  return Math.round(mm * 10) / 10;
}

// src/core/ware/wareOf.ts
var ORDINARY_MUG = { wallMm: 6, baseMm: 8, widestMm: 85 };
var BASE_OVER_WALL = ORDINARY_MUG.baseMm / ORDINARY_MUG.wallMm;
var THICKEST_MM = 100;
var SHELF_MM = 16;
var FOOT_GAP_MM = 3;
var SIZES = [
  "wallMm",
  "baseMm",
  "thickestMm",
  "widestMm",
  "heightMm",
  "shelfMm",
  "footGapMm"
];
function wareOf(given) {
  checkSizes(given);
  const sized = thicknesses(given);
  const body = given.body ?? ORDINARY_BODY;
  const widestMm = given.widestMm ?? ORDINARY_MUG.widestMm;
  const isMug = !given.body && sized.isUnknown && given.widestMm === null;
  const { wallMm, baseMm } = sized;
  const shape = shapeFor(given, { baseMm, widestMm });
  const edge2 = given.stands === "on edge";
  return {
    ware: {
      body,
      geometry: {
        wallMm,
        baseMm,
        footprintRadiusMm: widestMm / 2,
        ...shape.geometry,
        ...edge2 && { stands: "on edge" },
        shelfMm: given.shelfMm ?? SHELF_MM,
        footGapMm: given.footGapMm ?? FOOT_GAP_MM,
        glazedSides: given.glazedSides ?? "none"
      }
    },
    isMug,
    meantFor: isMug ? "an ordinary stoneware mug (wide or thick pieces bear less)" : `${body.name}, wall ${printMm(wallMm)}, base ${printMm(baseMm)}`,
    assumed: [
      ...isMug ? [
        `the ware is not known: taken as an ordinary stoneware mug (wall ${wallMm} mm, base ${baseMm} mm, ${widestMm} mm wide); wide or thick pieces bear less`
      ] : [
        ...given.body ? [] : [`no body is named: taken as ${body.name}`],
        ...sized.assumed,
        ...given.widestMm === null ? [`taken to be ${widestMm} mm wide, as a mug is; wider pieces bear less`] : []
      ],
      ...edge2 ? [] : [shelfAssumed(given)],
      ...isMug || shape.assumed === null ? [] : [shape.assumed]
    ]
  };
}
function checkSizes(given) {
  for (const name of SIZES) {
    const size = given[name] ?? null;
    if (size !== null && !(size > 0 && Number.isFinite(size)))
      throw new RangeError(`wareOf: ${name} ${size}`);
  }
}
function sizedAsMug(known3) {
  const { wallMm, baseMm } = thicknesses({ ...known3, widestMm: null });
  return {
    wallMm: known3.wallMm ?? Math.round(wallMm),
    baseMm: known3.baseMm ?? Math.round(baseMm)
  };
}
function thicknesses({ wallMm, baseMm, thickestMm = null }) {
  const isUnknown = wallMm === null && baseMm === null && thickestMm === null;
  if (wallMm === null && baseMm === null && thickestMm !== null)
    return {
      wallMm: thickestMm,
      baseMm: thickestMm,
      isUnknown,
      assumed: ["wall and base taken to be as thick as the thickest part"]
    };
  if (wallMm === null && baseMm !== null) {
    const wall2 = baseMm / BASE_OVER_WALL;
    const assumed = [`wall taken as ${rounded(wall2)} mm, three quarters of the base`];
    return { wallMm: wall2, baseMm, isUnknown, assumed };
  }
  const wall = wallMm ?? ORDINARY_MUG.wallMm;
  if (baseMm !== null) return { wallMm: wall, baseMm, isUnknown, assumed: [] };
  if (thickestMm !== null && thickestMm > wall)
    return {
      wallMm: wall,
      baseMm: thickestMm,
      isUnknown,
      assumed: ["base taken to be as thick as the thickest part"]
    };
  const base = Math.min(wall * BASE_OVER_WALL, Math.max(wall, THICKEST_MM));
  const why = base < wall * BASE_OVER_WALL ? "" : ", a third thicker than the wall";
  return {
    wallMm: wall,
    baseMm: base,
    isUnknown,
    assumed: [`base taken as ${rounded(base)} mm${why}`]
  };
}
function shelfAssumed({ shelfMm, footGapMm }) {
  const shelf = typeof shelfMm === "number" ? "cordierite shelf" : `cordierite shelf of ${SHELF_MM} mm`;
  const gap = typeof footGapMm === "number" ? "" : ` and ${FOOT_GAP_MM} mm of air under the foot`;
  return `${shelf}${gap} assumed`;
}
function rounded(mm) {
  return String(Math.round(mm * 10) / 10);
}
function shapeFor({ heightMm, name, stands }, { baseMm, widestMm }) {
  const named = shapeNamed(name ?? "");
  const footRadiusMm = (named?.footOverWidth ?? 1) * widestMm / 2;
  if (typeof heightMm === "number") return { geometry: { heightMm, footRadiusMm }, assumed: null };
  if (stands === "on edge" || named?.flat)
    return { geometry: { heightMm: baseMm, footRadiusMm }, assumed: null };
  const high = named === null ? likelyHeightMm(widestMm) : tenths(named.heightOverWidth * widestMm);
  return {
    geometry: { heightMm: high, footRadiusMm },
    assumed: `${Math.round(high)} mm high assumed`
  };
}

// src/core/curve/selected.ts
var FEW = 64;
var MOST_ROUNDS = 100;
function selected(values, place) {
  let from = 0;
  let to = values.length - 1;
  for (let round = 0; to - from > FEW && round < MOST_ROUNDS; round++) {
    const pivot = middleOfThree(values, from, to);
    let low = from;
    let high = to;
    while (low <= high) {
      while (values[low] < pivot) low++;
      while (values[high] > pivot) high--;
      if (low > high) break;
      const moved = values[low];
      values[low++] = values[high];
      values[high--] = moved;
    }
    if (place <= high) to = high;
    else if (place >= low) from = low;
    else return pivot;
  }
  return values.subarray(from, to + 1).sort()[place - from];
}
function middleOfThree(values, from, to) {
  const a = values[from];
  const b = values[from + to >> 1];
  const c = values[to];
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}

// src/core/curve/median.ts
function medianInPlace(values) {
  if (values.length === 0) return Number.NaN;
  const all = values instanceof Float64Array ? values : Float64Array.from(values);
  const middle = all.length >>> 1;
  const high = selected(all, middle);
  if (all.length % 2 === 1) return high;
  let low = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < middle; i++) low = Math.max(low, all[i]);
  return (low + high) / 2;
}

// src/core/firing/diagnosis/answerTable.ts
var OWN = "our own estimate";
var PRACTICE = `${cited("reading-cracks")}; how often is our own estimate`;
var MOISTURE = `${basedOn(
  "fired clay swells for years, fastest in its first hours, and glass under stress cracks with delay",
  "wilson-2003",
  "freiman-1984"
)}; how often is our own estimate`;
var LAYER = `${basedOn(
  "a layer in tension cracks deeper the thicker it is, and a thin wall bears less",
  "hutchinson-suo-1992"
)}; how often is our own estimate`;
var WRITTEN = {
  depth: {
    through: {
      answer: "cracks through the wall",
      shares: [3, 2, 6, 54, 54, 48, 76, 58, 45, 30, 22, 35],
      statement: "It is cracked through the wall: more than its glaze gave way.",
      basis: PRACTICE
    },
    crackle: {
      answer: "crackle in the glaze",
      shares: [88, 88, 2, 1, 1, 3, 1.5, 0.5, 0.5, 0.5, 0.3, 12],
      statement: "The glaze has crackled, as it does when it shrinks more than the clay.",
      basis: PRACTICE
    },
    crack: {
      answer: "a crack, how deep is not known",
      shares: [8, 9, 6, 13, 13, 18, 11, 30, 30, 26, 20, 26],
      statement: "It is cracked; how deep is not known.",
      basis: OWN
    },
    dunt: {
      answer: "called a dunt",
      shares: [0.5, 0.3, 0.3, 30, 30, 28, 9, 2, 1.5, 1, 1, 5],
      statement: "It was called a dunt: a crack through the wall from cooling.",
      basis: OWN
    },
    "S-crack": {
      answer: "an S-crack",
      shares: [0.1, 0.1, 0.1, 0.3, 0.3, 0.3, 0.3, 1, 2, 4, 55, 0.5],
      statement: "It was called an S-crack, which a base thrown without pressing it together gets in drying.",
      basis: PRACTICE
    },
    "drying crack": {
      answer: "called a drying crack",
      shares: [0.1, 0.1, 0.1, 0.3, 0.3, 0.3, 0.3, 2, 4, 40, 2, 1],
      statement: "It was called a drying crack.",
      basis: OWN
    },
    "bisque crack": {
      answer: "called a bisque crack",
      shares: [0.1, 0.1, 0.1, 0.3, 0.3, 0.3, 0.3, 3, 22, 4, 1, 0.8],
      statement: "It was called a bisque crack, or seen in the bisque.",
      basis: OWN
    },
    burst: {
      answer: "burst into bits",
      shares: [0.1, 0.1, 0.2, 0.6, 0.6, 1, 0.7, 30, 6, 0.2, 0.2, 2],
      statement: "It burst, as steam does it to clay that is not dry.",
      basis: PRACTICE
    },
    shivering: {
      answer: "glaze flakes off",
      shares: [0.3, 0.3, 72, 0.2, 0.2, 0.2, 0.4, 0.4, 0.4, 0.4, 0.4, 4],
      statement: "Glaze flakes off: it is squeezed rather than pulled, the opposite of what makes crackle.",
      basis: PRACTICE
    },
    chip: {
      answer: "chips off edges",
      shares: [0.4, 0.4, 14, 0.4, 0.4, 0.6, 0.4, 0.6, 0.6, 0.6, 0.6, 14],
      statement: "Edges are chipped: by a knock, or by glaze that is squeezed off them.",
      basis: PRACTICE
    }
  },
  edges: {
    sharp: {
      answer: "sharp edges",
      shares: [96, 97, 92, 96, 97, 97, 96, 30, 14, 14, 16, 70],
      statement: "Edges are sharp: the crack is younger than the glaze, which had set by then.",
      basis: PRACTICE
    },
    "rounded under glaze": {
      answer: "edges rounded under glaze",
      shares: [4, 3, 8, 4, 3, 3, 4, 70, 86, 86, 84, 30],
      statement: "Edges are rounded under glaze: the crack was there before the glaze melted.",
      basis: PRACTICE
    }
  },
  "first seen": {
    "before firing": {
      answer: "seen before the firing",
      shares: [0.3, 0.3, 0.3, 0.4, 0.4, 0.4, 0.4, 0.6, 34, 34, 28, 2],
      statement: "It was seen before the firing, in the bisque or in the dry pot.",
      basis: OWN
    },
    "before unloading": {
      answer: "seen before unloading",
      shares: [8, 0.5, 5, 16, 16, 24, 12, 12, 5, 4, 3, 8],
      statement: "It was seen before the kiln was unloaded.",
      basis: OWN
    },
    "at unloading": {
      answer: "seen at unloading",
      shares: [76, 7, 54, 74, 74, 68, 54, 80, 55, 56, 62, 60],
      statement: "It was seen when the kiln was unloaded, too early for moisture to have done it.",
      basis: MOISTURE
    },
    "hours later": {
      answer: "first seen hours later",
      shares: [11, 24, 25, 6, 6, 5, 14, 4, 3, 3, 3, 14],
      statement: "It was first seen hours after unloading, though it may have been there unseen.",
      basis: MOISTURE
    },
    "days later": {
      answer: "first seen days later",
      shares: [5, 68, 16, 3.5, 3.5, 3, 20, 3, 3, 3, 4, 16],
      statement: "It was first seen days after unloading, long after all heat was out of the ware.",
      basis: MOISTURE
    }
  },
  pattern: {
    "one long line": {
      answer: "one long line",
      shares: [4, 3, 6, 72, 72, 72, 45, 62, 58, 48, 6, 40],
      statement: "It runs as one long line, as a wall gives way; glaze alone cracks as a net.",
      basis: PRACTICE
    },
    spiral: {
      answer: "a spiral",
      shares: [8, 6, 2, 4, 4, 4, 40, 1, 1, 1, 1, 8],
      statement: "It winds round the piece, which glaze thick inside and thin outside is known for; crackle follows the throwing too.",
      basis: PRACTICE
    },
    network: {
      answer: "a network",
      shares: [87, 90, 6, 2, 2, 6, 4, 2, 3, 4, 1, 15],
      statement: "It forms a network, as cracks do in a layer that is pulled everywhere at once.",
      basis: PRACTICE
    },
    star: {
      answer: "a star",
      shares: [1, 1, 1, 3, 3, 3, 2, 10, 12, 15, 6, 10],
      statement: "A star in a base points to drying, to the first firing or to a foot that stuck.",
      basis: OWN
    },
    S: {
      answer: "an S",
      shares: [0.1, 0.1, 0.1, 0.4, 0.4, 0.4, 0.2, 0.5, 1.5, 4, 82, 2],
      statement: "It has the form of an S, as a base has that was thrown without pressing it together.",
      basis: PRACTICE
    }
  },
  place: {
    rim: {
      answer: "it begins at the rim",
      shares: [14, 14, 76, 25, 22, 48, 18, 30, 32, 38, 1, 25],
      statement: "It begins at a rim, which cold air reaches first, and which dries and heats first.",
      basis: PRACTICE
    },
    foot: {
      answer: "it begins at the foot",
      shares: [7, 7, 8, 22, 22, 8, 8, 12, 14, 12, 9, 15],
      statement: "It begins at a foot, which stays hot on its shelf as the wall cools.",
      basis: PRACTICE
    },
    base: {
      answer: "it begins in the base",
      shares: [10, 10, 3, 27, 27, 10, 14, 22, 26, 22, 86, 20],
      statement: "It begins in a base, which cools last, and dries last.",
      basis: PRACTICE
    },
    wall: {
      answer: "it begins in the wall",
      shares: [64, 64, 8, 23, 25, 28, 52, 24, 14, 12, 3, 25],
      statement: "It begins in the wall, where the glaze pulls.",
      basis: OWN
    },
    handle: {
      answer: "it begins at a handle",
      shares: [5, 5, 5, 3, 4, 6, 8, 12, 14, 16, 1, 15],
      statement: "It begins at a handle, where joints part in drying and in the first firing.",
      basis: PRACTICE
    }
  },
  ring: {
    dull: {
      answer: "a dull ring",
      shares: [8, 10, 15, 88, 88, 88, 86, 80, 76, 75, 70, 45],
      statement: "It rings dull, as with a crack through the wall, seen or not.",
      basis: PRACTICE
    },
    clear: {
      answer: "a clear ring",
      shares: [92, 90, 85, 12, 12, 12, 14, 20, 24, 25, 30, 55],
      statement: "It rings clear: its wall is whole.",
      basis: PRACTICE
    }
  },
  sides: {
    one: {
      answer: "glazed on one side",
      shares: [45, 45, 42, 40, 40, 40, 90, 40, 40, 40, 42, 40],
      statement: "It is glazed on one side. In a closed shape such as a mug a crack that the glaze pulls open runs on; a flat tile, free to bend, tends to stop it.",
      basis: LAYER
    },
    both: {
      answer: "glazed on both sides",
      shares: [54, 54, 56, 45, 45, 45, 9, 45, 45, 45, 44, 45],
      statement: "It is glazed on both sides, where glaze pulls evenly.",
      basis: LAYER
    },
    none: {
      answer: "not glazed",
      shares: [0.5, 0.5, 0.5, 15, 15, 15, 0.5, 15, 15, 15, 14, 15],
      statement: "It is not glazed.",
      basis: OWN
    }
  },
  "crack heard": {
    heating: {
      answer: "a crack on the way up",
      shares: [2, 2, 2, 2, 2, 1, 2, 84, 18, 14, 14, 20],
      statement: "A crack was heard at {heat} on the way up, though shelves make such sounds too.",
      basis: OWN
    },
    "above the inversions": {
      answer: "a crack hotter than both inversions",
      shares: [2, 1, 3, 3, 1, 1, 3, 4, 20, 20, 20, 20],
      statement: "A crack was heard at {heat}, hotter than both inversions; kiln and shelves make such sounds too.",
      basis: OWN
    },
    quartz: {
      answer: "a crack while passing quartz",
      shares: [3, 1, 6, 74, 2, 2, 6, 3, 14, 14, 14, 14],
      statement: "A crack was heard at {heat}, while the kiln passed the quartz inversion and was still shut.",
      basis: OWN
    },
    "between the inversions": {
      answer: "a crack between the inversions",
      shares: [22, 2, 22, 6, 5, 3, 22, 2, 12, 12, 12, 10],
      statement: "A crack was heard at {heat}, between the inversions, the kiln still shut.",
      basis: OWN
    },
    cristobalite: {
      answer: "a crack while passing cristobalite, the kiln shut",
      shares: [20, 4, 20, 3, 74, 5, 18, 2, 11, 12, 12, 10],
      statement: "A crack was heard at {heat}, while the kiln passed the cristobalite inversion and was still shut.",
      basis: OWN
    },
    "below the inversions": {
      answer: "a crack below the inversions, the kiln shut",
      shares: [18, 8, 18, 2, 4, 4, 18, 1, 8, 9, 9, 8],
      statement: "A crack was heard at {heat} with the kiln shut, below both inversions.",
      basis: OWN
    },
    "after opening": {
      answer: "a crack soon after opening",
      shares: [16, 16, 17, 6, 9, 80, 13, 2, 10, 11, 11, 11],
      statement: "A crack was heard {since} after the kiln was opened, while cold air met the ware.",
      basis: OWN
    },
    "long after opening": {
      answer: "a crack long after unloading",
      shares: [12, 66, 10, 4, 3, 4, 17, 2, 7, 8, 8, 7],
      statement: "A crack was heard {since} after the kiln was opened, when the ware was cool.",
      basis: MOISTURE
    }
  },
  "pinging heard": {
    quartz: {
      answer: "pinging while passing quartz",
      shares: [5, 0.5, 6, 12, 3, 1, 3, 8, 8, 8, 8, 10],
      statement: "Pinging was heard at {heat}, while the kiln passed the quartz inversion: clay, or a glaze that fits very badly.",
      basis: OWN
    },
    "between the inversions": {
      answer: "pinging well above the last inversion",
      shares: [24, 1, 20, 6, 5, 2, 14, 10, 10, 10, 10, 12],
      statement: "Pinging was heard as hot as {heat}: the earlier glaze begins to crack, the worse it fits.",
      basis: LAYER
    },
    cristobalite: {
      answer: "pinging while passing cristobalite, the kiln shut",
      shares: [22, 3, 20, 6, 16, 3, 18, 12, 12, 12, 12, 14],
      statement: "Pinging was heard at {heat}, while the kiln passed the cristobalite inversion: glaze or clay.",
      basis: OWN
    },
    "below the inversions": {
      answer: "pinging below both inversions, the kiln shut",
      shares: [22, 10, 20, 8, 8, 4, 18, 16, 16, 16, 16, 16],
      statement: "Pinging was heard at {heat} with the kiln shut, below both inversions, where glaze that shrinks more than the clay gives way.",
      basis: LAYER
    },
    "after hot opening": {
      answer: "pinging soon after a hot opening",
      shares: [14, 8, 15, 20, 20, 60, 18, 20, 20, 20, 20, 20],
      statement: "Pinging began {since} after the kiln was opened at {opened}: such a burst comes of the draught and says little about the fit of the glaze.",
      basis: OWN
    },
    "after cool opening": {
      answer: "pinging soon after a cool opening",
      shares: [18, 20, 18, 18, 18, 20, 18, 18, 18, 18, 18, 18],
      statement: "Pinging was heard {since} after the kiln was opened, while the ware cooled the last of its way.",
      basis: OWN
    },
    "long after opening": {
      answer: "pinging long after unloading",
      shares: [3, 64, 8, 12, 12, 6, 15, 12, 12, 12, 12, 10],
      statement: "Pinging was first heard {since} after the kiln was opened.",
      basis: MOISTURE
    }
  },
  "cool and still pinging": {
    "hours later": {
      answer: "still pinging hours after unloading",
      shares: [26, 34, 14, 5, 5, 6, 12, 4, 4, 4, 4, 8],
      statement: "Pinging was still heard {since} after the kiln was opened, in ware that is by then evenly cool (two hours are our own estimate).",
      basis: MOISTURE
    },
    "next day": {
      answer: "still pinging the next day",
      shares: [9, 48, 6, 2, 2, 2, 8, 2, 2, 2, 2, 4],
      statement: "Pinging was heard {since} after the kiln was opened: cracks still grow in ware that is long cool.",
      basis: MOISTURE
    },
    quiet: {
      answer: "quiet once it is cool",
      shares: [65, 18, 80, 93, 93, 92, 80, 94, 94, 94, 94, 88],
      statement: "It was quiet once it was evenly cool.",
      basis: MOISTURE
    }
  },
  "what sounds": {
    pinging: {
      answer: "pinging",
      shares: [60, 50, 30, 5, 5, 10, 10, 3, 2, 2, 2, 12],
      statement: "What was heard was pinging, as glaze does it.",
      basis: PRACTICE
    },
    crack: {
      answer: "a single crack",
      shares: [8, 7, 10, 45, 45, 45, 40, 50, 6, 6, 6, 45],
      statement: "What was heard was a single crack, as a wall or a shelf gives way.",
      basis: PRACTICE
    },
    silent: {
      answer: "nothing",
      shares: [32, 43, 60, 50, 50, 45, 50, 47, 92, 92, 92, 43],
      statement: "Nothing was heard; what cracked before the firing makes no sound in it.",
      basis: OWN
    }
  },
  opening: {
    cool: {
      answer: "opened at about 100 \xB0C (210 \xB0F)",
      shares: [55, 55, 55, 55, 55, 6, 55, 55, 55, 55, 55, 55],
      statement: "",
      basis: OWN
    },
    warm: {
      answer: "opened at about 160 \xB0C (320 \xB0F)",
      shares: [33, 33, 33, 33, 33, 30, 33, 33, 33, 33, 33, 33],
      statement: "",
      basis: OWN
    },
    hot: {
      answer: "opened at 220 \xB0C (430 \xB0F) or hotter",
      shares: [12, 12, 12, 12, 12, 64, 12, 12, 12, 12, 12, 12],
      statement: "",
      basis: OWN
    }
  },
  "state of the ware": {
    raw: {
      answer: "raw or damp ware",
      shares: [4, 4, 4, 12, 12, 12, 4, 70, 5, 30, 26, 15],
      statement: "It went in unfired, and such ware cracks on the way up as water leaves it.",
      basis: PRACTICE
    },
    bisqued: {
      answer: "bisqued ware",
      shares: [96, 96, 96, 88, 88, 88, 96, 30, 95, 70, 74, 85],
      statement: "It had been through a first firing, which drove the water out of it.",
      basis: OWN
    }
  },
  coat: {
    grows: {
      answer: "cracks farther apart on thicker coats",
      shares: [75, 55, 50, 50, 50, 50, 50, 50, 50, 50, 50, 45],
      statement: "On {pieces} test pieces the cracks stand farther apart the thicker the coat, as cracks in a pulled layer do.",
      basis: `${cited("thouless-1990")}; how often is our own estimate`
    },
    "does not grow": {
      answer: "no wider cracks on thicker coats",
      shares: [25, 45, 50, 50, 50, 50, 50, 50, 50, 50, 50, 55],
      statement: "On {pieces} test pieces the cracks do not stand farther apart on thicker coats; near the least thickness that cracks they need not.",
      basis: OWN
    }
  }
};
var ANSWERS = Object.fromEntries(
  Object.entries(WRITTEN).map(([name, answers]) => [name, weighed(answers)])
);
function weighed(answers) {
  const all = Object.values(answers);
  const sums = KINDS.map((_, k) => all.reduce((sum, { shares }) => sum + shares[k], 0));
  return Object.fromEntries(
    Object.entries(answers).map(([name, { shares, ...told2 }]) => [
      name,
      {
        ...told2,
        probability: Object.fromEntries(
          KINDS.map((kind, k) => [kind, shares[k] / sums[k]])
        )
      }
    ])
  );
}

// src/core/firing/diagnosis/coatAgainstSpacing.ts
var FEWEST_PIECES = 3;
var GROWS_FROM = 0.6;
var SAME_COAT = 1.1;
function coatAgainstSpacing(trials) {
  const pairs = trials.flatMap(
    (a, i) => trials.slice(i + 1).flatMap((b) => {
      const [thin, thick] = a.coatMm < b.coatMm ? [a, b] : [b, a];
      const isPair = areAlike(a, b) && thick.coatMm > SAME_COAT * thin.coatMm;
      return isPair && thin.crackSpacingMm !== null && thick.crackSpacingMm !== null ? [{ pair: [a, b], sign: Math.sign(thick.crackSpacingMm - thin.crackSpacingMm) }] : [];
    })
  );
  const pieces = new Set(pairs.flatMap(({ pair }) => pair)).size;
  if (pieces < FEWEST_PIECES) return null;
  const agreement = pairs.reduce((sum, { sign }) => sum + sign, 0) / pairs.length;
  return { grows: agreement >= GROWS_FROM, pieces };
}
function areAlike(a, b) {
  return a.clay === b.clay && a.glaze === b.glaze && a.glazedSides === b.glazedSides;
}

// src/core/firing/diagnosis/hazards.ts
var USUAL = {
  "crackle by fit": 30,
  "delayed crazing": 6,
  shivering: 2,
  "dunting at quartz": 4,
  "dunting at cristobalite": 2,
  "lid opened hot": 4,
  "one-sided glaze": 1.5,
  "heating crack": 2,
  "bisque crack": 3,
  "drying crack": 3,
  "S-crack": 2.5,
  "something else": 3
};
var SPREAD = Math.log(2) / 1.2816;
var HALF_BREAK = { shut: 1.3, opened: 0.8 };
var LEAST_SHARE = 3e-4;
function breakingShare(ratio, how) {
  if (!(ratio > 0)) return LEAST_SHARE;
  const z = Math.log(ratio / HALF_BREAK[how]) / SPREAD;
  return Math.max(LEAST_SHARE, 1 / (1 + Math.exp(-1.5976 * z - 0.07056 * z ** 3)));
}
var OPENINGS = [
  [90, 0.5],
  [120, 0.22],
  [150, 0.14],
  [190, 0.09],
  [230, 0.04],
  [280, 0.01]
];
var BOUND_K = 15;
var MISSED = 0.05;
var TELLING_CRISTOBALITE = 0.03;
var RISK = "our own reckoning of the stress in the ware, good to a factor of two either way; how many pieces break at it follows from that";
var OWN2 = "our own estimate";
function hazardEvidence(facts, piece) {
  return [
    ...inversionEvidence(facts, piece, "quartz"),
    ...inversionEvidence(facts, piece, "cristobalite"),
    ...openingEvidence(facts, piece),
    ...heatingEvidence(facts, piece),
    ...coatEvidence(facts, piece)
  ];
}
function inversionEvidence(facts, piece, which) {
  const ware = facts.stressOf(piece?.ware ?? null);
  const stress = ware[which];
  const kind = which === "quartz" ? "dunting at quartz" : "dunting at cristobalite";
  const squared = (ware.cristobaliteShare / TELLING_CRISTOBALITE) ** 2;
  const holds = which === "quartz" ? 1 : squared / (1 + squared);
  if (stress === null) return [silent(kind, holds)];
  const ratio = 1e3 * holds * breakingShare(stress.ratio, "shut") / USUAL[kind];
  const rate = stress.fastestCPerHour;
  return [
    {
      question: which,
      short: rate === null ? `{stress} of the strength through ${which}` : `{fastest} through ${which}, {stress} of the strength`,
      statement: `It cooled through the ${which} inversion${rate === null ? "" : " at up to {fastest}"}; by our reckoning the stress came to {stress} of the strength of the ware.`,
      evidence: [
        ...rate === null ? [] : [{ name: "fastest", value: rate, kind: "rate" }],
        { name: "stress", value: stress.ratio, kind: "ratio" }
      ],
      basis: RISK,
      times: only(kind, ratio)
    }
  ];
}
function openingEvidence(facts, piece) {
  const { tempC, maybe, notAboveC } = facts.opening;
  const { openingAt } = facts.stressOf(piece?.ware ?? null);
  const among = (limitC) => {
    const below = OPENINGS.filter(([openedC]) => openedC <= limitC);
    const list = below.length === 0 ? [[limitC, 1]] : below;
    const all = list.reduce((sum, [, share]) => sum + share, 0);
    return list.reduce(
      (sum, [at, share]) => sum + share / all * breakingShare(openingAt(at), "opened"),
      0
    );
  };
  const usual = among(Number.POSITIVE_INFINITY);
  const bounded2 = notAboveC === null ? usual : (1 - MISSED) * among(notAboveC + BOUND_K) + MISSED * usual;
  const said = maybe.reduce((sum, { share }) => sum + share, 0);
  if (said === 0 && notAboveC === null) {
    return [silent("lid opened hot", 1e3 * usual / USUAL["lid opened hot"])];
  }
  const broken = maybe.reduce(
    (sum, each) => sum + each.share * breakingShare(openingAt(each.tempC), "opened"),
    0
  ) + (1 - said) * bounded2;
  const times = only("lid opened hot", 1e3 * broken / USUAL["lid opened hot"]);
  if (tempC === null || said === 0)
    return [
      {
        question: "opening",
        short: "still shut at {shut} by the log",
        statement: "By the log the kiln only slowed down as it cooled, and was still shut at {shut}.",
        evidence: [{ name: "shut", value: notAboveC, kind: "temperature" }],
        basis: OWN2,
        times
      }
    ];
  return [
    {
      question: "opening",
      short: "opened at {opened}, {stress} of the strength",
      statement: "The kiln was opened at {opened}; by our reckoning that puts {stress} of its strength into the ware.",
      evidence: [
        { name: "opened", value: tempC, kind: "temperature" },
        { name: "stress", value: openingAt(tempC), kind: "ratio" }
      ],
      basis: RISK,
      times
    }
  ];
}
var STEAM_MM = 8;
var STEAM_CPERHOUR = 100;
var QUARTZ_UP_CPERHOUR = 280;
var WIDE_MM = 250;
function heatingEvidence(facts, piece) {
  const ware = piece?.ware ?? null;
  const states = ware?.state ? [ware.state] : facts.states;
  const isRaw = states.some((state) => isUnfired(state));
  const { steamCPerHour, quartzCPerHour } = facts.climb;
  const thickMm = ware?.thickestMm ?? ware?.baseMm ?? ware?.wallMm ?? STEAM_MM;
  if (isRaw) {
    if (steamCPerHour === null) return [];
    const damp = states.includes("damp") ? 2 : 1;
    const hard2 = damp * steamCPerHour * thickMm / (STEAM_CPERHOUR * STEAM_MM);
    return [
      {
        question: "heating",
        short: "{climb} while water left it",
        statement: `Unfired ware was heated at up to {climb} between 70 and 200 \xB0C (160 and 390 \xB0F), while water left it.`,
        evidence: [{ name: "climb", value: steamCPerHour, kind: "rate" }],
        basis: "common practice for damp and thick ware; how much it says is our own estimate",
        times: only("heating crack", bounded(hard2 ** 1.3, 0.3, 15))
      }
    ];
  }
  if (quartzCPerHour === null) return [];
  const wide = (ware?.widestMm ?? 0) >= WIDE_MM ? 1.5 : 1;
  const hard = wide * quartzCPerHour / QUARTZ_UP_CPERHOUR;
  return [
    {
      question: "heating",
      short: "{climb} through quartz on the way up",
      statement: "It was heated through the quartz inversion at up to {climb}.",
      evidence: [{ name: "climb", value: quartzCPerHour, kind: "rate" }],
      basis: OWN2,
      times: only("heating crack", bounded(hard ** 2, 0.3, 10))
    }
  ];
}
function isUnfired(state) {
  return state === "damp" || state === "bone dry" || state === "glazed raw";
}
var COAT_MM = 0.6;
var WALL_MM = 6;
function coatEvidence(facts, piece) {
  if (piece === null) return [];
  const own = piece.coatMm === null ? [] : pullEvidence(piece.coatMm, piece.wallMm ?? WALL_MM);
  return [...own, ...thickestCracked(facts, piece) ? [THICKEST] : []];
}
function pullEvidence(coatMm, wallMm) {
  const pull = coatMm / COAT_MM / Math.sqrt(wallMm / WALL_MM);
  return [
    {
      question: "sides",
      short: "a coat {pull} times as hard on the wall as a usual one",
      statement: "Its coat pulls on its wall {pull} times as hard as a usual one does (coat over the root of the wall).",
      evidence: [{ name: "pull", value: pull, kind: "cones" }],
      basis: "the stress at a crack that glaze on one side drives into a closed wall goes with coat over the root of the wall; how often it splits is our own estimate",
      times: only("one-sided glaze", bounded(pull ** 2, 0.1, 8))
    }
  ];
}
var THICKEST = {
  question: "coat",
  short: "the thickest one-sided coats cracked through",
  statement: "Among the test pieces glazed on one side those that cracked through have the thickest coats, which pull the hardest.",
  evidence: [],
  basis: OWN2,
  times: only("one-sided glaze", 2)
};
function thickestCracked({ trials }, piece) {
  const isThrough = ({ cracked, piece: mark }) => cracked === "through" || piece.trials.some((each) => each.piece === mark);
  if (piece.trials.length === 0 || !piece.trials.some(({ cracked }) => cracked === "through"))
    return false;
  const oneSided = trials.filter(({ glazedSides }) => glazedSides === "one");
  const coats = (through2) => oneSided.filter((trial) => isThrough(trial) === through2).map(({ coatMm }) => coatMm);
  const [through, whole] = [coats(true), coats(false)];
  return through.length > 0 && whole.length > 0 && Math.min(...through) > Math.max(...whole);
}
function silent(kind, times) {
  return {
    question: "opening",
    short: "",
    statement: "",
    evidence: [],
    basis: OWN2,
    times: only(kind, times)
  };
}
function only(kind, times) {
  return Object.fromEntries(
    KINDS.map((each) => [each, each === kind ? Math.max(times, 1e-4) : 1])
  );
}
function bounded(value, low, high) {
  return Math.min(high, Math.max(low, value));
}

// src/core/firing/soundKind.ts
var PINGING = /\b(ping|ting|tink|tick|chime|crackl|tinkl|singing)/i;
var CRACK = /\b(crack(?!l)|knock|bang|snap|split|thud|pop|burst|broke|shot)/i;
function soundKind(what) {
  if (PINGING.test(what)) return "pinging";
  return CRACK.test(what) ? "crack" : "other";
}

// src/core/firing/diagnosis/heardSounds.ts
var COOL_SECONDS = 7200;
function heardSounds(facts) {
  return facts.heard.flatMap((sound) => {
    const places = sound.orElse === null ? [sound] : [sound, sound.orElse];
    return places.flatMap(({ atSeconds, tempC }) => {
      const opened = openedSeconds(facts);
      const since = opened === null || atSeconds < opened ? null : atSeconds - opened;
      return phasesOf(atSeconds, { tempC, since, facts }).map(({ phase, share }) => ({
        kind: soundKind(sound.what),
        phase,
        tempC,
        atSeconds,
        sinceOpeningSeconds: since,
        share: share / places.length
      }));
    });
  });
}
function openedSeconds({ opening, zones }) {
  if (opening.atSeconds !== null) return opening.atSeconds;
  const { lastReadingAtSeconds, lastReadingC } = hottestZone(zones);
  return lastReadingC <= COOL_END_C ? lastReadingAtSeconds : null;
}
var COOL_END_C = 110;
function phasesOf(atSeconds, at) {
  const sure = (phase) => [{ phase, share: 1 }];
  if (at.since !== null)
    return sure(at.since < COOL_SECONDS ? "after opening" : "long after opening");
  if (at.tempC === null) return sure("unknown");
  if (atSeconds < hottestZone(at.facts.zones).peakAtSeconds) return sure("heating");
  return coolingPhases(at.tempC).filter(({ share }) => share > LEAST_SHARE2).toSorted((a, b) => b.share - a.share);
}
var BEHIND_K = 20;
var EDGE_K = 8;
var LEAST_SHARE2 = 0.02;
function coolingPhases(tempC) {
  const below = (edgeC) => 1 / (1 + Math.exp((tempC - edgeC) / EDGE_K));
  const intoQuartz = below(QUARTZ_BAND.highC);
  const outOfQuartz = below(QUARTZ_BAND.lowC - BEHIND_K);
  const intoCristobalite = below(CRISTOBALITE_BAND.highC);
  const outOfCristobalite = below(CRISTOBALITE_BAND.lowC - BEHIND_K);
  return [
    { phase: "above the inversions", share: 1 - intoQuartz },
    { phase: "quartz", share: intoQuartz - outOfQuartz },
    { phase: "between the inversions", share: outOfQuartz - intoCristobalite },
    { phase: "cristobalite", share: intoCristobalite - outOfCristobalite },
    { phase: "below the inversions", share: outOfCristobalite }
  ];
}

// src/core/firing/diagnosis/caseEvidence.ts
var BESIDE_DEPTH = 0.5;
var OTHERS_SOUND = 0.35;
var HOT_OPENING_C = 160;
var HOT_OVER_K = 20;
var DAY_SECONDS = 86400;
function caseEvidence(facts, piece) {
  return [
    ...piece === null ? [] : seenEvidence(piece),
    ...soundEvidence(facts, piece),
    ...stateEvidence(facts, piece),
    ...spacingEvidence(facts, piece),
    ...hazardEvidence(facts, piece)
  ];
}
function seenEvidence(piece) {
  const depth = depthAnswer(piece);
  const beside = depth === null ? 1 : BESIDE_DEPTH;
  return [
    ...depth === null ? [] : [told("depth", ANSWERS.depth[depth])],
    ...piece.edges === null ? [] : [told("edges", ANSWERS.edges[piece.edges])],
    ...piece.when === null ? [] : [told("first seen", ANSWERS["first seen"][piece.when])],
    ...piece.pattern === null ? [] : [told("pattern", ANSWERS.pattern[piece.pattern], piece.pattern === "S" ? 1 : beside)],
    ...piece.where === null ? [] : [told("place", ANSWERS.place[piece.where])],
    ...piece.rings === null || depth !== null && depth !== "crack" ? [] : [told("ring", ANSWERS.ring[piece.rings])],
    ...piece.glazedSides === null ? [] : [told("sides", ANSWERS.sides[piece.glazedSides])]
  ];
}
function depthAnswer({ what }) {
  switch (what) {
    case "through-crack":
      return "through";
    case "crazing":
      return "crackle";
    case null:
    case "blister":
    case "pinhole":
    case "crawling":
      return null;
    default:
      return what;
  }
}
function soundEvidence(facts, piece) {
  const { sounds } = facts;
  const cracks = sounds.filter(({ kind, phase }) => kind === "crack" && phase !== "unknown");
  const pings = sounds.filter(({ kind, phase }) => kind === "pinging" && phase !== "unknown");
  const isGlaze = piece !== null && (piece.what === "crackle" || piece.what === "crazing");
  const kinds = piece === null ? soundsOf(sounds) : [];
  const heard = isGlaze || piece === null ? pingEvidence(facts, pings) : [];
  return [...kinds, ...isGlaze ? [] : crackEvidence(cracks), ...heard];
}
function soundsOf(sounds) {
  if (sounds.some(({ kind }) => kind === "crack"))
    return [told("sound", ANSWERS["what sounds"].crack)];
  return sounds.some(({ kind }) => kind === "pinging") ? [told("sound", ANSWERS["what sounds"].pinging)] : [];
}
function crackEvidence(cracks) {
  const answers = cracks.flatMap((sound) => {
    const { phase } = sound;
    return phase === "unknown" ? [] : [{ sound, answer: ANSWERS["crack heard"][phase] }];
  });
  if (answers.length === 0) return [];
  const all = answers.reduce((sum, { sound }) => sum + sound.share, 0);
  const times = byKind((kind) => {
    const own = answers.reduce(
      (sum, { sound, answer }) => sum + sound.share * answer.probability[kind],
      0
    );
    const others = answers.reduce(
      (sum, { sound, answer }) => sum + sound.share * answer.probability["something else"],
      0
    );
    return ((1 - OTHERS_SOUND) * own + OTHERS_SOUND * others) / all;
  });
  const once = answers.filter(
    ({ sound }, at) => answers.findIndex((each) => each.sound.atSeconds === sound.atSeconds) === at
  );
  return once.map(({ sound, answer }, at) => ({
    ...told("sound", answer),
    short: shortSound(answer, sound),
    evidence: numbersOf(sound),
    times: at === 0 ? times : byKind(() => 1)
  }));
}
function pingEvidence(facts, pings) {
  const first = pings.find(({ phase }) => phase !== "heating" && phase !== "above the inversions");
  if (first === void 0) return [];
  const last = pings.at(-1);
  const since = last.sinceOpeningSeconds;
  const isLate = since !== null && since >= COOL_SECONDS && last !== first;
  const late = isLate ? ANSWERS["cool and still pinging"][since >= DAY_SECONDS ? "next day" : "hours later"] : null;
  return [
    onset(facts, first),
    ...late === null ? [] : [
      {
        ...told("cool and still pinging", late),
        short: "pinging {since} after opening",
        evidence: numbersOf(last)
      }
    ]
  ];
}
function onset(facts, sound) {
  const table = ANSWERS["pinging heard"];
  const openedC = facts.opening.tempC;
  if (sound.phase !== "after opening" || openedC === null) {
    const answer2 = sound.phase === "after opening" ? table["after cool opening"] : table[sound.phase];
    return {
      ...told("sound", answer2),
      short: shortSound(answer2, sound),
      evidence: numbersOf(sound)
    };
  }
  const hot = 1 / (1 + Math.exp((HOT_OPENING_C - openedC) / HOT_OVER_K));
  const [after, cool] = [table["after hot opening"], table["after cool opening"]];
  const answer = hot > 0.5 ? after : cool;
  return {
    ...told("sound", answer),
    short: "pinging {since} after opening at {opened}",
    evidence: [...numbersOf(sound), { name: "opened", value: openedC, kind: "temperature" }],
    times: byKind((kind) => hot * after.probability[kind] + (1 - hot) * cool.probability[kind])
  };
}
function shortSound({ answer }, sound) {
  if (sound.sinceOpeningSeconds !== null)
    return `${sound.kind === "crack" ? "a crack" : "pinging"} {since} after opening`;
  return sound.tempC === null ? answer : `${answer}, at {heat}`;
}
function numbersOf({ atSeconds, tempC, sinceOpeningSeconds }) {
  return [
    { name: "heard at", value: atSeconds, kind: "elapsed" },
    ...tempC === null ? [] : [{ name: "heat", value: tempC, kind: "temperature" }],
    ...sinceOpeningSeconds === null ? [] : [{ name: "since", value: sinceOpeningSeconds, kind: "duration" }]
  ];
}
function stateEvidence({ states }, piece) {
  const own = piece?.ware?.state ? [piece.ware.state] : states;
  if (own.length === 0) return [];
  const raw = own.filter(isUnfired).length / own.length;
  const table = ANSWERS["state of the ware"];
  const answer = raw > 0.5 ? table.raw : table.bisqued;
  return [
    {
      ...told("state of the ware", answer),
      times: byKind(
        (kind) => raw * table.raw.probability[kind] + (1 - raw) * table.bisqued.probability[kind]
      )
    }
  ];
}
function spacingEvidence({ trials }, piece) {
  if (piece === null || piece.trials.length === 0) return [];
  const spacing = coatAgainstSpacing(trials);
  if (spacing === null || piece.what !== "crackle" && piece.what !== "crazing") return [];
  return [
    {
      ...told("coat", ANSWERS.coat[spacing.grows ? "grows" : "does not grow"]),
      evidence: [{ name: "pieces", value: spacing.pieces, kind: "count" }]
    }
  ];
}
function told(question, answer, power2 = 1) {
  return {
    question,
    short: answer.answer,
    statement: answer.statement,
    evidence: [],
    basis: answer.basis,
    times: byKind((kind) => answer.probability[kind] ** power2)
  };
}
function byKind(of) {
  return Object.fromEntries(KINDS.map((kind) => [kind, of(kind)]));
}

// src/core/curve/edgeTimes.ts
var HALF_WIDTH_SECONDS = 180;
var FEWEST_POINTS = 5;
var MOST_POINTS = 120;
var TURN_BACK_K = 5;
function edgeTimes(curve, at) {
  const { timesSeconds, tempsC } = curve;
  const { first, last } = at;
  const sign = at.toC > at.fromC ? 1 : -1;
  const [enterY, leaveY] = [sign * at.fromC, sign * at.toC];
  let enterAt = -1;
  let leaveAt = -1;
  let insideFrom = -1;
  let insideTo = -1;
  let here = sign * tempsC[first];
  for (let i = first; i <= last; i++) {
    if (here >= enterY && here <= leaveY) {
      if (insideFrom < 0) insideFrom = i;
      insideTo = i;
    }
    if (i === last) break;
    const next = sign * tempsC[i + 1];
    if (here < enterY && next >= enterY && enterAt < 0) enterAt = i;
    if (here < leaveY && next >= leaveY) leaveAt = i;
    here = next;
  }
  const inside = insideFrom < 0 ? null : { from: timesSeconds[insideFrom], to: timesSeconds[insideTo] };
  return {
    enter: edge(curve, enterAt, at.fromC, inside),
    leave: edge(curve, leaveAt, at.toC, inside),
    recrossings: turnBacks(tempsC, { first, last, sign }, [enterY, leaveY])
  };
}
function edge(curve, index, tempC, inside) {
  const known3 = {
    insideFrom: inside?.from ?? null,
    insideTo: inside?.to ?? null
  };
  if (index < 0) return { seconds: null, hidden: false, ...known3 };
  const from = curve.timesSeconds[index];
  if (curve.gaps.some((gap) => gap.fromSeconds === from))
    return { seconds: null, hidden: true, ...known3 };
  const to = curve.timesSeconds[index + 1];
  const here = curve.tempsC[index];
  const straight = from + (tempC - here) / (curve.tempsC[index + 1] - here) * (to - from);
  return {
    seconds: localLineCrossing(curve, index, straight, tempC) ?? straight,
    hidden: false,
    ...known3
  };
}
function localLineCrossing(curve, index, middle, tempC) {
  const gapEdges = curve.gaps.flatMap((gap) => [gap.fromSeconds, gap.toSeconds]);
  const times = curve.timesSeconds;
  let low = index;
  let high = index + 1;
  const within = (i) => Math.abs(times[i] - middle) <= HALF_WIDTH_SECONDS;
  while (low > 0 && within(low - 1) && !gapEdges.includes(times[low])) low--;
  while (high + 1 < times.length && within(high + 1) && !gapEdges.includes(times[high]))
    high++;
  const count = high - low + 1;
  if (count < FEWEST_POINTS) return null;
  const stride = Math.ceil(count / MOST_POINTS);
  const picked = Math.floor((high - low) / stride) + 1;
  const x = new Float64Array(picked);
  const y = new Float64Array(picked);
  for (let p = 0; p < picked; p++) {
    x[p] = times[low + p * stride];
    y[p] = curve.tempsC[low + p * stride];
  }
  const slope = medianInPlace(slopesBetween(x, y));
  const level = medianInPlace(y.map((tempC2, p) => tempC2 - slope * (x[p] - middle)));
  const crossing = middle + (tempC - level) / slope;
  return Math.abs(crossing - middle) <= HALF_WIDTH_SECONDS ? crossing : null;
}
function slopesBetween(x, y) {
  const slopes = new Float64Array(x.length * (x.length - 1) / 2);
  let pairs = 0;
  for (let a = 0; a < x.length; a++) {
    const fromX = x[a];
    const fromY = y[a];
    for (let b = a + 1; b < x.length; b++)
      slopes[pairs++] = (y[b] - fromY) / (x[b] - fromX);
  }
  return slopes;
}
function turnBacks(tempsC, { first, last, sign }, edges) {
  let count = 0;
  for (const edgeY of edges) {
    let passed = false;
    for (let i = first; i <= last; i++) {
      const here = sign * tempsC[i];
      if (!passed) passed = here >= edgeY;
      else if (here < edgeY - TURN_BACK_K) {
        passed = false;
        count++;
      }
    }
  }
  return count;
}

// src/core/curve/slopes.ts
function slopeMeter(curve) {
  const { timesSeconds: times, tempsC: temps } = curve;
  const origin = times[0];
  const areas = new Float64Array(times.length);
  const moments = new Float64Array(times.length);
  for (let i = 1; i < times.length; i++) {
    const from = times[i - 1] - origin;
    const to = times[i] - origin;
    const piece = integrals(from, to, temps[i - 1], temps[i]);
    areas[i] = areas[i - 1] + piece.area;
    moments[i] = moments[i - 1] + piece.moment;
  }
  function upTo(moment) {
    const left = Math.min(lastAtOrBefore(times, moment + origin), times.length - 2);
    const from = times[left] - origin;
    const to = times[left + 1] - origin;
    const here = temps[left];
    const there = here + (temps[left + 1] - here) * (moment - from) / (to - from);
    const piece = integrals(from, moment, here, there);
    return {
      area: areas[left] + piece.area,
      moment: moments[left] + piece.moment
    };
  }
  return {
    slopeAt(seconds, windowSeconds) {
      const from = seconds - windowSeconds / 2;
      const to = seconds + windowSeconds / 2;
      const end = times[times.length - 1];
      if (!(windowSeconds > 0) || from < origin || to > end) return null;
      if (curve.gaps.some((gap) => gap.fromSeconds < to && gap.toSeconds > from)) return null;
      const low = upTo(from - origin);
      const high = upTo(to - origin);
      const middle = seconds - origin;
      const moment = high.moment - low.moment - middle * (high.area - low.area);
      return 12 * 3600 * moment / (windowSeconds * windowSeconds * windowSeconds);
    }
  };
}
function localSlopes(curve, windowSeconds) {
  const meter = slopeMeter(curve);
  return curve.timesSeconds.map((seconds) => meter.slopeAt(seconds, windowSeconds) ?? Number.NaN);
}
function integrals(from, to, here, there) {
  const width = to - from;
  return {
    area: width * (here + there) / 2,
    moment: width * (here * (2 * from + to) + there * (from + 2 * to)) / 6
  };
}

// src/core/curve/bandPassage.ts
var SUSTAINED_WINDOW_SECONDS = 15 * 60;
var NARROWEST_WINDOW_SECONDS = 2 * 60;
var LOOK_STEP_SECONDS = 30;
function bandPassage(curve, band, direction) {
  return passagesOf(curve)(band, direction);
}
function passagesOf(curve) {
  const meter = slopeMeter(curve);
  const peak = peakOf(curve);
  return (band, direction) => passage({ curve, meter, peak }, band, direction);
}
function passage(measured, band, direction) {
  const { curve, peak } = measured;
  const heating = direction === "heating";
  const [fromC, toC] = heating ? [band.lowC, band.highC] : [band.highC, band.lowC];
  const range = heating ? { first: 0, last: peak.index } : { first: peak.index, last: curve.tempsC.length - 1 };
  const edges = edgeTimes(curve, { ...range, fromC, toC });
  const base = {
    band: band.name,
    direction,
    fromC,
    toC,
    recrossings: edges.recrossings
  };
  const start = edges.enter.seconds;
  const end = edges.leave.seconds;
  const whole = start !== null && end !== null && end > start;
  const fastest2 = fastestBetween(
    measured.meter,
    start ?? edges.enter.insideFrom,
    end ?? edges.leave.insideTo,
    heating
  );
  const notes = [...edgeNotes("entered", edges.enter), ...edgeNotes("left", edges.leave)];
  const hidden = gapWithin(curve, start, end);
  if (hidden > 0) notes.push(`no readings for ${Math.round(hidden / 60)} min on the way`);
  if (edges.recrossings > 0)
    notes.push("it turned back on the way: time and mean are from first entering to last leaving");
  const touched = start !== null || end !== null || fastest2.rate !== null || edges.enter.hidden || edges.leave.hidden;
  return {
    ...base,
    measured: !touched ? "no" : whole && hidden === 0 ? "whole" : "partly",
    startSeconds: start,
    endSeconds: end,
    seconds: whole ? end - start : null,
    meanCPerHour: whole ? (toC - fromC) * 3600 / (end - start) : null,
    fastestCPerHour: fastest2.rate,
    fastestAtSeconds: fastest2.at,
    windowMinutes: fastest2.rate === null ? null : fastest2.window / 60,
    notes: touched ? notes : []
  };
}
function edgeNotes(verb, edge2) {
  if (edge2.seconds !== null) return [];
  if (edge2.hidden) return [`the moment it ${verb} the band lies in a gap`];
  return [
    verb === "entered" ? "the readings begin inside the band" : "the readings end inside the band"
  ];
}
function gapWithin(curve, start, end) {
  if (start === null || end === null) return 0;
  return curve.gaps.filter((gap) => gap.fromSeconds >= start && gap.toSeconds <= end).reduce((sum, gap) => sum + gap.toSeconds - gap.fromSeconds, 0);
}
function fastestBetween(meter, start, end, heating) {
  const none = { rate: null, at: null, window: 0 };
  if (start === null || end === null || !(end > start)) return none;
  const window = Math.min(
    SUSTAINED_WINDOW_SECONDS,
    Math.max(end - start, NARROWEST_WINDOW_SECONDS)
  );
  let best = null;
  const steps = Math.max(1, Math.ceil((end - start) / LOOK_STEP_SECONDS));
  for (let k = 0; k <= steps; k++) {
    const at = start + (end - start) * k / steps;
    const slope = meter.slopeAt(at, window);
    if (slope === null || slope > 0 !== heating) continue;
    if (best === null || Math.abs(slope) > Math.abs(best.rate)) best = { rate: slope, at, window };
  }
  return best ?? none;
}

// src/core/ware/shelfStack.ts
var RINGS = 24;
var SHELF_SPACING_MM = 100;
var SHELF_RADIUS_MM = 230;
function stackShare(pieceRadiusMm, shelfRadiusMm = SHELF_RADIUS_MM) {
  const radius = Math.max(pieceRadiusMm, shelfRadiusMm) / SHELF_SPACING_MM;
  const profile = stackProfile(radius);
  const at = pieceRadiusMm / SHELF_SPACING_MM / radius * (RINGS - 0.5);
  if (at < 1) return (profile[0] - profile[1]) * at * at;
  const ring = Math.min(RINGS - 2, Math.floor(at));
  return profile[0] - profile[ring] - (profile[ring + 1] - profile[ring]) * (at - ring);
}
var known = /* @__PURE__ */ new Map();
function stackProfile(radius) {
  const found = known.get(radius);
  if (found !== void 0) return found;
  const width = radius / (RINGS - 0.5);
  const edge2 = (ring) => (ring + 0.5) * width;
  const rows = Array.from({ length: RINGS }, (_, ring) => {
    const row = new Float64Array(RINGS + 1);
    for (let other = 0; other < RINGS; other++)
      row[other] = (other === ring ? 1 : 0) - (discSeen(ring * width, edge2(other)) - (other === 0 ? 0 : discSeen(ring * width, edge2(other - 1))));
    row[RINGS] = 1;
    return row;
  });
  const profile = solved(rows);
  if (known.size > 50) known.clear();
  known.set(radius, profile);
  return profile;
}
function discSeen(off, discRadius) {
  const sum = 1 + off * off + discRadius * discRadius;
  const under = sum * sum - 4 * off * off * discRadius * discRadius;
  return (1 - (1 + off * off - discRadius * discRadius) / Math.sqrt(under)) / 2;
}
function solved(rows) {
  const count = rows.length;
  for (let i = 0; i < count; i++)
    for (let k = i + 1; k < count; k++) {
      const times = rows[k][i] / rows[i][i];
      for (let j = i; j <= count; j++) rows[k][j] -= times * rows[i][j];
    }
  const result = new Float64Array(count);
  for (let i = count - 1; i >= 0; i--) {
    let sum = rows[i][count];
    for (let j = i + 1; j < count; j++) sum -= rows[i][j] * result[j];
    result[i] = sum / rows[i][i];
  }
  return result;
}

// src/core/ware/heatExchange.ts
var STEFAN = 5670374e-14;
var EMISSIVITY = 0.85;
var CONVECTION_W_PER_M2K = 5;
var LAYER_SHARE = 0.7;
var GAP_EMISSIVITY = 1 / (2 / EMISSIVITY - 1);
var AIR_CONDUCTIVITY = 0.0107;
var AIR_CONDUCTIVITY_PER_K = 578e-7;
var SHELF_DENSITY = 2e3;
var SHELF_HEAT_CAPACITY = 1050;
var LOAD_HEAT_J_PER_M3K = 39e4;
var CAPACITY_AT_226C = 0.88;
function capacityFactor(tempC) {
  const upTo = Math.min(tempC, 1e3);
  return 1 + (1 - CAPACITY_AT_226C) / 347 * (upTo - 573);
}
function radiationWPerM2K(tempC) {
  return 4 * EMISSIVITY * STEFAN * thirdPowerK(tempC);
}
function airConductivity(tempC) {
  return AIR_CONDUCTIVITY + AIR_CONDUCTIVITY_PER_K * (tempC + ZERO_CELSIUS_K);
}
function loadLagSeconds(share, tempC) {
  const layer = LOAD_HEAT_J_PER_M3K * SHELF_SPACING_MM / 1e3;
  return share * layer * capacityFactor(tempC) / (2 * 4 * STEFAN * thirdPowerK(tempC));
}
function fourthPowerK(tempC) {
  const tempK = tempC + ZERO_CELSIUS_K;
  return tempK * tempK * (tempK * tempK);
}
function thirdPowerK(tempC) {
  const tempK = tempC + ZERO_CELSIUS_K;
  return tempK * tempK * tempK;
}

// src/core/ware/pieceMesh.ts
var LAYERS = 2;
var PLACES = 2 * LAYERS + 1;
var COUNTS = { base: 7, turn: 2, wall: 7 };
var GROWTH = 1.5;
var INNER_ROUNDING = 0.5;
function pieceMesh(shape, finer = 1) {
  const middle = midlineOf(shape);
  const { wallMm, baseMm } = shape;
  const hasWall = middle.wallMm > 0;
  const parts = [
    grown(middle.baseMm, COUNTS.base * finer, baseMm, finer).toReversed(),
    ...hasWall ? [
      Array.from({ length: COUNTS.turn * finer }, () => middle.turnMm / (COUNTS.turn * finer)),
      grown(middle.wallMm, COUNTS.wall * finer, wallMm, finer)
    ] : []
  ];
  const along = [0];
  for (const length of parts.flat()) {
    const from = along.at(-1);
    along.push(from + length / 2, from + length);
  }
  const lines = along.length;
  const nodes = [];
  const index = /* @__PURE__ */ new Map();
  const radius = new Float64Array(lines);
  for (const [line, way] of along.entries()) {
    const at = onMidline(middle, way);
    radius[line] = at.r;
    const share = Math.min(1, Math.max(0, (way - middle.baseMm) / Math.max(middle.turnMm, 1e-9)));
    const thick = hasWall ? baseMm + (wallMm - baseMm) * share : baseMm;
    for (let place = 0; place < PLACES; place += line % 2 === 0 ? 1 : 2) {
      const inner = { r: at.r - thick / 2 * at.sine, z: at.z + thick / 2 * at.cosine };
      const outer = cornerAt(middle, shape, way) ?? {
        r: at.r + thick / 2 * at.sine,
        z: at.z - thick / 2 * at.cosine
      };
      const out = 1 - place / (PLACES - 1);
      index.set(line * PLACES + place, nodes.length);
      nodes.push([
        inner.r + (outer.r - inner.r) * out,
        inner.z + (outer.z - inner.z) * out,
        line,
        place
      ]);
    }
  }
  const elements = [];
  for (let line = 0; line + 2 < lines; line += 2)
    for (let place = 0; place + 2 < PLACES; place += 2)
      for (const [along2, across] of CORNERS_AND_SIDES)
        elements.push(index.get((line + along2) * PLACES + place + across));
  return {
    r: Float64Array.from(nodes, ([r]) => Math.max(0, r)),
    z: Float64Array.from(nodes, ([, z]) => z),
    line: Int32Array.from(nodes, ([, , line]) => line),
    place: Int32Array.from(nodes, ([, , , place]) => place),
    elements: Int32Array.from(elements),
    lines,
    along: Float64Array.from(along),
    radius,
    turnAt: middle.baseMm + middle.turnMm / 2
  };
}
var CORNERS_AND_SIDES = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
  [1, 0],
  [2, 1],
  [1, 2],
  [0, 1]
];
function grown(wholeMm, count, thickMm, finer) {
  const first = Math.min(0.6 * thickMm / finer, wholeMm / count);
  const ratio = Math.min(growthFor(wholeMm / first, count), GROWTH * 4);
  const raw = Array.from({ length: count }, (_, i) => Math.exp(i * Math.log(ratio)));
  const sum = raw.reduce((total, each) => total + each, 0);
  return raw.map((each) => each * wholeMm / sum);
}
function growthFor(whole, count) {
  let [low, high] = [1, 10];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    let [sum, each] = [0, 1];
    for (let k = 0; k < count; k++, each *= middle) sum += each;
    if (sum > whole) high = middle;
    else low = middle;
  }
  return low;
}
function midlineOf(shape) {
  const { wallMm, baseMm, footRadiusMm, rimRadiusMm, heightMm } = shape;
  if (heightMm <= baseMm + wallMm / 2)
    return { baseMm: footRadiusMm, turnMm: 0, wallMm: 0, turnRadiusMm: 0, slope: 0 };
  const thin = Math.min(wallMm, baseMm);
  const turnRadiusMm = Math.min(
    Math.max(wallMm, baseMm) / 2 + INNER_ROUNDING * thin,
    footRadiusMm - wallMm / 2 - 1
  );
  const levelMm = Math.max(1, footRadiusMm - wallMm / 2 - turnRadiusMm);
  let slope = Math.PI / 2;
  let rise = 0;
  for (let i = 0; i < 8; i++) {
    const out = rimRadiusMm - wallMm / 2 * Math.sin(slope) - levelMm - turnRadiusMm * Math.sin(slope);
    rise = heightMm - baseMm / 2 - turnRadiusMm * (1 - Math.cos(slope));
    slope = Math.atan2(Math.max(rise, 1), Math.max(0, out));
  }
  const wall = Math.max(wallMm / 2, rise / Math.sin(slope));
  return { baseMm: levelMm, turnMm: turnRadiusMm * slope, wallMm: wall, turnRadiusMm, slope };
}
function onMidline(middle, way) {
  const { baseMm, turnMm, turnRadiusMm, slope } = middle;
  if (way <= baseMm) return { r: way, z: 0, sine: 0, cosine: 1 };
  const angle = turnMm > 0 ? Math.min(slope, (way - baseMm) / turnRadiusMm) : 0;
  const beyond = Math.max(0, way - baseMm - turnMm);
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  return {
    r: baseMm + turnRadiusMm * sine + beyond * cosine,
    z: turnRadiusMm * (1 - cosine) + beyond * sine,
    sine,
    cosine
  };
}
function cornerAt(middle, shape, way) {
  const { baseMm, turnMm, slope } = middle;
  if (turnMm === 0 || way < baseMm || way > baseMm + turnMm) return null;
  const end = onMidline(middle, baseMm + turnMm);
  const foot = { r: baseMm, z: -shape.baseMm / 2 };
  const wall = {
    r: end.r + shape.wallMm / 2 * end.sine,
    z: end.z - shape.wallMm / 2 * end.cosine
  };
  const corner = {
    r: wall.r - (wall.z - foot.z) / Math.sin(slope) * Math.cos(slope),
    z: foot.z
  };
  const share = (way - baseMm) / turnMm * 2;
  const [from, to, on] = share < 1 ? [foot, corner, share] : [corner, wall, share - 1];
  return { r: from.r + (to.r - from.r) * on, z: from.z + (to.z - from.z) * on };
}

// src/core/ware/elasticPiece.ts
var POISSON = 0.2;
var GAUSS = 1 / Math.sqrt(3);
var POINTS = [
  [-GAUSS, -GAUSS],
  [GAUSS, -GAUSS],
  [GAUSS, GAUSS],
  [-GAUSS, GAUSS]
];
var ACROSS = Math.sqrt(0.6);
var TOLD = [
  [-GAUSS, -ACROSS],
  [-GAUSS, 0],
  [-GAUSS, ACROSS],
  [GAUSS, -ACROSS],
  [GAUSS, 0],
  [GAUSS, ACROSS]
];
var WEIGHTS2 = [5 / 9, 8 / 9, 5 / 9];
var PLACES_TOLD = TOLD.length;
var KINDS2 = 4;
function elasticPiece(mesh) {
  const places = gaussPlaces(mesh);
  const solver = bandedSolver(mesh, places);
  const { elements, line, place } = mesh;
  const count = elements.length / 8;
  const told2 = placesTold(mesh);
  const stress = new Float64Array(count * PLACES_TOLD * KINDS2);
  const own = new Float64Array(4 * KINDS2);
  const ownFree = new Float64Array(4);
  const nodal = new Float64Array(8);
  const load = new Float64Array(mesh.r.length * 2);
  const lattice = Int32Array.from(line, (each, node) => each * PLACES + place[node]);
  const felt = 1 / (1 - 2 * POISSON);
  const putLoad = (free) => {
    load.fill(0);
    for (let at = 0; at < count * 4; at++) {
      const element = (at >> 2) * 8;
      const row = at * 8;
      let strain = 0;
      for (let a = 0; a < 8; a++)
        strain += places.shape[(at & 3) * 8 + a] * free[lattice[elements[element + a]]];
      const force = strain * felt * places.volumes[at];
      for (let a = 0; a < 8; a++) {
        const node = 2 * elements[element + a];
        load[node] += force * (places.perR[row + a] + places.overR[row + a]);
        load[node + 1] += force * places.perZ[row + a];
      }
    }
  };
  const putOwn = (element) => {
    for (let point = 0; point < 4; point++) {
      const row = (element * 4 + point) * 8;
      let er = 0;
      let ez = 0;
      let et = 0;
      let shear = 0;
      let strain = 0;
      for (let a = 0; a < 8; a++) {
        const node = 2 * elements[element * 8 + a];
        const u = load[node];
        const w = load[node + 1];
        er += places.perR[row + a] * u;
        ez += places.perZ[row + a] * w;
        et += places.overR[row + a] * u;
        shear += places.perZ[row + a] * u + places.perR[row + a] * w;
        strain += places.shape[point * 8 + a] * nodal[a];
      }
      const spread = LAME * (er + ez + et - 3 * strain);
      const at = point * KINDS2;
      own[at] = spread + 2 * SHEAR * (er - strain);
      own[at + 1] = spread + 2 * SHEAR * (ez - strain);
      own[at + 2] = spread + 2 * SHEAR * (et - strain);
      own[at + 3] = SHEAR * shear;
      ownFree[point] = strain;
    }
  };
  const putStress = (element, k) => {
    const outer = k < 3 ? 0 : 1;
    const inner = k < 3 ? 3 : 2;
    const to = SHARE_IN[k % 3];
    let strain = 0;
    for (let a = 0; a < 8; a++) strain += told2.shape[k * 8 + a] * nodal[a];
    const straight = ownFree[outer] * (1 - to) + ownFree[inner] * to;
    const curved = (straight - strain) / (1 - POISSON);
    const place2 = element * PLACES_TOLD + k;
    const at = place2 * KINDS2;
    const along = told2.along[2 * place2];
    const up = told2.along[2 * place2 + 1];
    for (let kind = 0; kind < KINDS2; kind++)
      stress[at + kind] = own[outer * 4 + kind] * (1 - to) + own[inner * 4 + kind] * to;
    stress[at] += curved * along * along;
    stress[at + 1] += curved * up * up;
    stress[at + 2] += curved;
    stress[at + 3] += curved * along * up;
  };
  const readStress = (free) => {
    for (let element = 0; element < count; element++) {
      for (let a = 0; a < 8; a++) nodal[a] = free[lattice[elements[element * 8 + a]]];
      putOwn(element);
      for (let k = 0; k < PLACES_TOLD; k++) putStress(element, k);
    }
  };
  return {
    mesh,
    volumes: told2.volumes,
    stress,
    strain: (free) => {
      putLoad(free);
      solver(load);
      readStress(free);
    }
  };
}
var SHARE_IN = TOLD.slice(0, 3).map(([, y]) => (1 + y / GAUSS) / 2);
function placesTold({ elements, r, z }) {
  const count = elements.length / 8;
  const shape = Float64Array.from(TOLD.flatMap(([x, y]) => shapes(x, y).map(({ value }) => value)));
  const volumes = new Float64Array(count * PLACES_TOLD);
  const along = new Float64Array(count * PLACES_TOLD * 2);
  for (let at = 0; at < volumes.length; at++) {
    const element = Math.floor(at / PLACES_TOLD);
    const nodes = elements.subarray(element * 8, element * 8 + 8);
    const [x, y] = TOLD[at % PLACES_TOLD];
    const { rx, zx, area, radius } = mapped(nodes, { r, z }, shapes(x, y));
    volumes[at] = 2 * Math.PI * radius * area * WEIGHTS2[at % 3];
    const long = Math.sqrt(rx * rx + zx * zx);
    along[2 * at] = rx / long;
    along[2 * at + 1] = zx / long;
  }
  return { shape, volumes, along };
}
var LAME = POISSON / ((1 + POISSON) * (1 - 2 * POISSON));
var SHEAR = 1 / (2 * (1 + POISSON));
function gaussPlaces({ elements, r, z }) {
  const count = elements.length / 8;
  const sized = () => new Float64Array(count * 4 * 8);
  const made = {
    shape: Float64Array.from(POINTS.flatMap(([x, y]) => shapes(x, y).map(({ value }) => value))),
    perR: sized(),
    perZ: sized(),
    overR: sized(),
    volumes: new Float64Array(count * 4)
  };
  for (let at = 0; at < count * 4; at++) {
    const nodes = elements.subarray((at >> 2) * 8, (at >> 2) * 8 + 8);
    const [x, y] = POINTS[at & 3];
    const eight = shapes(x, y);
    const { rx, ry, zx, zy, area, radius } = mapped(nodes, { r, z }, eight);
    made.volumes[at] = 2 * Math.PI * radius * area;
    for (const [a, { value, perX, perY }] of eight.entries()) {
      made.perR[at * 8 + a] = (zy * perX - zx * perY) / area;
      made.perZ[at * 8 + a] = (rx * perY - ry * perX) / area;
      made.overR[at * 8 + a] = value / radius;
    }
  }
  return made;
}
function mapped(nodes, { r, z }, eight) {
  let [rx, ry, zx, zy, radius] = [0, 0, 0, 0, 0];
  for (const [a, { value, perX, perY }] of eight.entries()) {
    const [rNode, zNode] = [r[nodes[a]], z[nodes[a]]];
    rx += perX * rNode;
    ry += perY * rNode;
    zx += perX * zNode;
    zy += perY * zNode;
    radius += value * rNode;
  }
  return { rx, ry, zx, zy, radius, area: rx * zy - ry * zx };
}
var OWN3 = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0]
];
function shapes(x, y) {
  return OWN3.map(([a, b]) => {
    if (a === 0)
      return {
        value: (1 - x * x) * (1 + b * y) / 2,
        perX: -x * (1 + b * y),
        perY: (1 - x * x) * b / 2
      };
    if (b === 0)
      return {
        value: (1 - y * y) * (1 + a * x) / 2,
        perX: (1 - y * y) * a / 2,
        perY: -y * (1 + a * x)
      };
    return {
      value: (1 + a * x) * (1 + b * y) * (a * x + b * y - 1) / 4,
      perX: a * (1 + b * y) * (2 * a * x + b * y) / 4,
      perY: b * (1 + a * x) * (a * x + 2 * b * y) / 4
    };
  });
}
function bandedSolver(mesh, places) {
  const { elements, r } = mesh;
  const size = r.length * 2;
  let band = 0;
  for (let e = 0; e < elements.length; e += 8) {
    const nodes = elements.subarray(e, e + 8);
    band = Math.max(band, 2 * (Math.max(...nodes) - Math.min(...nodes)) + 1);
  }
  const width = band + 1;
  const rows = new Float64Array(size * width);
  const add = (i, j, value) => {
    if (j <= i) rows[i * width + j - i + band] += value;
  };
  for (let at = 0; at < places.volumes.length; at++) addStiffness(places, elements, { at, add });
  for (let node = 0; node < r.length; node++) if (r[node] < 1e-9) add(2 * node, 2 * node, 1e6);
  add(1, 1, 1e6);
  factor(rows, size, band);
  return (load) => {
    for (let i = 0; i < size; i++) {
      let sum = load[i];
      const from = Math.max(0, i - band);
      const row = i * width + band - i;
      for (let j = from; j < i; j++) sum -= rows[row + j] * load[j];
      load[i] = sum / rows[row + i];
    }
    for (let i = size - 1; i >= 0; i--) {
      const row = i * width + band - i;
      const value = load[i] / rows[row + i];
      load[i] = value;
      for (let j = Math.max(0, i - band); j < i; j++) load[j] -= rows[row + j] * value;
    }
  };
}
function addStiffness(places, elements, to) {
  const { at, add } = to;
  const volume = places.volumes[at];
  for (let a = 0; a < 8; a++) {
    const i = 2 * elements[(at >> 2) * 8 + a];
    const [ar, az, ao] = [
      places.perR[at * 8 + a],
      places.perZ[at * 8 + a],
      places.overR[at * 8 + a]
    ];
    for (let b = 0; b < 8; b++) {
      const j = 2 * elements[(at >> 2) * 8 + b];
      const [br, bz, bo] = [
        places.perR[at * 8 + b],
        places.perZ[at * 8 + b],
        places.overR[at * 8 + b]
      ];
      add(
        i,
        j,
        volume * (LAME * (ar + ao) * (br + bo) + SHEAR * (2 * ar * br + 2 * ao * bo + az * bz))
      );
      add(i, j + 1, volume * (LAME * (ar + ao) * bz + SHEAR * az * br));
      add(i + 1, j, volume * (LAME * az * (br + bo) + SHEAR * ar * bz));
      add(i + 1, j + 1, volume * (LAME * az * bz + SHEAR * (2 * az * bz + ar * br)));
    }
  }
}
function factor(rows, size, band) {
  const width = band + 1;
  for (let i = 0; i < size; i++) {
    const row = i * width + band - i;
    for (let j = Math.max(0, i - band); j <= i; j++) {
      const other = j * width + band - j;
      let sum = rows[row + j];
      for (let k = Math.max(0, i - band, j - band); k < j; k++)
        sum -= rows[row + k] * rows[other + k];
      rows[row + j] = i === j ? Math.sqrt(sum) : sum / rows[other + j];
    }
  }
}

// src/core/ware/lastAsked.ts
function lastAsked(most) {
  const known3 = /* @__PURE__ */ new Map();
  return {
    of: (key, make) => {
      const found = known3.has(key) ? known3.get(key) : make();
      known3.delete(key);
      if (known3.size >= most) known3.delete(known3.keys().next().value);
      known3.set(key, found);
      return found;
    }
  };
}

// src/core/ware/wareState.ts
var DEEP = 5;
var WALL = 0;
var BASE = WALL + DEEP;
var SHELF = 2 * DEEP;
var CHAIN = SHELF + 1;
var LOAD = CHAIN;
var AROUND = LOAD + 1;
var STATE_SIZE = AROUND + 1;
function shutKiln() {
  return { airC: 0, radiantK4: 0, airWPerM2K: CONVECTION_W_PER_M2K, upShare: LAYER_SHARE };
}
var CELL = Float64Array.of(0.125, 0.25, 0.25, 0.25, 0.125);
var heat = new Float64Array(CHAIN);
var diagonal = new Float64Array(CHAIN);
var toNext = new Float64Array(CHAIN);
var toLast = new Float64Array(CHAIN);
function advanceWare(state, numbers, by) {
  const { around, seconds } = by;
  putCapacities(state, numbers, seconds);
  putConduction(state, numbers);
  putFaces(state, numbers, around);
  putGap(state, numbers);
  stepChain(state);
  const baseC = meanC(state, BASE);
  const perK = 4 * EMISSIVITY * STEFAN * thirdPowerK(baseC) + around.airWPerM2K;
  state[AROUND] = baseC + takesUp(around, baseC) / perK;
  const lag = loadLagSeconds(numbers.stackShare, state[WALL]) / seconds;
  state[LOAD] = (state[LOAD] - heat[WALL]) * lag / (lag + 1);
}
function putCapacities(state, numbers, seconds) {
  for (let i = 0; i < CHAIN; i++) {
    const metres = i < BASE ? numbers.wallM : numbers.baseM;
    const held = i === SHELF ? numbers.shelfHeat : numbers.heatPerM3 * metres * CELL[i % DEEP];
    diagonal[i] = held * capacityFactor(state[i]) / seconds;
    heat[i] = 0;
    toNext[i] = 0;
    toLast[i] = 0;
  }
}
function putConduction(state, numbers) {
  for (let i = 0; i < SHELF; i++) {
    if (i % DEEP === DEEP - 1) continue;
    const metres = i < BASE ? numbers.wallM : numbers.baseM;
    couple(i, numbers.conductivity * (DEEP - 1) / metres, state[i + 1] - state[i], 1);
  }
}
function couple(i, perK, differenceK, wider) {
  heat[i] += perK * differenceK;
  diagonal[i] += perK;
  toNext[i] = perK;
  heat[i + 1] -= perK * differenceK / wider;
  diagonal[i + 1] += perK / wider;
  toLast[i + 1] = perK / wider;
}
function putFaces(state, numbers, around) {
  const up = around.upShare;
  face(state, WALL, 1, around);
  face(state, BASE - 1, numbers.wallSeesOut * up, around);
  face(state, BASE, numbers.baseSeesOut * up, around);
  face(state, SHELF, LAYER_SHARE, around);
  if (numbers.onEdge) face(state, SHELF - 1, up, around);
  if (numbers.baseOverWall > 0) {
    const wallC = state[BASE - 1];
    const baseC = state[BASE];
    const seen = EMISSIVITY * STEFAN * (1 - numbers.baseSeesOut) * numbers.baseOverWall;
    const middleC = (wallC + baseC) / 2;
    const perK = 4 * seen * thirdPowerK(middleC);
    const flow = seen * (fourthPowerK(baseC) - fourthPowerK(wallC));
    couple(BASE - 1, perK, flow / perK, numbers.baseOverWall);
  }
}
function face(state, i, share, around) {
  const faceC = state[i];
  heat[i] += share * takesUp(around, faceC);
  diagonal[i] += share * (4 * EMISSIVITY * STEFAN * thirdPowerK(faceC) + around.airWPerM2K);
}
function takesUp(around, faceC) {
  return EMISSIVITY * STEFAN * (around.radiantK4 - fourthPowerK(faceC)) + around.airWPerM2K * (around.airC - faceC);
}
function putGap(state, numbers) {
  if (numbers.onEdge) return;
  const baseC = state[SHELF - 1];
  const shelfC = state[SHELF];
  const middleC = (baseC + shelfC) / 2;
  const perK = gapWPerM2K(numbers, middleC);
  const radiated = GAP_EMISSIVITY * STEFAN * (fourthPowerK(shelfC) - fourthPowerK(baseC));
  const flow = radiated + airConductivity(middleC) / numbers.footGapM * (shelfC - baseC);
  couple(SHELF - 1, perK, flow / perK, 1);
}
function gapWPerM2K(numbers, tempC) {
  return 4 * GAP_EMISSIVITY * STEFAN * thirdPowerK(tempC) + airConductivity(tempC) / numbers.footGapM;
}
function stepChain(state) {
  for (let i = 1; i < CHAIN; i++) {
    const times = toLast[i] / diagonal[i - 1];
    diagonal[i] -= times * toNext[i - 1];
    heat[i] += times * heat[i - 1];
  }
  for (let i = CHAIN - 1; i >= 0; i--) {
    const next = i === CHAIN - 1 ? 0 : toNext[i] * heat[i + 1];
    heat[i] = (heat[i] + next) / diagonal[i];
    state[i] += heat[i];
  }
}
function meanC(state, part) {
  let sum = 0;
  for (let i = 0; i < DEEP; i++) sum += CELL[i] * state[part + i];
  return sum;
}

// src/core/ware/weibull.ts
var WEIBULL = { value: 10, low: 7, high: 13 };
var BAR_MM3 = 3 * 4 * 40;
function barStress(piece, modulus = WEIBULL.value, barMm3 = BAR_MM3) {
  const { stress, volumes } = piece;
  let sum = 0;
  for (let at = 0; at < volumes.length; at++) {
    const middle = (stress[at * 4] + stress[at * 4 + 1]) / 2;
    const half = (stress[at * 4] - stress[at * 4 + 1]) / 2;
    const shear = stress[at * 4 + 3];
    const reach = Math.sqrt(half * half + shear * shear);
    sum += volumes[at] * (power(middle + reach, modulus) + power(middle - reach, modulus) + power(stress[at * 4 + 2], modulus));
  }
  if (sum <= 0) return 0;
  const barVolume = barMm3 / (2 * (modulus + 1) * (modulus + 1));
  return Math.exp(Math.log(sum / barVolume) / modulus);
}
function power(value, modulus) {
  if (value <= 0) return 0;
  let result = 1;
  let base = value;
  for (let left = modulus; left > 0; left >>= 1) {
    if ((left & 1) === 1) result *= base;
    base *= base;
  }
  return result;
}
var FACE = [1 / 1.2 - 1 / (2 * Math.sqrt(0.6)), 1 - 1 / 0.6, 1 / 1.2 + 1 / (2 * Math.sqrt(0.6))];

// src/core/ware/pieceStress.ts
var SHAPES = lastAsked(24);
function pieceStress(shape) {
  return SHAPES.of(Object.values(shape).join(" "), () => {
    const mesh = pieceMesh(shape);
    return {
      elastic: elasticPiece(mesh),
      baseShare: new Float64Array(mesh.lines),
      free: new Float64Array(mesh.lines * PLACES)
    };
  });
}
var UNALTERED = { lag: 1, deep: 1 };
function stressRatio(state, numbers, modulus) {
  return strainedBar(state, numbers, { table: numbers.strain, modulus }) / numbers.strainToFailure;
}
function strainedBar(state, numbers, by) {
  putFreeStrain(state, numbers, by);
  const { elastic, free } = numbers.stress;
  elastic.strain(free);
  return barStress(elastic, by.modulus);
}
function putFreeStrain(state, numbers, by) {
  const { elastic, baseShare, free } = numbers.stress;
  const { mesh } = elastic;
  const { lag, deep } = by.alteration ?? UNALTERED;
  const flat = isFlat(numbers.shape);
  putBaseShare(state, numbers);
  const wallC = flat ? state[AROUND] : meanC(state, WALL);
  const baseC = meanC(state, BASE);
  const rim = mesh.radius[mesh.lines - 1];
  for (let line = 0; line < mesh.lines; line++) {
    const share = baseShare[line];
    const place = mesh.radius[line] / rim;
    const levelC = wallC + lag * (share * (baseC - wallC) + state[LOAD] * (1 - place * place));
    for (let k = 0; k < PLACES; k++) {
      const throughBase = state[BASE + DEEP - 1 - k] - baseC;
      const throughWall = flat ? 0 : state[WALL + k] - wallC;
      const tempC = levelC + lag * deep * (share * throughBase + (1 - share) * throughWall);
      free[line * PLACES + k] = strainIn(by.table, tempC);
    }
  }
}
function putBaseShare(state, numbers) {
  const { elastic, baseShare } = numbers.stress;
  const { mesh } = elastic;
  const { conductivity, wallM, baseM, baseSeesOut, wallSeesOut } = numbers;
  const tempC = meanC(state, BASE);
  const face2 = radiationWPerM2K(tempC) + CONVECTION_W_PER_M2K;
  const flat = isFlat(numbers.shape);
  const under = numbers.onEdge ? face2 * LAYER_SHARE : gapWPerM2K(numbers, tempC);
  const baseWPerM2K = face2 * (1 - baseSeesOut * (1 - LAYER_SHARE)) + under;
  const wallSeesBase = numbers.baseOverWall * (1 - baseSeesOut);
  const wallWPerM2K = face2 * (1 + wallSeesOut * LAYER_SHARE + wallSeesBase);
  const baseFin = finMm(conductivity * baseM, baseWPerM2K);
  const wallFin = finMm(conductivity * wallM, wallWPerM2K);
  const end = mesh.along[mesh.lines - 1];
  const turn = flat ? end : mesh.turnAt;
  const far = 2 * (end - turn) / wallFin;
  const baseHolds = Math.sqrt(conductivity * baseM * baseWPerM2K) * (scaledBessel(turn / baseFin, 1) / scaledBessel(turn / baseFin, 0));
  const wallHolds = flat ? face2 * baseM : Math.sqrt(conductivity * wallM * wallWPerM2K) * ((1 - Math.exp(-far)) / (1 + Math.exp(-far)));
  const meeting = baseHolds / (baseHolds + wallHolds);
  const atTurn = scaledBessel(turn / baseFin, 0);
  for (let line = 0; line < mesh.lines; line++) {
    const way = mesh.along[line];
    if (way <= turn) {
      const within = scaledBessel(way / baseFin, 0) / atTurn;
      baseShare[line] = 1 - (1 - meeting) * within * Math.exp((way - turn) / baseFin);
    } else {
      const back = 2 * (end - way) / wallFin;
      baseShare[line] = meeting * Math.exp((turn - way) / wallFin) * (1 + Math.exp(-back)) / (1 + Math.exp(-far));
    }
  }
}
function finMm(conductance, wPerM2K) {
  return Math.sqrt(conductance / wPerM2K) * 1e3;
}
function scaledBessel(x, order) {
  const small = x < 3.75;
  const t = small ? x / 3.75 * (x / 3.75) : 3.75 / x;
  let sum = 0;
  for (const term of small ? SMALL[order] : LARGE[order]) sum = sum * t + term;
  if (!small) return sum / Math.sqrt(x);
  return (order === 1 ? x * sum : sum) * Math.exp(-x);
}
var SMALL = [
  [45813e-7, 0.0360768, 0.2659732, 1.2067492, 3.0899424, 3.5156229, 1],
  [32411e-8, 301532e-8, 0.02658733, 0.15084934, 0.51498869, 0.87890594, 0.5]
];
var LARGE = [
  [
    392377e-8,
    -0.01647633,
    0.02635537,
    -0.02057706,
    916281e-8,
    -157565e-8,
    225319e-8,
    0.01328592,
    0.39894228
  ],
  [
    -420059e-8,
    0.01787654,
    -0.02895312,
    0.02282967,
    -0.01031555,
    163801e-8,
    -362018e-8,
    -0.03988024,
    0.39894228
  ]
];

// src/core/ware/integrateStrain.ts
var WATCHED = [
  { band: CRISTOBALITE_BAND, direction: "heating" },
  { band: QUARTZ_BAND, direction: "heating" },
  { band: QUARTZ_BAND, direction: "cooling" },
  { band: CRISTOBALITE_BAND, direction: "cooling" }
];
var FIRST_COOLING = 2;
var MOMENTS = 5;
var NEAR_WORST = 0.8;
var HALVINGS = 4;
var TRACE_STEP_K = 5;
function strainRunner(steps, peakSeconds) {
  const count = steps.timesSeconds.length;
  const states = new Float64Array(count * STATE_SIZE);
  const mismatches = new Float64Array(count);
  const worst = new Float64Array(WATCHED.length);
  const worstAt = new Int32Array(WATCHED.length);
  const chosen = WATCHED.map(() => []);
  const state = (step) => states.subarray(step * STATE_SIZE, (step + 1) * STATE_SIZE);
  const follow = (numbers) => {
    const now = new Float64Array(STATE_SIZE);
    const around = shutKiln();
    const by = { around, seconds: 0 };
    for (let step = 0; step < count; step++) {
      const kilnC = steps.tempsC[step];
      if (steps.begins[step] === 1) atRest(now, kilnC);
      else {
        around.airC = kilnC;
        around.radiantK4 = fourthPowerK(kilnC);
        by.seconds = steps.timesSeconds[step] - steps.timesSeconds[step - 1];
        advanceWare(now, numbers, by);
      }
      states.set(now, step * STATE_SIZE);
      mismatches[step] = mismatch(now, numbers);
    }
  };
  const run = (numbers, trace) => {
    follow(numbers);
    for (const [i, { band }] of WATCHED.entries()) {
      chosen[i] = spacedMoments(within(i, band), mismatches);
      worst[i] = -1;
      for (const step of chosen[i]) judge(i, step, numbers);
      if (chosen[i].length > 1) narrow(i, numbers);
    }
    if (trace === null) return;
    write(trace, numbers);
    cap(trace);
  };
  const judge = (i, step, numbers) => {
    const ratio = stressRatio(state(step), numbers);
    if (ratio <= worst[i]) return;
    worst[i] = ratio;
    worstAt[i] = step;
  };
  const narrow = (i, numbers) => {
    const at = chosen[i].indexOf(worstAt[i]);
    let reach = Math.max(
      (chosen[i][at + 1] ?? worstAt[i]) - worstAt[i],
      worstAt[i] - (chosen[i][at - 1] ?? worstAt[i])
    );
    const [first, last] = [chosen[i][0], chosen[i].at(-1)];
    for (let halving = 0; halving < HALVINGS && reach > 1; halving++) {
      reach = Math.ceil(reach / 2);
      const middle = worstAt[i];
      if (middle - reach > first) judge(i, middle - reach, numbers);
      if (middle + reach < last) judge(i, middle + reach, numbers);
    }
    chosen[i] = [.../* @__PURE__ */ new Set([...chosen[i], worstAt[i]])];
  };
  const within = (i, band) => {
    const heating = i < FIRST_COOLING;
    const found = [];
    for (let step = 0; step < count; step++) {
      if (steps.timesSeconds[step] < peakSeconds !== heating) continue;
      const at = state(step);
      const wallC = at[WALL];
      const baseC = at[BASE] + at[LOAD];
      const kilnC = steps.tempsC[step];
      const inside = heating ? kilnC >= band.lowC && Math.min(kilnC, wallC, baseC) <= band.highC : kilnC <= band.highC && Math.max(kilnC, wallC, baseC) >= band.lowC;
      if (inside) found.push(step);
    }
    return found;
  };
  const write = (trace, numbers) => {
    for (let step = 0; step < count; step++) {
      const at = state(step);
      trace.wallC[step] = meanC(at, WALL);
      trace.baseC[step] = meanC(at, BASE);
      trace.shelfC[step] = at[SHELF];
    }
    const worked = new Set(worstAt.filter((_, i) => worst[i] >= 0));
    let [from, fromFactor] = [0, 0];
    for (let step = 0; step < count; step++) {
      const begins = steps.begins[step] === 1;
      if (!(begins || worked.has(step) || isWorked(step, from))) continue;
      const ratio = begins ? 0 : stressRatio(state(step), numbers);
      const factor2 = mismatches[step] > 0 ? ratio / mismatches[step] : fromFactor;
      for (let k = from + 1; !begins && k < step; k++) {
        const share = (k - from) / (step - from);
        trace.ratio[k] = (fromFactor + (factor2 - fromFactor) * share) * mismatches[k];
      }
      trace.ratio[step] = ratio;
      from = step;
      fromFactor = factor2;
    }
  };
  const cap = (trace) => {
    for (const [i, { band }] of WATCHED.entries()) {
      if (worst[i] < 0) continue;
      const most = worst[i] * (1 - 1e-9);
      for (const step of within(i, band))
        if (step !== worstAt[i]) trace.ratio[step] = Math.min(trace.ratio[step], most);
    }
  };
  const isWorked = (step, from) => Math.abs(steps.tempsC[step] - steps.tempsC[from]) >= TRACE_STEP_K || step === count - 1 || steps.begins[step + 1] === 1;
  return {
    worst,
    worstAt,
    run,
    moments: (watched) => chosen[watched].map(state)
  };
}
function atRest(state, tempC) {
  state.fill(tempC);
  state[LOAD] = 0;
}
function mismatch(state, numbers) {
  const { strain, shape } = numbers;
  const baseC = meanC(state, BASE);
  const wallC = isFlat(shape) ? state[AROUND] : meanC(state, WALL);
  const of = (tempC) => strainIn(strain, tempC);
  const across = of(baseC + state[LOAD]) - of(wallC);
  const base = of(state[BASE]) - of(state[BASE + DEEP - 1]);
  const deep = of(state[BASE + 2]) - of(state[BASE]);
  const wall = of(state[WALL + 2]) - of(state[WALL]);
  return Math.abs(across) + (Math.abs(base) + Math.abs(deep) + Math.abs(wall)) / 2;
}
function spacedMoments(steps, mismatches) {
  let greatest = -1;
  for (const step of steps)
    if (greatest < 0 || mismatches[step] > mismatches[greatest]) greatest = step;
  if (greatest < 0) return [];
  const near = steps.filter((step) => mismatches[step] >= NEAR_WORST * mismatches[greatest]);
  const picked = Array.from(
    { length: MOMENTS - 1 },
    (_, i) => near[Math.round((near.length - 1) * i / (MOMENTS - 2))]
  );
  return [.../* @__PURE__ */ new Set([...picked, greatest])].toSorted((a, b) => a - b);
}

// src/core/ware/strainNumbers.ts
var known2 = /* @__PURE__ */ new WeakMap();
function wareNumbers(ware) {
  const found = known2.get(ware);
  if (found !== void 0) return found;
  const { body, geometry } = ware;
  const shape = pieceShape(geometry);
  const strain = newStrainTable();
  fillStrainTable(strain, {
    quartz: body.quartzFraction.value,
    cristobalite: body.cristobaliteFraction.value,
    matrixPerK: body.matrixExpansionPerK.value
  });
  const numbers = {
    shape,
    heatPerM3: body.densityKgPerM3.value * body.heatCapacityJPerKgK.value,
    shelfHeat: SHELF_DENSITY * SHELF_HEAT_CAPACITY * geometry.shelfMm / 1e3,
    conductivity: body.conductivityWPerMK.value,
    wallM: shape.wallMm / 1e3,
    baseM: shape.baseMm / 1e3,
    footGapM: geometry.footGapMm / 1e3,
    onEdge: geometry.stands === "on edge",
    // What stands on edge does not reach across the shelf.
    stackShare: geometry.stands === "on edge" ? 0 : stackShare(shape.rimRadiusMm),
    ...insideSeen(shape),
    strainToFailure: body.ruptureMPa.value / (1e3 * body.youngGPa.value),
    strain,
    stress: pieceStress(shape)
  };
  known2.set(ware, numbers);
  return numbers;
}
function insideSeen(shape) {
  if (isFlat(shape)) return { baseSeesOut: 1, wallSeesOut: 0, baseOverWall: 0 };
  const deep = shape.heightMm - shape.baseMm;
  const base = Math.max(1, shape.footRadiusMm - shape.wallMm);
  const mouth = Math.max(1, shape.rimRadiusMm - shape.wallMm);
  const baseArea = base * base;
  const wallArea = (base + mouth) * Math.sqrt(deep * deep + (mouth - base) * (mouth - base));
  const baseSeesOut = discToDisc(base / deep, mouth / deep);
  const wallSeesOut = (mouth * mouth - baseArea * baseSeesOut) / wallArea;
  return { baseSeesOut, wallSeesOut, baseOverWall: baseArea / wallArea };
}
function discToDisc(radius, other) {
  const sum = 1 + (1 + other * other) / (radius * radius);
  return (sum - Math.sqrt(sum * sum - 4 * (other * other / (radius * radius)))) / 2;
}

// src/core/ware/openingRatio.ts
var ROOM_C = 20;
var KILN_SEEN = { "lid opened": 0.5, "lifted out": 0 };
var OPEN_AIR_W_PER_M2K = 8;
var SHORTEST_SECONDS = 5;
var LONGEST_SECONDS = 60;
var WATCHED_SECONDS = 2 * 3600;
var LOOK_EVERY_K = 20;
function worstOpening(numbers, tempC, way) {
  let worst = { ratio: 0, fromC: ROOM_C, moments: [] };
  for (let fromC = tempC; fromC > ROOM_C; fromC -= LOOK_EVERY_K) {
    const found = openedAt(numbers, fromC, way);
    if (found.ratio > worst.ratio) worst = found;
  }
  return worst;
}
function openedAt(piece, fromC, way) {
  const numbers = { ...piece, stackShare: 0 };
  const state = new Float64Array(STATE_SIZE);
  atRest(state, fromC);
  const seen = KILN_SEEN[way];
  const around = {
    airC: ROOM_C,
    radiantK4: seen * fourthPowerK(fromC) + (1 - seen) * fourthPowerK(ROOM_C),
    airWPerM2K: OPEN_AIR_W_PER_M2K,
    upShare: 1
  };
  const by = { around, seconds: SHORTEST_SECONDS };
  const states = [];
  for (let seconds = 0; seconds < WATCHED_SECONDS; seconds += by.seconds) {
    by.seconds = Math.min(LONGEST_SECONDS, Math.max(SHORTEST_SECONDS, seconds / 20));
    advanceWare(state, numbers, by);
    states.push(state.slice());
  }
  const mismatches = Float64Array.from(states, (each) => mismatch(each, numbers));
  const moments = spacedMoments([...states.keys()], mismatches).map((step) => states[step]);
  const ratio = Math.max(0, ...moments.map((each) => stressRatio(each, numbers)));
  return { ratio, fromC, moments };
}

// src/core/ware/strainSteps.ts
var FINE_BELOW_C = 700;
var FINE = { longest: 20, shortest: 10 };
var COARSE = { longest: 60, shortest: 30 };
function strainSteps(curve) {
  const times = [];
  const temps = [];
  const begins = [];
  const gapStarts = new Set(curve.gaps.map((gap) => gap.fromSeconds));
  const last = curve.timesSeconds.length - 1;
  let sum = { seconds: 0, tempsC: 0, count: 0 };
  let begin = true;
  const place = (seconds, tempC) => {
    if (!begin) fill(times, temps, begins, { seconds, tempC });
    times.push(seconds);
    temps.push(tempC);
    begins.push(begin ? 1 : 0);
    begin = false;
  };
  for (let i = 0; i <= last; i++) {
    const seconds = curve.timesSeconds[i];
    const tempC = curve.tempsC[i];
    const ends = i === last || gapStarts.has(seconds);
    if (begin || ends) {
      if (sum.count > 0) place(sum.seconds / sum.count, sum.tempsC / sum.count);
      place(seconds, tempC);
      sum = { seconds: 0, tempsC: 0, count: 0 };
      if (ends) begin = true;
      continue;
    }
    sum.seconds += seconds;
    sum.tempsC += tempC;
    sum.count++;
    const next = curve.timesSeconds[i + 1];
    if (next - times.at(-1) < stepAt(tempC).shortest) continue;
    place(sum.seconds / sum.count, sum.tempsC / sum.count);
    sum = { seconds: 0, tempsC: 0, count: 0 };
  }
  return {
    timesSeconds: Float64Array.from(times),
    tempsC: Float64Array.from(temps),
    begins: Uint8Array.from(begins)
  };
}
function fill(times, temps, begins, to) {
  const from = { seconds: times.at(-1), tempC: temps.at(-1) };
  let at = from.seconds;
  let tempC = from.tempC;
  const slope = (to.tempC - from.tempC) / (to.seconds - from.seconds);
  for (; ; ) {
    const longest = stepAt(Math.min(tempC, to.tempC)).longest;
    const left = Math.ceil((to.seconds - at) / longest - 1e-9);
    if (left <= 1) return;
    at += (to.seconds - at) / left;
    tempC = from.tempC + slope * (at - from.seconds);
    times.push(at);
    temps.push(tempC);
    begins.push(0);
  }
}
function stepAt(tempC) {
  return tempC < FINE_BELOW_C ? FINE : COARSE;
}

// src/core/ware/wareStrain.ts
function wareStrain(curve, ware) {
  return followedWare(curve, ware).strain;
}
function followedWare(curve, ware) {
  const steps = strainSteps(curve);
  const numbers = wareNumbers(ware);
  const runner = strainRunner(steps, peakOf(curve).seconds);
  const count = steps.timesSeconds.length;
  const trace = {
    ratio: new Float64Array(count),
    wallC: new Float64Array(count),
    baseC: new Float64Array(count),
    shelfC: new Float64Array(count)
  };
  runner.run(numbers, trace);
  const strain = {
    timesSeconds: steps.timesSeconds,
    ...trace,
    worst: WATCHED.flatMap(({ band, direction }, i) => {
      const ratio = runner.worst[i];
      const step = runner.worstAt[i];
      if (ratio < 0) return [];
      return [
        {
          band: band.name,
          direction,
          ratio,
          atSeconds: steps.timesSeconds[step],
          tempC: steps.tempsC[step]
        }
      ];
    })
  };
  return { strain, moments: runner.moments };
}

// src/core/firing/diagnosis/crackCases.ts
var NO_CRACKS = ["blister", "pinhole", "crawling"];
function crackCases(record) {
  if (record === null) return [];
  const found = record.found.map(withRemark).filter(isCrack);
  const named = new Set(found.map(({ piece }) => piece));
  const cases = [
    ...found.map((each) => caseOfFound(each, record)),
    ...trialCases(
      record.trials.filter(({ piece }) => !named.has(piece)),
      record.ware
    )
  ];
  return cases.length > 0 ? cases : remarkedCases(record);
}
function withRemark(found) {
  const said = crackWords([found.piece, found.note].filter((text) => text !== null).join(". "));
  const isVague = found.what === null || found.what === "crack";
  return {
    ...found,
    what: isVague ? said.what ?? found.what : found.what,
    edges: found.edges ?? said.edges,
    where: found.where ?? said.where,
    pattern: found.pattern ?? said.pattern,
    when: found.when ?? said.when,
    rings: found.rings ?? said.rings
  };
}
function isCrack({ what, rings, pattern, edges }) {
  if (what !== null) return !NO_CRACKS.includes(what);
  return rings === "dull" || pattern !== null || edges !== null;
}
function caseOfFound({ note, ...found }, record) {
  const trial = record.trials.find(({ piece }) => piece === found.piece) ?? null;
  const ware = trial === null ? wareNamed(`${found.piece ?? ""} ${note ?? ""}`, record.ware) : wareOfTrial(trial, record.ware);
  const sides = sidesSaid(`${found.piece ?? ""}. ${note ?? ""}`);
  return {
    ...found,
    what: found.what ?? (trial === null ? null : trialWord(trial)),
    count: 1,
    glazedSides: trial?.glazedSides ?? sides ?? ware?.glazedSides ?? null,
    coatMm: trial?.coatMm ?? null,
    wallMm: trial?.wallMm ?? ware?.wallMm ?? ware?.thickestMm ?? null,
    ware,
    trials: trial === null ? [] : [trial]
  };
}
function trialWord({ cracked }) {
  if (cracked === "through") return "through-crack";
  return cracked === "crackle" ? "crackle" : null;
}
function trialCases(trials, ware) {
  const groups = /* @__PURE__ */ new Map();
  for (const trial of trials) {
    const what = trialWord(trial);
    if (what === null) continue;
    const key = [what, trial.clay, trial.glaze, trial.glazedSides].join("\n");
    groups.set(key, [...groups.get(key) ?? [], trial]);
  }
  return [...groups.values()].map((group) => {
    const [first] = group;
    const said = crackWords(group.map(({ note }) => note ?? "").join(". "));
    return {
      ...said,
      piece: group.map(({ piece }) => piece).join(", "),
      what: trialWord(first),
      count: group.length,
      glazedSides: first.glazedSides,
      coatMm: mean(group.map(({ coatMm }) => coatMm)),
      wallMm: first.wallMm,
      ware: wareOfTrial(first, ware),
      trials: group
    };
  });
}
function remarkedCases(record) {
  const remarks = [
    ...(record.notes ?? "").split(/[.;!]\s+|\n/),
    ...record.trials.map(({ piece, note }) => note === null ? "" : `${piece}: ${note}`)
  ];
  return remarks.flatMap((remark) => {
    const said = crackWords(remark);
    if (said.what === null || NO_CRACKS.includes(said.what)) return [];
    const ware = wareNamed(remark, record.ware);
    return [
      {
        ...said,
        piece: ware?.name ?? null,
        count: 1,
        glazedSides: sidesSaid(remark) ?? ware?.glazedSides ?? null,
        coatMm: null,
        wallMm: ware?.wallMm ?? ware?.thickestMm ?? null,
        ware,
        trials: []
      }
    ];
  });
}
function sidesSaid(text) {
  if (/\b(?:both sides|inside and out(?:side)?|all over) glazed|glazed (?:on )?(?:both|inside and out|all over)/i.test(
    text
  ))
    return "both";
  if (/\bunglazed\b|\bnot glazed\b/i.test(text) && !/unglazed (?:on the )?(?:out|in)side|(?:out|in)side unglazed/i.test(text))
    return "none";
  return /\b(?:one side|inside only|outside only|only (?:the |on the )?(?:in|out)side|(?:out|in)side unglazed|glazed inside\b(?! and))/i.test(
    text
  ) ? "one" : null;
}
var SAME_WALL_MM = 0.5;
function wareOfTrial({ shape, wallMm, note }, ware) {
  const called = wareNamed(
    `${shape === "closed wall" ? "" : shape ?? "tile"} test ${note ?? ""}`,
    ware
  );
  if (called !== null) return called;
  const alike = ware.filter((each) => {
    const wall = each.wallMm ?? each.thickestMm;
    return wall !== null && wallMm !== null && Math.abs(wall - wallMm) <= SAME_WALL_MM;
  });
  return alike.length === 1 ? alike[0] : null;
}
function wareNamed(text, ware) {
  const words = new Set(stems(text));
  const named = ware.find(({ name }) => stems(name).some((stem) => words.has(stem)));
  return named ?? (ware.length === 1 ? ware[0] : null);
}
function stems(text) {
  return text.toLowerCase().split(/[^\p{L}]+/u).filter((word) => word.length > 2 && !IDLE.has(word)).map((word) => word.replace(/(?<=(?:s|x|z|ch|sh))es$|(?<!s)s$/, ""));
}
var IDLE = /* @__PURE__ */ new Set([
  "the",
  "and",
  "two",
  "one",
  "big",
  "small",
  "with",
  "glaze",
  "glazed",
  "test"
]);
function mean(values) {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

// src/core/firing/diagnosis/crackFacts.ts
var STEAM_C = [70, 200];
var QUARTZ_UP_C = [520, 620];
var CLIMB_WINDOW_SECONDS = 1800;
function crackFacts(facts) {
  const { record, zones } = facts;
  const { curve, peakAtSeconds } = hottestZone(zones);
  const cases = crackCases(record);
  const known3 = /* @__PURE__ */ new Map();
  return {
    cases,
    sounds: heardSounds(facts),
    trials: record?.trials ?? [],
    opening: facts.opening,
    stressOf: (ware) => {
      const stress = known3.get(ware) ?? stressOfWare(facts, ware);
      known3.set(ware, stress);
      return stress;
    },
    climb: {
      steamCPerHour: fastestClimb(curve, peakAtSeconds, STEAM_C),
      quartzCPerHour: fastestClimb(curve, peakAtSeconds, QUARTZ_UP_C)
    },
    states: (record?.ware ?? []).flatMap(({ state }) => state === null ? [] : [state])
  };
}
function hasSomethingToWeigh({ sounds, cases }) {
  return sounds.length > 0 || cases.length > 0;
}
var ORDINARY_MUG2 = wareOf({ wallMm: null, baseMm: null, widestMm: null }).ware;
function stressOfWare(facts, ware) {
  const { curve } = hottestZone(facts.zones);
  const named = ware === null ? void 0 : facts.strains.find(({ name }) => name === ware.name);
  const computed = named === void 0 ? facts.strains : [named];
  const [weakest] = computed;
  const piece = weakest?.ware ?? ORDINARY_MUG2;
  const worst = (band) => computed.length === 0 ? wareStrain(curve, piece).worst.find(
    (each) => each.band === band && each.direction === "cooling"
  )?.ratio ?? null : highest(computed, band);
  const stress = (band) => {
    if (!passedShut(facts, band)) return null;
    const ratio = worst(band.name);
    return ratio === null ? null : { ratio, fastestCPerHour: fastest(facts, band.name) };
  };
  return {
    quartz: stress(QUARTZ_BAND),
    cristobalite: stress(CRISTOBALITE_BAND),
    cristobaliteShare: piece.body.cristobaliteFraction.value,
    openingAt: openingOf(piece)
  };
}
function highest(pieces, band) {
  const ratios = pieces.flatMap(
    ({ passages }) => passages.filter((each) => each.band === band && each.direction === "cooling").flatMap(({ computed }) => computed === null ? [] : [computed.ratio])
  );
  return ratios.length === 0 ? null : Math.max(...ratios);
}
function passedShut(facts, band) {
  const { curve } = hottestZone(facts.zones);
  if (passagesOf(curve)(band, "cooling").measured !== "whole") return false;
  const { tempC, contradiction } = facts.opening;
  return tempC === null || tempC <= band.lowC || contradiction === "opened before";
}
function fastest(facts, band) {
  const rates = facts.zones.flatMap(({ crossings }) => crossings).filter((crossing) => crossing.band === band && crossing.direction === "cooling").flatMap(({ fastestCPerHour }) => fastestCPerHour === null ? [] : [-fastestCPerHour]);
  return rates.length === 0 ? null : Math.max(...rates);
}
var OPENING_STEP_K = 20;
var ROOM_C2 = 20;
var OPENINGS2 = /* @__PURE__ */ new WeakMap();
function openingOf(piece) {
  const known3 = OPENINGS2.get(piece) ?? smoothOpening(piece);
  OPENINGS2.set(piece, known3);
  return known3;
}
function smoothOpening(piece) {
  const numbers = wareNumbers(piece);
  const worst = [0];
  const at = (step) => {
    for (let next = worst.length; next <= step; next++) {
      const fromC = ROOM_C2 + next * OPENING_STEP_K;
      const ratio = Math.sqrt(
        openedAt(numbers, fromC, "lid opened").ratio * openedAt(numbers, fromC, "lifted out").ratio
      );
      worst.push(Math.max(worst.at(-1), ratio));
    }
    return worst[step];
  };
  return (tempC) => {
    const steps = Math.max(0, Math.min(tempC, HOTTEST_C) - ROOM_C2) / OPENING_STEP_K;
    const low = Math.floor(steps);
    return at(low) * (low + 1 - steps) + at(low + 1) * (steps - low);
  };
}
var HOTTEST_C = 700;
function fastestClimb(curve, peakSeconds, [lowC, highC]) {
  const meter = slopeMeter(curve);
  let best = null;
  const begin = curve.timesSeconds[0];
  for (let seconds = begin; seconds <= peakSeconds; seconds += CLIMB_WINDOW_SECONDS / 6) {
    const tempC = temperatureAt(curve, seconds);
    if (tempC === null || tempC < lowC || tempC > highC) continue;
    const rate = meter.slopeAt(seconds, CLIMB_WINDOW_SECONDS);
    if (rate !== null && (best === null || rate > best)) best = rate;
  }
  return best;
}

// src/core/firing/diagnosis/diagnosedCauses.ts
var SAYS_FROM = 1.2;
var FAIR_FROM = 2;
var STRONG_FROM = 4;
var LOG_QUESTIONS = ["quartz", "cristobalite", "heating"];
function diagnosisOf(facts) {
  if (!hasSomethingToWeigh(facts)) return { causes: [], pieces: [] };
  const cases = (facts.cases.length === 0 ? [null] : facts.cases).map(
    (piece) => weighedCase(facts, piece)
  );
  const worst = worstOf(cases);
  const posterior = byKind2((kind) => mean2(worst.map((each) => each.posterior[kind])));
  return {
    causes: ranked(posterior).map((kind) => causeOf(kind, posterior, worst)),
    pieces: cases.map(pieceOf)
  };
}
function weighedCase(facts, piece) {
  const evidence = caseEvidence(facts, piece);
  const posterior = normalised(
    byKind2((kind) => evidence.reduce((sum, { times }) => sum * times[kind], USUAL[kind]))
  );
  return { piece, evidence, posterior };
}
function worstOf(cases) {
  const broken = cases.filter(({ piece }) => piece !== null && whatOf(piece) !== "crackled");
  const chipped = broken.filter(({ piece }) => piece?.what === "chip");
  if (broken.length > chipped.length) return broken.filter(({ piece }) => piece?.what !== "chip");
  return broken.length > 0 ? broken : cases;
}
function whatOf({ what, pattern }) {
  if (what === "crackle" || what === "crazing") return "crackled";
  if (what === "shivering" || what === "chip") return "flaked";
  return what === "crack" && pattern === "network" ? "crackled" : "cracked";
}
function pieceOf({ piece, posterior }) {
  return {
    piece: piece?.piece ?? null,
    what: piece === null ? "not known" : whatOf(piece),
    count: piece?.count ?? 1,
    causes: ranked(posterior).map((kind) => ({
      kind,
      name: CRACK_KINDS[kind],
      posterior: posterior[kind],
      likelihood: likelihoodOf(posterior[kind])
    }))
  };
}
function causeOf(kind, posterior, cases) {
  const all = cases.flatMap((each) => weighedFor(kind, each));
  const evidence = all.filter((each, at) => all.findIndex((other) => isSame(each, other)) === at).toSorted((a, b) => WEIGHTS[b.weight] - WEIGHTS[a.weight]);
  const likelihood = likelihoodOf(posterior[kind]);
  const answered = new Set(cases.flatMap(answeredBy));
  return {
    kind,
    name: CRACK_KINDS[kind],
    posterior: posterior[kind],
    likelihood,
    standing: STANDINGS[likelihood],
    balance: evidence.reduce((sum, each) => sum + signedWeight(each), 0),
    evidence,
    unanswered: questionsAbout(kind).filter((question) => !answered.has(question))
  };
}
function answeredBy({ piece, evidence }) {
  const known3 = evidence.flatMap(({ question, short }) => short === "" ? [] : [question]);
  const deep = piece !== null && piece.what !== null && piece.what !== "crack";
  return deep || piece?.rings ? [...known3, "ring"] : known3;
}
var STANDINGS = {
  likely: "speaks for",
  possible: "open",
  unlikely: "speaks against"
};
function weighedFor(kind, { evidence }) {
  const depth = evidence.find(({ question }) => question === "depth");
  const prior = normalised(byKind2((each) => USUAL[each] * (depth?.times[each] ?? 1)));
  return evidence.flatMap((each) => {
    const before = each === depth ? normalised(USUAL) : prior;
    const others = KINDS.filter((other) => other !== kind);
    const expected = others.reduce((sum, other) => sum + before[other] * each.times[other], 0) / others.reduce((sum, other) => sum + before[other], 0);
    const ratio = each.times[kind] / expected;
    const size = Math.max(ratio, 1 / ratio);
    if (each.short === "" || size < SAYS_FROM) return [];
    const { question, short, statement, basis } = each;
    return [
      {
        question,
        direction: ratio > 1 ? "for" : "against",
        weight: weightOf(size),
        ratio,
        short,
        statement,
        evidence: each.evidence,
        basis
      }
    ];
  });
}
function weightOf(size) {
  if (size >= STRONG_FROM) return "strong";
  return size >= FAIR_FROM ? "fair" : "weak";
}
function isSame(a, b) {
  return a.statement === b.statement && a.direction === b.direction && a.evidence.every(({ value }, at) => b.evidence[at]?.value === value);
}
function signedWeight({ direction, weight }) {
  return direction === "for" ? WEIGHTS[weight] : -WEIGHTS[weight];
}
function tablesOf(question, isGlaze) {
  if (question === "sound") return [isGlaze ? "pinging heard" : "crack heard"];
  return question in ANSWERS ? [question] : [];
}
function questionsAbout(kind) {
  const tabled = Object.keys(ANSWERS).flatMap((table) => {
    const says = Object.values(ANSWERS[table]).some(({ probability }) => {
      const middle = mean2(Object.values(probability));
      const ratio = probability[kind] / middle;
      return Math.max(ratio, 1 / ratio) >= SAYS_FROM;
    });
    return says ? [QUESTION_OF[table] ?? table] : [];
  });
  const logged = LOG_QUESTIONS.filter((question) => LOGGED[question] === kind);
  return [.../* @__PURE__ */ new Set([...tabled, ...logged])];
}
var QUESTION_OF = {
  "crack heard": "sound",
  "pinging heard": "sound",
  "what sounds": "sound"
};
var LOGGED = {
  quartz: "dunting at quartz",
  cristobalite: "dunting at cristobalite",
  heating: "heating crack"
};
function ranked(posterior) {
  return KINDS.toSorted((a, b) => posterior[b] - posterior[a]);
}
function normalised(weights) {
  const sum = KINDS.reduce((total, kind) => total + weights[kind], 0);
  return byKind2((kind) => weights[kind] / sum);
}
function byKind2(of) {
  return Object.fromEntries(KINDS.map((kind) => [kind, of(kind)]));
}
function mean2(values) {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

// src/core/firing/diagnosis/questions.ts
var QUESTIONS = {
  depth: {
    ask: "Did anything crack or flake, and does the crack pass through the wall?",
    look: "Rub ink into one side and look for it on the other.",
    part: "found",
    line: "what: through-crack        # or crackle, crack, S-crack, shivering"
  },
  edges: {
    ask: "Are the edges of the crack sharp, or rounded with glaze run over them?",
    look: "Look with a lens, and draw a fingernail across it.",
    part: "found",
    line: "edges: sharp               # or rounded under glaze"
  },
  "first seen": {
    ask: "When was the crack first seen?",
    look: "Look at every piece as it leaves the kiln, and again after a week.",
    part: "found",
    line: "when: at unloading         # or before firing, hours later, days later"
  },
  sound: {
    ask: "How hot was the kiln when something was heard?",
    look: "Note the time of each sound; never open the kiln to listen.",
    part: "heard",
    line: '- { what: a crack, at: "07:55" }     # or pinging'
  },
  "cool and still pinging": {
    ask: "Does the ware still ping when it has been evenly cool for hours?",
    look: "Listen two hours after unloading and again the next day.",
    part: "heard",
    line: '- { what: pinging, at: "+26:00" }    # or the clock time'
  },
  quartz: {
    ask: "How fast did it cool through the quartz inversion?",
    look: "Let the log run until the kiln is opened.",
    part: null,
    line: null
  },
  cristobalite: {
    ask: "How fast did it cool through the cristobalite inversion?",
    look: "Let the log run until the kiln is opened.",
    part: null,
    line: null
  },
  opening: {
    ask: "How hot was the kiln when it was opened?",
    look: "Read it before the lid moves, a propped lid included.",
    part: "unloaded",
    line: "temperature: 95 C          # what the kiln read"
  },
  heating: {
    ask: "How fast was it heated while water left the clay, and through quartz?",
    look: "Let the log begin with the firing.",
    part: null,
    line: null
  },
  sides: {
    ask: "Is the cracked piece glazed on one side or on both?",
    look: "Look inside and outside.",
    part: "ware",
    line: "glazedSides: one           # or both, none"
  },
  coat: {
    ask: "Do the cracks stand farther apart where the glaze is thicker?",
    look: "Count the cracks along a line on three coats or more.",
    part: "trials",
    line: "crackSpacing: 4 mm         # for three coats or more"
  },
  pattern: {
    ask: "Is it one long line, a spiral, a network or a star?",
    look: "Ink the crack and follow it all the way.",
    part: "found",
    line: "pattern: one long line     # or spiral, network, star, S"
  },
  place: {
    ask: "Where does the crack begin?",
    look: "It is widest where it began.",
    part: "found",
    line: "where: rim                 # or foot, wall, base, handle"
  },
  ring: {
    ask: "Does the piece ring clear or dull when tapped?",
    look: "Hang it on a finger or stand it on a fingertip, and tap the rim with a knuckle.",
    part: "found",
    line: "rings: dull                # or clear"
  },
  "state of the ware": {
    ask: "Did the ware go in bisqued, or raw and damp?",
    look: "Look for cracks before glazing as well.",
    part: "ware",
    line: "state: glazed on bisque    # or bone dry, damp, bisqued, glazed raw"
  }
};

// src/core/firing/diagnosis/tellingApart.ts
var MOST_QUESTIONS = 2;
var LEAST_BITS = 0.02;
var MOVED = 0.05;
var RUNNING_FROM = 0.15;
function tellingApart(causes) {
  if (causes.length === 0) return [];
  const now = posteriorOf(causes);
  const running = causes.filter(({ posterior }, at) => at < 2 || posterior >= RUNNING_FROM);
  const isGlaze = now["crackle by fit"] + now["delayed crazing"] + now.shivering > 0.5;
  return openQuestions(causes).flatMap((question) => tablesOf(question, isGlaze).map((table) => asked(question, table, now))).map(({ question, answers, gainBits }) => ({
    question,
    ask: QUESTIONS[question].ask,
    look: QUESTIONS[question].look,
    gainBits,
    answers: answers.flatMap(({ answer, after }) => {
      const moves = running.map(({ kind }) => ({ kind, by: after[kind] - now[kind] }));
      const up = moves.reduce((a, b) => b.by > a.by ? b : a);
      const down = moves.reduce((a, b) => b.by < a.by ? b : a);
      const speaksFor = up.by >= MOVED ? up.kind : null;
      const speaksAgainst = down.by <= -MOVED ? down.kind : null;
      return speaksFor === null && speaksAgainst === null ? [] : [{ answer, speaksFor, speaksAgainst }];
    })
  })).filter(({ gainBits, answers }) => gainBits >= LEAST_BITS && answers.length > 0).sort((a, b) => b.gainBits - a.gainBits).slice(0, MOST_QUESTIONS);
}
function openQuestions(causes) {
  const open = new Set(causes.flatMap(({ unanswered }) => unanswered));
  return Object.keys(QUESTIONS).filter((question) => open.has(question));
}
function asked(question, table, now) {
  const answers = Object.values(ANSWERS[table]).map(({ answer, probability }) => {
    const joint = Object.fromEntries(
      KINDS.map((kind) => [kind, now[kind] * probability[kind]])
    );
    const chance = KINDS.reduce((sum, kind) => sum + joint[kind], 0);
    return { answer, chance, after: normalised(joint) };
  });
  const left = answers.reduce((sum, { chance, after }) => sum + chance * bits(after), 0);
  return { question, answers, gainBits: bits(now) - left };
}
function posteriorOf(causes) {
  return Object.fromEntries(
    KINDS.map((kind) => [kind, causes.find((cause) => cause.kind === kind)?.posterior ?? 0])
  );
}
function bits(posterior) {
  return KINDS.reduce((sum, kind) => {
    const p = posterior[kind];
    return p > 0 ? sum - p * Math.log2(p) : sum;
  }, 0);
}

// src/core/firing/diagnosis/linesToRecord.ts
var PARTS = [
  ["found", ["found:", "  - piece: mark or name of the piece"], "    "],
  ["heard", ["heard:"], "  "],
  ["unloaded", ["unloaded:"], "  "],
  [
    "trials",
    [
      "trials:",
      "  - piece: mark of the test piece",
      "    clay: your name for it",
      "    glaze: your name for it",
      "    coat: 0.8 mm",
      "    glazedSides: one           # or both"
    ],
    "    "
  ],
  ["ware", ["ware:", "  - name: what was in the kiln", "    clay: your name for it"], "    "]
];
function linesToRecord(causes) {
  const open = openQuestions(contenders(causes)).map((question) => QUESTIONS[question]);
  return PARTS.flatMap(([part, opening, indent]) => {
    const lines = open.flatMap(
      (question) => question.part === part && question.line !== null ? [`${indent}${question.line}`] : []
    );
    return lines.length === 0 ? [] : [...opening, ...lines];
  });
}
function onlyInLogs(causes) {
  return openQuestions(contenders(causes)).map((question) => QUESTIONS[question]).filter(({ part }) => part === null).map(({ ask, look }) => `${ask} ${look}`);
}
function contenders(causes) {
  const left = causes.filter(({ standing }) => standing !== "speaks against");
  return left.length === 0 ? causes : left;
}

// src/core/ware/distinctBodies.ts
function distinctBodies(wares) {
  const bodies = new Map(wares.map(({ body }) => [JSON.stringify(body), body]));
  return [...bodies.values()];
}

export {
  temperatureAt,
  lastAtOrBefore,
  hottestZone,
  QUARTZ_BAND,
  CRISTOBALITE_BAND,
  hasCristobalite,
  bandSaid,
  publishedRates,
  fourthPowerK,
  pieceShape,
  isFlat,
  lastAsked,
  WALL,
  BASE,
  LOAD,
  STATE_SIZE,
  shutKiln,
  advanceWare,
  meanC,
  WEIBULL,
  UNALTERED,
  stressRatio,
  strainedBar,
  WATCHED,
  atRest,
  mismatch,
  spacedMoments,
  wareNumbers,
  peakOf,
  slopeMeter,
  localSlopes,
  RUNAWAY,
  runawayIn,
  ordered,
  hasWarning,
  wareOf,
  sizedAsMug,
  selected,
  medianInPlace,
  bandPassage,
  passagesOf,
  QUESTIONS,
  soundKind,
  worstOpening,
  wareStrain,
  followedWare,
  crackFacts,
  diagnosisOf,
  tellingApart,
  linesToRecord,
  onlyInLogs,
  distinctBodies
};
