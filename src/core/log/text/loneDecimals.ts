/** A line with one number, its fraction behind a comma, perhaps with a unit and a last delimiter. */
const LONE = /^\s*"?[+-]?\d[\d.' \u00a0\u2009\u202f]*,\d+(?:\s?[°º]?[CFK])?"?\s*[;|]?\s*$/;
/** Rows from which commas can be judged. */
const LEAST_ROWS = 10;
/** Share of the lines that begin with a digit and hold a comma which must be such. */
const MOSTLY = 0.9;
/** Share of steps between the whole numbers that are alike, from which these count a time. */
const EVEN_SHARE = 0.8;

/**
 * Whether a log has one column of numbers with decimal commas, and none beside it: each row is one
 * such number, and its whole part does not count evenly as a time would.
 */
export function isLoneDecimals(records: readonly string[]): boolean {
  const begun = records.filter((record) => /^\s*"?[+-]?\d/.test(record) && record.includes(","));
  const rows = begun.filter((record) => LONE.test(record));
  if (rows.length < LEAST_ROWS || rows.length < MOSTLY * begun.length) return false;
  const whole = rows.map((row) => Number((row.split(",")[0] ?? "").replace(/[^\d-]/g, "")));
  const steps = whole.slice(1).map((value, i) => value - (whole[i] as number));
  const usual = [...steps].sort((a, b) => a - b)[steps.length >> 1] as number;
  const even = steps.filter((step) => step === usual && step !== 0);
  return even.length < EVEN_SHARE * steps.length;
}
