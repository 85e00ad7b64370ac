import type { Band } from "../curve/Band.ts";
import type { Curve } from "../curve/Curve.ts";
import { peakOf } from "../curve/peakOf.ts";
import { drawn } from "./drawn.ts";
import { strainRunner, WATCHED } from "./integrateStrain.ts";
import { limitingRateOf } from "./limitingRate.ts";
import { seededNormal } from "./seededNormal.ts";
import { type Spread, spreadOf } from "./spreadOf.ts";
import {
  type BodyNumbers,
  fillStrainNumbers,
  JUNCTION,
  middleNumbers,
  newStrainNumbers,
} from "./strainNumbers.ts";
import { strainSteps } from "./strainSteps.ts";
import type { Body, Ware } from "./Ware.ts";

/** How uncertain the worst moment of a passage is. */
export interface WorstSpread extends Spread {
  readonly band: string;
  readonly direction: "heating" | "cooling";
}

/** How often to draw, and from which seed. */
export interface Draws {
  /** At least 10. */
  readonly runs: number;
  readonly seed: number;
}

/** Quartz and cristobalite together never take more of a body than this. */
const MOST_SILICA = 0.95;

/** Every property of a body. */
const PROPERTIES: readonly (keyof BodyNumbers)[] = [
  "densityKgPerM3",
  "heatCapacityJPerKgK",
  "conductivityWPerMK",
  "youngGPa",
  "ruptureMPa",
  "quartzFraction",
  "cristobaliteFraction",
  "matrixExpansionPerK",
];

/**
 * What the uncertainty of a body makes of the worst ratio of each passage of a Curve.
 * Draws every property of the body, and how much of the strain the junction of wall and base
 * turns into stress, apart from each other, and takes each draw through the Curve. Same seed, same
 * answer. Shape and shelf are taken as given; what the model leaves out stays left out.
 *
 * @throws RangeError when fewer than 10 runs are asked for.
 */
export function strainSpread(curve: Curve, ware: Ware, draws: Draws): readonly WorstSpread[] {
  const runner = strainRunner(strainSteps(curve), peakOf(curve).seconds);
  const found = WATCHED.map(() => new Float64Array(draws.runs));
  forEachDraw(ware, draws, (numbers, run) => {
    runner.run(numbers, null);
    for (const [i, values] of found.entries()) values[run] = runner.worst[i] as number;
  });
  return WATCHED.flatMap(({ band, direction }, i) => {
    const values = found[i] as Float64Array;
    if (values.some((ratio) => ratio < 0)) return [];
    return [{ band: band.name, direction, ...spreadOf(values) }];
  });
}

/**
 * What the uncertainty of a body makes of the limiting rate of a band [°C/h, positive].
 * Draws as `strainSpread` does.
 *
 * @throws RangeError when fewer than 10 runs are asked for or the ratio is not above 0.
 */
export function limitingRateSpread(
  ware: Ware,
  at: { readonly band: Band; readonly ratio: number },
  draws: Draws,
): Spread {
  const rates = new Float64Array(draws.runs);
  forEachDraw(ware, draws, (numbers, run) => {
    rates[run] = limitingRateOf(numbers, at);
  });
  return spreadOf(rates);
}

/**
 * Works out one draw of the body after another; the numbers are filled again for each.
 *
 * @throws RangeError when fewer than 10 runs are asked for.
 */
export function forEachDraw(
  ware: Ware,
  { runs, seed }: Draws,
  use: (numbers: ReturnType<typeof newStrainNumbers>, run: number) => void,
): void {
  if (!(runs >= 10)) throw new RangeError(`strainSpread: ${runs} runs`);
  const normal = seededNormal(seed);
  const numbers = newStrainNumbers();
  const body = middleNumbers(ware.body);
  for (let run = 0; run < runs; run++) {
    draw(body, ware.body, normal);
    const junction = drawn(JUNCTION, normal());
    fillStrainNumbers(numbers, { body, geometry: ware.geometry, junction });
    use(numbers, run);
  }
}

/** Draws every property of a body anew. */
function draw(into: BodyNumbers, body: Body, normal: () => number): void {
  for (const property of PROPERTIES) into[property] = drawn(body[property], normal());
  const silica = into.quartzFraction + into.cristobaliteFraction;
  if (silica <= MOST_SILICA) return;
  into.quartzFraction *= MOST_SILICA / silica;
  into.cristobaliteFraction *= MOST_SILICA / silica;
}
