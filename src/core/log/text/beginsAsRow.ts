/** How a row begins: with a digit, with the name of a day or a month before one, or with a span as `PT2H`. */
const BEGINNING = /^\s*(?:[a-zà-ÿ]{2,10}[.,]?\s+|pt?)?[\d+-]/i;

/** Whether a text begins as a row of readings does. */
export function beginsAsRow(text: string): boolean {
  return BEGINNING.test(text);
}
