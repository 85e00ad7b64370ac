import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import type { LogOptions, LogReading } from "../../src/core/log/reading/LogReading.ts";
import { readLog } from "../../src/core/log/readLog.ts";
import { cellRows } from "../../src/core/log/text/cells.ts";
import { decodeText } from "../../src/core/log/text/decodeText.ts";
import type { Result } from "../../src/core/problem.ts";
import { splitQuoted } from "../../src/node/readLogChunks.ts";

const require = createRequire(import.meta.url);
const spectrum = dirname(require.resolve("csv-spectrum"));
const vega = join(spectrum, "..", "vega-datasets", "data");

/** Source: package csv-spectrum 2.0.0 (BSD-2-Clause), csvs/ with the truth in json/. */
describe("csv-spectrum", () => {
  const names = readdirSync(join(spectrum, "csvs")).map((file) => file.replace(/\.csv$/, ""));

  it("has its twelve files", () => {
    expect(names.length).toBe(12);
  });

  it.each(names)("%s is cut into the cells of its truth", (name) => {
    const decoded = decodeText(readFileSync(join(spectrum, "csvs", `${name}.csv`)), {
      name,
      encoding: "utf-8",
    });
    if (!decoded.ok) throw new Error(name);
    const [header = [], ...rows] = cellRows(decoded.value.text, ",", splitQuoted);
    const found = rows.map((cells) => Object.fromEntries(header.map((key, i) => [key, cells[i]])));
    const truth: unknown = JSON.parse(readFileSync(join(spectrum, "json", `${name}.json`), "utf8"));
    if (name !== "location_coordinates") {
      expect(found).toEqual(truth);
      return;
    }
    // This truth is one object, without the last two columns, and its phone number is not the file's.
    expect(found).toMatchObject([
      { "Location Coordinates": (truth as Record<string, string>)["Location Coordinates"] },
    ]);
    expect(Object.values(found[0] ?? {}).slice(2)).toEqual(["Modesto", "Stanislaus"]);
  });
});

function table(name: string, options: Partial<LogOptions> = {}): Result<LogReading> {
  return readLog(readFileSync(join(vega, name)), { name, ...options }, splitQuoted);
}

function read(name: string, options: Partial<LogOptions> = {}): LogReading {
  const result = table(name, options);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

function curveOf(log: LogReading, name: string) {
  const curve = log.channels.find((channel) => channel.name === name)?.curve;
  if (curve === undefined || curve === null) throw new Error(`no curve ${name}`);
  return curve;
}

/** Source: package vega-datasets 3.2.1, data/*.csv; values read in the files by eye. */
describe("vega-datasets", () => {
  it("hourly normals: asks for the unit, since 4.0 to 24.3 could be either", () => {
    const result = table("seattle-weather-hourly-normals.csv");
    expect(result.ok ? [] : result.problems.map((problem) => problem.code)).toEqual([
      "log/unit-unknown",
    ]);
  });

  it("hourly normals: given °C, the printed values stand at the printed hours", () => {
    const log = read("seattle-weather-hourly-normals.csv", { unit: "C" });
    const { timesSeconds, tempsC } = curveOf(log, "temperature");
    expect(log.start).toBe("2010-01-01T01:00:00");
    expect(log.intervalSeconds).toBe(3600);
    // Lines 2 to 5: 01:00 4.0, 02:00 3.9, 03:00 3.8, 04:00 3.8.
    expect([...tempsC.slice(0, 4)]).toEqual([4, 3.9, 3.8, 3.8]);
    expect([...timesSeconds.slice(0, 4)]).toEqual([0, 3600, 7200, 10_800]);
    expect(log.channels.map(({ name, role }) => [name, role])).toEqual([
      ["pressure", "other"],
      ["temperature", "temperature"],
      ["wind", "other"],
    ]);
  });

  it("daily weather: rows are days, and both temperatures are read", () => {
    const log = read("seattle-weather.csv", { unit: "C" });
    expect(log.start).toBe("2012-01-01T00:00:00");
    expect(log.intervalSeconds).toBe(86_400);
    // Lines 2 to 5, columns temp_max and temp_min.
    expect([...curveOf(log, "temp_max").tempsC.slice(0, 4)]).toEqual([12.8, 10.6, 11.7, 12.2]);
    expect([...curveOf(log, "temp_min").tempsC.slice(0, 4)]).toEqual([5, 2.8, 7.2, 5.6]);
  });

  it("daily weather of two places: one row per place and day becomes a column per place", () => {
    const log = read("weather.csv", { unit: "C" });
    expect([...curveOf(log, "Seattle temp_max").tempsC.slice(0, 4)]).toEqual([
      12.8, 10.6, 11.7, 12.2,
    ]);
    expect(log.channels.filter(({ role }) => role === "temperature").length).toBe(4);
  });

  it("yearly anomalies: a table without a time of a log asks instead of guessing", () => {
    const result = table("global-temp.csv");
    expect(result.ok ? [] : result.problems.map((problem) => problem.code)).toEqual([
      "log/unit-unknown",
      "log/no-time",
    ]);
  });
});
