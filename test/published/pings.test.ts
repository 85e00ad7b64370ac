import { describe, expect, it } from "vitest";
import { omoriShare } from "../../src/core/pings/omoriLaw.ts";
import { slowCrackExponent } from "../../src/core/pings/slowCrackExponent.ts";

describe("clicks of slow crack growth", () => {
  it.each([
    // p = 1 − m/(n − 2), worked by hand: 1 − 5/16, 1 − 8/16, 1 − 10/16.
    [5, 18, 0.6875],
    [8, 18, 0.5],
    [10, 18, 0.375],
  ])("thin out, for m %i and n %i, with p %d", (m, n, p) => {
    expect(slowCrackExponent(m, n)).toBe(p);
  });

  it("have no exponent where the power of crack speed is 2 or less", () => {
    expect(() => slowCrackExponent(5, 2)).toThrow(RangeError);
  });
});

describe("shares of a day of pings, p 0.75 and c 2 min", () => {
  // The law integrated by hand: ((t + c)^¼ − c^¼)/((24 h + c)^¼ − c^¼), in per cent to the half.
  const law = { p: 0.75, c: 120 };
  const share = (hours: number) => 100 * omoriShare(law, hours * 3600, 86_400);
  it.each([
    ["first 10 min", 0, 1 / 6, 13.5],
    ["10 min to 1 h", 1 / 6, 1, 19],
    ["1 to 4 h", 1, 4, 23],
    ["4 to 24 h", 4, 24, 45],
  ])("%s", (_, from, to, percent) => {
    expect(Math.abs(share(to) - share(from) - percent)).toBeLessThan(0.5);
  });
});
