import type { Listening } from "../../../src/core/pings/listener.ts";
import { USUAL_SETTINGS } from "../../../src/core/pings/Ping.ts";
import { type PingReview, reviewPings } from "../../../src/core/pings/PingReview.ts";
import type { LogBeside } from "../../../src/core/pings/pingTemperatures.ts";
import { corners } from "../curves.ts";

/** A recording heard with pings at these times [s], each of one loudness and tone unless given. */
export function listeningTo(
  times: readonly number[],
  seconds: number,
  given: Partial<Listening> & { readonly pitchHz?: (i: number) => number } = {},
): Listening {
  const { pitchHz = () => 4000, ...rest } = given;
  return {
    pings: times.map((atSeconds, i) => ({
      atSeconds,
      overFloorDb: 24,
      levelDbfs: -20,
      pitchHz: pitchHz(i),
      decayMs: i % 2 === 0 ? 15 : null,
      isClipped: false,
    })),
    others: { slow: 3, lasting: 1, thuds: 2, amongNoise: 0 },
    seconds,
    sampleRateHz: 44_100,
    settings: USUAL_SETTINGS,
    bands: [
      { lowHz: 700, highHz: 1400, floorDbfs: -60, thresholdDb: 9 },
      { lowHz: 1400, highHz: 2800, floorDbfs: -63, thresholdDb: 10.5 },
    ],
    noisySeconds: 0,
    fullScaleShare: 0,
    zeroShare: 0.001,
    peakDbfs: -12,
    ...rest,
  };
}

/** A kiln that falls from 700 °C to 100 °C in six hours and stays there for six more. */
export function fallingLog(
  startedSeconds: number,
  unloaded: LogBeside["unloaded"] = null,
): LogBeside {
  return {
    logName: "fall.csv",
    channel: "kiln",
    curve: corners([0, 700], [6, 100], [12, 100]),
    startedSeconds,
    unloaded,
  };
}

/** A reviewed recording: pings at these times, with a log beside it or without. */
export function pingReviewOf(heard: Listening, log: LogBeside | null = null): PingReview {
  return reviewPings({
    sound: { name: "shelf.wav", format: "16-bit whole numbers, one channel", notes: [] },
    heard,
    started: {
      secondsOfDay: log === null ? 75_900 : null,
      elapsedSeconds: log?.startedSeconds ?? null,
    },
    log,
  });
}
