import type { Box, FlatPattern, Point } from '@tinwright/core';
import { type Label, placed } from '../figure/labels.js';
import { linesOf, roomIn } from '../figure/room.js';
import { boxesMeet, boxOfItems, lineMeetsBox, wordsBox } from '../page/box.js';
import type { Figure } from '../page/figure.js';
import type { Item, Ring } from '../page/page.js';
import { type Detail, detailsOf } from '../pattern/details.js';
import { bendNumber, groupsOf } from '../pattern/features.js';
import { ordinateLines } from '../pattern/ordinate-lines.js';
import type { PatternAsk } from '../pattern/pattern-ask.js';
import { patternLines } from '../pattern/pattern-lines.js';

/** Least distance between parallel lines on a drawing, mm (ISO 128-2, from memory). */
const LEAST_APART = 0.7;
const SLIVER = 2; // mm
const SPARE = 18; // mm beside and above a pattern that labels may use

/**
 * A pattern drawn at a scale with ordinates, bends and marks told on it, its datum corner at the origin; null when it
 * cannot be read at that scale or takes up more than `area`. mm of the page
 */
export function patternFigure(ask: PatternAsk, scale: number, area: Point): PatternFigure | null {
  const { flat, face, height } = ask;
  if (narrowest(flat) * scale < LEAST_APART) return null;
  if (flat.blank.max.some((v, k) => v * scale > (area[k] as number))) return null;
  const details = detailsOf(flat, ask.features, scale);
  const circles = details.map((d) => circleRound(d, scale));
  const [across, upright] = ([0, 1] as const).map((axis) => {
    const own = ask.ordinates.filter((o) => o.axis === axis);
    return ordinateLines(own, flat.blank, scale, face, height);
  }) as [readonly Item[], readonly Item[]];
  // rows longer than their sides may run into each other past a corner
  if (covers(across, upright) || covers(upright, across)) return null;
  const base = [...patternLines(ask, scale), ...across, ...upright, ...circles];
  const box = boxOfItems(base) as Box;
  const spare = ([0, 1] as const).map((k) => area[k] - (box.max[k] - box.min[k])) as [number, number];
  if (Math.min(...spare) < 0) return null;
  const room = roomIn({
    min: box.min,
    max: [box.max[0] + Math.min(SPARE, spare[0]), box.max[1] + Math.min(SPARE, spare[1])],
  });
  room.add(base);
  const items: Item[] = [...base];
  const letters = details.map((d, i): Wanted => {
    const { centre, radius } = circles[i] as Ring;
    return { label: { texts: [d.letter], of: { kind: 'points', at: [centre], radius } }, needed: true };
  });
  for (const { label, needed } of [...letters, ...labelsOf(ask, scale)]) {
    const found = placed(label, room, face, height);
    if (found === null && needed) return null;
    room.add(found ?? []);
    items.push(...(found ?? []));
  }
  return { alt: ask.words.patternAlt(ask.name), items, box: boxOfItems(items) as Box, details };
}

/** True when a text of some things lies on a text or a line of others. */
function covers(some: readonly Item[], others: readonly Item[]): boolean {
  const texts = some.flatMap((item) => (item.kind === 'words' ? [wordsBox(item)] : []));
  return others.some((item) => {
    if (item.kind === 'words') return texts.some((t) => boxesMeet(t, wordsBox(item)));
    return linesOf(item).some(([a, b]) => texts.some((t) => lineMeetsBox(a, b, t)));
  });
}

/** A pattern's drawing, and the places of it that are to be drawn again larger. */
export interface PatternFigure extends Figure {
  readonly details: readonly Detail[];
}

function circleRound({ region: { min, max } }: Detail, scale: number): Ring {
  const centre: Point = [((min[0] + max[0]) / 2) * scale, ((min[1] + max[1]) / 2) * scale];
  return {
    kind: 'ring',
    pen: 'narrow',
    centre,
    radius: (Math.hypot(max[0] - min[0], max[1] - min[1]) / 2) * scale,
  };
}

/** Width of the narrowest panel, mm; slivers, such as what is left of an edge rolled round a wire, do not count. */
function narrowest({ panels }: FlatPattern): number {
  const widths = panels.flatMap(({ shape, frame }) =>
    [frame.x, [-frame.x[1], frame.x[0]] as const].map((u) => {
      const at = shape.map((p) => p[0] * u[0] + p[1] * u[1]);
      return Math.max(...at) - Math.min(...at);
    }),
  );
  return Math.min(...widths.filter((w) => w > SLIVER));
}

interface Wanted {
  readonly label: Label;
  readonly needed: boolean;
}

/** Bends first, the shortest before the others since they have the least room; then holes and marks, then panels. */
function labelsOf({ flat, features, dims, words }: PatternAsk, scale: number): readonly Wanted[] {
  const on = ([x, y]: Point): Point => [x * scale, y * scale];
  const { bend } = words.marking;
  const bends = flat.bends
    .map((b, i) => {
      const [from, to] = [on(b.line[0]), on(b.line[1])];
      const number = bendNumber(i);
      const direction = b.direction === 'up' ? words.up : words.down;
      const angle = `${dims.angle(b.angle)}`;
      const hem = b.hem === null ? '' : words.hems[b.hem];
      const texts = [bend([number], direction, angle, hem), bend([number], direction, angle, ''), number];
      return { length: Math.hypot(to[0] - from[0], to[1] - from[1]), texts, from, to };
    })
    .toSorted((a, b) => a.length - b.length)
    .map(
      ({ texts, from, to }): Wanted => ({ label: { texts, of: { kind: 'line', from, to } }, needed: true }),
    );
  const holes = groupsOf(features.holes, (h) => dims.fine(h.diameter)).map(([diameter, list]): Wanted => {
    const radius = ((list[0]?.diameter ?? 0) / 2) * scale;
    const of = { kind: 'points', at: list.map((h) => on(h.at)), radius } as const;
    return { label: { texts: [words.hole(list.length, diameter, '')], of }, needed: true };
  });
  const marks = groupsOf(flat.marks, (m) => `${m.kind} ${m.hole}`).map(([, list]): Wanted => {
    const [{ kind, hole }] = list as [(typeof list)[number]];
    const name = words.fastener(kind);
    const text =
      hole === null ? words.mark(list.length, name) : words.hole(list.length, dims.fine(hole), name);
    const short = hole === null ? text : words.hole(list.length, dims.fine(hole), '');
    const of = { kind: 'points', at: list.map((m) => on(m.at)), radius: ((hole ?? 0) / 2) * scale } as const;
    return { label: { texts: [text, short], of }, needed: true };
  });
  const panels = flat.panels
    .toSorted((a, b) => a.shape.length - b.shape.length)
    .map(
      ({ id, shape }): Wanted => ({
        label: { texts: [id], of: { kind: 'area', corners: shape.map(on) } },
        needed: false,
      }),
    );
  return [...bends, ...holes, ...marks, ...panels];
}
