import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  drawn,
  seededNormal,
  spreadOf
} from "./chunk-V6QCPP2T.js";
import {
  fillStrainTable,
  newStrainTable,
  strainIn
} from "./chunk-GU4RVAU5.js";
import {
  cited
} from "./chunk-O435DZD7.js";

// src/core/glaze/bodyStrength.ts
var MEMORY = cited("ceramics-toughness");
var BODY_POISSON = { value: 0.2, low: 0.16, high: 0.25, source: MEMORY };
var TOUGHNESS = [
  [/earthenware|terracotta|red clay|majolica|raku/, toughness(0.6, 0.4, 0.9)],
  [/porcelain/, toughness(1.2, 1, 1.4)],
  [/cristobalit/, toughness(1, 0.7, 1.4, "our own estimate")],
  [/stoneware/, toughness(1.1, 0.9, 1.4)]
];
var UNKNOWN = toughness(0.9, 0.5, 1.4, "our own estimate");
function toughnessOf(body) {
  const name = body.name.toLowerCase();
  return TOUGHNESS.find(([words]) => words.test(name))?.[1] ?? UNKNOWN;
}
function toughness(value, low, high, source = MEMORY) {
  return { value, low, high, source };
}

// src/core/glaze/channelTables.ts
var Z_THICK_BODY = [
  [0.2, 4.3066],
  [0.3, 3.4746],
  [0.4, 2.9996],
  [0.5, 2.6879],
  [0.6, 2.4657],
  [0.7, 2.2984],
  [0.8, 2.1675],
  [0.9, 2.0619],
  [1, 1.9748],
  [1.2, 1.8393],
  [1.5, 1.697],
  [2, 1.5465]
];
var Z_FINITE_WALL = [
  {
    stiffnessRatio: 0.5,
    rows: [
      [2, 5.3555],
      [3, 4.1993],
      [4, 3.6975],
      [5, 3.4237],
      [6, 3.254],
      [8, 3.0588],
      [10, 2.9526],
      [15, 2.8279],
      [20, 2.7753],
      [40, 2.7142]
    ]
  },
  {
    stiffnessRatio: 0.7,
    rows: [
      [2, 4.2694],
      [3, 3.3849],
      [4, 3.007],
      [5, 2.8042],
      [6, 2.6806],
      [8, 2.5414],
      [10, 2.4678],
      [15, 2.3844],
      [20, 2.3506],
      [40, 2.3133]
    ]
  },
  {
    stiffnessRatio: 1,
    rows: [
      [2, 3.392],
      [3, 2.7317],
      [4, 2.4555],
      [5, 2.3103],
      [6, 2.2235],
      [8, 2.1282],
      [10, 2.0793],
      [15, 2.0257],
      [20, 2.005],
      [40, 1.983]
    ]
  }
];

// src/core/glaze/tableLine.ts
function tableLine(rows, place) {
  const first = rows[0];
  const last = rows.at(-1);
  if (first === void 0 || last === void 0 || Number.isNaN(place))
    throw new RangeError(`tableLine: ${rows.length} rows at ${place}`);
  if (place < first[0]) return { value: first[1], past: "low end" };
  if (place > last[0]) return { value: last[1], past: "high end" };
  let upper = 0;
  while (rows[upper][0] < place) upper++;
  const [toPlace, to] = rows[upper];
  if (toPlace === place) return { value: to, past: null };
  const [fromPlace, from] = rows[upper - 1];
  return { value: from + (to - from) * (place - fromPlace) / (toPlace - fromPlace), past: null };
}

// src/core/glaze/channelCracking.ts
var WALL_LINES = Z_FINITE_WALL.map(({ stiffnessRatio, rows }) => {
  const thick = tableLine(Z_THICK_BODY, stiffnessRatio).value;
  const line = rows.map(([wall, z]) => [1 / wall, Math.log(z / thick)]).reverse();
  return { stiffnessRatio, line: [[0, 0], ...line] };
});
var THICK_LINE = Z_THICK_BODY.map(([ratio, z]) => [Math.log(ratio), Math.log(z)]);
function releaseNumber({ stiffnessRatio, wallOverCoat }) {
  if (!(stiffnessRatio > 0 && wallOverCoat > 0))
    throw new RangeError(`releaseNumber: ratio ${stiffnessRatio}, wall ${wallOverCoat}`);
  const thick = tableLine(THICK_LINE, Math.log(stiffnessRatio));
  const finite = WALL_LINES.map(
    ({ stiffnessRatio: at, line }) => [Math.log(at), tableLine(line, 1 / wallOverCoat).value]
  );
  const extra = tableLine(finite, Math.log(stiffnessRatio)).value;
  return { z: Math.exp(thick.value + extra), past: pastEnds(thick.past, wallOverCoat) };
}
function pastEnds(stiffness, wall) {
  return [
    ...stiffness === "low end" ? [
      "the body is softer than a fifth of the glaze, where the table of crack energy ends: cracking is underrated"
    ] : [],
    ...stiffness === "high end" ? [
      "the body is more than twice as stiff as the glaze, where the table of crack energy ends: cracking is overrated"
    ] : [],
    ...wall < 2 ? [
      "the wall is thinner than two coats, where the table of crack energy ends: cracking is underrated"
    ] : []
  ];
}
function crackingLoad(stressMPa, { coatMm, toughnessMPaRootM }) {
  return stressMPa ** 2 * coatMm / 1e3 / toughnessMPaRootM ** 2;
}
function stressAtLoad(load, { coatMm, toughnessMPaRootM }) {
  return toughnessMPaRootM * Math.sqrt(load * 1e3 / coatMm);
}

