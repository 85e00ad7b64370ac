import type { ConeTable } from "./ConeTable.ts";

/** Large regular cones: the current chart. Cone 14 falls with rate, an old anomaly carried along as printed. */
export const LARGE: ConeTable = {
  series: "large",
  sources: [
    "cones-ort-c1",
    "cones-ort-c2016",
    "cones-large-c",
    "cones-clay06b",
    "cones-from-memory",
    "cones-can-22092",
    "cones-hodaka",
    "cones-glacures",
  ],
  ratesCPerHour: [60, 150],
  printedResolutionC: 1,
  rows: [
    {
      cone: "019",
      endPoints: [
        {
          tempC: 676,
          tempF: 1249,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 693,
          tempF: 1279,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "018",
      endPoints: [
        {
          tempC: 712,
          tempF: 1314,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 732,
          tempF: 1350,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "017",
      endPoints: [
        {
          tempC: 736,
          tempF: 1357,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 761,
          tempF: 1402,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "016",
      endPoints: [
        {
          tempC: 769,
          tempF: 1416,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 794,
          tempF: 1461,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "015",
      endPoints: [
        {
          tempC: 788,
          tempF: 1450,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 816,
          tempF: 1501,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "014",
      endPoints: [
        {
          tempC: 807,
          tempF: 1485,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 836,
          tempF: 1537,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
      ],
    },
    {
      cone: "013",
      endPoints: [
        { tempC: 837, tempF: 1539, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 859, tempF: 1578, confidence: "one-copy", sources: ["cones-ort-c1"] },
      ],
    },
    {
      cone: "012",
      endPoints: [
        {
          tempC: 858,
          tempF: 1576,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"],
        },
        {
          tempC: 880,
          tempF: 1616,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"],
        },
      ],
    },
    {
      cone: "011",
      endPoints: [
        {
          tempC: 873,
          tempF: 1603,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"],
        },
        {
          tempC: 892,
          tempF: 1638,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"],
        },
      ],
    },
    {
      cone: "010",
      endPoints: [
        {
          tempC: 898,
          tempF: 1648,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"],
        },
        {
          tempC: 913,
          tempF: 1675,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"],
        },
      ],
    },
    {
      cone: "09",
      endPoints: [
        {
          tempC: 917,
          tempF: 1683,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"],
        },
        {
          tempC: 928,
          tempF: 1702,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"],
        },
      ],
    },
    {
      cone: "08",
      endPoints: [
        {
          tempC: 942,
          tempF: 1728,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"],
        },
        {
          tempC: 954,
          tempF: 1749,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"],
        },
      ],
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 973, tempF: 1783, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 985, tempF: 1805, confidence: "one-copy", sources: ["cones-large-c"] },
      ],
    },
    {
      cone: "06",
      endPoints: [
        {
          tempC: 995,
          tempF: 1823,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"],
        },
        {
          tempC: 1011,
          tempF: 1852,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"],
        },
      ],
    },
    {
      cone: "05.5",
      endPoints: [
        { tempC: 1012, tempF: 1854, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1023, tempF: 1873, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1030, tempF: 1886, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1046, tempF: 1915, confidence: "one-copy", sources: ["cones-large-c"] },
      ],
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1060, tempF: 1940, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1070, tempF: 1958, confidence: "one-copy", sources: ["cones-large-c"] },
      ],
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1086, tempF: 1987, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1101, tempF: 2014, confidence: "one-copy", sources: ["cones-large-c"] },
      ],
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1101, tempF: 2014, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1120, tempF: 2048, confidence: "one-copy", sources: ["cones-large-c"] },
      ],
    },
    {
      cone: "01",
      endPoints: [
        {
          tempC: 1117,
          tempF: 2043,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"],
        },
        {
          tempC: 1137,
          tempF: 2079,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"],
        },
      ],
    },
    {
      cone: "1",
      endPoints: [
        {
          tempC: 1136,
          tempF: 2077,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"],
        },
        {
          tempC: 1154,
          tempF: 2109,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"],
        },
      ],
    },
    {
      cone: "2",
      endPoints: [
        { tempC: 1142, tempF: 2088, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1162, tempF: 2124, confidence: "one-copy", sources: ["cones-large-c"] },
      ],
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1152, tempF: 2106, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1168, tempF: 2134, confidence: "one-copy", sources: ["cones-large-c"] },
      ],
    },
    {
      cone: "4",
      endPoints: [
        { tempC: 1160, tempF: 2120, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1181, tempF: 2158, confidence: "one-copy", sources: ["cones-large-c"] },
      ],
    },
    {
      cone: "5",
      endPoints: [
        { tempC: 1184, tempF: 2163, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1205, tempF: 2201, confidence: "one-copy", sources: ["cones-large-c"] },
      ],
    },
    {
      cone: "6",
      endPoints: [
        {
          tempC: 1220,
          tempF: 2228,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"],
        },
        {
          tempC: 1241,
          tempF: 2266,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"],
        },
      ],
    },
    {
      cone: "7",
      endPoints: [
        {
          tempC: 1237,
          tempF: 2259,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-can-22092"],
        },
        {
          tempC: 1255,
          tempF: 2291,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-can-22092"],
        },
      ],
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1247, tempF: 2277, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1269, tempF: 2316, confidence: "one-copy", sources: ["cones-large-c"] },
      ],
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1257, tempF: 2295, confidence: "one-copy", sources: ["cones-large-c"] },
        {
          tempC: 1278,
          tempF: 2332,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-hodaka"],
        },
      ],
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1282, tempF: 2340, confidence: "one-copy", sources: ["cones-large-c"] },
        {
          tempC: 1303,
          tempF: 2377,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-hodaka", "cones-glacures"],
        },
      ],
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1293, tempF: 2359, confidence: "one-copy", sources: ["cones-large-c"] },
        {
          tempC: 1312,
          tempF: 2394,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-hodaka"],
        },
      ],
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1304, tempF: 2379, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1324, tempF: 2415, confidence: "one-copy", sources: ["cones-large-c"] },
      ],
    },
    {
      cone: "13",
      endPoints: [
        { tempC: 1321, tempF: 2410, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1346, tempF: 2455, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "14",
      endPoints: [
        { tempC: 1388, tempF: 2530, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1366, tempF: 2491, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
  ],
};
