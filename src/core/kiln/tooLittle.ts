import { peakOf } from "../curve/Curve.ts";
import type { Problem } from "../problem.ts";
import type { KilnFiring, OutputSeries } from "./LearnedKiln.ts";

/** A log shorter than this cannot show a kiln [s]. */
const SHORTEST_SECONDS = 2 * 3600;
/** Cooler than this a kiln hardly radiates, and nothing above can be said [°C]. */
const LOWEST_PEAK_C = 500;
/** The climb has to begin this far below the peak [K]. */
const LEAST_CLIMB_K = 200;

/** What the logs lack before anything is worked out: each log's own problems, and whether they are of one kiln. */
export function tooLittle(firings: readonly KilnFiring[]): readonly Problem[] {
  if (firings.length === 0)
    return [
      {
        code: "kiln/no-firing",
        where: "the command",
        what: "there is no firing to learn from",
        expected: "one log or more of one kiln",
        fix: "name a log",
      },
    ];
  const kilns = [...new Set(firings.flatMap(({ kiln }) => (kiln ? [kiln] : [])))];
  const mixed: readonly Problem[] =
    kilns.length < 2
      ? []
      : [
          {
            code: "kiln/several-kilns",
            where: firings.map(({ name }) => name).join(", "),
            what: `the records name ${kilns.length} kilns: ${kilns.join("; ")}`,
            expected: "logs of one kiln, named alike in every record",
            fix: "give the logs of one kiln at a time",
          },
        ];
  return [...mixed, ...firings.flatMap(problemsOf)];
}

function problemsOf({ name, curve }: KilnFiring): readonly Problem[] {
  const peak = peakOf(curve);
  const first = curve.timesSeconds[0]!;
  const seconds = curve.timesSeconds.at(-1)! - first;
  if (seconds < SHORTEST_SECONDS)
    return [
      {
        code: "kiln/too-short",
        where: name,
        what: `the log lasts ${Math.round(seconds / 60)} min`,
        expected: "two hours or more, best from cold to cold",
        fix: "leave this log out, or log a whole firing",
      },
    ];
  if (peak.tempC < LOWEST_PEAK_C)
    return [
      {
        code: "kiln/too-short",
        where: name,
        what: `the log reaches ${Math.round(peak.tempC)} °C`,
        expected: `a firing to ${LOWEST_PEAK_C} °C or more`,
        fix: "leave this log out, or log a whole firing",
      },
    ];
  if (peak.tempC - curve.tempsC[0]! < LEAST_CLIMB_K)
    return [
      {
        code: "kiln/no-climb",
        where: name,
        what: `the log begins at ${Math.round(curve.tempsC[0]!)} °C, near its peak of ${Math.round(peak.tempC)} °C, so it does not show how fast the kiln climbs`,
        expected: `a log that begins ${LEAST_CLIMB_K} °C or more below its peak`,
        fix: "start the logger before the kiln",
      },
    ];
  return [];
}

/** From this share on the elements count as fully on. */
const FULLY_ON = 0.98;
const JOULES_PER_KWH = 3.6e6;

/** Share of the time up to a moment [s] in which the elements were fully on. */
export function fullOnFraction(output: OutputSeries, untilSeconds: number): number | null {
  let full = 0;
  let all = 0;
  eachStep(output, (fraction, seconds, from) => {
    if (from >= untilSeconds) return;
    all += seconds;
    if (fraction >= FULLY_ON) full += seconds;
  });
  return all === 0 ? null : full / all;
}

/** Electricity of a logged firing [kWh], at the wattage of new elements; null when one of the two is not known. */
export function energyOf(
  output: OutputSeries | null,
  powerWatt: number | undefined,
): number | null {
  if (output === null || powerWatt === undefined) return null;
  let fullSeconds = 0;
  eachStep(output, (fraction, seconds) => {
    fullSeconds += fraction * seconds;
  });
  return (fullSeconds * powerWatt) / JOULES_PER_KWH;
}

function eachStep(
  { timesSeconds, fraction }: OutputSeries,
  visit: (fraction: number, seconds: number, fromSeconds: number) => void,
): void {
  for (let i = 0; i + 1 < timesSeconds.length; i++) {
    const from = timesSeconds[i]!;
    visit(fraction[i]!, timesSeconds[i + 1]! - from, from);
  }
}
