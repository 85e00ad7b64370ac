import type { Finding, Severity } from "../../findings/Finding.ts";
import { basedOn } from "../../sources/basedOn.ts";
import { type FastestPassage, fastestPassage, wayUp } from "./heatingTimes.ts";
import { finding, type Judged, mayBeRaw, type RawWare, rawWareOf } from "./Judged.ts";

/** Fastest start that was found for studio ware: 250 °F/h to 250 °F [°C/h]. */
const FAST_START_C_PER_HOUR = 139;

/** Slowest start of a published bisque: 60 °F/h [°C/h]. */
const SLOW_START_C_PER_HOUR = 33;

/** Fastest that industry goes through 100 to 150 °C, with ware of 10 to 12 mm [°C/h]. */
const FASTEST_START_C_PER_HOUR = 300;

/** Walls up to this bear the fastest start [mm]: those of industry's figure. */
const ORDINARY_MM = 12;

/** So much faster than the most for its wall raw ware is likely to burst; our own estimate. */
const BURSTING = 2;

/** Where water leaves as steam, and the shortest climb there that counts [°C, K]. */
export const STEAM = { fromC: 60, toC: 120, spanK: 15 } as const;

/** Walls that dry slowly [mm], and walls that are sculpture. */
const THICK_MM = 15;
const SCULPTURE_MM = 25;

/**
 * Fastest sustained climb while water leaves [°C/h]. Steam has to find its way out of a wall that
 * makes it all through: the most falls with the square of the wall, from the fastest published start
 * at 12 mm to the slowest at 25 mm; our own estimate between the two.
 */
export function mostSteamCPerHour(thickestMm: number | null): number {
  const wallMm = Math.max(ORDINARY_MM, thickestMm ?? ORDINARY_MM);
  return Math.max(SLOW_START_C_PER_HOUR, FAST_START_C_PER_HOUR * (ORDINARY_MM / wallMm) ** 2);
}

/** Water that is still in the clay of a schedule's ware. */
export function checkWater(judged: Judged): readonly Finding[] {
  return waterFindings(rawWareOf(judged));
}

/** Water that is still in the clay: how fast it is driven out at its fastest, and whether thick or damp ware may dry. */
export function waterFindings(ware: RawWare): readonly Finding[] {
  return mayBeRaw(ware) ? [...startRate(ware), ...dryingTime(ware)] : [];
}

function startRate(ware: RawWare): readonly Finding[] {
  const fastest = fastestPassage(ware.curve, STEAM, STEAM.spanK);
  if (fastest === null) return [];
  const rate = fastest.meanCPerHour;
  const most = mostSteamCPerHour(ware.thickestMm);
  const severity = steamSeverity(rate, most, ware);
  if (severity === null) return [];
  const climbs = ware.tense === "plan" ? "climbs" : "climbed";
  const wall = ware.thickestMm === null ? "" : ` for walls of ${wallText(ware.thickestMm)}`;
  return [
    finding({
      topic: "water, rate of the start",
      severity,
      statement:
        severity === "note"
          ? `Up to {upper} it ${climbs} at {rate} at its fastest, inside what potters use${wall}.`
          : `From {lower} to {high} it ${climbs} at {rate}, faster than the {usual} that is safe${wall}; steam ${ware.tense === "plan" ? "may burst" : "may have burst"} raw ware.`,
      evidence: [
        { name: "upper", value: STEAM.toC, kind: "temperature" },
        { name: "lower", value: fastest.fromC, kind: "temperature" },
        { name: "high", value: fastest.toC, kind: "temperature" },
        { name: "rate", value: rate, kind: "rate" },
        { name: "usual", value: most, kind: "rate" },
      ],
      basis: basedOn(
        "the fastest 15 °C (27 °F) between 60 and 120 °C (140 and 248 °F); raw ware goes to 121 °C (250 °F) at 33 to 139 °C/h (60 to 250 °F/h); industry goes from 100 to 150 °C (212 to 302 °F) at 300 °C/h (540 °F/h) at most; between these by the square of the wall, our own estimate",
        "bisque-guide",
        "cautious-bisque",
        "fortuna-2000",
      ),
      advice: severity === "note" ? "" : "Go to {upper} at {usual} or less, or hold below boiling.",
      span: spanOf(fastest),
    }),
  ];
}

/** Null where there is nothing to say: an unknown load that went up as potters do. */
function steamSeverity(rate: number, most: number, { isRaw, tense }: RawWare): Severity | null {
  const isFast = rate > most * 1.005;
  if (tense === "past" && isRaw === null) return rate > FASTEST_START_C_PER_HOUR ? "caution" : null;
  if (!isFast) return "note";
  const isBursting = rate > FASTEST_START_C_PER_HOUR || rate > BURSTING * most;
  return isBursting && isRaw === true ? "warning" : "caution";
}

function dryingTime(ware: RawWare): readonly Finding[] {
  const { curve, isDamp, tense } = ware;
  const thickestMm = ware.thickestMm ?? 0;
  const neededHours = thickestMm >= SCULPTURE_MM ? 6 : isDamp || thickestMm >= THICK_MM ? 1 : 0;
  const stretch = wayUp(curve, 65, 120);
  if (neededHours === 0 || stretch === null) return [];
  const enough = stretch.seconds >= neededHours * 3600 - 1;
  const had = tense === "plan" ? "has" : "had";
  return [
    finding({
      topic: "water, time to dry",
      severity: enough ? "note" : isDamp ? "warning" : "caution",
      statement: enough
        ? `The ware ${had} {time} between {lower} and {upper} to dry.`
        : `${isDamp ? "Damp" : "Thick"} ware ${had} only {time} between {lower} and {upper} to dry.`,
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

function wallText(mm: number): string {
  return `${Number(mm.toFixed(1))} mm`;
}

function spanOf({ fromSeconds, toSeconds }: FastestPassage): Finding["span"] {
  return { fromSeconds, toSeconds };
}
