import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { trialLines } from "../../../src/core/photo/trialEntry.ts";
import { FiringRecordFile } from "../../../src/core/record/recordFormat.ts";
import { photographed, type Segment, squareNet, voronoi } from "../../support/mosaics.ts";
import { cracksIn, INTERCEPT_PX, measured, SIDE, SIZE } from "./measuredMosaic.ts";

const NET = voronoi(SIZE, (Math.PI / 4 / INTERCEPT_PX) ** 2, 3);

function refusalOf(segments: readonly Segment[], shot: object): string | undefined {
  const result = measured(photographed(segments, { ...SIZE, lineWidth: 4, ...shot }));
  return result.ok ? undefined : result.problems[0]?.code;
}

describe("a tile without cracks", () => {
  const specks = Array.from({ length: 60 }, (_, i) => {
    const [x, y] = [(i * 97) % SIDE, (i * 211) % SIDE];
    return { ax: x, ay: y, bx: x + 2, by: y + 1 };
  });

  it.each([
    ["even ground", []],
    ["ground with dark specks", specks],
    ["ground in uneven light, with noise", [], { falloff: 0.5, noise: 8 }],
  ])("is an answer, never a spacing: %s", (_, segments: readonly Segment[], shot: object = {}) => {
    const result = measured(photographed(segments, { ...SIZE, lineWidth: 4, ...shot }));
    expect(result).toMatchObject({ ok: true, value: { cracks: null } });
  });

  it("says what would have been seen, and a crack twice as wide is", () => {
    const result = measured(photographed([], { ...SIZE, lineWidth: 4, noise: 4 }));
    const leastPx = result.ok ? result.value.leastVisibleMm / 0.1 : 0;
    expect(leastPx).toBeGreaterThan(0);
    const cracks = cracksIn(
      NET,
      { lineWidth: 2 * leastPx, contrast: 0.5, noise: 4, blur: 0.4 },
      { lineWidthPx: 3 },
    );
    expect(cracks.crossings).toBeGreaterThan(100);
  });

  it("goes into the record as uncracked", () => {
    const result = measured(photographed([], { ...SIZE, lineWidth: 4 }));
    if (!result.ok) throw new Error("refused");
    expect(parse(trialLines(result.value).join("\n"))).toMatchObject({ cracked: "none" });
  });
});

describe("wide crackle, five to ten cells across", () => {
  const ACROSS = [6, 7.5, 9.4];
  /** Mean intercept of all such nets, not of the piece in the picture: π/4 of the cell's side. */
  const nets = ACROSS.flatMap((across) =>
    [1, 2].map((seed) => {
      const interceptPx = ((Math.PI / 4) * SIDE) / across;
      return { interceptPx, segments: voronoi(SIZE, (Math.PI / 4 / interceptPx) ** 2, seed) };
    }),
  );

  it("has a value with a wide range, which holds the truth in about 95 of 100 pictures", () => {
    const found = nets.flatMap(({ interceptPx, segments }) => {
      const result = measured(photographed(segments, { ...SIZE, lineWidth: 4 }));
      return result.ok && result.value.cracks ? [{ interceptPx, cracks: result.value.cracks }] : [];
    });
    // A net may be a little wider than meant, and then too wide.
    expect(found.length).toBeGreaterThanOrEqual(5);
    const inside = found.filter(({ interceptPx, cracks: { intervalMm } }) => {
      const truth = interceptPx / 10;
      return intervalMm.low < truth && truth < intervalMm.high;
    });
    // Binomial at 0.95: more than one outside of 6 comes three times in 100.
    expect(inside.length).toBeGreaterThanOrEqual(found.length - 1);
    for (const { cracks } of found) expect(cracks.relativeAccuracy).toBeGreaterThan(0.1);
  });
});

describe("a picture that cannot bear it is refused", () => {
  it.each([
    ["photo/lines-too-thin", NET, { lineWidth: 1.6, blur: 0.4 }],
    ["photo/faint-cracks", NET, { contrast: 0.03, noise: 0.3 }],
    ["photo/spacing-too-small", squareNet(SIZE, 24, 0.3), { lineWidth: 4 }],
    ["photo/too-few-cells", squareNet(SIZE, SIDE / 4, 0.3), {}],
    ["photo/too-blurred", squareNet(SIZE, 36, 0.3), { lineWidth: 4, blur: 5 }],
    ["photo/too-small", NET, { width: 150, height: 150 }],
  ])("%s", (code, segments, shot) => {
    expect(refusalOf(segments, shot)).toBe(code);
  });

  it.each([
    ["photo/too-bright", 255, 0],
    ["photo/too-dark", 3, 0],
    ["photo/one-tone", 128, 0],
  ])("%s", (code, level) => {
    const grey = new Uint8Array(SIDE * SIDE).fill(level);
    const result = measured({ ...SIZE, grey });
    expect(result).toMatchObject({ ok: false, problems: [{ code, where: "tile.jpg" }] });
  });
});

