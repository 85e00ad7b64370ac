import { CONES_SOURCES } from "./cones.ts";
import { COOLING_SOURCES } from "./cooling.ts";
import { FIRING_SOURCES } from "./firing.ts";
import { KILN_SOURCES } from "./kiln.ts";
import { LOGS_SOURCES } from "./logs.ts";
import { SCHEDULES_SOURCES } from "./schedules.ts";

/** The sources of all rooms under one roof; no id stands in two rooms. */
export const SOURCES = {
  ...CONES_SOURCES,
  ...COOLING_SOURCES,
  ...FIRING_SOURCES,
  ...KILN_SOURCES,
  ...LOGS_SOURCES,
  ...SCHEDULES_SOURCES,
} as const;

/** Key of a source of any room. */
export type SourceId = keyof typeof SOURCES;
