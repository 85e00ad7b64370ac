import type { PingReview } from "../pings/PingReview.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { ChartSpec } from "./chartSpec.ts";
import { pingsCountChart } from "./pingsCountChart.ts";
import { pingsLoudnessChart } from "./pingsLoudnessChart.ts";
import { pingsTemperatureChart } from "./pingsTemperatureChart.ts";

/** The charts of a recording, in the order in which they are shown; the last one needs a log. */
export function pingsCharts(
  review: PingReview,
  unit: TemperatureUnit,
): Readonly<Record<string, (dark: boolean) => ChartSpec>> {
  const { pings, heard, kinds, law, temperatures, sound } = review;
  const { seconds } = heard;
  const unloadedSeconds = temperatures?.unloading?.atSeconds ?? null;
  return {
    loudness: (dark) =>
      pingsLoudnessChart({
        title: `Pings in ${sound.name}`,
        pings,
        kinds: kinds.kinds.map(({ members }) => members),
        seconds,
        unloadedSeconds,
        dark,
      }),
    count: (dark) =>
      pingsCountChart({
        title: "How they add up",
        times: pings.map(({ atSeconds }) => atSeconds),
        seconds,
        law,
        unloadedSeconds,
        dark,
      }),
    ...(temperatures === null || temperatures.steps.length === 0
      ? {}
      : {
          temperature: (dark: boolean) =>
            pingsTemperatureChart({ title: "At which temperature", temperatures, unit, dark }),
        }),
  };
}
