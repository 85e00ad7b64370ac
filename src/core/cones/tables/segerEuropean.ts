import type { ConeTable } from "./ConeTable.ts";

/** A later European Seger scale: nominal temperatures, printed without a rate; not the American numbers. */
export const SEGER_EUROPEAN: ConeTable = {
  series: "seger-european",
  sources: ["cones-arteraku"],
  ratesCPerHour: [null],
  printedResolutionC: 1,
  rows: [
    {
      cone: "021",
      endPoints: [{ tempC: 640, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "020",
      endPoints: [{ tempC: 660, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "019",
      endPoints: [{ tempC: 685, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "018",
      endPoints: [{ tempC: 705, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "017",
      endPoints: [{ tempC: 730, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "016",
      endPoints: [{ tempC: 755, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "015a",
      endPoints: [{ tempC: 780, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "014a",
      endPoints: [{ tempC: 805, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "013a",
      endPoints: [{ tempC: 835, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "012a",
      endPoints: [{ tempC: 860, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "011a",
      endPoints: [{ tempC: 900, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "010a",
      endPoints: [{ tempC: 920, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "09a",
      endPoints: [{ tempC: 935, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "08a",
      endPoints: [{ tempC: 955, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "07a",
      endPoints: [{ tempC: 970, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "06a",
      endPoints: [{ tempC: 990, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }],
    },
    {
      cone: "05a",
      endPoints: [
        { tempC: 1000, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "04a",
      endPoints: [
        { tempC: 1025, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "03a",
      endPoints: [
        { tempC: 1055, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "02a",
      endPoints: [
        { tempC: 1085, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "01a",
      endPoints: [
        { tempC: 1105, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "1a",
      endPoints: [
        { tempC: 1125, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "2a",
      endPoints: [
        { tempC: 1150, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "3a",
      endPoints: [
        { tempC: 1170, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "4a",
      endPoints: [
        { tempC: 1195, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "5a",
      endPoints: [
        { tempC: 1215, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "6a",
      endPoints: [
        { tempC: 1240, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "7",
      endPoints: [
        { tempC: 1260, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1280, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1300, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1320, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1340, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1360, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] },
      ],
    },
  ],
};
