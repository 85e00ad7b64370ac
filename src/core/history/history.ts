import { offsetTrend } from "../cones/usualOffset.ts";
import type { WitnessOffset } from "../cones/witnessOffset.ts";
import type { Finding } from "../findings/Finding.ts";
import type { KilnFiring, LearnedKiln } from "../kiln/LearnedKiln.ts";
import { learnKiln } from "../kiln/learnKiln.ts";
import { tooLittle } from "../kiln/tooLittle.ts";
import { medianInPlace } from "../math/statistics.ts";
import { type PastOffset, pastOffset } from "../schedule/coneAim.ts";
import { historyFindings } from "./historyFindings.ts";
import { kilnChanges } from "./kilnChanges.ts";

type LeftOut = FiringHistory["leftOut"][number];

/**
 * What has changed in a kiln from earlier firings up to this one, as differences only.
 * Logs that could not be read, that are this firing itself or later, that are too short, or whose
 * record names another kiln are left out, each with its reason; nothing stops the review.
 */
export function historyOf(now: PastFiring, earlier: readonly EarlierLog[]): FiringHistory {
  const { kept, leftOut } = parted(now, earlier);
  const used = inOrder(kept);
  const { kiln, why } = learned(now, used);
  const sameProbe = used.filter((past) => isSameProbe(past, now));
  const offsets = sameProbe.flatMap(({ offset }) => (offset === null ? [] : [offset]));
  const drift = thermocoupleDrift(now.offset, offsets);
  const changes = kiln === null ? { weakerBy: null, findings: [] } : kilnChanges(kiln, now.name);
  return {
    used,
    leftOut,
    kiln,
    weakerBy: changes.weakerBy,
    drift,
    findings: historyFindings({
      now,
      used: used.map(({ name }) => name),
      leftOut,
      unnamed: used.filter(({ firing }) => !firing.kiln).map(({ name }) => name),
      otherProbes: used.filter((past) => !isSameProbe(past, now)).map(({ name }) => name),
      drift,
      trend: offsetTrend([...offsets, ...(now.offset === null ? [] : [now.offset])]),
      whyNoKiln: why,
      changes: changes.findings,
    }),
  };
}

interface Kept extends PastFiring {
  readonly firing: KilnFiring;
}

function parted(
  now: PastFiring,
  earlier: readonly EarlierLog[],
): { readonly kept: readonly Kept[]; readonly leftOut: readonly LeftOut[] } {
  const kept: Kept[] = [];
  const leftOut: LeftOut[] = [];
  const named = now.firing?.kiln ?? onlyKiln(earlier);
  for (const log of earlier) {
    const why = reasonAgainst(log, now, named);
    const seen = kept.some((other) => isSameLog(other, log));
    if (why !== null || seen) leftOut.push({ name: log.name, why: why ?? "it was given twice" });
    else kept.push(log as Kept);
  }
  return { kept, leftOut };
}

/** The kiln that earlier logs name, when all that name one name the same; `several` otherwise. */
function onlyKiln(earlier: readonly EarlierLog[]): string | null | "several" {
  const kilns = new Set(
    earlier.flatMap((log) => ("broken" in log || !log.firing?.kiln ? [] : [log.firing.kiln])),
  );
  return kilns.size > 1 ? "several" : ([...kilns][0] ?? null);
}

function reasonAgainst(log: EarlierLog, now: PastFiring, named: string | null): string | null {
  if ("broken" in log) return `it could not be read: ${log.broken}`;
  const { firing } = log;
  if (firing === null) return "it holds no temperature";
  if (isSameLog(log, now)) return "it is this firing itself";
  if (firing.kiln && named !== null && firing.kiln !== named)
    return now.firing?.kiln
      ? `its record names another kiln, ${firing.kiln}`
      : `its record names the kiln ${firing.kiln}, other records name others, and this firing's names none`;
  const began = now.firing?.start ?? null;
  if (began !== null && firing.start !== null && firing.start >= began)
    return "it did not begin before this firing";
  const [lack] = tooLittle([firing]);
  return lack === undefined ? null : lack.what;
}