// src/core/glaze/spacingTables.ts
var THICK_SPACINGS = [
  {
    stiffnessRatio: 0.5,
    wallOverCoat: Number.POSITIVE_INFINITY,
    rows: [
      [1, 0.4628, 15.6592],
      [1.5, 0.6686, 7.7504],
      [2, 0.8618, 4.3042],
      [2.5, 1.0423, 2.6899],
      [3, 1.2081, 1.8804],
      [3.5, 1.3578, 1.4332],
      [4, 1.4912, 1.1633],
      [5, 1.7129, 0.8676],
      [6, 1.8845, 0.7161],
      [8, 2.1228, 0.5695],
      [10, 2.2731, 0.5016],
      [12, 2.3725, 0.464],
      [16, 2.4896, 0.4255],
      [20, 2.5525, 0.4071],
      [30, 2.622, 0.3883],
      [50, 2.6613, 0.3782],
      [80, 2.6755, 0.3747],
      [150, 2.6822, 0.3731]
    ]
  },
  {
    stiffnessRatio: 0.7,
    wallOverCoat: Number.POSITIVE_INFINITY,
    rows: [
      [1, 0.4594, 14.1656],
      [1.5, 0.6609, 6.8063],
      [2, 0.8481, 3.743],
      [2.5, 1.0203, 2.3663],
      [3, 1.175, 1.6867],
      [3.5, 1.311, 1.3128],
      [4, 1.4291, 1.087],
      [5, 1.618, 0.8394],
      [6, 1.757, 0.7128],
      [8, 1.9383, 0.5913],
      [10, 2.0447, 0.5358],
      [12, 2.1112, 0.5056],
      [16, 2.1853, 0.4753],
      [20, 2.223, 0.4611],
      [30, 2.2628, 0.4469],
      [50, 2.2843, 0.4396],
      [80, 2.2918, 0.437],
      [150, 2.2953, 0.4359]
    ]
  },
  {
    stiffnessRatio: 1,
    wallOverCoat: Number.POSITIVE_INFINITY,
    rows: [
      [1, 0.4556, 12.7693],
      [1.5, 0.6524, 5.9684],
      [2, 0.8328, 3.2769],
      [2.5, 0.9953, 2.1083],
      [3, 1.1373, 1.5379],
      [3.5, 1.2586, 1.2247],
      [4, 1.3605, 1.0358],
      [5, 1.5162, 0.8293],
      [6, 1.6244, 0.7245],
      [8, 1.7555, 0.6257],
      [10, 1.8265, 0.5818],
      [12, 1.8685, 0.5584],
      [16, 1.9127, 0.5355],
      [20, 1.9342, 0.525],
      [30, 1.956, 0.5148],
      [50, 1.9674, 0.5095],
      [80, 1.9714, 0.5078],
      [150, 1.9732, 0.5069]
    ]
  }
];
var HELD_SPACINGS = [
  {
    stiffnessRatio: 0.7,
    wallOverCoat: 5,
    rows: [
      [1, 0.4594, 14.1656],
      [1.5, 0.6609, 6.8063],
      [2, 0.8481, 3.743],
      [2.5, 1.0203, 2.367],
      [3, 1.175, 1.6893],
      [3.5, 1.311, 1.3186],
      [4, 1.4291, 1.097],
      [5, 1.6181, 0.8587],
      [6, 1.7579, 0.7399],
      [8, 1.9467, 0.6253],
      [10, 2.0717, 0.5673],
      [12, 2.1643, 0.53],
      [16, 2.2943, 0.4841],
      [20, 2.3805, 0.4572],
      [30, 2.5061, 0.4226],
      [50, 2.6165, 0.3957],
      [80, 2.683, 0.381],
      [150, 2.7372, 0.3697]
    ]
  },
  {
    stiffnessRatio: 0.7,
    wallOverCoat: 10,
    rows: [
      [1, 0.4594, 14.1656],
      [1.5, 0.6609, 6.8063],
      [2, 0.8481, 3.743],
      [2.5, 1.0203, 2.3663],
      [3, 1.175, 1.6867],
      [3.5, 1.311, 1.3128],
      [4, 1.4291, 1.087],
      [5, 1.618, 0.8396],
      [6, 1.757, 0.7133],
      [8, 1.9383, 0.5937],
      [10, 2.0449, 0.5409],
      [12, 2.1122, 0.513],
      [16, 2.1923, 0.4843],
      [20, 2.2409, 0.4686],
      [30, 2.3107, 0.4473],
      [50, 2.3704, 0.4304],
      [80, 2.4053, 0.421],
      [150, 2.4332, 0.4137]
    ]
  }
];
var FREE_SPACINGS = [
  {
    stiffnessRatio: 0.7,
    wallOverCoat: 5,
    rows: [
      [1, 1.0587, 3.2356],
      [1.5, 1.4628, 1.648],
      [2, 1.8084, 0.9857],
      [2.5, 2.0948, 0.6879],
      [3, 2.3187, 0.5414],
      [3.5, 2.4846, 0.4626],
      [4, 2.6022, 0.4177],
      [5, 2.7358, 0.3751],
      [6, 2.7902, 0.36],
      [8, 2.8103, 0.3548],
      [10, 2.8057, 0.3559],
      [12, 2.8027, 0.3567],
      [16, 2.8017, 0.3569],
      [20, 2.8017, 0.3569],
      [30, 2.8018, 0.3569],
      [50, 2.8018, 0.3569],
      [80, 2.8018, 0.3569],
      [150, 2.8018, 0.3569]
    ]
  },
  {
    stiffnessRatio: 0.7,
    wallOverCoat: 10,
    rows: [
      [1, 0.7292, 6.0863],
      [1.5, 1.0275, 3.04],
      [2, 1.294, 1.752],
      [2.5, 1.5281, 1.1664],
      [3, 1.726, 0.875],
      [3.5, 1.888, 0.7143],
      [4, 2.0173, 0.6179],
      [5, 2.1989, 0.5147],
      [6, 2.3092, 0.4648],
      [8, 2.4164, 0.423],
      [10, 2.4548, 0.4093],
      [12, 2.4668, 0.4052],
      [16, 2.4685, 0.4047],
      [20, 2.4666, 0.4053],
      [30, 2.4658, 0.4055],
      [50, 2.4658, 0.4055],
      [80, 2.4658, 0.4055],
      [150, 2.4658, 0.4055]
    ]
  }
];

// src/core/glaze/crackSpacing.ts
var WALL_RATIO = 0.7;
var MEAN_OVER_LEAST = 1.5;
var OF_WALL_RATIO = THICK_SPACINGS.filter(({ stiffnessRatio }) => stiffnessRatio === WALL_RATIO);
var THICK_LINES = rowLines(THICK_SPACINGS, (table, row) => [
  Math.log(table.stiffnessRatio),
  logLoad(table, row)
]);
var HELD_LINES = wallLines(HELD_SPACINGS);
var FREE_LINES = wallLines(FREE_SPACINGS);
function spacingLine({ stiffnessRatio, wallOverCoat }, bends) {
  const walls = bends ? FREE_LINES : HELD_LINES;
  const place = Math.log(stiffnessRatio);
  return THICK_LINES.map(([spacing, thick], row) => {
    const wall = walls[row][1];
    const logarithm = tableLine(thick, place).value + tableLine(wall, 1 / wallOverCoat).value;
    return [spacing, Math.exp(logarithm)];
  });
}
function wallLines(walls) {
  const [thick] = OF_WALL_RATIO;
  if (thick === void 0) throw new RangeError("spacingLine: no thick body to compare walls with");
  return rowLines([thick, ...walls.toReversed()], (table, row) => [
    1 / table.wallOverCoat,
    logLoad(table, row) - logLoad(thick, row)
  ]);
}
function rowLines(tables, pointOf) {
  const rows = tables[0]?.rows ?? [];
  return rows.map(([spacing], row) => [spacing, tables.map((table) => pointOf(table, row))]);
}
function logLoad(table, row) {
  return Math.log(table.rows[row][2]);
}
function spacingTableEnds({ stiffnessRatio, wallOverCoat }) {
  return [
    ...stiffnessRatio < 0.5 || stiffnessRatio > 1 ? [
      `spacing is tabled for bodies of 0.5 to 1 of the glaze's stiffness; the end at ${stiffnessRatio < 0.5 ? "0.5" : "1"} is taken`
    ] : [],
    ...wallOverCoat < 5 ? ["spacing is tabled for walls of five coats and more"] : []
  ];
}
function leastSpacing(line, load) {
  const [closest, most] = line[0];
  if (load > most) return { value: closest * Math.sqrt(most / load), past: "fine" };
  const upper = line.findIndex(([, needed]) => needed <= load);
  if (upper < 0) return { value: line.at(-1)[0], past: "wide" };
  const [wide, less] = line[upper];
  if (upper === 0 || less === load) return { value: wide, past: null };
  const [fine, more] = line[upper - 1];
  const share = Math.log(more / load) / Math.log(more / less);
  return { value: fine * (wide / fine) ** share, past: null };
}
function loadForSpacing(line, spacingOverCoat) {
  const [closest, most] = line[0];
  if (spacingOverCoat < closest)
    return { value: most * (closest / spacingOverCoat) ** 2, past: "fine" };
  const logs = line.map(([spacing, load]) => [Math.log(spacing), Math.log(load)]);
  const { value, past } = tableLine(logs, Math.log(spacingOverCoat));
  return { value: Math.exp(value), past: past === null ? null : "wide" };
}
function interceptOfPitch(pitchMm) {
  return Math.PI * pitchMm / 4;
}
function pitchOfIntercept(interceptMm) {
  return 4 * interceptMm / Math.PI;
}

// src/core/glaze/laminate.ts
function layerStress(layers, glazing, mismatch) {
  const { coatMm: coat, wallMm: wall } = layers;
  const glaze = 1e3 * layers.glazeGPa / (1 - layers.glazePoisson);
  const body = 1e3 * layers.bodyGPa / (1 - layers.bodyPoisson);
  for (const size of [coat, wall, glaze, body])
    if (!(size > 0 && Number.isFinite(size))) throw new RangeError(`layerStress: ${size}`);
  if (glazing === "one face, free to bend")
    return freeStress({ glaze, body, coat, wall }, mismatch);
  const coats = glazing === "both faces" ? 2 : 1;
  const glazeMPa = glaze * mismatch / (1 + coats * glaze * coat / (body * wall));
  const bodyMPa = -coats * glazeMPa * coat / wall;
  return {
    glazeMPa,
    underGlazeMPa: bodyMPa,
    bareFaceMPa: coats === 2 ? null : bodyMPa,
    curvaturePerM: 0
  };
}
function freeStress({ glaze, body, coat, wall }, mismatch) {
  const area = coat;
  const lever = coat * (wall + coat) / 2;
  const inertia = ((wall / 2 + coat) ** 3 - (wall / 2) ** 3) / 3;
  const a11 = body * wall + glaze * area;
  const a12 = glaze * lever;
  const a22 = body * wall ** 3 / 12 + glaze * inertia;
  const force = -glaze * area * mismatch;
  const moment = -glaze * lever * mismatch;
  const determinant = a11 * a22 - a12 * a12;
  const m = (force * a22 - moment * a12) / determinant;
  const k = (moment * a11 - force * a12) / determinant;
  return {
    glazeMPa: glaze * (m + mismatch + k * (wall + coat) / 2),
    underGlazeMPa: body * (m + k * wall / 2),
    bareFaceMPa: body * (m - k * wall / 2),
    curvaturePerM: -1e3 * k
  };
}

