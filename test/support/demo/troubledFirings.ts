import { demoTrials } from "./crackleTiles.ts";
import type { DemoFiring } from "./DemoFiring.ts";
import { dateAndTimeApart, isoWithOutput, troubled } from "./logShapes.ts";
import { OLD_HILDA, OLD_HILDA_SAYS } from "./oldHilda.ts";
import { THIN_K, TIRED_K } from "./probes.ts";
import { CRACKLE_CLIMB, GLAZE_CONE_5, SLOW_COOL_CONE_5 } from "./programmes.ts";

/** Firings in which the logger, the kiln or the potter went wrong. */
export const TROUBLED_FIRINGS: readonly DemoFiring[] = [
  {
    name: "2026-05-09-a",
    shows:
      "cone 5 by a logger in trouble: 40 minutes missing, spikes, open circuit (OL) and blanks (---), every minute",
    start: "2026-05-09T07:20:00",
    plan: {
      ...OLD_HILDA,
      seed: 20_260_509,
      roomC: 21,
      legs: GLAZE_CONE_5,
      probes: [THIN_K],
      stopBelowC: 125,
      intervalSeconds: 60,
    },
    shape: troubled({
      silent: [[262, 302]],
      cells: new Map([
        [131, "OL"],
        [132, "OL"],
        [133, "OL"],
        [205, "1372.0"],
        [388, "---"],
        [419, "---"],
        [611, "12.4"],
        [742, "1203.9"],
        [903, "OL"],
      ]),
    }),
    moments: "clock",
    cones: ["4", "5", "6"],
    unloadedBelowC: 125,
    heard: [],
    noted: {
      title: "Jugs and lids, with a loose plug on the logger",
      schedule: "cone-5-glaze.yaml",
      kiln: OLD_HILDA_SAYS,
      thermocouple: { type: "K" },
      ware: [
        { name: "jugs", clay: "Mere buff", state: "glazed on bisque", thickest: "8 mm", count: 11 },
      ],
      notes: "Pell Amsden tripped over the lead before noon and found it at twenty past twelve.",
    },
  },
  {
    name: "2026-05-23-b",
    shows:
      "cone 5, lid propped at 700 °C and opened at 280 °C: far too fast through both inversions, platters cracked through; separate date and time, every 30 s",
    start: "2026-05-23T18:00:00",
    plan: {
      ...OLD_HILDA,
      seed: 20_260_523,
      roomC: 22,
      legs: CRACKLE_CLIMB,
      probes: [THIN_K],
      opened: [
        { belowC: 700, opening: { wattPerK: 9, m2: 0.012 } },
        { belowC: 280, opening: { wattPerK: 45, m2: 0.25 } },
      ],
      stopBelowC: 120,
      intervalSeconds: 30,
    },
    shape: dateAndTimeApart,
    moments: "clock",
    cones: ["4", "5", "6"],
    unloadedBelowC: 280,
    heard: [
      {
        what: "a crack",
        belowC: 560,
        note: "one dull knock, not quite two hours before the lid came off",
      },
      { what: "a crack", belowC: 215, note: "a platter split from rim to foot on the shelf" },
      { what: "pinging", belowC: 180, note: "everywhere at once" },
    ],
    noted: {
      title: "Cooled in a hurry for the market",
      schedule: "cone-5-crackle-tiles.yaml",
      kiln: OLD_HILDA_SAYS,
      thermocouple: { type: "K" },
      ware: [
        {
          name: "platters",
          clay: "Tarrow white",
          body: "stoneware cone 6",
          state: "glazed on bisque",
          thickest: "12 mm",
          widest: "380 mm",
          count: 3,
        },
        {
          name: "crackle tiles",
          clay: "Tarrow white",
          body: "stoneware cone 6",
          state: "glazed on bisque",
          thickest: "6 mm",
          widest: "100 mm",
          count: 4,
        },
      ],
      trials: demoTrials("D").map((trial) =>
        trial.piece === "D4"
          ? {
              ...trial,
              cracked: "through",
              note: "tile in two halves; edges of the break sharp, glaze not run over them",
            }
          : trial,
      ),
      found: [
        {
          piece: "platter on the lower shelf",
          what: "through-crack",
          edges: "sharp",
          where: "base",
          pattern: "one long line",
          when: "at unloading",
          note: "already in two when the lid came off",
        },
        {
          piece: "platter on the upper shelf",
          what: "through-crack",
          edges: "sharp",
          where: "rim",
          pattern: "one long line",
          when: "before unloading",
        },
        { piece: "D4", what: "through-crack", edges: "sharp", when: "at unloading" },
      ],
      notes:
        "Programme stopped after the top. Ottoline Brack propped the lid at 700 and took it off at 280. Two of three platters cracked through, rim to foot. Not to be repeated: do not open above 100.",
    },
  },
  {
    name: "2026-06-06-a",
    shows:
      "cone 5 wanted, worn elements: the kiln falls behind its set point, stalls and is switched off short; every two minutes",
    start: "2026-06-06T06:15:00",
    plan: {
      ...OLD_HILDA,
      seed: 20_260_606,
      elements: 0.625,
      roomC: 24,
      legs: SLOW_COOL_CONE_5,
      probes: [TIRED_K],
      stopBelowC: 110,
      intervalSeconds: 120,
      switchedOffAfterHours: 15,
    },
    shape: isoWithOutput,
    moments: "clock",
    cones: ["3", "4", "5"],
    unloadedBelowC: 110,
    heard: [],
    noted: {
      title: "Tired elements",
      schedule: "cone-5-slow-cool.yaml",
      kiln: OLD_HILDA_SAYS,
      thermocouple: { type: "K" },
      ware: [
        { name: "mugs", clay: "Mere buff", state: "glazed on bisque", thickest: "7 mm", count: 26 },
      ],
      notes:
        "Switched off by hand at fifteen hours. Glaze stiff on the lower shelf; new elements ordered.",
    },
  },
];
