const PLAIN = /^[\w@%+=:,./-]+$/;

/** A word for a POSIX shell, in single quotes where it holds more than letters, digits and `-_./` and the like. */
export function shellQuoted(word: string): string {
  return PLAIN.test(word) ? word : `'${word.replaceAll("'", String.raw`'\''`)}'`;
}
