import { CONES_SOURCES } from "./cones.ts";
import { COOLING_SOURCES } from "./cooling.ts";
import { FIRING_SOURCES } from "./firing.ts";
import { GLAZE_SOURCES } from "./glaze.ts";
import { GLAZE_STRESS_SOURCES } from "./glazeStress.ts";
import { KILN_SOURCES } from "./kiln.ts";
import { LOGS_SOURCES } from "./logs.ts";
import { PHOTO_SOURCES } from "./photo.ts";
import { PINGS_SOURCES } from "./pings.ts";
import { SCHEDULES_SOURCES } from "./schedules.ts";
import { THERMOCOUPLES_SOURCES } from "./thermocouples.ts";
import { TRIALS_SOURCES } from "./trials.ts";

/** The sources of all rooms under one roof; no id stands in two rooms. */
export const SOURCES = {
  ...CONES_SOURCES,
  ...COOLING_SOURCES,
  ...FIRING_SOURCES,
  ...GLAZE_SOURCES,
  ...GLAZE_STRESS_SOURCES,
  ...KILN_SOURCES,
  ...LOGS_SOURCES,
  ...PHOTO_SOURCES,
  ...PINGS_SOURCES,
  ...SCHEDULES_SOURCES,
  ...TRIALS_SOURCES,
  ...THERMOCOUPLES_SOURCES,
} as const;

/** Key of a source of any room. */
export type SourceId = keyof typeof SOURCES;
