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
