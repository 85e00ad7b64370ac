import { describe, expect, it } from "vitest";
import { crackBands } from "../../../src/core/photo/crackBands.ts";
import { type Mask, thinnedMask, withoutSpurs } from "../../../src/core/photo/crackLines.ts";
import { crossingsAlong, lineThrough, testLines } from "../../../src/core/photo/crossings.ts";

/** A mask from rows of text: # is a line. */
function maskOf(rows: readonly string[]): Mask {
  const width = rows[0]?.length ?? 0;
  return {
    width,
    height: rows.length,
    bits: Uint8Array.from(rows.join(""), (mark) => (mark === "#" ? 1 : 0)),
  };
}

function rowsOf({ width, bits }: Mask): readonly string[] {
  const text = Array.from(bits, (bit) => (bit === 1 ? "#" : ".")).join("");
  return text.match(new RegExp(`.{${width}}`, "g")) ?? [];
}

function uprights(width: number, height: number, at: readonly number[]): Mask {
  const row = Array.from({ length: width }, (_, x) => (at.includes(x) ? "#" : ".")).join("");
  return maskOf(Array.from({ length: height }, () => row));
}

const level = (y: number, width: number) => ({
  from: { x: 0.5, y },
  to: { x: width - 0.5, y },
  angleDeg: 0,
});

describe("crossings along a test line", () => {
  it("are one for each crack, at its place", () => {
    const bands = crackBands(uprights(100, 20, [20, 50, 80]), 2);
    const { places } = crossingsAlong(bands, level(10.5, 100), 8);
    expect(places.map(({ x }) => Math.round(x - 0.5))).toEqual([20, 50, 80]);
  });

  it("are one where two cracks lie closer than they can be told apart", () => {
    const bands = crackBands(uprights(100, 20, [20, 26, 80]), 2);
    expect(crossingsAlong(bands, level(10.5, 100), 8).places).toHaveLength(2);
    expect(crossingsAlong(bands, level(10.5, 100), 4).places).toHaveLength(3);
  });

  it("tell how many pairs are just far enough apart", () => {
    const bands = crackBands(uprights(100, 20, [20, 32, 80]), 2);
    expect(crossingsAlong(bands, level(10.5, 100), 8).near).toBe(1);
  });

  it("count a crack once that wriggles about the test line", () => {
    const rows = Array.from({ length: 21 }, (_, y) =>
      Array.from({ length: 100 }, (_, x) =>
        y === 10 + (Math.floor(x / 10) % 2) && x > 2 ? "#" : ".",
      ).join(""),
    );
    expect(crossingsAlong(crackBands(maskOf(rows), 3), level(10.5, 100), 4).places).toHaveLength(1);
  });

  it("never slip through a slanting line one place wide", () => {
    const rows = Array.from({ length: 60 }, (_, y) =>
      Array.from({ length: 60 }, (_, x) => (x === y ? "#" : ".")).join(""),
    );
    const bands = crackBands(maskOf(rows), 2);
    for (const angleDeg of [0, 15, 60, 90, 120, 135, 150]) {
      const line = lineThrough({ x: 30.7, y: 30.2 }, angleDeg, {
        width: 60,
        height: 60,
        margin: 1,
      });
      if (line === null) throw new Error("no line");
      expect(crossingsAlong(bands, line, 4).places, `${angleDeg}°`).toHaveLength(1);
    }
  });
});

describe("thinning", () => {
  const cross = maskOf([
    "...............",
    "......###......",
    "......###......",
    "......###......",
    "......###......",
    "......###......",
    ".#############.",
    ".#############.",
    ".#############.",
    "......###......",
    "......###......",
    "......###......",
    "......###......",
    "......###......",
    "...............",
  ]);

  it("leaves lines one place wide that still meet", () => {
    const thin = rowsOf(thinnedMask(cross));
    for (const row of [4, 10]) expect(thin[row]?.match(/#/g)).toHaveLength(1);
    expect(thin[7]?.match(/#/g)?.length).toBeGreaterThan(7);
  });

  it("then loses twigs and specks, and keeps long lines", () => {
    const drawn = maskOf([
      "....................",
      ".......#............",
      ".......#............",
      ".##################.",
      "....................",
      "...........##.......",
      "....................",
    ]);
    const kept = rowsOf(withoutSpurs(drawn, { spur: 3, least: 6 }));
    expect(kept[1]).not.toContain("#");
    expect(kept[5]).not.toContain("#");
    expect(kept[3]).toContain("################");
  });
});

describe("test lines", () => {
  it("stay inside the margin, for every direction", () => {
    const lines = testLines({
      width: 200,
      height: 120,
      anglesDeg: [0, 30, 90, 135],
      apart: 20,
      margin: 5,
    });
    for (const { from, to } of lines)
      for (const { x, y } of [from, to]) {
        expect(Math.min(x, y, 200 - x, 120 - y)).toBeGreaterThanOrEqual(5 - 1e-9);
      }
    expect(lines.filter(({ angleDeg }) => angleDeg === 0)).toHaveLength(6);
    expect(lines.filter(({ angleDeg }) => angleDeg === 90)).toHaveLength(10);
  });
});
