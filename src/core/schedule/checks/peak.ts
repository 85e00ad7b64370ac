import type { Finding } from "../../findings/Finding.ts";
import { basedOn } from "../../sources/basedOn.ts";
import { finding, type Judged } from "./Judged.ts";

/** Published top holds are up to an hour; runs appear beyond it [s]. */
export const LONG_HOLD_SECONDS = 3600;

/** What adding up times may leave over [s]. */
const ROUNDING_SECONDS = 0.5;

/** The hold at the peak. */
export function checkPeakHold(judged: Judged): readonly Finding[] {
  const holds = judged.expansion.timeline.filter(
    (row) => row.kind === "hold" && row.toC >= judged.peakC - 5,
  );
  const seconds = holds.reduce((sum, row) => sum + row.endSeconds - row.startSeconds, 0);
  const first = holds[0];
  const last = holds.at(-1);
  if (!(first && last)) return [];
  const long = seconds > LONG_HOLD_SECONDS + ROUNDING_SECONDS;
  return [
    finding({
      topic: "hold at the peak",
      severity: long ? "caution" : "note",
      statement: long
        ? "The peak is held for {hold}; glazes run and cones go on bending."
        : "The peak is held for {hold}, inside what is published.",
      evidence: [{ name: "hold", value: seconds, kind: "duration" }],
      basis: basedOn("15 to 20 min is enough for gloss, runs appear beyond 1 h", "soak-length"),
      advice: long ? "Go a little hotter and hold for less." : "",
      span: { fromSeconds: first.startSeconds, toSeconds: last.endSeconds },
    }),
  ];
}
