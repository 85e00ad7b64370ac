import type { Curve } from "../curve/Curve.ts";
import { sliced } from "../curve/moved.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import { QUARTZ_BAND } from "../ware/inversionBands.ts";
import type { FiringFacts } from "./FiringFacts.ts";

/** From when on the air of a kiln was no longer the ware's, and how hot it was. */
export interface KilnOpened {
  readonly seconds: number;
  readonly tempC: number;
}

/**
 * When the lid was taken off within the readings, by record and log; null where it was not. Air that
 * is let into a hot kiln, by a vent or a propped lid, still passes the ware: what is measured of it
 * down to the end of the quartz inversion counts.
 */
export function kilnOpened(
  curve: Curve,
  { opening, logged }: Pick<FiringFacts, "opening" | "logged">,
): KilnOpened | null {
  const { atSeconds, from } = opening;
  if (atSeconds === null || (from === "log" && logged.main?.how !== "opened")) return null;
  const tempC = temperatureAt(curve, atSeconds);
  return tempC === null || tempC > QUARTZ_BAND.lowC ? null : { seconds: atSeconds, tempC };
}

/** The Curve as long as the kiln was shut: what the ware in it went through. */
export function whileShut(curve: Curve, opened: KilnOpened | null): Curve {
  if (opened === null) return curve;
  return sliced(curve, curve.timesSeconds[0]!, opened.seconds) ?? curve;
}
