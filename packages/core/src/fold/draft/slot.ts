import { suggestion } from '../../errors/nearest.js';
import { fail, type Path } from '../../errors/problem.js';
import { contains } from '../../plane/inside.js';
import {
  add,
  cross,
  distance,
  dot,
  outward,
  type Point,
  SAME,
  scale,
  size,
  sub,
  unit,
} from '../../plane/point.js';
import { inRange, SIZE } from '../../schema/in-range.js';
import { nextDraft } from './next-draft.js';
import type { Edge, Outline, Panel, Step } from './tree.js';

/** A slot straight in from an edge, in the panel's frame. mm */
export interface SlotSpec {
  readonly edge: string;
  /** Middle of the slot, on the edge. */
  readonly at: Point;
  readonly width: number;
  readonly depth: number;
  /** Parameters its place and its depth come from: they are named where too little metal would be left. */
  readonly by?: { readonly at: Path; readonly depth: Path };
}

/** Cut a slot into an edge of a panel. What is left of the edge keeps its name; the sides are called `slot`. */
export function slot(id: string, spec: SlotSpec): Step {
  return (draft) => {
    const panel = draft.panels.find((p) => p.id === id);
    if (panel === undefined)
      return fail(
        'panel-unknown',
        [],
        `there is no panel "${id}"`,
        suggestion(
          id,
          draft.panels.map((p) => p.id),
        ),
      );
    const { edge, at, width, depth, by = { at: [], depth: [] } } = spec;
    inRange(width, SIZE, () => `panel "${id}": slot, width`);
    inRange(depth, SIZE, () => `panel "${id}": slot, depth`);
    const i = panel.outline.findIndex((e, k) => e.name === edge && within(panel.outline, k, at, width / 2));
    const cut = i < 0 ? null : slotted(panel, i, spec);
    if (cut !== null) return nextDraft(draft, { panels: draft.panels.map((p) => (p === panel ? cut : p)) });
    const path = i < 0 ? by.at : by.depth;
    const message = `panel "${id}" has no room for the slot on edge "${edge}"`;
    return nextDraft(draft, { refused: [...draft.refused, { code: 'slot-off', path, message, fix: '' }] });
  };
}

/** The panel with a slot on its edge `i`; null where the slot would cut through it. */
function slotted(panel: Panel, i: number, { edge, at, width, depth, by }: SlotSpec): Panel | null {
  const { outline } = panel;
  const along = directionOf(outline, i);
  const inwards = scale(outward(along), -depth);
  const [first, last] = [add(at, scale(along, -width / 2)), add(at, scale(along, width / 2))];
  const corners = [first, add(first, inwards), add(last, inwards), last] as const;
  const loop = outline.map((e) => ({ at: e.from, bulge: 0 }));
  if (!contains(loop, corners[1]) || !contains(loop, corners[2])) return null;
  const sides = corners.map((from, k): Edge => ({ name: k < 3 ? 'slot' : edge, from }));
  const axis = Math.abs(along[0]) > Math.abs(along[1]) ? 0 : 1;
  return {
    ...panel,
    outline: [...outline.slice(0, i + 1), ...sides, ...outline.slice(i + 1)],
    slots: [...panel.slots, { corners, by: { at: by?.at ?? [], depth: by?.depth ?? [], axis } }],
  };
}

const endsOf = (outline: Outline, i: number): readonly [Point, Point] => [
  (outline[i] as Edge).from,
  (outline[(i + 1) % outline.length] as Edge).from,
];

function directionOf(outline: Outline, i: number): Point {
  const [p, q] = endsOf(outline, i);
  return unit(sub(q, p));
}

/** True for a point on an edge that is further than `room` from either end of it. */
function within(outline: Outline, i: number, at: Point, room: number): boolean {
  const [p, q] = endsOf(outline, i);
  const d = sub(q, p);
  const along = dot(sub(at, p), d) / size(d);
  return along > room && distance(p, q) - along > room && Math.abs(cross(d, sub(at, p))) / size(d) < SAME;
}
