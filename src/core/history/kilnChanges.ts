import { type Finding, quoted } from "../findings/Finding.ts";
import { sharedPulls } from "../kiln/kilnFindings.ts";
import type { LearnedFiring, LearnedKiln } from "../kiln/LearnedKiln.ts";
import { FALLS_APART, NOISIER, NOISY_K, STRONGER, WEAKER } from "../kiln/twoNode.ts";

/** Peaks further apart than this are not compared for time fully on [K]; our own choice. */
const LIKE_PEAKS_K = 30;
/** Share of the climb fully on that differs by this is said; our own choice. */
const FULL_ON_APART = 0.15;

/** What has changed in a kiln up to its newest firing, with both values and both names. */
interface KilnChanges {
  /** Share by which the pull is less than the strongest before; null when not less or not told. */
  readonly weakerBy: number | null;
  readonly findings: readonly Finding[];
}

/**
 * Differences between one firing of a learned kiln, its newest, and those before it.
 * @throws RangeError when the kiln was not learned from that firing.
 */
export function kilnChanges(kiln: LearnedKiln, name: string): KilnChanges {
  const at = kiln.firings.findLastIndex((firing) => firing.name === name);
  const now = kiln.firings[at];
  if (now === undefined)
    throw new RangeError(`kilnChanges: ${name} is none of this kiln's firings`);
  const before = kiln.firings.filter((_, index) => index !== at);
  const pull = strongestBefore(now, before);
  return {
    weakerBy: pull !== null && pull.share <= WEAKER ? 1 - pull.share : null,
    findings: [
      ...elements(now, before, pull),
      ...fullOn(now, before),
      ...fall(now, before),
      ...scatter(now, before),
    ],
  };
}

interface Pulled {
  readonly earlier: LearnedFiring;
  readonly nowKPerSecond: number;
  readonly thenKPerSecond: number;
  readonly share: number;
  readonly lowC: number;
  readonly highC: number;
}

function strongestBefore(now: LearnedFiring, before: readonly LearnedFiring[]): Pulled | null {
  const pulls = before.flatMap((earlier) => {
    const shared = sharedPulls(now, earlier);
    if (shared === null) return [];
    const mean = (values: readonly number[]) =>
      values.reduce((sum, value) => sum + value, 0) / values.length;
    const nowKPerSecond = mean(shared.map(({ newerKPerSecond }) => newerKPerSecond));
    const thenKPerSecond = mean(shared.map(({ olderKPerSecond }) => olderKPerSecond));
    return [
      {
        earlier,
        nowKPerSecond,
        thenKPerSecond,
        share: nowKPerSecond / thenKPerSecond,
        lowC: Math.min(...shared.map(({ lowC }) => lowC)),
        highC: Math.max(...shared.map(({ highC }) => highC)),
      },
    ];
  });
  return pulls.toSorted((a, b) => a.share - b.share)[0] ?? null;
}

function elements(
  now: LearnedFiring,
  before: readonly LearnedFiring[],
  pull: Pulled | null,
): readonly Finding[] {
  if (pull === null) return [noPull(now, before)];
  if (pull.share > WEAKER && pull.share < STRONGER) return [];
  const weaker = pull.share <= WEAKER;
  const why = weaker
    ? "worn elements, a leg that is out, low mains, or a heavier load"
    : "new elements or a lighter load";
  return [
    note("elements", {
      statement: `At the same temperatures, {low} to {high}, full power heated by {now} in ${quoted(now.name)} and by {then} in ${quoted(pull.earlier.name)}, losses left aside: {share} ${weaker ? "less" : "more"}. That is ${why}; the logs cannot say which.`,
      evidence: [
        { name: "low", value: pull.lowC, kind: "temperature" },
        { name: "high", value: pull.highC, kind: "temperature" },
        { name: "now", value: 3600 * pull.nowKPerSecond, kind: "rate" },
        { name: "then", value: 3600 * pull.thenKPerSecond, kind: "rate" },
        { name: "share", value: Math.abs(1 - pull.share), kind: "percent" },
      ],
      basis:
        "power over heat capacity, from the output column and the climb, mean of the stretches of 100 °C (180 °F) that both firings share; against the strongest of the earlier ones",
      advice: weaker
        ? "Have a licensed electrician measure the elements under your local code, kiln isolated and cold, and compare firings with the same load."
        : "",
    }),
  ];
}

