import type { ConeTable } from "./ConeTable.ts";

/** Large cones as calibrated in 1956, still reprinted in books; not the current chart. Some copies truncate the °F. */
export const LARGE_LEGACY: ConeTable = {
  series: "large-legacy",
  sources: [
    "cones-is-1528",
    "cones-from-memory",
    "cones-hamer",
    "cones-potter-chart",
    "cones-firing-chart",
    "cones-bcc",
    "cones-tneutron",
  ],
  ratesCPerHour: [60, 150],
  printedResolutionC: 1,
  rows: [
    {
      cone: "022",
      endPoints: [
        { tempC: 585, tempF: 1085, confidence: "one-copy", sources: ["cones-is-1528"] },
        {
          tempC: 600,
          tempF: 1112,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "021",
      endPoints: [
        { tempC: 602, tempF: 1116, confidence: "one-copy", sources: ["cones-is-1528"] },
        {
          tempC: 614,
          tempF: 1137,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "020",
      endPoints: [
        { tempC: 625, tempF: 1157, confidence: "one-copy", sources: ["cones-is-1528"] },
        {
          tempC: 635,
          tempF: 1175,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "019",
      endPoints: [
        { tempC: 668, tempF: 1234, confidence: "one-copy", sources: ["cones-is-1528"] },
        {
          tempC: 683,
          tempF: 1261,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "018",
      endPoints: [
        { tempC: 696, tempF: 1285, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 717,
          tempF: 1322,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "017",
      endPoints: [
        { tempC: 727, tempF: 1341, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 747,
          tempF: 1376,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "016",
      endPoints: [
        { tempC: 764, tempF: 1407, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 792,
          tempF: 1457,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "015",
      endPoints: [
        { tempC: 790, tempF: 1454, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 804,
          tempF: 1479,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "014",
      endPoints: [
        { tempC: 834, tempF: 1533, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 838,
          tempF: 1540,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "013",
      endPoints: [
        { tempC: 869, tempF: 1596, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 852,
          tempF: 1565,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "012",
      endPoints: [
        { tempC: 866, tempF: 1591, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 884,
          tempF: 1623,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "011",
      endPoints: [
        { tempC: 886, tempF: 1627, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 894,
          tempF: 1641,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "010",
      endPoints: [
        { tempC: 887, tempF: 1629, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 900,
          tempF: 1652,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart"],
        },
      ],
    },
    {
      cone: "09",
      endPoints: [
        { tempC: 915, tempF: 1679, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 923,
          tempF: 1693,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "08",
      endPoints: [
        { tempC: 945, tempF: 1733, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 955,
          tempF: 1751,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 973, tempF: 1783, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 984,
          tempF: 1803,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "06",
      endPoints: [
        { tempC: 991, tempF: 1816, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 999,
          tempF: 1830,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1031, tempF: 1888, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1046,
          tempF: 1914,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1050, tempF: 1922, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1060,
          tempF: 1940,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "03.5",
      endPoints: [
        null,
        {
          tempC: 1080,
          tempF: 1976,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart"],
        },
      ],
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1086, tempF: 1987, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1101,
          tempF: 2014,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1101, tempF: 2014, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1120,
          tempF: 2048,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1117, tempF: 2043, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1137,
          tempF: 2079,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1136, tempF: 2077, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1154,
          tempF: 2109,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "2",
      endPoints: [
        { tempC: 1142, tempF: 2088, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1162,
          tempF: 2124,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1152, tempF: 2106, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1168,
          tempF: 2134,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "4",
      endPoints: [
        { tempC: 1168, tempF: 2134, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1186,
          tempF: 2167,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"],
        },
      ],
    },
    {
      cone: "5",
      endPoints: [
        { tempC: 1177, tempF: 2151, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1196,
          tempF: 2185,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"],
        },
      ],
    },
    {
      cone: "6",
      endPoints: [
        { tempC: 1201, tempF: 2194, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1222,
          tempF: 2232,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"],
        },
      ],
    },
    {
      cone: "7",
      endPoints: [
        { tempC: 1215, tempF: 2219, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1240,
          tempF: 2264,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"],
        },
      ],
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1236, tempF: 2257, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1263,
          tempF: 2305,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"],
        },
      ],
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1260, tempF: 2300, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1280,
          tempF: 2336,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"],
        },
      ],
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1285, tempF: 2345, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1305,
          tempF: 2381,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"],
        },
      ],
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1294, tempF: 2361, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1315,
          tempF: 2399,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-hamer"],
        },
      ],
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1306, tempF: 2383, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1326,
          tempF: 2419,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart"],
        },
      ],
    },
    {
      cone: "13",
      endPoints: [
        { tempC: 1321, tempF: 2410, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1346,
          tempF: 2455,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart"],
        },
      ],
    },
    {
      cone: "14",
      endPoints: [
        { tempC: 1388, tempF: 2530, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1366, tempF: 2491, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "15",
      endPoints: [
        { tempC: 1424, tempF: 2595, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1431, tempF: 2608, confidence: "one-copy", sources: ["cones-tneutron"] },
      ],
    },
  ],
};
