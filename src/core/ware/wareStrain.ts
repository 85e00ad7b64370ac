import { type Curve, peakOf } from "../curve/Curve.ts";
import { wareNumbers } from "./strainNumbers.ts";
import { type StrainRunner, strainRunner, WATCHED } from "./strainRunner.ts";
import type { Ware, WareStrain } from "./Ware.ts";

/**
 * What a Curve does to a piece: temperatures of its wall, base and shelf, and stress over strength.
 * Driven by the kiln's temperature with exact radiation; the base also lags with the middle of the
 * load over the width of the piece. Good to a factor of two either way: nothing is calibrated on
 * cracked pots, and glaze, handles and flaws are not in it.
 *
 * `timesSeconds` are the steps of the integration, at most 20 s below 700 °C and 60 s above, not
 * the points of the Curve. At the start and after every gap the ware is taken to be as hot as the
 * kiln, so for some minutes from there the strain is understated.
 *
 * `worst` lists each inversion and direction that the kiln went into: heating before the peak,
 * cooling after it. A moment belongs to a band from when the kiln enters it until the last part of
 * the ware has left it. The kiln may be past the band by then, because a thick base follows up to
 * tens of kelvins behind; `tempC` is the kiln's.
 */
export function wareStrain(curve: Curve, ware: Ware): WareStrain {
  return followedWare(curve, ware).strain;
}

/** The same, with the states about the worst of each watched passage, for its spread. */
export function followedWare(
  curve: Curve,
  ware: Ware,
): { readonly strain: WareStrain; readonly moments: StrainRunner["moments"] } {
  const steps = strainSteps(curve);
  const numbers = wareNumbers(ware);
  const runner = strainRunner(steps, peakOf(curve).seconds);
  runner.run(numbers);
  const trace = runner.trace(numbers);
  const strain = {
    timesSeconds: steps.timesSeconds,
    get ratio() {
      return trace.ratio;
    },
    wallC: trace.wallC,
    baseC: trace.baseC,
    shelfC: trace.shelfC,
    worst: WATCHED.flatMap(({ band, direction }, i) => {
      const ratio = runner.worst[i]!;
      const step = runner.worstAt[i]!;
      if (ratio < 0) return [];
      return [
        {
          band: band.name,
          direction,
          ratio,
          atSeconds: steps.timesSeconds[step]!,
          tempC: steps.tempsC[step]!,
        },
      ];
    }),
  };
  return { strain, moments: runner.moments };
}

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
