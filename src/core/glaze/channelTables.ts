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