// src/core/glaze/crackedWall.ts
function crackedWall(wall, mismatch) {
  const { layers, glazing, toughnessMPaRootM } = wall;
  const coat = { coatMm: layers.coatMm, toughnessMPaRootM };
  const perStrain = layerStress(layers, glazing, 1);
  const stress = layerStress(layers, glazing, mismatch);
  const { z } = releaseNumber(loneBacking(layers, glazing));
  const thresholdMPa = stressAtLoad(1 / z, coat);
  return {
    stress,
    thresholdMPa,
    stressPerStrainMPa: perStrain.glazeMPa,
    overThreshold: stress.glazeMPa / thresholdMPa,
    load: stress.glazeMPa > 0 ? crackingLoad(stress.glazeMPa, coat) : 0
  };
}
function loneBacking({ glazeGPa, bodyGPa, coatMm, wallMm }, glazing) {
  const behind = glazing === "both faces" ? wallMm + coatMm : wallMm;
  return { stiffnessRatio: bodyGPa / glazeGPa, wallOverCoat: behind / coatMm };
}
function spacingLineOf({ layers, glazing }) {
  const { bodyGPa, glazeGPa, wallMm, coatMm } = layers;
  return spacingLine(
    { stiffnessRatio: bodyGPa / glazeGPa, wallOverCoat: wallMm / coatMm },
    glazing === "one face, free to bend"
  );
}
function leastSpacingMm(wall, load) {
  const { value, past } = leastSpacing(spacingLineOf(wall), load);
  return { mm: value * wall.layers.coatMm, past };
}
var THICKEST_SHARE = 0.3;
function crazingCoatMm(wall, mismatch) {
  const over = (coatMm) => crackedWall({ ...wall, layers: { ...wall.layers, coatMm } }, mismatch).overThreshold;
  let low = Math.log(1e-4);
  let high = Math.log(THICKEST_SHARE * wall.layers.wallMm);
  if (over(Math.exp(high)) < 1) return null;
  for (let step = 0; step < 24; step++) {
    const middle = (low + high) / 2;
    if (over(Math.exp(middle)) >= 1) high = middle;
    else low = middle;
  }
  return Math.exp(high);
}

// src/core/glaze/delayedCrazing.ts
var LONG_TERM_YEARS = 10;
var POROUS = {
  value: 1e-3,
  low: 5e-4,
  high: 2e-3,
  source: `${cited("hall-wilson-hoff-2011")}; ${cited("four-porous-bodies")}`
};
var SLIGHTLY_POROUS = {
  value: 2e-4,
  low: 5e-5,
  high: 5e-4,
  source: "our own estimate"
};
var DENSE = { value: 0, low: 0, high: 5e-5, source: cited("morgan-1941") };
function moistureGrowth(body, absorptionPercent) {
  if (absorptionPercent !== null) {
    if (!(absorptionPercent >= 0)) throw new RangeError(`moistureGrowth: ${absorptionPercent} %`);
    if (absorptionPercent < 0.5) return DENSE;
    return absorptionPercent < 6 ? SLIGHTLY_POROUS : POROUS;
  }
  const name = body.name.toLowerCase();
  if (/porcelain/.test(name)) return DENSE;
  return /earthenware|terracotta|red clay|majolica|raku/.test(name) ? POROUS : SLIGHTLY_POROUS;
}
function yearsUntilGrowth(needed, longTermGrowth) {
  return LONG_TERM_YEARS * (needed / longTermGrowth) ** 4;
}
var STANDSTILL = {
  value: 0.25 / 0.7,
  low: 0.2 / 0.7,
  high: 0.35 / 0.7,
  source: cited("glass-slow-growth")
};
function delayedCoatMm(thresholdMm, standstill) {
  return thresholdMm * standstill ** 2;
}

// src/core/glaze/fitDraws.ts
var MOST_SILICA = 0.95;
var LEAST_FALL_K = 50;
function fitDraws(wall, { runs, seed }) {
  if (!(runs >= 10)) throw new RangeError(`fitDraws: ${runs} runs`);
  const normal = seededNormal(seed);
  return Array.from({ length: runs }, () => fitDraw(wall, normal));
}
function middleDraw(wall) {
  return fitDraw(wall, () => 0);
}
function fitDraw(wall, normal) {
  const { glaze, body, piece, roomC } = wall;
  const setC = Math.max(
    roomC + LEAST_FALL_K,
    glaze.setPoint.valueC + glaze.setPoint.sigmaK * normal()
  );
  const glazePerK = Math.max(0, glaze.expansion.meanPerK + glaze.expansion.sigmaPerK * normal());
  const { table, silicaStrain } = drawnBody(body, { setC, roomC, normal });
  return {
    pair: { glazePerK, setC, body: table },
    silicaStrain,
    layers: {
      glazeGPa: drawn(glaze.youngGPa, normal()),
      glazePoisson: drawn(glaze.poisson, normal()),
      bodyGPa: drawn(body.youngGPa, normal()),
      bodyPoisson: drawn(BODY_POISSON, normal()),
      coatMm: piece.coatMm * Math.exp(piece.coatSigma * normal()),
      wallMm: piece.wallMm
    },
    toughnessMPaRootM: drawn(glaze.toughnessMPaRootM, normal()),
    bodyToughnessMPaRootM: drawn(toughnessOf(body), normal()),
    ruptureMPa: drawn(body.ruptureMPa, normal()),
    growth: drawn(moistureGrowth(body, piece.absorptionPercent), normal()),
    standstill: Math.min(1, drawn(STANDSTILL, normal()))
  };
}
function drawnBody(body, { setC, roomC, normal }) {
  const shares = [drawn(body.quartzFraction, normal()), drawn(body.cristobaliteFraction, normal())];
  const scale = Math.min(1, MOST_SILICA / (shares[0] + shares[1]));
  const mixture = {
    quartz: shares[0] * scale,
    cristobalite: shares[1] * scale,
    matrixPerK: drawn(body.matrixExpansionPerK, normal())
  };
  const table = newStrainTable();
  fillStrainTable(table, mixture);
  const matrix = (1 - mixture.quartz - mixture.cristobalite) * mixture.matrixPerK;
  return {
    table,
    silicaStrain: strainIn(table, setC) - strainIn(table, roomC) - matrix * (setC - roomC)
  };
}

