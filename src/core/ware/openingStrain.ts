import { type OpeningWay, ratioFrom, worstOpening } from "./openingRatio.ts";
import { spreadOf } from "./spreadOf.ts";
import { wareNumbers } from "./strainNumbers.ts";
import { type Draws, forEachDraw } from "./strainSpread.ts";
import type { Ware } from "./Ware.ts";

/** What opening the kiln at a temperature does to a piece. */
export interface OpeningStrain {
  readonly way: OpeningWay;
  /** Temperature of kiln and ware at the opening [°C]. */
  readonly tempC: number;
  /** Worst computed stress over strength; good to a factor of two either way. */
  readonly ratio: number;
  /** The 10 and 90 % points of what the body may be. */
  readonly low: number;
  readonly high: number;
}

const WAYS: readonly OpeningWay[] = ["lid opened", "lifted out"];

/**
 * What a piece suffers when the lid is opened, and when it is lifted out, at each temperature.
 * In the order of the temperatures, the lid first. The spread draws the body as `strainSpread`
 * does, from the temperature at which the middle of it is worst.
 *
 * @throws RangeError when fewer than 10 runs are asked for.
 */
export function openingStrains(
  ware: Ware,
  tempsC: readonly number[],
  draws: Draws,
): readonly OpeningStrain[] {
  return tempsC.flatMap((tempC) => WAYS.map((way) => openingStrain(ware, { tempC, way }, draws)));
}

function openingStrain(
  ware: Ware,
  { tempC, way }: { readonly tempC: number; readonly way: OpeningWay },
  draws: Draws,
): OpeningStrain {
  const { ratio, fromC } = worstOpening(wareNumbers(ware), tempC, way);
  const ratios = new Float64Array(draws.runs);
  forEachDraw(ware, draws, (numbers, run) => {
    ratios[run] = ratioFrom(numbers, fromC, way);
  });
  const { low, high } = spreadOf(ratios);
  return { way, tempC, ratio, low: Math.min(low, ratio), high: Math.max(high, ratio) };
}
