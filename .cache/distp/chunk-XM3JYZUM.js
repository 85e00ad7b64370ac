import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  printDuration,
  printElapsed
} from "./chunk-IOGTIVWI.js";
import {
  CONE_TABLES,
  kelvinFromCelsius
} from "./chunk-R2H4YYDI.js";

// src/core/cones/arrhenius.ts
var GAS_CONSTANT = 0.00831446261815324;
function logArrheniusIntegral(tempK, activationKJ) {
  const x = activationKJ / (GAS_CONSTANT * tempK);
  return Math.log(tempK * seriesSum(1 / x)) - x;
}
function scaledArrheniusIntegral(tempK, activationKJ, logPreFactor) {
  const x = activationKJ / (GAS_CONSTANT * tempK);
  return tempK * seriesSum(1 / x) * Math.exp(logPreFactor - x);
}
function arrheniusRate(tempK, activationKJ, logPreFactor) {
  return Math.exp(logPreFactor - activationKJ / (GAS_CONSTANT * tempK));
}
function rampEndPointK(activationKJ, endPoint60K, rateCPerHour) {
  const target = logArrheniusIntegral(endPoint60K, activationKJ) + Math.log(rateCPerHour / 60);
  return tempOfLogIntegral(activationKJ, target, endPoint60K);
}
function tempOfLogIntegral(activationKJ, target, guessK) {
  let tempK = guessK;
  for (let round = 0; round < 40; round++) {
    const value = logArrheniusIntegral(tempK, activationKJ);
    const slope = Math.exp(-activationKJ / (GAS_CONSTANT * tempK) - value);
    const step = Math.max(-0.2 * tempK, Math.min(0.2 * tempK, (value - target) / slope));
    tempK -= step;
    if (Math.abs(step) < 1e-9) return tempK;
  }
  return tempK;
}
function seriesSum(z) {
  const last = -3628800 + 39916800 * z;
  const middle = 120 + z * (-720 + z * (5040 + z * (-40320 + z * (362880 + z * last))));
  return z * (1 + z * (-2 + z * (6 + z * (-24 + z * middle))));
}

// src/core/cones/leastSquaresCone.ts
var ENTRY_SCATTER_K = 2;
var START_LOG_ACTIVATION = Math.log(700);

// src/core/cones/fitKinetics.ts
function anchorsOf(table, cone) {
  const row = table.rows.find((each) => each.cone === cone);
  if (row === void 0) throw new RangeError(`anchorsOf: no cone ${cone} in ${table.series}`);
  return row.endPoints.flatMap((endPoint, column) => {
    const rateCPerHour = table.ratesCPerHour[column] ?? null;
    return endPoint === null || rateCPerHour === null ? [] : [{ rateCPerHour, tempC: endPoint.tempC }];
  });
}
function risesWithRate(anchors) {
  return anchors.every((anchor, i) => i === 0 || anchor.tempC > anchors[i - 1].tempC);
}

