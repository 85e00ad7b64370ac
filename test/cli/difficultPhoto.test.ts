import { describe, expect, it } from "vitest";
import { type DifficultPhoto, difficultPhoto, type Trouble } from "../support/difficultPhoto.ts";
import { fileWith, undunted } from "../support/undunted.ts";

/** What `measure` makes of a picture: the mean intercept with its 95 % interval [mm], or why it refuses. */
function measured(photo: DifficultPhoto, ...how: readonly string[]) {
  const ran = undunted(["measure", fileWith("tile.jpg", photo.jpeg), "--json", ...how]);
  const document = JSON.parse(ran.out);
  return document.ok
    ? { refused: null, ...document.cracks, topics: JSON.stringify(document.findings) }
    : { refused: document.problems[0].code as string };
}

/** Slant, glare, bled ink, a coloured glaze, dark corners, a ruler on wood, JPEG at 60; all at once. */
const TROUBLES: readonly (readonly [what: string, trouble: Trouble])[] = [
  ["as a phone takes it", { seed: 11 }],
  ["with a glare that burns out a tenth of the tile", { seed: 12, glare: 400 }],
  ["with thin, pale ink", { seed: 13, lineWidth: 3, contrast: 0.25 }],
  ["held at a strong slant", { seed: 14, slant: 0.25 }],
];

/** One picture for the tests that only ask in another way. */
const plain = difficultPhoto({ seed: 11 });

describe("a difficult photograph of an inked tile", () => {
  it.each(TROUBLES)(
    "%s: the 95 % interval holds what was drawn, the middle lies within 8 % of it (glare hides cracks), with its corners given",
    async (_, trouble) => {
      const photo = await difficultPhoto(trouble);
      const found = measured(photo, "--corners", photo.corners);
      expect(found.refused).toBeNull();
      expect(found.intervalMm.low).toBeLessThan(photo.interceptMm);
      expect(found.intervalMm.high).toBeGreaterThan(photo.interceptMm);
      expect(Math.abs(found.interceptMm / photo.interceptMm - 1)).toBeLessThan(0.08);
    },
  );

  it("without its corners, by the ruler in the frame: the interval still holds it, and slant is spoken of", async () => {
    const photo = await plain;
    const found = measured(photo, "--scale", photo.scale, "--crop", photo.crop);
    expect(found.intervalMm.low).toBeLessThan(photo.interceptMm);
    expect(found.intervalMm.high).toBeGreaterThan(photo.interceptMm);
    expect(found.topics).toContain("slant");
  });

  it("too wide a crackle for the frame is refused, not guessed", async () => {
    const photo = await difficultPhoto({ seed: 15, longest: 560 });
    expect(measured(photo, "--corners", photo.corners).refused).toBe("photo/too-few-cells");
  });

  it("a wide crackle has a wide range, which holds what was drawn", async () => {
    const photo = await difficultPhoto({ seed: 15, longest: 260 });
    const { refused, intervalMm } = measured(photo, "--corners", photo.corners);
    expect(refused).toBeNull();
    expect(intervalMm.low).toBeLessThan(photo.interceptMm);
    expect(intervalMm.high).toBeGreaterThan(photo.interceptMm);
    expect(intervalMm.high / intervalMm.low).toBeGreaterThan(1.25);
  });

  it("no scale, no answer", async () => {
    expect(measured(await plain).refused).toBe("photo/no-scale");
  });
});