// src/core/glaze/stiffnessTables.ts
var STIFFNESS_TABLES = {
  "both faces": [
    {
      wallOverCoat: 4,
      depths: [1.06, 1.2, 1.5, 2, 3],
      factors: [
        [0.2, [1.081, 0.858, 0.808, 0.749, 0.562]],
        [0.35, [1.025, 0.89, 0.858, 0.818, 0.682]],
        [0.5, [1.005, 0.92, 0.9, 0.872, 0.773]],
        [0.7, [0.997, 0.956, 0.946, 0.931, 0.875]],
        [1, [1, 1, 1, 1, 1]],
        [1.4, [1.011, 1.047, 1.055, 1.07, 1.134]],
        [2, [1.029, 1.099, 1.114, 1.145, 1.288]]
      ]
    },
    {
      wallOverCoat: 8,
      depths: [1.06, 1.2, 1.5, 2, 3, 4, 6],
      factors: [
        [0.2, [1.033, 0.823, 0.797, 0.792, 0.77, 0.715, 0.532]],
        [0.35, [0.992, 0.867, 0.852, 0.853, 0.84, 0.8, 0.657]],
        [0.5, [0.983, 0.904, 0.897, 0.9, 0.892, 0.864, 0.758]],
        [0.7, [0.986, 0.947, 0.945, 0.947, 0.944, 0.929, 0.869]],
        [1, [1, 1, 1, 1, 1, 1, 1]],
        [1.4, [1.022, 1.055, 1.055, 1.05, 1.05, 1.065, 1.132]],
        [2, [1.052, 1.116, 1.114, 1.101, 1.098, 1.127, 1.274]]
      ]
    },
    {
      wallOverCoat: 12,
      depths: [1.06, 1.2, 1.5, 2, 3, 4, 6, 8],
      factors: [
        [0.2, [1.002, 0.797, 0.774, 0.781, 0.794, 0.786, 0.719, 0.606]],
        [0.35, [0.972, 0.849, 0.837, 0.846, 0.861, 0.858, 0.81, 0.723]],
        [0.5, [0.97, 0.893, 0.887, 0.895, 0.908, 0.907, 0.875, 0.812]],
        [0.7, [0.979, 0.941, 0.939, 0.945, 0.953, 0.954, 0.937, 0.902]],
        [1, [1, 1, 1, 1, 1, 1, 1, 1]],
        [1.4, [1.028, 1.061, 1.06, 1.052, 1.041, 1.039, 1.055, 1.09]],
        [2, [1.064, 1.128, 1.125, 1.105, 1.08, 1.075, 1.105, 1.177]]
      ]
    },
    {
      wallOverCoat: 20,
      depths: [1.06, 1.2, 1.5, 2, 3, 4, 6, 8, 12],
      factors: [
        [0.2, [0.969, 0.768, 0.745, 0.754, 0.785, 0.807, 0.815, 0.79, 0.68]],
        [0.35, [0.952, 0.83, 0.818, 0.829, 0.857, 0.875, 0.885, 0.87, 0.791]],
        [0.5, [0.957, 0.88, 0.874, 0.884, 0.905, 0.92, 0.928, 0.919, 0.865]],
        [0.7, [0.973, 0.935, 0.933, 0.939, 0.952, 0.96, 0.966, 0.961, 0.933]],
        [1, [1, 1, 1, 1, 1, 1, 1, 1, 1]],
        [1.4, [1.033, 1.066, 1.066, 1.057, 1.042, 1.033, 1.027, 1.031, 1.055]],
        [2, [1.073, 1.139, 1.136, 1.116, 1.082, 1.063, 1.05, 1.057, 1.104]]
      ]
    }
  ],
  "one face, wall held": [
    {
      wallOverCoat: 4,
      depths: [1.06, 1.2, 1.5, 2, 3],
      factors: [
        [0.2, [1.154, 0.964, 0.965, 0.985, 1]],
        [0.35, [1.076, 0.966, 0.971, 0.988, 1]],
        [0.5, [1.039, 0.972, 0.978, 0.991, 1]],
        [0.7, [1.015, 0.983, 0.987, 0.995, 1]],
        [1, [1, 1, 1, 1, 1]],
        [1.4, [0.996, 1.021, 1.015, 1.006, 1]],
        [2, [0.999, 1.047, 1.033, 1.012, 1]]
      ]
    },
    {
      wallOverCoat: 8,
      depths: [1.06, 1.2, 1.5, 2, 3, 4, 6],
      factors: [
        [0.2, [1.073, 0.88, 0.881, 0.916, 0.968, 0.991, 1.001]],
        [0.35, [1.016, 0.903, 0.908, 0.937, 0.976, 0.993, 1]],
        [0.5, [0.997, 0.928, 0.933, 0.955, 0.983, 0.995, 1]],
        [0.7, [0.992, 0.959, 0.963, 0.975, 0.991, 0.998, 1]],
        [1, [1, 1, 1, 1, 1, 1, 1]],
        [1.4, [1.017, 1.045, 1.039, 1.025, 1.009, 1.002, 1]],
        [2, [1.043, 1.098, 1.084, 1.053, 1.018, 1.005, 1]]
      ]
    },
    {
      wallOverCoat: 12,
      depths: [1.06, 1.2, 1.5, 2, 3, 4, 6, 8],
      factors: [
        [0.2, [1.026, 0.832, 0.827, 0.86, 0.922, 0.96, 0.993, 1]],
        [0.35, [0.985, 0.87, 0.871, 0.897, 0.944, 0.972, 0.995, 1]],
        [0.5, [0.977, 0.906, 0.908, 0.928, 0.961, 0.981, 0.997, 1]],
        [0.7, [0.982, 0.947, 0.95, 0.961, 0.98, 0.99, 0.998, 1]],
        [1, [1, 1, 1, 1, 1, 1, 1, 1]],
        [1.4, [1.026, 1.056, 1.052, 1.039, 1.019, 1.009, 1.001, 1]],
        [2, [1.06, 1.119, 1.109, 1.079, 1.039, 1.018, 1.002, 1]]
      ]
    },
    {
      wallOverCoat: 20,
      depths: [1.06, 1.2, 1.5, 2, 3, 4, 6, 8, 12],
      factors: [
        [0.2, [0.98, 0.785, 0.772, 0.796, 0.853, 0.899, 0.957, 0.984, 1]],
        [0.35, [0.957, 0.84, 0.834, 0.854, 0.898, 0.931, 0.971, 0.99, 1]],
        [0.5, [0.959, 0.886, 0.884, 0.899, 0.931, 0.954, 0.982, 0.994, 1]],
        [0.7, [0.974, 0.938, 0.938, 0.947, 0.964, 0.977, 0.991, 0.997, 1]],
        [1, [1, 1, 1, 1, 1, 1, 1, 1, 1]],
        [1.4, [1.033, 1.064, 1.062, 1.051, 1.032, 1.02, 1.008, 1.002, 1]],
        [2, [1.072, 1.135, 1.129, 1.104, 1.064, 1.039, 1.014, 1.005, 1]]
      ]
    }
  ],
  "one face, free to bend": [
    {
      wallOverCoat: 4,
      depths: [1.06, 1.2, 1.5, 2],
      factors: [
        [0.2, [1.187, 0.952, 0.935, 0.955]],
        [0.35, [1.105, 0.963, 0.953, 0.967]],
        [0.5, [1.059, 0.97, 0.965, 0.975]],
        [0.7, [1.025, 0.982, 0.98, 0.985]],
        [1, [1, 1, 1, 1]],
        [1.4, [0.986, 1.023, 1.024, 1.017]],
        [2, [0.981, 1.052, 1.053, 1.038]]
      ]
    },
    {
      wallOverCoat: 8,
      depths: [1.06, 1.2, 1.5, 2, 3, 4],
      factors: [
        [0.2, [1.1, 0.872, 0.847, 0.857, 0.89, 0.921]],
        [0.35, [1.032, 0.895, 0.881, 0.891, 0.917, 0.939]],
        [0.5, [1.007, 0.921, 0.913, 0.921, 0.941, 0.957]],
        [0.7, [0.997, 0.955, 0.951, 0.957, 0.968, 0.977]],
        [1, [1, 1, 1, 1, 1, 1]],
        [1.4, [1.014, 1.05, 1.052, 1.045, 1.032, 1.022]],
        [2, [1.037, 1.109, 1.111, 1.094, 1.065, 1.045]]
      ]
    },
    {
      wallOverCoat: 12,
      depths: [1.06, 1.2, 1.5, 2, 3, 4, 6],
      factors: [
        [0.2, [1.042, 0.822, 0.795, 0.803, 0.835, 0.864, 0.908]],
        [0.35, [0.994, 0.861, 0.846, 0.854, 0.881, 0.903, 0.936]],
        [0.5, [0.982, 0.899, 0.89, 0.897, 0.917, 0.934, 0.957]],
        [0.7, [0.984, 0.943, 0.939, 0.944, 0.956, 0.965, 0.978]],
        [1, [1, 1, 1, 1, 1, 1, 1]],
        [1.4, [1.024, 1.06, 1.062, 1.056, 1.042, 1.032, 1.018]],
        [2, [1.057, 1.129, 1.131, 1.115, 1.084, 1.062, 1.034]]
      ]
    },
    {
      wallOverCoat: 20,
      depths: [1.06, 1.2, 1.5, 2, 3, 4, 6, 8],
      factors: [
        [0.2, [0.988, 0.776, 0.748, 0.752, 0.781, 0.81, 0.854, 0.886]],
        [0.35, [0.961, 0.833, 0.816, 0.822, 0.847, 0.87, 0.904, 0.927]],
        [0.5, [0.962, 0.881, 0.871, 0.877, 0.897, 0.913, 0.938, 0.954]],
        [0.7, [0.975, 0.935, 0.93, 0.935, 0.946, 0.956, 0.969, 0.978]],
        [1, [1, 1, 1, 1, 1, 1, 1, 1]],
        [1.4, [1.032, 1.067, 1.069, 1.063, 1.049, 1.039, 1.025, 1.017]],
        [2, [1.071, 1.141, 1.144, 1.127, 1.096, 1.075, 1.047, 1.031]]
      ]
    }
  ]
};

