import type { Source } from "./source.ts";

/** Sources of the cooling room. */
export const COOLING_SOURCES = {} as const satisfies Record<string, Source>;
