import type { PlannedFiring } from "./PlannedFiring.ts";

/**
 * Firings whose records can be told apart by name. A firing that is given twice keeps its record the
 * first time only, so that no tile counts twice; records of one name from several folders are numbered.
 */
export function namedApart(firings: readonly PlannedFiring[]): readonly PlannedFiring[] {
  return firings.map((firing, at) => {
    const { record } = firing;
    if (record === null) return firing;
    const before = firings.slice(0, at).filter((other) => other.record?.name === record.name);
    if (before.some((other) => isSame(other, firing))) return { ...firing, record: null };
    return before.length === 0
      ? firing
      : { ...firing, record: { ...record, name: `${record.name} (${before.length + 1})` } };
  });
}

function isSame(one: PlannedFiring, other: PlannedFiring): boolean {
  return (
    one.record?.title === other.record?.title &&
    one.review.reading.name === other.review.reading.name &&
    one.review.reading.start === other.review.reading.start
  );
}
