import type { Crossing } from "../../ware/Crossing.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../../ware/inversionBands.ts";
import type { FiringFacts } from "../FiringFacts.ts";
import type { FoundOnWare, RecordedTrial, RecordedWare } from "../FiringRecord.ts";
import { type HeardSound, heardSounds } from "./heardSounds.ts";

/** How hard the ware was cooled through one inversion, in the zone where it was hardest. */
export interface InversionStress {
  /** Fastest sustained rate over its limit, computed or published. */
  readonly timesLimit: number;
  /** Positive [°C/h]. */
  readonly fastestCPerHour: number;
}

/** All that the evidence rules look at. */
export interface CrackFacts {
  /** null when it was not measured. */
  readonly quartz: InversionStress | null;
  readonly cristobalite: InversionStress | null;
  /** How hot the kiln was when it was opened; null when not known. */
  readonly openedC: number | null;
  readonly sounds: readonly HeardSound[];
  readonly trials: readonly RecordedTrial[];
  readonly found: readonly FoundOnWare[];
  /** How the ware went in, as far as the record says. */
  readonly states: readonly NonNullable<RecordedWare["state"]>[];
}

/** The facts of a firing that bear on its cracks. */
export function crackFacts(facts: FiringFacts): CrackFacts {
  const { record, unloading } = facts;
  return {
    quartz: hardest(facts, QUARTZ_BAND.name),
    cristobalite: hardest(facts, CRISTOBALITE_BAND.name),
    openedC: unloading?.tempC ?? null,
    sounds: heardSounds(facts),
    trials: record?.trials ?? [],
    found: record?.found ?? [],
    states: (record?.ware ?? []).flatMap(({ state }) => (state === null ? [] : [state])),
  };
}

/** Whether anything was heard, or found on the ware, that asks for an explanation. */
export function hasSomethingToWeigh({ sounds, trials, found }: CrackFacts): boolean {
  return (
    sounds.length > 0 ||
    trials.some(({ cracked }) => cracked === "crackle" || cracked === "through") ||
    found.some(({ what, rings }) => what !== null || rings === "dull")
  );
}

function hardest(facts: FiringFacts, band: string): InversionStress | null {
  const stresses = facts.zones
    .flatMap((zone) => zone.crossings)
    .filter((crossing) => crossing.band === band && crossing.direction === "cooling")
    .flatMap(stressOf);
  return stresses.reduce<InversionStress | null>(
    (worst, each) => (worst && worst.timesLimit >= each.timesLimit ? worst : each),
    null,
  );
}

function stressOf(crossing: Crossing): readonly InversionStress[] {
  const { limitCPerHour } = crossing;
  if (crossing.fastestCPerHour === null) return [];
  const fastestCPerHour = Math.abs(crossing.fastestCPerHour);
  if (limitCPerHour === null) return [];
  return [{ timesLimit: fastestCPerHour / limitCPerHour, fastestCPerHour }];
}
