import type { Picture } from "./Picture.ts";
import type { Crop } from "./parsePhotoScale.ts";

/**
 * A part of a picture; the part's numbers are cut down to whole pixels.
 *
 * @throws RangeError for a part that reaches outside.
 */
export function cutPicture(picture: Picture, crop: Crop): Picture {
  const [left, top, width, height] = [crop.x, crop.y, crop.width, crop.height].map(Math.floor) as [
    number,
    number,
    number,
    number,
  ];
  if (left < 0 || top < 0 || left + width > picture.width || top + height > picture.height)
    throw new RangeError("cutPicture: the part reaches outside the picture");
  const grey = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    const from = (top + y) * picture.width + left;
    grey.set(picture.grey.subarray(from, from + width), y * width);
  }
  return { width, height, grey };
}
