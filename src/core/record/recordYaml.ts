import {
  Document,
  isCollection,
  isMap,
  isNode,
  isPair,
  isScalar,
  isSeq,
  type Node,
  parseDocument,
  visit,
  type YAMLMap,
  type YAMLSeq,
} from "yaml";
import type { FiringRecordFile } from "./recordFormat.ts";

/**
 * A firing record as the text of its file; `parseRecordFile` reads it back the same.
 * Where a text is given that it was read from, everything in it that has not changed stays as a person
 * wrote it, comments and order included; a text in JSON stays JSON.
 */
export function recordYaml(file: FiringRecordFile, was: string | null): string {
  const value = plain(file);
  if (was === null) return printed(new Document(value, { aliasDuplicateObjects: false }));
  const document = parseDocument(was);
  if (document.errors.length > 0 || !isMap(document.contents)) return recordYaml(file, null);
  if (same(withUnit(plain(document.toJS())), withUnit(value))) return was;
  if (/^\s*\{/.test(was)) return `${JSON.stringify(value, null, 2)}\n`;
  withoutAliases(document);
  const kept = "unit" in plain(document.toJS()) || file.unit !== "C" ? value : withoutUnit(value);
  changeMap(document, document.contents as YAMLMap, kept);
  return printed(document);
}

type Values = Readonly<Record<string, unknown>>;

/** The same values without keys that hold nothing. */
function plain(value: unknown): Values {
  return JSON.parse(JSON.stringify(value)) as Values;
}

/** The unit that holds where a file names none. */
function withUnit(value: Values): Values {
  return { unit: "C", ...value };
}

function withoutUnit({ unit: _, ...rest }: Values): Values {
  return rest;
}

function printed(document: Document | ReturnType<typeof parseDocument>): string {
  return document.toString({ lineWidth: 0 });
}

/** Puts what an alias stands for in its place, so that a change in one place is none in another. */
function withoutAliases(document: ReturnType<typeof parseDocument>): void {
  const plainNode = (value: unknown) =>
    document.createNode(value, { aliasDuplicateObjects: false }) as Node;
  visit(document, { Alias: (_, alias) => plainNode(alias.toJS(document)) });
  visit(document, {
    Node: (_, node) => {
      if (isCollection(node) || isScalar(node)) delete node.anchor;
    },
  });
}

type Doc = ReturnType<typeof parseDocument>;

function changeMap(document: Doc, map: YAMLMap, value: Values): void {
  map.items = map.items.filter((pair) => isPair(pair) && keyOf(pair.key) in value);
  for (const [key, wanted] of Object.entries(value)) {
    const found = map.items.find((pair) => keyOf(pair.key) === key);
    if (found === undefined) map.items.push(document.createPair(key, wanted));
    else found.value = changed(document, found.value, wanted);
  }
}

function keyOf(key: unknown): string {
  return String(isScalar(key) ? key.value : key);
}

/** The node with another value: itself where it can hold it, else a new one with its comments. */
function changed(document: Doc, node: unknown, value: unknown): unknown {
  if (!isNode(node)) return document.createNode(value);
  if (same(node.toJS(document), value)) return node;
  if (isMap(node) && isGroup(value)) {
    changeMap(document, node, value);
    return node;
  }
  if (isSeq(node) && Array.isArray(value)) {
    changeList(document, node, value);
    return node;
  }
  if (isScalar(node) && typeof node.value === "string" && typeof value === "string") {
    node.value = value;
    return node;
  }
  const made = document.createNode(value) as Node;
  made.comment = node.comment ?? null;
  made.commentBefore = node.commentBefore ?? null;
  return made;
}

/** Items that are still there keep their comments; between them, those at one place change. */
function changeList(document: Doc, list: YAMLSeq, value: readonly unknown[]): void {
  const items = list.items as Node[];
  const before = items.map((item) => item.toJS(document));
  const head = value.findIndex((item, at) => at >= items.length || !same(before[at], item));
  const start = head === -1 ? Math.min(value.length, items.length) : head;
  let tail = 0;
  const most = Math.min(value.length, items.length) - start;
  while (tail < most && same(before[items.length - 1 - tail], value[value.length - 1 - tail]))
    tail++;
  const middle = value.slice(start, value.length - tail).map((item, at) => {
    const old = start + at < items.length - tail ? items[start + at] : undefined;
    return old === undefined ? document.createNode(item) : changed(document, old, item);
  });
  list.items = [...items.slice(0, start), ...middle, ...items.slice(items.length - tail)];
}

function isGroup(value: unknown): value is Values {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Equal as values, whatever the order of their keys. */
function same(a: unknown, b: unknown): boolean {
  if (Array.isArray(a) && Array.isArray(b))
    return a.length === b.length && a.every((item, at) => same(item, b[at]));
  if (!isGroup(a) || !isGroup(b)) return Object.is(a, b);
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length && keys.every((key) => key in b && same(a[key], b[key]))
  );
}
