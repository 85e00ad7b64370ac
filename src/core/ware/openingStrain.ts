import { lastAsked } from "./lastAsked.ts";
import { type OpeningWay, worstOpening } from "./openingRatio.ts";
import { wareNumbers } from "./strainNumbers.ts";
import { type Draws, ratioSpread, type SpreadShares } from "./strainSpread.ts";
import type { Ware } from "./Ware.ts";

/** What opening the kiln at a temperature does to a piece. */
export interface OpeningStrain {
  readonly way: OpeningWay;
  /** Temperature of kiln and ware at the opening [°C]. */
  readonly tempC: number;
  /** Worst computed stress over strength; good to a factor of two either way. */
  readonly ratio: number;
  /** The 10 and 90 % points of what body, strength, shape and kiln may be. */
  readonly low: number;
  readonly high: number;
  /** What that range comes from. */
  readonly shares: SpreadShares;
}

const WAYS: readonly OpeningWay[] = ["lid opened", "lifted out"];

const NOTHING: SpreadShares = { body: 0, strength: 0, shape: 0, kiln: 0 };

const OPENINGS = lastAsked<OpeningStrain>(200);

/**
 * What a piece suffers when the lid is opened, and when it is lifted out, at each temperature.
 * In the order of the temperatures, the lid first. The spread is that of `ratioSpread`, from the
 * temperature at which the middle of it is worst.
 *
 * @throws RangeError when fewer than 10 runs are asked for.
 */
export function openingStrains(
  ware: Ware,
  tempsC: readonly number[],
  draws: Draws,
): readonly OpeningStrain[] {
  const piece = JSON.stringify([ware, draws]);
  return tempsC.flatMap((tempC) =>
    WAYS.map((way) =>
      OPENINGS.of(`${way} ${tempC} ${piece}`, () => openingStrain(ware, { tempC, way }, draws)),
    ),
  );
}

function openingStrain(
  ware: Ware,
  { tempC, way }: { readonly tempC: number; readonly way: OpeningWay },
  draws: Draws,
): OpeningStrain {
  const { ratio, moments } = worstOpening(wareNumbers(ware), tempC, way);
  if (moments.length === 0) return { way, tempC, ratio, low: 0, high: 0, shares: NOTHING };
  const { low, high, shares } = ratioSpread(ware, moments, draws);
  return { way, tempC, ratio, low: Math.min(low, ratio), high: Math.max(high, ratio), shares };
}
