import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import { P_LEAST, P_MOST, type PingLaw, slowCrackExponent } from "./omoriLaw.ts";
import type { Heard } from "./pingFindings.ts";

/** A rate is steady when it surely changes by less than this factor over the recording; our own choice. */
const STEADY_FACTOR = 2;

/** The laws of time alone hold while the temperature changes by no more than this [K]; our own choice. */
const STILL_K = 10;

/** Sigmas of the trend test that hold 95 of 100 even recordings. */
const TREND_SIGMAS = 1.96;

const LAW_BASIS = `${basedOn("rate in proportion to 1/(t + c)^p", "utsu-1961")}, which ${basedOn("cracking of porous silica keeps to", "baro-2013")}; ${basedOn("fitted to the times themselves", "ogata-1983")}; no published count of pinging pots was found, so this is theory with likenesses`;

/** Power of the crack speed in glass, from memory between 16 and 20; the Weibull modulus from 5 to 10, from memory. */
const SLOW_CRACK_POWER = 18;

/** Readings of an exponent: what would give it, and the span of p that it gives. */
const READINGS: readonly {
  readonly low: number;
  readonly high: number;
  readonly words: string;
}[] = [
  { low: 0, high: 0, words: "a steady rate (p 0), as while the temperature still changes" },
  {
    low: slowCrackExponent(10, SLOW_CRACK_POWER),
    high: slowCrackExponent(5, SLOW_CRACK_POWER),
    words: `${basedOn("cracks that creep under a steady pull (p about 0.4 to 0.7)", "crack-growth-law")}`,
  },
  {
    low: 0.75,
    high: 0.75,
    words: `${basedOn("moisture growth (p 0.75, a straight line against the fourth root of time)", "moisture-click-law", "wilson-2003")}`,
  },
  { low: 1, high: 1, words: "a straight line against the logarithm of time (p 1)" },
];

/** How the pings thin out, and what that speaks for. */
export function lawFindings(review: Heard): readonly Finding[] {
  return [...thinningFindings(review), ...burstFindings(review)];
}

function thinningFindings(review: Heard): readonly Finding[] {
  if (review.law !== null) return [exponentFinding(review.law, review)];
  return review.earliness === null ? [] : [trendFinding(review.earliness, review)];
}

function exponentFinding(law: PingLaw, review: Heard): Finding {
  const { heard, pings, temperatures } = review;
  const isSteady = isSteadyRate(review);
  const rangeK = temperatures?.rangeK ?? 0;
  return {
    topic: "thinning out",
    severity: "note",
    statement: `The rate goes as 1/(t + c)^p from the start of the recording, with p ${two(law.p)} (95 %: ${intervalWords(law)}) and c {c}. In made-up recordings of this law the fit scatters by ${two(law.pSigma)} and lies ${two(Math.abs(law.pBias))} too ${law.pBias < 0 ? "low" : "high"} on average. ${readingWords(law, { review, rangeK, isSteady })}.${review.burst === null ? "" : " The second burst bends p as well."}`,
    evidence: [
      { name: "c", value: law.c, kind: "duration" },
      { name: "pings", value: pings.length, kind: "count" },
      { name: "length", value: heard.seconds, kind: "duration" },
      { name: "p", value: law.p, kind: "ratio" },
      { name: "p, least", value: law.pLow, kind: "ratio" },
      { name: "p, most", value: law.pHigh, kind: "ratio" },
      { name: "range", value: rangeK, kind: "difference" },
    ],
    basis: LAW_BASIS,
    advice:
      isSteady || rangeK > STILL_K
        ? "Record again once the ware is as cold as the room and stays so."
        : "A longer recording narrows the span of p; let the ware stand at one temperature meanwhile.",
    zone: null,
    span: null,
  };
}

/** Whether the log says how hot the ware was all the time. */
function isAllLogged(temperatures: Heard["temperatures"]): boolean {
  return temperatures !== null && temperatures.knownShare > 0.9;
}

function isTakenOutMeanwhile({ temperatures, heard }: Heard): boolean {
  const unloading = temperatures?.unloading ?? null;
  return unloading !== null && unloading.atSeconds > 0 && unloading.atSeconds < heard.seconds;
}

function intervalWords({ pLow, pHigh }: PingLaw): string {
  const low = `${two(pLow)}${pLow <= P_LEAST ? " or less" : ""}`;
  return `${low} to ${two(pHigh)}${pHigh >= P_MOST - 0.005 ? " or more" : ""}`;
}

