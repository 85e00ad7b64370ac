import type { Leg } from "./controller.ts";

// The programmes of the studio: shipped schedules with the top that its witness cones asked for.

/** After schedules/bisque-cone-04.yaml. */
export const BISQUE_CONE_04: readonly Leg[] = [
  { toC: 130, rateCPerHour: 75 },
  { toC: 650, rateCPerHour: 100 },
  { toC: 950, rateCPerHour: 80 },
  { toC: 1056, rateCPerHour: 60, holdMinutes: 15 },
];

/** After schedules/cone-5-glaze.yaml, in °C. */
export const GLAZE_CONE_5: readonly Leg[] = [
  { toC: 110, rateCPerHour: 66.7, holdMinutes: 20 },
  { toC: 1071.1, rateCPerHour: 150 },
  { toC: 1175.6, rateCPerHour: 60, holdMinutes: 15 },
];

/** After schedules/cone-5-crackle-tiles.yaml, up to the top. */
export const CRACKLE_CLIMB: readonly Leg[] = [
  { toC: 110, rateCPerHour: 60, holdMinutes: 30 },
  { toC: 1080, rateCPerHour: 150 },
  { toC: 1171, rateCPerHour: 60, holdMinutes: 20 },
];

/** After schedules/cone-5-crackle-tiles.yaml, the whole of it. */
export const CRACKLE_TILES: readonly Leg[] = [
  ...CRACKLE_CLIMB,
  { toC: 640, rateCPerHour: "free" },
  { toC: 500, rateCPerHour: 40 },
  { toC: 300, rateCPerHour: "free" },
  { toC: 160, rateCPerHour: 25 },
];

/** After schedules/cone-5-slow-cool.yaml. */
export const SLOW_COOL_CONE_5: readonly Leg[] = [
  { toC: 110, rateCPerHour: 60, holdMinutes: 20 },
  { toC: 1075, rateCPerHour: 150 },
  { toC: 1176, rateCPerHour: 60, holdMinutes: 10 },
  { toC: 640, rateCPerHour: "free" },
  { toC: 500, rateCPerHour: 40 },
  { toC: 300, rateCPerHour: "free" },
  { toC: 160, rateCPerHour: 25 },
];

/** After schedules/cone-6-slow-cool.yaml. */
export const SLOW_COOL_CONE_6: readonly Leg[] = [
  { toC: 110, rateCPerHour: 60, holdMinutes: 20 },
  { toC: 1105, rateCPerHour: 150 },
  { toC: 1207, rateCPerHour: 60, holdMinutes: 15 },
  { toC: 1050, rateCPerHour: "free" },
  { toC: 850, rateCPerHour: 60 },
];

/** Jorun's own for the Wren, in no file. */
export const QUICK_TILES: readonly Leg[] = [
  { toC: 1108, rateCPerHour: 200 },
  { toC: 1218, rateCPerHour: 60, holdMinutes: 8 },
];
