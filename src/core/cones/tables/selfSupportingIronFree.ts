import type { ConeTable } from "./ConeTable.ts";

/** Self-supporting iron-free cones: the current chart; there is no cone 2. */
export const SELF_SUPPORTING_IRON_FREE: ConeTable = {
  series: "self-supporting-iron-free",
  sources: ["cones-ort-c1", "cones-from-memory"],
  ratesCPerHour: [15, 60, 150],
  printedResolutionC: 1,
  rows: [
    {
      cone: "010",
      endPoints: [
        { tempC: 871, tempF: 1600, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 886, tempF: 1627, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 893, tempF: 1639, confidence: "one-copy", sources: ["cones-ort-c1"] },
      ],
    },
    {
      cone: "09",
      endPoints: [
        { tempC: 899, tempF: 1650, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 919, tempF: 1686, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 928, tempF: 1702, confidence: "one-copy", sources: ["cones-ort-c1"] },
      ],
    },
    {
      cone: "08",
      endPoints: [
        { tempC: 924, tempF: 1695, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 946, tempF: 1735, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 957, tempF: 1755, confidence: "one-copy", sources: ["cones-ort-c1"] },
      ],
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 953, tempF: 1747, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 971, tempF: 1780, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 982, tempF: 1800, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "06",
      endPoints: [
        { tempC: 969, tempF: 1776, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 991, tempF: 1816, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 998, tempF: 1828, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "05.5",
      endPoints: [
        { tempC: 990, tempF: 1814, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1012, tempF: 1854, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1021, tempF: 1870, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1013, tempF: 1855, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1037, tempF: 1899, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1046, tempF: 1915, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1043, tempF: 1909, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1061, tempF: 1942, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1069, tempF: 1956, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1066, tempF: 1951, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1088, tempF: 1990, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1093, tempF: 1999, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1084, tempF: 1983, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1105, tempF: 2021, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1115, tempF: 2039, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1101, tempF: 2014, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1123, tempF: 2053, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1134, tempF: 2073, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1119, tempF: 2046, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1139, tempF: 2082, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1148, tempF: 2098, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1130, tempF: 2066, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1154, tempF: 2109, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1162, tempF: 2124, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
  ],
};
