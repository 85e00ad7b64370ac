import { measurePhoto } from "../../../src/core/photo/measurePhoto.ts";
import type {
  PhotoInput,
  PhotoMeasurement,
  PhotoWishes,
  Picture,
} from "../../../src/core/photo/PhotoMeasurement.ts";
import type { Result } from "../../../src/core/problem.ts";
import { photographed, type Segment, type Shot } from "../../support/mosaics.ts";

/** Side of the pictures of these tests [px], and the mean intercept drawn in them. */
export const SIDE = 640;
export const INTERCEPT_PX = 42;
export const SIZE = { width: SIDE, height: SIDE };

/** What is measured in a picture at 10 pixels a millimetre. */
export function measured(
  picture: Picture,
  wishes: PhotoWishes = {},
  more: Partial<PhotoInput> = {},
): Result<PhotoMeasurement> {
  return measurePhoto({
    name: "tile.jpg",
    picture,
    mmPerPx: 0.1,
    scaleFrom: "a ruler",
    isSquared: true,
    isWhole: false,
    wishes,
    ...more,
  });
}

/** The cracks found in a picture of these; throws when it was refused or none were found. */
export function cracksIn(
  segments: readonly Segment[],
  shot: Partial<Shot> = {},
  wishes: PhotoWishes = {},
) {
  const result = measured(photographed(segments, { ...SIZE, lineWidth: 4, ...shot }), wishes);
  if (!result.ok) throw new Error(result.problems[0]?.what);
  if (result.value.cracks === null) throw new Error("no cracks found");
  return { ...result.value.cracks, interceptPx: result.value.cracks.interceptMm / 0.1 };
}
