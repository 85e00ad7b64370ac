import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../../ware/inversionBands.ts";
import type { FiringFacts } from "../FiringFacts.ts";
import { hottestZone } from "../hottestZone.ts";
import type { PlacedSound } from "../placedMoments.ts";

/** Where in the firing a sound falls; `unknown` in a gap and outside the readings. */
export type SoundPhase =
  | "heating"
  | "above the inversions"
  | "quartz"
  | "between the inversions"
  | "cristobalite"
  | "below the inversions"
  | "after opening"
  | "unknown";

/** A sound as evidence. */
export interface HeardSound {
  /** A single crack or knock, glaze pinging, or words that say neither. */
  readonly kind: "crack" | "pinging" | "other";
  readonly phase: SoundPhase;
  /** Of the hottest zone [°C]; null when not known. */
  readonly tempC: number | null;
  readonly atSeconds: number;
  /** Since the kiln was opened [s]; null before, and when that is not known. */
  readonly sinceOpeningSeconds: number | null;
}

const PINGING = /\b(ping|ting|tink|tick|chime|crackl)/i;
const CRACK = /\b(crack(?!l)|knock|bang|snap|split|thud|pop|burst)/i;

/** What was heard, as evidence, in order of time. */
export function heardSounds(facts: FiringFacts): readonly HeardSound[] {
  const opened = facts.unloading?.atSeconds ?? null;
  return facts.heard.map((sound) => ({
    kind: kindOf(sound.what),
    phase: phaseOf(sound, facts, opened),
    tempC: sound.tempC,
    atSeconds: sound.atSeconds,
    sinceOpeningSeconds:
      opened === null || sound.atSeconds < opened ? null : sound.atSeconds - opened,
  }));
}

function kindOf(what: string): HeardSound["kind"] {
  if (PINGING.test(what)) return "pinging";
  return CRACK.test(what) ? "crack" : "other";
}

function phaseOf(sound: PlacedSound, facts: FiringFacts, opened: number | null): SoundPhase {
  if (opened !== null && sound.atSeconds >= opened) return "after opening";
  if (sound.tempC === null) return "unknown";
  if (sound.atSeconds < hottestZone(facts.zones).peakAtSeconds) return "heating";
  return coolingPhase(sound.tempC);
}

function coolingPhase(tempC: number): SoundPhase {
  if (tempC > QUARTZ_BAND.highC) return "above the inversions";
  if (tempC >= QUARTZ_BAND.lowC) return "quartz";
  if (tempC > CRISTOBALITE_BAND.highC) return "between the inversions";
  return tempC >= CRISTOBALITE_BAND.lowC ? "cristobalite" : "below the inversions";
}
