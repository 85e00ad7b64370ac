import type { Finding } from "../../findings/Finding.ts";
import { basedOn } from "../../sources/basedOn.ts";
import { wayUp } from "./heatingTimes.ts";
import { finding, type Judged } from "./Judged.ts";

/** Slow school: 60 to 80 °C/h between 700 and 900 °C. */
const SLOW_C_PER_HOUR = 80;

/** Quickest of the usual bisques here: 200 °F/h [°C/h]. */
export const QUICK_C_PER_HOUR = 112;

/** Carbon and sulphur that must burn out of raw clay before glaze or glass seals it. */
export function checkCarbon(judged: Judged): readonly Finding[] {
  if (judged.raw === false || (judged.raw === null && judged.peakC >= 1100)) return [];
  const burning = wayUp(judged, 700, 900);
  const whole = wayUp(judged, 650, 950);
  if (burning === null || whole === null) return [];
  const rate = burning.meanCPerHour;
  const quick = rate > QUICK_C_PER_HOUR;
  return [
    finding({
      topic: "carbon burning out",
      severity: quick ? "caution" : "note",
      statement: quick
        ? "Between {low} and {high} the ware climbs at {rate} on average, with {time} from {from} to {to}: carbon may stay in and bloat or pinhole later."
        : rate > SLOW_C_PER_HOUR
          ? "Between {low} and {high} the ware climbs at {rate} on average, as usual bisques do; dark or thick clay wants it slower."
          : "Between {low} and {high} the ware climbs at {rate} on average, slow enough for dark clay.",
      evidence: [
        { name: "low", value: 700, kind: "temperature" },
        { name: "high", value: 900, kind: "temperature" },
        { name: "rate", value: rate, kind: "rate" },
        { name: "from", value: 650, kind: "temperature" },
        { name: "to", value: 950, kind: "temperature" },
        { name: "time", value: whole.seconds, kind: "duration" },
        { name: "usual", value: 100, kind: "rate" },
        { name: "hold at", value: 815, kind: "temperature" },
      ],
      basis: basedOn(
        "100 °C/h (180 °F/h) up to 900 °C (1650 °F); slow school 60 to 80 °C/h (108 to 144 °F/h) from 700 to 900 °C (1290 to 1650 °F); or about 1 h at 816 °C (1500 °F)",
        "mastering-cone-6",
        "bisque-carbon",
        "burn-out-hold",
      ),
      advice: quick ? "Slow down to {usual} there, or hold for an hour at {hold at}." : "",
      span: { fromSeconds: whole.fromSeconds, toSeconds: whole.toSeconds },
    }),
  ];
}
