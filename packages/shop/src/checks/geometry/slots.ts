import { place, type Segment } from '@tinwright/core';
import type { Subject } from '../check.js';
import { panelOf } from './panels.js';

const SLOT = 'slot'; // what the core calls the sides of a slot cut in from an edge

/** Sides of the slots in a panel, cut for another sheet to go in, on the flat. */
export function slotSides({ part, flat }: Pick<Subject, 'part' | 'flat'>, id: string): readonly Segment[] {
  const { frame } = panelOf(flat, id);
  const shape = part.panels.find((p) => p.id === id)?.shape ?? [];
  return shape.flatMap(({ name, from }, i): readonly Segment[] => {
    if (name !== SLOT) return [];
    const next = shape[(i + 1) % shape.length] as (typeof shape)[number];
    return [{ from: place(frame, from), to: place(frame, next.from), bulge: 0 }];
  });
}
