import type { Source } from "./source.ts";

/** Sources of the cones room. */
export const CONES_SOURCES = {} as const satisfies Record<string, Source>;
