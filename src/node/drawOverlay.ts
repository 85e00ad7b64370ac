import { overlayMarks, overlayPixels } from "../core/photo/overlay.ts";
import type { PhotoMeasurement, Picture } from "../core/photo/PhotoMeasurement.ts";
import { drawPng } from "./drawPng.ts";
import { pictureLibrary } from "./readPhoto.ts";

/** Quality of the picture inside a page, of 100. */
const PAGE_QUALITY = 85;

/** The photograph with cracks, test lines, crossings and scale bar drawn over it. */
export async function drawOverlay(
  picture: Picture,
  measured: PhotoMeasurement,
  format: "png" | "jpeg",
): Promise<Uint8Array> {
  const { width, height, rgb } = overlayPixels(picture, measured.found);
  const marks = await drawPng(overlayMarks(picture, measured), { scale: 1 });
  const drawn = pictureLibrary()(rgb, { raw: { width, height, channels: 3 } }).composite([
    { input: Buffer.from(marks) },
  ]);
  return format === "png"
    ? drawn.png({ compressionLevel: 9 }).toBuffer()
    : drawn.jpeg({ quality: PAGE_QUALITY, chromaSubsampling: "4:4:4" }).toBuffer();
}
