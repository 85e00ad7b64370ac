import type { ConesSourceId } from "../sources/cones.ts";

/**
 * A printed table of cones, one cone a line, softest first, one cell a rate: °C, °F where it is printed
 * beside it, how often it was seen (`2` in two independent copies, `1` in one, `m` from memory), and a
 * letter for each source of the list that shows it. `–` where nothing is printed.
 */
export interface PrintedCones {
  /** Every source that a cell names: a, b, c … in this order. */
  readonly sources: readonly ConesSourceId[];
  /** Columns, rising: heating rate over about the last 100 K [°C/h]; null = printed without a rate. */
  readonly ratesCPerHour: readonly (number | null)[];
  /** Smallest step of the printed values [°C]. */
  readonly printedResolutionC: number;
  readonly cells: string;
}

/** Self-supporting regular cones, the reference scale: the current chart. */
export const SELF_SUPPORTING: PrintedCones = {
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
  cells: `
022   –             586/1087 2abc    590/1094 2abc
021   –             600/1112 2abc    617/1143 2abc
020   –             626/1159 2abc    638/1180 2abc
019   656/1213 2ab  678/1252 2abc    695/1283 2abc
018   686/1267 2ab  715/1319 2abc    734/1353 2abc
017   705/1301 2ab  738/1360 2abc    763/1405 2abc
016   742/1368 2ab  772/1422 2abc    796/1465 2abc
015   750/1382 2ab  791/1456 2abc    818/1504 2abc
014   757/1395 2ab  807/1485 2abc    838/1540 2abc
013   807/1485 1a   837/1539 2ac     861/1582 2ac
012   843/1549 1a   861/1582 2ac     882/1620 2ac
011   857/1575 1a   875/1607 2acd    894/1641 2ac
010   891/1636 1a   903/1657 2acd    915/1679 2ac
09    907/1665 1a   920/1688 2ac     930/1706 2ac
08    922/1692 1a   942/1728 2ace    956/1753 2ac
07    962/1764 mf   976/1789 1c      987/1809 1c
06    981/1798 mf   998/1828 2ce     1013/1855 2cg
05.5  1004/1839 mf  1015/1859 mf     1025/1877 mf
05    1021/1870 mf  1031/1888 2ch    1044/1911 1c
04    1046/1915 mf  1063/1945 1c     1077/1971 1c
03    1071/1960 mf  1086/1987 1c     1104/2019 1c
02    1078/1972 mf  1102/2016 1c     1122/2052 1c
01    1093/1999 mf  1119/2046 1c     1138/2080 1c
1     1109/2028 mf  1137/2079 1c     1154/2109 1c
2     1112/2034 mf  1142/2088 1c     1164/2127 1c
3     1115/2039 mf  1152/2106 1c     1170/2138 1c
4     1141/2086 mf  1162/2124 1c     1183/2161 1c
5     1159/2118 mf  1186/2167 2ce    1207/2205 1c
5.5   1167/2133 mf  1203/2197 mf     1225/2237 mf
6     1185/2165 1i  1222/2232 2cie   1243/2269 2cig
7     1201/2194 mf  1239/2262 1c     1257/2295 1c
8     1211/2212 1j  1249/2280 1c     1271/2320 1c
9     1224/2235 1j  1260/2300 2cje   1280/2336 2cj
10    1251/2284 1j  1285/2345 2cjed  1305/2381 2cj
11    1272/2322 mf  1294/2361 1k     1315/2399 mf
12    1285/2345 mf  1306/2383 mf     1326/2419 mf
13    1310/2389 mf  1331/2428 1l     1348/2458 1l
14    1351/2464 mf  1365/2489 mf     1384/2523 mf
`,
};

