import { z } from "zod";
import type { LineCrossing, Stroke } from "../../core/photo/correctedPhoto.ts";
import { cutPicture } from "../../core/photo/flattened.ts";
import type { PhotoInput, PhotoMeasurement, Place } from "../../core/photo/PhotoMeasurement.ts";
import { type Crop, parsePhotoScale, scaleWords } from "../../core/photo/photoScale.ts";
import { ok, type Problem, type Result } from "../../core/problem.ts";
import { keptFileShape } from "../parts/KeptFile.ts";
import type { DecodedPhoto } from "./decodePhoto.ts";

const placeShape = z.strictObject({ x: z.number(), y: z.number() }).readonly();
const areaShape = z
  .strictObject({
    x: z.number(),
    y: z.number(),
    width: z.number().positive(),
    height: z.number().positive(),
  })
  .readonly();
const crossingShape = z.strictObject({ line: z.int().nonnegative(), along: z.number() }).readonly();

/** How the work on a photograph is stored; places and areas in pixels of the upright picture. */
export const photoWorkShape = z.strictObject({
  file: keptFileShape.nullable(),
  /** The demo picture lies there. */
  isInvented: z.boolean(),
  scaleBy: z.enum(["points", "width"]),
  /** The two places of the scale; null where nobody has moved them. */
  ends: z.tuple([placeShape, placeShape]).readonly().nullable(),
  /** Between the two places [mm]. */
  distanceMm: z.number().positive().nullable(),
  /** Of all that is measured, from its left to its right edge [mm]. */
  widthMm: z.number().positive().nullable(),
  /** The part to measure; null for all of it. */
  region: areaShape.nullable(),
  pattern: z.enum(["net", "parallel"]).nullable(),
  thresholdShare: z.number().min(0.05).max(0.95).nullable(),
  takenAway: z.array(crossingShape).readonly(),
  added: z.array(crossingShape).readonly(),
  leftOut: z.array(areaShape).readonly(),
});

/** What lies under the lens: the photograph, its scale, and what was corrected by hand. */
export type PhotoWork = z.infer<typeof photoWorkShape>;

/** What the pointer does on the picture. */
export type PhotoTool = "points" | "take" | "add" | "leave";

/** Directions of the test lines that are shown. */
export type ShownLines = "straight" | "slanting" | "all";

/** What is worked out from it, and what is only on the way. */
export interface PhotoDesk {
  readonly picture: DecodedPhoto | null;
  readonly busy: { readonly fraction: number; readonly at: string } | null;
  readonly isStopped: boolean;
  readonly problems: readonly Problem[];
  /** What was found, uncorrected, with what it was found in. */
  readonly measured: { readonly found: PhotoMeasurement; readonly part: MeasuredPart } | null;
  readonly tool: PhotoTool;
  readonly shown: ShownLines;
  /** Times that the picture is larger than its place. */
  readonly zoom: 1 | 2 | 4;
  /** The test line that is looked at, and the crossing on it. */
  readonly line: number | null;
  readonly crossing: LineCrossing | null;
  /** A stroke that is being drawn [px of the picture]. */
  readonly stroke: Stroke | null;
  /** Where the lens looks; null when nothing is being placed. */
  readonly lens: Place | null;
  /** Said after something was done with the result. */
  readonly done: string;
}

/** An area of a picture [px]. */
export type PhotoArea = Crop;

/** Nothing under the lens. */
export const EMPTY_PHOTO: { readonly work: PhotoWork; readonly desk: PhotoDesk } = {
  work: {
    file: null,
    isInvented: false,
    scaleBy: "points",
    ends: null,
    distanceMm: null,
    widthMm: null,
    region: null,
    pattern: null,
    thresholdShare: null,
    takenAway: [],
    added: [],
    leftOut: [],
  },
  desk: {
    picture: null,
    busy: null,
    isStopped: false,
    problems: [],
    measured: null,
    tool: "points",
    shown: "straight",
    zoom: 1,
    line: null,
    crossing: null,
    stroke: null,
    lens: null,
    done: "",
  },
};

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
