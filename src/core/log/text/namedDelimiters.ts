/** Runs of two or more blanks, which stand between columns of fixed width. */
export const WIDE_BLANKS = "  ";

/** Marks between cells that are awkward to type or to see, by name. */
const BY_NAME: Readonly<Record<string, string>> = {
  tab: "\t",
  "\\t": "\t",
  blanks: " ",
  "wide blanks": WIDE_BLANKS,
  "wide-blanks": WIDE_BLANKS,
};

/** The mark that a person names, or the mark itself. */
export function delimiterNamed(told: string): string {
  return Object.hasOwn(BY_NAME, told) ? (BY_NAME[told] as string) : told;
}

/** What a person writes for a mark: its name where it has one. */
export function delimiterTold(delimiter: string): string {
  return Object.keys(BY_NAME).find((name) => BY_NAME[name] === delimiter) ?? delimiter;
}
