import type { Source } from "./source.ts";

/** Sources of the logs room. */
export const LOGS_SOURCES = {} as const satisfies Record<string, Source>;
