import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pixelAt, valueAt } from "../../../src/core/charts/frame.ts";
import { densely, freestBox, spread } from "../../../src/core/charts/placement.ts";
import { clockText, evenTicks, hourTicks, roundUp } from "../../../src/core/charts/quantities.ts";
import { textWidth, wrappedToWidth } from "../../../src/core/charts/textWidth.ts";

const frame = { width: 100, height: 100, x: [0, 10], y: [0, 1000] } as const;
const box = (left: number, top: number) => ({ left, top, right: left + 20, bottom: top + 10 });

describe("spread", () => {
  it("leaves positions alone that are far enough apart", () => {
    expect(spread([10, 50, 90], 20, 0, 100)).toEqual([10, 50, 90]);
  });

  it("moves crowded positions up from the lower end", () => {
    expect(spread([98, 99, 100], 20, 0, 100)).toEqual([60, 80, 100]);
  });

  it("keeps order and distance, for any positions that have room", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 400, noNaN: true }), { maxLength: 12 }),
        (wanted) => {
          const placed = spread(wanted, 17, 0, 400);
          const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]!);
          const sorted = order.map((i) => placed[i]!);
          sorted.slice(1).forEach((position, i) => {
            expect(position - sorted[i]!).toBeGreaterThanOrEqual(17 - 1e-9);
          });
          for (const position of placed)
            expect(position >= -1e-9 && position <= 400 + 1e-9).toBe(true);
        },
      ),
    );
  });
});

describe("freestBox", () => {
  it("takes the first box that covers nothing", () => {
    const lines = densely([
      { x: 0, y: 15 },
      { x: 100, y: 15 },
    ]);
    expect(freestBox([box(0, 10), box(0, 50), box(0, 70)], { lines, boxes: [] }, frame)).toEqual(
      box(0, 50),
    );
  });

  it("keeps clear of other words and of the edges", () => {
    const candidates = [box(-10, 50), box(30, 50), box(70, 50)];
    expect(freestBox(candidates, { lines: [], boxes: [box(35, 52)] }, frame)).toEqual(box(70, 50));
  });

  it("takes the one that covers least when nothing is free", () => {
    const boxes = [box(0, 0), box(0, 50), box(10, 50)];
    expect(freestBox([box(0, 50), box(0, 0)], { lines: [], boxes }, frame)).toEqual(box(0, 0));
  });

  it("notices a line between two far corners", () => {
    const lines = densely([
      { x: 0, y: 0 },
      { x: 100, y: 100 },
    ]);
    expect(freestBox([box(45, 45), box(70, 5)], { lines, boxes: [] }, frame)).toEqual(box(70, 5));
  });
});

describe("frame", () => {
  it("goes to pixels and back, for any place", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: -2000, max: 2000, noNaN: true }),
        (x, y) => {
          const back = valueAt(frame, pixelAt(frame, x, y));
          expect(Math.abs(back.x - x)).toBeLessThan(1e-9);
          expect(Math.abs(back.y - y)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});

describe("ticks and words", () => {
  it("ticks whole hours over a day", () => {
    expect(hourTicks(0, 24)).toEqual([0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24]);
    expect(hourTicks(-3.2, 2)).toEqual([-3, -2.5, -2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2]);
  });

  it("ticks temperatures and rates evenly", () => {
    expect(evenTicks(0, 1300, 8)).toEqual([0, 200, 400, 600, 800, 1000, 1200]);
    expect(evenTicks(32, 2400, 8)).toEqual([500, 1000, 1500, 2000]);
  });

  it("rounds the top of an axis up to a round value", () => {
    expect([7, 101, 230, 250].map(roundUp)).toEqual([8, 120, 250, 250]);
  });

  it("reads a clock round midnight", () => {
    expect([0, 86399, 90000, -60].map(clockText)).toEqual(["00:00", "00:00", "01:00", "23:59"]);
  });

  it("takes an m for wider than an i", () => {
    expect(textWidth("m", 13)).toBeGreaterThan(2 * textWidth("i", 13));
  });

  it("breaks a long name at spaces and cuts what is left over", () => {
    expect(wrappedToWidth("one two", 10, 500, 2)).toEqual(["one two"]);
    expect(wrappedToWidth("thermocouple behind the wall", 13, 100, 2)).toEqual([
      "thermocouple",
      "behind the wall",
    ]);
    const [first, second] = wrappedToWidth(
      "a very long name that goes on and on without any end",
      13,
      90,
      2,
    );
    expect(first).toBe("a very long");
    expect(second).toMatch(/…$/);
  });
});
