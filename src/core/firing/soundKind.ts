/** What kind of sound words name: a single crack or knock, glaze pinging, or neither. */
export type SoundKind = "crack" | "pinging" | "other";

const PINGING = /\b(ping|ting|tink|tick|chime|crackl|tinkl|singing)/i;
const CRACK = /\b(crack(?!l)|knock|bang|snap|split|thud|pop|burst|broke|shot)/i;

/** The kind of a sound by the words that a person wrote for it. */
export function soundKind(what: string): SoundKind {
  if (PINGING.test(what)) return "pinging";
  return CRACK.test(what) ? "crack" : "other";
}
