import type { Picture, Place } from "./Picture.ts";

/** A four-sided piece of a picture, and the rectangle that it shows. */
interface Slanted {
  /** Top left, top right, bottom right, bottom left [px]. */
  readonly corners: readonly [Place, Place, Place, Place];
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A rectangle seen straight on, at the finest scale that its slanted picture has. */
export interface SquaredPicture {
  readonly picture: Picture;
  readonly mmPerPx: number;
}

/**
 * The slant taken out of a picture of a flat rectangle, by the projection that maps its corners.
 *
 * @throws RangeError when the corners lie in one line.
 */
export function squaredPicture(picture: Picture, slanted: Slanted): SquaredPicture {
  const { corners, widthMm, heightMm } = slanted;
  const side = (a: 0 | 1 | 2 | 3, b: 0 | 1 | 2 | 3) =>
    Math.hypot(corners[a].x - corners[b].x, corners[a].y - corners[b].y);
  const pxPerMm = Math.max(
    Math.max(side(0, 1), side(3, 2)) / widthMm,
    Math.max(side(0, 3), side(1, 2)) / heightMm,
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

/** Maps the unit square, its corners first, onto the four corners. */
function projection(corners: Slanted["corners"]): (u: number, v: number) => Place {
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
      y: ((q.y - p.y + g * q.y) * u + (s.y - p.y + h * s.y) * v + p.y) / depth,
    };
  };
}

/** Grey at a place, between the middles of four pixels. */
function greyAt({ width, height, grey }: Picture, { x, y }: Place): number {
  const left = Math.min(width - 2, Math.max(0, Math.floor(x - 0.5)));
  const top = Math.min(height - 2, Math.max(0, Math.floor(y - 0.5)));
  const dx = Math.min(1, Math.max(0, x - 0.5 - left));
  const dy = Math.min(1, Math.max(0, y - 0.5 - top));
  const at = top * width + left;
  const upper = (grey[at] as number) * (1 - dx) + (grey[at + 1] as number) * dx;
  const lower = (grey[at + width] as number) * (1 - dx) + (grey[at + width + 1] as number) * dx;
  return upper * (1 - dy) + lower * dy;
}
