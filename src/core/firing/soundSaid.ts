import { parseMoment } from "./moment.ts";

/** Something heard, as a person says it in one breath: `a crack 14:05`. */
export interface SoundSaid {
  readonly what: string;
  /** A moment as `parseMoment` reads it. */
  readonly at: string;
  /** What was assumed; absent when nothing was. */
  readonly note?: string;
}

/** What is taken for heard where only a time is said. */
const ASSUMED = { what: "pinging", note: "no words came with the time, so pinging is assumed" };

/** Small words and marks between the words and the time, which say nothing of the sound. */
const IDLE_AT_END = /(?:^|\s)(?:at|about|around|from)$|[\s,;:–-]+$/i;
const IDLE_AT_START = /^[\s,;:–-]+/;

const MARKS_AT_END = /[,;:–-]+$/;

/** What looks like one more time or date among the words. */
const MORE_TIME = /\d:\d|\d{4}-\d/;

/**
 * What was heard and when, from one line: words, then a moment, or the moment first.
 * A moment alone is taken for pinging, and the note says so.
 *
 * @returns null when no moment stands at the end or at the start, and when the words hold another.
 */
export function soundSaid(line: string): SoundSaid | null {
  const words = line.trim().split(/\s+/);
  for (let from = 0; from < words.length; from++) {
    const at = words.slice(from).join(" ");
    if (parseMoment(at) !== null) return sound(words.slice(0, from), at);
  }
  for (let to = words.length - 1; to > 0; to--) {
    const at = words.slice(0, to).join(" ").replace(MARKS_AT_END, "");
    if (parseMoment(at) !== null) return sound(words.slice(to), at);
  }
  return null;
}

function sound(words: readonly string[], at: string): SoundSaid | null {
  let what = words.join(" ").replace(IDLE_AT_START, "");
  while (IDLE_AT_END.test(what)) what = what.replace(IDLE_AT_END, "");
  if (MORE_TIME.test(what)) return null;
  return what === "" ? { ...ASSUMED, at } : { what, at };
}
