import { cutPicture } from "../../core/photo/cutPicture.ts";
import type { PhotoInput } from "../../core/photo/PhotoMeasurement.ts";
import type { Place } from "../../core/photo/Picture.ts";
import { parsePhotoScale, scaleWords } from "../../core/photo/parsePhotoScale.ts";
import { ok, type Result } from "../../core/problem.ts";
import type { PhotoArea, PhotoWork } from "./photoState.ts";

/** What is measured of a photograph, all but its pixels, and where it lies in it. */
export interface MeasuredPart {
  readonly area: PhotoArea;
  readonly input: Omit<PhotoInput, "picture">;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** The part to measure [whole px]: the one that was drawn, else all of it. */
export function areaOf({ region }: PhotoWork, { width, height }: Size): PhotoArea {
  return region ?? { x: 0, y: 0, width, height };
}

/** The two places of the scale; a level pair low in the picture where nobody has moved them. */
export function endsOf({ ends }: PhotoWork, { width, height }: Size): readonly [Place, Place] {
  const y = Math.round(0.9 * height);
  return (
    ends ?? [
      { x: Math.round(0.1 * width), y },
      { x: Math.round(0.9 * width), y },
    ]
  );
}

/** What is to be measured; null while its scale is not told; `photo/…` for a scale that cannot be. */
export function measuredPart(work: PhotoWork, size: Size): Result<MeasuredPart> | null {
  if (work.file === null) return null;
  const area = areaOf(work, size);
  const lengthMm = work.scaleBy === "points" ? work.distanceMm : work.widthMm;
  if (lengthMm === null) return null;
  const [a, b] = endsOf(work, size);
  const scale = parsePhotoScale(
    work.scaleBy === "points"
      ? { scale: `${a.x},${a.y} ${b.x},${b.y} ${lengthMm}mm` }
      : { width: `${lengthMm} mm` },
  );
  if (!scale.ok) return scale;
  const lengthPx = work.scaleBy === "points" ? Math.hypot(b.x - a.x, b.y - a.y) : area.width;
  return ok({
    area,
    input: {
      name: work.file.name,
      mmPerPx: lengthMm / lengthPx,
      scaleFrom: scaleWords(scale.value),
      isSquared: false,
      isWhole: work.region === null,
      isOnPage: true,
      wishes: {
        ...(work.pattern !== null && { pattern: work.pattern }),
        ...(work.thresholdShare !== null && { thresholdShare: work.thresholdShare }),
      },
    },
  });
}

/** A part with its pixels, for the job. */
export function photoInput(part: MeasuredPart, picture: PhotoInput["picture"]): PhotoInput {
  return { ...part.input, picture: cutPicture(picture, part.area) };
}
