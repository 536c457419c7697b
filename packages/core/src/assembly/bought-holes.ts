import { fail, type Path, type Wording, within } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import { LEAST_METAL, reaches } from '../fold/draft/least.js';
import { place3 } from '../fold/draft/space.js';
import type { BodyHole } from '../hardware/body.js';
import { contains, distanceToLoop } from '../plane/inside.js';
import { boxOf, type Loop } from '../plane/loop.js';
import { add, type Point, size, sub } from '../plane/point.js';
import { placeLoop } from '../plane/shapes.js';
import { cutShift } from './as-cut.js';
import type { Bought } from './bought.js';
import type { Fastened } from './fasten.js';
import type { FastenerEnd } from './fastener.js';
import { layersAt, type StandingSheet } from './layers.js';
import { onFace, type StandingFace, seenOn } from './overlap.js';
import type { StandingRow } from './stand-bought.js';

/**
 * The holes in the sheets below bought parts of a row, each with what goes through it.
 * @throws JobError for holes that leave the sheet, or that nothing goes through
 */
export function fastenRow(
  { bought, faces }: StandingRow,
  sheets: readonly StandingSheet[],
): readonly Fastened[] {
  return bought.map((b, i) => within(b.spec.path, () => fastenBought(b, faces, sheets, i)));
}

function fastenBought(
  { piece, pose, body, spec }: Bought,
  faces: readonly StandingFace[],
  sheets: readonly StandingSheet[],
  i: number,
): Fastened {
  const [first] = faces as [StandingFace];
  const { by } = spec;
  const { part } = first.placed;
  const stackOn = (f: StandingFace) =>
    [body.thickness, f.placed.part.formed.thickness].map((thickness) => ({
      part: piece,
      thickness,
      material: f.placed.part.material,
    }));
  const stack = stackOn(first);
  const holes = by?.kind.needs(stack, by.ask as never, 2).holes;
  const shaped = body.holes.some((h) => h.opening !== null);
  if (by !== null && shaped)
    fail(
      'hardware-hole',
      ['by'],
      `a ${by.kind.name} goes through round holes`,
      'Leave by: out for what is bolted, or make its holes round',
    );
  const fasteners = body.holes.map(({ on, at, diameter, opening }) => {
    const face = faces[on] as StandingFace;
    const through = holes?.[0] ?? 0;
    if (through > diameter + 0.05)
      fail(
        'hardware-hole',
        ['by'],
        (say) => `goes through ${say.size(through)}, its holes are ${say.size(diameter)}`,
        'Take one that goes through, or larger holes',
      );
    const round = holes === undefined ? diameter : (holes[1] ?? null);
    const seen = (x: number, y: number) => seenOn(face, place3(pose, [at[0] + x, at[1] + y, 0]));
    const p = seen(0, 0);
    const cut = sub(p, cutShift(face.placed.part, face.panel.id));
    const end: FastenerEnd = {
      piece: face.placed.piece,
      panel: face.panel.id,
      at: cut,
      ...(opening === null
        ? { hole: round }
        : { hole: null, opening: openingAt(opening, cut, sub(seen(1, 0), p)) }),
    };
    return { joint: piece, kind: by?.kind.name ?? spec.params.type, at: onFace(face, p), on: [end] };
  });
  keepsMetal(
    faces,
    fasteners.map((f, k) => [f.on[0] as FastenerEnd, widthOf(body.holes[k] as BodyHole)]),
    ['at', i],
  );
  const layers = 1 + Math.max(1, ...fasteners.map((f) => layersAt(f.at, pose.z, sheets)));
  const remarks = by?.kind.remarks(stack, by.ask as never, { layers, reach: () => 0 }) ?? [];
  const drilled = fasteners[0]?.on[0]?.hole ?? null;
  return { joint: piece, part: part.name, fasteners, holes: [drilled], remarks };
}

/** An opening, the same when mirrored, with its x this way. */
const openingAt = (opening: Loop, origin: Point, x: Point): Loop =>
  placeLoop({ origin, x, y: [-x[1], x[0]] }, opening);

/** Across a hole, whichever way. */
const widthOf = ({ opening, diameter }: BodyHole): number =>
  opening === null ? diameter : 2 * Math.max(...opening.map((c) => size(c.at)), diameter / 2);

/** @throws JobError for a hole that leaves its panel, with how far to move them all where that helps */
function keepsMetal(
  faces: readonly StandingFace[],
  holes: readonly (readonly [FastenerEnd, number])[],
  path: Path,
): void {
  const room = (end: FastenerEnd, diameter: number, [x, y]: Point) => {
    const face = faces.find((f) => f.panel.id === end.panel && f.placed.piece === end.piece) as StandingFace;
    const { shape } = face.panel;
    const at = add(end.at, cutShift(face.placed.part, end.panel));
    const loop = shape.map((at) => ({ at, bulge: 0 }));
    const { min, max } = boxOf(shape);
    const need = (end.hole ?? diameter) / 2 + LEAST_METAL;
    const p: Point = [at[0] + x, at[1] + y];
    const inwards = (k: 0 | 1) => Math.max(min[k] + need - p[k], Math.min(0, max[k] - need - p[k]));
    return {
      clear: contains(loop, p) && reaches(distanceToLoop(p, loop), need),
      move: [0, 1].map((k) => inwards(k as 0 | 1)),
    };
  };
  const off = holes.find(([end, d]) => !room(end, d, [0, 0]).clear);
  if (off === undefined) return;
  const moves = holes.map(([end, d]) => room(end, d, [0, 0]).move);
  const most = ([0, 1] as const).map((k) =>
    moves.reduce((m, v) => (Math.abs(v[k] ?? 0) > Math.abs(m) ? (v[k] ?? 0) : m), 0),
  ) as unknown as Point;
  const works = faces.length === 1 && holes.every(([end, d]) => room(end, d, most).clear);
  const fix: Wording = works
    ? (say) => `Move it ${say.least(Math.hypot(...most))} towards the middle of the panel`
    : 'Give it another place, or smaller sizes';
  const [{ panel, piece }] = off;
  fail('hardware-off', path, `a hole of it leaves panel ${quoted(panel)} of ${piece}`, fix);
}
