import type { PingReview, RecordingStart } from "../pings/PingReview.ts";
import { printDuration, printElapsed } from "../text/quantities.ts";
import { clockText } from "./moments.ts";

/** Lines of YAML for the firing record: when pinging began, and how many there were. */
export function pingRecordLines(review: PingReview): readonly string[] {
  const { pings, spans, heard, started, burst } = review;
  const [first] = pings;
  if (!first) return [];
  const early = spans[0];
  const out = review.temperatures?.unloading ?? null;
  const counts = [
    `${pings.length} pings in ${printDuration(heard.seconds)} of recording (a lower bound)`,
    ...(spans.length > 1 && early ? [`${early.count} of them in the first 10 min`] : []),
    ...(out === null || out.count === 0 || out.atSeconds <= 0
      ? []
      : [`${out.count} of them after unloading`]),
    ...(review.law === null
      ? []
      : [
          `exponent ${review.law.p.toFixed(2)} (${review.law.pLow.toFixed(2)} to ${review.law.pHigh.toFixed(2)})`,
        ]),
  ];
  return [
    "heard:",
    "  - what: pinging",
    `    at: ${atText(started, first.atSeconds)}`,
    "    note: >-",
    ...counts.map((text, i) => `      ${text}${i < counts.length - 1 ? ";" : ""}`),
    ...(burst === null
      ? []
      : [
          "  - what: pinging, a second burst",
          `    at: ${atText(started, burst.fromSeconds)}`,
          "    note: >-",
          `      ${burst.count} pings in ${printDuration(burst.toSeconds - burst.fromSeconds)}, about ${Math.round(burst.expected)} expected`,
        ]),
  ];
}

/** A moment as the record writes it; without a start, a place to fill in. */
function atText({ secondsOfDay, elapsedSeconds }: RecordingStart, atSeconds: number): string {
  if (elapsedSeconds !== null) {
    const at = elapsedSeconds + atSeconds;
    // The record has no form for a moment before the log begins.
    if (at >= 0) return `"+${printElapsed(at)}"`;
  }
  const clock = clockText(secondsOfDay, atSeconds);
  return clock === null
    ? `"00:00"   # put in when the recording began, plus ${printElapsed(atSeconds)}`
    : `"${clock.slice(0, 5)}"`;
}
