import type { Finding } from "../findings/Finding.ts";
import { quoted } from "../findings/findingText.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversionBands.ts";
import type { FiringFacts } from "./FiringFacts.ts";
import type { ZoneReview } from "./FiringReview.ts";
import { hottestZone } from "./hottestZone.ts";
import type { PlacedSound } from "./placedMoments.ts";

const BASIS =
  "what is known of how glaze and clay contract: glaze that fits badly cracks at any temperature below the one where it sets, clay cracks where its quartz or cristobalite changes; evidence to weigh, not a verdict";

/** What was heard, how hot it was then, and what that speaks for. */
export function heardFindings(facts: FiringFacts): readonly Finding[] {
  const zone = hottestZone(facts.zones);
  return facts.heard.map((sound) => {
    const opened = facts.opening.atSeconds;
    const words = speaksFor(sound, zone, opened !== null && sound.atSeconds >= opened);
    const note = sound.note === null ? "" : ` Noted: ${quoted(sound.note)}.`;
    return {
      topic: "what was heard",
      severity: "note",
      statement: `"${quoted(sound.what)}" was heard at {heard at}${sound.tempC === null ? "" : ", at {temperature}"}: ${words}.${note}`,
      evidence: [
        { name: "heard at", value: sound.atSeconds, kind: "elapsed" },
        ...(sound.tempC === null
          ? []
          : [{ name: "temperature", value: sound.tempC, kind: "temperature" } as const]),
        ...(sound.orElse?.tempC == null
          ? []
          : [{ name: "or else", value: sound.orElse.tempC, kind: "temperature" } as const]),
      ],
      basis: BASIS,
      advice: sound.orElse === null ? "" : sayTheDay(sound, facts),
      zone: null,
      span: { fromSeconds: sound.atSeconds, toSeconds: sound.atSeconds },
    };
  });
}

/** How to say which of two days was meant. */
function sayTheDay({ said, orElse }: PlacedSound, { reading }: FiringFacts): string {
  const date = reading.start?.slice(0, 10) ?? null;
  const how =
    date === null
      ? 'the time since the first reading, such as "+14:05"'
      : `its date before it: "${date} ${said}" or the day after`;
  return `${said} comes more than once in this log${orElse?.tempC == null ? "" : ", at {or else} the other time"}. Write ${how}.`;
}

function speaksFor(sound: PlacedSound, zone: ZoneReview, isOpened: boolean): string {
  const begin = zone.curve.timesSeconds[0] as number;
  if (isOpened) return openedWords(sound.tempC);
  if (sound.atSeconds < begin) return "before the first reading, so its temperature is not known";
  if (sound.atSeconds > zone.lastReadingAtSeconds)
    return "after the last reading, so its temperature is not known; cooler than that, it speaks for the fit of the glaze rather than for an inversion";
  if (sound.tempC === null) return "inside a gap in the readings, so its temperature is not known";
  if (sound.atSeconds < zone.peakAtSeconds)
    return "while the kiln was heating, when glaze is not yet pulled tight; it speaks for ware or shelves moving or cracking on the way up";
  return coolingWords(sound.tempC);
}

function openedWords(tempC: number | null): string {
  return tempC !== null && tempC >= CRISTOBALITE_BAND.lowC
    ? "after the kiln was opened, still hot enough for a draught to crack the wall (dunting); look for that first, and read nothing of the fit of the glaze from it"
    : "after the kiln was opened; a burst then comes of the draught and says little, pinging that goes on in ware that is evenly cool speaks for the fit of the glaze";
}

function coolingWords(tempC: number): string {
  if (tempC > QUARTZ_BAND.highC)
    return "hotter than both inversions, where most glazes are still soft; kiln and shelves make such sounds too";
  if (tempC >= QUARTZ_BAND.lowC)
    return "while passing the quartz inversion; look for a long crack through the wall (dunting) first, though glaze that fits badly may crack here as well";
  if (tempC > CRISTOBALITE_BAND.highC)
    return "between the inversions; that speaks for glaze crackle, and so early for a strong misfit of glaze and clay, rather than for dunting";
  if (tempC >= CRISTOBALITE_BAND.lowC)
    return "while passing the cristobalite inversion; look for a long crack through the wall (dunting) first, though glaze that fits badly cracks here as well";
  return "below both inversions; that speaks for glaze crackle from the fit of glaze and clay rather than for dunting";
}
