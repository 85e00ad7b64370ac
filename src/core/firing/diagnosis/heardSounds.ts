import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../../ware/inversionBands.ts";
import type { FiringFacts } from "../FiringFacts.ts";
import { hottestZone } from "../hottestZone.ts";
import { type SoundKind, soundKind } from "../soundKind.ts";

/** Where in the firing a sound falls; `unknown` in a gap and outside the readings. */
type SoundPhase =
  | "heating"
  | "above the inversions"
  | "quartz"
  | "between the inversions"
  | "cristobalite"
  | "below the inversions"
  | "after opening"
  | "long after opening"
  | "unknown";

/** A sound as evidence; where its day or its phase is not sure it stands in each, with a share. */
export interface HeardSound {
  readonly kind: SoundKind;
  readonly phase: SoundPhase;
  /** Of the hottest zone [°C]; null when not known. */
  readonly tempC: number | null;
  readonly atSeconds: number;
  /** Since the kiln was opened [s]; null before, and when that is not known. */
  readonly sinceOpeningSeconds: number | null;
  readonly share: number;
}

/** Ware is evenly cool so long after the kiln was opened [s]; our own estimate. */
export const COOL_SECONDS = 7200;

/** What was heard, as evidence, in order of time. */
export function heardSounds(facts: FiringFacts): readonly HeardSound[] {
  return facts.heard.flatMap((sound) => {
    const places = sound.orElse === null ? [sound] : [sound, sound.orElse];
    return places.flatMap(({ atSeconds, tempC }) => {
      const opened = openedSeconds(facts);
      const since = opened === null || atSeconds < opened ? null : atSeconds - opened;
      return phasesOf(atSeconds, { tempC, since, facts }).map(({ phase, share }) => ({
        kind: soundKind(sound.what),
        phase,
        tempC,
        atSeconds,
        sinceOpeningSeconds: since,
        share: share / places.length,
      }));
    });
  });
}

/** When the kiln was opened; where nobody says it, a log that ends cool ends with it. */
function openedSeconds({ opening, zones }: FiringFacts): number | null {
  if (opening.atSeconds !== null) return opening.atSeconds;
  const { lastReadingAtSeconds, lastReadingC } = hottestZone(zones);
  return lastReadingC <= COOL_END_C ? lastReadingAtSeconds : null;
}

/** A log that ends below this was followed to the opening of the kiln [°C]; our own estimate. */
const COOL_END_C = 110;

/** The phases that a moment may belong to, the likeliest first; their shares make 1. */
function phasesOf(
  atSeconds: number,
  at: { readonly tempC: number | null; readonly since: number | null; readonly facts: FiringFacts },
): readonly { readonly phase: SoundPhase; readonly share: number }[] {
  const sure = (phase: SoundPhase) => [{ phase, share: 1 }];
  if (at.since !== null)
    return sure(at.since < COOL_SECONDS ? "after opening" : "long after opening");
  if (at.tempC === null) return sure("unknown");
  if (atSeconds < hottestZone(at.facts.zones).peakAtSeconds) return sure("heating");
  return coolingPhases(at.tempC)
    .filter(({ share }) => share > LEAST_SHARE)
    .toSorted((a, b) => b.share - a.share);
}

/** Ware follows the kiln so much later, and an inversion has no sharp edge [K]; our own estimates. */
const BEHIND_K = 20;
const EDGE_K = 8;
const LEAST_SHARE = 0.02;

/** An inversion is left by degrees: the thick parts of the ware are still in it when the kiln is past it. */
function coolingPhases(
  tempC: number,
): readonly { readonly phase: SoundPhase; readonly share: number }[] {
  const below = (edgeC: number) => 1 / (1 + Math.exp((tempC - edgeC) / EDGE_K));
  const intoQuartz = below(QUARTZ_BAND.highC);
  const outOfQuartz = below(QUARTZ_BAND.lowC - BEHIND_K);
  const intoCristobalite = below(CRISTOBALITE_BAND.highC);
  const outOfCristobalite = below(CRISTOBALITE_BAND.lowC - BEHIND_K);
  return [
    { phase: "above the inversions", share: 1 - intoQuartz },
    { phase: "quartz", share: intoQuartz - outOfQuartz },
    { phase: "between the inversions", share: outOfQuartz - intoCristobalite },
    { phase: "cristobalite", share: intoCristobalite - outOfCristobalite },
    { phase: "below the inversions", share: outOfCristobalite },
  ];
}