// src/core/cones/kinetics.ts
var KINETICS = {
  "self-supporting": [
    { cone: "022", activationKJ: 499.99, endPoint60C: 582.462 },
    { cone: "021", activationKJ: 395.829, endPoint60C: 601.303 },
    { cone: "020", activationKJ: 445.021, endPoint60C: 625.202 },
    { cone: "019", activationKJ: 410.385, endPoint60C: 678.79 },
    { cone: "018", activationKJ: 366.088, endPoint60C: 714.581 },
    { cone: "017", activationKJ: 324.169, endPoint60C: 738.72 },
    { cone: "016", activationKJ: 356.95, endPoint60C: 773.282 },
    { cone: "015", activationKJ: 298.71, endPoint60C: 790.271 },
    { cone: "014", activationKJ: 259.714, endPoint60C: 805.193 },
    { cone: "013", activationKJ: 419.896, endPoint60C: 838.238 },
    { cone: "012", activationKJ: 594.591, endPoint60C: 864.486 },
    { cone: "011", activationKJ: 637.363, endPoint60C: 877.722 },
    { cone: "010", activationKJ: 1077.691, endPoint60C: 904.559 },
    { cone: "09", activationKJ: 1071.208, endPoint60C: 920.598 },
    { cone: "08", activationKJ: 907.987, endPoint60C: 941.973 },
    { cone: "07", activationKJ: 1109.66, endPoint60C: 976.694 },
    { cone: "06", activationKJ: 1072.088, endPoint60C: 999.181 },
    { cone: "05.5", activationKJ: 1320.955, endPoint60C: 1016.188 },
    { cone: "05", activationKJ: 1323.326, endPoint60C: 1033.566 },
    { cone: "04", activationKJ: 1098.29, endPoint60C: 1063.963 },
    { cone: "03", activationKJ: 1014.316, endPoint60C: 1089.171 },
    { cone: "02", activationKJ: 819.777, endPoint60C: 1103.378 },
    { cone: "01", activationKJ: 800.039, endPoint60C: 1119.489 },
    { cone: "1", activationKJ: 800.501, endPoint60C: 1136.21 },
    { cone: "2", activationKJ: 719.747, endPoint60C: 1142.536 },
    { cone: "3", activationKJ: 683.411, endPoint60C: 1149.052 },
    { cone: "4", activationKJ: 889.033, endPoint60C: 1164.713 },
    { cone: "5", activationKJ: 813.426, endPoint60C: 1187.034 },
    { cone: "5.5", activationKJ: 697.151, endPoint60C: 1201.892 },
    { cone: "6", activationKJ: 707.281, endPoint60C: 1220.257 },
    { cone: "7", activationKJ: 740.409, endPoint60C: 1235.846 },
    { cone: "8", activationKJ: 712.044, endPoint60C: 1247.362 },
    { cone: "9", activationKJ: 770.299, endPoint60C: 1258.159 },
    { cone: "10", activationKJ: 843.179, endPoint60C: 1283.67 },
    { cone: "11", activationKJ: 1046.761, endPoint60C: 1296.438 },
    { cone: "12", activationKJ: 1115.414, endPoint60C: 1308.321 },
    { cone: "13", activationKJ: 1242.493, endPoint60C: 1332.144 },
    { cone: "14", activationKJ: 1459.873, endPoint60C: 1368.887 }
  ],
  "self-supporting-iron-free": [
    { cone: "010", activationKJ: 1015.287, endPoint60C: 884.914 },
    { cone: "09", activationKJ: 916.858, endPoint60C: 917.188 },
    { cone: "08", activationKJ: 870.379, endPoint60C: 944.373 },
    { cone: "07", activationKJ: 971.64, endPoint60C: 970.57 },
    { cone: "06", activationKJ: 991.126, endPoint60C: 987.922 },
    { cone: "05.5", activationKJ: 985.237, endPoint60C: 1009.669 },
    { cone: "05", activationKJ: 1002.375, endPoint60C: 1034.055 },
    { cone: "04", activationKJ: 1194.956, endPoint60C: 1059.457 },
    { cone: "03", activationKJ: 1210.287, endPoint60C: 1084.172 },
    { cone: "02", activationKJ: 1149.482, endPoint60C: 1103.324 },
    { cone: "01", activationKJ: 1124.148, endPoint60C: 1121.42 },
    { cone: "1", activationKJ: 1220.851, endPoint60C: 1137.294 },
    { cone: "3", activationKJ: 1173.445, endPoint60C: 1150.75 }
  ],
  large: [
    { cone: "019", activationKJ: 410.385, endPoint60C: 676.305 },
    { cone: "018", activationKJ: 366.088, endPoint60C: 712.136 },
    { cone: "017", activationKJ: 324.169, endPoint60C: 736.851 },
    { cone: "016", activationKJ: 356.95, endPoint60C: 770.2 },
    { cone: "015", activationKJ: 298.71, endPoint60C: 788.074 },
    { cone: "014", activationKJ: 259.714, endPoint60C: 804.991 },
    { cone: "013", activationKJ: 419.896, endPoint60C: 837.075 },
    { cone: "012", activationKJ: 594.591, endPoint60C: 860.938 },
    { cone: "011", activationKJ: 637.363, endPoint60C: 874.772 },
    { cone: "010", activationKJ: 1077.691, endPoint60C: 900.698 },
    { cone: "09", activationKJ: 1071.208, endPoint60C: 917.512 },
    { cone: "08", activationKJ: 907.987, endPoint60C: 941.878 },
    { cone: "07", activationKJ: 1109.66, endPoint60C: 973.722 },
    { cone: "06", activationKJ: 1072.088, endPoint60C: 997.345 },
    { cone: "05.5", activationKJ: 1320.955, endPoint60C: 1012.778 },
    { cone: "05", activationKJ: 1323.326, endPoint60C: 1033.154 },
    { cone: "04", activationKJ: 1098.29, endPoint60C: 1058.902 },
    { cone: "03", activationKJ: 1014.316, endPoint60C: 1086.644 },
    { cone: "02", activationKJ: 819.777, endPoint60C: 1101.854 },
    { cone: "01", activationKJ: 800.039, endPoint60C: 1117.938 },
    { cone: "1", activationKJ: 800.501, endPoint60C: 1135.697 },
    { cone: "2", activationKJ: 719.747, endPoint60C: 1141.583 },
    { cone: "3", activationKJ: 683.411, endPoint60C: 1148.886 },
    { cone: "4", activationKJ: 889.033, endPoint60C: 1161.824 },
    { cone: "5", activationKJ: 813.426, endPoint60C: 1184.712 },
    { cone: "6", activationKJ: 707.281, endPoint60C: 1218.714 },
    { cone: "7", activationKJ: 740.409, endPoint60C: 1234.477 },
    { cone: "8", activationKJ: 712.044, endPoint60C: 1245.868 },
    { cone: "9", activationKJ: 770.299, endPoint60C: 1256.123 },
    { cone: "10", activationKJ: 843.179, endPoint60C: 1281.75 },
    { cone: "11", activationKJ: 1046.761, endPoint60C: 1293.691 },
    { cone: "12", activationKJ: 1115.414, endPoint60C: 1305.611 },
    { cone: "13", activationKJ: 1242.493, endPoint60C: 1325.796 },
    { cone: "14", activationKJ: 1459.873, endPoint60C: 1368.887 }
  ],
  "large-iron-free": [
    { cone: "010", activationKJ: 1015.287, endPoint60C: 882.527 },
    { cone: "09", activationKJ: 916.858, endPoint60C: 915.683 },
    { cone: "08", activationKJ: 870.379, endPoint60C: 943.586 },
    { cone: "07", activationKJ: 971.64, endPoint60C: 969.01 },
    { cone: "06", activationKJ: 991.126, endPoint60C: 987.428 },
    { cone: "05.5", activationKJ: 985.237, endPoint60C: 1009.198 },
    { cone: "05", activationKJ: 1002.375, endPoint60C: 1031.601 },
    { cone: "04", activationKJ: 1194.956, endPoint60C: 1057.891 },
    { cone: "03", activationKJ: 1210.287, endPoint60C: 1083.236 },
    { cone: "02", activationKJ: 1149.482, endPoint60C: 1101.3 },
    { cone: "01", activationKJ: 1124.148, endPoint60C: 1120.477 },
    { cone: "1", activationKJ: 1220.851, endPoint60C: 1135.359 },
    { cone: "3", activationKJ: 1173.445, endPoint60C: 1148.987 }
  ],
  small: [
    { cone: "022", activationKJ: 499.99, endPoint60C: 609.277 },
    { cone: "021", activationKJ: 395.829, endPoint60C: 616.437 },
    { cone: "020", activationKJ: 445.021, endPoint60C: 641.034 },
    { cone: "019", activationKJ: 410.385, endPoint60C: 692.802 },
    { cone: "018", activationKJ: 366.088, endPoint60C: 716.505 },
    { cone: "017", activationKJ: 324.169, endPoint60C: 741.888 },
    { cone: "016", activationKJ: 356.95, endPoint60C: 783.532 },
    { cone: "015", activationKJ: 298.71, endPoint60C: 792.679 },
    { cone: "014", activationKJ: 259.714, endPoint60C: 810.304 },
    { cone: "013", activationKJ: 419.896, endPoint60C: 840.787 },
    { cone: "012", activationKJ: 594.591, endPoint60C: 870.732 },
    { cone: "011", activationKJ: 637.363, endPoint60C: 886.91 },
    { cone: "010", activationKJ: 1077.691, endPoint60C: 901.915 },
    { cone: "09", activationKJ: 1071.208, endPoint60C: 936.779 },
    { cone: "08", activationKJ: 907.987, endPoint60C: 960.662 },
    { cone: "07", activationKJ: 1109.66, endPoint60C: 988.864 },
    { cone: "06", activationKJ: 1072.088, endPoint60C: 1002.758 },
    { cone: "05.5", activationKJ: 1320.955, endPoint60C: 1025.957 },
    { cone: "05", activationKJ: 1323.326, endPoint60C: 1044.5 },
    { cone: "04", activationKJ: 1098.29, endPoint60C: 1075.913 },
    { cone: "03", activationKJ: 1014.316, endPoint60C: 1106.015 },
    { cone: "02", activationKJ: 819.777, endPoint60C: 1116.641 },
    { cone: "01", activationKJ: 800.039, endPoint60C: 1144.571 },
    { cone: "1", activationKJ: 800.501, endPoint60C: 1150.32 },
    { cone: "2", activationKJ: 719.747, endPoint60C: 1152.453 },
    { cone: "3", activationKJ: 683.411, endPoint60C: 1156.259 },
    { cone: "4", activationKJ: 889.033, endPoint60C: 1177.49 },
    { cone: "5", activationKJ: 813.426, endPoint60C: 1186.166 },
    { cone: "6", activationKJ: 707.281, endPoint60C: 1213.466 },
    { cone: "7", activationKJ: 740.409, endPoint60C: 1223.763 },
    { cone: "8", activationKJ: 712.044, endPoint60C: 1256.336 },
    { cone: "9", activationKJ: 770.299, endPoint60C: 1275.598 },
    { cone: "10", activationKJ: 843.179, endPoint60C: 1291.382 },
    { cone: "11", activationKJ: 1046.761, endPoint60C: 1304.341 },
    { cone: "12", activationKJ: 1115.414, endPoint60C: 1324.517 }
  ]
};

