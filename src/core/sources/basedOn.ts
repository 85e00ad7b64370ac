import { SOURCES, type SourceId } from "./bibliography.ts";
import type { Source } from "./source.ts";

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
