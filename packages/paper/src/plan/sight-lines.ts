import type { FlatBend, Point } from '@tinwright/core';
import type { SightLine } from './pattern-ask.js';

/** Where the edge of a brake's nose stands for a bend: so far from the bend line towards the side that is clamped. mm */
export interface SightAsk {
  readonly bend: string;
  readonly held: 'parent' | 'flange';
  readonly offset: number;
}

/** Sight lines on the flat; those of bends the pattern lacks are left out. */
export function sightLines(bends: readonly FlatBend[], asks: readonly SightAsk[]): readonly SightLine[] {
  return asks.flatMap(({ bend, held, offset }) => {
    const found = bends.find((b) => b.id === bend);
    if (found === undefined) return [];
    const [a, b] = found.line;
    const l = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const across: Point = [-(b[1] - a[1]) / l, (b[0] - a[0]) / l];
    // without a zone both tangents lie on the bend line; the parent lies to its left then as in any bend
    const [parent] = found.tangents;
    const towards = (parent[0][0] - a[0]) * across[0] + (parent[0][1] - a[1]) * across[1];
    const by = offset * (towards < 0 ? -1 : 1) * (held === 'parent' ? 1 : -1);
    const moved = ([x, y]: Point): Point => [x + across[0] * by, y + across[1] * by];
    return [{ bend, line: [moved(a), moved(b)] as const }];
  });
}