// src/core/glaze/throughTables.ts
var FREE_DEPTHS = [
  {
    wallOverCoat: 4,
    rows: [
      [1.06, 1.706],
      [1.2, 1.206],
      [1.5, 0.723],
      [2, 0.342],
      [2.5, 0.16],
      [3, 0.079],
      [4, 0.133]
    ]
  },
  {
    wallOverCoat: 6,
    rows: [
      [1.06, 1.639],
      [1.2, 1.228],
      [1.5, 0.817],
      [2, 0.469],
      [2.5, 0.275],
      [3, 0.154],
      [4, 0.034],
      [5, 5e-3],
      [6, 0.054]
    ]
  },
  {
    wallOverCoat: 8,
    rows: [
      [1.06, 1.618],
      [1.2, 1.252],
      [1.5, 0.881],
      [2, 0.558],
      [2.5, 0.368],
      [3, 0.243],
      [4, 0.095],
      [5, 0.024],
      [6, -2e-3],
      [8, 0.029]
    ]
  },
  {
    wallOverCoat: 10,
    rows: [
      [1.06, 1.611],
      [1.2, 1.272],
      [1.5, 0.927],
      [2, 0.621],
      [2.5, 0.437],
      [3, 0.312],
      [4, 0.156],
      [5, 0.069],
      [6, 0.02],
      [8, 4e-3],
      [10, 0.018]
    ]
  },
  {
    wallOverCoat: 12,
    rows: [
      [1.06, 1.609],
      [1.2, 1.289],
      [1.5, 0.962],
      [2, 0.668],
      [2.5, 0.487],
      [3, 0.365],
      [4, 0.206],
      [5, 0.112],
      [6, 0.054],
      [8, -7e-3],
      [10, 5e-3],
      [12, 0.012]
    ]
  },
  {
    wallOverCoat: 16,
    rows: [
      [1.06, 1.612],
      [1.2, 1.315],
      [1.5, 1.011],
      [2, 0.736],
      [2.5, 0.565],
      [3, 0.444],
      [4, 0.284],
      [5, 0.183],
      [6, 0.116],
      [8, 0.038],
      [10, -3e-3],
      [12, 8e-3],
      [16, 5e-3]
    ]
  },
  {
    wallOverCoat: 20,
    rows: [
      [1.06, 1.616],
      [1.2, 1.333],
      [1.5, 1.045],
      [2, 0.782],
      [2.5, 0.617],
      [3, 0.5],
      [4, 0.341],
      [5, 0.238],
      [6, 0.167],
      [8, 0.078],
      [10, 0.029],
      [12, 3e-3],
      [16, 6e-3]
    ]
  }
];
var RING_DEPTHS = [
  {
    wallOverCoat: 4,
    rows: [
      [1.06, 2.03],
      [1.2, 1.841],
      [1.5, 1.767],
      [2, 1.914],
      [2.5, 2.253],
      [3, 2.75],
      [4, 3.541]
    ]
  },
  {
    wallOverCoat: 6,
    rows: [
      [1.06, 1.847],
      [1.2, 1.633],
      [1.5, 1.477],
      [2, 1.437],
      [2.5, 1.513],
      [3, 1.668],
      [4, 2.185],
      [5, 2.862],
      [6, 2.639]
    ]
  },
  {
    wallOverCoat: 8,
    rows: [
      [1.06, 1.771],
      [1.2, 1.548],
      [1.5, 1.362],
      [2, 1.256],
      [2.5, 1.247],
      [3, 1.292],
      [4, 1.504],
      [5, 1.862],
      [6, 2.332],
      [8, 1.926]
    ]
  },
  {
    wallOverCoat: 10,
    rows: [
      [1.06, 1.731],
      [1.2, 1.505],
      [1.5, 1.305],
      [2, 1.168],
      [2.5, 1.119],
      [3, 1.117],
      [4, 1.203],
      [5, 1.382],
      [6, 1.647],
      [8, 2.32],
      [10, 1.412]
    ]
  },
  {
    wallOverCoat: 12,
    rows: [
      [1.06, 1.709],
      [1.2, 1.481],
      [1.5, 1.273],
      [2, 1.118],
      [2.5, 1.047],
      [3, 1.021],
      [4, 1.043],
      [5, 1.135],
      [6, 1.285],
      [8, 1.752],
      [10, 2.208],
      [12, 1.037]
    ]
  },
  {
    wallOverCoat: 16,
    rows: [
      [1.06, 1.685],
      [1.2, 1.457],
      [1.5, 1.242],
      [2, 1.069],
      [2.5, 0.978],
      [3, 0.925],
      [4, 0.886],
      [5, 0.899],
      [6, 0.949],
      [8, 1.141],
      [10, 1.447],
      [12, 1.812],
      [16, 0.54]
    ]
  },
  {
    wallOverCoat: 20,
    rows: [
      [1.06, 1.674],
      [1.2, 1.446],
      [1.5, 1.228],
      [2, 1.047],
      [2.5, 0.945],
      [3, 0.881],
      [4, 0.814],
      [5, 0.794],
      [6, 0.803],
      [8, 0.884],
      [10, 1.036],
      [12, 1.256],
      [16, 1.731]
    ]
  }
];
var BOTH_DEPTHS = [
  {
    wallOverCoat: 4,
    rows: [
      [1.06, 1.817],
      [1.2, 1.503],
      [1.5, 1.216],
      [2, 0.99],
      [2.5, 0.864],
      [3, 0.769],
      [4, 0.508]
    ]
  },
  {
    wallOverCoat: 6,
    rows: [
      [1.06, 1.738],
      [1.2, 1.451],
      [1.5, 1.181],
      [2, 0.965],
      [2.5, 0.849],
      [3, 0.779],
      [4, 0.698],
      [5, 0.629],
      [6, 0.44]
    ]
  },
  {
    wallOverCoat: 8,
    rows: [
      [1.06, 1.701],
      [1.2, 1.427],
      [1.5, 1.165],
      [2, 0.95],
      [2.5, 0.83],
      [3, 0.756],
      [4, 0.675],
      [5, 0.639],
      [6, 0.618],
      [8, 0.412]
    ]
  },
  {
    wallOverCoat: 10,
    rows: [
      [1.06, 1.681],
      [1.2, 1.416],
      [1.5, 1.158],
      [2, 0.943],
      [2.5, 0.821],
      [3, 0.742],
      [4, 0.652],
      [5, 0.609],
      [6, 0.592],
      [8, 0.582],
      [10, 0.396]
    ]
  },
  {
    wallOverCoat: 12,
    rows: [
      [1.06, 1.67],
      [1.2, 1.41],
      [1.5, 1.157],
      [2, 0.942],
      [2.5, 0.817],
      [3, 0.734],
      [4, 0.636],
      [5, 0.585],
      [6, 0.561],
      [8, 0.555],
      [10, 0.562],
      [12, 0.385]
    ]
  },
  {
    wallOverCoat: 16,
    rows: [
      [1.06, 1.658],
      [1.2, 1.407],
      [1.5, 1.16],
      [2, 0.946],
      [2.5, 0.818],
      [3, 0.731],
      [4, 0.622],
      [5, 0.56],
      [6, 0.523],
      [8, 0.494],
      [10, 0.498],
      [12, 0.522],
      [16, 0.373]
    ]
  },
  {
    wallOverCoat: 20,
    rows: [
      [1.06, 1.654],
      [1.2, 1.407],
      [1.5, 1.164],
      [2, 0.952],
      [2.5, 0.824],
      [3, 0.735],
      [4, 0.619],
      [5, 0.55],
      [6, 0.506],
      [8, 0.46],
      [10, 0.447],
      [12, 0.454],
      [16, 0.507]
    ]
  }
];

// src/core/glaze/depthRows.ts
var TABLES = {
  "both faces": BOTH_DEPTHS,
  "one face, wall held": RING_DEPTHS,
  "one face, free to bend": FREE_DEPTHS
};
var STIFF = {
  "both faces": stiffTables("both faces"),
  "one face, wall held": stiffTables("one face, wall held"),
  "one face, free to bend": stiffTables("one face, free to bend")
};
function depthRows(glazing, stiffnessRatio) {
  const place = unlikeness(stiffnessRatio);
  return STIFF[glazing].map(({ wallOverCoat, depths, lines }) => {
    const upper = lines.findIndex(([at]) => at >= place);
    const to = lines[upper < 0 ? lines.length - 1 : upper];
    const from = upper < 1 ? to : lines[upper - 1];
    const share = from === to ? 0 : (place - from[0]) / (to[0] - from[0]);
    return {
      wallOverCoat,
      rows: depths.map((depth, i) => {
        const [low, high] = [from[1][i], to[1][i]];
        return [depth, low + share * (high - low)];
      })
    };
  });
}
function unlikeness(stiffnessRatio) {
  return (stiffnessRatio - 1) / (stiffnessRatio + 1);
}
function stiffTables(glazing) {
  const ratios = STIFFNESS_TABLES[glazing][0].factors.map(([ratio]) => ratio);
  return TABLES[glazing].map(({ wallOverCoat, rows }) => {
    const inside = rows.slice(0, -1);
    return {
      wallOverCoat,
      depths: inside.map(([depth]) => depth),
      lines: ratios.map((ratio, at) => [
        unlikeness(ratio),
        inside.map(([depth, kStar]) => kStar * factorAt(glazing, at, { wallOverCoat, depth }))
      ])
    };
  });
}
function factorAt(glazing, stiffness, place) {
  const byWall = STIFFNESS_TABLES[glazing].map(({ wallOverCoat, depths, factors }) => {
    const [, line] = factors[stiffness];
    const points = depths.map((depth, i) => [depth, line[i]]);
    return [wallOverCoat, tableLine(points, place.depth).value];
  });
  return tableLine(byWall, place.wallOverCoat).value;
}

