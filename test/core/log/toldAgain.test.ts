import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Decision, LogReading, LogSaid } from "../../../src/core/log/reading/LogReading.ts";
import { readLog } from "../../../src/core/log/readLog.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { logSaidLines } from "../../../src/core/reports/logBlocks.ts";
import { splitQuoted } from "../../../src/node/readLogChunks.ts";

/** What must be told before these can be read at all. */
const NEEDED: Readonly<Record<string, LogSaid>> = {
  "time-unit-ambiguous.csv": { timeUnit: "min" },
  "sample-numbers-without-interval.csv": { intervalSeconds: 60 },
  "unit-could-be-two.csv": { unit: "F" },
  "elapsed-two-fields.csv": { timeUnit: "min" },
  "millivolts-type-b.csv": { thermocouple: "B", coldJunctionC: 25 },
  "millivolts-type-k-cold-junction.csv": { thermocouple: "K" },
  "millivolts-type-s.csv": { thermocouple: "S", coldJunctionC: 25 },
};

const LOGS = ["logs", "test/fixtures/logs"].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => /\.(csv|txt|tsv)$/.test(name))
    .map((name) => ({ name, bytes: readFileSync(join(folder, name)) })),
);

const READ = LOGS.flatMap(({ name, bytes }) => {
  const reading = readLog(bytes, { ...NEEDED[name], name }, splitQuoted);
  return reading.ok ? [{ name, bytes, reading: reading.value }] : [];
});

/** What all decisions of a reading say, together. */
function said(decisions: readonly Decision[]): LogSaid {
  const all = decisions.flatMap(({ says }) => (says === undefined ? [] : [says]));
  const roles = Object.assign({}, ...all.map((each) => each.roles));
  return { ...Object.assign({}, ...all), ...(Object.keys(roles).length > 0 && { roles }) };
}

function numbersOf({ channels, start, startOfDaySeconds, rows, unit }: LogReading): unknown {
  return {
    start,
    startOfDaySeconds,
    unit,
    accepted: rows.accepted,
    channels: channels.map(({ name, role, curve }) => ({
      name,
      role,
      times: curve && [...curve.timesSeconds],
      temps: curve && [...curve.tempsC],
    })),
  };
}

describe("a log whose every decision is told", () => {
  it("is looked at in many shapes", () => {
    expect(READ.length).toBeGreaterThan(20);
  });

  it.each(READ)("$name reads as it did when the reader decided", ({ name, bytes, reading }) => {
    const again = readLog(bytes, { ...said(reading.decisions), name }, splitQuoted);
    if (!again.ok) throw new Error(again.problems.map(({ what }) => what).join());
    expect(numbersOf(again.value)).toEqual(numbersOf(reading));
    const open = again.value.decisions.filter(
      ({ says, confidence }) => says !== undefined && confidence !== "told",
    );
    expect(open.map(({ about }) => about)).toEqual([]);
  });

  it.each(READ)("$name names an option for all that is not certain", ({ reading }) => {
    const unsure = reading.decisions.filter(({ confidence }) =>
      ["likely", "guessed"].includes(confidence),
    );
    for (const { about, option, says } of unsure) {
      expect(option, about).not.toBeNull();
      expect(says, about).toBeDefined();
    }
  });

  it.each(READ)("$name reads so by the lines of a record as well", ({ reading }) => {
    const all = said(reading.decisions);
    const yaml = `formatVersion: 1\ntitle: t\n${logSaidLines(all).join("\n")}\n`;
    const record = parseRecord(yaml, "a.yaml");
    if (!record.ok) throw new Error(record.problems.map(({ what }) => what).join());
    expect(record.value.log).toEqual(all);
  });
});
