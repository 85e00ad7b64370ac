import type { TopLevelSpec } from "vega-lite";
import { describe, expect, it } from "vitest";
import { chartCurves } from "../../src/page/parts/chartCurves.ts";
import { chartReader } from "../../src/page/parts/chartReading.ts";

const axis = (field: string, title: string, domain: readonly [number, number]) => ({
  field,
  title,
  scale: { domain },
});

/** Two straight lines over ten hours in a plot of 1000 by 500 px: one from 0 to 1000 °C, one that stays at 250 °C. */
function chartOf(curves: readonly ((hours: number) => number)[]): TopLevelSpec {
  const encoding = {
    x: axis("elapsedHours", "Elapsed time (h)", [0, 10]),
    y: axis("tempC", "Temperature (°C)", [0, 1000]),
  };
  const layer = curves.map((tempC) => ({
    mark: { type: "line", clip: true },
    encoding,
    data: {
      values: Array.from({ length: 1001 }, (_, i) => ({
        elapsedHours: i / 100,
        tempC: tempC(i / 100),
      })),
    },
  }));
  return { width: 1000, height: 500, layer } as unknown as TopLevelSpec;
}

const TWO = chartReader(chartOf([(hours) => 100 * hours, () => 250]));
const press = (key: string, shiftKey = false) => ({ key, shiftKey });

describe("reading a chart", () => {
  it("begins at the beginning, or where it is told to", () => {
    expect(TWO.byKey(null, press("ArrowRight"), null)?.words).toBe("line 1, 0:00 h: 0 °C");
    expect(TWO.byKey(null, press("ArrowRight"), 300)?.words).toBe("line 1, 3:00 h: 300 °C");
  });

  it("goes a two-hundredth of the width with an arrow, a twentieth with Shift or a Page key", () => {
    const at = { curve: 0, row: 500 };
    // 10 h / 200 = 3 min; 10 h / 20 = 30 min.
    expect(TWO.byKey(at, press("ArrowRight"), null)?.words).toBe("line 1, 5:03 h: 505 °C");
    expect(TWO.byKey(at, press("ArrowLeft"), null)?.words).toBe("line 1, 4:57 h: 495 °C");
    expect(TWO.byKey(at, press("ArrowRight", true), null)?.words).toBe("line 1, 5:30 h: 550 °C");
    expect(TWO.byKey(at, press("PageUp"), null)?.words).toBe("line 1, 4:30 h: 450 °C");
  });

  it("stays at an end, and goes to the ends by Home and End", () => {
    const last = TWO.byKey({ curve: 0, row: 3 }, press("End"), null);
    expect(last?.words).toBe("line 1, 10:00 h: 1000 °C");
    expect(TWO.byKey(last, press("ArrowRight"), null)).toEqual(last);
    expect(TWO.byKey(last, press("Home"), null)?.words).toBe("line 1, 0:00 h: 0 °C");
  });

  it("changes to another curve at the same time, and round to the first again", () => {
    const at = { curve: 0, row: 700 };
    const other = TWO.byKey(at, press("ArrowDown"), null);
    expect(other?.words).toBe("line 2, 7:00 h: 250 °C");
    expect(TWO.byKey(other, press("ArrowDown"), null)?.words).toBe("line 1, 7:00 h: 700 °C");
    expect(TWO.byKey(at, press("ArrowUp"), null)?.words).toBe("line 2, 7:00 h: 250 °C");
  });

  it("reads the curve that is nearest to a pointer, and says where on the plot that is", () => {
    const low = TWO.near(800, 380);
    expect(low?.words).toBe("line 2, 8:00 h: 250 °C");
    expect([low?.x, low?.y]).toEqual([800, 375]);
    expect(TWO.near(800, 110)?.words).toBe("line 1, 8:00 h: 800 °C");
  });

  it("says nothing for other keys, and nothing at all of a chart without curves", () => {
    expect(TWO.byKey(null, press("Enter"), null)).toBeNull();
    const none = chartReader(chartOf([]));
    expect(none.byKey(null, press("ArrowRight"), null)).toBeNull();
    expect(none.near(10, 10)).toBeNull();
  });

  it("names a curve as the key does, over two lines too, and begins with the thickest", () => {
    const y = axis("tempC", "Temperature (°C)", [0, 1000]);
    const x = axis("elapsedHours", "Elapsed time (h)", [0, 10]);
    const rows = (from: number) => [
      { elapsedHours: 0, tempC: from },
      { elapsedHours: 10, tempC: from },
    ];
    const layer = (mark: object, values: readonly object[], more: object = {}) => ({
      mark: { type: "line", ...mark },
      encoding: { x, y, ...more },
      data: { values },
    });
    const text = { text: { field: "text" } };
    const spec = {
      width: 1000,
      height: 500,
      layer: [
        layer({ clip: true, stroke: "red", strokeWidth: 1 }, rows(100)),
        layer({ clip: true, stroke: "blue", strokeWidth: 3 }, rows(900)),
        layer({ stroke: "red" }, rows(800)),
        layer({ stroke: "blue" }, rows(400)),
        // 500 px for 1000 degrees: a line of the key is 17 px below the one before.
        layer(
          { type: "text" },
          [
            { tempC: 800, text: "half the strength" },
            { tempC: 766, text: "of mugs" },
            { tempC: 400, text: "measured" },
            { tempC: 340, text: "another entry" },
          ],
          text,
        ),
      ],
    };
    expect(chartCurves(spec as unknown as TopLevelSpec).map(({ name }) => name)).toEqual([
      "measured",
      "half the strength of mugs",
    ]);
  });
});
