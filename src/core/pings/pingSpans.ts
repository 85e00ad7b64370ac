import type { PingSpan } from "./PingReview.ts";

const MINUTE = 60;
const HOUR = 3600;
const EDGES = [0, 10 * MINUTE, HOUR, 4 * HOUR, 24 * HOUR];

/** Pings in the first 10 minutes, to 1 hour, to 4, to 24 and day by day after, as far as the recording goes. */
export function pingSpans(times: readonly number[], seconds: number): readonly PingSpan[] {
  const edges = [...EDGES];
  while ((edges.at(-1) as number) < seconds) edges.push((edges.at(-1) as number) + 24 * HOUR);
  return edges.slice(1).flatMap((edge, i) => {
    const fromSeconds = edges[i] as number;
    const toSeconds = Math.min(edge, seconds);
    if (toSeconds <= fromSeconds) return [];
    const count = times.filter((time) => time >= fromSeconds && time < edge).length;
    return [
      {
        fromSeconds,
        toSeconds,
        count,
        share: times.length === 0 ? 0 : count / times.length,
        perHour: (count * HOUR) / (toSeconds - fromSeconds),
      },
    ];
  });
}