// src/core/cones/coneModel.ts
function makeConeModel(series, { cone, activationKJ, endPoint60C }, anchors) {
  const endPoint60K = kelvinFromCelsius(endPoint60C);
  return {
    cone,
    series,
    activationKJ,
    logPreFactor: Math.log(60) - logArrheniusIntegral(endPoint60K, activationKJ),
    endPoint60K,
    perFoldK: GAS_CONSTANT * endPoint60K ** 2 / activationKJ,
    shifts: anchors.map(({ rateCPerHour, tempC }) => ({
      logRate: Math.log(rateCPerHour),
      shiftK: kelvinFromCelsius(tempC) - rampEndPointK(activationKJ, endPoint60K, rateCPerHour)
    }))
  };
}
var CONE_MODELS = {
  "self-supporting": modelsOf("self-supporting"),
  "self-supporting-iron-free": modelsOf("self-supporting-iron-free"),
  large: modelsOf("large"),
  "large-iron-free": modelsOf("large-iron-free"),
  small: modelsOf("small")
};
function coneModel(series, cone) {
  const model = CONE_MODELS[series].find((each) => each.cone === cone);
  if (model === void 0) throw new RangeError(`coneModel: no cone ${cone} in ${series}`);
  return model;
}
function logEffectiveRate(model, peakK, logHeatwork) {
  const perFold = GAS_CONSTANT * peakK ** 2 / model.activationKJ;
  const peakRate = arrheniusRate(peakK, model.activationKJ, model.logPreFactor);
  return Math.log(perFold * peakRate) - logHeatwork;
}
function equivalentRampRate(model, peakK, logHeatwork) {
  const logIntegral = logArrheniusIntegral(peakK, model.activationKJ);
  return Math.exp(model.logPreFactor + logIntegral - logHeatwork);
}
function anchorShiftK(model, logRate) {
  const { shifts } = model;
  const upper = shifts.findIndex((shift) => shift.logRate > logRate);
  const high = shifts[upper];
  const low = shifts[upper - 1];
  if (high === void 0) return shifts.at(-1)?.shiftK ?? 0;
  if (low === void 0) return high.shiftK;
  const share = (logRate - low.logRate) / (high.logRate - low.logRate);
  return low.shiftK + share * (high.shiftK - low.shiftK);
}
function anchored(model, peakK, logHeatwork) {
  const perFoldK = GAS_CONSTANT * peakK ** 2 / model.activationKJ;
  const shiftK = anchorShiftK(model, logEffectiveRate(model, peakK, logHeatwork));
  const marginK = perFoldK * logHeatwork - shiftK;
  return { marginK, heatwork: Math.exp(marginK / perFoldK) };
}
function marginSigmaK(model, logRate) {
  const folds = Math.abs(logRate - Math.log(60));
  return Math.max(Math.hypot(2, 0.18 * model.perFoldK * folds), sigmaFloorK(model, logRate));
}
function sigmaFloorK(model, logRate) {
  if (model.series === "small") return 10;
  if (model.series !== "self-supporting" || model.shifts.length > 2) return 3;
  const outside = Math.max(Math.log(60) - logRate, logRate - Math.log(150), 0);
  return 5 + 5 * Math.min(1, outside / Math.log(4));
}
function modelsOf(series) {
  return KINETICS[series].map((kinetics) => {
    const printed = anchorsOf(CONE_TABLES[series], kinetics.cone);
    const anchors = risesWithRate(printed) ? printed : anchorsOf(CONE_TABLES["self-supporting"], kinetics.cone);
    return makeConeModel(series, kinetics, anchors);
  });
}

