import type { Finding } from "../../findings/Finding.ts";
import { basedOn } from "../../sources/basedOn.ts";
import { isDemanding } from "../../ware/WareSize.ts";
import { wayUp } from "./heatingTimes.ts";
import { finding, type Judged } from "./Judged.ts";

/** Book advice for bisque from 100 to 900 °C [°C/h]. */
export const STEADY_C_PER_HOUR = 100;

/**
 * Quartz on the way up, said only for thick or wide ware: thin ware passes at any studio rate. Never
 * more than a note: no ware is known to have broken at a rate that studios climb at, and the computed
 * stress does not hold for raw clay.
 */
export function checkQuartzHeating(judged: Judged): readonly Finding[] {
  const stretch = wayUp(judged.expansion.curve, 520, 620);
  if (stretch === null || !isDemanding(judged.schedule.ware)) return [];
  const quick = stretch.meanCPerHour > STEADY_C_PER_HOUR * 1.02;
  return [
    finding({
      topic: "heating through quartz",
      severity: "note",
      statement: quick
        ? "Thick or wide ware climbs through the quartz inversion at {rate}; books advise {advice} or less for it."
        : "Thick or wide ware climbs through the quartz inversion at {rate}, no faster than books advise.",
      evidence: [
        { name: "rate", value: stretch.meanCPerHour, kind: "rate" },
        { name: "advice", value: STEADY_C_PER_HOUR, kind: "rate" },
        { name: "low", value: 520, kind: "temperature" },
        { name: "high", value: 620, kind: "temperature" },
      ],
      basis: basedOn(
        "100 °C/h (180 °F/h) from 100 to 900 °C (210 to 1650 °F); no rule for this inversion on the way up was found",
        "mastering-cone-6",
        "european-bisque",
      ),
      advice: "",
      span: { fromSeconds: stretch.fromSeconds, toSeconds: stretch.toSeconds },
    }),
  ];
}

/** The last 100 °C, where the cone is made: chart rates are 60 and 150 °C/h. */
export function checkLastHundred(judged: Judged): readonly Finding[] {
  const rate = judged.heatwork.lastHundredCPerHour;
  if (rate === null) return [];
  const slow = rate < 60 * 0.98;
  const outside = rate > 150 * 1.02 || rate < 15 * 0.98;
  return [
    finding({
      topic: "the last 100 degrees",
      severity: outside ? "caution" : "note",
      statement: outside
        ? "The last {span} before the peak are climbed at {rate}, outside the rates of the cone chart: the cone is less certain."
        : slow
          ? "The last {span} before the peak are climbed at {rate}, slower than the usual columns of the cone chart but inside it."
          : "The last {span} before the peak are climbed at {rate}, inside the rates of the cone chart.",
      evidence: [
        { name: "span", value: 100, kind: "difference" },
        { name: "rate", value: rate, kind: "rate" },
        { name: "low", value: 60, kind: "rate" },
        { name: "high", value: 150, kind: "rate" },
      ],
      basis: basedOn(
        "chart rates of 15, 60 and 150 °C/h (27, 108 and 270 °F/h) hold for the last 100 °C (180 °F)",
        "cone-chart-rates",
      ),
      advice: outside ? "Climb the last {span} at {low} to {high}." : "",
    }),
  ];
}
