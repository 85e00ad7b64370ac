import type { DemoFiring } from "./DemoFiring.ts";
import { isoWithOutput, monthFirstFahrenheit, twoZones } from "./logShapes.ts";
import { OLD_HILDA, OLD_HILDA_SAYS } from "./oldHilda.ts";
import { BOTTOM_K, THIN_K } from "./probes.ts";
import { BISQUE_CONE_04, SLOW_COOL_CONE_5, SLOW_COOL_CONE_6 } from "./programmes.ts";

/** Firings of ordinary ware that went as planned. */
export const WARE_FIRINGS: readonly DemoFiring[] = [
  {
    name: "2026-02-07-a",
    shows: "bisque to cone 04, one zone with set point and output, ISO dates, every minute",
    start: "2026-02-07T08:30:00",
    plan: {
      ...OLD_HILDA,
      seed: 20_260_207,
      roomC: 14,
      legs: BISQUE_CONE_04,
      probes: [THIN_K],
      stopBelowC: 100,
      intervalSeconds: 60,
    },
    shape: isoWithOutput,
    moments: "clock",
    cones: ["05", "04", "03"],
    unloadedBelowC: 100,
    heard: [],
    noted: {
      title: "Bisque of the February tiles and mugs",
      schedule: "bisque-cone-04.yaml",
      kiln: OLD_HILDA_SAYS,
      thermocouple: { type: "K" },
      ware: [
        {
          name: "test tiles",
          clay: "Tarrow white",
          state: "bone dry",
          thickest: "6 mm",
          count: 48,
        },
        { name: "mugs", clay: "Mere buff", state: "bone dry", thickest: "7 mm", count: 22 },
      ],
      notes: "Ottoline Brack packed, Pell Amsden fired. An hour below boiling; nothing burst.",
    },
  },
  {
    name: "2026-03-28-a",
    shows:
      "cone 6, cooled slowly from 1050 to 850 °C for a matt glaze; in whole °F, month/day/year with AM and PM, every two minutes",
    start: "2026-03-28T06:40:00",
    plan: {
      ...OLD_HILDA,
      seed: 20_260_328,
      roomC: 19,
      legs: SLOW_COOL_CONE_6,
      probes: [THIN_K],
      stopBelowC: 95,
      intervalSeconds: 120,
    },
    shape: monthFirstFahrenheit,
    moments: "clock",
    cones: ["5", "6", "7"],
    unloadedBelowC: 95,
    heard: [],
    noted: {
      title: "Cone 6 matt glazes on mugs and bowls",
      schedule: "cone-6-slow-cool.yaml",
      kiln: OLD_HILDA_SAYS,
      thermocouple: { type: "K" },
      ware: [
        { name: "mugs", clay: "Mere buff", state: "glazed on bisque", thickest: "7 mm", count: 30 },
        {
          name: "bowls",
          clay: "Mere buff",
          state: "glazed on bisque",
          thickest: "1/4 in",
          widest: "7 in",
          count: 14,
        },
      ],
      notes: "Controller set to Fahrenheit for the day. No crazing seen after a week.",
    },
  },
  {
    name: "2026-04-25-b",
    shows:
      "cone 5 with two thermocouples, the bottom cooler and late, cooled slowly through both inversions; a title, a row of names and a row of units, every 10 s",
    start: "2026-04-25T16:00:00",
    plan: {
      ...OLD_HILDA,
      seed: 20_260_425,
      roomC: 20,
      legs: SLOW_COOL_CONE_5,
      probes: [THIN_K, BOTTOM_K],
      stopBelowC: 155,
      intervalSeconds: 10,
    },
    shape: twoZones,
    moments: "clock",
    cones: ["4", "5", "6"],
    unloadedBelowC: 155,
    heard: [],
    noted: {
      title: "Vases and bottles, both thermocouples logged",
      schedule: "cone-5-slow-cool.yaml",
      kiln: OLD_HILDA_SAYS,
      thermocouple: { type: "K" },
      ware: [
        {
          name: "vases",
          clay: "Sallow porcelain",
          state: "glazed on bisque",
          thickest: "8 mm",
          widest: "140 mm",
          count: 9,
        },
      ],
      notes: "Witness cones on the top shelf only. Celadon on the bottom shelf a touch milky.",
    },
  },
];
