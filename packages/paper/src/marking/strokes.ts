import { type FlatPattern, type Line, type Point, segments } from '@tinwright/core';
import { arcOf } from '@tinwright/core/internal';
import type { SightLine } from '../pattern/pattern-ask.js';

/** A straight line to scribe, and what it is for. */
export interface MarkedStroke {
  readonly line: Line;
  readonly for: string;
}

/** A circle or a point to mark, and what it is for. mm */
export interface MarkedSpot {
  readonly at: Point;
  /** null for a point. */
  readonly diameter: number | null;
  readonly for: string;
}

/** Values within it are one, mm: far below a scriber's line. */
export const NEAR = 2e-3;

export const same = (a: Point, b: Point): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) < NEAR;

/** True for a line along an edge of the blank: the shear made it. */
export function sheared([a, b]: Line, [x, y]: Point): boolean {
  const on = (v: number, w: number, at: number) => Math.abs(v - at) < NEAR && Math.abs(w - at) < NEAR;
  return on(a[0], b[0], 0) || on(a[0], b[0], x) || on(a[1], b[1], 0) || on(a[1], b[1], y);
}

/** Every straight line of a pattern but the edges of its blank: bends, lines to scribe, sides of notches, sight lines. */
export function strokesOf(
  { outline, holes, bends, scribes, blank }: FlatPattern,
  sights: readonly SightLine[],
): readonly MarkedStroke[] {
  const straight = (loop: FlatPattern['outline'], what: string) =>
    segments(loop)
      .filter((s) => s.bulge === 0)
      .map((s): MarkedStroke => ({ line: [s.from, s.to], for: what }));
  const cuts = straight(outline, 'notch').filter((s) => !sheared(s.line, blank.max));
  return [
    ...bends.map((b): MarkedStroke => ({ line: b.line, for: `bend ${b.id}` })),
    ...scribes.map((line): MarkedStroke => ({ line, for: 'scribe' })),
    ...cuts,
    ...holes.flatMap((loop) => straight(loop, 'notch')),
    ...sights.map((s): MarkedStroke => ({ line: s.line, for: `sight line ${s.bend}` })),
  ];
}

/** Every circle and point of a pattern: reliefs, holes, and the marks of fasteners. */
export function spotsOf({ outline, holes, marks }: FlatPattern): readonly MarkedSpot[] {
  const round = (loop: FlatPattern['outline'], what: string) =>
    segments(loop)
      .filter((s) => s.bulge !== 0)
      .map((s): MarkedSpot => {
        const { centre, radius } = arcOf(s);
        return { at: centre, diameter: 2 * radius, for: what };
      });
  const punched = marks.map((m): MarkedSpot => ({ at: m.at, diameter: m.hole, for: m.kind }));
  const all = [...round(outline, 'relief'), ...punched, ...holes.flatMap((h) => round(h, 'hole'))];
  return all.filter((s, i) => all.findIndex((o) => same(o.at, s.at)) === i);
}
