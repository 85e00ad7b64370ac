import fc from "fast-check";
import { expect, it } from "vitest";
import { selected } from "../../../src/core/math/statistics.ts";

it("gives the value that stands at a place of the sorted values, for any values", () => {
  const few = fc.integer({ min: -3, max: 3 });
  const values = fc.oneof(
    fc.array(few, { minLength: 1, maxLength: 400 }),
    fc.array(fc.double({ noNaN: true }), { minLength: 1, maxLength: 400 }),
  );
  fc.assert(
    fc.property(values, fc.nat(), (list, at) => {
      const place = at % list.length;
      const sorted = list.toSorted((a, b) => a - b);
      // Plus 0, since −0 and 0 are equal and may stand either way.
      expect(selected(Float64Array.from(list), place) + 0).toBe((sorted[place] as number) + 0);
    }),
    { numRuns: 500 },
  );
});

it("finds its way through a hundred thousand values that rise, fall or are one", () => {
  const count = 100_000;
  const half = count / 2;
  expect(
    selected(
      Float64Array.from({ length: count }, (_, i) => i),
      half,
    ),
  ).toBe(half);
  expect(
    selected(
      Float64Array.from({ length: count }, (_, i) => count - i),
      0,
    ),
  ).toBe(1);
  expect(selected(new Float64Array(count).fill(7), half)).toBe(7);
});
