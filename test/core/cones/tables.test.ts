import { describe, expect, it } from "vitest";
import { CONE_TABLES, coneIndex } from "../../../src/core/cones/cone.ts";
import { CONES_SOURCES } from "../../../src/core/sources/cones.ts";
import { fahrenheitFromCelsius } from "../../../src/core/units/temperature.ts";

const tables = Object.values(CONE_TABLES);

/** Anomalies of the sources, kept as printed: `series cone` of the cell that is not above its neighbour. */
const NOT_ABOVE_SOFTER_CONE = [
  "large-legacy 012 at 60", // 866 under 013's 869
  "fairchild-peters-1926 010 at 150", // 895 under 011's 905
];
const NOT_ABOVE_SLOWER_RATE = [
  "large 14", // 1388 at 60, 1366 at 150
  "large-legacy 013", // 869 and 852
  "large-legacy 14", // the old figures behind large 14
  "fairchild-peters-1926 09", // 930 and 930
  "fairchild-peters-1926 13", // 1350 and 1350
];

describe("cone tables", () => {
  it.each(tables)("$series names its cones once, softest first", ({ rows }) => {
    const indices = rows.map((row) => coneIndex(row.cone));
    expect(indices).toEqual(indices.toSorted((a, b) => a - b));
    expect(new Set(rows.map((row) => row.cone)).size).toBe(rows.length);
  });

  it.each(tables)("$series has one place for each column in every row", (table) => {
    for (const row of table.rows) {
      expect(row.endPoints.length).toBe(table.ratesCPerHour.length);
      expect(row.endPoints.some((endPoint) => endPoint !== null)).toBe(true);
    }
  });

  it("rise from cone to cone in every column, but for two known places of old tables", () => {
    const breaks = tables.flatMap((table) =>
      table.ratesCPerHour.flatMap((rate, column) => {
        const printed = table.rows.flatMap((row) => {
          const endPoint = row.endPoints[column];
          return endPoint ? [{ cone: row.cone, tempC: endPoint.tempC }] : [];
        });
        return printed
          .filter((each, i) => i > 0 && each.tempC <= (printed[i - 1]?.tempC ?? 0))
          .map((each) => `${table.series} ${each.cone} at ${rate}`);
      }),
    );
    expect(breaks.toSorted()).toEqual(NOT_ABOVE_SOFTER_CONE.toSorted());
  });

  it("rise from rate to rate in every row, but for the known anomalies", () => {
    const breaks = tables.flatMap((table) =>
      table.rows
        .filter((row) => {
          const temps = row.endPoints.flatMap((endPoint) => endPoint?.tempC ?? []);
          return temps.some((tempC, i) => i > 0 && tempC <= (temps[i - 1] ?? 0));
        })
        .map((row) => `${table.series} ${row.cone}`),
    );
    expect(breaks.toSorted()).toEqual(NOT_ABOVE_SLOWER_RATE.toSorted());
  });

  it("of the current chart carry °F that are the rounded °C, but for cone 13 at 15 °C/h", () => {
    const current = [
      "self-supporting",
      "self-supporting-iron-free",
      "large",
      "large-iron-free",
      "small",
    ];
    const odd = tables
      .filter((table) => current.includes(table.series))
      .flatMap((table) =>
        table.rows.flatMap((row) =>
          row.endPoints.flatMap((cell, column) =>
            cell && cell.tempF !== Math.round(fahrenheitFromCelsius(cell.tempC))
              ? [`${table.series} ${row.cone} at ${table.ratesCPerHour[column]}: ${cell.tempF}`]
              : [],
          ),
        ),
      );
    expect(odd).toEqual(["self-supporting 13 at 15: 2389"]);
  });

  it.each(tables)("$series lists exactly the sources that its cells name", (table) => {
    const cells = table.rows.flatMap((row) => row.endPoints.flatMap((cell) => cell?.sources ?? []));
    expect(new Set(cells)).toEqual(new Set(table.sources));
    for (const source of table.sources) expect(CONES_SOURCES).toHaveProperty(source);
  });

  it.each(tables)("$series says from memory exactly where the source is memory", (table) => {
    for (const row of table.rows)
      for (const cell of row.endPoints)
        if (cell !== null)
          expect(cell.sources.includes("cones-from-memory")).toBe(
            cell.confidence === "from-memory",
          );
  });
});
