import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { inFull } from "../support/undunted.ts";

const BISQUE = "logs/2026-02-07-a.csv";
const PRICED = ["--kiln", BISQUE, "--power", "10.5kW", "--tariff", "0.30"];
const flat = (text: string) => text.replaceAll(/\s+/g, " ");

describe("undunted draft --kiln", () => {
  it("says how the kiln will go, when it is cool by the clock, and what it costs", () => {
    const given = ["draft", "schedules/cone-5-slow-cool.yaml", ...PRICED];
    const ran = inFull([...given, "--start", "2026-12-01 18:00"]);
    expect(ran.exit).toBe(0);
    expect(ran.out).toContain("On your kiln");
    expect(flat(ran.out)).toMatch(/at 100 °C about \d+:\d\d after the start \(\d\d:\d\d, day 3\)/);
    expect(flat(ran.out)).toMatch(/electricity about \d+ kWh, \d+ at the tariff given/);
    for (const line of ran.out.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  it("answers with a document that fits its schema, cost at the tariff", () => {
    const validate = new Ajv2020({ strict: false }).compile(
      JSON.parse(inFull(["schema", "draft"]).out),
    );
    const ran = inFull(["draft", "schedules/cone-5-slow-cool.yaml", ...PRICED, "--json"]);
    const document = JSON.parse(ran.out);
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(document.onYourKiln.cost).toBeCloseTo(0.3 * document.energyKWh, 6);
    expect(document.onYourKiln.cooledTo.map(({ tempC }: { tempC: number }) => tempC)).toEqual([
      200, 100, 50,
    ]);
  });

  it("says which of wattage and output column is missing for the electricity", () => {
    const ran = inFull(["draft", "schedules/cone-5-glaze.yaml", "--kiln", BISQUE]);
    expect(flat(ran.out)).toContain("electricity not known; missing: the wattage from the plate");
  });

  it("answers no when worn elements overshoot the cone by lingering", () => {
    const ran = inFull([
      "draft",
      "schedules/cone-5-slow-cool.yaml",
      "--kiln",
      "logs/2026-06-06-a.csv",
    ]);
    expect(ran.exit).toBe(1);
    expect(flat(ran.out)).toContain("On your kiln cone 5 is overshot by a whole cone");
  });

  it("shows the prediction for a new schedule, which the kiln follows", () => {
    const ran = inFull(["draft", "--new", "--cone", "6", ...PRICED]);
    expect(ran.exit).toBe(0);
    expect(flat(ran.out)).toContain("cone as planned, cone 6");
    expect(ran.out).not.toContain("falls behind");
  });

  it("refuses a new schedule for a cone out of reach, with how far it gets and what helps", () => {
    const given = ["draft", "--new", "--cone", "10", "--kiln", "logs/2026-06-06-a.csv"];
    const ran = inFull(given);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("(schedule/kiln-too-weak)");
    expect(ran.err).toMatch(/up to 1\d{3} °C only/);
    expect(ran.err).toContain("by common practice new elements");
  });

  it.each([
    [["--power", "10.5kW"], "command/no-kiln"],
    [["--tariff", "0.30"], "command/no-kiln"],
    [["--kiln", BISQUE, "--tariff", "30 ct"], "command/tariff"],
  ])("refuses %j", (options, code) => {
    const ran = inFull(["draft", "schedules/cone-5-glaze.yaml", ...options]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain(`(${code})`);
  });
});