function noPull(now: LearnedFiring, before: readonly LearnedFiring[]): Finding {
  const lacking =
    now.fullOnFraction === null
      ? `${quoted(now.name)} has no column of the controller's output`
      : before.every(({ fullOnFraction }) => fullOnFraction === null)
        ? "no earlier log has a column of the controller's output"
        : "no two stretches of 100 °C (180 °F) were heated in both firings";
  return note("elements", {
    statement: `Whether the elements have weakened cannot be told: ${lacking}.`,
    evidence: [],
    basis: "pull at equal temperature needs the controller's output in both logs",
    advice: "Log the output as well, if the controller shows it.",
  });
}

function fullOn(now: LearnedFiring, before: readonly LearnedFiring[]): readonly Finding[] {
  const share = now.fullOnFraction;
  if (share === null) return [];
  const [other] = before
    .flatMap((each) =>
      each.fullOnFraction !== null && Math.abs(each.peakC - now.peakC) <= LIKE_PEAKS_K
        ? [{ name: each.name, share: each.fullOnFraction }]
        : [],
    )
    .toSorted((a, b) => Math.abs(b.share - share) - Math.abs(a.share - share));
  if (other === undefined || Math.abs(other.share - share) < FULL_ON_APART) return [];
  return [
    note("time fully on", {
      statement: `The elements were fully on for {now} of the climb in ${quoted(now.name)} and for {then} in ${quoted(other.name)}, which peaked within {like} of it; schedule and load count in this as well.`,
      evidence: [
        { name: "now", value: share, kind: "percent" },
        { name: "then", value: other.share, kind: "percent" },
        { name: "like", value: LIKE_PEAKS_K, kind: "difference" },
      ],
      basis: "the output column up to the peak",
      advice: "",
    }),
  ];
}

function fall(now: LearnedFiring, before: readonly LearnedFiring[]): readonly Finding[] {
  const rate = now.fallAtQuartzCPerHour;
  if (rate === null)
    return [
      note("fall by itself", {
        statement: `Whether it cools differently cannot be told: ${quoted(now.name)} does not show it falling by itself near {at}.`,
        evidence: [{ name: "at", value: 573, kind: "temperature" }],
        basis: "a fall with the power off and the lid shut",
        advice: "",
      }),
    ];
  const [other] = before
    .flatMap(({ name, fallAtQuartzCPerHour: then }) => (then === null ? [] : [{ name, then }]))
    .toSorted((a, b) => Math.abs(Math.log(b.then / rate)) - Math.abs(Math.log(a.then / rate)));
  if (other === undefined) return [];
  const apart = Math.max(rate, other.then) / Math.min(rate, other.then);
  if (apart < 1 + FALLS_APART) return [];
  return [
    note("fall by itself", {
      statement: `By itself it fell at {now} at {at} in ${quoted(now.name)} and at {then} in ${quoted(other.name)}: load, room, vent or thermocouple differed, and the logs cannot say which.`,
      evidence: [
        { name: "now", value: rate, kind: "rate" },
        { name: "then", value: other.then, kind: "rate" },
        { name: "at", value: 573, kind: "temperature" },
      ],
      basis: "the two cooling constants fitted to each firing alone",
      advice: "",
    }),
  ];
}

function scatter(now: LearnedFiring, before: readonly LearnedFiring[]): readonly Finding[] {
  const [quietest] = before.toSorted((a, b) => a.noiseK - b.noiseK);
  if (!quietest || now.noiseK < NOISY_K || now.noiseK < NOISIER * quietest.noiseK) return [];
  return [
    note("scatter", {
      statement: `Readings scatter {times} times as much in ${quoted(now.name)} (about {now} tenths of a degree C) as in ${quoted(quietest.name)} (about {then} tenths): the thermocouple, its lead or the logger differs.`,
      evidence: [
        { name: "times", value: now.noiseK / quietest.noiseK, kind: "ratio" },
        { name: "now", value: 10 * now.noiseK, kind: "count" },
        { name: "then", value: 10 * quietest.noiseK, kind: "count" },
      ],
      basis: "how much neighbouring readings jump about, one sigma",
      advice: "Look at the tip and the terminals; a log cannot show whether it reads true.",
    }),
  ];
}

function note(
  about: string,
  parts: Pick<Finding, "statement" | "evidence" | "basis" | "advice">,
): Finding {
  return {
    topic: `since earlier firings, ${about}`,
    severity: "note",
    zone: null,
    span: null,
    ...parts,
  };
}
