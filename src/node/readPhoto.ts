import { createRequire } from "node:module";
import type sharp from "sharp";
import { squaredPicture } from "../core/photo/flattened.ts";
import type { Picture } from "../core/photo/PhotoMeasurement.ts";
import { notAPicture } from "../core/photo/photoProblems.ts";
import type { Crop, PhotoScale } from "../core/photo/photoScale.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import { type InputLimit, readBytes } from "./readInput.ts";

/** Most pixels that are measured at once; they take about 25 bytes each. */
const MOST_PIXELS = 40_000_000;

/** Most pixels that a file may hold before it is cropped. */
const MOST_IN_FILE = 200_000_000;

const FORMATS = ["png", "jpeg"];

const PHOTO_FILE: InputLimit = {
  bytes: 256 * 2 ** 20,
  expected: "a photograph as PNG or JPEG",
  fix: "save it smaller, or crop it to the tile",
};

/**
 * The picture library. It loads its own native part, so it stays outside the bundle, and is loaded
 * only when a photograph is there.
 */
export function pictureLibrary(): typeof sharp {
  return createRequire(import.meta.url)("sharp") as typeof sharp;
}

/** A photograph ready to be measured: upright, cropped or squared, grey. */
export interface ReadPhoto {
  readonly picture: Picture;
  readonly mmPerPx: number;
}

/**
 * A photograph from a PNG or JPEG file, turned as its camera says; problems as `photo/…`, `file/…`.
 *
 * @param want.crop The part to measure, in pixels of the upright picture; null for all of it.
 */
export async function readPhoto(
  path: string,
  want: { readonly scale: PhotoScale; readonly crop: Crop | null },
): Promise<Result<ReadPhoto>> {
  const bytes = await readBytes(path, PHOTO_FILE);
  if (!bytes.ok) return bytes;
  const size = await uprightSize(bytes.value, path);
  if (!size.ok) return size;
  const { scale } = want;
  const crop = want.crop ?? { x: 0, y: 0, ...size.value };
  const outside = cropProblem(crop, { size: size.value, scale, path });
  if (outside) return failed(outside);
  const picture = await decoded(bytes.value, { crop, path });
  if (!picture.ok) return picture;
  if (scale.kind === "corners") return ok(squaredPicture(picture.value, scale));
  return ok({ picture: picture.value, mmPerPx: mmPerPx(scale, crop) });
}

function mmPerPx(scale: Exclude<PhotoScale, { readonly kind: "corners" }>, crop: Crop): number {
  return scale.kind === "width"
    ? scale.widthMm / crop.width
    : scale.distanceMm / Math.hypot(scale.b.x - scale.a.x, scale.b.y - scale.a.y);
}

async function uprightSize(
  bytes: Uint8Array,
  path: string,
): Promise<Result<{ readonly width: number; readonly height: number }>> {
  try {
    const found = await pictureLibrary()(bytes, { limitInputPixels: MOST_IN_FILE }).metadata();
    if (!FORMATS.includes(found.format)) return failed(notAPicture(path, `it is ${found.format}`));
    const { width, height } = found.autoOrient;
    return ok({ width, height });
  } catch (error) {
    return failed(pictureProblem(path, error));
  }
}

function cropProblem(
  crop: Crop,
  {
    size,
    scale,
    path,
  }: {
    readonly size: { readonly width: number; readonly height: number };
    readonly scale: PhotoScale;
    readonly path: string;
  },
): Problem | null {
  const isInside = ({ x, y }: { readonly x: number; readonly y: number }) =>
    x >= 0 && y >= 0 && x <= size.width && y <= size.height;
  const places =
    scale.kind === "corners" ? scale.corners : scale.kind === "points" ? [scale.a, scale.b] : [];
  if (!places.every(isInside))
    return outside(path, size, {
      code: "photo/scale-outside",
      what: "a place that gives the scale lies outside it",
    });
  if (!isInside(crop) || !isInside({ x: crop.x + crop.width, y: crop.y + crop.height }))
    return outside(path, size, { code: "photo/crop-outside", what: "the crop reaches outside it" });
  if (crop.width * crop.height <= MOST_PIXELS) return null;
  return {
    code: "photo/too-large",
    where: path,
    what: `${Math.round((crop.width * crop.height) / 1e6)} million pixels are to be measured`,
    expected: `at most ${MOST_PIXELS / 1e6} million`,
    fix: "take a part of it with --crop, or make the picture smaller",
  };
}

function outside(
  where: string,
  { width, height }: { readonly width: number; readonly height: number },
  { code, what }: Pick<Problem, "code" | "what">,
): Problem {
  return {
    code,
    where,
    what,
    expected: `pixels inside ${width} by ${height}, counted from the top left of the upright picture`,
    fix: "read the pixels off in a program that shows them",
  };
}

async function decoded(
  bytes: Uint8Array,
  { crop, path }: { readonly crop: Crop; readonly path: string },
): Promise<Result<Picture>> {
  try {
    const { data, info } = await pictureLibrary()(bytes, {
      limitInputPixels: MOST_IN_FILE,
      failOn: "error",
      autoOrient: true,
    })
      .flatten({ background: "white" })
      .extract({
        left: Math.floor(crop.x),
        top: Math.floor(crop.y),
        width: Math.floor(crop.width),
        height: Math.floor(crop.height),
      })
      .toColourspace("b-w")
      .raw()
      .toBuffer({ resolveWithObject: true });
    const grey = new Uint8Array(info.width * info.height);
    for (let i = 0; i < grey.length; i++) grey[i] = data[i * info.channels]!;
    return ok({ width: info.width, height: info.height, grey });
  } catch (error) {
    return failed(pictureProblem(path, error));
  }
}

function pictureProblem(path: string, error: unknown): Problem {
  const said = error instanceof Error ? error.message : String(error);
  return /pixel limit/.test(said)
    ? {
        code: "photo/too-large",
        where: path,
        what: "it has more pixels than a picture may have here",
        expected: `at most ${MOST_IN_FILE / 1e6} million`,
        fix: "make the picture smaller first",
      }
    : notAPicture(path, "it cannot be read as a picture, or is damaged");
}
