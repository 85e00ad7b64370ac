import { isFlat, pieceShape } from "./pieceShape.ts";
import type { Ware } from "./Ware.ts";

/** Something about a piece or a firing that the computed stress does not know, or knows too hard. */
export interface ModelLimit {
  readonly topic:
    | "plain shrinkage"
    | "thick body"
    | "porous body"
    | "glaze"
    | "flat"
    | "strength from memory";
  /** Which way it errs where it applies. */
  readonly errs: "too hard" | "too soft" | "either way";
  /** A sentence without its full stop. */
  readonly why: string;
}

/** From this much cristobalite on, what happens at 226 °C is its step, not plain shrinkage. */
const CRISTOBALITE_FROM = 0.02;

/** Thicker than this, a base on a shelf is not how a piece is stacked or judged [mm]; our own estimate. */
const THICK_MM = 30;

/** Bodies as weak as this are porous, and stop small cracks [MPa]; our own estimate. */
const POROUS_BELOW_MPA = 20;

/** Expected misses of the model that apply to a piece, for reports to say where they show its stress. */
export function modelLimits({ body, geometry }: Ware): readonly ModelLimit[] {
  const shape = pieceShape(geometry);
  const limits: ModelLimit[] = [];
  if (body.cristobaliteFraction.value < CRISTOBALITE_FROM)
    limits.push({
      topic: "plain shrinkage",
      errs: "too hard",
      why: "without cristobalite, stress below the quartz inversion is plain shrinkage; moving air, which evens out what radiation no longer does, is left out there, and ware is cooled faster than this in practice",
    });
  if (Math.max(shape.baseMm, shape.wallMm) > THICK_MM)
    limits.push({
      topic: "thick body",
      errs: "too hard",
      why: "so thick a piece is taken to stand on its whole underside, though bricks and sculptures stand on edge or hollow and lose heat all round",
    });
  if (body.ruptureMPa.value < POROUS_BELOW_MPA)
    limits.push({
      topic: "porous body",
      errs: "too hard",
      why: "a porous body stops small cracks that a dense one would not, and bears more than its strength says",
    });
  if (isFlat(shape) && geometry.stands !== "on edge")
    limits.push({
      topic: "flat",
      errs: "too hard",
      why: "tiles on edge or on narrow supports lose heat from both faces, and are strained less than flat on a shelf",
    });
  if (geometry.glazedSides !== "none")
    limits.push({
      topic: "glaze",
      errs: "too soft",
      why: "the pull of the glaze is not in it: a tight glaze inside puts some 5 to 19 MPa of tension into a wall of 6 mm",
    });
  if ([body.ruptureMPa, body.youngGPa].some(({ source }) => source.includes("from memory")))
    limits.push({
      topic: "strength from memory",
      errs: "either way",
      why: "strength and stiffness of this body are from memory, not measured on yours",
    });
  return limits;
}
