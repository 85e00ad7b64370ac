import { type PieceMesh, PLACES } from "./pieceMesh.ts";

/** Poisson's ratio of fired bodies; 0.17 to 0.24, from memory. */
export const POISSON = 0.2;

/** Gauss's rule of two places, along and across every element. */
const GAUSS = 1 / Math.sqrt(3);
const POINTS: readonly (readonly [number, number])[] = [
  [-GAUSS, -GAUSS],
  [GAUSS, -GAUSS],
  [GAUSS, GAUSS],
  [-GAUSS, GAUSS],
];

/** Stresses at a place: along the radius, the height, around, and in shear. */
const KINDS = 4;

/** Elastic piece of Young's modulus 1, ready for any free strain. */
export interface ElasticPiece {
  readonly mesh: PieceMesh;
  /** Volume that every Gauss place stands for [mm³]. */
  readonly volumes: Float64Array;
  /** Stress over Young's modulus, four kinds a Gauss place, of the last strain that was put in. */
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
  const stress = new Float64Array(count * 4 * KINDS);
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
      places.free[at] = strain;
      const force = strain * felt * places.volumes[at]!;
      for (let a = 0; a < 8; a++) {
        const node = 2 * elements[element + a]!;
        load[node]! += force * (places.perR[row + a]! + places.overR[row + a]!);
        load[node + 1]! += force * places.perZ[row + a]!;
      }
    }
  };

  const readStress = () => {
    for (let at = 0; at < count * 4; at++) {
      const element = (at >> 2) * 8;
      const row = at * 8;
      let [er, ez, et, shear] = [0, 0, 0, 0];
      for (let a = 0; a < 8; a++) {
        const node = 2 * elements[element + a]!;
        const [u, w] = [load[node]!, load[node + 1]!];
        const [perR, perZ] = [places.perR[row + a]!, places.perZ[row + a]!];
        er += perR * u;
        ez += perZ * w;
        et += places.overR[row + a]! * u;
        shear += perZ * u + perR * w;
      }
      const strain = places.free[at]!;
      const spread = (LAME * (er + ez + et - 3 * strain)) as number;
      stress[at * 4] = spread + 2 * SHEAR * (er - strain);
      stress[at * 4 + 1] = spread + 2 * SHEAR * (ez - strain);
      stress[at * 4 + 2] = spread + 2 * SHEAR * (et - strain);
      stress[at * 4 + 3] = SHEAR * shear;
    }
  };

  return {
    mesh,
    volumes: places.volumes,
    stress,
    strain: (free) => {
      putLoad(free);
      solver(load);
      readStress();
    },
  };
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
  /** Free strain at each place, written at every turn. */
  readonly free: Float64Array;
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
    free: new Float64Array(count * 4),
  };
  for (let at = 0; at < count * 4; at++) {
    const nodes = elements.subarray((at >> 2) * 8, (at >> 2) * 8 + 8);
    const [x, y] = POINTS[at & 3]!;
    const eight = shapes(x, y);
    let [rx, ry, zx, zy, radius] = [0, 0, 0, 0, 0];
    for (const [a, { value, perX, perY }] of eight.entries()) {
      const [rNode, zNode] = [r[nodes[a]!]!, z[nodes[a]!]!];
      rx += perX * rNode;
      ry += perY * rNode;
      zx += perX * zNode;
      zy += perY * zNode;
      radius += value * rNode;
    }
    const area = rx * zy - ry * zx;
    made.volumes[at] = 2 * Math.PI * radius * area;
    for (const [a, { value, perX, perY }] of eight.entries()) {
      made.perR[at * 8 + a] = (zy * perX - zx * perY) / area;
      made.perZ[at * 8 + a] = (rx * perY - ry * perX) / area;
      made.overR[at * 8 + a] = value / radius;
    }
  }
  return made;
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
