import { type Finding, quoted } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import { QUARTZ_BAND } from "../ware/inversions.ts";
import type { PingTemperatures } from "./PingReview.ts";
import type { Heard } from "./pingFindings.ts";

/** Set points of usual glazes [°C], and the coat for which a misfit is told [mm]; our own choices. */
const SET_POINTS_C = { low: 550, high: 650 };
const TOLD_COAT_MM = 0.4;

/** No misfit is told for an onset nearer to the lowest set point than this [K]. */
const LEAST_FALL_K = 50;

/**
 * From this misfit on glazes cracked in the kiln, on four porous bodies [1/K].
 * @see SOURCES["four-porous-bodies"]
 */
const STRONG_MISFIT_PER_K = 1e-6;

/** The recording must know this much of its temperatures. */
const KNOWN_SHARE = 0.9;

/** Below this a kiln may stand open already [°C]; our own choice. */
const MAY_BE_OUT_C = 150;

/** Pings at a steady temperature say something after this time [s], and from this number on. */
const STEADY_SECONDS = 3600;
const STEADY_PINGS = 5;

const ONSET_BASIS = `${basedOn("the earlier a glaze cracks on its way down, the stronger the misfit, and the thicker the coat the less misfit it takes", "ping-onset", "four-porous-bodies")}; toughness and stiffness of the glaze from memory; the log reads a thermocouple, not the ware`;

/** What the temperatures at the pings speak for. */
export function temperatureFindings(review: Heard): readonly Finding[] {
  const { temperatures } = review;
  if (temperatures === null) return [];
  return [
    ...unloadedFindings(temperatures, review),
    ...knownFindings(temperatures, review),
    ...onsetFindings(temperatures, review),
    ...inversionFindings(temperatures),
    ...steadyFindings(temperatures),
  ];
}

function unloadedFindings(
  { unloading, logName, coldestC }: PingTemperatures,
  { pings, heard }: Heard,
): readonly Finding[] {
  if (unloading === null)
    return coldestC === null || coldestC >= MAY_BE_OUT_C ? [] : [unknownUnloading(logName)];
  if (unloading.seconds === 0) return [];
  const hot = unloading.tempC === null ? "" : ", the kiln being at {kiln}";
  const when =
    unloading.atSeconds <= 0
      ? `before the recording began${hot}`
      : `{at} after the recording began${hot}`;
  const few = unloading.count === 1 ? "ping was" : "pings were";
  const all = unloading.seconds >= heard.seconds;
  return [
    {
      ...plain("after unloading", "caution"),
      statement: `The ware was taken out ${when}. {count} of the {pings} ${few} heard from then on${all ? "" : ", in {listened}"}: they are counted apart and have no temperature, for on the shelf the ware cools faster than the kiln that ${quoted(logName)} shows.`,
      evidence: [
        { name: "at", value: Math.max(0, unloading.atSeconds), kind: "duration" },
        ...(unloading.tempC === null
          ? []
          : [{ name: "kiln", value: unloading.tempC, kind: "temperature" } as const]),
        { name: "count", value: unloading.count, kind: "count" },
        { name: "pings", value: pings.length, kind: "count" },
        { name: "listened", value: unloading.seconds, kind: "duration" },
      ],
      basis: "unloading as the firing record beside the log notes it",
      advice:
        "A burst just after unloading is the cold room, not the fit: do not read a misfit from it.",
    },
  ];
}

function unknownUnloading(logName: string): Finding {
  return {
    ...plain("unloading", "note"),
    statement: `No record beside ${quoted(logName)} says when the ware was taken out. From then on it is not as hot as the kiln, and the temperatures below do not hold.`,
    evidence: [],
    basis: "own reasoning",
    advice: "Write unloaded: with its at: into the firing record, and ask again.",
  };
}

function knownFindings(
  { knownShare, logName, unloading }: PingTemperatures,
  { heard }: Heard,
): readonly Finding[] {
  const outShare = (unloading?.seconds ?? 0) / heard.seconds;
  if (knownShare >= KNOWN_SHARE * (1 - outShare)) return [];
  return [
    {
      ...plain("log beside the recording", "caution"),
      statement: `Only {known} of the recording lies within the readings of ${quoted(logName)}; pings outside it have no temperature.`,
      evidence: [{ name: "known", value: knownShare, kind: "percent" }],
      basis: "start of the recording placed on the log",
      advice: "Check --started if that surprises you.",
    },
  ];
}

