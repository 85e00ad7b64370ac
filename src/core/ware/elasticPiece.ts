import { type PieceMesh, PLACES } from "./pieceMesh.ts";

/** Poisson's ratio of fired bodies; 0.17 to 0.24, from memory. */
const POISSON = 0.2;

/** Gauss's rule of two places, along and across every element. */
const GAUSS = 1 / Math.sqrt(3);
const POINTS: readonly (readonly [number, number])[] = [
  [-GAUSS, -GAUSS],
  [GAUSS, -GAUSS],
  [GAUSS, GAUSS],
  [-GAUSS, GAUSS],
];

/** Gauss's rule of two places along an element and three across it, at which stress is told. */
const ACROSS = Math.sqrt(0.6);
const TOLD: readonly (readonly [number, number])[] = [
  [-GAUSS, -ACROSS],
  [-GAUSS, 0],
  [-GAUSS, ACROSS],
  [GAUSS, -ACROSS],
  [GAUSS, 0],
  [GAUSS, ACROSS],
];
const WEIGHTS = [5 / 9, 8 / 9, 5 / 9] as const;

/** Places of an element at which stress is told: from the outside to the inside, twice. */
export const PLACES_TOLD = TOLD.length;

/** Stresses at a place: along the radius, the height, around, and in shear. */
const KINDS = 4;

/** Elastic piece of Young's modulus 1, ready for any free strain. */
export interface ElasticPiece {
  readonly mesh: PieceMesh;
  /** Volume that every place stands for at which stress is told [mm³]. */
  readonly volumes: Float64Array;
  /** Stress over Young's modulus, four kinds a place, of the last strain that was put in. */
  readonly stress: Float64Array;
  /**
   * Puts in the free strain of every line and place (`line × PLACES + place`) and works out the stress.
   */
  readonly strain: (free: Float64Array) => void;
}

/**
 * Axisymmetric elastic piece of eight-node elements, reduced integration, nothing holding it.
 * The stiffness is taken apart once (Cholesky, banded), so each strain costs some 0.05 ms.
 */
export function elasticPiece(mesh: PieceMesh): ElasticPiece {
  const places = gaussPlaces(mesh);
  const solver = bandedSolver(mesh, places);
  const { elements, line, place } = mesh;
  const count = elements.length / 8;
  const told = placesTold(mesh);
  const stress = new Float64Array(count * PLACES_TOLD * KINDS);
  const own = new Float64Array(4 * KINDS);
  const ownFree = new Float64Array(4);
  const nodal = new Float64Array(8);
  const load = new Float64Array(mesh.r.length * 2);
  const lattice = Int32Array.from(line, (each, node) => each * PLACES + place[node]!);
  const felt = 1 / (1 - 2 * POISSON);

  const putLoad = (free: Float64Array) => {
    load.fill(0);
    for (let at = 0; at < count * 4; at++) {
      const element = (at >> 2) * 8;
      const row = at * 8;
      let strain = 0;
      for (let a = 0; a < 8; a++)
        strain += places.shape[(at & 3) * 8 + a]! * free[lattice[elements[element + a]!]!]!;
      const force = strain * felt * places.volumes[at]!;
      for (let a = 0; a < 8; a++) {
        const node = 2 * elements[element + a]!;
        load[node]! += force * (places.perR[row + a]! + places.overR[row + a]!);
        load[node + 1]! += force * places.perZ[row + a]!;
      }
    }
  };

  /** Stress at the four Gauss places of an element, where it is best known, and the free strain. */
  const putOwn = (element: number) => {
    for (let point = 0; point < 4; point++) {
      const row = (element * 4 + point) * 8;
      let er = 0;
      let ez = 0;
      let et = 0;
      let shear = 0;
      let strain = 0;
      for (let a = 0; a < 8; a++) {
        const node = 2 * elements[element * 8 + a]!;
        const u = load[node]!;
        const w = load[node + 1]!;
        er += places.perR[row + a]! * u;
        ez += places.perZ[row + a]! * w;
        et += places.overR[row + a]! * u;
        shear += places.perZ[row + a]! * u + places.perR[row + a]! * w;
        strain += places.shape[point * 8 + a]! * nodal[a]!;
      }
      const spread = LAME * (er + ez + et - 3 * strain);
      const at = point * KINDS;
      own[at] = spread + 2 * SHEAR * (er - strain);
      own[at + 1] = spread + 2 * SHEAR * (ez - strain);
      own[at + 2] = spread + 2 * SHEAR * (et - strain);
      own[at + 3] = SHEAR * shear;
      ownFree[point] = strain;
    }
  };

  /** Stress across an element: straight between its own places, less what the free strain is curved. */
  const putStress = (element: number, k: number) => {
    const outer = k < 3 ? 0 : 1;
    const inner = k < 3 ? 3 : 2;
    const to = SHARE_IN[k % 3]!;
    let strain = 0;
    for (let a = 0; a < 8; a++) strain += told.shape[k * 8 + a]! * nodal[a]!;
    const straight = ownFree[outer]! * (1 - to) + ownFree[inner]! * to;
    // The sheet is free to grow thicker, so this acts along it and around only.
    const curved = (straight - strain) / (1 - POISSON);
    const place = element * PLACES_TOLD + k;
    const at = place * KINDS;
    const along = told.along[2 * place]!;
    const up = told.along[2 * place + 1]!;
    for (let kind = 0; kind < KINDS; kind++)
      stress[at + kind] = own[outer * 4 + kind]! * (1 - to) + own[inner * 4 + kind]! * to;
    stress[at]! += curved * along * along;
    stress[at + 1]! += curved * up * up;
    stress[at + 2]! += curved;
    stress[at + 3]! += curved * along * up;
  };

  const readStress = (free: Float64Array) => {
    for (let element = 0; element < count; element++) {
      for (let a = 0; a < 8; a++) nodal[a] = free[lattice[elements[element * 8 + a]!]!]!;
      putOwn(element);
      for (let k = 0; k < PLACES_TOLD; k++) putStress(element, k);
    }
  };

  return {
    mesh,
    volumes: told.volumes,
    stress,
    strain: (free) => {
      putLoad(free);
      solver(load);
      readStress(free);
    },
  };
}

