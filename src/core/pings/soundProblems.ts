import type { Problem } from "../problem.ts";
import type { Listening } from "./listener.ts";
import type { Ping } from "./Ping.ts";

/** Shorter recordings have no quiet level to measure against [s]. */
const SHORTEST_SECONDS = 10;

/** Nothing above this is silence [dBFS]: three steps of 16 bits. */
const SILENT_DBFS = -80;

/**
 * With more of all samples at full scale even the quiet between clicks is cut off, and nothing can
 * be measured against it. Clicks alone never come near: a hundred of them in a minute, each cut off
 * for 2 ms, are 0.3 %.
 */
const OVERDRIVEN_SHARE = 0.05;

/** What makes a recording useless for pings; empty when nothing does. */
export function soundProblems(heard: Listening, where: string): readonly Problem[] {
  if (heard.seconds < SHORTEST_SECONDS)
    return [
      {
        code: "sound/too-short",
        where,
        what: `it lasts ${heard.seconds.toFixed(1)} s`,
        expected: `at least ${SHORTEST_SECONDS} s, better hours: the quiet level is taken over ${heard.settings.floorSeconds} s`,
        fix: "record for longer",
      },
    ];
  if (heard.peakDbfs === null || heard.peakDbfs < SILENT_DBFS)
    return [
      {
        code: "sound/silent",
        where,
        what:
          heard.peakDbfs === null
            ? "it is silent throughout"
            : `its loudest sound above the hum is at ${heard.peakDbfs.toFixed(0)} dB of full scale`,
        expected: `some sound above ${SILENT_DBFS} dB of full scale`,
        fix: "check microphone and level; with two channels, try --channel right",
      },
    ];
  if (heard.fullScaleShare > OVERDRIVEN_SHARE)
    return [
      {
        code: "sound/overdriven",
        where,
        what: `${Math.round(heard.fullScaleShare * 100)} % of its samples are at full scale`,
        expected: `at most ${OVERDRIVEN_SHARE * 100} %; above, even the quiet between clicks is cut off`,
        fix: "record anew at a lower level",
      },
    ];
  return [];
}

/** What a file is, from its first bytes. */
export type SoundKind =
  | { readonly kind: "wav" }
  /** A sound file of another kind, by its name. */
  | { readonly kind: "other"; readonly name: string }
  | { readonly kind: "unknown" };

/** First bytes of sound files that are no WAV, and what to call them; from memory. */
const OTHERS: readonly (readonly [at: number, mark: string, name: string])[] = [
  [0, "OggS", "an Ogg file (Vorbis or Opus)"],
  [0, "fLaC", "a FLAC file"],
  [0, "ID3", "an MP3 file"],
  [0, "\u00ff\u00fb", "an MP3 file"],
  [0, "\u00ff\u00f3", "an MP3 file"],
  [4, "ftyp", "an MP4 or M4A file, as telephones record"],
  [0, "FORM", "an AIFF file"],
  [0, "caff", "a Core Audio file"],
  [0, "RIFX", "a WAV file with its bytes the other way round (RIFX)"],
  [0, "#!AMR", "an AMR file, as telephones record"],
  [0, "\u001aE\u00df\u00a3", "a WebM or Matroska file"],
];

/** What a file is, from its first twelve bytes and never from its name. */
export function soundKind(start: Uint8Array): SoundKind {
  const text = Array.from(start.subarray(0, 12), (byte) => String.fromCharCode(byte)).join("");
  const isRiff = ["RIFF", "RF64", "BW64"].some((mark) => text.startsWith(mark));
  if (isRiff && text.slice(8, 12) === "WAVE") return { kind: "wav" };
  const other = OTHERS.find(([at, mark]) => text.startsWith(mark, at));
  return other === undefined ? { kind: "unknown" } : { kind: "other", name: other[2] };
}

/** Share of pings at full scale from which a recording says nothing of how loud they are. Own choice. */
const MOST_CLIPPED = 0.5;
/** Pings from which a share can be told. */
const FEWEST = 4;

/** The problem of a recording in which most pings reach full scale; null where they do not. */
export function clippedProblem(pings: readonly Ping[], name: string): Problem | null {
  const clipped = pings.filter(({ isClipped }) => isClipped).length;
  if (pings.length < FEWEST || clipped <= MOST_CLIPPED * pings.length) return null;
  return {
    code: "pings/clipped",
    what: `${clipped} of ${pings.length} pings reach full scale: they were louder than recorded, and one may hide the next`,
    where: name,
    expected: "a recording in which most pings stay below full scale",
    fix: "record again at a lower level; or say --clipped to have the count as a lower bound, without loudness",
  };
}
