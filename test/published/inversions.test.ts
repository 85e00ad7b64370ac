import { describe, expect, it } from "vitest";
import { cited } from "../../src/core/sources/bibliography.ts";
import {
  ALPHA_CRISTOBALITE,
  BETA_CRISTOBALITE,
  interpolated,
  quartzExpansionPercent,
} from "../../src/core/ware/bodyExpansion.ts";
import {
  ANTAO_MEAN,
  CARPENTER_C_AXIS,
  CARPENTER_MEAN,
  RAZ_MEAN,
} from "../../src/core/ware/quartzTables.ts";

/** Formula units of SiO₂ to a mole of cells of 1 Å³ [cm³/mol]; Avogadro, exact since 2019. */
const CM3_PER_MOL_PER_A3 = 0.602214076;
/** Mass of a mole of SiO₂ [g], from the standard atomic weights. */
const SILICA_GRAM_PER_MOL = 60.084;
/** Quartz cell at 20 °C that the percentages of Carpenter 1998 start from [Å], implied by its 851 K cell. */
const AT_851K = { aA: 4.99795, cA: 5.45892, volumeA3: 118.092 };

const hexagonalVolumeA3 = (aA: number, cA: number) => (Math.sqrt(3) / 2) * aA * aA * cA;

describe("quartz cells", () => {
  it(`${cited("kihara-1990")}, 848 K: 4.9965 by 5.4570 Å is 117.982 Å³ within 0.005 (edges printed to 0.0001 Å)`, () => {
    const volume = hexagonalVolumeA3(4.9965, 5.457);
    expect(Math.abs(volume - 117.982)).toBeLessThanOrEqual(0.005);
  });

  it("Carpenter 1998, 851 K: 4.99795 by 5.45892 Å is 118.092 Å³ within 0.001 (edges printed to 0.00001 Å)", () => {
    const volume = hexagonalVolumeA3(AT_851K.aA, AT_851K.cA);
    expect(Math.abs(volume - AT_851K.volumeA3)).toBeLessThanOrEqual(0.001);
  });

  it("Antao 2016, 298 K: 113.002 Å³, reached from the 851 K cell of Carpenter 1998 within 0.06 Å³ (0.05 % of volume: two samples, two instruments)", () => {
    const growth = growthTo(578) / growthTo(25);
    const volume = AT_851K.volumeA3 / growth ** 3;
    expect(Math.abs(volume - 113.002)).toBeLessThanOrEqual(0.06);
  });

  it(`${cited("lakshtanov-2007")}: density at 600 °C is 2.534 of 2.649 at 20 °C within 0.002 g/cm³ (printed to 0.001, cell data differ by 0.001)`, () => {
    const cellA3 = AT_851K.volumeA3 / growthTo(578) ** 3;
    const density = (3 * SILICA_GRAM_PER_MOL) / (cellA3 * CM3_PER_MOL_PER_A3);
    expect(Math.abs(density - 2.649)).toBeLessThanOrEqual(0.002);
    expect(Math.abs(density / growthTo(600) ** 3 - 2.534)).toBeLessThanOrEqual(0.002);
  });
});

const PUBLISHED_EXPANSION = [
  { source: "Carpenter 1998", axis: "mean", tempC: 110, percent: 0.1059 },
  { source: "Carpenter 1998", axis: "mean", tempC: 332, percent: 0.4608 },
  { source: "Carpenter 1998", axis: "mean", tempC: 543, percent: 1.0581 },
  { source: "Carpenter 1998", axis: "mean", tempC: 568, percent: 1.2707 },
  { source: "Carpenter 1998", axis: "mean", tempC: 575, percent: 1.4469 },
  { source: "Carpenter 1998", axis: "mean", tempC: 608, percent: 1.4793 },
  { source: "Carpenter 1998", axis: "c", tempC: 109.9, percent: 0.0659 },
  { source: "Carpenter 1998", axis: "c", tempC: 567.8, percent: 0.8527 },
  { source: "Carpenter 1998", axis: "c", tempC: 577.8, percent: 0.9864 },
  { source: "Carpenter 1998", axis: "c", tempC: 607.8, percent: 0.9868 },
] as const;

describe.each(PUBLISHED_EXPANSION)("$source, $axis of quartz at $tempC °C", (row) => {
  it(`is ${row.percent} % from 20 °C, digit for digit (a measured row)`, () => {
    expect(quartzExpansionPercent(row.tempC, row.axis)).toBeCloseTo(row.percent, 10);
  });
});

const PUBLISHED_STEPS = [
  { fromC: 20, toC: 500, axis: "mean", percent: 0.877 },
  { fromC: 20, toC: 600, axis: "mean", percent: 1.478 },
  { fromC: 500, toC: 600, axis: "mean", percent: 0.6 },
  { fromC: 500, toC: 600, axis: "c", percent: 0.4 },
  { fromC: 540, toC: 580, axis: "mean", percent: 0.43 },
  { fromC: 540, toC: 580, axis: "c", percent: 0.28 },
  { fromC: 568, toC: 578, axis: "mean", percent: 0.2 },
  { fromC: 568, toC: 578, axis: "c", percent: 0.13 },
] as const;

