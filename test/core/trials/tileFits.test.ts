import { describe, expect, it } from "vitest";
import { parseGlaze } from "../../../src/core/glaze/glazeFile.ts";
import { workOutGlaze } from "../../../src/core/glaze/glazeSheet.ts";
import type { Tile } from "../../../src/core/trials/Tile.ts";
import { expectedSpacings, tileFits } from "../../../src/core/trials/tileFits.ts";
import { coatRead, tile } from "../../support/crackleStudies.ts";
import { DEMO_GLAZES } from "../../support/demo/demoGlazes.ts";

const crackle = DEMO_GLAZES.find(({ name }) => name === "glaze-crackle.yaml");
const parsed = parseGlaze(crackle?.text ?? "", "glaze-crackle.yaml");
if (!parsed.ok) throw new Error("glaze-crackle.yaml");
const sheet = workOutGlaze(parsed.value, "glaze-crackle.yaml");
if (!sheet.ok) throw new Error("glaze-crackle.yaml");
const { glaze } = sheet.value;
const { body } = parsed.value.ware;
if (body === null) throw new Error("no body");

function spaced(piece: string, pitchMm: number): Tile {
  return {
    ...tile(piece),
    body,
    wallMm: 6,
    coat: coatRead(0.6, 0.1),
    spacing: {
      kind: "measured",
      pitchMm,
      lowMm: pitchMm * 0.9,
      highMm: pitchMm * 1.1,
      interceptMm: null,
      lines: 0,
      lengthMm: 0,
      crossings: 0,
      pattern: "net",
      from: "spacing",
      directions: [],
      alongOverAcross: null,
    },
    cracked: "crackle",
  };
}

const named = { glazes: new Map([["pond-ice", glaze]]), bodies: new Map() };
const noPing = () => null;

describe("the physics beside tiles", () => {
  it("reads a greater mismatch from closer cracks, about as 1 over the pitch", () => {
    // Deep in the cracked range the least spacing goes as 1 over the stress.
    const { fits } = tileFits([spaced("close", 2), spaced("twice as wide", 4)], named, noPing);
    const [close, wide] = fits.map(({ measured }) => measured[0]?.mismatch.median ?? Number.NaN);
    expect((close as number) / (wide as number)).toBeGreaterThan(1.5);
    expect((close as number) / (wide as number)).toBeLessThan(2.2);
  });

  it("names every tile that it leaves out, and why", () => {
    const tiles = [
      { ...spaced("no file", 4), glaze: "tenmoku" },
      { ...spaced("no body", 4), body: null },
      { ...spaced("no wall", 4), wallMm: null },
      { ...spaced("no shape", 4), shape: null },
    ];
    const { fits, leftOut } = tileFits(tiles, named, noPing);
    expect(fits).toEqual([]);
    expect(leftOut.map(({ piece, why }) => `${piece}: ${why}`)).toEqual([
      "no file: no glaze file is known for tenmoku",
      "no body: no body is named for its clay",
      "no wall: its wall is not noted",
      "no shape: its shape is not noted, and a glaze on one side may bend it",
    ]);
  });

  it("draws the curve to expect, and counts what does not crack as wider than all", () => {
    const points = expectedSpacings(
      { glaze, body, wallMm: 6, glazing: "both faces" },
      [0.02, 0.3, 1.2],
    );
    expect(points.map(({ coatMm }) => coatMm)).toEqual([0.02, 0.3, 1.2]);
    const [thin, middle, thick] = points;
    // So thin a coat does not crack in most draws.
    expect(thin?.medianMm).toBeNull();
    expect(middle?.medianMm as number).toBeLessThan(thick?.medianMm as number);
    expect(thick?.lowMm as number).toBeLessThan(thick?.medianMm as number);
  });
});
