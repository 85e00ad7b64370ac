import type { ConeTable } from "./ConeTable.ts";

/** Cones for refractories (pyrometric cone equivalent): table only, mostly from memory. */
export const PCE: ConeTable = {
  series: "pce",
  sources: ["cones-from-memory", "cones-is-1528"],
  ratesCPerHour: [150, 600],
  printedResolutionC: 1,
  rows: [
    {
      cone: "12",
      endPoints: [
        { tempC: 1337, tempF: 2439, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "13",
      endPoints: [
        { tempC: 1349, tempF: 2460, confidence: "one-copy", sources: ["cones-is-1528"] },
        null,
      ],
    },
    {
      cone: "14",
      endPoints: [
        { tempC: 1398, tempF: 2548, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "15",
      endPoints: [
        { tempC: 1430, tempF: 2606, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "16",
      endPoints: [
        { tempC: 1491, tempF: 2716, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "17",
      endPoints: [
        { tempC: 1512, tempF: 2754, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "18",
      endPoints: [
        { tempC: 1522, tempF: 2772, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "19",
      endPoints: [
        { tempC: 1541, tempF: 2806, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "20",
      endPoints: [
        { tempC: 1564, tempF: 2847, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "23",
      endPoints: [
        { tempC: 1605, tempF: 2921, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "26",
      endPoints: [
        { tempC: 1621, tempF: 2950, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "27",
      endPoints: [
        { tempC: 1640, tempF: 2984, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "28",
      endPoints: [
        { tempC: 1646, tempF: 2995, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "29",
      endPoints: [
        { tempC: 1659, tempF: 3018, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "30",
      endPoints: [
        { tempC: 1665, tempF: 3029, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "31",
      endPoints: [
        { tempC: 1683, tempF: 3061, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "31.5",
      endPoints: [
        { tempC: 1699, tempF: 3090, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "32",
      endPoints: [
        { tempC: 1717, tempF: 3123, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "32.5",
      endPoints: [
        { tempC: 1724, tempF: 3135, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "33",
      endPoints: [
        { tempC: 1743, tempF: 3169, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "34",
      endPoints: [
        { tempC: 1763, tempF: 3205, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "35",
      endPoints: [
        { tempC: 1785, tempF: 3245, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "36",
      endPoints: [
        { tempC: 1804, tempF: 3279, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "37",
      endPoints: [
        { tempC: 1820, tempF: 3308, confidence: "from-memory", sources: ["cones-from-memory"] },
        null,
      ],
    },
    {
      cone: "38",
      endPoints: [
        null,
        { tempC: 1850, tempF: 3362, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "39",
      endPoints: [
        null,
        { tempC: 1865, tempF: 3389, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "40",
      endPoints: [
        null,
        { tempC: 1885, tempF: 3425, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "41",
      endPoints: [
        null,
        { tempC: 1970, tempF: 3578, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "42",
      endPoints: [
        null,
        { tempC: 2015, tempF: 3659, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
  ],
};
