/**
 * The next value with every part of the one before that is equal to its own: what did not change
 * stays the same object, so that nothing is worked out again for it.
 */
export function reconciled<T>(before: unknown, next: T): T {
  if (Object.is(before, next)) return next;
  if (next instanceof Uint8Array) return isSameBytes(before, next) ? (before as T) : next;
  if (typeof next !== "object" || next === null || !isLike(before, next)) return next;
  const was = before as Readonly<Record<string, unknown>>;
  const entries = Object.entries(next).map(
    ([key, value]) => [key, reconciled(was[key], value)] as const,
  );
  const isSame =
    entries.length === Object.keys(was).length &&
    entries.every(([key, value]) => key in was && Object.is(value, was[key]));
  if (isSame) return before as T;
  return (
    Array.isArray(next) ? entries.map(([, value]) => value) : Object.fromEntries(entries)
  ) as T;
}

function isLike(before: unknown, next: object): boolean {
  return (
    typeof before === "object" && before !== null && Array.isArray(before) === Array.isArray(next)
  );
}

function isSameBytes(before: unknown, next: Uint8Array): boolean {
  return (
    before instanceof Uint8Array &&
    before.length === next.length &&
    next.every((byte, at) => byte === before[at])
  );
}
