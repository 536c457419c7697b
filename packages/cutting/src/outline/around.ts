import { isArc, type Loop, type Point, type Segment, segments } from '@tinwright/core';
import { arcOf } from '@tinwright/core/internal';

/** The loop run the other way round. */
export function reversed(loop: Loop): Loop {
  return loop.map((_, i) => {
    const at = loop.length - i;
    const { at: point } = loop[at % loop.length] as Loop[number];
    const before = loop[at - 1] as Loop[number];
    return { at: point, bulge: -before.bulge + 0 };
  });
}

/**
 * A polygon with all the material of a loop and little more: sides of arcs that bulge out lie outside them, those of
 * arcs that bulge in are chords. Material to the left; a hole is given clockwise. @param stray mm, at most that far out
 */
export function polygonAround(loop: Loop, stray: number): readonly Point[] {
  return segments(loop).flatMap((s) => (isArc(s) ? arcAround(s, stray) : [s.from]));
}

function arcAround(s: Segment, stray: number): readonly Point[] {
  const { centre, radius, start, sweep } = arcOf(s);
  const finest = 2 * Math.acos(1 - Math.min(0.5, stray / radius));
  const steps = Math.max(1, Math.ceil(Math.abs(sweep) / finest));
  const on = (angle: number, r: number): Point => [
    centre[0] + r * Math.cos(angle),
    centre[1] + r * Math.sin(angle),
  ];
  const step = sweep / steps;
  if (s.bulge < 0)
    return [s.from, ...Array.from({ length: steps - 1 }, (_, k) => on(start + (k + 1) * step, radius))];
  // where the tangents at the ends of each step meet
  const far = radius / Math.cos(step / 2);
  return [s.from, ...Array.from({ length: steps }, (_, k) => on(start + (k + 0.5) * step, far))];
}
