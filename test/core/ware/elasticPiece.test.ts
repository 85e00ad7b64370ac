import { describe, expect, it } from "vitest";
import { type ElasticPiece, PLACES_TOLD } from "../../../src/core/ware/elasticPiece.ts";
import { LAYERS, type PieceMesh } from "../../../src/core/ware/pieceMesh.ts";
import { barStress, largestTension } from "../../../src/core/ware/pieceStress.ts";
import {
  discShape,
  MUG_SHAPE,
  PLATE_SHAPE,
  strained,
  strainedSection,
} from "../../support/elasticShapes.ts";
import { off } from "../../support/wareParts.ts";

const POISSON = 0.2;

/** Stress of one kind at every place told of an element, averaged over both its sides. */
const told = ({ stress }: ElasticPiece, element: number, kind: number) =>
  Array.from({ length: 3 }, (_, k) => {
    const at = (side: number) => stress[(element * PLACES_TOLD + side * 3 + k) * 4 + kind]!;
    return (at(0) + at(1)) / 2;
  });

const largest = (piece: ElasticPiece) => Math.max(...piece.stress.map(Math.abs));

describe("a disc that is hotter in the middle, by a parabola (exact: a thin disc)", () => {
  const parabola = (sign: number) => (line: number, _: number, mesh: PieceMesh) =>
    sign * (1 - (mesh.radius[line]! / 100) ** 2);

  it("is under half of EαΔT at the rim while it cools, and a quarter in the middle while it heats, within 3 % (places told lie inside the faces)", () => {
    const cooling = largestTension(strained(discShape(100, 6), parabola(1)));
    expect(off(cooling.tension, 0.5)).toBeLessThan(0.03);
    expect(cooling.along).toBe(6);
    const heating = largestTension(strained(discShape(100, 6), parabola(-1)));
    expect(off(heating.tension, 0.25)).toBeLessThan(0.03);
    expect(heating.along).toBe(0);
  });

  it("comes nearer to it with smaller elements", () => {
    const found = largestTension(strained(discShape(100, 6), parabola(1), 3));
    expect(off(found.tension, 0.5)).toBeLessThan(0.01);
  });
});

describe("a plate whose free strain runs as a parabola through it (exact)", () => {
  it.each([1, -1])(
    "has 2/3 of it over 1 − ν on its faces and 1/3 in the middle, with signs, far from the edge: × %d",
    (sign) => {
      const plate = strained(discShape(200, 6), (_, deep) => sign * (1 - (2 * deep - 1) ** 2));
      // In the middle of the disc, by height over the middle: −√0.6/2 − 1/2 and so on of half the thickness.
      for (let layer = 0; layer < LAYERS; layer++)
        for (const [k, across] of told(plate, layer, 2).entries()) {
          const up = -1 + (2 * (layer + (1 + (k - 1) * Math.sqrt(0.6)) / 2)) / LAYERS;
          const exact = (sign * (2 / 3 - (1 - up * up))) / (1 - POISSON);
          expect(Math.abs(across - exact)).toBeLessThan(0.01);
        }
    },
  );
});

describe("free strain that fits (patch test)", () => {
  it("puts no stress into a piece when it is the same everywhere", () => {
    for (const shape of [MUG_SHAPE, PLATE_SHAPE, discShape(80, 30)])
      expect(largest(strained(shape, () => 1))).toBeLessThan(1e-9);
  });

  it("puts no stress into a piece when it grows evenly with the height", () => {
    const piece = strainedSection(
      { wide: 4, high: 3 },
      (across, up) => ({ r: 30 * across, z: 20 * up + 3 * across * up }),
      ({ z }) => z / 20,
    );
    expect(largest(piece)).toBeLessThan(1e-9);
  });
});

describe("a long tube whose free strain depends on the radius (Timoshenko & Goodier, thick cylinder, from memory)", () => {
  const [inner, outer, long] = [20, 40, 400];
  const free = (r: number) => 1 - ((r - inner) / (outer - inner)) ** 2;
  /** Twice the mean of what lies within a radius, times the area over 2π. */
  const integral = (to: number) => {
    let sum = 0;
    for (let i = 0; i < 2000; i++) {
      const r = inner + ((to - inner) * (i + 0.5)) / 2000;
      sum += (free(r) * r * (to - inner)) / 2000;
    }
    return sum;
  };
  const tube = strainedSection(
    { wide: 8, high: 40 },
    (across, up) => ({ r: inner + (outer - inner) * across, z: long * up }),
    ({ r }) => free(r),
  );

  it("has the hoop stress of the closed form at mid length, within 1 % of the largest", () => {
    const whole = integral(outer);
    const span = outer * outer - inner * inner;
    // The eight elements of mid length follow each other from the inside out, 40 to a column.
    for (let column = 0; column < 8; column++) {
      const element = column * 40 + 20;
      for (const side of [0, 1]) {
        const at = (element * PLACES_TOLD + side * 3 + 1) * 4;
        const share = (column + (1 + (side === 0 ? -1 : 1) / Math.sqrt(3)) / 2) / 8;
        const r = inner + (outer - inner) * share;
        const exact =
          (((r * r + inner * inner) / span) * whole + integral(r) - free(r) * r * r) /
          (r * r * (1 - POISSON));
        expect(Math.abs(tube.stress[at + 2]! - exact)).toBeLessThan(0.01);
      }
    }
  });
});

