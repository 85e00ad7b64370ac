import { describe, expect, it } from "vitest";
import { seededEven, seededNormal } from "../../../src/core/math/distributions.ts";

describe("a stream of normal numbers", () => {
  it("is what Box and Muller make of the even numbers of the same seed", () => {
    const even = seededEven(7);
    const normal = seededNormal(7);
    for (let i = 0; i < 5000; i++) {
      const radius = Math.sqrt(-2 * Math.log(1 - even()));
      expect(Math.abs(normal() - radius * Math.cos(2 * Math.PI * even()))).toBeLessThan(2e-15);
    }
  });
});