/**
 * A rate that goes as exp(−b t) has b T about earliness × √(12/n), with a sigma of √(12/n).
 * Steady when the outer end of its 95 % interval stays within {@link STEADY_FACTOR}.
 */
function isSteadyRate({ earliness, pings }: Heard): boolean {
  if (earliness === null) return false;
  const most = (Math.abs(earliness) + TREND_SIGMAS) * Math.sqrt(12 / pings.length);
  return most < Math.log(STEADY_FACTOR);
}

/** What the exponent speaks for; nothing of time alone while the temperature changes. */
function readingWords(
  law: PingLaw,
  {
    review,
    rangeK,
    isSteady,
  }: { readonly review: Heard; readonly rangeK: number; readonly isSteady: boolean },
): string {
  const { temperatures } = review;
  if (isTakenOutMeanwhile(review))
    return "The ware was taken out meanwhile, so p mixes the cooling in the kiln with that on the shelf and speaks for nothing by itself";
  if (rangeK > STILL_K)
    return "The temperature changed by {range} meanwhile, so p says how the cooling went along with the pinging, and nothing of moisture or creeping cracks: look at the rate against temperature instead";
  if (isSteady)
    return `The rate is steady: over the whole recording it changes by less than a factor of ${STEADY_FACTOR} (95 %). That speaks for a temperature that still changes, not for moisture, unless the recording began long after the pinging did`;
  if (law.pHigh < 0)
    return "They come more often with time instead of thinning out: that speaks for a temperature that changes faster, or for water, not for moisture growth or creeping cracks";
  const allowed = READINGS.filter(({ low, high }) => law.pLow <= high && law.pHigh >= low);
  const words =
    allowed.length === 0
      ? "none of the simple readings"
      : allowed.map((reading) => reading.words).join("; ");
  const open = allowed.length > 1 ? "; this recording alone does not tell them apart" : "";
  const proviso = isAllLogged(temperatures)
    ? ""
    : " (if the ware stood at one temperature, which no log shows)";
  return `That allows${proviso} ${words}${open}`;
}

function trendFinding(earliness: number, { pings }: Heard): Finding {
  const words =
    earliness > TREND_SIGMAS
      ? "They thin out with time, more than chance explains"
      : earliness < -TREND_SIGMAS
        ? "They become more frequent with time, more than chance explains; that speaks for a temperature that changes faster, or for water"
        : "Whether they thin out cannot be told: as uneven as this happens by chance";
  return {
    topic: "thinning out",
    severity: "note",
    statement: `${words} (their mean lies ${Math.abs(earliness).toFixed(1)} standard errors ${earliness < 0 ? "after" : "before"} the middle of the recording; 2 is a clear sign). With {pings} pings no exponent is told: it would be uncertain by as much as moisture, creeping cracks and a steady rate differ; that takes more than 50.`,
    evidence: [{ name: "pings", value: pings.length, kind: "count" }],
    basis:
      "test of Laplace: the mean of the times against the middle of the recording, own arithmetic",
    advice: "",
    zone: null,
    span: null,
  };
}

function burstFindings({ burst, heard }: Heard): readonly Finding[] {
  if (burst === null) return [];
  return [
    {
      topic: "second burst",
      severity: "caution",
      statement:
        "From {from} to {to} of the recording there came {count} pings where thinning out alone expects {expected}: a second burst. It speaks for a step of temperature (a door, a draught, moving the ware) or for water on the ware, not for the fit of the glaze by itself.",
      evidence: [
        { name: "from", value: burst.fromSeconds, kind: "elapsed" },
        { name: "to", value: burst.toSeconds, kind: "elapsed" },
        { name: "count", value: burst.count, kind: "count" },
        { name: "expected", value: burst.expected, kind: "count" },
        { name: "length", value: heard.seconds, kind: "duration" },
      ],
      basis: `${basedOn("best window against the best of 199 seeded even recordings, which it beats", "kulldorff-1997")}`,
      advice:
        "Note what happened then. Do not use pings of a draught to judge the fit of the glaze.",
      zone: null,
      span: null,
    },
  ];
}

function two(value: number): string {
  const text = Math.abs(value).toFixed(2);
  return value < -0.005 ? `−${text}` : text;
}
