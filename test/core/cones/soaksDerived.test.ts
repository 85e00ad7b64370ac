import { describe, expect, it } from "vitest";
import { coneModel } from "../../../src/core/cones/coneModel.ts";
import { soakHours } from "../../support/soaks.ts";

function between(softer: string, harder: string): number {
  return soakHours(coneModel("self-supporting", softer), coneModel("self-supporting", harder));
}

describe("derived: hours of soak to a harder cone", () => {
  // An independent program's hours for the same constants, printed to two or three digits.
  it.each([
    ["05", "04", 2.5, 0.1],
    ["5", "6", 1.21, 0.02],
    ["6", "7", 0.31, 0.02],
    ["9", "10", 0.68, 0.02],
    ["10", "11", 0.26, 0.02],
    ["4", "6", 3.9, 0.1],
    ["6", "8", 0.71, 0.02],
  ])("from cone %s to cone %s takes %d h ± %d h", (softer, harder, hours, tolerance) => {
    expect(Math.abs(between(softer, harder) - hours)).toBeLessThan(tolerance);
  });
});
