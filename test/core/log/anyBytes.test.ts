import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import type { LogReading } from "../../../src/core/log/reading/LogReading.ts";
import type { Result } from "../../../src/core/problem.ts";
import { firing, readText, wall, writeLog } from "./logBuilder.ts";

const BASES = [
  writeLog(firing(60)),
  writeLog(firing(60), {
    header: "Date,Time,Temp °C",
    time: (s) => `${wall(s).date},${wall(s).clock}`,
    lineEnd: "\r\n",
  }),
  writeLog(firing(60), { delimiter: ";", temp: (t) => `"${String(t).replace(".", ",")}"` }),
];

/** What holds for every reading, however broken its log. */
function checkReading(result: Result<LogReading>): void {
  if (!result.ok) {
    expect(result.problems.length).toBeGreaterThan(0);
    for (const problem of result.problems) expect(problem.code).toMatch(/^log\//);
    return;
  }
  const { rows, channels, intervalSeconds } = result.value;
  expect(rows.accepted + rows.rejected.length).toBe(rows.total);
  expect(intervalSeconds).toBeGreaterThan(0);
  for (const { curve, readings, dropped } of channels) {
    if (curve === null) continue;
    expect(() => makeCurve(curve.timesSeconds, curve.tempsC, curve.gaps)).not.toThrow();
    expect(readings + dropped).toBe(rows.accepted);
  }
}

/** One act of damage to a log. */
const damage = fc.record({
  at: fc.nat(1_000_000),
  cut: fc.nat(40),
  insert: fc.oneof(
    fc.constantFrom(
      '"',
      "\n",
      "\r",
      "\0",
      ";;;;",
      ",",
      "\t",
      "NaN",
      "-",
      "9999",
      "°",
      "#",
      "1e999",
    ),
    fc.string({ maxLength: 6 }),
  ),
});

describe("for any bytes", () => {
  it("reading gives a reading or problems, and never throws", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 600 }), (bytes) => checkReading(readText(bytes))),
      { numRuns: 300 },
    );
  });

  it("text made of what logs are made of gives a reading or problems", () => {
    const piece = fc.constantFrom(
      ...'0123456789.,;:\t\n\r "-+/|#°CF'.split(""),
      "12:30",
      "2026-03-14",
      "Time",
      "Temp",
      "20.5",
      "\n1,20\n",
      "NaN",
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 200 }), (pieces) =>
        checkReading(readText(pieces.join(""))),
      ),
      { numRuns: 500 },
    );
  });

  it("a damaged log gives a reading or problems, and every row is accounted for", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...BASES),
        fc.array(damage, { minLength: 1, maxLength: 6 }),
        (base, damages) => {
          let log = base;
          for (const { at, cut, insert } of damages) {
            const place = at % (log.length + 1);
            log = log.slice(0, place) + insert + log.slice(place + cut);
          }
          checkReading(readText(log));
        },
      ),
      { numRuns: 300 },
    );
  });
});
