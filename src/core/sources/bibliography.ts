import { CONES_SOURCES, THERMOCOUPLES_SOURCES } from "./cones.ts";
import { PHOTO_SOURCES, PINGS_SOURCES, TRIALS_SOURCES } from "./crackle.ts";
import { FIRING_SOURCES, KILN_SOURCES, LOGS_SOURCES, SCHEDULES_SOURCES } from "./firing.ts";
import { GLAZE_SOURCES, GLAZE_STRESS_SOURCES } from "./glaze.ts";
import { COOLING_SOURCES } from "./ware.ts";

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

/** What a reader must know before leaning on a source; the other ways of seeing one go unsaid. */
const WEAK: readonly Source["seen"][] = [
  "at second hand",
  "from memory",
  "common practice",
  "own computation",
];

/** A source in a few words: author or publisher, year, and how weakly it was seen if it was. */
export function cited(id: SourceId): string {
  const { author, publisher, year, seen }: Source = SOURCES[id];
  return [
    author ?? publisher,
    ...(year === null ? [] : [year]),
    ...(WEAK.includes(seen) ? [seen] : []),
  ].join(", ");
}

/** A statement of what is published or practised, with who says so in brackets behind it. */
export function basedOn(
  rule: string,
  ...ids: readonly [first: SourceId, ...others: SourceId[]]
): string {
  return `${rule} (${ids.map(cited).join("; ")})`;
}

/** Where a number in this program comes from. */
export interface Source {
  readonly title: string;
  /** Who wrote it, where that is better known than who published it; what a citation then names. */
  readonly author?: string;
  readonly publisher: string;
  readonly year: number | null;
  /** Place inside it: table, page, section. */
  readonly locator: string;
  /**
   * How it was seen. `at second hand` was read where somebody else quotes it; `from memory` marks
   * what could not be re-read and is the first to replace; `own computation` was worked out by us.
   */
  readonly seen:
    | "read"
    | "abstract only"
    | "copy"
    | "at second hand"
    | "from memory"
    | "common practice"
    | "own computation";
}
