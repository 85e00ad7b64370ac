import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  crackingLoad,
  releaseNumber,
  stressAtLoad,
  tableLine,
  Z_FINITE_WALL,
  Z_THICK_BODY,
} from "../../../src/core/glaze/channelCracking.ts";
import {
  leastSpacing,
  loadForSpacing,
  spacingLine,
  spacingTableEnds,
} from "../../../src/core/glaze/crackSpacing.ts";
import type { Glazing } from "../../../src/core/glaze/laminate.ts";
import {
  FREE_SPACINGS,
  HELD_SPACINGS,
  THICK_SPACINGS,
} from "../../../src/core/glaze/spacingTables.ts";
import { STIFFNESS_TABLES } from "../../../src/core/glaze/stiffnessTables.ts";
import { leastPull, stoppingDepthMm } from "../../../src/core/glaze/throughCrack.ts";
import { BOTH_DEPTHS, FREE_DEPTHS, RING_DEPTHS } from "../../../src/core/glaze/throughTables.ts";

const falls = (values: readonly number[]) =>
  values.every((value, i) => i === 0 || value < (values[i - 1] as number));
const rises = (values: readonly number[]) => falls(values.map((value) => -value));

describe("the tables of crack energy", () => {
  it("fall with the stiffness of the body and with the wall", () => {
    expect(falls(Z_THICK_BODY.map(([, z]) => z))).toBe(true);
    for (const { rows } of Z_FINITE_WALL) expect(falls(rows.map(([, z]) => z))).toBe(true);
  });

  it("come down to a thick body's within 2 % at a wall of 40 coats", () => {
    for (const { stiffnessRatio, rows } of Z_FINITE_WALL) {
      const thick = tableLine(Z_THICK_BODY, stiffnessRatio).value;
      expect((rows.at(-1)?.[1] as number) / thick - 1).toBeLessThan(0.02);
    }
  });

  it("give the load of each spacing from Z there and at twice of it, within 1e-3 of a printed Z", () => {
    for (const { rows } of [...THICK_SPACINGS, ...HELD_SPACINGS, ...FREE_SPACINGS])
      for (const [spacing, z, load] of rows) {
        const twice = rows.find(([other]) => other === 2 * spacing);
        if (twice !== undefined) expect(Math.abs(2 * z - twice[1] - 1 / load)).toBeLessThan(1e-3);
      }
  });

  it("cracks far apart set free what a lone crack does, within 2.5 %", () => {
    for (const { stiffnessRatio, wallOverCoat, rows } of [
      ...THICK_SPACINGS,
      ...HELD_SPACINGS,
      ...FREE_SPACINGS,
    ]) {
      const alone = releaseNumber({ stiffnessRatio, wallOverCoat }).z;
      expect(Math.abs((rows.at(-1)?.[1] as number) / alone - 1)).toBeLessThan(0.025);
    }
  });

  it("of depth rise in places and hold every wall in order", () => {
    for (const tables of [BOTH_DEPTHS, RING_DEPTHS, FREE_DEPTHS]) {
      expect(tables.map(({ wallOverCoat }) => wallOverCoat)).toEqual([4, 6, 8, 10, 12, 16, 20]);
      for (const { rows } of tables) expect(rises(rows.map(([depth]) => depth))).toBe(true);
    }
  });
});

