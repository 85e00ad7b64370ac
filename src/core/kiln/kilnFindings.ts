import { FEWEST_PINNED, offsetTrend } from "../cones/usualOffset.ts";
import { type Finding, quoted } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import {
  type CoolingConstants,
  type LearnedFiring,
  type LearnedKiln,
  lossKPerSecond,
} from "./LearnedKiln.ts";
import { FALLS_APART, NOISIER, NOISY_K, STRONGER, WEAKER } from "./twoNode.ts";

/** What the findings look at. */
interface Known {
  readonly firings: readonly LearnedFiring[];
  /** What the witness cones of each firing allow the thermocouple to be out by [K]. */
  readonly offsets: readonly { readonly lowK: number | null; readonly highK: number | null }[];
  readonly cooling: CoolingConstants & { readonly lowestC: number };
  readonly power: LearnedKiln["power"];
  readonly ceilingC: number;
  readonly roomC: number;
}

/** The ceiling should lie this far above what was fired [K]. */
const HEADROOM_K = 40;

const DRIFT_BASIS =
  "a line through the middles of what the witness cones of each firing allow; plain from three sigmas and 8 °C (14 °F) on, our own estimate";

const BALANCE = basedOn(
  "a heat balance with two cooling constants, fitted to where the kiln fell by itself",
  "bejan-kraus-2003",
);

/** What stands out in a learned kiln, and what has changed from its first firing to its newest. */
export function kilnFindings(known: Known): readonly Finding[] {
  return [
    naturalRates(known),
    ...powerUnknown(known),
    ...ceiling(known),
    ...elements(known.firings),
    ...fallsApart(known.firings),
    ...scatter(known.firings),
    ...drift(known),
    ...opened(known.firings),
  ];
}

function naturalRates({ cooling, roomC }: Known): Finding {
  const unseen =
    cooling.lowestC > 226
      ? "; the logs show it by itself only down to {lowest}, and what is colder is worked out"
      : "";
  return note({
    topic: "falling by itself",
    statement: `By itself, lid shut, this kiln falls at {quartz} at {at573} and at {cristobalite} at {at226}${unseen}.`,
    evidence: [
      { name: "quartz", value: 3600 * lossKPerSecond(cooling, 573, roomC), kind: "rate" },
      { name: "at573", value: 573, kind: "temperature" },
      { name: "cristobalite", value: 3600 * lossKPerSecond(cooling, 226, roomC), kind: "rate" },
      { name: "at226", value: 226, kind: "temperature" },
      { name: "lowest", value: cooling.lowestC, kind: "temperature" },
    ],
    basis: BALANCE,
    advice: "Slower needs power; a programme cannot make it faster.",
  });
}

function powerUnknown({ power }: Known): readonly Finding[] {
  if (power.from === "output") return [];
  return [
    note({
      topic: "power",
      statement:
        "No log has the controller's output, so full power is taken from the fastest climb seen, which is the least that the kiln can do.",
      evidence: [],
      basis: "the fastest half hour of climbing in any of the logs",
      advice: "Log the output as well, if the controller shows it.",
    }),
  ];
}

function ceiling({ ceilingC, firings, power }: Known): readonly Finding[] {
  const hottest = Math.max(...firings.map(({ peakC }) => peakC));
  if (power.from !== "output" || ceilingC > hottest + HEADROOM_K) return [];
  return [
    {
      ...note({
        topic: "ceiling",
        statement: `As in ${named({ name: power.firing })}, its elements can hold about {ceiling} at most; the hottest firing here reached {peak}.`,
        evidence: [
          { name: "ceiling", value: ceilingC, kind: "temperature" },
          { name: "peak", value: hottest, kind: "temperature" },
        ],
        basis: BALANCE,
        advice:
          "Do not plan hotter than this; have a licensed electrician measure the elements under your local code, kiln isolated and cold, before the next hot firing.",
      }),
      severity: "caution",
    },
  ];
}

/** The pull of the newest firing against the strongest before it, at equal temperature. */
function elements(firings: readonly LearnedFiring[]): readonly Finding[] {
  const powered = firings.filter(({ pulls }) => pulls.length > 0);
  const newest = powered.at(-1);
  if (newest === undefined) return [];
  const against = powered.slice(0, -1).flatMap((earlier) => {
    const share = sharedRatio(newest, earlier);
    return share === null ? [] : [{ earlier, share }];
  });
  const [strongest] = against.toSorted((a, b) => a.share - b.share);
  if (strongest === undefined || (strongest.share > WEAKER && strongest.share < STRONGER))
    return [];
  const weaker = strongest.share <= WEAKER;
  return [
    {
      ...note({
        topic: "elements",
        statement: weaker
          ? `At the same temperatures the elements gave {less} less for the load in ${named(newest)} than in ${named(strongest.earlier)}: worn elements, a leg that is out, low mains, or a heavier load.`
          : `At the same temperatures the elements gave {more} more for the load in ${named(newest)} than in ${named(strongest.earlier)}: new elements or a lighter load.`,
        evidence: [
          { name: "less", value: Math.max(0, 1 - strongest.share), kind: "percent" },
          { name: "more", value: Math.max(0, strongest.share - 1), kind: "percent" },
        ],
        basis:
          "power over heat capacity, from the output column and the climb, in the stretches of 100 °C that both firings share",
        advice: weaker
          ? "Have a licensed electrician measure the elements under your local code, kiln isolated and cold, and compare firings with the same load."
          : "",
      }),
      severity: weaker ? "caution" : "note",
    },
  ];
}

