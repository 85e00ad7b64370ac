import type { Source } from "./source.ts";

/** Sources of the schedules room. */
export const SCHEDULES_SOURCES = {} as const satisfies Record<string, Source>;