describe("reading off the tables", () => {
  it("a lone crack's Z lies between the rows beside it, for any body and wall", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        fc.double({ min: 2, max: 1e6, noNaN: true }),
        (stiffnessRatio, wallOverCoat) => {
          const { z, past } = releaseNumber({ stiffnessRatio, wallOverCoat });
          const thick = releaseNumber({ stiffnessRatio, wallOverCoat: Number.POSITIVE_INFINITY }).z;
          expect(past).toEqual([]);
          expect(z).toBeGreaterThanOrEqual(thick - 1e-9);
          expect(z).toBeLessThan(4.31 * 2);
        },
      ),
    );
  });

  it("owns up to a body softer than a fifth, stiffer than twice, and a wall under two coats", () => {
    const past = (stiffnessRatio: number, wallOverCoat: number) =>
      releaseNumber({ stiffnessRatio, wallOverCoat }).past.join();
    expect(past(0.15, 10)).toContain("softer than a fifth");
    expect(past(2.5, 10)).toContain("twice as stiff");
    expect(past(1, 1.5)).toContain("thinner than two coats");
  });

  it("owns up to spacing outside its bodies and walls", () => {
    expect(spacingTableEnds({ stiffnessRatio: 0.3, wallOverCoat: 10 }).join()).toContain(
      "0.5 is taken",
    );
    expect(spacingTableEnds({ stiffnessRatio: 1.3, wallOverCoat: 4 })).toHaveLength(2);
    expect(spacingTableEnds({ stiffnessRatio: 0.7, wallOverCoat: 10 })).toEqual([]);
  });

  it("spacing to load and back, for any held wall", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 140, noNaN: true }),
        fc.double({ min: 0.4, max: 1.2, noNaN: true }),
        (spacing, stiffnessRatio) => {
          const line = spacingLine({ stiffnessRatio, wallOverCoat: 12 }, false);
          const load = loadForSpacing(line, spacing).value;
          expect(leastSpacing(line, load).value / spacing).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it("more load never means wider cracks", () => {
    const line = spacingLine({ stiffnessRatio: 0.7, wallOverCoat: 7 }, true);
    const loads = Array.from({ length: 300 }, (_, i) => 0.3 * 1.03 ** i);
    const spacings = loads.map((load) => leastSpacing(line, load).value);
    expect(spacings.every((mm, i) => i === 0 || mm <= (spacings[i - 1] as number))).toBe(true);
  });

  it("says when cracks come closer than a coat, and when the load only just cracks it", () => {
    const line = spacingLine({ stiffnessRatio: 1, wallOverCoat: Number.POSITIVE_INFINITY }, false);
    const fine = leastSpacing(line, 4 * 12.7693);
    expect(fine.past).toBe("fine");
    expect(fine.value).toBeCloseTo(0.5, 9);
    expect(leastSpacing(line, 0.5065)).toEqual({ value: 150, past: "wide" });
    expect(loadForSpacing(line, 500).past).toBe("wide");
  });

  it("stress to load and back", () => {
    const coat = { coatMm: 0.4, toughnessMPaRootM: 0.7 };
    expect(stressAtLoad(crackingLoad(33, coat), coat)).toBeCloseTo(33, 9);
  });

  it("keeps the ends of a table and says which was passed", () => {
    const rows = [
      [1, 10],
      [3, 20],
    ] as const;
    expect(tableLine(rows, 0.9)).toEqual({ value: 10, past: "low end" });
    expect(tableLine(rows, 2)).toEqual({ value: 15, past: null });
    expect(tableLine(rows, 4)).toEqual({ value: 20, past: "high end" });
  });
});