// src/core/cones/extrapolations.ts
var SLOWEST_CPERHOUR = 8;
var FASTEST_CPERHOUR = 300;
var HOT_PART_K = 150;
function isExtrapolatedRate(rateCPerHour) {
  const tolerance = 1e-6;
  return rateCPerHour < SLOWEST_CPERHOUR * (1 - tolerance) || rateCPerHour > FASTEST_CPERHOUR * (1 + tolerance);
}
function extrapolationsOf(answer) {
  return [
    ...rateReasons(answer.rateCPerHour),
    ...answer.series === "small" ? ["small cones were published at 300 \xB0C/h (540 \xB0F/h) only; elsewhere \xB1 10 \xB0C (18 \xB0F)"] : [],
    ...gapReasons(answer.curve, answer.peakC)
  ];
}
function rateReasons(rateCPerHour) {
  if (rateCPerHour === null || !isExtrapolatedRate(rateCPerHour)) return [];
  return rateCPerHour < SLOWEST_CPERHOUR ? ["so much time near the top is like a ramp slower than 8 \xB0C/h (14 \xB0F/h), beyond the charts"] : [
    "so little time near the top is like a ramp faster than 300 \xB0C/h (540 \xB0F/h), beyond the charts"
  ];
}
function gapReasons({ timesSeconds, tempsC, gaps }, peakC) {
  return gaps.flatMap((gap) => {
    const at = timesSeconds.indexOf(gap.fromSeconds);
    const hotterC = Math.max(tempsC[at], tempsC[at + 1]);
    const length = printDuration(gap.toSeconds - gap.fromSeconds);
    return hotterC < peakC - HOT_PART_K ? [] : [
      `nothing was measured for ${length} from ${printElapsed(gap.fromSeconds)}; its heat is not counted`
    ];
  });
}

export {
  logArrheniusIntegral,
  scaledArrheniusIntegral,
  arrheniusRate,
  rampEndPointK,
  ENTRY_SCATTER_K,
  CONE_MODELS,
  coneModel,
  logEffectiveRate,
  equivalentRampRate,
  anchored,
  marginSigmaK,
  isExtrapolatedRate,
  extrapolationsOf
};
