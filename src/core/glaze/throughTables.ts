/** How hard a long crack of some depth still pulls at its bottom, for one wall. */
export interface DepthTable {
  /** Wall, without the glaze, over coat. */
  readonly wallOverCoat: number;
  /** Depth from the glaze surface over coat; K* = K / (glaze stress × √coat). */
  readonly rows: readonly (readonly [depthOverCoat: number, kStar: number])[];
}

/**
 * Glazed on one face, free to bend. Equal stiffness of glaze and body, the body's own counter-stress included. The last row of
 * a wall lies within a coat or so of the far face.
 * @see SOURCES["depth-weight-functions"]
 */
export const FREE_DEPTHS: readonly DepthTable[] = [
  {
    wallOverCoat: 4,
    rows: [
      [1.06, 1.706],
      [1.2, 1.206],
      [1.5, 0.723],
      [2, 0.342],
      [2.5, 0.16],
      [3, 0.079],
      [4, 0.133],
    ],
  },
  {
    wallOverCoat: 6,
    rows: [
      [1.06, 1.639],
      [1.2, 1.228],
      [1.5, 0.817],
      [2, 0.469],
      [2.5, 0.275],
      [3, 0.154],
      [4, 0.034],
      [5, 0.005],
      [6, 0.054],
    ],
  },
  {
    wallOverCoat: 8,
    rows: [
      [1.06, 1.618],
      [1.2, 1.252],
      [1.5, 0.881],
      [2, 0.558],
      [2.5, 0.368],
      [3, 0.243],
      [4, 0.095],
      [5, 0.024],
      [6, -0.002],
      [8, 0.029],
    ],
  },
  {
    wallOverCoat: 10,
    rows: [
      [1.06, 1.611],
      [1.2, 1.272],
      [1.5, 0.927],
      [2, 0.621],
      [2.5, 0.437],
      [3, 0.312],
      [4, 0.156],
      [5, 0.069],
      [6, 0.02],
      [8, 0.004],
      [10, 0.018],
    ],
  },
  {
    wallOverCoat: 12,
    rows: [
      [1.06, 1.609],
      [1.2, 1.289],
      [1.5, 0.962],
      [2, 0.668],
      [2.5, 0.487],
      [3, 0.365],
      [4, 0.206],
      [5, 0.112],
      [6, 0.054],
      [8, -0.007],
      [10, 0.005],
      [12, 0.012],
    ],
  },
  {
    wallOverCoat: 16,
    rows: [
      [1.06, 1.612],
      [1.2, 1.315],
      [1.5, 1.011],
      [2, 0.736],
      [2.5, 0.565],
      [3, 0.444],
      [4, 0.284],
      [5, 0.183],
      [6, 0.116],
      [8, 0.038],
      [10, -0.003],
      [12, 0.008],
      [16, 0.005],
    ],
  },
  {
    wallOverCoat: 20,
    rows: [
      [1.06, 1.616],
      [1.2, 1.333],
      [1.5, 1.045],
      [2, 0.782],
      [2.5, 0.617],
      [3, 0.5],
      [4, 0.341],
      [5, 0.238],
      [6, 0.167],
      [8, 0.078],
      [10, 0.029],
      [12, 0.003],
      [16, 0.006],
    ],
  },
];

/**
 * Glazed on one face of a closed ring of about ten walls radius. Equal stiffness of glaze and body, the body's own counter-stress included. The last row of
 * a wall lies within a coat or so of the far face.
 * @see SOURCES["depth-weight-functions"]
 */
