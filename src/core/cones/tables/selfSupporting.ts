import type { ConeTable } from "./ConeTable.ts";

/** Self-supporting regular cones, the reference scale: the current chart. */
export const SELF_SUPPORTING: ConeTable = {
  series: "self-supporting",
  sources: [
    "cones-ort-c1",
    "cones-ort-c2016",
    "cones-chart-f",
    "cones-wyd",
    "cones-otten",
    "cones-from-memory",
    "cones-cone-list",
    "cones-russ",
    "cones-clay06a",
    "cones-ratings",
    "cones-mosh",
    "cones-cone-13",
  ],
  ratesCPerHour: [15, 60, 150],
  printedResolutionC: 1,
  rows: [
    {
      cone: "022",
      endPoints: [
        null,
        {
          tempC: 586,
          tempF: 1087,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
        {
          tempC: 590,
          tempF: 1094,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "021",
      endPoints: [
        null,
        {
          tempC: 600,
          tempF: 1112,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
        {
          tempC: 617,
          tempF: 1143,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "020",
      endPoints: [
        null,
        {
          tempC: 626,
          tempF: 1159,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
        {
          tempC: 638,
          tempF: 1180,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "019",
      endPoints: [
        {
          tempC: 656,
          tempF: 1213,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 678,
          tempF: 1252,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
        {
          tempC: 695,
          tempF: 1283,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "018",
      endPoints: [
        {
          tempC: 686,
          tempF: 1267,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 715,
          tempF: 1319,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
        {
          tempC: 734,
          tempF: 1353,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "017",
      endPoints: [
        {
          tempC: 705,
          tempF: 1301,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 738,
          tempF: 1360,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
        {
          tempC: 763,
          tempF: 1405,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "016",
      endPoints: [
        {
          tempC: 742,
          tempF: 1368,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 772,
          tempF: 1422,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
        {
          tempC: 796,
          tempF: 1465,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "015",
      endPoints: [
        {
          tempC: 750,
          tempF: 1382,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 791,
          tempF: 1456,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
        {
          tempC: 818,
          tempF: 1504,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "014",
      endPoints: [
        {
          tempC: 757,
          tempF: 1395,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"],
        },
        {
          tempC: 807,
          tempF: 1485,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
        {
          tempC: 838,
          tempF: 1540,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "013",
      endPoints: [
        { tempC: 807, tempF: 1485, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 837,
          tempF: 1539,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"],
        },
        {
          tempC: 861,
          tempF: 1582,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "012",
      endPoints: [
        { tempC: 843, tempF: 1549, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 861,
          tempF: 1582,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"],
        },
        {
          tempC: 882,
          tempF: 1620,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "011",
      endPoints: [
        { tempC: 857, tempF: 1575, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 875,
          tempF: 1607,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f", "cones-wyd"],
        },
        {
          tempC: 894,
          tempF: 1641,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "010",
      endPoints: [
        { tempC: 891, tempF: 1636, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 903,
          tempF: 1657,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f", "cones-wyd"],
        },
        {
          tempC: 915,
          tempF: 1679,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "09",
      endPoints: [
        { tempC: 907, tempF: 1665, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 920,
          tempF: 1688,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"],
        },
        {
          tempC: 930,
          tempF: 1706,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "08",
      endPoints: [
        { tempC: 922, tempF: 1692, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 942,
          tempF: 1728,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f", "cones-otten"],
        },
        {
          tempC: 956,
          tempF: 1753,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"],
        },
      ],
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 962, tempF: 1764, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 976, tempF: 1789, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 987, tempF: 1809, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "06",
      endPoints: [
        { tempC: 981, tempF: 1798, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 998,
          tempF: 1828,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-otten"],
        },
        {
          tempC: 1013,
          tempF: 1855,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-cone-list"],
        },
      ],
    },
    {
      cone: "05.5",
      endPoints: [
        { tempC: 1004, tempF: 1839, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1015, tempF: 1859, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1025, tempF: 1877, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1021, tempF: 1870, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1031,
          tempF: 1888,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-russ"],
        },
        { tempC: 1044, tempF: 1911, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1046, tempF: 1915, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1063, tempF: 1945, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1077, tempF: 1971, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1071, tempF: 1960, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1086, tempF: 1987, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1104, tempF: 2019, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1078, tempF: 1972, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1102, tempF: 2016, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1122, tempF: 2052, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1093, tempF: 1999, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1119, tempF: 2046, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1138, tempF: 2080, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1109, tempF: 2028, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1137, tempF: 2079, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1154, tempF: 2109, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "2",
      endPoints: [
        { tempC: 1112, tempF: 2034, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1142, tempF: 2088, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1164, tempF: 2127, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1115, tempF: 2039, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1152, tempF: 2106, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1170, tempF: 2138, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "4",
      endPoints: [
        { tempC: 1141, tempF: 2086, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1162, tempF: 2124, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1183, tempF: 2161, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "5",
      endPoints: [
        { tempC: 1159, tempF: 2118, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1186,
          tempF: 2167,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-otten"],
        },
        { tempC: 1207, tempF: 2205, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "5.5",
      endPoints: [
        { tempC: 1167, tempF: 2133, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1203, tempF: 2197, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1225, tempF: 2237, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "6",
      endPoints: [
        { tempC: 1185, tempF: 2165, confidence: "one-copy", sources: ["cones-clay06a"] },
        {
          tempC: 1222,
          tempF: 2232,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-clay06a", "cones-otten"],
        },
        {
          tempC: 1243,
          tempF: 2269,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-clay06a", "cones-cone-list"],
        },
      ],
    },
    {
      cone: "7",
      endPoints: [
        { tempC: 1201, tempF: 2194, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1239, tempF: 2262, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1257, tempF: 2295, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1211, tempF: 2212, confidence: "one-copy", sources: ["cones-ratings"] },
        { tempC: 1249, tempF: 2280, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1271, tempF: 2320, confidence: "one-copy", sources: ["cones-chart-f"] },
      ],
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1224, tempF: 2235, confidence: "one-copy", sources: ["cones-ratings"] },
        {
          tempC: 1260,
          tempF: 2300,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-ratings", "cones-otten"],
        },
        {
          tempC: 1280,
          tempF: 2336,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-ratings"],
        },
      ],
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1251, tempF: 2284, confidence: "one-copy", sources: ["cones-ratings"] },
        {
          tempC: 1285,
          tempF: 2345,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-ratings", "cones-otten", "cones-wyd"],
        },
        {
          tempC: 1305,
          tempF: 2381,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-ratings"],
        },
      ],
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1272, tempF: 2322, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1294, tempF: 2361, confidence: "one-copy", sources: ["cones-mosh"] },
        { tempC: 1315, tempF: 2399, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1285, tempF: 2345, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1306, tempF: 2383, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1326, tempF: 2419, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "13",
      endPoints: [
        { tempC: 1310, tempF: 2389, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1331, tempF: 2428, confidence: "one-copy", sources: ["cones-cone-13"] },
        { tempC: 1348, tempF: 2458, confidence: "one-copy", sources: ["cones-cone-13"] },
      ],
    },
    {
      cone: "14",
      endPoints: [
        { tempC: 1351, tempF: 2464, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1365, tempF: 2489, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1384, tempF: 2523, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
  ],
};
