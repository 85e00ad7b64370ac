import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { LogOptions } from "../../../src/core/log/reading/LogReading.ts";
import { choiceOf, pairs, problemsOf, reading } from "./logBuilder.ts";

/**
 * Firings of 10 °C each 4 min up and 20 °C down, 30 to 1220 °C, in the emf that NIST Monograph 175 prints
 * less that of terminals at 25 °C, which it prints as 1.000 (K), 0.143 (S) and −0.002 mV (B).
 */
function bytesOf(name: string): Uint8Array {
  return readFileSync(new URL(`../../fixtures/logs/${name}`, import.meta.url));
}

const K_LOG = bytesOf("millivolts-type-k-cold-junction.csv");
const S_LOG = bytesOf("millivolts-type-s.csv");
const B_LOG = bytesOf("millivolts-type-b.csv");
const TYPE_S: Partial<LogOptions> = { thermocouple: "S", coldJunctionC: 25 };

/** The temperatures that the fixture was made from [°C]. */
const TRUE_C = [
  ...Array.from({ length: 120 }, (_, i) => 30 + 10 * i),
  ...Array.from({ length: 59 }, (_, i) => 1200 - 20 * i),
];

describe("a log in millivolts", () => {
  it("of type K with its cold junction beside it gives the temperatures within 0.03 °C (0.001 mV)", () => {
    const log = reading(K_LOG, { thermocouple: "K" });
    const found = pairs(log, "Kiln");
    expect(found.length).toBe(TRUE_C.length);
    for (const [i, [seconds, tempC]] of found.entries()) {
      expect(seconds).toBe(240 * i);
      expect(Math.abs(tempC - (TRUE_C[i] as number))).toBeLessThan(0.03);
    }
    expect(choiceOf(log, "unit")).toBe("mV of type K");
    expect(choiceOf(log, "cold junction")).toBe("Cold junction (°C)");
    expect(log.channels.map(({ role }) => role)).toEqual(["temperature", "cold-junction"]);
    expect(log.thermocouple).toBe("K");
  });

  it("of type S with two zones, a unit row and commas is read with terminals that are told, within 0.2 °C", () => {
    const log = reading(S_LOG, TYPE_S);
    // Two cells rounded to 0.001 mV over 6 µV/°C when cold.
    for (const zone of ["Top", "Bottom"])
      for (const [i, [, tempC]] of pairs(log, zone).entries())
        expect(Math.abs(tempC - (TRUE_C[i] as number))).toBeLessThan(0.2);
    expect(choiceOf(log, "cold junction")).toBe("25 °C");
  });

  it("of type B leaves out and counts what lies below 250 °C, where it gives no single temperature", () => {
    const log = reading(B_LOG, { thermocouple: "B", coldJunctionC: 25 });
    const above = TRUE_C.filter((tempC) => tempC >= 250);
    // 250 °C itself is 0.291 mV and may round either way.
    expect(Math.abs(pairs(log).length - above.length)).toBeLessThanOrEqual(2);
    for (const [, tempC] of pairs(log)) expect(tempC).toBeGreaterThanOrEqual(250);
    const said = log.decisions.find(({ about }) => about === "unit")?.because;
    expect(said).toContain(`${TRUE_C.length - pairs(log).length} cells below 250 °C left out`);
    expect(log.rows.accepted + log.rows.rejected.length).toBe(log.rows.total);
  });

  it("asks for type and terminals, and says what each type would make of it", () => {
    expect(problemsOf(S_LOG)).toBe(
      `log.csv: "Top", "Bottom" hold millivolts, up to 12.05 mV, and nothing says of which thermocouple: S would peak at 1220 °C; R would peak at 1125 °C, if the terminals are at 25 °C
  expected  the letter of its type, from the plug, the lead or the order
  try       say it with --thermocouple K (or N, S, R, B, J, T), or as thermocouple.type in the firing record     (log/thermocouple-unknown)
log.csv: holds millivolts, and no column says how warm the terminals were
  expected  the temperature of the terminals at which the thermocouple ends, as a column or told
  try       say it with --cold-junction 25C, or as log.coldJunction in the firing record; 0C when the logger has added it already     (log/cold-junction-unknown)`,
    );
  });

  it("names K at 1220 °C and the types it would be over the range of, never choosing", () => {
    const said = problemsOf(K_LOG);
    expect(said).toContain("K would peak at 1220 °C");
    expect(said).toContain("it is over the range of N, S, R, B, T");
    expect(said).not.toContain("cold-junction-unknown");
  });

  it("adds the emf of the terminals and not their degrees: without it S reads 12 °C less at the peak, not 25", () => {
    const plain = pairs(reading(S_LOG, { ...TYPE_S, coldJunctionC: 0 }), "Top");
    const peak = Math.max(...plain.map(([, tempC]) => tempC));
    // 0.143 mV over the 12.0 µV/°C of type S at 1220 °C, which NIST Monograph 175 prints as 12.071 − 11.951 mV for 10 °C.
    expect(Math.abs(1220 - peak - 0.143 / 0.012)).toBeLessThan(0.3);
  });

  it("reads a cold junction in °F, and one without a unit by its size", () => {
    const lines = (head: string, cold: string) =>
      [
        head,
        `0,0.203,${cold}`,
        `240,0.612,${cold}`,
        `480,8.763,${cold}`,
        `720,32.519,${cold}`,
      ].join("\n");
    for (const [head, cold] of [
      ["Time (s),TC (mV),CJ (°F)", "77"],
      ["Time (s),TC_mV,Cold junction", "77"],
      ["Time (s),TC (mV),CJ", "25"],
    ] as const) {
      const log = reading(lines(head, cold), { thermocouple: "K" });
      // K prints 1.203, 1.612, 9.763 (240.4 °C) and 33.519 mV (805.8 °C).
      expect(pairs(log, "TC")[0]?.[1]).toBeCloseTo(30, 1);
      expect(pairs(log, "TC")[1]?.[1]).toBeCloseTo(40, 1);
    }
    expect(problemsOf(lines("Time (s),TC (mV),CJ", "55"), { thermocouple: "K" })).toContain(
      '"CJ" is about 55, which could be °C or °F',
    );
  });

  it("keeps the told unit of degrees away from what was millivolts", () => {
    const log = reading(S_LOG, { ...TYPE_S, unit: "F" });
    expect(Math.max(...pairs(log, "Top").map(([, tempC]) => tempC))).toBeCloseTo(1220, 0);
  });

  it("leaves columns in degrees as they are, and millivolts beside them alone unless they are named", () => {
    const log = [
      "Time (s),Kiln (°C),Spare (mV)",
      ...Array.from({ length: 40 }, (_, i) => `${600 * i},${25 + 10 * i},${(0.41 * i).toFixed(3)}`),
    ].join("\n");
    const both = { thermocouple: "K", coldJunctionC: 25 } as const;
    expect(pairs(reading(log, both))[3]).toEqual([1800, 55]);
    expect(reading(log, both).channels.map(({ name, role }) => `${name}: ${role}`)).toEqual([
      "Kiln (°C): temperature",
      "Spare (mV): other",
    ]);
    const named = reading(log, { ...both, columns: ["Spare (mV)"] });
    expect(pairs(named)[0]?.[1]).toBeCloseTo(25, 6);
  });

  it("does not take a logger's own 30 °C for the kiln when the kiln is in millivolts", () => {
    const log = [
      "Time (s),Logger (°C),Kiln (mV)",
      ...Array.from(
        { length: 40 },
        (_, i) => `${600 * i},${30 + (i % 3)},${(1.21 * i).toFixed(3)}`,
      ),
    ].join("\n");
    expect(problemsOf(log)).toContain('"Kiln (mV)" holds millivolts, up to 47.19 mV');
  });

  it("refuses a type that never gives so much: K at 48 mV told to be S, 18.69 mV at 1768 °C", () => {
    expect(problemsOf(K_LOG, { thermocouple: "S" })).toBe(
      `log.csv: "Kiln (mV)" holds up to 48.56 mV, and over a tenth of it is outside the range of type S
  expected  at most 18.69 mV, which type S gives at 1768 °C
  try       check the letter on the plug or the lead, and say that with --thermocouple or in the firing record     (log/thermocouple-wrong)`,
    );
  });

  it("counts cells beyond the range of the type as an open circuit, with the range named", () => {
    const open = new TextDecoder().decode(S_LOG).replace(/12,048;12,048/g, "78,125;12,048");
    expect(open).toContain("78,125");
    const log = reading(open, TYPE_S);
    expect(log.faults.map(({ what }) => what).join()).toContain(
      "Top has 1 cell without a number (millivolts outside the range of type S)",
    );
  });

  it.each([
    [{ thermocouple: "E" as "K" }, '--thermocouple is "E"'],
    [{ coldJunctionC: 400 }, "--cold-junction is 400"],
  ])("refuses %o", (options, said) => {
    expect(problemsOf(S_LOG, options)).toContain(said);
  });

  it("does not take a controller's output MV, a heat flux or a battery for a thermocouple", () => {
    const rows = Array.from({ length: 40 }, (_, i) => `${60 * i},${(1.37 + i / 7).toFixed(2)}`);
    for (const head of ["Time (s),MV", "Time (s),Heat flux (mV)", "Time (s),Battery (mV)"])
      expect(problemsOf([head, ...rows].join("\n"))).not.toContain("thermocouple-unknown");
  });
});