describe.each(PUBLISHED_STEPS)("Carpenter 1998, $axis of quartz from $fromC to $toC °C", (row) => {
  it(`grows by ${row.percent} % within 0.006 (printed to 0.01, rows up to 35 K apart)`, () => {
    const grown =
      quartzExpansionPercent(row.toC, row.axis) - quartzExpansionPercent(row.fromC, row.axis);
    expect(Math.abs(grown - row.percent)).toBeLessThanOrEqual(0.006);
  });
});

describe("other opinions on quartz", () => {
  it.each(ANTAO_MEAN.rows.filter(([tempC]) => tempC < 560 || tempC > 580))(
    "Antao 2016 at %s °C is %s %, the master table within 0.1 % of length (the spread of the published tables; beside the step a few kelvin decide)",
    (tempC, percent) => {
      const master = quartzExpansionPercent(tempC, "mean");
      expect(Math.abs(master - percent)).toBeLessThanOrEqual(0.1);
    },
  );

  it.each(RAZ_MEAN.rows)(
    "Raz 2002 at %s °C is %s %, the master table within 0.04 % of length (another sample and thermometer)",
    (tempC, percent) => {
      const master = quartzExpansionPercent(tempC, "mean");
      expect(Math.abs(master - percent)).toBeLessThanOrEqual(0.04);
    },
  );

  it(`${cited("kosinski-1992")}: (2 × 13.65 + 7.50) / 3 = 11.6 millionths per kelvin at 25 °C, the first slope of the table within 0.3 (one row, printed to 0.0001 %)`, () => {
    const perMillionK =
      ((quartzExpansionPercent(35, "mean") - quartzExpansionPercent(20, "mean")) / 15) * 1e4;
    expect(Math.abs(perMillionK - (2 * 13.65 + 7.5) / 3)).toBeLessThanOrEqual(0.3);
  });
});

describe("cristobalite", () => {
  it("Bourova & Richet 1998: 27.4 cm³/mol at 477 °C over a cold cell of 4.9709² × 6.9278 Å is the β row within 0.06 % of length (27.4 printed to 0.1)", () => {
    const coldCm3 = ((4.9709 ** 2 * 6.9278) / 4) * CM3_PER_MOL_PER_A3;
    const percent = (Math.cbrt(27.4 / coldCm3) - 1) * 100;
    expect(percent).toBeCloseTo(2.06, 2);
    expect(Math.abs(interpolated(BETA_CRISTOBALITE, 477) - percent)).toBeLessThanOrEqual(0.06);
  });

  it(`${cited("graetsch-2003")}: it steps by 4.2 % of volume (printed to 0.1 %)`, () => {
    const cold = 1 + interpolated(ALPHA_CRISTOBALITE, 225) / 100;
    const hot = 1 + interpolated(BETA_CRISTOBALITE, 225) / 100;
    const stepPercent = ((hot / cold) ** 3 - 1) * 100;
    expect(Math.abs(stepPercent - 4.2)).toBeLessThanOrEqual(0.05);
  });
});

describe("the tables as copied", () => {
  /** Cell edge a, Carpenter 1998: shipped nowhere, here to check the other two columns. */
  const carpenterA = [
    [34.9, 0.0203],
    [290.8, 0.4525],
    [487.8, 0.9772],
    [567.8, 1.4746],
    [574.8, 1.6878],
    [607.8, 1.7263],
  ] as const;

  it.each(carpenterA)(
    "at %s °C, two edges a of %s % and one c make the mean within 0.005 % (the columns stand 0.2 K apart, and the step climbs 0.025 % a kelvin)",
    (tempC, aPercent) => {
      const a = 1 + aPercent / 100;
      const c = 1 + quartzExpansionPercent(tempC, "c") / 100;
      const row = CARPENTER_MEAN.rows.find(([t]) => Math.abs(t - tempC) < 0.3);
      const meanPercent = (Math.cbrt(a * a * c) - 1) * 100;
      expect(Math.abs(meanPercent - (row?.[1] ?? 0))).toBeLessThanOrEqual(0.005);
    },
  );

  it.each([
    ["Carpenter 1998, mean", CARPENTER_MEAN, 28],
    ["Carpenter 1998, c axis", CARPENTER_C_AXIS, 28],
    ["Raz 2002", RAZ_MEAN, 17],
    ["Antao 2016", ANTAO_MEAN, 22],
  ] as const)("%s rises in temperature and has all its rows", (_name, table, rowCount) => {
    const temps = table.rows.map(([tempC]) => tempC);
    expect(temps).toHaveLength(rowCount);
    expect(temps).toEqual([...new Set(temps)].sort((a, b) => a - b));
    expect(table.rows[0]).toEqual([20, 0]);
  });
});

function growthTo(tempC: number): number {
  return 1 + quartzExpansionPercent(tempC, "mean") / 100;
}
