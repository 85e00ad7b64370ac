import { type Document, isScalar, type Node, visit, type YAMLMap } from "yaml";

/**
 * Keys that stand twice in one group, as places in the text [characters from its start].
 * Takes time as the text is long, where the parser's own check takes the square of it.
 */
export function repeatedKeys(document: Document): readonly number[] {
  const places: number[] = [];
  visit(document, {
    Map: (_, map) => {
      places.push(...repeatedIn(map));
    },
  });
  return places.sort((a, b) => a - b);
}

function repeatedIn(map: YAMLMap): readonly number[] {
  const seen = new Set<unknown>();
  return map.items.flatMap(({ key }) => {
    if (!isScalar(key)) return [];
    // A document as plain values has no other keys than words: 1 and "1" would be the same.
    const word = String(key.value);
    if (seen.has(word)) return [(key as Node).range?.[0] ?? 0];
    seen.add(word);
    return [];
  });
}