// src/core/glaze/throughCrack.ts
var THIN_COAT_LAW = {
  "both faces": 2,
  "one face, wall held": 3.54,
  "one face, free to bend": null
};
var SOFTEST = 0.2;
var STIFFEST = 2;
function leastPull(coat) {
  const { glazing, stiffnessRatio } = coat;
  const walls = coat.wallMm / coat.coatMm;
  const law = THIN_COAT_LAW[glazing];
  const { value, past } = tableLine(leastLine(glazing, stiffnessRatio), walls);
  const inRootWalls = past === "high end" && law !== null ? law * value / tableLine(leastLine(glazing, 1), walls).value : value;
  return {
    mPaRootM: pullUnit(coat) * inRootWalls / Math.sqrt(walls),
    past: [
      ...past === "low end" ? ["the wall is thinner than four coats, where the tables end"] : [],
      ...pastStiffness(stiffnessRatio)
    ]
  };
}
function pastStiffness(ratio) {
  if (ratio < SOFTEST)
    return [
      "the body is softer than a fifth of the glaze, where the tables of depth end: depth is overrated"
    ];
  return ratio > STIFFEST ? [
    "the body is more than twice as stiff as the glaze, where the tables of depth end: depth is underrated"
  ] : [];
}
function stoppingDepthMm(coat, bodyToughnessMPaRootM) {
  const allowed = bodyToughnessMPaRootM / pullUnit(coat);
  const stops = depthRows(coat.glazing, coat.stiffnessRatio).flatMap((table) => {
    const depth2 = firstDepth(table, allowed);
    return depth2 === null ? [] : [[table.wallOverCoat, depth2]];
  });
  if (stops.length === 0 || leastPull(coat).mPaRootM > bodyToughnessMPaRootM) return null;
  const depth = tableLine(stops, coat.wallMm / coat.coatMm).value;
  return Math.min(coat.wallMm, Math.max(0, (depth - 1) * coat.coatMm));
}
function pullUnit({ glazeMPa, coatMm }) {
  return glazeMPa * Math.sqrt(coatMm / 1e3);
}
function leastLine(glazing, stiffnessRatio) {
  return depthRows(glazing, stiffnessRatio).map(({ wallOverCoat, rows }) => {
    const least = Math.max(0, Math.min(...rows.map(([, kStar]) => kStar)));
    return [wallOverCoat, least * Math.sqrt(wallOverCoat)];
  });
}
function firstDepth({ rows }, allowed) {
  const at = rows.findIndex(([, kStar]) => kStar <= allowed);
  const found = rows[at];
  if (found === void 0) return null;
  const before = rows[at - 1];
  if (before === void 0) return 1;
  const share = (before[1] - allowed) / (before[1] - found[1]);
  return before[0] + share * (found[0] - before[0]);
}

// src/core/glaze/fitLimits.ts
function fitLimits(wall) {
  const { layers } = middleDraw(wall);
  const { glazing, coatMm, wallMm } = wall.piece;
  const lone = loneBacking(layers, glazing);
  const spacing = { ...lone, wallOverCoat: wallMm / coatMm };
  return [
    ...releaseNumber(lone).past,
    ...spacingTableEnds(spacing),
    ...leastPull({ ...lone, glazeMPa: 1, coatMm, wallMm, glazing }).past,
    ...toughnessOf(wall.body).source === "our own estimate" ? ["how tough the body is was guessed: its name says no common kind of clay"] : []
  ];
}

// src/core/glaze/mismatch.ts
function mismatchAt({ glazePerK, body, setC }, tempC) {
  return glazePerK * (setC - tempC) - (strainIn(body, setC) - strainIn(body, tempC));
}
function expansionForMismatch(pair, mismatch, tempC) {
  const { body, setC } = pair;
  return (mismatch + strainIn(body, setC) - strainIn(body, tempC)) / (setC - tempC);
}
function greatestMismatch(pair, coolestC) {
  let greatest = { mismatch: 0, tempC: pair.setC };
  const see = (tempC) => {
    const mismatch = mismatchAt(pair, tempC);
    if (mismatch > greatest.mismatch) greatest = { mismatch, tempC };
  };
  for (let tempC = pair.setC; tempC > coolestC; tempC--) see(tempC);
  see(coolestC);
  return greatest;
}

// src/core/glaze/firstPing.ts
function crackingMismatch({ thresholdMPa, stressPerStrainMPa }) {
  return thresholdMPa / stressPerStrainMPa;
}
function firstPingC(pair, needed, coolestC) {
  for (let tempC = pair.setC; tempC > coolestC; tempC--)
    if (mismatchAt(pair, tempC) >= needed) return tempC;
  return mismatchAt(pair, coolestC) >= needed ? coolestC : null;
}

// src/core/glaze/fitRun.ts
function fitRun(draw, glazing, roomC) {
  const { layers, pair, toughnessMPaRootM } = draw;
  const wall = { layers, glazing, toughnessMPaRootM };
  const mismatch = mismatchAt(pair, roomC);
  const greatest = greatestMismatch(pair, roomC);
  const cracked = crackedWall(wall, greatest.mismatch);
  const cold = crackedWall(wall, mismatch);
  const fallK = pair.setC - roomC;
  const cracks = cracked.overThreshold >= 1;
  const lateLoad = Math.max(cracked.load, cold.load / draw.standstill ** 2);
  const spacing = cracks ? leastSpacingMm(wall, cracked.load) : null;
  const coldCoatMm = crazingCoatMm(wall, mismatch);
  return {
    mismatch,
    mismatchPerK: mismatch / fallK,
    greatestMismatch: greatest.mismatch,
    greatestAtC: greatest.tempC,
    bodyPerK: (strainIn(pair.body, pair.setC) - strainIn(pair.body, roomC)) / fallK,
    glazeMPa: cold.stress.glazeMPa,
    thickBodyMPa: 1e3 * layers.glazeGPa * mismatch / (1 - layers.glazePoisson),
    underGlazeMPa: cold.stress.underGlazeMPa,
    bareFaceMPa: cold.stress.bareFaceMPa,
    bowMm: cold.stress.curvaturePerM * 0.1 ** 2 * 1e3 / 8,
    thresholdMPa: cracked.thresholdMPa,
    overThreshold: cracked.overThreshold,
    crazingCoatMm: crazingCoatMm(wall, greatest.mismatch),
    leastSpacingMm: spacing?.mm ?? null,
    spacingPast: spacing?.past ?? null,
    lateSpacingMm: cracks ? leastSpacingMm(wall, lateLoad).mm : null,
    ...depthOf(draw, glazing, cracked.stress.glazeMPa),
    ...bodyPullOf(draw, glazing, mismatch),
    ...moistureOf(draw, mismatch, {
      perStrainMPa: cracked.stressPerStrainMPa,
      needed: crackingMismatch(cracked)
    }),
    delayedFromMm: coldCoatMm === null ? null : delayedCoatMm(coldCoatMm, draw.standstill),
    growsSlowly: cold.overThreshold >= draw.standstill && !cracks,
    pingC: firstPingC(pair, crackingMismatch(cracked), roomC)
  };
}
function depthOf(draw, glazing, glazeMPa) {
  const { coatMm, wallMm, bodyGPa, glazeGPa } = draw.layers;
  if (!(glazeMPa > 0)) return { pullMPaRootM: 0, pullOverToughness: 0, stopsAtMm: 0 };
  const coat = { glazeMPa, coatMm, wallMm, glazing, stiffnessRatio: bodyGPa / glazeGPa };
  const pull = leastPull(coat).mPaRootM;
  return {
    pullMPaRootM: pull,
    pullOverToughness: pull / draw.bodyToughnessMPaRootM,
    stopsAtMm: stoppingDepthMm(coat, draw.bodyToughnessMPaRootM)
  };
}
function bodyPullOf({ layers, ruptureMPa }, glazing, mismatch) {
  const inWall = greatestPull(layerStress(layers, glazing, mismatch));
  const atRim = glazing === "both faces" ? inWall : greatestPull(layerStress(layers, "one face, free to bend", mismatch));
  return {
    bodyPullMPa: inWall,
    bodyPullOverRupture: inWall / ruptureMPa,
    rimPullMPa: atRim,
    rimPullOverRupture: atRim / ruptureMPa
  };
}
function greatestPull(stress) {
  return Math.max(0, stress.underGlazeMPa, stress.bareFaceMPa ?? 0);
}
function moistureOf({ growth }, mismatch, { perStrainMPa, needed }) {
  const missing = needed - mismatch;
  const years = growth > 0 && missing > 0 ? yearsUntilGrowth(missing, growth) : null;
  return {
    moistureMPa: perStrainMPa * growth,
    moistureYears: years !== null && years <= LONG_TERM_YEARS ? years : null
  };
}