describe("measurePhoto", () => {
  it("doubles every length when a pixel stands for twice as much", () => {
    const picture = photographed(NET, { ...SIZE, lineWidth: 4 });
    const [one, two] = [0.1, 0.2].map((mmPerPx) => measured(picture, {}, { mmPerPx }));
    if (!one?.ok || !two?.ok) throw new Error("refused");
    expect((two.value.cracks?.pitchMm ?? 0) / (one.value.cracks?.pitchMm ?? 1)).toBeCloseTo(2, 9);
    expect(two.value.widthMm).toBe(128);
  });

  it("finds the same in a picture turned by a right angle, within 2 % (other pixels)", () => {
    const turned = NET.map(({ ax, ay, bx, by }) => ({
      ax: SIDE - ay,
      ay: ax,
      bx: SIDE - by,
      by: bx,
    }));
    expect(cracksIn(turned).interceptMm / cracksIn(NET).interceptMm).toBeCloseTo(1, 1.7);
  });

  it("makes a picture smaller where the cracks are wide, and says so", () => {
    const wide = photographed(squareNet(SIZE, 56, 0.3), { ...SIZE, lineWidth: 10.5 });
    const result = measured(wide);
    if (!result.ok) throw new Error(result.problems[0]?.what);
    expect(result.value.found.factor).toBe(2);
    expect(result.value.choices).toContainEqual(
      expect.objectContaining({ what: "made smaller", value: "2 times" }),
    );
  });

  it("warns of slant unless four corners took it out", () => {
    const picture = photographed(NET, { ...SIZE, lineWidth: 4 });
    const topics = (isSquared: boolean) => {
      const result = measured(picture, {}, { isSquared });
      return result.ok ? result.value.findings.map(({ topic }) => topic) : [];
    };
    expect(topics(false)).toContain("slant");
    expect(topics(true)).not.toContain("slant");
  });

  it("says so when the whole picture was measured", () => {
    const picture = photographed(NET, { ...SIZE, lineWidth: 4 });
    const result = measured(picture, {}, { isWhole: true });
    expect(result).toMatchObject({
      value: {
        findings: expect.arrayContaining([expect.objectContaining({ topic: "the whole picture" })]),
      },
    });
  });

  it("sets a person's counts beside its own, and cautions when they differ by a tenth", () => {
    const picture = photographed(NET, { ...SIZE, lineWidth: 4 });
    const first = measured(picture);
    const counts = first.ok
      ? first.value.cracks?.checkLines.map(({ crossings }) => crossings.places.length)
      : [];
    const [a, b] = counts as [number, number];
    const findingFor = (ownCounts: readonly [number, number]) => {
      const result = measured(picture, { ownCounts });
      return result.ok
        ? result.value.findings.find(({ topic }) => topic === "your own count")
        : undefined;
    };
    expect(findingFor([a, b])?.severity).toBe("note");
    expect(findingFor([a + 3, b - 3])?.severity).toBe("caution");
  });

  it("says of every wish that it was yours", () => {
    const picture = photographed(NET, { ...SIZE, lineWidth: 4 });
    const result = measured(picture, {
      lineWidthPx: 4,
      backgroundPx: 50,
      thresholdShare: 0.3,
      mergePx: 6,
      anglesDeg: [0, 90],
      pattern: "net",
    });
    if (!result.ok) throw new Error("refused");
    const asSaid = result.value.choices.filter(({ because }) => because === "as you said");
    expect(asSaid).toHaveLength(6);
  });

  it("writes lines that a trial of a firing record takes", () => {
    const result = measured(photographed(NET, { ...SIZE, lineWidth: 4 }));
    if (!result.ok) throw new Error("refused");
    const trial = {
      piece: "A1",
      clay: "white",
      glaze: "ice",
      coat: "0.5 mm",
      glazedSides: "one",
      ...parse(trialLines(result.value).join("\n")),
    };
    const record = { formatVersion: 1, title: "a firing", trials: [trial] };
    expect(FiringRecordFile.safeParse(record).error?.issues ?? []).toEqual([]);
    expect(trial.spacingFrom).toBe("photo");
    expect(trial.spacingRange).toHaveLength(2);
  });

  it("does not count one crack across the tile as a spacing", () => {
    const one = [{ ax: 0, ay: 200, bx: SIDE, by: 400 }];
    expect(refusalOf(one, {})).toBe("photo/too-few-cells");
  });
});