describe("a crack on its way through a wall", () => {
  const GLAZINGS: readonly Glazing[] = [
    "both faces",
    "one face, wall held",
    "one face, free to bend",
  ];
  const coat = (coatMm: number, glazing: Glazing, glazeMPa = 40) => ({
    glazeMPa,
    coatMm,
    wallMm: 6,
    glazing,
    stiffnessRatio: 1,
  });

  it("is pulled no less by a thicker coat of the same stress, for any coat", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 1.4, noNaN: true }),
        fc.double({ min: 1, max: 1.5, noNaN: true }),
        fc.constantFrom("both faces" as const, "one face, wall held" as const),
        (thin, factor, glazing) => {
          const more = leastPull(coat(thin * factor, glazing)).mPaRootM;
          expect(more).toBeGreaterThanOrEqual(leastPull(coat(thin, glazing)).mPaRootM - 1e-12);
        },
      ),
    );
  });

  it("is pulled least in a free plate, more between two coats, most in a closed wall", () => {
    const [both, ring, free] = GLAZINGS.map((glazing) => leastPull(coat(0.5, glazing)).mPaRootM);
    expect(free).toBeLessThan(0.05);
    expect(both).toBeGreaterThan(free as number);
    expect(ring).toBeGreaterThan(both as number);
  });

  it("stops no shallower in a weaker body, and not at all where the least pull is more than it bears", () => {
    const ring = coat(0.6, "one face, wall held");
    const least = leastPull(ring).mPaRootM;
    expect(stoppingDepthMm(ring, least * 0.99)).toBeNull();
    const depths = [1.02, 1.1, 1.3, 1.5].map((factor) => stoppingDepthMm(ring, least * factor));
    expect(depths.every((depth) => depth !== null)).toBe(true);
    expect((depths[0] as number) >= (depths[3] as number)).toBe(true);
  });

  it("stops at the foot of the glaze in a body that bears more than its first pull", () => {
    expect(stoppingDepthMm(coat(0.3, "both faces", 10), 2)).toBe(0);
  });

  it.each(GLAZINGS)("on %s changes smoothly with stiffness through the tabled ones", (glazing) => {
    for (const ratio of [0.2, 0.35, 0.5, 0.7, 1, 1.4, 2]) {
      const at = (stiffnessRatio: number) =>
        leastPull({ ...coat(0.6, glazing), stiffnessRatio }).mPaRootM;
      expect(Math.abs(at(ratio * 1.0001) - at(ratio * 0.9999))).toBeLessThan(1e-3);
    }
  });

  // Deep under a thin coat the crack feels only the force in it, 2.594 P/√(πa) of a half space, which
  // knows no stiffness of the coat; between two coats the stiff far one holds the crack shut.
  it("in a thick wall hardly depends on stiffness deep down, and is less between two coats on a soft body", () => {
    const at = (glazing: Glazing, stiffnessRatio: number) =>
      leastPull({ ...coat(0.3, glazing), stiffnessRatio }).mPaRootM;
    expect(at("one face, wall held", 0.5) / at("one face, wall held", 1)).toBeGreaterThan(0.93);
    expect(at("one face, wall held", 0.5)).toBeLessThanOrEqual(at("one face, wall held", 1));
    expect(at("both faces", 0.5)).toBeLessThan(0.95 * at("both faces", 1));
    expect(at("both faces", 2)).toBeGreaterThan(at("both faces", 1));
  });

  it.each(GLAZINGS)(
    "on %s is pulled more at every tabled depth the stiffer the body, from a fifth of a coat down",
    (glazing) => {
      for (const { depths, factors } of STIFFNESS_TABLES[glazing]) {
        for (const [ratio, line] of factors) {
          expect(line).toHaveLength(depths.length);
          if (ratio === 1) expect(new Set(line)).toEqual(new Set([1]));
        }
        depths.forEach((depth, i) => {
          const rising = factors.map(([, line]) => line[i] as number);
          // Rounded to 0.001, so a level run may fall by one.
          for (const [at, factor] of rising.slice(1).entries())
            if (depth >= 1.2) expect(factor).toBeGreaterThan((rising[at] as number) - 0.0015);
          expect(rising.at(-1)).toBeLessThan(1.35);
        });
      }
    },
  );

  it("owns up to bodies far softer or stiffer than their glaze", () => {
    const past = (stiffnessRatio: number) =>
      leastPull({ ...coat(0.5, "both faces"), stiffnessRatio }).past.join();
    expect(past(0.15)).toContain("softer than a fifth");
    expect(past(2.5)).toContain("twice as stiff");
    expect(past(0.7)).toBe("");
  });

  it("owns up to walls under four coats", () => {
    expect(leastPull(coat(2, "both faces")).past.join()).toContain("thinner than four coats");
  });
});
