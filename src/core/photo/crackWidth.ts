import { medianInPlace } from "../math/statistics.ts";
import { type Place, type Plane, reduced } from "./PhotoMeasurement.ts";
import { isCrest, type RidgeLevels, ridgeLevels, ridges } from "./ridges.ts";

/** Smoothing with which each size of the picture is searched [px of that size]. */
const SEARCH_SIGMA = 1.2;

/** How many scatters above the ground a crest must stand to be measured across. */
const FAR_SIGMAS = 7;

/** Most cracks that are measured across. */
const MOST_PROFILES = 4000;

/** Least side of a size of the picture that is searched [px]. */
const LEAST_SIDE = 48;

/** Width from which a crack is measured well [px of that size]. */
const MEASURED_WIDTH = 4;

/** Farthest that is looked for the side of a crack [px]. */
const FARTHEST = 14;

/** Least share of places on a crest for a size to count; less is a stray mark. */
const LEAST_SHARE = 2e-4;

/** What cracks are like where one looks square across them; lengths in pixels of the picture. */
export interface CrackProfile {
  /** Full width at half the depth, middle of all places measured [px]. */
  readonly width: number;
  /** How much darker than the ground the middle of a crack is, as a share of the ground. */
  readonly contrast: number;
  /** Distance in which a side goes from 10 to 90 % of the depth, over the width; sharp is 0. */
  readonly softness: number;
  readonly measured: number;
}

/** What a first look at a picture tells. */
export interface FirstLook {
  /** Null when at no size anything like a crack stands out from the ground. */
  readonly profile: CrackProfile | null;
  /**
   * How many times more the ground is rippled, at the size where that is most, than the noise of
   * single pixels alone would make it: about 1 for even ground.
   */
  readonly unevenness: number;
}

/** Width and darkness of the cracks, found at the size of the picture where they stand out most. */
export function crackProfile(flat: Plane): FirstLook {
  const sizes: Plane[] = [];
  let best: Best | null = null;
  let finest = 0;
  let unevenness = 1;
  for (
    let plane = flat;
    Math.min(plane.width, plane.height) >= LEAST_SIDE;
    plane = reduced(plane, 2)
  ) {
    const strength = ridges(plane, [SEARCH_SIGMA]);
    const levels = ridgeLevels(strength, FAR_SIGMAS);
    const { ground, scatter, crest, crestShare } = levels;
    const score = crestShare < LEAST_SHARE || scatter === 0 ? 0 : (crest - ground) / scatter;
    if (sizes.length === 0) finest = scatter;
    else if (finest > 0) unevenness = Math.max(unevenness, (scatter * 2 ** sizes.length) / finest);
    if (score > (best?.score ?? 0)) best = { strength, levels, score, size: sizes.length };
    sizes.push(plane);
  }
  return { profile: best === null ? null : measured(sizes, best), unevenness };
}

/** The size of the picture in which cracks stand out most. */
interface Best {
  readonly strength: Plane;
  readonly levels: RidgeLevels;
  readonly score: number;
  /** How many times the picture was halved. */
  readonly size: number;
}

/** Looks across the cracks in finer sizes than they were found in, until they are wide enough. */
function measured(sizes: readonly Plane[], best: Best): CrackProfile | null {
  const found = places(best).map((i) => {
    const { width } = best.strength;
    return {
      x: (i % width) + 0.5,
      y: Math.floor(i / width) + 0.5,
      normal: normalAt(sizes[best.size]!, i),
    };
  });
  for (let size = Math.max(0, best.size - 1); ; size--) {
    const grown = 2 ** (best.size - size);
    const profiles = found
      .map(({ x, y, normal }) =>
        across(sizes[size]!, { x: grown * x - 0.5, y: grown * y - 0.5 }, normal),
      )
      .filter((profile) => profile !== null);
    if (profiles.length === 0) return null;
    const width = medianInPlace(profiles.map((each) => each.width));
    if (width < MEASURED_WIDTH && size > 0) continue;
    return {
      width: width * 2 ** size,
      contrast: medianInPlace(profiles.map(({ depth }) => depth)),
      softness: medianInPlace(profiles.map(({ softness }) => softness)),
      measured: profiles.length,
    };
  }
}

function places({ strength, levels }: Best): readonly number[] {
  const { values, width, height } = strength;
  const { ground, scatter, crest } = levels;
  const least = Math.max(ground + FAR_SIGMAS * scatter, crest / 2);
  const edge = FARTHEST + 2;
  const found: number[] = [];
  for (let y = edge; y < height - edge; y++)
    for (let i = y * width + edge; i < (y + 1) * width - edge; i++)
      if (values[i]! > least && isCrest(values, i, width)) found.push(i);
  const stride = Math.max(1, Math.ceil(found.length / MOST_PROFILES));
  return found.filter((_, at) => at % stride === 0);
}

interface Across {
  readonly width: number;
  readonly depth: number;
  readonly softness: number;
}

/** The darkness square across the crack at a place; null where its sides are not both found. */
function across(plane: Plane, { x, y }: Place, [nx, ny]: readonly [number, number]): Across | null {
  const darkAt = (away: number) =>
    1 -
    [-1, 0, 1].reduce(
      (sum, along) =>
        sum + valueAt(plane, x + away * nx - along * ny, y + away * ny + along * nx) / 3,
      0,
    );
  const depth = (darkAt(-0.5) + darkAt(0) + darkAt(0.5)) / 3;
  if (depth <= 0) return null;
  const side = (share: number, sign: 1 | -1) => {
    for (let step = 1; step <= 4 * FARTHEST; step++) {
      const [inner, outer] = [darkAt((sign * (step - 1)) / 4), darkAt((sign * step) / 4)];
      if (outer < share * depth)
        return (step - 1 + Math.max(0, (inner - share * depth) / (inner - outer))) / 4;
    }
    return null;
  };
  const [left, right] = [side(0.5, -1), side(0.5, 1)];
  if (left === null || right === null) return null;
  const [inner, outer] = [side(0.9, 1), side(0.1, 1)];
  const width = left + right;
  const softness = inner === null || outer === null ? 1 : (outer - inner) / width;
  return { width, depth, softness };
}

/** Unit vector across the line at a place, from the curvature of the values around it. */
function normalAt({ values: f, width }: Plane, i: number): readonly [number, number] {
  const at = (dx: number, dy: number) => f[i + dy * width + dx]!;
  let [xx, yy, xy] = [0, 0, 0];
  for (let k = -2; k <= 2; k++) {
    xx += at(-2, k) - 2 * at(0, k) + at(2, k);
    yy += at(k, -2) - 2 * at(k, 0) + at(k, 2);
  }
  for (const k of [1, 2]) xy += at(-k, -k) + at(k, k) - at(k, -k) - at(-k, k);
  const turn = Math.atan2(2 * xy, xx - yy) / 2;
  return [Math.cos(turn), Math.sin(turn)];
}

function valueAt({ values, width }: Plane, x: number, y: number): number {
  const left = Math.min(width - 2, Math.max(0, Math.floor(x)));
  const top = Math.min(values.length / width - 2, Math.max(0, Math.floor(y)));
  const at = top * width + left;
  const [dx, dy] = [x - left, y - top];
  const upper = values[at]! * (1 - dx) + values[at + 1]! * dx;
  const lower = values[at + width]! * (1 - dx) + values[at + width + 1]! * dx;
  return upper * (1 - dy) + lower * dy;
}
