import type { Problem } from "../problem.ts";
import type { Listening } from "./listener.ts";

/** Shorter recordings have no quiet level to measure against [s]. */
const SHORTEST_SECONDS = 10;

/** Nothing above this is silence [dBFS]: three steps of 16 bits. */
const SILENT_DBFS = -80;

/**
 * With more of all samples at full scale even the quiet between clicks is cut off, and nothing can
 * be measured against it. Clicks alone never come near: a hundred of them in a minute, each cut off
 * for 2 ms, are 0.3 %.
 */
const OVERDRIVEN_SHARE = 0.05;

/** What makes a recording useless for pings; empty when nothing does. */
export function soundProblems(heard: Listening, where: string): readonly Problem[] {
  if (heard.seconds < SHORTEST_SECONDS)
    return [
      {
        code: "sound/too-short",
        where,
        what: `it lasts ${heard.seconds.toFixed(1)} s`,
        expected: `at least ${SHORTEST_SECONDS} s, better hours: the quiet level is taken over ${heard.settings.floorSeconds} s`,
        fix: "record for longer",
      },
    ];
  if (heard.peakDbfs === null || heard.peakDbfs < SILENT_DBFS)
    return [
      {
        code: "sound/silent",
        where,
        what:
          heard.peakDbfs === null
            ? "it is silent throughout"
            : `its loudest sound above the hum is at ${heard.peakDbfs.toFixed(0)} dB of full scale`,
        expected: `some sound above ${SILENT_DBFS} dB of full scale`,
        fix: "check microphone and level; with two channels, try --channel right",
      },
    ];
  if (heard.fullScaleShare > OVERDRIVEN_SHARE)
    return [
      {
        code: "sound/overdriven",
        where,
        what: `${Math.round(heard.fullScaleShare * 100)} % of its samples are at full scale`,
        expected: `at most ${OVERDRIVEN_SHARE * 100} %; above, even the quiet between clicks is cut off`,
        fix: "record anew at a lower level",
      },
    ];
  return [];
}