describe("a hollow ball whose free strain depends on the radius (Timoshenko & Goodier, sphere, from memory)", () => {
  it("has the hoop stress of the closed form about its equator, within 1.5 % of the largest", () => {
    const [inner, outer] = [20, 40];
    const free = (r: number) => 1 - ((r - inner) / (outer - inner)) ** 2;
    const integral = (to: number) => {
      let sum = 0;
      for (let i = 0; i < 2000; i++) {
        const r = inner + ((to - inner) * (i + 0.5)) / 2000;
        sum += (free(r) * r * r * (to - inner)) / 2000;
      }
      return sum;
    };
    const ball = strainedSection(
      { wide: 6, high: 24 },
      (across, up) => {
        const radius = inner + (outer - inner) * across;
        return {
          r: up === 0 || up === 1 ? 0 : radius * Math.sin(Math.PI * up),
          z: -radius * Math.cos(Math.PI * up),
        };
      },
      ({ r, z }) => free(Math.hypot(r, z)),
    );
    const span = outer ** 3 - inner ** 3;
    for (let column = 0; column < 6; column++)
      for (const side of [0, 1]) {
        const at = ((column * 24 + 12) * PLACES_TOLD + side * 3 + 1) * 4;
        const share = (column + (1 + (side === 0 ? -1 : 1) / Math.sqrt(3)) / 2) / 6;
        const r = inner + (outer - inner) * share;
        const exact =
          (2 / (1 - POISSON)) *
          (((2 * r ** 3 + inner ** 3) / (2 * span * r ** 3)) * integral(outer) +
            integral(r) / (2 * r ** 3) -
            free(r) / 2);
        expect(Math.abs(ball.stress[at + 2]! - exact)).toBeLessThan(0.015);
      }
  });
});

describe("the mesh", () => {
  const step = (line: number, _: number, mesh: PieceMesh) =>
    1 / (1 + Math.exp((mesh.along[line]! - mesh.turnAt) / 6));

  it.each([
    ["a mug", MUG_SHAPE],
    ["a plate", PLATE_SHAPE],
    ["a bowl", { ...MUG_SHAPE, footRadiusMm: 40, rimRadiusMm: 80, heightMm: 70 }],
    ["a thick pot", { ...MUG_SHAPE, wallMm: 20, baseMm: 25, footRadiusMm: 100, rimRadiusMm: 100 }],
    ["a narrow vase", { ...MUG_SHAPE, footRadiusMm: 25, rimRadiusMm: 30, heightMm: 200 }],
    ["a thin wall on a thick base", { ...MUG_SHAPE, wallMm: 4, baseMm: 20 }],
  ])("is fine enough for %s: the bar's stress within 2 % of three times as fine", (_, shape) => {
    for (const sign of [1, -1]) {
      const field: typeof step = (...at) => sign * step(...at);
      const coarse = barStress(strained(shape, field));
      const fine = barStress(strained(shape, field, 3));
      expect(off(coarse, fine)).toBeLessThan(0.02);
    }
  });

  it("has the volume of a disc, and of a mug within 1 % of a tube on a disc", () => {
    const volume = (piece: ElasticPiece) => piece.volumes.reduce((sum, each) => sum + each, 0);
    expect(off(volume(strained(discShape(50, 8), () => 0)), Math.PI * 2500 * 8)).toBeLessThan(1e-6);
    const tube = Math.PI * (42.5 ** 2 - 36.5 ** 2) * 100 + Math.PI * 36.5 ** 2 * 8;
    expect(off(volume(strained(MUG_SHAPE, () => 0)), tube)).toBeLessThan(0.01);
  });
});

describe("the bar that breaks as often", () => {
  it("grows with the tenth root of the volume, and evenly with the strain", () => {
    const field = (times: number) => (line: number, _: number, mesh: PieceMesh) =>
      times * (1 - (mesh.radius[line]! / mesh.radius.at(-1)!) ** 2);
    const one = barStress(strained(discShape(100, 6), field(1)));
    expect(off(barStress(strained(discShape(100, 6), field(3))), 3 * one)).toBeLessThan(1e-9);
    const doubled = barStress(strained(discShape(200, 12), field(1)));
    expect(off(doubled / one, 8 ** 0.1)).toBeLessThan(1e-6);
  });

  it("is by hand σ (V · 2 · 11² / V of the bar)^(1/10) for a piece under one tension all over", () => {
    const volumes = new Float64Array(6).fill(1000);
    const stress = Float64Array.from({ length: 24 }, (_, i) => (i % 4 === 0 ? 2e-4 : 0));
    const piece = { ...strained(discShape(50, 5), () => 0), volumes, stress };
    const byHand = 2e-4 * ((6000 * 2 * 121) / 480) ** 0.1;
    expect(off(barStress(piece), byHand)).toBeLessThan(1e-9);
    expect(barStress({ ...piece, stress: stress.map((each) => -each) })).toBe(0);
  });
});
