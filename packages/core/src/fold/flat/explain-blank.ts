import { place } from '../../plane/frame.js';
import type { FlatBend, FlatPattern } from './flat.js';

/** One step across the blank: an outside leg, or what a bend takes off. mm */
export type BlankTerm =
  | { readonly kind: 'leg'; readonly panel: string; readonly length: number }
  | { readonly kind: 'bend'; readonly bend: FlatBend; readonly length: number };

/** Why a blank dimension is what it is: the terms from edge to edge add up to `total`. */
export interface BlankDimension {
  readonly axis: 'x' | 'y';
  readonly total: number;
  /** Empty when no straight way leads across: then the size is only the box of the outline. */
  readonly terms: readonly BlankTerm[];
}

const NEAR = 1e-6;

/** The two dimensions of a blank as chains of outside legs and bend deductions. mm */
export function explainBlank(flat: FlatPattern): readonly [BlankDimension, BlankDimension] {
  return [dimension(flat, 0), dimension(flat, 1)];
}

function dimension(flat: FlatPattern, k: 0 | 1): BlankDimension {
  const total = flat.blank.max[k];
  const touching = (value: number) =>
    flat.panels.filter((p) => p.shape.some((v) => Math.abs(v[k] - value) < NEAR)).map((p) => p.id);
  const chains = touching(0).flatMap((a) => touching(total).flatMap((b) => chain(flat, a, b, k) ?? []));
  const best = chains.toSorted((a, b) => a.length - b.length)[0];
  return { axis: k === 0 ? 'x' : 'y', total, terms: best === undefined ? [] : terms(flat, best, total, k) };
}

/** One bend to cross: outwards from parent to flange, or back. */
interface Hop {
  readonly bend: FlatBend;
  readonly out: boolean;
}
type Chain = { readonly start: string; readonly hops: readonly Hop[]; readonly length: number };

function chain(flat: FlatPattern, a: string, b: string, k: 0 | 1): readonly Chain[] | null {
  const up = (id: string): readonly FlatBend[] => {
    const bend = flat.bends.find((f) => f.id === id);
    return bend === undefined ? [] : [bend, ...up(bend.parent)];
  };
  const [fromA, fromB] = [up(a), up(b)];
  const shared = fromA.filter((x) => fromB.includes(x)).length;
  const hops: readonly Hop[] = [
    ...fromA.slice(0, fromA.length - shared).map((bend) => ({ bend, out: false })),
    ...fromB
      .slice(0, fromB.length - shared)
      .toReversed()
      .map((bend) => ({ bend, out: true })),
  ];
  const across = hops.every(({ bend }) => {
    const [from, to] = bend.line;
    return Math.abs(to[k] - from[k]) < NEAR * Math.hypot(to[0] - from[0], to[1] - from[1]);
  });
  return across ? [{ start: a, hops, length: hops.length }] : null;
}

function terms(flat: FlatPattern, { start, hops }: Chain, total: number, k: 0 | 1): readonly BlankTerm[] {
  const found: BlankTerm[] = [];
  let [panel, at] = [start, 0];
  for (const { bend, out } of hops) {
    // mould lines of the bend: on the flange its y = 0, on the parent one deduction further out
    const own = flat.panels.find((p) => p.id === bend.id) as FlatPattern['panels'][number];
    const onFlange = place(own.frame, [0, 0])[k];
    const onParent = place(own.frame, [0, bend.terms.deduction])[k];
    const [leave, arrive] = out ? [onParent, onFlange] : [onFlange, onParent];
    found.push(
      { kind: 'leg', panel, length: leave - at },
      { kind: 'bend', bend, length: -bend.terms.deduction },
    );
    [panel, at] = [out ? bend.id : bend.parent, arrive];
  }
  return [...found, { kind: 'leg', panel, length: total - at }];
}
