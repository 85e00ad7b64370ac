import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../../ware/inversionBands.ts";
import type { FiringFacts } from "../FiringFacts.ts";
import { hottestZone } from "../hottestZone.ts";
import { type SoundKind, soundKind } from "../soundKind.ts";

/** Where in the firing a sound falls; `unknown` in a gap and outside the readings. */
export type SoundPhase =
  | "heating"
  | "above the inversions"
  | "quartz"
  | "between the inversions"
  | "cristobalite"
  | "below the inversions"
  | "after opening"
  | "long after opening"
  | "unknown";

/** A sound as evidence; one whose day is not known stands in both places, each for half. */
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
    return places.map(({ atSeconds, tempC }) => {
      const opened = openedSeconds(facts);
      const since = opened === null || atSeconds < opened ? null : atSeconds - opened;
      return {
        kind: soundKind(sound.what),
        phase: phaseOf(atSeconds, { tempC, since, facts }),
        tempC,
        atSeconds,
        sinceOpeningSeconds: since,
        share: 1 / places.length,
      };
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

function phaseOf(
  atSeconds: number,
  at: { readonly tempC: number | null; readonly since: number | null; readonly facts: FiringFacts },
): SoundPhase {
  if (at.since !== null) return at.since < COOL_SECONDS ? "after opening" : "long after opening";
  if (at.tempC === null) return "unknown";
  if (atSeconds < hottestZone(at.facts.zones).peakAtSeconds) return "heating";
  return coolingPhase(at.tempC);
}

function coolingPhase(tempC: number): SoundPhase {
  if (tempC > QUARTZ_BAND.highC) return "above the inversions";
  if (tempC >= QUARTZ_BAND.lowC) return "quartz";
  if (tempC > CRISTOBALITE_BAND.highC) return "between the inversions";
  return tempC >= CRISTOBALITE_BAND.lowC ? "cristobalite" : "below the inversions";
}
