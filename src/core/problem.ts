/** A thing that a person can fix, in the four parts that every layer speaks. */
export interface Problem {
  /** Stable, greppable name: `schedule/zero-rate`. */
  readonly code: `${string}/${string}`;
  /** The fact, with the value that was found. */
  readonly what: string;
  /** File, then place: `a.yaml: segments[2].rate`, or `b.csv: row 412`. */
  readonly where: string;
  /** The rule, with its unit. */
  readonly expected: string;
  /** The next thing to do, in the imperative. */
  readonly fix: string;
}

/** What a step returns when a person's input can make it fail. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A result that worked. */
export function ok<T>(value: T): Result<T> {
  return { ok: true, value };
}

/** A result that a person has to mend; at least one problem. */
export function failed<T = never>(...problems: readonly Problem[]): Result<T> {
  if (problems.length === 0) throw new RangeError("failed: needs at least one problem");
  return { ok: false, problems };
}

/** A problem as three lines, however long they are. */
export function problemText(problem: Problem): string {
  return [
    `${problem.where}: ${problem.what}`,
    `  expected  ${problem.expected}`,
    `  try       ${problem.fix}     (${problem.code})`,
  ].join("\n");
}
