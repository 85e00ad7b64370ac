import type { Curve } from "../curve/Curve.ts";

/** Below this everything that strains ware happens, so steps are short [°C]. */
const FINE_BELOW_C = 700;

/** Longest step, and the span over which denser readings are averaged, below and above that [s]. */
const FINE = { longest: 20, shortest: 10 } as const;
const COARSE = { longest: 60, shortest: 30 } as const;

/** A Curve cut into steps of the integration; made once for any number of runs. */
export interface StrainSteps {
  readonly timesSeconds: Float64Array;
  readonly tempsC: Float64Array;
  /** 1 where it begins anew: at the start and after a gap. */
  readonly begins: Uint8Array;
}

/**
 * Cuts a Curve into steps of at most 20 s below 700 °C and 60 s above.
 * Points closer than half of that are averaged, time and temperature alike, which buries noise and
 * leaves straight lines as they are. Nothing is placed inside a gap.
 */
export function strainSteps(curve: Curve): StrainSteps {
  const times: number[] = [];
  const temps: number[] = [];
  const begins: number[] = [];
  const gapStarts = new Set(curve.gaps.map((gap) => gap.fromSeconds));
  const last = curve.timesSeconds.length - 1;
  let sum = { seconds: 0, tempsC: 0, count: 0 };
  let begin = true;

  const place = (seconds: number, tempC: number) => {
    if (!begin) fill(times, temps, begins, { seconds, tempC });
    times.push(seconds);
    temps.push(tempC);
    begins.push(begin ? 1 : 0);
    begin = false;
  };
  for (let i = 0; i <= last; i++) {
    const seconds = curve.timesSeconds[i]!;
    const tempC = curve.tempsC[i]!;
    const ends = i === last || gapStarts.has(seconds);
    if (begin || ends) {
      if (sum.count > 0) place(sum.seconds / sum.count, sum.tempsC / sum.count);
      place(seconds, tempC);
      sum = { seconds: 0, tempsC: 0, count: 0 };
      if (ends) begin = true;
      continue;
    }
    sum.seconds += seconds;
    sum.tempsC += tempC;
    sum.count++;
    const next = curve.timesSeconds[i + 1]!;
    if (next - times.at(-1)! < stepAt(tempC).shortest) continue;
    place(sum.seconds / sum.count, sum.tempsC / sum.count);
    sum = { seconds: 0, tempsC: 0, count: 0 };
  }
  return {
    timesSeconds: Float64Array.from(times),
    tempsC: Float64Array.from(temps),
    begins: Uint8Array.from(begins),
  };
}

/** Fills the straight line to the next point with steps that are short enough. */
function fill(
  times: number[],
  temps: number[],
  begins: number[],
  to: { readonly seconds: number; readonly tempC: number },
): void {
  const from = { seconds: times.at(-1)!, tempC: temps.at(-1)! };
  let at = from.seconds;
  let tempC = from.tempC;
  const slope = (to.tempC - from.tempC) / (to.seconds - from.seconds);
  for (;;) {
    const longest = stepAt(Math.min(tempC, to.tempC)).longest;
    const left = Math.ceil((to.seconds - at) / longest - 1e-9);
    if (left <= 1) return;
    at += (to.seconds - at) / left;
    tempC = from.tempC + slope * (at - from.seconds);
    times.push(at);
    temps.push(tempC);
    begins.push(0);
  }
}

function stepAt(tempC: number) {
  return tempC < FINE_BELOW_C ? FINE : COARSE;
}
