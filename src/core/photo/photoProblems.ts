import { failed, type Problem, type Result } from "../problem.ts";
import type { Picture } from "./PhotoMeasurement.ts";
import { lengthFigure } from "./trialEntry.ts";

/** Least width of a crack in the picture [px], for its run to be followed. */
export const LEAST_WIDTH_PX = 3;
/** Least mean intercept in the picture [px]. */
const LEAST_SPACING_PX = 20;
/** Fewest cells across the shorter side; with fewer, edges and chance rule. */
export const LEAST_CELLS = 5;
/** Least darkness of a crack, as a share of the ground; own judgement. */
const LEAST_CONTRAST = 0.04;
/** Widest dark band of a crack, as a share of the mean intercept; own judgement. */
const WIDEST_SHARE = 0.25;
/** Least side of a picture [px]: what ten cells of the least spacing need. */
const LEAST_SIDE_PX = 200;
/** Grey at which a place is burnt out, and below which it is lost in the dark. */
const BURNT_OUT = 254;
const LOST = 12;

/** Most rippling of ground without a crack, over what its noise makes; own judgement. */
const MOST_UNEVEN = 6;

type Refusal = Omit<Problem, "where">;

/** Why a picture is too small to be measured; null when it is not. */
export function sizeRefusal(
  { width, height }: Pick<Picture, "width" | "height">,
  name: string,
): Result<never> | null {
  if (Math.min(width, height) >= LEAST_SIDE_PX) return null;
  return refusal(name, {
    code: "photo/too-small",
    what: `what is to be measured has ${width} by ${height} pixels`,
    expected: `at least ${LEAST_SIDE_PX} pixels each way`,
    fix: "photograph it from nearer, or crop less",
  });
}

/** Why a picture cannot be measured at all, before anything is looked for; null when it can. */
export function pictureRefusal(picture: Picture, name: string): Result<never> | null {
  const { grey } = picture;
  const small = sizeRefusal(picture, name);
  if (small) return small;
  const share = (test: (value: number) => boolean) => shareOf(grey, test);
  const burnt = share((value) => value >= BURNT_OUT);
  if (burnt > 0.5)
    return refusal(name, {
      code: "photo/too-bright",
      what: `${percent(burnt)} of the picture is burnt out to plain white`,
      expected: "less than half",
      fix: "photograph it again, less exposed and without glare",
    });
  const dark = share((value) => value <= LOST);
  if (dark > 0.5)
    return refusal(name, {
      code: "photo/too-dark",
      what: `${percent(dark)} of the picture is as good as black`,
      expected: "less than half; cracks are looked for as dark lines on a lighter ground",
      fix: "photograph it again with more light, or count by hand on a dark glaze",
    });
  const first = grey[0]!;
  if (share((value) => value !== first) === 0)
    return refusal(name, {
      code: "photo/one-tone",
      what: "every pixel has the same grey",
      expected: "a photograph of a tile",
      fix: "check that this is the right file",
    });
  return null;
}

/** Why cracks that were found cannot be followed or trusted; null when they can. */
export function crackRefusal(
  profile: { readonly width: number; readonly contrast: number },
  name: string,
): Result<never> | null {
  if (profile.contrast < LEAST_CONTRAST)
    return refusal(name, {
      code: "photo/faint-cracks",
      what: `the cracks are only ${percent(profile.contrast)} darker than the ground`,
      expected: `at least ${percent(LEAST_CONTRAST)}`,
      fix: "ink the cracks, wipe the glaze clean and photograph it again in even light",
    });
  if (profile.width < LEAST_WIDTH_PX)
    return refusal(name, {
      code: "photo/lines-too-thin",
      what: `the cracks are ${profile.width.toFixed(1)} pixels wide`,
      expected: `at least ${LEAST_WIDTH_PX} pixels`,
      fix: "photograph a smaller part from nearer, or at full resolution",
    });
  return null;
}

/** Why ground without a sharp line must not be called uncracked; null when it may. */
export function groundRefusal(unevenness: number, name: string): Result<never> | null {
  if (unevenness <= MOST_UNEVEN) return null;
  return refusal(name, {
    code: "photo/too-blurred",
    what: `no sharp line is there, but the ground is ${unevenness.toFixed(0)} times more rippled than its noise: blurred cracks, or a mottled glaze`,
    expected: `at most ${MOST_UNEVEN} times, to call a tile uncracked`,
    fix: "photograph it again in focus and from nearer; a mottled glaze without cracks is for your eye to judge",
  });
}

/** Why a spacing that was counted cannot be trusted; null when it can. */
export function spacingRefusal(
  counted: {
    readonly interceptPx: number;
    readonly cellsAcross: number;
    readonly pitchMm: number;
    readonly profile: { readonly width: number; readonly softness: number };
  },
  name: string,
): Result<never> | null {
  const { interceptPx, cellsAcross, pitchMm, profile } = counted;
  const share = profile.width / interceptPx;
  if (interceptPx < LEAST_SPACING_PX)
    return refusal(name, {
      code: "photo/spacing-too-small",
      what: `the cracks lie ${interceptPx.toFixed(0)} pixels apart along a line`,
      expected: `at least ${LEAST_SPACING_PX} pixels`,
      fix: "photograph a smaller part from nearer, or at full resolution",
    });
  if (share > WIDEST_SHARE)
    return refusal(name, {
      code: "photo/too-blurred",
      what: `the dark bands of the cracks are ${profile.width.toFixed(0)} pixels wide, ${percent(share)} of their distance, and ${percent(profile.softness)} of that width is soft edge`,
      expected: `bands of at most ${percent(WIDEST_SHARE)} of the distance between cracks`,
      fix: "photograph it again in focus and with the camera still; wipe off spare ink",
    });
  if (cellsAcross < LEAST_CELLS)
    return refusal(name, {
      code: "photo/too-few-cells",
      what: `only ${cellsAcross.toFixed(1)} cells fit across, so about ${lengthFigure(pitchMm)} mm apart rests on too little`,
      expected: `at least ${LEAST_CELLS} cells across the shorter side`,
      fix: "photograph a larger tile, or lay a ruler over several tiles and count by hand",
    });
  return null;
}

/** That a file is no picture which can be measured; `what` says why. */
export function notAPicture(where: string, what: string): Problem {
  return {
    code: "photo/not-a-picture",
    where,
    what,
    expected: "a photograph as a PNG or JPEG file",
    fix: "export it as JPEG at full size",
  };
}

function refusal(where: string, problem: Refusal): Result<never> {
  return failed({ ...problem, where });
}

function shareOf(grey: ArrayLike<number>, test: (value: number) => boolean): number {
  let count = 0;
  for (let i = 0; i < grey.length; i++) if (test(grey[i]!)) count++;
  return count / grey.length;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;
}
