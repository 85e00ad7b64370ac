import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  lengthFigure
} from "./chunk-N2GCBHTS.js";
import {
  readBytes
} from "./chunk-WA5SZDQ5.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/node/readPhoto.ts
import { createRequire } from "node:module";

// src/core/photo/photoProblems.ts
var LEAST_WIDTH_PX = 3;
var LEAST_SPACING_PX = 20;
var LEAST_CELLS = 5;
var LEAST_CONTRAST = 0.04;
var WIDEST_SHARE = 0.25;
var LEAST_SIDE_PX = 200;
var BURNT_OUT = 254;
var LOST = 12;
var MOST_UNEVEN = 6;
function sizeRefusal({ width, height }, name) {
  if (Math.min(width, height) >= LEAST_SIDE_PX) return null;
  return refusal(name, {
    code: "photo/too-small",
    what: `what is to be measured has ${width} by ${height} pixels`,
    expected: `at least ${LEAST_SIDE_PX} pixels each way`,
    fix: "photograph it from nearer, or crop less"
  });
}
function pictureRefusal(picture, name) {
  const { grey } = picture;
  const small = sizeRefusal(picture, name);
  if (small) return small;
  const share = (test) => shareOf(grey, test);
  const burnt = share((value) => value >= BURNT_OUT);
  if (burnt > 0.5)
    return refusal(name, {
      code: "photo/too-bright",
      what: `${percent(burnt)} of the picture is burnt out to plain white`,
      expected: "less than half",
      fix: "photograph it again, less exposed and without glare"
    });
  const dark = share((value) => value <= LOST);
  if (dark > 0.5)
    return refusal(name, {
      code: "photo/too-dark",
      what: `${percent(dark)} of the picture is as good as black`,
      expected: "less than half; cracks are looked for as dark lines on a lighter ground",
      fix: "photograph it again with more light, or count by hand on a dark glaze"
    });
  const first = grey[0];
  if (share((value) => value !== first) === 0)
    return refusal(name, {
      code: "photo/one-tone",
      what: "every pixel has the same grey",
      expected: "a photograph of a tile",
      fix: "check that this is the right file"
    });
  return null;
}
function crackRefusal(profile, name) {
  if (profile.contrast < LEAST_CONTRAST)
    return refusal(name, {
      code: "photo/faint-cracks",
      what: `the cracks are only ${percent(profile.contrast)} darker than the ground`,
      expected: `at least ${percent(LEAST_CONTRAST)}`,
      fix: "ink the cracks, wipe the glaze clean and photograph it again in even light"
    });
  if (profile.width < LEAST_WIDTH_PX)
    return refusal(name, {
      code: "photo/lines-too-thin",
      what: `the cracks are ${profile.width.toFixed(1)} pixels wide`,
      expected: `at least ${LEAST_WIDTH_PX} pixels`,
      fix: "photograph a smaller part from nearer, or at full resolution"
    });
  return null;
}
function groundRefusal(unevenness, name) {
  if (unevenness <= MOST_UNEVEN) return null;
  return refusal(name, {
    code: "photo/too-blurred",
    what: `no sharp line is there, but the ground is ${unevenness.toFixed(0)} times more rippled than its noise: blurred cracks, or a mottled glaze`,
    expected: `at most ${MOST_UNEVEN} times, to call a tile uncracked`,
    fix: "photograph it again in focus and from nearer; a mottled glaze without cracks is for your eye to judge"
  });
}
function spacingRefusal(counted, name) {
  const { interceptPx, cellsAcross, pitchMm, profile } = counted;
  const share = profile.width / interceptPx;
  if (interceptPx < LEAST_SPACING_PX)
    return refusal(name, {
      code: "photo/spacing-too-small",
      what: `the cracks lie ${interceptPx.toFixed(0)} pixels apart along a line`,
      expected: `at least ${LEAST_SPACING_PX} pixels`,
      fix: "photograph a smaller part from nearer, or at full resolution"
    });
  if (share > WIDEST_SHARE)
    return refusal(name, {
      code: "photo/too-blurred",
      what: `the dark bands of the cracks are ${profile.width.toFixed(0)} pixels wide, ${percent(share)} of their distance, and ${percent(profile.softness)} of that width is soft edge`,
      expected: `bands of at most ${percent(WIDEST_SHARE)} of the distance between cracks`,
      fix: "photograph it again in focus and with the camera still; wipe off spare ink"
    });
  if (cellsAcross < LEAST_CELLS)
    return refusal(name, {
      code: "photo/too-few-cells",
      what: `only ${cellsAcross.toFixed(1)} cells fit across, so about ${lengthFigure(pitchMm)} mm apart rests on too little`,
      expected: `at least ${LEAST_CELLS} cells across the shorter side`,
      fix: "photograph a larger tile, or lay a ruler over several tiles and count by hand"
    });
  return null;
}
function notAPicture(where, what) {
  return {
    code: "photo/not-a-picture",
    where,
    what,
    expected: "a photograph as a PNG or JPEG file",
    fix: "export it as JPEG at full size"
  };
}
function refusal(where, problem) {
  return failed({ ...problem, where });
}
function shareOf(grey, test) {
  let count = 0;
  for (let i = 0; i < grey.length; i++) if (test(grey[i])) count++;
  return count / grey.length;
}
function percent(share) {
  return `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;
}

// src/core/photo/squaredPicture.ts
function squaredPicture(picture, slanted) {
  const { corners, widthMm, heightMm } = slanted;
  const side = (a, b) => Math.hypot(corners[a].x - corners[b].x, corners[a].y - corners[b].y);
  const pxPerMm = Math.max(
    Math.max(side(0, 1), side(3, 2)) / widthMm,
    Math.max(side(0, 3), side(1, 2)) / heightMm
  );
  const width = Math.floor(widthMm * pxPerMm);
  const height = Math.floor(heightMm * pxPerMm);
  const grey = new Float32Array(width * height);
  const place = projection(corners);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      grey[y * width + x] = greyAt(picture, place((x + 0.5) / width, (y + 0.5) / height));
  return { picture: { width, height, grey }, mmPerPx: 1 / pxPerMm };
}
function projection(corners) {
  const [p, q, r, s] = corners;
  const [d1x, d1y] = [q.x - r.x, q.y - r.y];
  const [d2x, d2y] = [s.x - r.x, s.y - r.y];
  const [ex, ey] = [p.x - q.x + r.x - s.x, p.y - q.y + r.y - s.y];
  const area = d1x * d2y - d2x * d1y;
  if (area === 0) throw new RangeError("squaredPicture: the corners lie in one line");
  const g = (ex * d2y - d2x * ey) / area;
  const h = (d1x * ey - ex * d1y) / area;
  return (u, v) => {
    const depth = g * u + h * v + 1;
    return {
      x: ((q.x - p.x + g * q.x) * u + (s.x - p.x + h * s.x) * v + p.x) / depth,
      y: ((q.y - p.y + g * q.y) * u + (s.y - p.y + h * s.y) * v + p.y) / depth
    };
  };
}
function greyAt({ width, height, grey }, { x, y }) {
  const left = Math.min(width - 2, Math.max(0, Math.floor(x - 0.5)));
  const top = Math.min(height - 2, Math.max(0, Math.floor(y - 0.5)));
  const dx = Math.min(1, Math.max(0, x - 0.5 - left));
  const dy = Math.min(1, Math.max(0, y - 0.5 - top));
  const at = top * width + left;
  const upper = grey[at] * (1 - dx) + grey[at + 1] * dx;
  const lower = grey[at + width] * (1 - dx) + grey[at + width + 1] * dx;
  return upper * (1 - dy) + lower * dy;
}

// src/node/readPhoto.ts
var MOST_PIXELS = 4e7;
var MOST_IN_FILE = 2e8;
var FORMATS = ["png", "jpeg"];
var PHOTO_FILE = {
  bytes: 256 * 2 ** 20,
  expected: "a photograph as PNG or JPEG",
  fix: "save it smaller, or crop it to the tile"
};
function pictureLibrary() {
  return createRequire(import.meta.url)("sharp");
}
async function readPhoto(path, want) {
  const bytes = await readBytes(path, PHOTO_FILE);
  if (!bytes.ok) return bytes;
  const size = await uprightSize(bytes.value, path);
  if (!size.ok) return size;
  const { scale } = want;
  const crop = want.crop ?? { x: 0, y: 0, ...size.value };
  const outside2 = cropProblem(crop, { size: size.value, scale, path });
  if (outside2) return failed(outside2);
  const picture = await decoded(bytes.value, { crop, path });
  if (!picture.ok) return picture;
  if (scale.kind === "corners") return ok(squaredPicture(picture.value, scale));
  return ok({ picture: picture.value, mmPerPx: mmPerPx(scale, crop) });
}
function mmPerPx(scale, crop) {
  return scale.kind === "width" ? scale.widthMm / crop.width : scale.distanceMm / Math.hypot(scale.b.x - scale.a.x, scale.b.y - scale.a.y);
}
async function uprightSize(bytes, path) {
  try {
    const found = await pictureLibrary()(bytes, { limitInputPixels: MOST_IN_FILE }).metadata();
    if (!FORMATS.includes(found.format)) return failed(notAPicture(path, `it is ${found.format}`));
    const { width, height } = found.autoOrient;
    return ok({ width, height });
  } catch (error) {
    return failed(pictureProblem(path, error));
  }
}
function cropProblem(crop, {
  size,
  scale,
  path
}) {
  const isInside = ({ x, y }) => x >= 0 && y >= 0 && x <= size.width && y <= size.height;
  const places = scale.kind === "corners" ? scale.corners : scale.kind === "points" ? [scale.a, scale.b] : [];
  if (!places.every(isInside))
    return outside(path, size, {
      code: "photo/scale-outside",
      what: "a place that gives the scale lies outside it"
    });
  if (!isInside(crop) || !isInside({ x: crop.x + crop.width, y: crop.y + crop.height }))
    return outside(path, size, { code: "photo/crop-outside", what: "the crop reaches outside it" });
  if (crop.width * crop.height <= MOST_PIXELS) return null;
  return {
    code: "photo/too-large",
    where: path,
    what: `${Math.round(crop.width * crop.height / 1e6)} million pixels are to be measured`,
    expected: `at most ${MOST_PIXELS / 1e6} million`,
    fix: "take a part of it with --crop, or make the picture smaller"
  };
}
function outside(where, { width, height }, { code, what }) {
  return {
    code,
    where,
    what,
    expected: `pixels inside ${width} by ${height}, counted from the top left of the upright picture`,
    fix: "read the pixels off in a program that shows them"
  };
}
async function decoded(bytes, { crop, path }) {
  try {
    const { data, info } = await pictureLibrary()(bytes, {
      limitInputPixels: MOST_IN_FILE,
      failOn: "error",
      autoOrient: true
    }).flatten({ background: "white" }).extract({
      left: Math.floor(crop.x),
      top: Math.floor(crop.y),
      width: Math.floor(crop.width),
      height: Math.floor(crop.height)
    }).toColourspace("b-w").raw().toBuffer({ resolveWithObject: true });
    const grey = new Uint8Array(info.width * info.height);
    for (let i = 0; i < grey.length; i++) grey[i] = data[i * info.channels];
    return ok({ width: info.width, height: info.height, grey });
  } catch (error) {
    return failed(pictureProblem(path, error));
  }
}
function pictureProblem(path, error) {
  const said = error instanceof Error ? error.message : String(error);
  return /pixel limit/.test(said) ? {
    code: "photo/too-large",
    where: path,
    what: "it has more pixels than a picture may have here",
    expected: `at most ${MOST_IN_FILE / 1e6} million`,
    fix: "make the picture smaller first"
  } : notAPicture(path, "it cannot be read as a picture, or is damaged");
}

export {
  LEAST_WIDTH_PX,
  LEAST_CELLS,
  pictureRefusal,
  crackRefusal,
  groundRefusal,
  spacingRefusal,
  pictureLibrary,
  readPhoto
};
