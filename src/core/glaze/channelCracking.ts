/**
 * Release number Z of a lone channel crack in a coat on a thick body, against stiffness of the body
 * over that of the glaze (Young's moduli, both Poisson ratios 0.20), softest body first.
 * @see SOURCES["channel-elements"]
 */
export const Z_THICK_BODY: readonly (readonly [stiffnessRatio: number, z: number])[] = [
  [0.2, 4.3066],
  [0.3, 3.4746],
  [0.4, 2.9996],
  [0.5, 2.6879],
  [0.6, 2.4657],
  [0.7, 2.2984],
  [0.8, 2.1675],
  [0.9, 2.0619],
  [1, 1.9748],
  [1.2, 1.8393],
  [1.5, 1.697],
  [2, 1.5465],
];

/** The same on a wall of so many coats, free to bend, for one stiffness ratio. */
export interface WallTable {
  readonly stiffnessRatio: number;
  /** Wall over coat, and Z. */
  readonly rows: readonly (readonly [wallOverCoat: number, z: number])[];
}

/**
 * Z of a lone crack in a coat on one face of a finite wall, softest body first.
 * A wall that is held straight gives the same for a lone crack: its kink there is local.
 * @see SOURCES["channel-elements"]
 */
export const Z_FINITE_WALL: readonly WallTable[] = [
  {
    stiffnessRatio: 0.5,
    rows: [
      [2, 5.3555],
      [3, 4.1993],
      [4, 3.6975],
      [5, 3.4237],
      [6, 3.254],
      [8, 3.0588],
      [10, 2.9526],
      [15, 2.8279],
      [20, 2.7753],
      [40, 2.7142],
    ],
  },
  {
    stiffnessRatio: 0.7,
    rows: [
      [2, 4.2694],
      [3, 3.3849],
      [4, 3.007],
      [5, 2.8042],
      [6, 2.6806],
      [8, 2.5414],
      [10, 2.4678],
      [15, 2.3844],
      [20, 2.3506],
      [40, 2.3133],
    ],
  },
  {
    stiffnessRatio: 1,
    rows: [
      [2, 3.392],
      [3, 2.7317],
      [4, 2.4555],
      [5, 2.3103],
      [6, 2.2235],
      [8, 2.1282],
      [10, 2.0793],
      [15, 2.0257],
      [20, 2.005],
      [40, 1.983],
    ],
  },
];

/** A value read off a table, and whether the table reaches that far. */
export interface TableValue {
  readonly value: number;
  /** Which end was passed; the value is then that of the end. */
  readonly past: "low end" | "high end" | null;
}

/**
 * Value of a table straight between its rows; past an end it is that end's value, and says so.
 *
 * @param rows At least one, place first, rising.
 */
export function tableLine(
  rows: readonly (readonly [place: number, value: number])[],
  place: number,
): TableValue {
  const first = rows[0];
  const last = rows.at(-1);
  if (first === undefined || last === undefined || Number.isNaN(place))
    throw new RangeError(`tableLine: ${rows.length} rows at ${place}`);
  if (place < first[0]) return { value: first[1], past: "low end" };
  if (place > last[0]) return { value: last[1], past: "high end" };
  let [below, upper] = [-1, rows.length - 1];
  while (upper - below > 1) {
    const middle = (below + upper) >> 1;
    if ((rows[middle] as readonly [number, number])[0] < place) below = middle;
    else upper = middle;
  }
  const [toPlace, to] = rows[upper] as readonly [number, number];
  if (toPlace === place) return { value: to, past: null };
  const [fromPlace, from] = rows[upper - 1] as readonly [number, number];
  return { value: from + ((to - from) * (place - fromPlace)) / (toPlace - fromPlace), past: null };
}

/** How stiff a body is beside its glaze, and how much wall lies behind the coat. */
export interface Backing {
  /** Young's modulus of the body over that of the glaze. */
  readonly stiffnessRatio: number;
  /** Wall behind a crack over coat; may be infinite. */
  readonly wallOverCoat: number;
}

/** Release number of a lone crack, and where its tables did not reach. */
export interface ReleaseNumber {
  /** Energy that a running crack sets free is z × stress² × coat / plane-strain stiffness. */
  readonly z: number;
  /** In words; empty inside the tables. */
  readonly past: readonly string[];
}

/** Depth correction of each wall table: 1/(wall over coat) and the logarithm of its Z over a thick body's. */
const WALL_LINES = Z_FINITE_WALL.map(({ stiffnessRatio, rows }) => {
  const thick = tableLine(Z_THICK_BODY, stiffnessRatio).value;
  const line = rows.map(([wall, z]) => [1 / wall, Math.log(z / thick)] as const).reverse();
  return { stiffnessRatio, line: [[0, 0] as const, ...line] };
});

const THICK_LINE = Z_THICK_BODY.map(([ratio, z]) => [Math.log(ratio), Math.log(z)] as const);

/**
 * Release number Z of a crack that runs alone through a coat on a body.
 * Between rows in logarithms; past an end the end's value holds and `past` says so. What a wall of
 * finite thickness adds is tabled for bodies of 0.5 to 1 of the glaze's stiffness, else the
 * nearest of these is taken.
 */
export function releaseNumber({ stiffnessRatio, wallOverCoat }: Backing): ReleaseNumber {
  if (!(stiffnessRatio > 0 && wallOverCoat > 0))
    throw new RangeError(`releaseNumber: ratio ${stiffnessRatio}, wall ${wallOverCoat}`);
  const thick = tableLine(THICK_LINE, Math.log(stiffnessRatio));
  const finite = WALL_LINES.map(
    ({ stiffnessRatio: at, line }) =>
      [Math.log(at), tableLine(line, 1 / wallOverCoat).value] as const,
  );
  const extra = tableLine(finite, Math.log(stiffnessRatio)).value;
  return { z: Math.exp(thick.value + extra), past: pastEnds(thick.past, wallOverCoat) };
}

function pastEnds(stiffness: "low end" | "high end" | null, wall: number): readonly string[] {
  return [
    ...(stiffness === "low end"
      ? [
          "the body is softer than a fifth of the glaze, where the table of crack energy ends: cracking is underrated",
        ]
      : []),
    ...(stiffness === "high end"
      ? [
          "the body is more than twice as stiff as the glaze, where the table of crack energy ends: cracking is overrated",
        ]
      : []),
    ...(wall < 2
      ? [
          "the wall is thinner than two coats, where the table of crack energy ends: cracking is underrated",
        ]
      : []),
  ];
}

/** Coat [mm] and toughness [MPa·√m] that a stress meets. */
export interface Coat {
  readonly coatMm: number;
  readonly toughnessMPaRootM: number;
}

/** Load on a coat: stress² × coat / toughness²; a lone crack can run from 1/Z on. */
export function crackingLoad(stressMPa: number, { coatMm, toughnessMPaRootM }: Coat): number {
  return (stressMPa ** 2 * coatMm) / 1000 / toughnessMPaRootM ** 2;
}

/** Stress that a load means [MPa]. */
export function stressAtLoad(load: number, { coatMm, toughnessMPaRootM }: Coat): number {
  return toughnessMPaRootM * Math.sqrt((load * 1000) / coatMm);
}

/**
 * Least coat in which a crack can run at a stress [mm]; it falls as the square of the stress.
 * @see SOURCES["hutchinson-suo-1992"]
 */
export function thresholdCoatMm(
  stressMPa: number,
  { z, toughnessMPaRootM }: { readonly z: number; readonly toughnessMPaRootM: number },
): number {
  return (1000 * toughnessMPaRootM ** 2) / (z * stressMPa ** 2);
}
