import type { Point, Segment } from '@tinwright/core';
import { distance, place } from '@tinwright/core/internal';
import type { ShopSubject } from '../check.js';
import { panelOf } from './panels.js';

const SLOT = 'slot'; // what the core calls the sides of a slot cut in from an edge

/** A side of a slot, or its end. */
export interface SlotSide {
  readonly edge: Segment;
  /** True for the way the slot runs: no shorter than what it joins. */
  readonly long: boolean;
}

/** Sides of the slots in a panel, cut for another sheet to go in, on the flat. */
export function slotSides(
  { part, flat }: Pick<ShopSubject, 'part' | 'flat'>,
  id: string,
): readonly SlotSide[] {
  const { frame } = panelOf(flat, id);
  const shape = part.panels.find((p) => p.id === id)?.shape ?? [];
  const at = (i: number) => shape[(i + shape.length) % shape.length] as (typeof shape)[number];
  const sizeOf = (i: number) => (at(i).name === SLOT ? distance(at(i).from, at(i + 1).from) : 0);
  const on = (p: Point) => place(frame, p);
  return shape.flatMap(({ name, from }, i): readonly SlotSide[] => {
    if (name !== SLOT) return [];
    const edge = { from: on(from), to: on(at(i + 1).from), bulge: 0 };
    return [{ edge, long: sizeOf(i) >= Math.max(sizeOf(i - 1), sizeOf(i + 1)) - 1e-9 }];
  });
}