// src/core/glaze/pingUse.ts
var QUARTZ_PINGS = { lowC: 550, highC: 600 };
var CRISTOBALITE_PINGS = { lowC: 200, highC: 250 };
function pingUse({ onsetC, kiln }) {
  if (kiln === "opened") return "kiln was opened";
  if (onsetC >= QUARTZ_PINGS.lowC && onsetC <= QUARTZ_PINGS.highC)
    return "near the quartz inversion";
  if (onsetC >= CRISTOBALITE_PINGS.lowC && onsetC <= CRISTOBALITE_PINGS.highC)
    return "near the cristobalite inversion";
  return "usable";
}

// src/core/glaze/measuredFit.ts
var MEAN_FACTOR = { value: MEAN_OVER_LEAST, low: 1.3, high: 1.7 };
var WIDE_COATS = 10;
var ONE_SIDED = 0.95;
var FEWEST = 10;
function measuredFits(measured, on) {
  const { spacing, cracked, pings } = measured;
  const read = pings.map((ping, i) => ({
    ping,
    fit: fromPing(ping, { ...on, seed: on.seed + 1 + i })
  }));
  return {
    fits: [
      spacing === null ? null : fromSpacing(spacing, on),
      cracked !== null && spacing === null ? fromSight(cracked, on) : null,
      ...read.map(({ fit }) => fit)
    ].filter((fit) => fit !== null),
    leftOut: read.filter(({ fit }) => fit === null).map(({ ping }) => ({
      onsetC: ping.onsetC,
      why: pingUse(ping) === "kiln was opened" ? "kiln was opened" : "not between room and set point"
    }))
  };
}
function fromSpacing(spacing, on) {
  const toPitch = spacing.counted === "pitch" ? 1 : pitchOfIntercept(1);
  const range = { value: spacing.meanMm, low: spacing.lowMm, high: spacing.highMm };
  const pitchOverCoat = spacing.meanMm * toPitch / on.coatMm;
  return fitOf(on, {
    from: "crack spacing",
    coatMm: on.coatMm,
    holds: pitchOverCoat / MEAN_OVER_LEAST > WIDE_COATS ? "at least" : "about",
    pitchOverCoat,
    ping: null,
    reading: (draw, normal) => {
      const leastMm = drawn(range, normal()) * toPitch / drawn(MEAN_FACTOR, normal());
      const wall = { ...draw, glazing: on.glazing };
      const { coatMm } = draw.layers;
      const { value } = loadForSpacing(spacingLineOf(wall), leastMm / coatMm);
      const { toughnessMPaRootM } = draw;
      const stress = stressAtLoad(value, { coatMm, toughnessMPaRootM });
      return stress / crackedWall(wall, 0).stressPerStrainMPa;
    }
  });
}
function fromSight(cracked, on) {
  return fitOf(on, {
    from: cracked ? "cracks seen" : "no cracks",
    coatMm: on.coatMm,
    holds: cracked ? "at least" : "at most",
    pitchOverCoat: null,
    ping: null,
    reading: (draw) => crackingMismatch(crackedWall({ ...draw, glazing: on.glazing }, 0))
  });
}
function fromPing(ping, on) {
  const use = pingUse(ping);
  if (use === "kiln was opened") return null;
  const isOwn = ping.coatMm === on.coatMm;
  return fitOf(on, {
    from: "first ping",
    coatMm: ping.coatMm,
    holds: "about",
    pitchOverCoat: null,
    ping: { onsetC: ping.onsetC, use },
    reading: (draw, normal) => {
      const other = ping.coatMm * Math.exp(on.coatSigma * normal());
      const onsetC = ping.onsetC + ping.sigmaK * normal();
      const coatMm = isOwn ? draw.layers.coatMm : other;
      if (onsetC >= draw.pair.setC || onsetC <= on.roomC) return null;
      const wall = { ...draw, layers: { ...draw.layers, coatMm }, glazing: on.glazing };
      const needed = crackingMismatch(crackedWall(wall, 0));
      const glazePerK = expansionForMismatch(draw.pair, needed, onsetC);
      return mismatchAt({ ...draw.pair, glazePerK }, on.roomC);
    }
  });
}
function fitOf(on, what) {
  const normal = seededNormal(on.seed);
  const read = on.draws.flatMap((draw, i) => {
    const mismatch = what.reading(draw, normal);
    return mismatch === null ? [] : [{ draw, run: on.runs[i], mismatch }];
  });
  if (read.length < FEWEST) return null;
  const spread2 = (pick) => spreadOf(Float64Array.from(read, pick));
  const { reading: _, ...facts } = what;
  const overComputed = read.filter((each) => each.mismatch > each.run.mismatch).length / read.length;
  return {
    ...facts,
    mismatch: spread2(({ mismatch }) => mismatch),
    mismatchPerK: spread2(({ mismatch, draw }) => mismatch / (draw.pair.setC - on.roomC)),
    glazePerK: spread2(({ mismatch, draw }) => expansionForMismatch(draw.pair, mismatch, on.roomC)),
    agrees: (what.holds === "at least" || overComputed > 1 - ONE_SIDED) && (what.holds === "at most" || overComputed < ONE_SIDED),
    overComputed,
    impossible: 1 - read.length / on.draws.length
  };
}

// src/core/glaze/throughReasons.ts
var THIN_WALL = 10;
var STOUT_WALL = 20;
var WEAK_BODY = 0.8;
function throughReasons(wall, overToughness) {
  const { glazing, wallMm, coatMm } = wall.piece;
  const walls = wallMm / coatMm;
  const pull = pullReason(overToughness);
  const reasons = [
    pull,
    glazing === "one face, wall held" ? speaksFor("a closed wall glazed on one face cannot bend away from the crack") : null,
    glazing === "both faces" ? speaksAgainst("the coat on the other face shares the load") : null,
    glazing === "one face, free to bend" ? speaksAgainst(
      "a flat piece glazed on one face bends, and the crack loses its pull on the way"
    ) : null,
    walls < THIN_WALL ? speaksFor(`the wall is only ${walls.toFixed(1)} coats thick`) : null,
    walls > STOUT_WALL ? speaksAgainst(`the wall is ${Math.round(walls)} coats thick`) : null,
    toughnessOf(wall.body).value < WEAK_BODY ? speaksFor("porous low-fired bodies bear little against a running crack") : null
  ];
  return reasons.filter((reason) => reason !== null);
}
function pullReason({ low, high }) {
  if (low > 1) return speaksFor("the least pull on the way is more than the body bears");
  return high < 1 ? speaksAgainst("the least pull on the way is less than the body bears") : null;
}
function speaksFor(text) {
  return { direction: "for", text };
}
function speaksAgainst(text) {
  return { direction: "against", text };
}

// src/core/glaze/twoCoats.ts
var ONE_SIDED2 = 0.95;
function twoCoats(draws, pings, how) {
  const [thin, thick] = pings.toSorted((a, b) => a.coatMm - b.coatMm);
  const normal = seededNormal(how.seed);
  const ratios = Float64Array.from(draws, (draw) => {
    const [first, second] = [thin, thick].map((ping) => {
      const coatMm = ping.coatMm * Math.exp(how.coatSigma * normal());
      const onsetC = ping.onsetC + ping.sigmaK * normal();
      return fallTimesRoot(draw, { coatMm, onsetC, glazing: how.glazing });
    });
    return first / second;
  });
  const over = ratios.filter((ratio) => ratio > 1).length / ratios.length;
  return {
    coatsMm: [thin.coatMm, thick.coatMm],
    ratio: spreadOf(ratios),
    agree: over > 1 - ONE_SIDED2 && over < ONE_SIDED2
  };
}
function fallTimesRoot(draw, at) {
  const { thresholdMPa, stressPerStrainMPa } = crackedWall(
    {
      layers: { ...draw.layers, coatMm: at.coatMm },
      glazing: at.glazing,
      toughnessMPaRootM: draw.toughnessMPaRootM
    },
    0
  );
  return Math.max(1, draw.pair.setC - at.onsetC) * stressPerStrainMPa / thresholdMPa;
}

