import type { Path } from '@tinwright/core';
import { startOf } from '@tinwright/page/internal';
import {
  type Alias,
  type Document,
  isAlias,
  isMap,
  isNode,
  isScalar,
  type Node,
  type Pair,
  visit,
  type YAMLMap,
} from 'yaml';

/** Finds where a value stands in a text, or its key when the key is at fault. */
export type OffsetOf = (path: Path, what: 'key' | 'value') => number;

/**
 * The offset of the deepest value on a path that the text has. Maps and aliases are looked through once, when they are
 * first passed: however many places are asked for, it takes no longer than the text is.
 */
export function offsets(document: Document): OffsetOf {
  const keys = new Map<YAMLMap, ReadonlyMap<string, Pair>>();
  let named: ReadonlyMap<Alias, Node> | null = null;
  const pairOf = (map: YAMLMap, step: string) => {
    const found = keys.get(map) ?? byKey(map);
    keys.set(map, found);
    return found.get(step);
  };
  const through = (node: unknown): unknown => {
    if (!isAlias(node)) return node;
    named ??= namedBy(document);
    return named.get(node);
  };
  return (path, what) => {
    let node: unknown = document.contents;
    let offset = startOf(node) ?? 0;
    for (const [i, step] of path.entries()) {
      node = through(node);
      const pair = isMap(node) ? pairOf(node, String(step)) : undefined;
      const next: unknown =
        pair === undefined
          ? (node as { get?: (k: unknown, keep: boolean) => unknown } | null)?.get?.(step, true)
          : pair.value;
      if (pair === undefined && next === undefined) break;
      const key = i === path.length - 1 && what === 'key' ? startOf(pair?.key) : undefined;
      offset = key ?? startOf(next) ?? startOf(pair?.key) ?? offset;
      node = next;
    }
    return offset;
  };
}

/** Pairs by their keys; the first of twins. */
function byKey({ items }: YAMLMap): ReadonlyMap<string, Pair> {
  const found = new Map<string, Pair>();
  for (const pair of items)
    if (isScalar(pair.key) && !found.has(String(pair.key.value))) found.set(String(pair.key.value), pair);
  return found;
}

/** What each alias stands for: the last node of its name before it. */
function namedBy(document: Document): ReadonlyMap<Alias, Node> {
  const anchors = new Map<string, Node>();
  const found = new Map<Alias, Node>();
  visit(document, (_, node) => {
    if (isAlias(node)) {
      const target = anchors.get(node.source);
      if (target !== undefined) found.set(node, target);
    } else if (isNode(node) && 'anchor' in node && node.anchor !== undefined) anchors.set(node.anchor, node);
  });
  return found;
}
