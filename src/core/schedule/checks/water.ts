import type { Finding, Severity } from "../../findings/Finding.ts";
import { basedOn } from "../../sources/basedOn.ts";
import { wayUp } from "./heatingTimes.ts";
import { finding, type Judged } from "./Judged.ts";

/** Fastest start that was found for studio ware: 250 °F/h to 250 °F [°C/h]. */
export const FAST_START_C_PER_HOUR = 139;

/** Fastest that industry goes through 100 to 150 °C, with ware of 10 to 12 mm [°C/h]. */
const FASTEST_START_C_PER_HOUR = 300;

/** Walls that dry slowly [mm], and walls that are sculpture. */
const THICK_MM = 15;
const SCULPTURE_MM = 25;

/** Water that is still in the clay: how fast the start is, and whether thick or damp ware may dry. */
export function checkWater(judged: Judged): readonly Finding[] {
  const { ware } = judged.schedule;
  if (judged.raw === false) return [];
  if (judged.raw === null && judged.peakC >= 1100) return [];
  return [...startRate(judged), ...dryingTime(judged, ware.thickestMm ?? 0)];
}

function startRate(judged: Judged): readonly Finding[] {
  const stretch = wayUp(judged, judged.schedule.startC, 120);
  if (stretch === null) return [];
  const rate = stretch.meanCPerHour;
  const severity: Severity =
    rate <= FAST_START_C_PER_HOUR
      ? "note"
      : rate > FASTEST_START_C_PER_HOUR && judged.raw === true
        ? "warning"
        : "caution";
  return [
    finding({
      topic: "water, rate of the start",
      severity,
      statement:
        severity === "note"
          ? "The start climbs to {upper} at {rate} on average, inside what potters use."
          : "The start climbs to {upper} at {rate} on average; steam may burst raw ware.",
      evidence: [
        { name: "upper", value: 120, kind: "temperature" },
        { name: "rate", value: rate, kind: "rate" },
        { name: "usual", value: FAST_START_C_PER_HOUR, kind: "rate" },
      ],
      basis: basedOn(
        "raw ware goes to 121 °C (250 °F) at 33 to 139 °C/h (60 to 250 °F/h); industry goes from 100 to 150 °C (212 to 302 °F) at 300 °C/h (540 °F/h) at most",
        "bisque-guide",
        "cautious-bisque",
        "fortuna-2000",
      ),
      advice: severity === "note" ? "" : "Go to {upper} at {usual} or less, or hold below boiling.",
      span: { fromSeconds: stretch.fromSeconds, toSeconds: stretch.toSeconds },
    }),
  ];
}

function dryingTime(judged: Judged, thickestMm: number): readonly Finding[] {
  const damp = judged.schedule.ware.state === "damp";
  const neededHours = thickestMm >= SCULPTURE_MM ? 6 : damp || thickestMm >= THICK_MM ? 1 : 0;
  const stretch = wayUp(judged, 65, 120);
  if (neededHours === 0 || stretch === null) return [];
  const enough = stretch.seconds >= neededHours * 3600 - 1;
  return [
    finding({
      topic: "water, time to dry",
      severity: enough ? "note" : damp ? "warning" : "caution",
      statement: enough
        ? "The ware has {time} between {lower} and {upper} to dry."
        : `${damp ? "Damp" : "Thick"} ware has only {time} between {lower} and {upper} to dry.`,
      evidence: [
        { name: "time", value: stretch.seconds, kind: "duration" },
        { name: "lower", value: 65, kind: "temperature" },
        { name: "upper", value: 120, kind: "temperature" },
        { name: "wanted", value: neededHours * 3600, kind: "duration" },
      ],
      basis: basedOn(
        "damp ware is held at 82 °C (180 °F) for 1 to 4 h, sculpture for 6 h or more at 65 to 120 °C (150 to 250 °F)",
        "european-bisque",
        "candling-sculpture",
      ),
      advice: enough ? "" : "Hold for {wanted} or more between {lower} and the boiling point.",
      span: { fromSeconds: stretch.fromSeconds, toSeconds: stretch.toSeconds },
    }),
  ];
}
