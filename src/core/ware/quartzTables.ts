import type { SourceId } from "../sources/bibliography.ts";

/** Linear expansion from 20 °C at measured temperatures, as taken from one source. */
export interface DilationTable {
  readonly source: SourceId;
  /** What the numbers are, and what is odd about them. */
  readonly note: string;
  /** Temperature [°C] and linear expansion from 20 °C in per cent, coolest first. */
  readonly rows: readonly (readonly [tempC: number, percent: number])[];
}

/** Quartz, mean over directions: the master table, dense where quartz inverts. */
export const CARPENTER_MEAN: DilationTable = {
  source: "carpenter-1998",
  note: "cube root of the cell volume by neutron diffraction; the rows at 700 and 900 °C are rounded to 0.001; the step into 397 °C is steeper than its neighbours and is kept as found",
  rows: [
    [20, 0],
    [35, 0.0175],
    [110, 0.1059],
    [161, 0.1774],
    [211, 0.2552],
    [251, 0.3197],
    [291, 0.3865],
    [332, 0.4608],
    [372, 0.5451],
    [397, 0.6265],
    [427, 0.6853],
    [447, 0.7319],
    [466, 0.7833],
    [488, 0.8397],
    [508, 0.9019],
    [543, 1.0581],
    [551, 1.1105],
    [559, 1.1738],
    [568, 1.2707],
    [575, 1.4469],
    [578, 1.4702],
    [580, 1.4713],
    [586, 1.4744],
    [593, 1.4767],
    [598, 1.4778],
    [608, 1.4793],
    [700, 1.485],
    [900, 1.478],
  ],
};

/** Quartz along its c axis, about what a grain does to the fired body around it. */
export const CARPENTER_C_AXIS: DilationTable = {
  source: "carpenter-1998",
  note: "cell edge c by neutron diffraction; the rows at 700 and 900 °C are rounded to 0.001",
  rows: [
    [20, 0],
    [34.9, 0.0111],
    [109.9, 0.0659],
    [160.9, 0.1134],
    [210.8, 0.1654],
    [250.8, 0.2087],
    [290.8, 0.254],
    [331.8, 0.304],
    [371.8, 0.3606],
    [396.8, 0.4209],
    [426.8, 0.4603],
    [446.8, 0.4906],
    [465.8, 0.5267],
    [487.8, 0.5639],
    [507.8, 0.6059],
    [542.8, 0.7112],
    [550.8, 0.7472],
    [558.8, 0.7896],
    [567.8, 0.8527],
    [574.8, 0.9635],
    [577.8, 0.9864],
    [579.8, 0.9868],
    [585.8, 0.989],
    [592.8, 0.9881],
    [597.8, 0.9885],
    [607.8, 0.9868],
    [700, 0.988],
    [900, 0.96],
  ],
};

/** Quartz, mean over directions, second opinion from a pressure cell at 1 bar. */
export const RAZ_MEAN: DilationTable = {
  source: "raz-2002",
  note: "cube root of the volume; nothing between 560 and 580 °C",
  rows: [
    [20, 0],
    [25, 0.0073],
    [100, 0.1162],
    [200, 0.2682],
    [300, 0.4325],
    [400, 0.6326],
    [500, 0.901],
    [520, 0.9687],
    [540, 1.0746],
    [560, 1.1854],
    [580, 1.4845],
    [600, 1.5034],
    [610, 1.5062],
    [620, 1.5099],
    [630, 1.5113],
    [640, 1.5138],
    [650, 1.5159],
  ],
};

/** Quartz, mean over directions, third opinion by synchrotron diffraction. */
export const ANTAO_MEAN: DilationTable = {
  source: "antao-2016",
  note: "cube root of the cell volume; nothing between 570.8 and 586.8 °C, so never interpolate there",
  rows: [
    [20, 0],
    [24.9, 0.0054],
    [104.9, 0.0952],
    [199.9, 0.2178],
    [292.8, 0.3586],
    [354.8, 0.4713],
    [402.8, 0.5676],
    [448.8, 0.6766],
    [478.8, 0.7554],
    [510.8, 0.8524],
    [539.8, 0.97],
    [555.8, 1.0559],
    [570.8, 1.1402],
    [586.8, 1.4045],
    [601.8, 1.4372],
    [632.8, 1.4487],
    [679.8, 1.449],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a measured value, near log2 e by chance
    [725.8, 1.443],
    [772.8, 1.4384],
    [833.8, 1.4329],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a measured value, near √2 by chance
    [894.8, 1.414],
    [961.8, 1.3945],
  ],
};