function isSameLog(
  one: { readonly name: string; readonly firing: KilnFiring | null },
  other: EarlierLog,
): boolean {
  if ("broken" in other || one.firing === null || other.firing === null) return false;
  return one.name === other.name && one.firing.start === other.firing.start;
}

/** By wall time where every log has one; otherwise as given, this firing being the newest anyway. */
function inOrder(kept: readonly Kept[]): readonly Kept[] {
  if (kept.some(({ firing }) => firing.start === null)) return kept;
  return kept.toSorted((a, b) =>
    (a.firing.start as string) < (b.firing.start as string) ? -1 : 1,
  );
}

function learned(
  now: PastFiring,
  used: readonly Kept[],
): { readonly kiln: LearnedKiln | null; readonly why: string | null } {
  if (now.firing === null || used.length === 0) return { kiln: null, why: null };
  const result = learnKiln([...used.map(({ firing }) => firing), now.firing]);
  if (result.ok) return { kiln: result.value, why: null };
  return { kiln: null, why: result.problems.map(({ what }) => what).join("; ") };
}

function isSameProbe(past: PastFiring, now: PastFiring): boolean {
  return past.thermocouple === null || now.thermocouple === null
    ? true
    : past.thermocouple === now.thermocouple;
}

/**
 * How the middle of what witness cones allow moved from the median of earlier firings to this one.
 * The interval holds whatever the cones allow: the median of numbers that each lie in an interval
 * lies between the medians of the lower and of the upper ends.
 *
 * @returns null when this firing's cones, or those of all earlier ones, bound it on one side only.
 */
function thermocoupleDrift(
  now: WitnessOffset | null,
  earlier: readonly WitnessOffset[],
): ThermocoupleDrift | null {
  if (now === null || now.lowK === null || now.highK === null) return null;
  const past = pastOffset(earlier);
  if (past === null) return null;
  const pinned = earlier.flatMap(({ lowK, highK }) =>
    lowK === null || highK === null ? [] : [{ lowK, highK }],
  );
  const nowK = 0.5 * (now.lowK + now.highK);
  const beforeK = medianInPlace(pinned.map(({ lowK, highK }) => 0.5 * (lowK + highK)));
  return {
    earlier: past,
    nowK,
    beforeK,
    driftK: nowK - beforeK,
    lowK: now.lowK - medianInPlace(pinned.map(({ highK }) => highK)),
    highK: now.highK - medianInPlace(pinned.map(({ lowK }) => lowK)),
  };
}

/** A firing, as far as it says something about its kiln and its thermocouple. */
export interface PastFiring {
  /** Name of its log. */
  readonly name: string;
  /** As a person gave it, to give it on to another command; null when it came from no file. */
  readonly path: string | null;
  /** Null when its log holds no temperature. */
  readonly firing: KilnFiring | null;
  /** From its witness cones; null without them. */
  readonly offset: WitnessOffset | null;
  /** Type of the thermocouple as its record says. */
  readonly thermocouple: string | null;
}

/** A log that was given as an earlier one: what it says, or why it could not be read. */
export type EarlierLog = PastFiring | { readonly name: string; readonly broken: string };

/** A firing with the earlier ones of its kiln. */
export interface FiringHistory {
  /** What was compared with, oldest first where their starts are known. */
  readonly used: readonly PastFiring[];
  readonly leftOut: readonly { readonly name: string; readonly why: string }[];
  /** The kiln by all of them and this firing; null when they do not show it. */
  readonly kiln: LearnedKiln | null;
  /** Share by which the elements pull less than in the strongest earlier firing; null when not told. */
  readonly weakerBy: number | null;
  /** The thermocouple against the earlier firings [K]; null when that cannot be told. */
  readonly drift: ThermocoupleDrift | null;
  /** What has changed, what cannot be told, and what was left out. */
  readonly findings: readonly Finding[];
}

/** The middle of what this firing's cones allow, minus the median of earlier ones. */
export interface ThermocoupleDrift {
  readonly earlier: PastOffset;
  readonly nowK: number;
  /** Median of the earlier firings [K]. */
  readonly beforeK: number;
  readonly driftK: number;
  /** What the witness cones of all these firings allow [K]. */
  readonly lowK: number;
  readonly highK: number;
}