// src/core/glaze/glazeFit.ts
var LEAST_SHARE = 0.05;
var SPEAKING_SHARE = 0.8;
function glazeFit(input) {
  const { piece, roomC, draws, measured } = input;
  const drawn2 = fitDraws(input, draws).map((draw) => ({
    draw,
    run: fitRun(draw, piece.glazing, roomC)
  }));
  const cracking = drawn2.filter(({ run }) => run.overThreshold >= 1);
  const on = {
    draws: drawn2.map(({ draw }) => draw),
    runs: drawn2.map(({ run }) => run),
    glazing: piece.glazing,
    roomC,
    coatMm: piece.coatMm,
    coatSigma: piece.coatSigma,
    seed: draws.seed + 1
  };
  return {
    piece,
    roomC,
    runs: draws.runs,
    seed: draws.seed,
    mismatch: mismatchPart(input, drawn2),
    stress: stressPart(piece, drawn2),
    crazing: crazingPart(drawn2, cracking),
    spacing: spacingPart(input, drawn2, cracking),
    through: throughPart(input, drawn2, cracking),
    delayed: delayedPart(input, drawn2),
    measured: measuredFits(measured, on),
    twoCoats: pairsOf(measured.pings).map(
      (pair, i) => twoCoats(on.draws, pair, { ...on, seed: draws.seed + 1e3 + i })
    ),
    limits: fitLimits(input)
  };
}
function mismatchPart(wall, drawn2) {
  const { pair } = middleDraw(wall);
  const shrunk = strainIn(pair.body, 500) - strainIn(pair.body, wall.roomC);
  const bodyTo500PerK = shrunk / (500 - wall.roomC);
  return {
    setC: spread(drawn2, ({ draw }) => draw.pair.setC),
    strain: spread(drawn2, ({ run }) => run.mismatch),
    perK: spread(drawn2, ({ run }) => run.mismatchPerK),
    glazePerK: spread(drawn2, ({ draw }) => draw.pair.glazePerK),
    bodyPerK: spread(drawn2, ({ run }) => run.bodyPerK),
    silicaStrain: spread(drawn2, ({ draw }) => draw.silicaStrain),
    bodyTo500PerK,
    strainByMeanTo500: (pair.glazePerK - bodyTo500PerK) * (pair.setC - wall.roomC),
    greatest: {
      strain: spread(drawn2, ({ run }) => run.greatestMismatch),
      tempC: spread(drawn2, ({ run }) => run.greatestAtC)
    },
    knownFromC: wall.glaze.expansion.fromC,
    knownToC: wall.glaze.expansion.toC
  };
}
function stressPart({ glazing }, drawn2) {
  return {
    glazeMPa: spread(drawn2, ({ run }) => run.glazeMPa),
    thickBodyMPa: spread(drawn2, ({ run }) => run.thickBodyMPa),
    underGlazeMPa: spread(drawn2, ({ run }) => run.underGlazeMPa),
    bareFaceMPa: glazing === "both faces" ? null : spread(drawn2, ({ run }) => run.bareFaceMPa),
    bowMm: glazing === "one face, free to bend" ? spread(drawn2, ({ run }) => run.bowMm) : null
  };
}
function crazingPart(drawn2, cracking) {
  const share = cracking.length / drawn2.length;
  const coats = drawn2.filter(({ run }) => run.crazingCoatMm !== null);
  return {
    share,
    standing: standingOf(share),
    thresholdMPa: spread(drawn2, ({ run }) => run.thresholdMPa),
    overThreshold: spread(drawn2, ({ run }) => run.overThreshold),
    coatShare: coats.length / drawn2.length,
    leastCoatMm: spreadOfSome(drawn2, ({ run }) => run.crazingCoatMm),
    firstPingC: spreadOfSome(drawn2, ({ run }) => run.pingC)
  };
}
function spacingPart(wall, drawn2, cracking) {
  const leastMm = spreadOfSome(drawn2, ({ run }) => run.leastSpacingMm);
  if (leastMm === null) return null;
  const share = (past) => cracking.filter(({ run }) => run.spacingPast === past).length / cracking.length;
  const late = spreadOfSome(drawn2, ({ run }) => run.lateSpacingMm);
  const meanMm = times(leastMm, MEAN_OVER_LEAST);
  return {
    leastMm,
    meanMm,
    widestMm: times(leastMm, 2),
    alongLinesMm: times(meanMm, interceptOfPitch(1)),
    lateMeanMm: late === null ? null : times(late, MEAN_OVER_LEAST),
    thickerCoat: thickerCoat(wall),
    fineShare: share("fine"),
    wideShare: share("wide")
  };
}
var FLAT_SLOPE = 0.1;
function thickerCoat(wall) {
  const draw = middleDraw(wall);
  const { mismatch } = greatestMismatch(draw.pair, wall.roomC);
  const spacingAt = (factor) => {
    const layers = { ...draw.layers, coatMm: draw.layers.coatMm * factor };
    const coated = { ...draw, layers, glazing: wall.piece.glazing };
    const { load, overThreshold } = crackedWall(coated, mismatch);
    return overThreshold < 1 ? null : leastSpacingMm(coated, load).mm;
  };
  const [thinner, thicker] = [spacingAt(1), spacingAt(1.1)];
  if (thinner === null || thicker === null) return null;
  const slope = Math.log(thicker / thinner) / Math.log(1.1);
  if (Math.abs(slope) <= FLAT_SLOPE) return "hardly changes";
  return slope < 0 ? "closer" : "wider";
}
function throughPart(wall, drawn2, cracking) {
  const through = cracking.filter(({ run }) => run.stopsAtMm === null);
  const share = through.length / drawn2.length;
  const stopped = (each) => each.run.overThreshold >= 1 ? each.run.stopsAtMm : null;
  const overToughness = spread(drawn2, ({ run }) => run.pullOverToughness);
  return {
    pullMPaRootM: spread(drawn2, ({ run }) => run.pullMPaRootM),
    bodyToughnessMPaRootM: spread(drawn2, ({ draw }) => draw.bodyToughnessMPaRootM),
    toughnessSource: toughnessOf(wall.body).source,
    overToughness,
    share,
    standing: standingOf(share),
    stopsAtMm: spreadOfSome(drawn2, stopped),
    reasons: throughReasons(wall, overToughness),
    bodyPullMPa: spread(drawn2, ({ run }) => run.bodyPullMPa),
    bodyPullOverRupture: spread(drawn2, ({ run }) => run.bodyPullOverRupture),
    rimPullMPa: spread(drawn2, ({ run }) => run.rimPullMPa),
    rimPullOverRupture: spread(drawn2, ({ run }) => run.rimPullOverRupture)
  };
}
function delayedPart({ body, piece }, drawn2) {
  const whole = drawn2.filter(({ run }) => run.overThreshold < 1);
  const years = (each) => each.run.overThreshold < 1 ? each.run.moistureYears : null;
  return {
    growth: spread(drawn2, ({ draw }) => draw.growth),
    growthSource: moistureGrowth(body, piece.absorptionPercent).source,
    addedMPa: spread(drawn2, ({ run }) => run.moistureMPa),
    moistureShare: whole.filter(({ run }) => run.moistureYears !== null).length / drawn2.length,
    moistureYears: spreadOfSome(drawn2, years),
    slowShare: drawn2.filter(({ run }) => run.growsSlowly).length / drawn2.length,
    slowFromMm: spreadOfSome(drawn2, ({ run }) => run.delayedFromMm)
  };
}
function pairsOf(pings) {
  const fair = pings.filter(({ kiln }) => kiln !== "opened");
  return fair.flatMap(
    (first, i) => fair.slice(i + 1).filter((second) => second.coatMm !== first.coatMm).map((second) => [first, second])
  );
}
function standingOf(share) {
  if (share >= SPEAKING_SHARE) return "speaks for";
  return share <= 1 - SPEAKING_SHARE ? "speaks against" : "open";
}
function spread(drawn2, pick) {
  return spreadOf(Float64Array.from(drawn2, pick));
}
function spreadOfSome(drawn2, pick) {
  const values = drawn2.map(pick).filter((value) => value !== null);
  return values.length < LEAST_SHARE * drawn2.length ? null : spreadOf(Float64Array.from(values));
}
function times({ low, median, high }, factor) {
  return { low: low * factor, median: median * factor, high: high * factor };
}

export {
  MEAN_OVER_LEAST,
  LONG_TERM_YEARS,
  fitDraws,
  fitRun,
  glazeFit
};
