import type { ConeSeries } from "./cone.ts";
import type { ConeKinetics } from "./fitKinetics.ts";

/** Constants fitted to the published tables by fitKinetics; a test holds them to it. Softest first. */
export const KINETICS: Readonly<Record<ConeSeries, readonly ConeKinetics[]>> = {
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
    { cone: "14", activationKJ: 1459.873, endPoint60C: 1368.887 },
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
    { cone: "3", activationKJ: 1173.445, endPoint60C: 1150.75 },
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
    { cone: "14", activationKJ: 1459.873, endPoint60C: 1368.887 },
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
    { cone: "3", activationKJ: 1173.445, endPoint60C: 1148.987 },
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
    { cone: "12", activationKJ: 1115.414, endPoint60C: 1324.517 },
  ],
};

/** Molar gas constant [kJ/(mol·K)], exact since 2019 (8.314 462 618… J/(mol·K), CODATA). */
export const GAS_CONSTANT = 8.31446261815324e-3;

/**
 * Logarithm of J(T) = ∫ exp(−E/RT) dT from 0 K, by the asymptotic series of the exponential integral.
 * Eleven terms: relative error below 1e−7 for E/RT above 25, about 1e−6 at 20.
 *
 * @param tempK Temperature [K], positive.
 * @param activationKJ Activation energy E [kJ/mol].
 */
export function logArrheniusIntegral(tempK: number, activationKJ: number): number {
  const x = activationKJ / (GAS_CONSTANT * tempK);
  return Math.log(tempK * seriesSum(1 / x)) - x;
}

/** A·J(T) [K/h] with its pre-factor folded into the exponent, so that nothing over- or underflows early. */
export function scaledArrheniusIntegral(
  tempK: number,
  activationKJ: number,
  logPreFactor: number,
): number {
  const x = activationKJ / (GAS_CONSTANT * tempK);
  return tempK * seriesSum(1 / x) * Math.exp(logPreFactor - x);
}

/** Rate of heatwork A·exp(−E/RT) [1/h] at a temperature [K]. */
export function arrheniusRate(tempK: number, activationKJ: number, logPreFactor: number): number {
  return Math.exp(logPreFactor - activationKJ / (GAS_CONSTANT * tempK));
}

/**
 * Temperature [K] at which a cone that ends at `endPoint60K` on a 60 °C/h ramp ends on another ramp.
 * A plain ramp from the cold; no anchoring to a table.
 */
export function rampEndPointK(
  activationKJ: number,
  endPoint60K: number,
  rateCPerHour: number,
): number {
  const target = logArrheniusIntegral(endPoint60K, activationKJ) + Math.log(rateCPerHour / 60);
  return tempOfLogIntegral(activationKJ, target, endPoint60K);
}

/** Temperature [K] at which ln J reaches a value; Newton's method, from a guess [K]. */
function tempOfLogIntegral(activationKJ: number, target: number, guessK: number): number {
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

/** Σ (−1)^(n+1)·n!·zⁿ for n = 1 … 11, written out because every reading of a log passes here. */
function seriesSum(z: number): number {
  const last = -3628800 + 39916800 * z;
  const middle = 120 + z * (-720 + z * (5040 + z * (-40320 + z * (362880 + z * last))));
  return z * (1 + z * (-2 + z * (6 + z * (-24 + z * middle))));
}