function onsetFindings(
  { firstC, thirdC, coldestC, rangeK }: PingTemperatures,
  { isBegun }: Heard,
): readonly Finding[] {
  if (firstC === null) return [];
  const third = thirdC === null ? "" : ", the third at {third}, in case the first was a shelf";
  const before = isBegun
    ? "Pings came from its very start, so the first of the firing may have come hotter."
    : "It began at {began}; whether anything pinged before that, it cannot tell.";
  return [
    {
      ...plain("onset", "note"),
      statement: `The first ping of this recording came at {first}${third}. ${before}${misfitWords(firstC, isBegun)}`,
      evidence: [
        { name: "first", value: firstC, kind: "temperature" },
        ...(thirdC === null
          ? []
          : [{ name: "third", value: thirdC, kind: "temperature" } as const]),
        { name: "began", value: (coldestC ?? firstC) + rangeK, kind: "temperature" },
        { name: "setLow", value: SET_POINTS_C.low, kind: "temperature" },
        { name: "setHigh", value: SET_POINTS_C.high, kind: "temperature" },
      ],
      basis: ONSET_BASIS,
      advice:
        "If it was the first of the firing, put coat and temperature under cracks: pings: of the glaze file: undunted glaze works out the misfit for your own coat, wall and set point.",
    },
  ];
}

/** What an onset says of the fit, at least where it may have been hotter, for a usual coat and usual set points; nothing near them or in the quartz. */
function misfitWords(firstC: number, isBegun: boolean): string {
  if (firstC > SET_POINTS_C.low - LEAST_FALL_K || firstC >= QUARTZ_BAND.lowC) return "";
  const [low, high] = [SET_POINTS_C.high, SET_POINTS_C.low].map((setC) =>
    misfitOfOnset(setC - firstC, TOLD_COAT_MM),
  ) as [number, number];
  const strong = low >= STRONG_MISFIT_PER_K ? ", a strong one" : "";
  const amount = isBegun
    ? `at least ${millionths(low)}`
    : `${millionths(low)} to ${millionths(high)}`;
  return ` If the kiln stayed shut${isBegun ? "" : " and nothing pinged before"}, that is a misfit of glaze and clay of ${amount} millionths per °C${strong}, for a coat of ${TOLD_COAT_MM} mm on a stout wall and a glaze that sets at {setLow} to {setHigh}; a coat twice as thick cracks so at 0.7 of it.`;
}

function millionths(perK: number): string {
  return (perK * 1e6).toFixed(1);
}

function inversionFindings({ inversions }: PingTemperatures): readonly Finding[] {
  return inversions
    .filter(({ count }) => count > 0)
    .map((band) => ({
      ...plain(`pings through the ${band.name}`, "caution"),
      statement: `{count} ${band.count === 1 ? "ping" : "pings"} came between {high} and {low}, where the ${band.name} lies: look for the inversion first, that is for a long crack through the wall, before reading them as crackle.`,
      evidence: [
        { name: "count", value: band.count, kind: "count" },
        { name: "high", value: band.highC, kind: "temperature" },
        { name: "low", value: band.lowC, kind: "temperature" },
        { name: "listened", value: band.seconds, kind: "duration" },
      ],
      basis:
        "bands of the two inversions as in a review; glaze that fits badly can crack there as well",
      advice: "Tap the pieces once they are cold and look for a line from the rim or the foot.",
    }));
}

function steadyFindings({ steady }: PingTemperatures): readonly Finding[] {
  if (steady.seconds < STEADY_SECONDS) return [];
  const span = { name: "steady", value: steady.seconds, kind: "duration" } as const;
  const basis = basedOn(
    "at one temperature only moisture or creeping cracks are left to pull; less than 5 °C/h over half an hour counts as steady, our own choice",
    "wilson-2003",
  );
  if (steady.count === 0)
    return [
      {
        ...plain("steady temperature", "note"),
        statement:
          "No ping came in the {steady} for which the temperature held still: what was heard goes with cooling.",
        evidence: [span],
        basis,
        advice: "",
      },
    ];
  if (steady.count < STEADY_PINGS) return [];
  return [
    {
      ...plain("steady temperature", "note"),
      statement:
        "{count} pings came in {steady} for which the temperature held still; pinging that goes on so for days speaks for moisture or for cracks that creep.",
      evidence: [{ name: "count", value: steady.count, kind: "count" }, span],
      basis,
      advice: "Record again after some days.",
    },
  ];
}

function plain(topic: string, severity: Finding["severity"]) {
  return { topic, severity, zone: null, span: null };
}

/** Toughness [MPa·√m], stiffness [MPa], Poisson's ratio of a glaze, and Z of a crack in a thin coat on a body as stiff. */
const TOUGHNESS = 0.7;
const STIFFNESS = 65_000;
const POISSON = 0.2;
const Z = 1.976;

/**
 * Misfit of glaze and body that cracks a coat after a fall from the set point [1/K].
 * A thin coat on a stout body of its own stiffness; thin walls and soft bodies take other amounts.
 *
 * @param fallK From the set point to the first ping, above 0.
 * @see SOURCES["ping-onset"]
 */
export function misfitOfOnset(fallK: number, coatMm: number): number {
  if (!(fallK > 0 && coatMm > 0)) throw new RangeError(`misfitOfOnset: ${fallK} K, ${coatMm} mm`);
  const crackingMPa = TOUGHNESS / Math.sqrt((Z * coatMm) / 1000);
  return (crackingMPa * (1 - POISSON)) / STIFFNESS / fallK;
}
