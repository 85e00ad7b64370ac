import type { Evidence } from "../../findings/Finding.ts";
import type { FoundOnWare, RecordedTrial } from "../FiringRecord.ts";
import type { CrackFacts, InversionStress } from "./crackFacts.ts";
import type { EvidenceRule } from "./EvidenceRule.ts";
import type { HeardSound, SoundPhase } from "./heardSounds.ts";

/** When the facts give an answer, and with which numbers. */
type Seen = EvidenceRule["seen"];

/** Seen, without a number. */
export const given = (holds: (facts: CrackFacts) => boolean): Seen => {
  return (facts) => (holds(facts) ? [] : null);
};

/** At least one piece was found so. */
export const foundWith = <K extends keyof FoundOnWare>(
  key: K,
  ...values: readonly FoundOnWare[K][]
): Seen => given(({ found }) => found.some((piece) => values.includes(piece[key])));

/** A piece was found with one of these kinds of crack, first seen at one of these times. */
export const foundFirst = (
  what: readonly FoundOnWare["what"][],
  when: readonly FoundOnWare["when"][],
): Seen => given(({ found }) => found.some((f) => what.includes(f.what) && when.includes(f.when)));

/** A crack through the wall was found or a test piece has one. */
export function hasThroughCrack({ found, trials }: CrackFacts): boolean {
  return (
    found.some(({ what }) => what === "through-crack") ||
    trials.some(({ cracked }) => cracked === "through")
  );
}

/** Crackle was found or a test piece has it. */
export function hasCrackle({ found, trials }: CrackFacts): boolean {
  return (
    found.some(({ what }) => what === "crackle") ||
    trials.some(({ cracked }) => cracked === "crackle")
  );
}

/** A sound of this kind was heard in one of these phases: the first, with its moment and heat. */
export const heardIn = (kind: HeardSound["kind"], ...phases: readonly SoundPhase[]): Seen => {
  return ({ sounds }) => {
    const sound = sounds.find((each) => each.kind === kind && phases.includes(each.phase));
    return sound ? soundEvidence(sound) : null;
  };
};

/** A sound of this kind so long after the kiln was opened [h]. */
export const heardAfterOpening = (
  kind: HeardSound["kind"],
  hours: { readonly from: number; readonly below: number },
): Seen => {
  return ({ sounds }) => {
    for (const sound of sounds) {
      const since = sound.sinceOpeningSeconds;
      if (sound.kind !== kind || since === null) continue;
      if (since >= hours.from * 3600 && since < hours.below * 3600)
        return [...soundEvidence(sound), { name: "since", value: since, kind: "duration" }];
    }
    return null;
  };
};

/** The same, when the kiln was opened above a temperature [°C], which must be known. */
export const heardSoonAfterOpening = (
  kind: HeardSound["kind"],
  opened: { readonly aboveC?: number; readonly upToC?: number },
): Seen => {
  const soon = heardAfterOpening(kind, { from: 0, below: 2 });
  return (facts) => {
    if (facts.openedC === null) return null;
    if (opened.aboveC !== undefined && facts.openedC <= opened.aboveC) return null;
    if (opened.upToC !== undefined && facts.openedC > opened.upToC) return null;
    const sound = soon(facts);
    return sound && [...sound, openedEvidence(facts.openedC)];
  };
};

/** Opened above one temperature and up to another [°C]. */
export const openedBetween = (aboveC: number, upToC: number): Seen => {
  return ({ openedC }) =>
    openedC !== null && openedC > aboveC && openedC <= upToC ? [openedEvidence(openedC)] : null;
};

/** An inversion was passed at so many times its limit. */
export const passedAt = (
  which: "quartz" | "cristobalite",
  times: { readonly above: number; readonly upTo: number },
): Seen => {
  return (facts) => {
    const stress = facts[which];
    return stress && stress.timesLimit > times.above && stress.timesLimit <= times.upTo
      ? stressEvidence(stress)
      : null;
  };
};

/** Counts of test pieces, when the condition on them holds. */
export const trialsWhere = (
  holds: (counts: { readonly through: Sides; readonly whole: Sides }) => boolean,
): Seen => {
  return ({ trials }) => {
    const through = sidesOf(trials.filter(({ cracked }) => cracked === "through"));
    const whole = sidesOf(
      trials.filter(({ cracked }) => cracked === "crackle" || cracked === "none"),
    );
    if (!holds({ through, whole })) return null;
    return [
      { name: "through on one side", value: through.one, kind: "count" },
      { name: "through on both", value: through.both, kind: "count" },
      { name: "whole on one side", value: whole.one, kind: "count" },
      { name: "whole on both", value: whole.both, kind: "count" },
    ];
  };
};

/** How many test pieces are glazed on one side, and how many on both. */
interface Sides {
  readonly one: number;
  readonly both: number;
}

function sidesOf(trials: readonly RecordedTrial[]): Sides {
  const one = trials.filter(({ glazedSides }) => glazedSides === "one").length;
  return { one, both: trials.length - one };
}

function soundEvidence({ atSeconds, tempC }: HeardSound): readonly Evidence[] {
  return [
    { name: "heard at", value: atSeconds, kind: "elapsed" },
    ...(tempC === null ? [] : [{ name: "heat", value: tempC, kind: "temperature" } as const]),
  ];
}

function openedEvidence(openedC: number): Evidence {
  return { name: "opened", value: openedC, kind: "temperature" };
}

function stressEvidence({ timesLimit, fastestCPerHour }: InversionStress): readonly Evidence[] {
  return [
    { name: "fastest", value: fastestCPerHour, kind: "rate" },
    { name: "times", value: timesLimit, kind: "cones" },
  ];
}
