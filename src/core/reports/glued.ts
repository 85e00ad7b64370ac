const NUMBER_AND_UNIT = /(?<=\d) (?=(?:°[CF]|%|h|min|s|mm|kWh|cones?)(?![\p{L}\d]))/gu;
const NAMED_NUMBER = /(?<=\b(?:day|cone)) (?=\d)/g;
const SIGN_AND_NUMBER = /(?<=[±×÷]|\d \+) (?=\d)|(?<=\d) (?=\+ \d)/g;

/** The space that never breaks a line. */
export const HARD_SPACE = "\u00a0";

/** Text in which a number keeps its unit beside it, whatever the line is broken into. */
export function glued(text: string): string {
  return text
    .replace(NUMBER_AND_UNIT, HARD_SPACE)
    .replace(NAMED_NUMBER, HARD_SPACE)
    .replace(SIGN_AND_NUMBER, HARD_SPACE);
}
