import type { Source } from "./source.ts";

/** Sources of the photo room: counting cracks along lines, and finding dark lines in a picture. */
export const PHOTO_SOURCES = {
  "astm-e112": {
    title: "E112, Standard Test Methods for Determining Average Grain Size",
    publisher: "ASTM International",
    year: 2013,
    locator: "lineal intercept procedure; statistical analysis: 95 % interval, relative accuracy",
    seen: "from memory",
  },
  "underwood-1970": {
    title: "Quantitative Stereology",
    author: "E. E. Underwood",
    publisher: "Addison-Wesley",
    year: 1970,
    locator: "length of lines in an area from crossings of test lines",
    seen: "from memory",
  },
  "steger-1998": {
    title: "An unbiased detector of curvilinear structures",
    author: "C. Steger",
    publisher: "IEEE Transactions on Pattern Analysis and Machine Intelligence 20",
    year: 1998,
    locator: "pages 113 to 125: the least smoothing at which a bar has one ridge, in its middle",
    seen: "from memory",
  },
  "zhang-suen-1984": {
    title: "A fast parallel algorithm for thinning digital patterns",
    author: "T. Y. Zhang & C. Y. Suen",
    publisher: "Communications of the ACM 27",
    year: 1984,
    locator: "pages 236 to 239",
    seen: "from memory",
  },
  "srgb-1999": {
    title: "IEC 61966-2-1, Default RGB colour space: sRGB",
    publisher: "International Electrotechnical Commission",
    year: 1999,
    locator: "the curve between level and light; the shares of red, green and blue in brightness",
    seen: "from memory",
  },
} as const satisfies Record<string, Source>;
