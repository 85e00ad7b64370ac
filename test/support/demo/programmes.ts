import type { Leg } from "./controller.ts";

/** As in schedules/bisque-cone-04.yaml. */
export const BISQUE_CONE_04: readonly Leg[] = [
  { toC: 100, rateCPerHour: 60, holdMinutes: 30 },
  { toC: 590, rateCPerHour: 110 },
  { toC: 925, rateCPerHour: 85 },
  { toC: 1053, rateCPerHour: 60, holdMinutes: 15 },
];

/** As in schedules/cone-5-glaze.yaml, in °C. */
export const GLAZE_CONE_5: readonly Leg[] = [
  { toC: 104.4, rateCPerHour: 55.6 },
  { toC: 1093.3, rateCPerHour: 194.4 },
  { toC: 1175.6, rateCPerHour: 83.3, holdMinutes: 15 },
];

/** As in schedules/cone-5-crackle-tiles.yaml, up to the top. */
export const CRACKLE_CLIMB: readonly Leg[] = [
  { toC: 110, rateCPerHour: 60, holdMinutes: 30 },
  { toC: 1080, rateCPerHour: 150 },
  { toC: 1171, rateCPerHour: 60, holdMinutes: 20 },
];

/** As in schedules/cone-5-crackle-tiles.yaml, the whole of it. */
export const CRACKLE_TILES: readonly Leg[] = [
  ...CRACKLE_CLIMB,
  { toC: 640, rateCPerHour: "free" },
  { toC: 500, rateCPerHour: 40 },
  { toC: 300, rateCPerHour: "free" },
  { toC: 160, rateCPerHour: 25 },
];

/** As in schedules/cone-5-slow-cool.yaml. */
export const SLOW_COOL_CONE_5: readonly Leg[] = [
  { toC: 110, rateCPerHour: 60, holdMinutes: 20 },
  { toC: 1080, rateCPerHour: 150 },
  { toC: 1176, rateCPerHour: 60, holdMinutes: 10 },
  { toC: 640, rateCPerHour: "free" },
  { toC: 500, rateCPerHour: 45 },
  { toC: 300, rateCPerHour: "free" },
  { toC: 160, rateCPerHour: 30 },
];

/** As in schedules/cone-6-slow-cool.yaml. */
export const SLOW_COOL_CONE_6: readonly Leg[] = [
  { toC: 105, rateCPerHour: 55 },
  { toC: 1090, rateCPerHour: 180 },
  { toC: 1210, rateCPerHour: 80, holdMinutes: 15 },
  { toC: 1040, rateCPerHour: "free" },
  { toC: 760, rateCPerHour: 70 },
];

/** Jorun's own for the Wren, in no file. */
export const QUICK_TILES: readonly Leg[] = [
  { toC: 1085, rateCPerHour: 200 },
  { toC: 1185, rateCPerHour: 60, holdMinutes: 8 },
];
