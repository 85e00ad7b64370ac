/** What a delimiter is called in front of a person. */
export function delimiterName(delimiter: string): string {
  const names: Readonly<Record<string, string>> = {
    ",": "comma",
    ";": "semicolon",
    "\t": "tab",
    "|": "bar",
    " ": "runs of blanks",
    "  ": "runs of two or more blanks",
  };
  return Object.hasOwn(names, delimiter) ? (names[delimiter] as string) : `"${delimiter}"`;
}
