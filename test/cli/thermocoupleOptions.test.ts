import { describe, expect, it } from "vitest";
import { logOptionsFrom } from "../../src/cli/options.ts";

describe("the options of a log in millivolts", () => {
  it.each([
    ["25C", 25],
    ["77F", 25],
    ["25", 25],
  ])("--cold-junction %s is %d °C", (coldJunction, tempC) => {
    const options = logOptionsFrom({ thermocouple: "S", coldJunction });
    expect(options).toEqual({ ok: true, value: { thermocouple: "S", coldJunctionC: tempC } });
  });

  it("refuses a cold junction that is no temperature", () => {
    const options = logOptionsFrom({ coldJunction: "warm" });
    expect(options.ok ? null : options.problems[0]?.where).toBe("--cold-junction");
  });

  it("says nothing to the reader of what was not given", () => {
    expect(logOptionsFrom({})).toEqual({ ok: true, value: {} });
  });
});
