import { type Document, isAlias, isMap, isScalar, isSeq, visit, type YAMLMap } from "yaml";

/**
 * How many groups the merge keys (`<<`) of a document bring in, each counted as often as it is
 * brought: a few lines that merge each other twice would otherwise take for ever. Without end where
 * a group merges itself.
 */
export function mergedMaps(document: Document): number {
  const known = new Map<YAMLMap, number>();
  const within = (map: YAMLMap): number => {
    const before = known.get(map);
    if (before !== undefined) return before;
    known.set(map, Number.POSITIVE_INFINITY);
    const count = sourcesOf(document, map).reduce((sum, source) => sum + 1 + within(source), 0);
    known.set(map, count);
    return count;
  };
  let all = 0;
  visit(document, {
    Map: (_, map) => {
      all += within(map);
    },
  });
  return all;
}

/** The groups that the merge keys of a group name, one after the other. */
function sourcesOf(document: Document, map: YAMLMap): readonly YAMLMap[] {
  return map.items.flatMap(({ key, value }) => {
    if (!isScalar(key) || (key.value !== "<<" && typeof key.value !== "symbol")) return [];
    const given = resolved(document, value);
    const each = isSeq(given) ? given.items.map((item) => resolved(document, item)) : [given];
    return each.filter((one) => isMap(one));
  });
}

function resolved(document: Document, node: unknown): unknown {
  return isAlias(node) ? node.resolve(document) : node;
}
