import { type Evidence, quoted } from "../findings/Finding.ts";
import { hottestZone } from "../firing/FiringFacts.ts";
import { newSchedule } from "../schedule/newSchedule.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import { sizedAsMug } from "../ware/givenWare.ts";
import type { CausePair, Confounding } from "./Confounding.ts";
import type { FiringCause, FiringInNumbers } from "./FiringStudy.ts";
import { FIRING_CAUSE_WORDS } from "./firingCauses.ts";
import type { NotedFiring } from "./firingFacts.ts";
import { type KnownKiln, type NextFiring, onThisKiln, type PlannedFiring } from "./NextTest.ts";
import { CHANGES, type ChangeOf } from "./oneChange.ts";
import type { Tile } from "./Tile.ts";

/** Parts of a firing in the order in which they are tried: the gentlest change first. */
const ORDER: readonly FiringCause[] = ["quartz", "cristobalite", "opening", "coolingHold", "heat"];

const ONE_AT_A_TIME =
  "Only one thing changes, since with two no tile could say which of them did it.";

/**
 * The next firing. When tiles alone can tell, or nothing in the firings is mixed up, it repeats the
 * schedule of the firing with most tiles; else it changes one part of one of the firings to what it
 * was in another, in the gentler direction where there is one.
 *
 * @param given.tilesTell Tiles alone tell apart what is to be told apart next.
 * @param given.known The kiln that it goes into: no ramp asks it for more than it gives.
 */
export function nextFiring(given: {
  readonly firings: readonly PlannedFiring[];
  readonly facts: readonly FiringInNumbers[];
  readonly tiles: readonly Tile[];
  readonly confounding: Confounding;
  readonly tilesTell: boolean;
  readonly known?: KnownKiln | undefined;
}): NextFiring | null {
  const next = bareNext(given);
  if (next === null || next.schedule === null || given.known === undefined)
    return next && { ...next, onKiln: null };
  const { schedule, ...onKiln } = onThisKiln(next.schedule, given.known);
  return { ...next, schedule, onKiln };
}

type BareNext = Omit<NextFiring, "onKiln">;

function bareNext(given: Parameters<typeof nextFiring>[0]): BareNext | null {
  const used = given.firings.flatMap((firing, at) => {
    const tiles = given.tiles.filter((tile) => tile.firing === firing.record?.name).length;
    const facts = given.facts[at];
    return tiles === 0 || facts === undefined ? [] : [{ ...firing, facts, tiles }];
  });
  const most = used.toSorted((a, b) => b.tiles - a.tiles)[0];
  if (most === undefined) return null;
  if (given.tilesTell)
    return repeated(
      used.find(({ plan, tiles }) => plan !== null && tiles === most.tiles) ?? most,
      "Tiles alone can tell here: with the firing as it was, nothing but the tiles differs.",
    );
  const mixed = mixedParts(given.confounding);
  for (const cause of ORDER.filter((each) => mixed.includes(each))) {
    const change = changed(cause, used, given.known);
    if (change !== null)
      return { ...change, reason: `${reasonFor(cause, given.confounding)} ${ONE_AT_A_TIME}` };
  }
  return repeated(
    used.find(({ plan }) => plan !== null) ?? most,
    "A second firing of the same schedule shows how far firings scatter by themselves; until then a difference between two firings has no measure.",
  );
}

interface Used extends PlannedFiring {
  readonly facts: FiringInNumbers;
  readonly tiles: number;
}

/** Parts of the firings that changed together with another part. */
function mixedParts({ pairs }: Confounding): readonly FiringCause[] {
  const words = Object.entries(FIRING_CAUSE_WORDS) as [FiringCause, string][];
  const isPart = (name: string) => words.some(([, word]) => word === name);
  const mixed = pairs.filter(
    ({ first, second, telling }) => telling === "cannot" && isPart(first) && isPart(second),
  );
  return words.flatMap(([cause, word]) =>
    mixed.some(({ first, second }) => first === word || second === word) ? [cause] : [],
  );
}

function reasonFor(cause: FiringCause, { pairs }: Confounding): string {
  const word = FIRING_CAUSE_WORDS[cause];
  const others = pairs.flatMap(({ first, second, telling }: CausePair) =>
    telling === "cannot" && [first, second].includes(word)
      ? [first, second].filter((each) => each !== word && each !== "firing")
      : [],
  );
  const parts = others.filter((each) => Object.values(FIRING_CAUSE_WORDS).includes(each));
  return `So far ${word} changed together with ${parts.join(", ")}.`;
}

function changed(
  cause: FiringCause,
  used: readonly Used[],
  known: KnownKiln | undefined,
): Omit<BareNext, "reason"> | null {
  const change: ChangeOf = CHANGES[cause];
  const valued = used.flatMap((firing) => {
    const value = firing.facts.facts.find(({ name }) => name === change.fact)?.value ?? null;
    return value === null ? [] : [{ ...firing, value }];
  });
  const sorted = valued.toSorted((a, b) => a.value - b.value);
  const [to, ...others] = change.towards === "low" ? sorted : sorted.toReversed();
  // From the end that is farthest off, as long as its plan leads there.
  for (const from of others.toReversed()) {
    const made = to && from.plan && change.make(from.plan, { value: to.value, other: to, known });
    if (made) return { kind: "one change", follows: from.review.title, ...made };
  }
  return null;
}

function repeated({ plan, review, record, facts }: Used, reason: string): BareNext {
  const follows = review.title;
  const after = facts.facts.find(({ name }) => name === "openedAfter")?.value ?? null;
  const evidence: readonly Evidence[] =
    after === null ? [] : [{ name: "after", value: after, kind: "duration" }];
  const opening = after === null ? "" : ", {after} after the peak and below about 100 °C";
  if (plan !== null)
    return {
      kind: "repeat",
      schedule: plan,
      follows,
      change: `Fire “${quoted(plan.title)}” again, exactly as it is, and open when it was opened then${opening}.`,
      evidence,
      reason,
    };
  const schedule = scheduleInstead({ review, record });
  const why = record?.schedule
    ? `the schedule ${record.schedule} was not found`
    : "no schedule is named in its record";
  return {
    kind: "new",
    schedule,
    follows,
    change:
      schedule === null
        ? `Fire as in “${follows}” again; ${why}, and none could be made for it.`
        : `Of “${follows}” ${why}, so this one is made new for the cone it reached; it is no exact repeat, and the record should name the schedule that is fired.`,
    evidence: [],
    reason,
  };
}

/**
 * A schedule for a firing whose own is not known: for the cone it was to reach, or reached, and its
 * ware, cooling slowly through both inversions. Null when no cone was down or none can be made.
 */
function scheduleInstead({ review, record }: NotedFiring): Schedule | null {
  const { heatwork } = hottestZone(review.zones);
  const cone = record?.cone ?? heatwork.position.cone;
  if (cone === null) return null;
  const ware = record?.ware[0];
  const made = newSchedule({
    cone,
    series: heatwork.series,
    unit: review.reading.unit === "F" ? "F" : "C",
    ware: {
      body: ware?.body ?? null,
      ...sizedAsMug({
        wallMm: ware?.wallMm ?? ware?.thickestMm ?? null,
        baseMm: ware?.baseMm ?? ware?.thickestMm ?? null,
      }),
      widestMm: ware?.widestMm ?? null,
      damp: false,
    },
    cooling: { kind: "slow" },
    withinSeconds: null,
  });
  return made.ok ? { ...made.value, ware: { ...made.value.ware, crackle: true } } : null;
}
