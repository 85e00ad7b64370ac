/** A row with one number and a word behind a delimiter: `511.2,lid`. */
const NOTED = /^\s*"?[+-]?\d[\d.,' \u00a0\u2009\u202f]*(?:\s?[°º]?[CFK])?"?([,;\t|])\s*"?[a-z]{2}/i;

/** Whether a delimiter stands between lone numbers and notes. */
export function isBeforeNotes(delimiter: string, records: readonly string[]): boolean {
  return records.some((record) => NOTED.exec(record)?.[1] === delimiter);
}
