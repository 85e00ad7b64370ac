import type { OutputSeries } from "./LearnedKiln.ts";

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
