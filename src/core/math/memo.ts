/** Answers that were worked out last, by a key: they cost much, and the same ones are asked for. */
export interface LastAsked<T> {
  readonly of: (key: string, make: () => T) => T;
}

/** Keeps at most so many answers; the one that was asked for longest ago goes first. */
export function lastAsked<T>(most: number): LastAsked<T> {
  const known = new Map<string, T>();
  return {
    of: (key, make) => {
      const found = known.has(key) ? (known.get(key) as T) : make();
      known.delete(key);
      if (known.size >= most) known.delete(known.keys().next().value as string);
      known.set(key, found);
      return found;
    },
  };
}
