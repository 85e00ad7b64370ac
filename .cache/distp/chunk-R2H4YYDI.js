import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/core/units/temperature.ts
function celsiusFromFahrenheit(tempF) {
  return (tempF - 32) / 1.8;
}
function fahrenheitFromCelsius(tempC) {
  return tempC * 1.8 + 32;
}
function celsiusDeltaFromFahrenheitDelta(deltaF) {
  return deltaF / 1.8;
}
function fahrenheitDeltaFromCelsiusDelta(deltaC) {
  return deltaC * 1.8;
}
var ZERO_CELSIUS_K = 273.15;
function celsiusFromKelvin(tempK) {
  return tempK - ZERO_CELSIUS_K;
}
function kelvinFromCelsius(tempC) {
  return tempC + ZERO_CELSIUS_K;
}

// src/core/cones/tables/fairchildPeters.ts
var FAIRCHILD_PETERS = {
  series: "fairchild-peters-1926",
  sources: ["cones-from-memory", "cones-ginna", "cones-chappell"],
  ratesCPerHour: [20, 150],
  printedResolutionC: 1,
  rows: [
    {
      cone: "022",
      endPoints: [
        { tempC: 585, tempF: 1085, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 605, tempF: 1121, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "021",
      endPoints: [
        { tempC: 595, tempF: 1103, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 615, tempF: 1139, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "020",
      endPoints: [
        { tempC: 625, tempF: 1157, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 650, tempF: 1202, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "019",
      endPoints: [
        { tempC: 630, tempF: 1166, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 660, tempF: 1220, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "018",
      endPoints: [
        { tempC: 670, tempF: 1238, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 720, tempF: 1328, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "017",
      endPoints: [
        { tempC: 720, tempF: 1328, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 770, tempF: 1418, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "016",
      endPoints: [
        { tempC: 735, tempF: 1355, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 795, tempF: 1463, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "015",
      endPoints: [
        { tempC: 770, tempF: 1418, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 805, tempF: 1481, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "014",
      endPoints: [
        { tempC: 795, tempF: 1463, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 830, tempF: 1526, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "013",
      endPoints: [
        { tempC: 825, tempF: 1517, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 860, tempF: 1580, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "012",
      endPoints: [
        { tempC: 840, tempF: 1544, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 875, tempF: 1607, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "011",
      endPoints: [
        { tempC: 875, tempF: 1607, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 905, tempF: 1661, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "010",
      endPoints: [
        { tempC: 890, tempF: 1634, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 895, tempF: 1643, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "09",
      endPoints: [
        { tempC: 930, tempF: 1706, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 930, tempF: 1706, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "08",
      endPoints: [
        { tempC: 945, tempF: 1733, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 950, tempF: 1742, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 975, tempF: 1787, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 990, tempF: 1814, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "06",
      endPoints: [
        { tempC: 1005, tempF: 1841, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1015, tempF: 1859, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1030, tempF: 1886, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1040, tempF: 1904, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1050, tempF: 1922, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1060, tempF: 1940, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1080, tempF: 1976, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1115, tempF: 2039, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1095, tempF: 2003, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1125, tempF: 2057, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1110, tempF: 2030, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1145, tempF: 2093, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1125, tempF: 2057, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1160, tempF: 2120, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "2",
      endPoints: [
        { tempC: 1135, tempF: 2075, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1165, tempF: 2129, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1145, tempF: 2093, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1170, tempF: 2138, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "4",
      endPoints: [
        { tempC: 1165, tempF: 2129, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1190, tempF: 2174, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "5",
      endPoints: [
        { tempC: 1180, tempF: 2156, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1205, tempF: 2201, confidence: "one-copy", sources: ["cones-chappell"] }
      ]
    },
    {
      cone: "6",
      endPoints: [
        { tempC: 1190, tempF: 2174, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1230, tempF: 2246, confidence: "one-copy", sources: ["cones-chappell"] }
      ]
    },
    {
      cone: "7",
      endPoints: [
        { tempC: 1210, tempF: 2210, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1250, tempF: 2282, confidence: "one-copy", sources: ["cones-chappell"] }
      ]
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1225, tempF: 2237, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1260, tempF: 2300, confidence: "one-copy", sources: ["cones-chappell"] }
      ]
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1250, tempF: 2282, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1285, tempF: 2345, confidence: "one-copy", sources: ["cones-chappell"] }
      ]
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1260, tempF: 2300, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1305, tempF: 2381, confidence: "one-copy", sources: ["cones-chappell"] }
      ]
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1285, tempF: 2345, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1325, tempF: 2417, confidence: "one-copy", sources: ["cones-chappell"] }
      ]
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1310, tempF: 2390, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1335, tempF: 2435, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "13",
      endPoints: [
        { tempC: 1350, tempF: 2462, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1350, tempF: 2462, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "14",
      endPoints: [
        { tempC: 1390, tempF: 2534, confidence: "one-copy", sources: ["cones-ginna"] },
        { tempC: 1400, tempF: 2552, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "15",
      endPoints: [
        { tempC: 1410, tempF: 2570, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1435, tempF: 2615, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "16",
      endPoints: [
        { tempC: 1450, tempF: 2642, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1465, tempF: 2669, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "17",
      endPoints: [
        { tempC: 1465, tempF: 2669, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1475, tempF: 2687, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "18",
      endPoints: [
        { tempC: 1485, tempF: 2705, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1490, tempF: 2714, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "19",
      endPoints: [
        { tempC: 1515, tempF: 2759, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1520, tempF: 2768, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "20",
      endPoints: [
        { tempC: 1520, tempF: 2768, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1530, tempF: 2786, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    }
  ]
};

// src/core/cones/tables/large.ts
var LARGE = {
  series: "large",
  sources: [
    "cones-ort-c1",
    "cones-ort-c2016",
    "cones-large-c",
    "cones-clay06b",
    "cones-from-memory",
    "cones-can-22092",
    "cones-hodaka",
    "cones-glacures"
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
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 693,
          tempF: 1279,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "018",
      endPoints: [
        {
          tempC: 712,
          tempF: 1314,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 732,
          tempF: 1350,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "017",
      endPoints: [
        {
          tempC: 736,
          tempF: 1357,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 761,
          tempF: 1402,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "016",
      endPoints: [
        {
          tempC: 769,
          tempF: 1416,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 794,
          tempF: 1461,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "015",
      endPoints: [
        {
          tempC: 788,
          tempF: 1450,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 816,
          tempF: 1501,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "014",
      endPoints: [
        {
          tempC: 807,
          tempF: 1485,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 836,
          tempF: 1537,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "013",
      endPoints: [
        { tempC: 837, tempF: 1539, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 859, tempF: 1578, confidence: "one-copy", sources: ["cones-ort-c1"] }
      ]
    },
    {
      cone: "012",
      endPoints: [
        {
          tempC: 858,
          tempF: 1576,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"]
        },
        {
          tempC: 880,
          tempF: 1616,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"]
        }
      ]
    },
    {
      cone: "011",
      endPoints: [
        {
          tempC: 873,
          tempF: 1603,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"]
        },
        {
          tempC: 892,
          tempF: 1638,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"]
        }
      ]
    },
    {
      cone: "010",
      endPoints: [
        {
          tempC: 898,
          tempF: 1648,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"]
        },
        {
          tempC: 913,
          tempF: 1675,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"]
        }
      ]
    },
    {
      cone: "09",
      endPoints: [
        {
          tempC: 917,
          tempF: 1683,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"]
        },
        {
          tempC: 928,
          tempF: 1702,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"]
        }
      ]
    },
    {
      cone: "08",
      endPoints: [
        {
          tempC: 942,
          tempF: 1728,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"]
        },
        {
          tempC: 954,
          tempF: 1749,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-large-c"]
        }
      ]
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 973, tempF: 1783, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 985, tempF: 1805, confidence: "one-copy", sources: ["cones-large-c"] }
      ]
    },
    {
      cone: "06",
      endPoints: [
        {
          tempC: 995,
          tempF: 1823,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"]
        },
        {
          tempC: 1011,
          tempF: 1852,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"]
        }
      ]
    },
    {
      cone: "05.5",
      endPoints: [
        { tempC: 1012, tempF: 1854, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1023, tempF: 1873, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1030, tempF: 1886, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1046, tempF: 1915, confidence: "one-copy", sources: ["cones-large-c"] }
      ]
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1060, tempF: 1940, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1070, tempF: 1958, confidence: "one-copy", sources: ["cones-large-c"] }
      ]
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1086, tempF: 1987, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1101, tempF: 2014, confidence: "one-copy", sources: ["cones-large-c"] }
      ]
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1101, tempF: 2014, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1120, tempF: 2048, confidence: "one-copy", sources: ["cones-large-c"] }
      ]
    },
    {
      cone: "01",
      endPoints: [
        {
          tempC: 1117,
          tempF: 2043,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"]
        },
        {
          tempC: 1137,
          tempF: 2079,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"]
        }
      ]
    },
    {
      cone: "1",
      endPoints: [
        {
          tempC: 1136,
          tempF: 2077,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"]
        },
        {
          tempC: 1154,
          tempF: 2109,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"]
        }
      ]
    },
    {
      cone: "2",
      endPoints: [
        { tempC: 1142, tempF: 2088, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1162, tempF: 2124, confidence: "one-copy", sources: ["cones-large-c"] }
      ]
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1152, tempF: 2106, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1168, tempF: 2134, confidence: "one-copy", sources: ["cones-large-c"] }
      ]
    },
    {
      cone: "4",
      endPoints: [
        { tempC: 1160, tempF: 2120, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1181, tempF: 2158, confidence: "one-copy", sources: ["cones-large-c"] }
      ]
    },
    {
      cone: "5",
      endPoints: [
        { tempC: 1184, tempF: 2163, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1205, tempF: 2201, confidence: "one-copy", sources: ["cones-large-c"] }
      ]
    },
    {
      cone: "6",
      endPoints: [
        {
          tempC: 1220,
          tempF: 2228,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"]
        },
        {
          tempC: 1241,
          tempF: 2266,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-clay06b"]
        }
      ]
    },
    {
      cone: "7",
      endPoints: [
        {
          tempC: 1237,
          tempF: 2259,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-can-22092"]
        },
        {
          tempC: 1255,
          tempF: 2291,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-can-22092"]
        }
      ]
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1247, tempF: 2277, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1269, tempF: 2316, confidence: "one-copy", sources: ["cones-large-c"] }
      ]
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1257, tempF: 2295, confidence: "one-copy", sources: ["cones-large-c"] },
        {
          tempC: 1278,
          tempF: 2332,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-hodaka"]
        }
      ]
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1282, tempF: 2340, confidence: "one-copy", sources: ["cones-large-c"] },
        {
          tempC: 1303,
          tempF: 2377,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-hodaka", "cones-glacures"]
        }
      ]
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1293, tempF: 2359, confidence: "one-copy", sources: ["cones-large-c"] },
        {
          tempC: 1312,
          tempF: 2394,
          confidence: "two-copies",
          sources: ["cones-large-c", "cones-hodaka"]
        }
      ]
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1304, tempF: 2379, confidence: "one-copy", sources: ["cones-large-c"] },
        { tempC: 1324, tempF: 2415, confidence: "one-copy", sources: ["cones-large-c"] }
      ]
    },
    {
      cone: "13",
      endPoints: [
        { tempC: 1321, tempF: 2410, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1346, tempF: 2455, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "14",
      endPoints: [
        { tempC: 1388, tempF: 2530, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1366, tempF: 2491, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    }
  ]
};

// src/core/cones/tables/largeIronFree.ts
var LARGE_IRON_FREE = {
  series: "large-iron-free",
  sources: ["cones-ort-c1", "cones-from-memory"],
  ratesCPerHour: [60, 150],
  printedResolutionC: 1,
  rows: [
    {
      cone: "010",
      endPoints: [
        { tempC: 884, tempF: 1623, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 891, tempF: 1636, confidence: "one-copy", sources: ["cones-ort-c1"] }
      ]
    },
    {
      cone: "09",
      endPoints: [
        { tempC: 917, tempF: 1683, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 926, tempF: 1699, confidence: "one-copy", sources: ["cones-ort-c1"] }
      ]
    },
    {
      cone: "08",
      endPoints: [
        { tempC: 945, tempF: 1733, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 955, tempF: 1751, confidence: "one-copy", sources: ["cones-ort-c1"] }
      ]
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 970, tempF: 1778, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 980, tempF: 1796, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "06",
      endPoints: [
        { tempC: 991, tempF: 1816, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 996, tempF: 1825, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "05.5",
      endPoints: [
        { tempC: 1011, tempF: 1852, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1020, tempF: 1868, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1032, tempF: 1890, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1044, tempF: 1911, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1060, tempF: 1940, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1067, tempF: 1953, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1087, tempF: 1989, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1091, tempF: 1996, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1102, tempF: 2016, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1113, tempF: 2035, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1122, tempF: 2052, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1132, tempF: 2070, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1137, tempF: 2079, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1146, tempF: 2095, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1151, tempF: 2104, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1160, tempF: 2120, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    }
  ]
};

// src/core/cones/tables/largeLegacy.ts
var LARGE_LEGACY = {
  series: "large-legacy",
  sources: [
    "cones-is-1528",
    "cones-from-memory",
    "cones-hamer",
    "cones-potter-chart",
    "cones-firing-chart",
    "cones-bcc",
    "cones-tneutron"
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
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "021",
      endPoints: [
        { tempC: 602, tempF: 1116, confidence: "one-copy", sources: ["cones-is-1528"] },
        {
          tempC: 614,
          tempF: 1137,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "020",
      endPoints: [
        { tempC: 625, tempF: 1157, confidence: "one-copy", sources: ["cones-is-1528"] },
        {
          tempC: 635,
          tempF: 1175,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "019",
      endPoints: [
        { tempC: 668, tempF: 1234, confidence: "one-copy", sources: ["cones-is-1528"] },
        {
          tempC: 683,
          tempF: 1261,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "018",
      endPoints: [
        { tempC: 696, tempF: 1285, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 717,
          tempF: 1322,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "017",
      endPoints: [
        { tempC: 727, tempF: 1341, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 747,
          tempF: 1376,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "016",
      endPoints: [
        { tempC: 764, tempF: 1407, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 792,
          tempF: 1457,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "015",
      endPoints: [
        { tempC: 790, tempF: 1454, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 804,
          tempF: 1479,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "014",
      endPoints: [
        { tempC: 834, tempF: 1533, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 838,
          tempF: 1540,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "013",
      endPoints: [
        { tempC: 869, tempF: 1596, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 852,
          tempF: 1565,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "012",
      endPoints: [
        { tempC: 866, tempF: 1591, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 884,
          tempF: 1623,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "011",
      endPoints: [
        { tempC: 886, tempF: 1627, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 894,
          tempF: 1641,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "010",
      endPoints: [
        { tempC: 887, tempF: 1629, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 900,
          tempF: 1652,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart"]
        }
      ]
    },
    {
      cone: "09",
      endPoints: [
        { tempC: 915, tempF: 1679, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 923,
          tempF: 1693,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "08",
      endPoints: [
        { tempC: 945, tempF: 1733, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 955,
          tempF: 1751,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 973, tempF: 1783, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 984,
          tempF: 1803,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "06",
      endPoints: [
        { tempC: 991, tempF: 1816, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 999,
          tempF: 1830,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1031, tempF: 1888, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1046,
          tempF: 1914,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1050, tempF: 1922, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1060,
          tempF: 1940,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "03.5",
      endPoints: [
        null,
        {
          tempC: 1080,
          tempF: 1976,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart"]
        }
      ]
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1086, tempF: 1987, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1101,
          tempF: 2014,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1101, tempF: 2014, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1120,
          tempF: 2048,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1117, tempF: 2043, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1137,
          tempF: 2079,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1136, tempF: 2077, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1154,
          tempF: 2109,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "2",
      endPoints: [
        { tempC: 1142, tempF: 2088, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1162,
          tempF: 2124,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1152, tempF: 2106, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1168,
          tempF: 2134,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "4",
      endPoints: [
        { tempC: 1168, tempF: 2134, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1186,
          tempF: 2167,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc"]
        }
      ]
    },
    {
      cone: "5",
      endPoints: [
        { tempC: 1177, tempF: 2151, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1196,
          tempF: 2185,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"]
        }
      ]
    },
    {
      cone: "6",
      endPoints: [
        { tempC: 1201, tempF: 2194, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1222,
          tempF: 2232,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"]
        }
      ]
    },
    {
      cone: "7",
      endPoints: [
        { tempC: 1215, tempF: 2219, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1240,
          tempF: 2264,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"]
        }
      ]
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1236, tempF: 2257, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1263,
          tempF: 2305,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"]
        }
      ]
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1260, tempF: 2300, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1280,
          tempF: 2336,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"]
        }
      ]
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1285, tempF: 2345, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1305,
          tempF: 2381,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-bcc", "cones-hamer"]
        }
      ]
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1294, tempF: 2361, confidence: "one-copy", sources: ["cones-hamer"] },
        {
          tempC: 1315,
          tempF: 2399,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart", "cones-hamer"]
        }
      ]
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1306, tempF: 2383, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1326,
          tempF: 2419,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart"]
        }
      ]
    },
    {
      cone: "13",
      endPoints: [
        { tempC: 1321, tempF: 2410, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1346,
          tempF: 2455,
          confidence: "two-copies",
          sources: ["cones-potter-chart", "cones-firing-chart"]
        }
      ]
    },
    {
      cone: "14",
      endPoints: [
        { tempC: 1388, tempF: 2530, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1366, tempF: 2491, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "15",
      endPoints: [
        { tempC: 1424, tempF: 2595, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1431, tempF: 2608, confidence: "one-copy", sources: ["cones-tneutron"] }
      ]
    }
  ]
};

// src/core/cones/tables/pce.ts
var PCE = {
  series: "pce",
  sources: ["cones-from-memory", "cones-is-1528"],
  ratesCPerHour: [150, 600],
  printedResolutionC: 1,
  rows: [
    {
      cone: "12",
      endPoints: [
        { tempC: 1337, tempF: 2439, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "13",
      endPoints: [
        { tempC: 1349, tempF: 2460, confidence: "one-copy", sources: ["cones-is-1528"] },
        null
      ]
    },
    {
      cone: "14",
      endPoints: [
        { tempC: 1398, tempF: 2548, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "15",
      endPoints: [
        { tempC: 1430, tempF: 2606, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "16",
      endPoints: [
        { tempC: 1491, tempF: 2716, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "17",
      endPoints: [
        { tempC: 1512, tempF: 2754, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "18",
      endPoints: [
        { tempC: 1522, tempF: 2772, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "19",
      endPoints: [
        { tempC: 1541, tempF: 2806, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "20",
      endPoints: [
        { tempC: 1564, tempF: 2847, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "23",
      endPoints: [
        { tempC: 1605, tempF: 2921, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "26",
      endPoints: [
        { tempC: 1621, tempF: 2950, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "27",
      endPoints: [
        { tempC: 1640, tempF: 2984, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "28",
      endPoints: [
        { tempC: 1646, tempF: 2995, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "29",
      endPoints: [
        { tempC: 1659, tempF: 3018, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "30",
      endPoints: [
        { tempC: 1665, tempF: 3029, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "31",
      endPoints: [
        { tempC: 1683, tempF: 3061, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "31.5",
      endPoints: [
        { tempC: 1699, tempF: 3090, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "32",
      endPoints: [
        { tempC: 1717, tempF: 3123, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "32.5",
      endPoints: [
        { tempC: 1724, tempF: 3135, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "33",
      endPoints: [
        { tempC: 1743, tempF: 3169, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "34",
      endPoints: [
        { tempC: 1763, tempF: 3205, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "35",
      endPoints: [
        { tempC: 1785, tempF: 3245, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "36",
      endPoints: [
        { tempC: 1804, tempF: 3279, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "37",
      endPoints: [
        { tempC: 1820, tempF: 3308, confidence: "from-memory", sources: ["cones-from-memory"] },
        null
      ]
    },
    {
      cone: "38",
      endPoints: [
        null,
        { tempC: 1850, tempF: 3362, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "39",
      endPoints: [
        null,
        { tempC: 1865, tempF: 3389, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "40",
      endPoints: [
        null,
        { tempC: 1885, tempF: 3425, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "41",
      endPoints: [
        null,
        { tempC: 1970, tempF: 3578, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "42",
      endPoints: [
        null,
        { tempC: 2015, tempF: 3659, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    }
  ]
};

// src/core/cones/tables/segerEuropean.ts
var SEGER_EUROPEAN = {
  series: "seger-european",
  sources: ["cones-arteraku"],
  ratesCPerHour: [null],
  printedResolutionC: 1,
  rows: [
    {
      cone: "021",
      endPoints: [{ tempC: 640, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "020",
      endPoints: [{ tempC: 660, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "019",
      endPoints: [{ tempC: 685, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "018",
      endPoints: [{ tempC: 705, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "017",
      endPoints: [{ tempC: 730, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "016",
      endPoints: [{ tempC: 755, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "015a",
      endPoints: [{ tempC: 780, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "014a",
      endPoints: [{ tempC: 805, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "013a",
      endPoints: [{ tempC: 835, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "012a",
      endPoints: [{ tempC: 860, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "011a",
      endPoints: [{ tempC: 900, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "010a",
      endPoints: [{ tempC: 920, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "09a",
      endPoints: [{ tempC: 935, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "08a",
      endPoints: [{ tempC: 955, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "07a",
      endPoints: [{ tempC: 970, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "06a",
      endPoints: [{ tempC: 990, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }]
    },
    {
      cone: "05a",
      endPoints: [
        { tempC: 1e3, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "04a",
      endPoints: [
        { tempC: 1025, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "03a",
      endPoints: [
        { tempC: 1055, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "02a",
      endPoints: [
        { tempC: 1085, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "01a",
      endPoints: [
        { tempC: 1105, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "1a",
      endPoints: [
        { tempC: 1125, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "2a",
      endPoints: [
        { tempC: 1150, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "3a",
      endPoints: [
        { tempC: 1170, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "4a",
      endPoints: [
        { tempC: 1195, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "5a",
      endPoints: [
        { tempC: 1215, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "6a",
      endPoints: [
        { tempC: 1240, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "7",
      endPoints: [
        { tempC: 1260, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1280, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1300, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1320, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1340, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1360, tempF: null, confidence: "one-copy", sources: ["cones-arteraku"] }
      ]
    }
  ]
};

// src/core/cones/tables/segerJis.ts
var SEGER_JIS = {
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
          sources: ["cones-igloss", "cones-jp-other"]
        }
      ]
    },
    {
      cone: "021",
      endPoints: [{ tempC: 650, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "020",
      endPoints: [{ tempC: 670, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "019",
      endPoints: [{ tempC: 690, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "018",
      endPoints: [{ tempC: 700, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "017",
      endPoints: [{ tempC: 730, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "016",
      endPoints: [{ tempC: 750, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "015a",
      endPoints: [{ tempC: 790, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "014a",
      endPoints: [{ tempC: 815, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "013a",
      endPoints: [{ tempC: 835, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "012a",
      endPoints: [{ tempC: 855, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "011a",
      endPoints: [{ tempC: 880, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "010a",
      endPoints: [{ tempC: 900, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "09a",
      endPoints: [{ tempC: 920, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "08a",
      endPoints: [{ tempC: 940, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "07a",
      endPoints: [{ tempC: 960, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "06a",
      endPoints: [{ tempC: 980, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "05a",
      endPoints: [{ tempC: 1e3, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "04a",
      endPoints: [{ tempC: 1020, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "03a",
      endPoints: [{ tempC: 1040, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "02a",
      endPoints: [{ tempC: 1060, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "01a",
      endPoints: [{ tempC: 1080, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "1a",
      endPoints: [{ tempC: 1100, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "2a",
      endPoints: [{ tempC: 1120, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "3a",
      endPoints: [{ tempC: 1140, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "4a",
      endPoints: [{ tempC: 1160, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "5a",
      endPoints: [{ tempC: 1180, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "6a",
      endPoints: [{ tempC: 1200, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "7",
      endPoints: [
        {
          tempC: 1230,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"]
        }
      ]
    },
    {
      cone: "8",
      endPoints: [
        {
          tempC: 1250,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"]
        }
      ]
    },
    {
      cone: "9",
      endPoints: [
        {
          tempC: 1280,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"]
        }
      ]
    },
    {
      cone: "10",
      endPoints: [
        {
          tempC: 1300,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"]
        }
      ]
    },
    {
      cone: "11",
      endPoints: [{ tempC: 1320, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "12",
      endPoints: [{ tempC: 1350, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "13",
      endPoints: [{ tempC: 1380, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "14",
      endPoints: [{ tempC: 1410, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "15",
      endPoints: [
        {
          tempC: 1435,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"]
        }
      ]
    },
    {
      cone: "16",
      endPoints: [{ tempC: 1460, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "17",
      endPoints: [{ tempC: 1480, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "18",
      endPoints: [{ tempC: 1500, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "19",
      endPoints: [{ tempC: 1520, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "20",
      endPoints: [
        {
          tempC: 1530,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"]
        }
      ]
    },
    {
      cone: "26",
      endPoints: [
        {
          tempC: 1580,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"]
        }
      ]
    },
    {
      cone: "27",
      endPoints: [{ tempC: 1610, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "28",
      endPoints: [{ tempC: 1630, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "29",
      endPoints: [{ tempC: 1650, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "30",
      endPoints: [{ tempC: 1670, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "31",
      endPoints: [{ tempC: 1690, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "32",
      endPoints: [{ tempC: 1710, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "33",
      endPoints: [{ tempC: 1730, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "34",
      endPoints: [{ tempC: 1750, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "35",
      endPoints: [{ tempC: 1770, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "36",
      endPoints: [{ tempC: 1790, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "37",
      endPoints: [{ tempC: 1825, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "38",
      endPoints: [{ tempC: 1850, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "39",
      endPoints: [{ tempC: 1880, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "40",
      endPoints: [{ tempC: 1920, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "41",
      endPoints: [{ tempC: 1960, tempF: null, confidence: "one-copy", sources: ["cones-igloss"] }]
    },
    {
      cone: "42",
      endPoints: [
        {
          tempC: 2e3,
          tempF: null,
          confidence: "two-copies",
          sources: ["cones-igloss", "cones-jp-other"]
        }
      ]
    }
  ]
};

// src/core/cones/tables/selfSupporting.ts
var SELF_SUPPORTING = {
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
    "cones-cone-13"
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
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        },
        {
          tempC: 590,
          tempF: 1094,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "021",
      endPoints: [
        null,
        {
          tempC: 600,
          tempF: 1112,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        },
        {
          tempC: 617,
          tempF: 1143,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "020",
      endPoints: [
        null,
        {
          tempC: 626,
          tempF: 1159,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        },
        {
          tempC: 638,
          tempF: 1180,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "019",
      endPoints: [
        {
          tempC: 656,
          tempF: 1213,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 678,
          tempF: 1252,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        },
        {
          tempC: 695,
          tempF: 1283,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "018",
      endPoints: [
        {
          tempC: 686,
          tempF: 1267,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 715,
          tempF: 1319,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        },
        {
          tempC: 734,
          tempF: 1353,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "017",
      endPoints: [
        {
          tempC: 705,
          tempF: 1301,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 738,
          tempF: 1360,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        },
        {
          tempC: 763,
          tempF: 1405,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "016",
      endPoints: [
        {
          tempC: 742,
          tempF: 1368,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 772,
          tempF: 1422,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        },
        {
          tempC: 796,
          tempF: 1465,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "015",
      endPoints: [
        {
          tempC: 750,
          tempF: 1382,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 791,
          tempF: 1456,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        },
        {
          tempC: 818,
          tempF: 1504,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "014",
      endPoints: [
        {
          tempC: 757,
          tempF: 1395,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        },
        {
          tempC: 807,
          tempF: 1485,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        },
        {
          tempC: 838,
          tempF: 1540,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "013",
      endPoints: [
        { tempC: 807, tempF: 1485, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 837,
          tempF: 1539,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"]
        },
        {
          tempC: 861,
          tempF: 1582,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "012",
      endPoints: [
        { tempC: 843, tempF: 1549, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 861,
          tempF: 1582,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"]
        },
        {
          tempC: 882,
          tempF: 1620,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "011",
      endPoints: [
        { tempC: 857, tempF: 1575, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 875,
          tempF: 1607,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f", "cones-wyd"]
        },
        {
          tempC: 894,
          tempF: 1641,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "010",
      endPoints: [
        { tempC: 891, tempF: 1636, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 903,
          tempF: 1657,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f", "cones-wyd"]
        },
        {
          tempC: 915,
          tempF: 1679,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "09",
      endPoints: [
        { tempC: 907, tempF: 1665, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 920,
          tempF: 1688,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"]
        },
        {
          tempC: 930,
          tempF: 1706,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "08",
      endPoints: [
        { tempC: 922, tempF: 1692, confidence: "one-copy", sources: ["cones-ort-c1"] },
        {
          tempC: 942,
          tempF: 1728,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f", "cones-otten"]
        },
        {
          tempC: 956,
          tempF: 1753,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-chart-f"]
        }
      ]
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 962, tempF: 1764, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 976, tempF: 1789, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 987, tempF: 1809, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "06",
      endPoints: [
        { tempC: 981, tempF: 1798, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 998,
          tempF: 1828,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-otten"]
        },
        {
          tempC: 1013,
          tempF: 1855,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-cone-list"]
        }
      ]
    },
    {
      cone: "05.5",
      endPoints: [
        { tempC: 1004, tempF: 1839, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1015, tempF: 1859, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1025, tempF: 1877, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1021, tempF: 1870, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1031,
          tempF: 1888,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-russ"]
        },
        { tempC: 1044, tempF: 1911, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1046, tempF: 1915, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1063, tempF: 1945, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1077, tempF: 1971, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1071, tempF: 1960, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1086, tempF: 1987, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1104, tempF: 2019, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1078, tempF: 1972, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1102, tempF: 2016, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1122, tempF: 2052, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1093, tempF: 1999, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1119, tempF: 2046, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1138, tempF: 2080, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1109, tempF: 2028, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1137, tempF: 2079, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1154, tempF: 2109, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "2",
      endPoints: [
        { tempC: 1112, tempF: 2034, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1142, tempF: 2088, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1164, tempF: 2127, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1115, tempF: 2039, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1152, tempF: 2106, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1170, tempF: 2138, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "4",
      endPoints: [
        { tempC: 1141, tempF: 2086, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1162, tempF: 2124, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1183, tempF: 2161, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "5",
      endPoints: [
        { tempC: 1159, tempF: 2118, confidence: "from-memory", sources: ["cones-from-memory"] },
        {
          tempC: 1186,
          tempF: 2167,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-otten"]
        },
        { tempC: 1207, tempF: 2205, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "5.5",
      endPoints: [
        { tempC: 1167, tempF: 2133, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1203, tempF: 2197, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1225, tempF: 2237, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "6",
      endPoints: [
        { tempC: 1185, tempF: 2165, confidence: "one-copy", sources: ["cones-clay06a"] },
        {
          tempC: 1222,
          tempF: 2232,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-clay06a", "cones-otten"]
        },
        {
          tempC: 1243,
          tempF: 2269,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-clay06a", "cones-cone-list"]
        }
      ]
    },
    {
      cone: "7",
      endPoints: [
        { tempC: 1201, tempF: 2194, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1239, tempF: 2262, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1257, tempF: 2295, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1211, tempF: 2212, confidence: "one-copy", sources: ["cones-ratings"] },
        { tempC: 1249, tempF: 2280, confidence: "one-copy", sources: ["cones-chart-f"] },
        { tempC: 1271, tempF: 2320, confidence: "one-copy", sources: ["cones-chart-f"] }
      ]
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1224, tempF: 2235, confidence: "one-copy", sources: ["cones-ratings"] },
        {
          tempC: 1260,
          tempF: 2300,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-ratings", "cones-otten"]
        },
        {
          tempC: 1280,
          tempF: 2336,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-ratings"]
        }
      ]
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1251, tempF: 2284, confidence: "one-copy", sources: ["cones-ratings"] },
        {
          tempC: 1285,
          tempF: 2345,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-ratings", "cones-otten", "cones-wyd"]
        },
        {
          tempC: 1305,
          tempF: 2381,
          confidence: "two-copies",
          sources: ["cones-chart-f", "cones-ratings"]
        }
      ]
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1272, tempF: 2322, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1294, tempF: 2361, confidence: "one-copy", sources: ["cones-mosh"] },
        { tempC: 1315, tempF: 2399, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1285, tempF: 2345, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1306, tempF: 2383, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1326, tempF: 2419, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "13",
      endPoints: [
        { tempC: 1310, tempF: 2389, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1331, tempF: 2428, confidence: "one-copy", sources: ["cones-cone-13"] },
        { tempC: 1348, tempF: 2458, confidence: "one-copy", sources: ["cones-cone-13"] }
      ]
    },
    {
      cone: "14",
      endPoints: [
        { tempC: 1351, tempF: 2464, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1365, tempF: 2489, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1384, tempF: 2523, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    }
  ]
};

// src/core/cones/tables/selfSupportingIronFree.ts
var SELF_SUPPORTING_IRON_FREE = {
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
        { tempC: 893, tempF: 1639, confidence: "one-copy", sources: ["cones-ort-c1"] }
      ]
    },
    {
      cone: "09",
      endPoints: [
        { tempC: 899, tempF: 1650, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 919, tempF: 1686, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 928, tempF: 1702, confidence: "one-copy", sources: ["cones-ort-c1"] }
      ]
    },
    {
      cone: "08",
      endPoints: [
        { tempC: 924, tempF: 1695, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 946, tempF: 1735, confidence: "one-copy", sources: ["cones-ort-c1"] },
        { tempC: 957, tempF: 1755, confidence: "one-copy", sources: ["cones-ort-c1"] }
      ]
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 953, tempF: 1747, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 971, tempF: 1780, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 982, tempF: 1800, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "06",
      endPoints: [
        { tempC: 969, tempF: 1776, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 991, tempF: 1816, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 998, tempF: 1828, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "05.5",
      endPoints: [
        { tempC: 990, tempF: 1814, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1012, tempF: 1854, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1021, tempF: 1870, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1013, tempF: 1855, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1037, tempF: 1899, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1046, tempF: 1915, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "04",
      endPoints: [
        { tempC: 1043, tempF: 1909, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1061, tempF: 1942, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1069, tempF: 1956, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1066, tempF: 1951, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1088, tempF: 1990, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1093, tempF: 1999, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1084, tempF: 1983, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1105, tempF: 2021, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1115, tempF: 2039, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1101, tempF: 2014, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1123, tempF: 2053, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1134, tempF: 2073, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1119, tempF: 2046, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1139, tempF: 2082, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1148, tempF: 2098, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1130, tempF: 2066, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1154, tempF: 2109, confidence: "from-memory", sources: ["cones-from-memory"] },
        { tempC: 1162, tempF: 2124, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    }
  ]
};

// src/core/cones/tables/small.ts
var SMALL = {
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
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "021",
      endPoints: [
        {
          tempC: 643,
          tempF: 1189,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "020",
      endPoints: [
        {
          tempC: 666,
          tempF: 1231,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "019",
      endPoints: [
        {
          tempC: 723,
          tempF: 1333,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "018",
      endPoints: [
        {
          tempC: 752,
          tempF: 1386,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "017",
      endPoints: [
        {
          tempC: 784,
          tempF: 1443,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "016",
      endPoints: [
        {
          tempC: 825,
          tempF: 1517,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "015",
      endPoints: [
        {
          tempC: 843,
          tempF: 1549,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "014",
      endPoints: [
        {
          tempC: 870,
          tempF: 1598,
          confidence: "two-copies",
          sources: ["cones-ort-c1", "cones-ort-c2016"]
        }
      ]
    },
    {
      cone: "013",
      endPoints: [{ tempC: 880, tempF: 1616, confidence: "one-copy", sources: ["cones-ort-c1"] }]
    },
    {
      cone: "012",
      endPoints: [{ tempC: 900, tempF: 1652, confidence: "one-copy", sources: ["cones-ort-c1"] }]
    },
    {
      cone: "011",
      endPoints: [{ tempC: 915, tempF: 1679, confidence: "one-copy", sources: ["cones-ort-c1"] }]
    },
    {
      cone: "010",
      endPoints: [{ tempC: 919, tempF: 1686, confidence: "one-copy", sources: ["cones-ort-c1"] }]
    },
    {
      cone: "09",
      endPoints: [{ tempC: 955, tempF: 1751, confidence: "one-copy", sources: ["cones-ort-c1"] }]
    },
    {
      cone: "08",
      endPoints: [{ tempC: 983, tempF: 1801, confidence: "one-copy", sources: ["cones-ort-c1"] }]
    },
    {
      cone: "07",
      endPoints: [
        { tempC: 1008, tempF: 1846, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "06",
      endPoints: [{ tempC: 1023, tempF: 1873, confidence: "one-copy", sources: ["cones-artdict"] }]
    },
    {
      cone: "05.5",
      endPoints: [
        { tempC: 1043, tempF: 1909, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "05",
      endPoints: [
        { tempC: 1062, tempF: 1944, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "04",
      endPoints: [{ tempC: 1098, tempF: 2008, confidence: "one-copy", sources: ["cones-artdict"] }]
    },
    {
      cone: "03",
      endPoints: [
        { tempC: 1131, tempF: 2068, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "02",
      endPoints: [
        { tempC: 1148, tempF: 2098, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "01",
      endPoints: [
        { tempC: 1178, tempF: 2152, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "1",
      endPoints: [
        { tempC: 1184, tempF: 2163, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "2",
      endPoints: [
        { tempC: 1190, tempF: 2174, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "3",
      endPoints: [
        { tempC: 1196, tempF: 2185, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "4",
      endPoints: [
        { tempC: 1209, tempF: 2208, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "5",
      endPoints: [
        { tempC: 1221, tempF: 2230, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "6",
      endPoints: [
        { tempC: 1255, tempF: 2291, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "7",
      endPoints: [
        { tempC: 1264, tempF: 2307, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "8",
      endPoints: [
        { tempC: 1300, tempF: 2372, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "9",
      endPoints: [
        { tempC: 1317, tempF: 2403, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "10",
      endPoints: [
        { tempC: 1330, tempF: 2426, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "11",
      endPoints: [
        { tempC: 1336, tempF: 2437, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    },
    {
      cone: "12",
      endPoints: [
        { tempC: 1355, tempF: 2471, confidence: "from-memory", sources: ["cones-from-memory"] }
      ]
    }
  ]
};

// src/core/cones/tables/coneTables.ts
var CONE_TABLES = {
  "self-supporting": SELF_SUPPORTING,
  "self-supporting-iron-free": SELF_SUPPORTING_IRON_FREE,
  large: LARGE,
  "large-iron-free": LARGE_IRON_FREE,
  small: SMALL,
  "large-legacy": LARGE_LEGACY,
  "fairchild-peters-1926": FAIRCHILD_PETERS,
  pce: PCE,
  "seger-jis": SEGER_JIS,
  "seger-european": SEGER_EUROPEAN
};
function printedEndPoint(table, cone, rateCPerHour) {
  const column = table.ratesCPerHour.indexOf(rateCPerHour);
  const row = table.rows.find((each) => each.cone === cone);
  return row?.endPoints[column] ?? null;
}

// src/core/sources/cones.ts
function copyOf(title, publisher, year, locator) {
  return { title, publisher, year, locator, seen: "copy" };
}
function quoted(title, publisher, year, locator) {
  return { title, publisher, year, locator, seen: "at second hand" };
}
var CHART_C = "Temperature Equivalent Chart for pyrometric cones (\xB0C), cones 022\u201314";
var CONE_MAKER = "Edward Orton Jr. Ceramic Foundation";
var POTTERS_LIST = "Clayart discussion list";
var ARTS_FORUM = "Ceramic Arts Network forum";
var CONES_SOURCES = {
  "cones-ort-c1": copyOf(
    CHART_C,
    CONE_MAKER,
    null,
    "earlier edition, copy at formsbank.com/template/288043: rows 022\u201308 readable, with text"
  ),
  "cones-ort-c2016": copyOf(
    CHART_C,
    CONE_MAKER,
    2016,
    "copy at scribd.com/document/456397963: rows 022\u2013014 readable, with text"
  ),
  "cones-chart-f": copyOf(
    "Cone table in \xB0F, 108 and 270 \xB0F/h, self-supporting cones 022\u201310",
    CONE_MAKER,
    null,
    "as copied on two web pages of one text, counted once"
  ),
  "cones-large-c": copyOf(
    "Large-cone table, 60 and 150 \xB0C/h, cones 012\u201312, with notes on bending",
    CONE_MAKER,
    null,
    "as copied on a web page"
  ),
  "cones-clay06a": copyOf(
    "Orton cone chart",
    POTTERS_LIST,
    2006,
    "November, potters.org/subject81597"
  ),
  "cones-clay06b": quoted(
    "End points quoted by L. Krakowski",
    POTTERS_LIST,
    2006,
    "February, potters.org/subject91937"
  ),
  "cones-can-22092": copyOf(
    "Large-cone end points and heatwork of cooling",
    ARTS_FORUM,
    null,
    "topic 22092"
  ),
  "cones-can-23526": copyOf("Cone 5 and cone 6 at two rates", ARTS_FORUM, null, "topic 23526"),
  "cones-can-5036": copyOf("Soaks and witness cones", ARTS_FORUM, null, "topic 5036"),
  "cones-can-mp": copyOf("A kiln owner's own schedule", ARTS_FORUM, null, "user post"),
  "cones-hodaka": copyOf("Cone chart", "hodakapottery.wordpress.com", 2008, "20 November"),
  "cones-glacures": copyOf(
    "Les c\xF4nes Orton",
    CONE_MAKER,
    null,
    "as copied on a French page on glazes"
  ),
  "cones-ratings": copyOf("Cone ratings", CONE_MAKER, null, "as copied on a web page"),
  "cones-chart-notes": copyOf(
    "Notes printed with the temperature equivalent chart",
    CONE_MAKER,
    null,
    "as copied on a web page: bending time and soak rule"
  ),
  "cones-cone-list": copyOf("List of cones", CONE_MAKER, null, "as copied on a web page"),
  "cones-cone-13": copyOf("Cone 13", CONE_MAKER, null, "as copied on a web page"),
  "cones-otten": copyOf(
    "Crystalline glazes",
    "interestingcraftfacts.nancyottenbreit.com",
    null,
    "page on crystalline glazes"
  ),
  "cones-wyd": copyOf(
    "Cone temperatures in a newspaper piece",
    "wydailyarchives.com",
    2017,
    "20 February"
  ),
  "cones-russ": copyOf("A cone 05 firing", "russblib.blogspot.com", 2017, "March"),
  "cones-mosh": copyOf("Cone temperatures", "mightoughtashould.blogspot.com", 2010, "June"),
  "cones-artdict": copyOf("Glossary entry on cones", "freeartdictionary.com", null, "cones"),
  "cones-potter-chart": copyOf("Cone chart", CONE_MAKER, null, "as copied on a potter's page"),
  "cones-firing-chart": copyOf("Firing chart", CONE_MAKER, null, "as copied on a web page"),
  "cones-bcc": copyOf(
    "Firing Temperatures",
    "Bellevue Community College",
    null,
    "hand-out, scribd 458679152 and docslib 8883373"
  ),
  "cones-hamer": quoted(
    "F. and J. Hamer, The Potter's Dictionary",
    POTTERS_LIST,
    null,
    "as quoted at potters.org/subject29084 (table) and subject44697 (history)"
  ),
  "cones-chappell": quoted(
    "J. Chappell, The Potter's Complete Book of Clay and Glazes",
    POTTERS_LIST,
    2e3,
    "as quoted at potters.org/subject29084"
  ),
  "cones-ginna": copyOf("Cone chart", "ginna.com", null, "ginna.com/cone_chart.html"),
  "cones-is-1528": quoted(
    "IS 1528-1: refractoriness, table of cones",
    "Bureau of Indian Standards",
    null,
    "as quoted on a web page on furnace temperatures"
  ),
  "cones-tneutron": copyOf("Cone page", "tneutron.net", null, "cone page"),
  "cones-igloss": copyOf("Seger cones (SK)", "igloss.web.fc2.com", null, "cray/sksetumei.htm"),
  "cones-jp-other": copyOf(
    "Seger cones (SK), single numbers",
    "Japanese dictionary and potters' pages",
    null,
    "dictionary entries and potters' pages, taken together"
  ),
  "cones-arteraku": copyOf("Coni Seger", "arteraku.it", null, "arteraku.it/pagine/coni_seger.asp"),
  "cones-mc6": quoted(
    "J. Hesselberth and R. Roy, Mastering Cone 6 Glazes",
    ARTS_FORUM,
    2014,
    "as quoted in a user post, and at bluestarrgallery.blogspot.com, August 2010"
  ),
  "cones-clay00b": copyOf(
    "Holding cone 10 half down",
    POTTERS_LIST,
    2e3,
    "potters.org/subject29738"
  ),
  "cones-clay07": copyOf(
    "A cone 6 firing with a soak",
    POTTERS_LIST,
    2007,
    "potters.org/subject101184"
  ),
  "cones-clay20": copyOf("Holding after cone 6", "lists.clayartworld.com", 2020, "January"),
  "cones-mel05": copyOf("Cone 11 after cone 10", POTTERS_LIST, 2005, "potters.org/subject81497"),
  "cones-andersen": copyOf("A firing with its cones", "anthonyandersen.blogspot.com", 2010, "May"),
  "cones-knighten": copyOf("A firing with its cones", "carol.knighten.org", 2019, "26 July"),
  "cones-ward01": copyOf(
    "M. Ward, Heat work: what cones really measure",
    "Clay Times",
    2001,
    "March"
  ),
  "cones-from-memory": {
    title: "Cone charts as remembered",
    publisher: "no copy could be reached",
    year: null,
    locator: "single cells of several tables; to be checked against a printed chart",
    seen: "from memory"
  }
};

// src/core/cones/coneName.ts
function parseCone(text, at) {
  const cones = CONE_TABLES[at.series].rows.map((row) => row.cone);
  const name = plainName(text);
  if (cones.includes(name)) return ok(name);
  const near = nearestCones(name, cones);
  return failed({
    code: "cones/unknown-cone",
    what: `"${text}" is not a cone of the ${at.series} series`,
    where: at.where,
    expected: `a cone from ${cones[0]} to ${cones.at(-1)}, with its leading zero: 05 is not 5`,
    fix: near.length === 0 ? `write the cone as a number, for example "${cones[Math.floor(cones.length / 2)]}"` : `write ${near.map((cone) => `"${cone}"`).join(" or ")}`
  });
}
function coneIndex(cone) {
  const value = Number.parseFloat(cone);
  if (Number.isNaN(value)) throw new RangeError(`coneIndex: "${cone}" is not a cone`);
  return cone.startsWith("0") ? -value : value - 1;
}
function wholeCones(series) {
  return CONE_TABLES[series].rows.map((row) => row.cone).filter((cone) => !cone.includes("."));
}
function plainName(text) {
  return text.toLowerCase().replace(/^\s*(?:cone|c\/|sk|[δ∆△^▲])?\s*/u, "").replace(/\s*(?:½|1\/2|,5)$/u, ".5").trim();
}
function nearestCones(name, cones) {
  if (!/^\d/u.test(name)) return [];
  const wanted = coneIndex(name);
  return cones.toSorted((a, b) => Math.abs(coneIndex(a) - wanted) - Math.abs(coneIndex(b) - wanted)).slice(0, 2).toSorted((a, b) => coneIndex(a) - coneIndex(b));
}

export {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  celsiusDeltaFromFahrenheitDelta,
  fahrenheitDeltaFromCelsiusDelta,
  ZERO_CELSIUS_K,
  celsiusFromKelvin,
  kelvinFromCelsius,
  CONE_TABLES,
  printedEndPoint,
  CONES_SOURCES,
  parseCone,
  coneIndex,
  wholeCones
};