/** Self-supporting iron-free cones: the current chart; there is no cone 2. */
export const SELF_SUPPORTING_IRON_FREE: PrintedCones = {
  sources: ["cones-ort-c1", "cones-from-memory"],
  ratesCPerHour: [15, 60, 150],
  printedResolutionC: 1,
  cells: `
010   871/1600 1a   886/1627 1a   893/1639 1a
09    899/1650 1a   919/1686 1a   928/1702 1a
08    924/1695 1a   946/1735 1a   957/1755 1a
07    953/1747 mb   971/1780 mb   982/1800 mb
06    969/1776 mb   991/1816 mb   998/1828 mb
05.5  990/1814 mb   1012/1854 mb  1021/1870 mb
05    1013/1855 mb  1037/1899 mb  1046/1915 mb
04    1043/1909 mb  1061/1942 mb  1069/1956 mb
03    1066/1951 mb  1088/1990 mb  1093/1999 mb
02    1084/1983 mb  1105/2021 mb  1115/2039 mb
01    1101/2014 mb  1123/2053 mb  1134/2073 mb
1     1119/2046 mb  1139/2082 mb  1148/2098 mb
3     1130/2066 mb  1154/2109 mb  1162/2124 mb
`,
};

/** Large regular cones: the current chart. Cone 14 falls with rate, an old anomaly carried along as printed. */
export const LARGE: PrintedCones = {
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
  cells: `
019   676/1249 2ab   693/1279 2ab
018   712/1314 2ab   732/1350 2ab
017   736/1357 2ab   761/1402 2ab
016   769/1416 2ab   794/1461 2ab
015   788/1450 2ab   816/1501 2ab
014   807/1485 2ab   836/1537 2ab
013   837/1539 1a    859/1578 1a
012   858/1576 2ac   880/1616 2ac
011   873/1603 2ac   892/1638 2ac
010   898/1648 2ac   913/1675 2ac
09    917/1683 2ac   928/1702 2ac
08    942/1728 2ac   954/1749 2ac
07    973/1783 1c    985/1805 1c
06    995/1823 2cd   1011/1852 2cd
05.5  1012/1854 me   1023/1873 me
05    1030/1886 1c   1046/1915 1c
04    1060/1940 1c   1070/1958 1c
03    1086/1987 1c   1101/2014 1c
02    1101/2014 1c   1120/2048 1c
01    1117/2043 2cd  1137/2079 2cd
1     1136/2077 2cd  1154/2109 2cd
2     1142/2088 1c   1162/2124 1c
3     1152/2106 1c   1168/2134 1c
4     1160/2120 1c   1181/2158 1c
5     1184/2163 1c   1205/2201 1c
6     1220/2228 2cd  1241/2266 2cd
7     1237/2259 2cf  1255/2291 2cf
8     1247/2277 1c   1269/2316 1c
9     1257/2295 1c   1278/2332 2cg
10    1282/2340 1c   1303/2377 2cgh
11    1293/2359 1c   1312/2394 2cg
12    1304/2379 1c   1324/2415 1c
13    1321/2410 me   1346/2455 me
14    1388/2530 me   1366/2491 me
`,
};

/** Large iron-free cones: the current chart; there is no cone 2. */
export const LARGE_IRON_FREE: PrintedCones = {
  sources: ["cones-ort-c1", "cones-from-memory"],
  ratesCPerHour: [60, 150],
  printedResolutionC: 1,
  cells: `
010   884/1623 1a   891/1636 1a
09    917/1683 1a   926/1699 1a
08    945/1733 1a   955/1751 1a
07    970/1778 mb   980/1796 mb
06    991/1816 mb   996/1825 mb
05.5  1011/1852 mb  1020/1868 mb
05    1032/1890 mb  1044/1911 mb
04    1060/1940 mb  1067/1953 mb
03    1087/1989 mb  1091/1996 mb
02    1102/2016 mb  1113/2035 mb
01    1122/2052 mb  1132/2070 mb
1     1137/2079 mb  1146/2095 mb
3     1151/2104 mb  1160/2120 mb
`,
};

/** Small (junior) cones, calibrated at 300 °C/h in a gas kiln: the current chart. */
export const SMALL: PrintedCones = {
  sources: ["cones-ort-c1", "cones-ort-c2016", "cones-from-memory", "cones-artdict"],
  ratesCPerHour: [300],
  printedResolutionC: 1,
  cells: `
022   630/1166 2ab
021   643/1189 2ab
020   666/1231 2ab
019   723/1333 2ab
018   752/1386 2ab
017   784/1443 2ab
016   825/1517 2ab
015   843/1549 2ab
014   870/1598 2ab
013   880/1616 1a
012   900/1652 1a
011   915/1679 1a
010   919/1686 1a
09    955/1751 1a
08    983/1801 1a
07    1008/1846 mc
06    1023/1873 1d
05.5  1043/1909 mc
05    1062/1944 mc
04    1098/2008 1d
03    1131/2068 mc
02    1148/2098 mc
01    1178/2152 mc
1     1184/2163 mc
2     1190/2174 mc
3     1196/2185 mc
4     1209/2208 mc
5     1221/2230 mc
6     1255/2291 mc
7     1264/2307 mc
8     1300/2372 mc
9     1317/2403 mc
10    1330/2426 mc
11    1336/2437 mc
12    1355/2471 mc
`,
};

