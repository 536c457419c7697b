import type { FormedBend, Vec3 } from '@tinwright/core';
import { cross3, dot3, place3, scale3, sub3, turn3 } from '@tinwright/core/internal';
import { anew, type Facet, type Surface, type SurfaceLine } from './surface.js';
import { towards, type View } from './view.js';

const STEP = Math.PI / 16; // turn of one flat strip

/**
 * The bent material of one bend as flat strips, with its end arcs, the line along its middle, and its contour:
 * where the round face turns away from the viewer.
 */
export function bendSurface(bend: FormedBend, view: View): Surface {
  const contour = contourTurns(bend, view);
  const turns = stations(bend.sweep, contour);
  const radii = [...new Set([bend.insideRadius, bend.outsideRadius])].filter((r) => r > 0);
  return {
    facets: anew(function* () {
      for (const r of radii) yield* strips(bend, turns, r);
      yield* caps(bend, turns);
    }),
    lines: anew(function* () {
      for (const r of radii) yield* endArcs(bend, turns, r);
      for (const r of radii) yield lineAt(bend, bend.sweep / 2, r, 'bend');
      for (const phi of contour) for (const r of radii) yield lineAt(bend, phi, r, 'edge');
    }),
  };
}

/** Point of a bend at turn φ and radius r, at its low (0) or high (1) end. */
function at({ frame, sweep, low, high }: FormedBend, phi: number, r: number, end: 'low' | 'high'): Vec3 {
  const [a, b] = end === 'low' ? low : high;
  return place3(frame, [a + ((b - a) * phi) / sweep, r * Math.cos(phi), r * Math.sin(phi)]);
}

function lineAt(bend: FormedBend, phi: number, r: number, kind: SurfaceLine['kind']): SurfaceLine {
  return { from: at(bend, phi, r, 'low'), to: at(bend, phi, r, 'high'), kind };
}

function contourTurns(bend: FormedBend, view: View): readonly number[] {
  const [y, z] = [towards(view, bend.frame.y), towards(view, bend.frame.z)];
  if (Math.hypot(y, z) < 1e-9) return [];
  const zero = Math.atan2(-y, z); // y·cos φ + z·sin φ = 0
  const full = 2 * Math.PI;
  return [zero, zero + Math.PI]
    .map((a) => ((a % full) + full) % full)
    .filter((a) => a > 1e-6 && a < bend.sweep - 1e-6);
}

function stations(sweep: number, contour: readonly number[]): readonly number[] {
  const n = Math.max(2, Math.ceil(sweep / STEP / 2) * 2); // even, so that the middle is one
  const even = Array.from({ length: n + 1 }, (_, i) => (sweep * i) / n);
  return [...even.filter((a) => contour.every((c) => Math.abs(c - a) > 1e-6)), ...contour].toSorted(
    (a, b) => a - b,
  );
}

const pairs = (turns: readonly number[]) => turns.slice(1).map((b, i) => [turns[i] as number, b] as const);

function strips(bend: FormedBend, turns: readonly number[], r: number): readonly Facet[] {
  const outer = r === bend.outsideRadius;
  return pairs(turns).map(([a, b]) => {
    const middle = (a + b) / 2;
    const out = turn3(bend.frame, [0, Math.cos(middle), Math.sin(middle)]);
    const corners = [
      at(bend, a, r, 'low'),
      at(bend, a, r, 'high'),
      at(bend, b, r, 'high'),
      at(bend, b, r, 'low'),
    ];
    return facing(corners, outer ? out : scale3(out, -1));
  });
}

/** The facet with its corners counter-clockwise seen from where its normal points: frames of bends down are left-handed. */
function facing(corners: readonly Vec3[], normal: Vec3): Facet {
  const [a, b, c] = corners as readonly [Vec3, Vec3, Vec3];
  const turned = dot3(cross3(sub3(b, a), sub3(c, b)), normal) < 0;
  return { corners: turned ? corners.toReversed() : corners, normal };
}

/** The cut ends of the bent material. */
function caps(bend: FormedBend, turns: readonly number[]): readonly Facet[] {
  return pairs(turns).flatMap(([a, b]) =>
    (['low', 'high'] as const).map((end): Facet => {
      const corners = [
        at(bend, a, bend.insideRadius, end),
        at(bend, a, bend.outsideRadius, end),
        at(bend, b, bend.outsideRadius, end),
        at(bend, b, bend.insideRadius, end),
      ];
      return facing(corners, scale3(bend.frame.x, end === 'low' ? -1 : 1));
    }),
  );
}

function endArcs(bend: FormedBend, turns: readonly number[], r: number): readonly SurfaceLine[] {
  return pairs(turns).flatMap(([a, b]) =>
    (['low', 'high'] as const).map(
      (end): SurfaceLine => ({ from: at(bend, a, r, end), to: at(bend, b, r, end), kind: 'edge' }),
    ),
  );
}
