import type { DiagnosedCause } from "./diagnosis/DiagnosedCause.ts";
import type { FiringFacts } from "./FiringFacts.ts";
import type { EarlierLog, FiringHistory, PastFiring } from "./FiringHistory.ts";
import { historyOf } from "./historyOf.ts";
import { kilnFiringOf } from "./kilnFiringOf.ts";
import type { NextTime, NextTimePaths } from "./nextTime/NextTime.ts";
import { nextTimeOf } from "./nextTime/nextTimeOf.ts";

/** What a firing is held against in time: those before it, and the one to come. */
interface BeforeAndNext {
  /** Null when no earlier logs were given. */
  readonly history: FiringHistory | null;
  /** Null when it was not asked for. */
  readonly nextTime: NextTime | null;
}

/** What has changed since earlier firings, and what to change in the next one. */
export function beforeAndNext(
  facts: FiringFacts,
  asked: {
    readonly diagnosis: readonly DiagnosedCause[];
    readonly earlier: readonly EarlierLog[];
    readonly next: NextTimePaths | null;
  },
): BeforeAndNext {
  const { reading, record, witness } = facts;
  const now: PastFiring = {
    name: reading.name,
    path: asked.next?.log ?? null,
    firing: kilnFiringOf(reading, record),
    offset: witness?.offset ?? null,
    thermocouple: record?.thermocouple?.type ?? null,
  };
  const history = asked.earlier.length === 0 ? null : historyOf(now, asked.earlier);
  const { diagnosis, next } = asked;
  return {
    history,
    nextTime: next && nextTimeOf(facts, { diagnosis, now, history }, next),
  };
}
