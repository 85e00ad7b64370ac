import type { ConeTable } from "./ConeTable.ts";

/** Large iron-free cones: the current chart; there is no cone 2. */
export const LARGE_IRON_FREE: ConeTable = {
  series: "large-iron-free",
  sources: ["cones-ort-c1", "cones-from-memory"],
  ratesCPerHour: [60, 150],
  printedResolutionC: 1,
  rows: [
    {
      cone: "010",
      endPoints: [
        { tempC: 884, tempF: 1623, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 891, tempF: 1636, confidence: "one-copy", sources: ["cones-ort-c1"] },
      ],
    },
    {
      cone: "09",
      endPoints: [
        { tempC: 917, tempF: 1683, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 926, tempF: 1699, confidence: "one-copy", sources: ["cones-ort-c1"] },
      ],
    },
    {
      cone: "08",
      endPoints: [
        { tempC: 945, tempF: 1733, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 955, tempF: 1751, confidence: "one-copy", sources: ["cones-ort-c1"] },
      ],
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 970, tempF: 1778, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 980, tempF: 1796, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "06",
      endPoints: [
        { tempC: 991, tempF: 1816, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 996, tempF: 1825, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "05.5",
      endPoints: [
        { tempC: 1011, tempF: 1852, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1020, tempF: 1868, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1032, tempF: 1890, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1044, tempF: 1911, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1060, tempF: 1940, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1067, tempF: 1953, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1087, tempF: 1989, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1091, tempF: 1996, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1102, tempF: 2016, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1113, tempF: 2035, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1122, tempF: 2052, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1132, tempF: 2070, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1137, tempF: 2079, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1146, tempF: 2095, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1151, tempF: 2104, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1160, tempF: 2120, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
  ],
};
