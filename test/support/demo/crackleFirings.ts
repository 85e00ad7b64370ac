import { demoTrials } from "./crackleTiles.ts";
import type { DemoFiring } from "./DemoFiring.ts";
import { TEST_KILN_60 } from "./kiln.ts";
import { elapsedTabs, isoPlain, semicolonDecimalComma } from "./logShapes.ts";
import { OLD_HILDA, OLD_HILDA_SAYS } from "./oldHilda.ts";
import { THIN_K, TUBED_S } from "./probes.ts";
import { CRACKLE_TILES, GLAZE_CONE_5, QUICK_TILES } from "./programmes.ts";

/** Firings of crackle tiles that gave crackle and nothing worse. */
export const CRACKLE_FIRINGS: readonly DemoFiring[] = [
  {
    name: "2026-02-21-b",
    shows:
      "cone 5, cooled with the lid shut and the power off: faster through quartz than the textbook allows, without harm; semicolons, decimal commas, dd.mm.yyyy, German headings, every 30 s",
    start: "2026-02-21T06:00:00",
    plan: {
      ...OLD_HILDA,
      seed: 20_260_221,
      roomC: 16,
      legs: GLAZE_CONE_5,
      probes: [TUBED_S],
      stopBelowC: 98,
      intervalSeconds: 30,
    },
    shape: semicolonDecimalComma,
    moments: "clock",
    cones: ["4", "5", "6"],
    unloadedBelowC: 98,
    heard: [
      { what: "pinging", belowC: 140, note: "faint, through the lid" },
      { what: "pinging", minutesAfterUnloading: 25, note: "steady, from the thick coats" },
    ],
    noted: {
      title: "Crackle tiles, first set, natural cooling",
      schedule: "cone-5-glaze.yaml",
      kiln: OLD_HILDA_SAYS,
      thermocouple: { type: "S" },
      ware: [
        {
          name: "crackle tiles",
          clay: "Tarrow white",
          state: "glazed on bisque",
          thickest: "6 mm",
          widest: "100 mm",
          count: 12,
        },
      ],
      trials: demoTrials("A"),
      notes:
        "Logger lent by a visitor, hence its headings. Spacing counted on a 50 mm line after an hour in strong tea.",
    },
  },
  {
    name: "2026-03-14-b",
    shows:
      "cone 5, cooled slowly on purpose through both inversions: crackle as wanted and nothing through the wall; ISO times with a T, time and temperature only, every minute",
    start: "2026-03-14T22:40:00",
    plan: {
      ...OLD_HILDA,
      seed: 20_260_314,
      roomC: 17,
      legs: CRACKLE_TILES,
      probes: [THIN_K],
      stopBelowC: 75,
      intervalSeconds: 60,
    },
    shape: isoPlain,
    moments: "clock",
    cones: ["4", "5", "6"],
    unloadedBelowC: 75,
    heard: [
      { what: "pinging", belowC: 92, note: "first one, lid still shut" },
      { what: "pinging", minutesAfterUnloading: 15, note: "a few a minute, all from the tiles" },
    ],
    noted: {
      title: "Crackle tiles and two platters, slow through both inversions",
      schedule: "cone-5-crackle-tiles.yaml",
      kiln: OLD_HILDA_SAYS,
      thermocouple: { type: "K" },
      ware: [
        {
          name: "crackle tiles",
          clay: "Tarrow white",
          body: "stoneware cone 6",
          state: "glazed on bisque",
          thickest: "6 mm",
          widest: "100 mm",
          count: 12,
        },
        {
          name: "platters",
          clay: "Tarrow white",
          body: "stoneware cone 6",
          state: "glazed on bisque",
          thickest: "11 mm",
          widest: "360 mm",
          count: 2,
        },
      ],
      trials: demoTrials("B"),
      found: [
        { piece: "crackle tiles", what: "crackle", pattern: "network", when: "at unloading" },
        { piece: "platters", rings: "clear", when: "at unloading" },
      ],
      notes:
        "Both platters rang clear when tapped. Jorun Tesk sat with it through the peak, Sunday morning.",
    },
  },
  {
    name: "2026-04-11-a",
    shows:
      "cone 6 in a small test kiln that cools fast; elapsed hours below five lines of preamble, tabs, every 30 s",
    start: "2026-04-11T10:40:00",
    plan: {
      ...OLD_HILDA,
      build: TEST_KILN_60,
      seed: 20_260_411,
      roomC: 18,
      legs: QUICK_TILES,
      probes: [THIN_K],
      stopBelowC: 80,
      intervalSeconds: 30,
    },
    shape: elapsedTabs,
    moments: "elapsed",
    cones: ["5", "6", "7"],
    unloadedBelowC: 80,
    heard: [{ what: "pinging", belowC: 150, note: "quick, like rain" }],
    noted: {
      title: "Pond ice in four coats, a cone hotter, the Wren",
      cone: "6",
      kiln: "the Wren, 60 litre test kiln, 4.4 kW",
      thermocouple: { type: "K" },
      ware: [
        {
          name: "test tiles",
          clay: "Tarrow white",
          state: "glazed on bisque",
          thickest: "6 mm",
          widest: "60 mm",
          count: 8,
        },
      ],
      trials: demoTrials("C"),
      notes: "Eight small tiles on one shelf. All sound, half of them Tarrow dusk.",
    },
  },
];
