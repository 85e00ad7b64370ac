import type { ConeTable } from "./ConeTable.ts";

/** Cones as measured in 1926, the second vintage behind old book tables. The °F are conversions. */
export const FAIRCHILD_PETERS: ConeTable = {
  series: "fairchild-peters-1926",
  sources: ["cones-from-memory", "cones-ginna", "cones-chappell"],
  ratesCPerHour: [20, 150],
  printedResolutionC: 1,
  rows: [
    {
      cone: "022",
      endPoints: [
        { tempC: 585, tempF: 1085, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 605, tempF: 1121, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "021",
      endPoints: [
        { tempC: 595, tempF: 1103, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 615, tempF: 1139, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "020",
      endPoints: [
        { tempC: 625, tempF: 1157, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 650, tempF: 1202, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "019",
      endPoints: [
        { tempC: 630, tempF: 1166, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 660, tempF: 1220, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "018",
      endPoints: [
        { tempC: 670, tempF: 1238, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 720, tempF: 1328, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "017",
      endPoints: [
        { tempC: 720, tempF: 1328, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 770, tempF: 1418, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "016",
      endPoints: [
        { tempC: 735, tempF: 1355, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 795, tempF: 1463, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "015",
      endPoints: [
        { tempC: 770, tempF: 1418, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 805, tempF: 1481, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "014",
      endPoints: [
        { tempC: 795, tempF: 1463, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 830, tempF: 1526, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "013",
      endPoints: [
        { tempC: 825, tempF: 1517, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 860, tempF: 1580, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "012",
      endPoints: [
        { tempC: 840, tempF: 1544, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 875, tempF: 1607, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "011",
      endPoints: [
        { tempC: 875, tempF: 1607, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 905, tempF: 1661, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "010",
      endPoints: [
        { tempC: 890, tempF: 1634, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 895, tempF: 1643, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "09",
      endPoints: [
        { tempC: 930, tempF: 1706, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 930, tempF: 1706, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "08",
      endPoints: [
        { tempC: 945, tempF: 1733, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 950, tempF: 1742, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 975, tempF: 1787, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 990, tempF: 1814, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "06",
      endPoints: [
        { tempC: 1005, tempF: 1841, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1015, tempF: 1859, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1030, tempF: 1886, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1040, tempF: 1904, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1050, tempF: 1922, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1060, tempF: 1940, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1080, tempF: 1976, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1115, tempF: 2039, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1095, tempF: 2003, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1125, tempF: 2057, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1110, tempF: 2030, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1145, tempF: 2093, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1125, tempF: 2057, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1160, tempF: 2120, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "2",
      endPoints: [
        { tempC: 1135, tempF: 2075, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1165, tempF: 2129, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1145, tempF: 2093, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1170, tempF: 2138, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "4",
      endPoints: [
        { tempC: 1165, tempF: 2129, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1190, tempF: 2174, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "5",
      endPoints: [
        { tempC: 1180, tempF: 2156, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1205, tempF: 2201, confidence: "one-copy", sources: ["cones-chappell"] },
      ],
    },
    {
      cone: "6",
      endPoints: [
        { tempC: 1190, tempF: 2174, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1230, tempF: 2246, confidence: "one-copy", sources: ["cones-chappell"] },
      ],
    },
    {
      cone: "7",
      endPoints: [
        { tempC: 1210, tempF: 2210, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1250, tempF: 2282, confidence: "one-copy", sources: ["cones-chappell"] },
      ],
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1225, tempF: 2237, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1260, tempF: 2300, confidence: "one-copy", sources: ["cones-chappell"] },
      ],
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1250, tempF: 2282, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1285, tempF: 2345, confidence: "one-copy", sources: ["cones-chappell"] },
      ],
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1260, tempF: 2300, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1305, tempF: 2381, confidence: "one-copy", sources: ["cones-chappell"] },
      ],
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1285, tempF: 2345, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1325, tempF: 2417, confidence: "one-copy", sources: ["cones-chappell"] },
      ],
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1310, tempF: 2390, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1335, tempF: 2435, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "13",
      endPoints: [
        { tempC: 1350, tempF: 2462, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1350, tempF: 2462, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "14",
      endPoints: [
        { tempC: 1390, tempF: 2534, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1400, tempF: 2552, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "15",
      endPoints: [
        { tempC: 1410, tempF: 2570, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1435, tempF: 2615, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "16",
      endPoints: [
        { tempC: 1450, tempF: 2642, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1465, tempF: 2669, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "17",
      endPoints: [
        { tempC: 1465, tempF: 2669, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1475, tempF: 2687, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "18",
      endPoints: [
        { tempC: 1485, tempF: 2705, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1490, tempF: 2714, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "19",
      endPoints: [
        { tempC: 1515, tempF: 2759, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1520, tempF: 2768, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
    {
      cone: "20",
      endPoints: [
        { tempC: 1520, tempF: 2768, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1530, tempF: 2786, confidence: "from-memory", sources: ["cones-from-memory"] },
      ],
    },
  ],
};
