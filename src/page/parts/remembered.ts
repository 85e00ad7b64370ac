/** A function that gives the same object again for the same arguments as the last time. */
export function remembered<Given extends readonly unknown[], T>(
  make: (...given: Given) => T,
): (...given: Given) => T {
  let last: { readonly given: Given; readonly made: T } | null = null;
  return (...given) => {
    const isSame = last?.given.every((each, index) => Object.is(each, given[index]));
    if (last !== null && isSame) return last.made;
    last = { given, made: make(...given) };
    return last.made;
  };
}
