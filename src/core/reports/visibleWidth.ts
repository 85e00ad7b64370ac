// biome-ignore lint/suspicious/noControlCharactersInRegex: a colour code starts with the escape character
const COLOUR_CODE = /\u001b\[[0-9;]*m/g;
const NO_WIDTH = /[\p{Mn}\p{Me}\p{Cf}]/u;
const TWO_COLUMNS =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}]|\p{Emoji_Presentation}/u;

/** Columns that a text takes in a terminal; colour codes take none, wide characters two. */
export function visibleWidth(text: string): number {
  let width = 0;
  for (const character of text.replace(COLOUR_CODE, "")) width += characterWidth(character);
  return width;
}

/** Columns that one character takes: 0, 1 or 2. */
export function characterWidth(character: string): number {
  if (character >= " " && character <= "~") return 1;
  if (NO_WIDTH.test(character)) return 0;
  return TWO_COLUMNS.test(character) ? 2 : 1;
}
