import type { ConeTable } from "./ConeTable.ts";

/** Japanese Seger cones: nominal temperatures, printed without a rate. */
export const SEGER_JIS: ConeTable = {
  series: "seger-jis",
  sources: ["cones-igloss", "cones-jp-other"],
  ratesCPerHour: [null],
  printedResolutionC: 1,
  rows: [
    {
      cone: "022",
      endPoints: [
        {
          tempC: 600,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"],
        },
      ],
    },
    {
      cone: "021",
      endPoints: [{ tempC: 650, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "020",
      endPoints: [{ tempC: 670, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "019",
      endPoints: [{ tempC: 690, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "018",
      endPoints: [{ tempC: 700, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "017",
      endPoints: [{ tempC: 730, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "016",
      endPoints: [{ tempC: 750, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "015a",
      endPoints: [{ tempC: 790, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "014a",
      endPoints: [{ tempC: 815, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "013a",
      endPoints: [{ tempC: 835, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "012a",
      endPoints: [{ tempC: 855, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "011a",
      endPoints: [{ tempC: 880, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "010a",
      endPoints: [{ tempC: 900, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "09a",
      endPoints: [{ tempC: 920, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "08a",
      endPoints: [{ tempC: 940, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "07a",
      endPoints: [{ tempC: 960, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "06a",
      endPoints: [{ tempC: 980, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "05a",
      endPoints: [{ tempC: 1000, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "04a",
      endPoints: [{ tempC: 1020, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "03a",
      endPoints: [{ tempC: 1040, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "02a",
      endPoints: [{ tempC: 1060, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "01a",
      endPoints: [{ tempC: 1080, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "1a",
      endPoints: [{ tempC: 1100, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "2a",
      endPoints: [{ tempC: 1120, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "3a",
      endPoints: [{ tempC: 1140, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "4a",
      endPoints: [{ tempC: 1160, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "5a",
      endPoints: [{ tempC: 1180, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "6a",
      endPoints: [{ tempC: 1200, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "7",
      endPoints: [
        {
          tempC: 1230,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"],
        },
      ],
    },
    {
      cone: "8",
      endPoints: [
        {
          tempC: 1250,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"],
        },
      ],
    },
    {
      cone: "9",
      endPoints: [
        {
          tempC: 1280,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"],
        },
      ],
    },
    {
      cone: "10",
      endPoints: [
        {
          tempC: 1300,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"],
        },
      ],
    },
    {
      cone: "11",
      endPoints: [{ tempC: 1320, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "12",
      endPoints: [{ tempC: 1350, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "13",
      endPoints: [{ tempC: 1380, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "14",
      endPoints: [{ tempC: 1410, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "15",
      endPoints: [
        {
          tempC: 1435,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"],
        },
      ],
    },
    {
      cone: "16",
      endPoints: [{ tempC: 1460, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "17",
      endPoints: [{ tempC: 1480, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "18",
      endPoints: [{ tempC: 1500, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "19",
      endPoints: [{ tempC: 1520, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "20",
      endPoints: [
        {
          tempC: 1530,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"],
        },
      ],
    },
    {
      cone: "26",
      endPoints: [
        {
          tempC: 1580,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"],
        },
      ],
    },
    {
      cone: "27",
      endPoints: [{ tempC: 1610, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "28",
      endPoints: [{ tempC: 1630, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "29",
      endPoints: [{ tempC: 1650, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "30",
      endPoints: [{ tempC: 1670, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "31",
      endPoints: [{ tempC: 1690, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "32",
      endPoints: [{ tempC: 1710, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "33",
      endPoints: [{ tempC: 1730, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "34",
      endPoints: [{ tempC: 1750, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "35",
      endPoints: [{ tempC: 1770, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "36",
      endPoints: [{ tempC: 1790, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "37",
      endPoints: [{ tempC: 1825, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "38",
      endPoints: [{ tempC: 1850, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "39",
      endPoints: [{ tempC: 1880, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "40",
      endPoints: [{ tempC: 1920, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "41",
      endPoints: [{ tempC: 1960, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }],
    },
    {
      cone: "42",
      endPoints: [
        {
          tempC: 2000,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"],
        },
      ],
    },
  ],
};
