import type { Source } from "./source.ts";

/** Sources of stress, cracks and delayed crazing in a glazed wall. */
export const GLAZE_STRESS_SOURCES = {
  "timoshenko-1925": {
    title: "Analysis of bi-metal thermostats",
    author: "S. Timoshenko",
    publisher: "Journal of the Optical Society of America 11, 233–255",
    year: 1925,
    locator: "curvature of two bonded strips",
    seen: "from memory",
  },
  "beuth-1992": {
    title: "Cracking of thin bonded films in residual tension",
    author: "J. L. Beuth",
    publisher: "International Journal of Solids and Structures 29, 1657–1675",
    year: 1992,
    locator: "g 1.258 for equal stiffness; Z is π/2 of it",
    seen: "from memory",
  },
  "channel-elements": {
    title: "Cracks through a coat on a body: energy against stiffness, wall and spacing",
    publisher: "finite elements in plane strain",
    year: 2026,
    locator:
      "Poisson ratios 0.20; gives 1.975 for equal stiffness where Hutchinson & Suo print 1.976",
    seen: "own computation",
  },
  "depth-weight-functions": {
    title: "Long cracks through a glaze into its wall: stress intensity against depth",
    publisher: "superposed edge cracks",
    year: 2026,
    locator:
      "equal stiffness; strip in tension agrees with the handbook's 1.367, 1.660 and 2.827 at 0.2, 0.3 and 0.5 of its width",
    seen: "own computation",
  },
  "depth-stiffness": {
    title: "What a body softer or stiffer than its glaze changes about a crack's depth",
    publisher: "finite elements in plane strain",
    year: 2026,
    locator:
      "body of 0.2 to 2 of the glaze's stiffness, walls of 4 to 20 coats, Poisson ratios 0.20; for equal stiffness within 1 % of the superposed edge cracks on both faces, within 3 % on one (a ring of great radius)",
    seen: "own computation",
  },
  "ceramics-toughness": {
    title: "Toughness, stiffness and Poisson's ratio of fired bodies",
    publisher: "handbooks of ceramics",
    year: null,
    locator: "earthenware 0.4 to 0.9, stoneware 0.9 to 1.4, porcelain 1.0 to 1.4 MPa·√m",
    seen: "from memory",
  },
  "glaze-squeeze": {
    title: "Squeeze that is wanted in a glaze, 20 to 80 MPa",
    publisher: "teaching of ceramics",
    year: null,
    locator: "a glaze bears up to ten times as much squeeze as pull",
    seen: "from memory",
  },
  "four-porous-bodies": {
    title: "Fit of several glazes on four porous bodies, and crazing in steam",
    publisher: "a study of tile bodies, seen without its title page",
    year: null,
    locator:
      "glaze over body by more than about 1.0 millionths per kelvin cracks in the kiln, by 0 to 1.0 perhaps days later, below not even in 12 h of steam; moisture growth 0.05 to 0.1 %",
    seen: "at second hand",
  },
  "hall-wilson-hoff-2011": {
    title: "Mass gain of fired clay with the fourth root of time, data to 58 years",
    author: "Hall, Wilson & Hoff",
    publisher: "Journal of the American Ceramic Society 94, 3651",
    year: 2011,
    locator: "long-term growth of 0.05 to 0.20 %",
    seen: "abstract only",
  },
  "morgan-1941": {
    title: "Moisture expansion of a vitrified red body",
    author: "Morgan",
    publisher: "Journal of the American Ceramic Society",
    year: 1941,
    locator: "none measured in 200 turns of wet and dry",
    seen: "abstract only",
  },
  "glass-slow-growth": {
    title: "Cracks that grow slowly in wet soda-lime glass",
    publisher: "handbooks of glass strength",
    year: null,
    locator: "standstill at about 0.25 MPa·√m, exponent of speed 16 to 20",
    seen: "from memory",
  },
} as const satisfies Record<string, Source>;