/** Mean ratio of two firings' pulls over the stretches they share; null when those are too few. */
function sharedRatio(newer: LearnedFiring, older: LearnedFiring): number | null {
  const shared = sharedPulls(newer, older);
  if (shared === null) return null;
  const sum = shared.reduce((all, each) => all + each.newerKPerSecond / each.olderKPerSecond, 0);
  return sum / shared.length;
}

function fallsApart(firings: readonly LearnedFiring[]): readonly Finding[] {
  const falls = firings
    .flatMap(({ name, fallAtQuartzCPerHour: fall }) => (fall === null ? [] : [{ name, fall }]))
    .toSorted((a, b) => a.fall - b.fall);
  const slowest = falls[0];
  const fastest = falls.at(-1);
  if (!slowest || !fastest || fastest.fall < (1 + FALLS_APART) * slowest.fall) return [];
  return [
    note({
      topic: "difference between firings",
      statement: `By itself it fell at {slow} at {at} in ${named(slowest)} and at {fast} in ${named(fastest)}: load, room, vent or thermocouple differed, and the logs cannot say which.`,
      evidence: [
        { name: "slow", value: slowest.fall, kind: "rate" },
        { name: "fast", value: fastest.fall, kind: "rate" },
        { name: "at", value: 573, kind: "temperature" },
      ],
      basis: "the two cooling constants fitted to each firing alone",
      advice: "",
    }),
  ];
}

function scatter(firings: readonly LearnedFiring[]): readonly Finding[] {
  const newest = firings.at(-1)!;
  const [quietest] = firings.toSorted((a, b) => a.noiseK - b.noiseK);
  if (!quietest || newest.noiseK < NOISY_K || newest.noiseK < NOISIER * quietest.noiseK) return [];
  return [
    note({
      topic: "thermocouple",
      statement: `Readings scatter {times} times as much in ${named(newest)} as in ${named(quietest)}: the thermocouple, its lead or the logger differs.`,
      evidence: [{ name: "times", value: newest.noiseK / quietest.noiseK, kind: "cones" }],
      basis: "how much neighbouring readings jump about",
      advice: "Look at the tip and the terminals; a log cannot show whether it reads true.",
    }),
  ];
}

/** How the thermocouple moved over the firings, by the witness cones in their records. */
function drift({ firings, offsets }: Known): readonly Finding[] {
  const pinned = offsets.filter(({ lowK, highK }) => lowK !== null && highK !== null).length;
  if (firings.length < 2) return [];
  const trend = offsetTrend(offsets);
  if (trend === null)
    return [
      note({
        topic: "thermocouple drift",
        statement: `Whether the thermocouple has drifted cannot be told yet: ${pinned === 0 ? "no record has" : `${pinned} of {firings} records ${pinned === 1 ? "has" : "have"}`} witness cones that pin it from both sides, and it takes ${FEWEST_PINNED}.`,
        evidence: [{ name: "firings", value: firings.length, kind: "count" }],
        basis: DRIFT_BASIS,
        advice:
          "Set three cones in a row every time: one that falls, the one you want, one that stands.",
      }),
    ];
  const { driftK, sigmaK, isPlain } = trend;
  const way = driftK > 0 ? "lower" : "higher";
  return [
    {
      ...note({
        topic: "thermocouple drift",
        statement: isPlain
          ? `By the witness cones of {firings} firings the thermocouple came to read {drift} ${way} than it did, give or take {sigma}.`
          : "The witness cones of {firings} firings show no drift of the thermocouple: {drift}, give or take {sigma}.",
        evidence: [
          { name: "firings", value: trend.firings, kind: "count" },
          { name: "drift", value: Math.abs(driftK), kind: "difference" },
          { name: "sigma", value: sigmaK, kind: "difference" },
        ],
        basis: DRIFT_BASIS,
        advice: isPlain
          ? `Renew the thermocouple${driftK > 0 ? ": the kiln fires hotter than it reads, and more so each time" : ""}; until then go by the cones.`
          : "",
      }),
      severity: isPlain ? "caution" : "note",
    },
  ];
}

function opened(firings: readonly LearnedFiring[]): readonly Finding[] {
  return firings.flatMap(({ name, openedAtSeconds }) =>
    openedAtSeconds === null
      ? []
      : [
          note({
            topic: "opened",
            statement: `In ${named({ name })} it began to fall faster from {at} after the start on, as an open lid or vent does; nothing later is learned from.`,
            evidence: [{ name: "at", value: openedAtSeconds, kind: "elapsed" }],
            basis: "a kiln by itself falls more and more slowly",
            advice: "",
          }),
        ],
  );
}

/** A firing's name without the brackets that would mark a number's place. */
function named({ name }: { readonly name: string }): string {
  return quoted(name);
}

function note(parts: Omit<Finding, "severity" | "zone" | "span">): Finding {
  return { severity: "note", zone: null, span: null, ...parts };
}

/** Stretches of 100 °C in which both firings must have been powered. */
const SHARED_STRETCHES = 2;

/** How hard two firings pulled in one stretch of temperature that both share. */
interface SharedPull {
  readonly lowC: number;
  readonly highC: number;
  /** Power over heat capacity [K/s]. */
  readonly newerKPerSecond: number;
  readonly olderKPerSecond: number;
}

/** Pulls of two firings at equal temperatures, coldest first; null when they share too few stretches. */
export function sharedPulls(
  newer: LearnedFiring,
  older: LearnedFiring,
): readonly SharedPull[] | null {
  const shared = newer.pulls.flatMap(({ lowC, highC, pullKPerSecond }) => {
    const other = older.pulls.find((pull) => pull.lowC === lowC);
    return other
      ? [{ lowC, highC, newerKPerSecond: pullKPerSecond, olderKPerSecond: other.pullKPerSecond }]
      : [];
  });
  return shared.length < SHARED_STRETCHES ? null : shared;
}
