import type { Finding, Severity } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import { isDemanding } from "../ware/Ware.ts";
import {
  type FastestPassage,
  fastestPassage,
  finding,
  type Judged,
  mayBeRaw,
  type RawWare,
  rawWareOf,
  wayUp,
} from "./Judged.ts";

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
