import { greyOfRgba } from "../../core/photo/flattened.ts";
import type { Picture } from "../../core/photo/PhotoMeasurement.ts";
import { notAPicture, sizeRefusal } from "../../core/photo/photoProblems.ts";
import { failed, ok, type Result } from "../../core/problem.ts";
import type { KeptFile } from "../parts/KeptFile.ts";

/** Most pixels that the page measures; a larger picture is made smaller. */
const MOST_PIXELS = 16_000_000;

/** Rows that are made grey at a time, so that no frame takes long. */
const ROWS = 256;

/** A photograph as the page holds it: upright, on white, grey. */
export interface DecodedPhoto {
  readonly file: KeptFile;
  readonly bitmap: ImageBitmap;
  readonly picture: Picture;
  /** Size in the file, where the picture was made smaller; else null. */
  readonly was: { readonly width: number; readonly height: number } | null;
}

/** A PNG or JPEG file as a grey picture, turned as its camera says; problems as `photo/…`. */
export async function decodePhoto(file: KeptFile): Promise<Result<DecodedPhoto>> {
  if (!isPicture(file.bytes)) return failed(notAPicture(file.name, "it is neither PNG nor JPEG"));
  try {
    const whole = await createImageBitmap(new Blob([file.bytes]));
    const small = sizeRefusal(whole, file.name);
    if (small) return small;
    const bitmap = await smaller(whole);
    const picture = await greyPicture(bitmap);
    const was = bitmap === whole ? null : { width: whole.width, height: whole.height };
    return ok({ file, bitmap, picture, was });
  } catch {
    return failed(notAPicture(file.name, "it cannot be read as a picture, or is damaged"));
  }
}

function isPicture(bytes: Uint8Array): boolean {
  const begins = (...start: readonly number[]) => start.every((byte, at) => bytes[at] === byte);
  return begins(0x89, 0x50, 0x4e, 0x47) || begins(0xff, 0xd8, 0xff);
}

async function smaller(bitmap: ImageBitmap): Promise<ImageBitmap> {
  const share = Math.sqrt(MOST_PIXELS / (bitmap.width * bitmap.height));
  if (share >= 1) return bitmap;
  return createImageBitmap(bitmap, {
    resizeWidth: Math.floor(bitmap.width * share),
    resizeHeight: Math.floor(bitmap.height * share),
    resizeQuality: "high",
  });
}

async function greyPicture(bitmap: ImageBitmap): Promise<Picture> {
  const { width, height } = bitmap;
  const grey = new Uint8Array(width * height);
  const canvas = new OffscreenCanvas(width, Math.min(ROWS, height));
  const pen = canvas.getContext("2d", { willReadFrequently: true });
  if (pen === null) throw new Error("no canvas");
  for (let top = 0; top < height; top += ROWS) {
    const rows = Math.min(ROWS, height - top);
    pen.fillStyle = "#fff";
    pen.fillRect(0, 0, width, rows);
    pen.drawImage(bitmap, 0, top, width, rows, 0, 0, width, rows);
    grey.set(greyOfRgba(pen.getImageData(0, 0, width, rows).data), top * width);
    await new Promise((resolve) => setTimeout(resolve));
  }
  return { width, height, grey };
}
