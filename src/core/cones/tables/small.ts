import type { ConeTable } from "./ConeTable.ts";

/** Small (junior) cones, calibrated at 300 °C/h in a gas kiln: the current chart. */
export const SMALL: ConeTable = {
  series: "small",
  sources: ["cones-ort-c1", "cones-ort-c2016", "cones-from-memory", "cones-artdict"],
  ratesCPerHour: [300],
  printedResolutionC: 1,
  rows: [
    {
      cone: "022",
      endPoints: [
        {
          tempC: 630,
          tempF: 1166,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "021",
      endPoints: [
        {
          tempC: 643,
          tempF: 1189,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "020",
      endPoints: [
        {
          tempC: 666,
          tempF: 1231,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "019",
      endPoints: [
        {
          tempC: 723,
          tempF: 1333,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "018",
      endPoints: [
        {
          tempC: 752,
          tempF: 1386,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "017",
      endPoints: [
        {
          tempC: 784,
          tempF: 1443,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "016",
      endPoints: [
        {
          tempC: 825,
          tempF: 1517,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "015",
      endPoints: [
        {
          tempC: 843,
          tempF: 1549,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "014",
      endPoints: [
        {
          tempC: 870,
          tempF: 1598,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "013",
      endPoints: [{ tempC: 880, tempF: 1616, confidence: "one-copy", sources: ["cones-ort-c1"] }],
    },
    {
      cone: "012",
      endPoints: [{ tempC: 900, tempF: 1652, confidence: "one-copy", sources: ["cones-ort-c1"] }],
    },
    {
      cone: "011",
      endPoints: [{ tempC: 915, tempF: 1679, confidence: "one-copy", sources: ["cones-ort-c1"] }],
    },
    {
      cone: "010",
      endPoints: [{ tempC: 919, tempF: 1686, confidence: "one-copy", sources: ["cones-ort-c1"] }],
    },
    {
      cone: "09",
      endPoints: [{ tempC: 955, tempF: 1751, confidence: "one-copy", sources: ["cones-ort-c1"] }],
    },
    {
      cone: "08",
      endPoints: [{ tempC: 983, tempF: 1801, confidence: "one-copy", sources: ["cones-ort-c1"] }],
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 1008, tempF: 1846, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "06",
      endPoints: [{ tempC: 1023, tempF: 1873, confidence: "one-copy", sources: ["cones-artdict"] }],
    },
    {
      cone: "05.5",
      endPoints: [
        { tempC: 1043, tempF: 1909, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1062, tempF: 1944, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "04",
      endPoints: [{ tempC: 1098, tempF: 2008, confidence: "one-copy", sources: ["cones-artdict"] }],
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1131, tempF: 2068, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1148, tempF: 2098, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1178, tempF: 2152, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1184, tempF: 2163, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "2",
      endPoints: [
        { tempC: 1190, tempF: 2174, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1196, tempF: 2185, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "4",
      endPoints: [
        { tempC: 1209, tempF: 2208, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "5",
      endPoints: [
        { tempC: 1221, tempF: 2230, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "6",
      endPoints: [
        { tempC: 1255, tempF: 2291, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "7",
      endPoints: [
        { tempC: 1264, tempF: 2307, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1300, tempF: 2372, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1317, tempF: 2403, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1330, tempF: 2426, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1336, tempF: 2437, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1355, tempF: 2471, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
  ],
};