export const RING_DEPTHS: readonly DepthTable[] = [
  {
    wallOverCoat: 4,
    rows: [
      [1.06, 2.03],
      [1.2, 1.841],
      [1.5, 1.767],
      [2, 1.914],
      [2.5, 2.253],
      [3, 2.75],
      [4, 3.541],
    ],
  },
  {
    wallOverCoat: 6,
    rows: [
      [1.06, 1.847],
      [1.2, 1.633],
      [1.5, 1.477],
      [2, 1.437],
      [2.5, 1.513],
      [3, 1.668],
      [4, 2.185],
      [5, 2.862],
      [6, 2.639],
    ],
  },
  {
    wallOverCoat: 8,
    rows: [
      [1.06, 1.771],
      [1.2, 1.548],
      [1.5, 1.362],
      [2, 1.256],
      [2.5, 1.247],
      [3, 1.292],
      [4, 1.504],
      [5, 1.862],
      [6, 2.332],
      [8, 1.926],
    ],
  },
  {
    wallOverCoat: 10,
    rows: [
      [1.06, 1.731],
      [1.2, 1.505],
      [1.5, 1.305],
      [2, 1.168],
      [2.5, 1.119],
      [3, 1.117],
      [4, 1.203],
      [5, 1.382],
      [6, 1.647],
      [8, 2.32],
      [10, 1.412],
    ],
  },
  {
    wallOverCoat: 12,
    rows: [
      [1.06, 1.709],
      [1.2, 1.481],
      [1.5, 1.273],
      [2, 1.118],
      [2.5, 1.047],
      [3, 1.021],
      [4, 1.043],
      [5, 1.135],
      [6, 1.285],
      [8, 1.752],
      [10, 2.208],
      [12, 1.037],
    ],
  },
  {
    wallOverCoat: 16,
    rows: [
      [1.06, 1.685],
      [1.2, 1.457],
      [1.5, 1.242],
      [2, 1.069],
      [2.5, 0.978],
      [3, 0.925],
      [4, 0.886],
      [5, 0.899],
      [6, 0.949],
      [8, 1.141],
      [10, 1.447],
      [12, 1.812],
      [16, 0.54],
    ],
  },
  {
    wallOverCoat: 20,
    rows: [
      [1.06, 1.674],
      [1.2, 1.446],
      [1.5, 1.228],
      [2, 1.047],
      [2.5, 0.945],
      [3, 0.881],
      [4, 0.814],
      [5, 0.794],
      [6, 0.803],
      [8, 0.884],
      [10, 1.036],
      [12, 1.256],
      [16, 1.731],
    ],
  },
];

/**
 * Glazed on both faces, free to bend. Equal stiffness of glaze and body, the body's own counter-stress included. The last row of
 * a wall lies within a coat or so of the far face.
 * @see SOURCES["depth-weight-functions"]
 */
export const BOTH_DEPTHS: readonly DepthTable[] = [
  {
    wallOverCoat: 4,
    rows: [
      [1.06, 1.817],
      [1.2, 1.503],
      [1.5, 1.216],
      [2, 0.99],
      [2.5, 0.864],
      [3, 0.769],
      [4, 0.508],
    ],
  },
  {
    wallOverCoat: 6,
    rows: [
      [1.06, 1.738],
      [1.2, 1.451],
      [1.5, 1.181],
      [2, 0.965],
      [2.5, 0.849],
      [3, 0.779],
      [4, 0.698],
      [5, 0.629],
      [6, 0.44],
    ],
  },
  {
    wallOverCoat: 8,
    rows: [
      [1.06, 1.701],
      [1.2, 1.427],
      [1.5, 1.165],
      [2, 0.95],
      [2.5, 0.83],
      [3, 0.756],
      [4, 0.675],
      [5, 0.639],
      [6, 0.618],
      [8, 0.412],
    ],
  },
  {
    wallOverCoat: 10,
    rows: [
      [1.06, 1.681],
      [1.2, 1.416],
      [1.5, 1.158],
      [2, 0.943],
      [2.5, 0.821],
      [3, 0.742],
      [4, 0.652],
      [5, 0.609],
      [6, 0.592],
      [8, 0.582],
      [10, 0.396],
    ],
  },
  {
    wallOverCoat: 12,
    rows: [
      [1.06, 1.67],
      [1.2, 1.41],
      [1.5, 1.157],
      [2, 0.942],
      [2.5, 0.817],
      [3, 0.734],
      [4, 0.636],
      [5, 0.585],
      [6, 0.561],
      [8, 0.555],
      [10, 0.562],
      [12, 0.385],
    ],
  },
  {
    wallOverCoat: 16,
    rows: [
      [1.06, 1.658],
      [1.2, 1.407],
      [1.5, 1.16],
      [2, 0.946],
      [2.5, 0.818],
      [3, 0.731],
      [4, 0.622],
      [5, 0.56],
      [6, 0.523],
      [8, 0.494],
      [10, 0.498],
      [12, 0.522],
      [16, 0.373],
    ],
  },
  {
    wallOverCoat: 20,
    rows: [
      [1.06, 1.654],
      [1.2, 1.407],
      [1.5, 1.164],
      [2, 0.952],
      [2.5, 0.824],
      [3, 0.735],
      [4, 0.619],
      [5, 0.55],
      [6, 0.506],
      [8, 0.46],
      [10, 0.447],
      [12, 0.454],
      [16, 0.507],
    ],
  },
];