/** Share of the way from the outer to the inner Gauss place at which stress is told. */
const SHARE_IN = TOLD.slice(0, 3).map(([, y]) => (1 + y / GAUSS) / 2);

/** Shape functions, volumes and direction along the piece of the places at which stress is told. */
function placesTold({ elements, r, z }: PieceMesh) {
  const count = elements.length / 8;
  const shape = Float64Array.from(TOLD.flatMap(([x, y]) => shapes(x, y).map(({ value }) => value)));
  const volumes = new Float64Array(count * PLACES_TOLD);
  const along = new Float64Array(count * PLACES_TOLD * 2);
  for (let at = 0; at < volumes.length; at++) {
    const element = Math.floor(at / PLACES_TOLD);
    const nodes = elements.subarray(element * 8, element * 8 + 8);
    const [x, y] = TOLD[at % PLACES_TOLD]!;
    const { rx, zx, area, radius } = mapped(nodes, { r, z }, shapes(x, y));
    volumes[at] = 2 * Math.PI * radius * area * WEIGHTS[at % 3]!;
    const long = Math.sqrt(rx * rx + zx * zx);
    along[2 * at] = rx / long;
    along[2 * at + 1] = zx / long;
  }
  return { shape, volumes, along };
}

/** Lamé's constants for Young's modulus 1. */
const LAME = POISSON / ((1 + POISSON) * (1 - 2 * POISSON));
const SHEAR = 1 / (2 * (1 + POISSON));

/** Shape functions and their slopes at every Gauss place, eight a place. */
interface GaussPlaces {
  /** Value of each shape function at the four places of any element. */
  readonly shape: Float64Array;
  readonly perR: Float64Array;
  readonly perZ: Float64Array;
  readonly overR: Float64Array;
  readonly volumes: Float64Array;
}

function gaussPlaces({ elements, r, z }: PieceMesh): GaussPlaces {
  const count = elements.length / 8;
  const sized = () => new Float64Array(count * 4 * 8);
  const made: GaussPlaces = {
    shape: Float64Array.from(POINTS.flatMap(([x, y]) => shapes(x, y).map(({ value }) => value))),
    perR: sized(),
    perZ: sized(),
    overR: sized(),
    volumes: new Float64Array(count * 4),
  };
  for (let at = 0; at < count * 4; at++) {
    const nodes = elements.subarray((at >> 2) * 8, (at >> 2) * 8 + 8);
    const [x, y] = POINTS[at & 3]!;
    const eight = shapes(x, y);
    const { rx, ry, zx, zy, area, radius } = mapped(nodes, { r, z }, eight);
    made.volumes[at] = 2 * Math.PI * radius * area;
    for (const [a, { value, perX, perY }] of eight.entries()) {
      made.perR[at * 8 + a] = (zy * perX - zx * perY) / area;
      made.perZ[at * 8 + a] = (rx * perY - ry * perX) / area;
      made.overR[at * 8 + a] = value / radius;
    }
  }
  return made;
}

/** How an element's own measure lies in the section at a place. */
function mapped(
  nodes: Int32Array,
  { r, z }: Pick<PieceMesh, "r" | "z">,
  eight: ReturnType<typeof shapes>,
) {
  let [rx, ry, zx, zy, radius] = [0, 0, 0, 0, 0];
  for (const [a, { value, perX, perY }] of eight.entries()) {
    const [rNode, zNode] = [r[nodes[a]!]!, z[nodes[a]!]!];
    rx += perX * rNode;
    ry += perY * rNode;
    zx += perX * zNode;
    zy += perY * zNode;
    radius += value * rNode;
  }
  return { rx, ry, zx, zy, radius, area: rx * zy - ry * zx };
}