/** Large cones as calibrated in 1956, still reprinted in books; not the current chart. Some copies truncate the °F. */
export const LARGE_LEGACY: PrintedCones = {
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
  cells: `
022   585/1085 1a   600/1112 2def
021   602/1116 1a   614/1137 2def
020   625/1157 1a   635/1175 2def
019   668/1234 1a   683/1261 2def
018   696/1285 mb   717/1322 2def
017   727/1341 mb   747/1376 2def
016   764/1407 mb   792/1457 2def
015   790/1454 mb   804/1479 2def
014   834/1533 mb   838/1540 2def
013   869/1596 mb   852/1565 2def
012   866/1591 mb   884/1623 2def
011   886/1627 mb   894/1641 2def
010   887/1629 mb   900/1652 2de
09    915/1679 mb   923/1693 2def
08    945/1733 mb   955/1751 2def
07    973/1783 mb   984/1803 2def
06    991/1816 mb   999/1830 2def
05    1031/1888 mb  1046/1914 2def
04    1050/1922 mb  1060/1940 2def
03.5  –             1080/1976 2de
03    1086/1987 mb  1101/2014 2def
02    1101/2014 mb  1120/2048 2def
01    1117/2043 mb  1137/2079 2def
1     1136/2077 mb  1154/2109 2def
2     1142/2088 mb  1162/2124 2def
3     1152/2106 mb  1168/2134 2def
4     1168/2134 mb  1186/2167 2def
5     1177/2151 1c  1196/2185 2defc
6     1201/2194 1c  1222/2232 2defc
7     1215/2219 1c  1240/2264 2defc
8     1236/2257 1c  1263/2305 2defc
9     1260/2300 1c  1280/2336 2defc
10    1285/2345 1c  1305/2381 2defc
11    1294/2361 1c  1315/2399 2dec
12    1306/2383 mb  1326/2419 2de
13    1321/2410 mb  1346/2455 2de
14    1388/2530 mb  1366/2491 mb
15    1424/2595 mb  1431/2608 1g
`,
};

/** Cones as measured in 1926, the second vintage behind old book tables. The °F are conversions. */
export const FAIRCHILD_PETERS: PrintedCones = {
  sources: ["cones-from-memory", "cones-ginna", "cones-chappell"],
  ratesCPerHour: [20, 150],
  printedResolutionC: 1,
  cells: `
022  585/1085 ma   605/1121 ma
021  595/1103 ma   615/1139 ma
020  625/1157 ma   650/1202 ma
019  630/1166 ma   660/1220 ma
018  670/1238 ma   720/1328 ma
017  720/1328 ma   770/1418 ma
016  735/1355 ma   795/1463 ma
015  770/1418 ma   805/1481 ma
014  795/1463 ma   830/1526 ma
013  825/1517 ma   860/1580 ma
012  840/1544 ma   875/1607 ma
011  875/1607 ma   905/1661 ma
010  890/1634 ma   895/1643 ma
09   930/1706 ma   930/1706 ma
08   945/1733 ma   950/1742 ma
07   975/1787 ma   990/1814 ma
06   1005/1841 ma  1015/1859 ma
05   1030/1886 ma  1040/1904 ma
04   1050/1922 ma  1060/1940 ma
03   1080/1976 ma  1115/2039 ma
02   1095/2003 ma  1125/2057 ma
01   1110/2030 ma  1145/2093 ma
1    1125/2057 1b  1160/2120 ma
2    1135/2075 1b  1165/2129 ma
3    1145/2093 1b  1170/2138 ma
4    1165/2129 1b  1190/2174 ma
5    1180/2156 1b  1205/2201 1c
6    1190/2174 1b  1230/2246 1c
7    1210/2210 1b  1250/2282 1c
8    1225/2237 1b  1260/2300 1c
9    1250/2282 1b  1285/2345 1c
10   1260/2300 1b  1305/2381 1c
11   1285/2345 1b  1325/2417 1c
12   1310/2390 1b  1335/2435 ma
13   1350/2462 1b  1350/2462 ma
14   1390/2534 1b  1400/2552 ma
15   1410/2570 ma  1435/2615 ma
16   1450/2642 ma  1465/2669 ma
17   1465/2669 ma  1475/2687 ma
18   1485/2705 ma  1490/2714 ma
19   1515/2759 ma  1520/2768 ma
20   1520/2768 ma  1530/2786 ma
`,
};

