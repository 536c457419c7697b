import { type Frame, place } from './frame.js';
import { arcOf, circleLoop, corner, isArc, type Loop, segments, type Vertex } from './loop.js';
import type { Point } from './point.js';

/** A slot with round ends about the origin, `length` over all along x, `width` across; a circle where they are equal. mm */
export function slotLoop(length: number, width: number): Loop {
  const r = width / 2;
  const x = length / 2 - r;
  if (x <= 0) return circleLoop([0, 0], r);
  return [corner(-x, -r), { at: [x, -r], bulge: 1 }, corner(x, r), { at: [-x, r], bulge: 1 }];
}

/** A rectangle about the origin, `length` along x, `width` along y, its corners rounded by `radius`. mm */
export function roundedRectangle(length: number, width: number, radius: number): Loop {
  const [x, y] = [length / 2, width / 2];
  // a side with less than a thousandth left between its rounds is a half circle
  const r = Math.min(x, y) - radius < 5e-4 ? Math.min(x, y) : radius;
  if (r <= 0) return [corner(-x, -y), corner(x, -y), corner(x, y), corner(-x, y)];
  const quarter = Math.tan(Math.PI / 8);
  const bent = (a: number, b: number): Vertex => ({ at: [a, b], bulge: quarter });
  const all = [
    corner(-x + r, -y),
    bent(x - r, -y),
    corner(x, -y + r),
    bent(x, y - r),
    corner(x - r, y),
    bent(-x + r, y),
    corner(-x, y - r),
    bent(-x, -y + r),
  ];
  // where nothing is straight between two rounds, they run on
  return all.filter((v, i) => {
    const next = all[(i + 1) % all.length] as Vertex;
    return v.bulge !== 0 || Math.hypot(next.at[0] - v.at[0], next.at[1] - v.at[1]) > 1e-9;
  });
}

/**
 * A keyhole: a round of `diameter` about the origin, and a slot `width` wide from it along y to the middle of its round
 * end at `length`. mm; the width is less than the diameter, and the end lies outside the round
 */
export function keyholeLoop(diameter: number, length: number, width: number): Loop {
  const [R, r] = [diameter / 2, width / 2];
  const y = Math.sqrt(R * R - r * r);
  const round = 2 * Math.PI - 2 * Math.asin(r / R);
  return [
    corner(r, y),
    { at: [r, length], bulge: 1 },
    corner(-r, length),
    { at: [-r, y], bulge: Math.tan(round / 4) },
  ];
}

/** A loop moved by a frame. */
export function placeLoop(frame: Frame, loop: Loop): Loop {
  return loop.map(({ at, bulge }) => ({ at: place(frame, at), bulge }));
}

/** The circle of a loop of two half circles; null for any other. */
export function roundOf(loop: Loop): { readonly centre: Point; readonly radius: number } | null {
  const [a, b] = loop;
  if (loop.length !== 2 || a === undefined || b === undefined) return null;
  if (Math.abs(a.bulge - 1) > ROUND || Math.abs(b.bulge - 1) > ROUND) return null;
  const { centre, radius } = arcOf({ from: a.at, to: b.at, bulge: a.bulge });
  return { centre, radius };
}

const ROUND = 1e-9;

/** A closed loop as points, arcs as chords at most `sagitta` off, mm. */
export function flattened(loop: Loop, sagitta: number): readonly Point[] {
  return segments(loop).flatMap((s): readonly Point[] => {
    if (!isArc(s)) return [s.from];
    const { centre, radius, start, sweep } = arcOf(s);
    const step = 2 * Math.acos(Math.max(0.5, 1 - sagitta / radius));
    const n = Math.max(2, Math.ceil(Math.abs(sweep) / step));
    return Array.from({ length: n }, (_, i): Point => {
      const a = start + (sweep * i) / n;
      return [centre[0] + radius * Math.cos(a), centre[1] + radius * Math.sin(a)];
    });
  });
}