/** Corners and middles of the sides in an element's own measure, −1 to 1. */
const OWN: readonly (readonly [number, number])[] = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0],
];

/** The eight quadratic shape functions at a place of an element, with their slopes. */
function shapes(x: number, y: number) {
  return OWN.map(([a, b]) => {
    if (a === 0)
      return {
        value: ((1 - x * x) * (1 + b * y)) / 2,
        perX: -x * (1 + b * y),
        perY: ((1 - x * x) * b) / 2,
      };
    if (b === 0)
      return {
        value: ((1 - y * y) * (1 + a * x)) / 2,
        perX: ((1 - y * y) * a) / 2,
        perY: -y * (1 + a * x),
      };
    return {
      value: ((1 + a * x) * (1 + b * y) * (a * x + b * y - 1)) / 4,
      perX: (a * (1 + b * y) * (2 * a * x + b * y)) / 4,
      perY: (b * (1 + a * x) * (a * x + 2 * b * y)) / 4,
    };
  });
}

/** A function that turns a load into the displacements that it makes, in place. */
function bandedSolver(mesh: PieceMesh, places: GaussPlaces): (load: Float64Array) => void {
  const { elements, r } = mesh;
  const size = r.length * 2;
  let band = 0;
  for (let e = 0; e < elements.length; e += 8) {
    const nodes = elements.subarray(e, e + 8);
    band = Math.max(band, 2 * (Math.max(...nodes) - Math.min(...nodes)) + 1);
  }
  // Row i holds columns i − band to i.
  const width = band + 1;
  const rows = new Float64Array(size * width);
  const add = (i: number, j: number, value: number) => {
    if (j <= i) rows[i * width + j - i + band]! += value;
  };
  for (let at = 0; at < places.volumes.length; at++) addStiffness(places, elements, { at, add });
  for (let node = 0; node < r.length; node++) if (r[node]! < 1e-9) add(2 * node, 2 * node, 1e6);
  add(1, 1, 1e6);
  factor(rows, size, band);
  return (load) => {
    for (let i = 0; i < size; i++) {
      let sum = load[i]!;
      const from = Math.max(0, i - band);
      const row = i * width + band - i;
      for (let j = from; j < i; j++) sum -= rows[row + j]! * load[j]!;
      load[i] = sum / rows[row + i]!;
    }
    for (let i = size - 1; i >= 0; i--) {
      const row = i * width + band - i;
      const value = load[i]! / rows[row + i]!;
      load[i] = value;
      for (let j = Math.max(0, i - band); j < i; j++) load[j]! -= rows[row + j]! * value;
    }
  };
}

function addStiffness(
  places: GaussPlaces,
  elements: Int32Array,
  to: { readonly at: number; readonly add: (i: number, j: number, value: number) => void },
): void {
  const { at, add } = to;
  const volume = places.volumes[at]!;
  for (let a = 0; a < 8; a++) {
    const i = 2 * elements[(at >> 2) * 8 + a]!;
    const [ar, az, ao] = [
      places.perR[at * 8 + a]!,
      places.perZ[at * 8 + a]!,
      places.overR[at * 8 + a]!,
    ];
    for (let b = 0; b < 8; b++) {
      const j = 2 * elements[(at >> 2) * 8 + b]!;
      const [br, bz, bo] = [
        places.perR[at * 8 + b]!,
        places.perZ[at * 8 + b]!,
        places.overR[at * 8 + b]!,
      ];
      add(
        i,
        j,
        volume * (LAME * (ar + ao) * (br + bo) + SHEAR * (2 * ar * br + 2 * ao * bo + az * bz)),
      );
      add(i, j + 1, volume * (LAME * (ar + ao) * bz + SHEAR * az * br));
      add(i + 1, j, volume * (LAME * az * (br + bo) + SHEAR * ar * bz));
      add(i + 1, j + 1, volume * (LAME * az * bz + SHEAR * (2 * az * bz + ar * br)));
    }
  }
}

/** Cholesky's factor of a banded matrix, in place. */
function factor(rows: Float64Array, size: number, band: number): void {
  const width = band + 1;
  for (let i = 0; i < size; i++) {
    const row = i * width + band - i;
    for (let j = Math.max(0, i - band); j <= i; j++) {
      const other = j * width + band - j;
      let sum = rows[row + j]!;
      for (let k = Math.max(0, i - band, j - band); k < j; k++)
        sum -= rows[row + k]! * rows[other + k]!;
      rows[row + j] = i === j ? Math.sqrt(sum) : sum / rows[other + j]!;
    }
  }
}
