import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Glazing, type Layers, layerStress } from "../../../src/core/glaze/laminate.ts";
import { slicedWall } from "../../support/slicedWall.ts";

const GLAZINGS: readonly Glazing[] = [
  "both faces",
  "one face, wall held",
  "one face, free to bend",
];

const layersArbitrary: fc.Arbitrary<Layers> = fc.record({
  glazeGPa: fc.double({ min: 55, max: 75, noNaN: true }),
  glazePoisson: fc.double({ min: 0.18, max: 0.25, noNaN: true }),
  bodyGPa: fc.double({ min: 8, max: 90, noNaN: true }),
  bodyPoisson: fc.double({ min: 0.15, max: 0.25, noNaN: true }),
  coatMm: fc.double({ min: 0.05, max: 3, noNaN: true }),
  wallMm: fc.double({ min: 2, max: 20, noNaN: true }),
});
const mismatchArbitrary = fc.double({ min: -0.003, max: 0.003, noNaN: true });

describe("a glazed wall", () => {
  it.each(GLAZINGS)(
    "%s: agrees with a wall cut into slices that is let go until it rests",
    (glazing) => {
      fc.assert(
        fc.property(layersArbitrary, (layers) => {
          const found = layerStress(layers, glazing, 0.001);
          const sliced = slicedWall(layers, glazing, 0.001);
          const body = sliced.slices.filter(({ inGlaze }) => !inGlaze);
          expect(sliced.forceNPerMm).toBeCloseTo(0, 2);
          if (glazing !== "one face, wall held") expect(sliced.momentN).toBeCloseTo(0, 2);
          expect(found.glazeMPa).toBeCloseTo(sliced.glazeMPa, 1);
          // Half a slice lies between the face and the middle of its slice.
          const slice = Math.abs((body[0]?.mPa as number) - (body[1]?.mPa as number)) + 0.01;
          expect(Math.abs(found.underGlazeMPa - (body.at(-1)?.mPa as number))).toBeLessThan(slice);
          const bare = found.bareFaceMPa ?? found.underGlazeMPa;
          expect(Math.abs(bare - (body[0]?.mPa as number))).toBeLessThan(slice);
        }),
        { numRuns: 12 },
      );
    },
  );

  it.each(GLAZINGS)(
    "%s: pull in the glaze and squeeze in the body cancel, for any wall",
    (glazing) => {
      fc.assert(
        fc.property(layersArbitrary, mismatchArbitrary, (layers, mismatch) => {
          const { glazeMPa, underGlazeMPa, bareFaceMPa } = layerStress(layers, glazing, mismatch);
          const body = (underGlazeMPa + (bareFaceMPa ?? underGlazeMPa)) / 2;
          const coats = glazing === "both faces" ? 2 : 1;
          expect(coats * glazeMPa * layers.coatMm + body * layers.wallMm).toBeCloseTo(0, 6);
        }),
      );
    },
  );

  it("turns all its signs with the mismatch, for any wall", () => {
    fc.assert(
      fc.property(
        layersArbitrary,
        mismatchArbitrary,
        fc.constantFrom(...GLAZINGS),
        (layers, mismatch, glazing) => {
          const pulled = layerStress(layers, glazing, mismatch);
          const squeezed = layerStress(layers, glazing, -mismatch);
          expect(squeezed.glazeMPa).toBeCloseTo(-pulled.glazeMPa, 9);
          expect(squeezed.underGlazeMPa).toBeCloseTo(-pulled.underGlazeMPa, 9);
          expect(squeezed.curvaturePerM).toBeCloseTo(-pulled.curvaturePerM, 9);
        },
      ),
    );
  });

  it("glazed on both faces is two half walls held straight, for any wall", () => {
    fc.assert(
      fc.property(layersArbitrary, mismatchArbitrary, (layers, mismatch) => {
        const half = layerStress(
          { ...layers, wallMm: layers.wallMm / 2 },
          "one face, wall held",
          mismatch,
        );
        const both = layerStress(layers, "both faces", mismatch);
        expect(both.glazeMPa).toBeCloseTo(half.glazeMPa, 9);
        expect(both.underGlazeMPa).toBeCloseTo(half.underGlazeMPa, 9);
      }),
    );
  });

  it("pulls the glaze most where the wall is held, less on both faces, least where it bends, for thin coats", () => {
    fc.assert(
      fc.property(layersArbitrary, (layers) => {
        const thin = { ...layers, coatMm: layers.wallMm / 20 };
        const [both, held, free] = GLAZINGS.map(
          (glazing) => layerStress(thin, glazing, 0.001).glazeMPa,
        );
        expect(held).toBeGreaterThan(both as number);
        expect(both).toBeGreaterThan(free as number);
      }),
    );
  });

  it("is refused without a thickness", () => {
    const layers = {
      glazeGPa: 65,
      glazePoisson: 0.2,
      bodyGPa: 45,
      bodyPoisson: 0.2,
      coatMm: 0,
      wallMm: 5,
    };
    expect(() => layerStress(layers, "both faces", 0.001)).toThrow("layerStress: 0");
  });
});
