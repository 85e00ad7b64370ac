import { seededEven, seededNormal } from "../../src/core/math/distributions.ts";

/** A crack from one point to another [px]. */
export interface Segment {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

/** Size of a mosaic [px]. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Parallel lines of this pitch, their normal turned by `turn` from the x axis [rad]. */
export function parallelLines(size: Size, pitch: number, turn: number): readonly Segment[] {
  const reach = Math.hypot(size.width, size.height);
  const count = Math.ceil(reach / pitch);
  const [nx, ny] = [Math.cos(turn), Math.sin(turn)];
  return Array.from({ length: 2 * count + 1 }, (_, i) => {
    const offset = (i - count + 0.37) * pitch;
    const [x, y] = [size.width / 2 + offset * nx, size.height / 2 + offset * ny];
    return { ax: x - reach * ny, ay: y + reach * nx, bx: x + reach * ny, by: y - reach * nx };
  });
}

/** Square cells of side `side`; mean intercept π side/4. */
export function squareNet(size: Size, side: number, turn: number): readonly Segment[] {
  return [...parallelLines(size, side, turn), ...parallelLines(size, side, turn + Math.PI / 2)];
}

/** Hexagons of side `side`; mean intercept 1.36035 side. */
export function hexagonNet(size: Size, side: number, turn: number): readonly Segment[] {
  const reach = Math.hypot(size.width, size.height) / 2 + 3 * side;
  const [stepX, stepY] = [Math.sqrt(3) * side, 1.5 * side];
  const segments: Segment[] = [];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const place = (x: number, y: number) => ({
    x: size.width / 2 + x * cos - y * sin,
    y: size.height / 2 + x * sin + y * cos,
  });
  for (let row = Math.floor(-reach / stepY); row * stepY < reach; row++)
    for (let column = Math.floor(-reach / stepX); column * stepX < reach; column++) {
      const x = (column + (row & 1) / 2) * stepX;
      const y = row * stepY;
      for (const at of [0, 1, 2]) {
        const corner = (k: number) =>
          place(x + side * Math.sin((k * Math.PI) / 3), y - side * Math.cos((k * Math.PI) / 3));
        const [a, b] = [corner(at), corner(at + 1)];
        segments.push({ ax: a.x, ay: a.y, bx: b.x, by: b.y });
      }
    }
  return segments;
}

/** Random straight lines, `density` of length per area [1/px]; mean intercept π/(2 density). */
export function poissonLines(size: Size, density: number, seed: number): readonly Segment[] {
  const even = seededEven(seed);
  const reach = Math.hypot(size.width, size.height) / 2;
  const segments: Segment[] = [];
  let offset = -reach;
  for (;;) {
    offset -= Math.log(1 - even()) / density;
    if (offset > reach) return segments;
    const turn = Math.PI * even();
    const [nx, ny] = [Math.cos(turn), Math.sin(turn)];
    const [x, y] = [size.width / 2 + offset * nx, size.height / 2 + offset * ny];
    segments.push({
      ax: x - 2 * reach * ny,
      ay: y + 2 * reach * nx,
      bx: x + 2 * reach * ny,
      by: y - 2 * reach * nx,
    });
  }
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Cells of scattered points, `density` of them per area [1/px²]; mean intercept π/(4 √density). */
export function voronoi(size: Size, density: number, seed: number): readonly Segment[] {
  const even = seededEven(seed);
  const margin = 4 / Math.sqrt(density);
  const [wide, high] = [size.width + 2 * margin, size.height + 2 * margin];
  const normal = seededNormal(seed + 1);
  const expected = density * wide * high;
  const count = Math.round(expected + Math.sqrt(expected) * normal());
  const points = Array.from({ length: count }, () => ({
    x: even() * wide - margin,
    y: even() * high - margin,
  }));
  const near = neighbours(points, margin);
  return points.flatMap((point, at) =>
    cellEdges(
      point,
      near(point)
        .filter((other) => other !== at)
        .map((i) => points[i] as Point),
      margin,
    ),
  );
}

function neighbours(points: readonly Point[], reach: number) {
  const boxes = new Map<string, number[]>();
  const key = (x: number, y: number) => `${x},${y}`;
  points.forEach(({ x, y }, at) => {
    const box = key(Math.floor(x / reach), Math.floor(y / reach));
    boxes.set(box, [...(boxes.get(box) ?? []), at]);
  });
  return ({ x, y }: Point) => {
    const found: number[] = [];
    for (const dx of [-1, 0, 1])
      for (const dy of [-1, 0, 1])
        found.push(
          ...(boxes.get(key(Math.floor(x / reach) + dx, Math.floor(y / reach) + dy)) ?? []),
        );
    return found;
  };
}

/** Edges of the cell of a point, each edge once over all cells. */
function cellEdges(point: Point, others: readonly Point[], reach: number): readonly Segment[] {
  let corners: { readonly at: Point; readonly owner: Point | null }[] = [
    { at: { x: point.x - reach, y: point.y - reach }, owner: null },
    { at: { x: point.x + reach, y: point.y - reach }, owner: null },
    { at: { x: point.x + reach, y: point.y + reach }, owner: null },
    { at: { x: point.x - reach, y: point.y + reach }, owner: null },
  ];
  for (const other of others) {
    const [nx, ny] = [other.x - point.x, other.y - point.y];
    const limit = (other.x ** 2 + other.y ** 2 - point.x ** 2 - point.y ** 2) / 2;
    const beyond = ({ x, y }: Point) => x * nx + y * ny - limit;
    const kept: typeof corners = [];
    corners.forEach((from, i) => {
      const to = corners[(i + 1) % corners.length] as (typeof corners)[number];
      const [a, b] = [beyond(from.at), beyond(to.at)];
      const share = a / (a - b);
      const cut = {
        x: from.at.x + share * (to.at.x - from.at.x),
        y: from.at.y + share * (to.at.y - from.at.y),
      };
      if (a <= 0) kept.push(from);
      if (a <= 0 && b > 0) kept.push({ at: cut, owner: other });
      if (a > 0 && b <= 0) kept.push({ at: cut, owner: from.owner });
    });
    corners = kept;
  }
  return corners.flatMap(({ at, owner }, i) => {
    const to = (corners[(i + 1) % corners.length] as (typeof corners)[number]).at;
    const mine =
      owner !== null && (point.x < owner.x || (point.x === owner.x && point.y < owner.y));
    return mine ? [{ ax: at.x, ay: at.y, bx: to.x, by: to.y }] : [];
  });
}

/** Each piece is cut across its longer side until no side exceeds `longest`: cracks meeting squarely. */
export function recursiveDivision(size: Size, longest: number, seed: number): readonly Segment[] {
  const even = seededEven(seed);
  const segments: Segment[] = [];
  const divide = (x: number, y: number, width: number, height: number): void => {
    if (Math.max(width, height) <= longest) return;
    const share = 0.3 + 0.4 * even();
    if (width > height) {
      const at = x + share * width;
      segments.push({ ax: at, ay: y, bx: at, by: y + height });
      divide(x, y, share * width, height);
      divide(at, y, (1 - share) * width, height);
    } else {
      const at = y + share * height;
      segments.push({ ax: x, ay: at, bx: x + width, by: at });
      divide(x, y, width, share * height);
      divide(x, at, width, (1 - share) * height);
    }
  };
  divide(-longest, -longest, size.width + 2 * longest, size.height + 2 * longest);
  return segments;
}

/** How a mosaic is photographed. */
export interface Shot extends Size {
  /** Full width of a crack [px]. */
  readonly lineWidth: number;
  /** Darkness of a crack, as a share of the ground; 0.6 when not said. */
  readonly contrast?: number;
  /** One sigma of the blur [px]; 0.6 when not said. */
  readonly blur?: number;
  /** One sigma of the noise, in grey levels of 255; 2 when not said. */
  readonly noise?: number;
  /** How much darker the corner farthest from the light is, as a share; 0 when not said. */
  readonly falloff?: number;
  readonly seed?: number;
}

/** A grey picture of cracks in a bright ground, 0 to 255. */
export interface Rendered extends Size {
  readonly grey: Float32Array;
}

/** A picture of these cracks: drawn with soft edges, blurred, unevenly lit, with noise. */
export function photographed(segments: readonly Segment[], shot: Shot): Rendered {
  const { width, height, contrast = 0.6, falloff = 0 } = shot;
  const cover = new Float32Array(width * height);
  for (const segment of segments) draw(segment, shot, cover);
  const grey = cover.map((share, at) => {
    const along = ((at % width) / width + Math.floor(at / width) / height) / 2;
    return 205 * (1 - falloff * along) * (1 - contrast * share);
  });
  soften(grey, shot, shot.blur ?? 0.6);
  const normal = seededNormal(shot.seed ?? 1);
  const noise = shot.noise ?? 2;
  for (let i = 0; i < grey.length; i++)
    grey[i] = Math.min(
      255,
      Math.max(0, Math.round((grey[i] as number) + (noise === 0 ? 0 : noise * normal()))),
    );
  return { width, height, grey };
}

function draw(segment: Segment, shot: Shot, cover: Float32Array): void {
  const { width, height, lineWidth } = shot;
  const { ax, ay, bx, by } = segment;
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0) return;
  const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
  const reach = lineWidth / 2 + 1;
  const isSteep = Math.abs(uy) > Math.abs(ux);
  const [from, to] = isSteep
    ? [Math.min(ay, by), Math.max(ay, by)]
    : [Math.min(ax, bx), Math.max(ax, bx)];
  const last = isSteep ? height : width;
  const spread = Math.ceil(reach / Math.max(Math.abs(ux), Math.abs(uy))) + 1;
  for (let i = Math.max(0, Math.floor(from - reach)); i < Math.min(last, to + reach); i++) {
    const centre = isSteep ? ax + ((i - ay) * ux) / uy : ay + ((i - ax) * uy) / ux;
    for (let j = Math.floor(centre) - spread; j <= centre + spread + 1; j++) {
      const [x, y] = isSteep ? [j, i] : [i, j];
      if (x < 0 || y < 0 || x >= width || y >= height) continue;
      const along = Math.min(length, Math.max(0, (x - ax) * ux + (y - ay) * uy));
      const away = Math.hypot(x - ax - along * ux, y - ay - along * uy);
      const share = Math.min(1, Math.max(0, lineWidth / 2 + 0.5 - away));
      const at = y * width + x;
      if (share > (cover[at] as number)) cover[at] = share;
    }
  }
}

/** Blurs in place with a plain sampled Gauss curve, edges repeated. */
function soften(grey: Float32Array, { width, height }: Size, sigma: number): void {
  if (sigma <= 0) return;
  const reach = Math.ceil(4 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma ** 2)),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const line = new Float32Array(width + 2 * reach);
  const sums = new Float64Array(width);
  for (let y = 0; y < height; y++) {
    const row = grey.subarray(y * width, (y + 1) * width);
    line.fill(row[0] as number, 0, reach);
    line.set(row, reach);
    line.fill(row[width - 1] as number, reach + width);
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let k = 0; k <= 2 * reach; k++) sum += (weights[k] as number) * (line[x + k] as number);
      row[x] = sum / total;
    }
  }
  const along = grey.slice();
  for (let y = 0; y < height; y++) {
    sums.fill(0);
    weights.forEach((weight, k) => {
      const from = Math.min(height - 1, Math.max(0, y + k - reach)) * width;
      for (let x = 0; x < width; x++)
        sums[x] = (sums[x] as number) + weight * (along[from + x] as number);
    });
    for (let x = 0; x < width; x++) grey[y * width + x] = (sums[x] as number) / total;
  }
}

/** The mean intercept that these cracks have inside the picture: π area / (2 length) [px]. */
export function drawnIntercept(segments: readonly Segment[], size: Size): number {
  const length = segments.reduce((sum, segment) => sum + lengthInside(segment, size), 0);
  return (Math.PI * size.width * size.height) / (2 * length);
}

function lengthInside({ ax, ay, bx, by }: Segment, { width, height }: Size): number {
  const [dx, dy] = [bx - ax, by - ay];
  let [from, to] = [0, 1];
  for (const [start, step, end] of [
    [ax, dx, width],
    [ay, dy, height],
  ] as const) {
    if (step === 0 && (start < 0 || start > end)) return 0;
    if (step === 0) continue;
    from = Math.max(from, Math.min(-start / step, (end - start) / step));
    to = Math.min(to, Math.max(-start / step, (end - start) / step));
  }
  return Math.max(0, to - from) * Math.hypot(dx, dy);
}