/** Cones for refractories (pyrometric cone equivalent): table only, mostly from memory. */
export const PCE: PrintedCones = {
  sources: ["cones-from-memory", "cones-is-1528"],
  ratesCPerHour: [150, 600],
  printedResolutionC: 1,
  cells: `
12    1337/2439 ma  –
13    1349/2460 1b  –
14    1398/2548 ma  –
15    1430/2606 ma  –
16    1491/2716 ma  –
17    1512/2754 ma  –
18    1522/2772 ma  –
19    1541/2806 ma  –
20    1564/2847 ma  –
23    1605/2921 ma  –
26    1621/2950 ma  –
27    1640/2984 ma  –
28    1646/2995 ma  –
29    1659/3018 ma  –
30    1665/3029 ma  –
31    1683/3061 ma  –
31.5  1699/3090 ma  –
32    1717/3123 ma  –
32.5  1724/3135 ma  –
33    1743/3169 ma  –
34    1763/3205 ma  –
35    1785/3245 ma  –
36    1804/3279 ma  –
37    1820/3308 ma  –
38    –             1850/3362 ma
39    –             1865/3389 ma
40    –             1885/3425 ma
41    –             1970/3578 ma
42    –             2015/3659 ma
`,
};

/** Japanese Seger cones: nominal temperatures, printed without a rate. */
export const SEGER_JIS: PrintedCones = {
  sources: ["cones-igloss", "cones-jp-other"],
  ratesCPerHour: [null],
  printedResolutionC: 1,
  cells: `
022   600 2ab
021   650 1a
020   670 1a
019   690 1a
018   700 1a
017   730 1a
016   750 1a
015a  790 1a
014a  815 1a
013a  835 1a
012a  855 1a
011a  880 1a
010a  900 1a
09a   920 1a
08a   940 1a
07a   960 1a
06a   980 1a
05a   1000 1a
04a   1020 1a
03a   1040 1a
02a   1060 1a
01a   1080 1a
1a    1100 1a
2a    1120 1a
3a    1140 1a
4a    1160 1a
5a    1180 1a
6a    1200 1a
7     1230 2ab
8     1250 2ab
9     1280 2ab
10    1300 2ab
11    1320 1a
12    1350 1a
13    1380 1a
14    1410 1a
15    1435 2ab
16    1460 1a
17    1480 1a
18    1500 1a
19    1520 1a
20    1530 2ab
26    1580 2ab
27    1610 1a
28    1630 1a
29    1650 1a
30    1670 1a
31    1690 1a
32    1710 1a
33    1730 1a
34    1750 1a
35    1770 1a
36    1790 1a
37    1825 1a
38    1850 1a
39    1880 1a
40    1920 1a
41    1960 1a
42    2000 2ab
`,
};

/** A later European Seger scale: nominal temperatures, printed without a rate; not the American numbers. */
export const SEGER_EUROPEAN: PrintedCones = {
  sources: ["cones-arteraku"],
  ratesCPerHour: [null],
  printedResolutionC: 1,
  cells: `
021   640 1a
020   660 1a
019   685 1a
018   705 1a
017   730 1a
016   755 1a
015a  780 1a
014a  805 1a
013a  835 1a
012a  860 1a
011a  900 1a
010a  920 1a
09a   935 1a
08a   955 1a
07a   970 1a
06a   990 1a
05a   1000 1a
04a   1025 1a
03a   1055 1a
02a   1085 1a
01a   1105 1a
1a    1125 1a
2a    1150 1a
3a    1170 1a
4a    1195 1a
5a    1215 1a
6a    1240 1a
7     1260 1a
8     1280 1a
9     1300 1a
10    1320 1a
11    1340 1a
12    1360 1a
`,
};
