import { type Curve, makeCurve } from "../curve/Curve.ts";
import type { OwnKilnFiring } from "../schedule/ownKilnFiring.ts";

/** Down to here the fall after the programme is drawn [°C]; from there on it only crawls. */
const DRAWN_TO_C = 100;

/**
 * A predicted Curve as far as it is worth drawing: to the end of plan or programme, or to 100 °C,
 * whichever is last.
 */
export function drawnPrediction({ firing }: OwnKilnFiring, planned: Curve): Curve {
  const { timesSeconds, tempsC } = firing.curve;
  const cold = firing.cooledTo.find(({ tempC }) => tempC === DRAWN_TO_C);
  const untilSeconds = Math.max(
    planned.timesSeconds.at(-1)!,
    firing.endSeconds ?? 0,
    cold?.seconds ?? Number.POSITIVE_INFINITY,
  );
  const kept = Math.max(2, timesSeconds.filter((seconds) => seconds <= untilSeconds).length);
  return makeCurve(timesSeconds.slice(0, kept), tempsC.slice(0, kept));
}
