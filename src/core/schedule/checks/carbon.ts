import type { Finding } from "../../findings/Finding.ts";
import { basedOn } from "../../sources/basedOn.ts";
import { fastestPassage, wayUp } from "./heatingTimes.ts";
import { finding, type Judged, mayBeRaw, type RawWare, rawWareOf } from "./Judged.ts";

/** Slow school: 60 to 80 °C/h between 700 and 900 °C. */
const SLOW_C_PER_HOUR = 80;

/** Quickest of the usual bisques here: 200 °F/h [°C/h]. */
export const QUICK_C_PER_HOUR = 112;

/** Where carbon burns out, and the shortest climb there that counts [°C, K]. */
export const CARBON = { fromC: 700, toC: 900, spanK: 50 } as const;

/** A hold that stands in for a slow climb: about an hour at 816 °C, within this [°C, s]. */
const BURN_OUT = { fromC: 770, toC: 850, seconds: 3500 } as const;

/** Nobody fires an unknown load to burn carbon out: only a climb twice as quick as the usual is spoken of. */
const UNKNOWN_TIMES = 2;

/** Carbon and sulphur that must burn out of raw clay before glaze or glass seals it. */
export function checkCarbon(judged: Judged): readonly Finding[] {
  return carbonFindings(rawWareOf(judged));
}

/** The same of a plan or of a firing that was, by its fastest sustained climb. */
export function carbonFindings(ware: RawWare): readonly Finding[] {
  if (!mayBeRaw(ware)) return [];
  const { curve, tense, isRaw } = ware;
  const burning = fastestPassage(curve, CARBON, CARBON.spanK);
  const whole = wayUp(curve, 650, 950);
  if (burning === null || whole === null) return [];
  const rate = burning.meanCPerHour;
  const quick = rate > QUICK_C_PER_HOUR * 1.005 && !hasBurnOut(ware);
  if (tense === "past" && isRaw === null && !(quick && rate > UNKNOWN_TIMES * QUICK_C_PER_HOUR))
    return [];
  const climbs = tense === "plan" ? "climbs" : "climbed";
  return [
    finding({
      topic: "carbon burning out",
      severity: quick ? "caution" : "note",
      statement: quick
        ? `Between {low} and {high} the ware ${climbs} at up to {rate}, with {time} from {from} to {to}: carbon may ${tense === "plan" ? "stay in" : "have stayed in"} and bloat or pinhole later.`
        : rate > SLOW_C_PER_HOUR
          ? `Between {low} and {high} the ware ${climbs} at up to {rate}, as usual bisques do; dark or thick clay wants it slower.`
          : `Between {low} and {high} the ware ${climbs} at up to {rate}, slow enough for dark clay.`,
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
        "the fastest 50 °C (90 °F) there; 100 °C/h (180 °F/h) up to 900 °C (1650 °F); slow school 60 to 80 °C/h (108 to 144 °F/h) from 700 to 900 °C (1290 to 1650 °F); or about 1 h at 816 °C (1500 °F)",
        "mastering-cone-6",
        "bisque-carbon",
        "burn-out-hold",
      ),
      advice: quick ? "Slow down to {usual} there, or hold for an hour at {hold at}." : "",
      span: { fromSeconds: whole.fromSeconds, toSeconds: whole.toSeconds },
    }),
  ];
}

/** Held for an hour where carbon burns: what the climb before and after it does matters less. */
function hasBurnOut({ curve }: RawWare): boolean {
  const stretch = wayUp(curve, BURN_OUT.fromC, BURN_OUT.toC);
  const usual = ((BURN_OUT.toC - BURN_OUT.fromC) * 3600) / QUICK_C_PER_HOUR;
  return stretch !== null && stretch.seconds >= Math.max(BURN_OUT.seconds, usual);
}
