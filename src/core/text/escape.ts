const SPACING = /[\t\n\v\f\r\u0085\u2028\u2029]+/g;
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to make harmless
const LOW_CONTROL = /[\u0000-\u001f\u007f]/g;
const UNSAFE = /[\u0080-\u009f\p{Cs}\p{Noncharacter_Code_Point}]|(?![\u200c\u200d])\p{Cf}/gu;

/**
 * Text from a file made harmless: it stays on its line and can command no terminal.
 * Line breaks and tabs become a space, control characters their visible pictures (`␛`), and what
 * could turn or hide the text around it becomes `�`. Ordinary text of any language is unchanged.
 */
export function inert(text: string): string {
  return text
    .replace(SPACING, " ")
    .replace(LOW_CONTROL, (character) => pictureOf(character.charCodeAt(0)))
    .replace(UNSAFE, "\uFFFD");
}

/** Unicode keeps a picture of each control character at U+2400 and up; delete is at U+2421. */
function pictureOf(code: number): string {
  return String.fromCharCode(code === 0x7f ? 0x2421 : 0x2400 + code);
}

/** Control characters but the line feed, and what turns or hides the text around it; not the joiners of words. */
const HIDDEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to escape
  /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u2029\p{Cs}\p{Noncharacter_Code_Point}]|(?![\u200c\u200d])\p{Cf}/gu;

/** Whether a text holds characters that could command a terminal, or turn or hide the text around them. */
export function hasHidden(text: string): boolean {
  return text.search(HIDDEN) >= 0;
}

/**
 * A JSON document, or the double-quoted parts of a YAML one, with hidden characters as `\u202e`: it
 * says the same to every reader of documents, and can be shown in any terminal.
 */
export function hiddenEscaped(text: string): string {
  return text.replace(HIDDEN, (character) =>
    Array.from({ length: character.length }, (_, i) => unitEscaped(character.charCodeAt(i))).join(
      "",
    ),
  );
}

function unitEscaped(code: number): string {
  return `\\u${code.toString(16).padStart(4, "0")}`;
}
