import { failed, ok, type Problem, type Result } from "../problem.ts";
import { parseLength, shown } from "../units/quantity.ts";
import type { Place } from "./PhotoMeasurement.ts";

/** A rectangle in a picture [px]. */
export interface Crop {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What gives a picture its scale. */
export type PhotoScale =
  | { readonly kind: "points"; readonly a: Place; readonly b: Place; readonly distanceMm: number }
  | { readonly kind: "width"; readonly widthMm: number }
  | {
      readonly kind: "corners";
      /** Top left, top right, bottom right, bottom left. */
      readonly corners: readonly [Place, Place, Place, Place];
      readonly widthMm: number;
      readonly heightMm: number;
    };

/** Where a scale comes from, in words that follow "from". */
export function scaleWords(scale: PhotoScale): string {
  switch (scale.kind) {
    case "points":
      return `two places ${scale.distanceMm} mm apart`;
    case "width":
      return `its width of ${scale.widthMm} mm`;
    case "corners":
      return `four corners of ${scale.widthMm} by ${scale.heightMm} mm`;
  }
}

/** Shortest distance between the two points of a scale [px]; a reading is off by one or two. */
const LEAST_SCALE_PX = 100;

const NUMBER = String.raw`(\d+(?:\.\d+)?)`;
const PLACE = String.raw`${NUMBER}\s*,\s*${NUMBER}`;
const POINTS = new RegExp(String.raw`^\s*${PLACE}\s+${PLACE}\s+(.+?)\s*$`);
const CORNERS = new RegExp(
  String.raw`^\s*${PLACE}\s+${PLACE}\s+${PLACE}\s+${PLACE}\s+(\S+)\s+(\S+)\s*$`,
);
const CROP = new RegExp(String.raw`^\s*${PLACE}\s*,\s*${PLACE}\s*$`);

/** What the command line says about scale. */
export interface WrittenScale {
  readonly scale?: string;
  readonly width?: string;
  readonly corners?: string;
}

/** The one scale that is given, from `--scale`, `--width` or `--corners`; problems as `photo/…`. */
export function parsePhotoScale(written: WrittenScale): Result<PhotoScale> {
  const given = (["scale", "width", "corners"] as const).filter((name) => written[name]);
  if (given.length !== 1)
    return failed({
      code: given.length === 0 ? "photo/no-scale" : "photo/several-scales",
      where: "command line",
      what:
        given.length === 0
          ? "nothing says how large the tile is"
          : `${given.map((name) => `--${name}`).join(" and ")} are given`,
      expected: "one of --scale, --width and --corners",
      fix: 'two places on a ruler, in pixels, and the distance between them: --scale "120,80 1320,84 50mm"',
    });
  if (written.scale) return points(written.scale);
  if (written.corners) return corners(written.corners);
  const widthMm = parseLength(written.width as string, { where: "--width" });
  return widthMm.ok ? ok({ kind: "width", widthMm: widthMm.value }) : widthMm;
}

/** A crop from `x,y,width,height` [px]; a problem `photo/crop` for anything else. */
export function parseCrop(text: string): Result<Crop> {
  const [x, y, width, height] = numbersOf(CROP.exec(text), 4);
  if (width && height) return ok({ x: x as number, y: y as number, width, height });
  return failed(
    notSo("--crop", text, "photo/crop", "left, top, width and height in pixels: 200,150,2400,2400"),
  );
}

function points(text: string): Result<PhotoScale> {
  const match = POINTS.exec(text);
  if (match === null)
    return failed(
      notSo(
        "--scale",
        text,
        "photo/scale",
        'two places in pixels and their distance: "120,80 1320,84 50mm"',
      ),
    );
  const [ax, ay, bx, by] = numbersOf(match, 4) as [number, number, number, number];
  const distanceMm = parseLength(match[5]!, { where: "--scale" });
  if (!distanceMm.ok) return distanceMm;
  const distancePx = Math.hypot(bx - ax, by - ay);
  if (distancePx < LEAST_SCALE_PX)
    return failed({
      code: "photo/scale-too-short",
      where: "--scale",
      what: `the two places lie ${distancePx.toFixed(0)} pixels apart`,
      expected: `at least ${LEAST_SCALE_PX} pixels, so that a pixel more or less matters little`,
      fix: "take two places farther apart on the ruler",
    });
  return ok({
    kind: "points",
    a: { x: ax, y: ay },
    b: { x: bx, y: by },
    distanceMm: distanceMm.value,
  });
}

function corners(text: string): Result<PhotoScale> {
  const match = CORNERS.exec(text);
  const expected =
    'corners top left, top right, bottom right, bottom left, then width and height: "210,180 2890,240 2830,2900 160,2850 100mm 100mm"';
  if (match === null) return failed(notSo("--corners", text, "photo/corners", expected));
  const numbers = numbersOf(match, 8);
  const places = [0, 2, 4, 6].map((at) => ({
    x: numbers[at]!,
    y: numbers[at + 1]!,
  })) as [Place, Place, Place, Place];
  const widthMm = parseLength(match[9]!, { where: "--corners" });
  const heightMm = parseLength(match[10]!, { where: "--corners" });
  if (!widthMm.ok) return widthMm;
  if (!heightMm.ok) return heightMm;
  if (!isConvexClockwise(places))
    return failed({
      code: "photo/corners",
      where: "--corners",
      what: "the corners do not go round a four-sided shape clockwise",
      expected,
      fix: "begin at the top left and go round clockwise",
    });
  return ok({
    kind: "corners",
    corners: places,
    widthMm: widthMm.value,
    heightMm: heightMm.value,
  });
}

function numbersOf(match: RegExpExecArray | null, count: number): readonly number[] {
  return match === null ? [] : match.slice(1, count + 1).map(Number);
}

function isConvexClockwise(places: readonly Place[]): boolean {
  return places.every((place, at) => {
    const next = places[(at + 1) % 4]!;
    const after = places[(at + 2) % 4]!;
    const turn = (next.x - place.x) * (after.y - next.y) - (next.y - place.y) * (after.x - next.x);
    return turn > 0;
  });
}

function notSo(where: string, text: string, code: Problem["code"], expected: string): Problem {
  return { code, where, what: `${shown(text)} cannot be read`, expected, fix: `write ${expected}` };
}
