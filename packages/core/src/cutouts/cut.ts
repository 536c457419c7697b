import { suggestion } from '../errors/nearest.js';
import { fail, type Path, within } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import type { Draft, Step } from '../fold/draft/tree.js';
import { cutout, scribe } from '../fold/draft/verbs.js';
import { compose, type Frame, place } from '../plane/frame.js';
import type { Point } from '../plane/point.js';
import { placeLoop } from '../plane/shapes.js';
import { radians } from '../units/angle.js';
import type { CutoutParams } from './params.js';
import { placeOn } from './place-on.js';
import { shapeLoops } from './shape-loops.js';

const MOST = 2000; // openings of one part

/** Cut an opening, or a row or grid of them, where the job says. @param by the parameter that asks for it */
export function cut(asked: CutoutParams, by: Path): Step {
  return (draft) =>
    within(by, () => {
      const { panel, from, turn } = asked;
      const { outline } = panelOf(draft, panel);
      const origin = placeOn(panel, outline, from ?? {});
      const a = radians(turn);
      const stand: Frame = { origin, x: [Math.cos(a), Math.sin(a)], y: [-Math.sin(a), Math.cos(a)] };
      const loops = shapeLoops(asked);
      const places = placesOf(asked);
      const there = draft.panels.reduce((n, p) => n + p.holes.length + p.cutouts.length, 0);
      const count = there + loops.length * places.length;
      if (count > MOST)
        return fail(
          'cutout-many',
          [],
          `${count} openings of the part asked for, ${MOST} allowed`,
          fewer(asked, Math.floor((MOST - there) / loops.length)),
        );
      const frames = places.map((p) => compose(stand, { origin: p, x: [1, 0], y: [0, 1] }));
      const all = frames.flatMap((f) => loops.map((loop) => cutout(panel, { loop: placeLoop(f, loop), by })));
      const lines = frames.flatMap((f) => bendLine(asked).map((line) => line.map((p) => place(f, p))));
      const scribed = lines.map(([a, b]) => scribe(panel, a as Point, b as Point));
      return [...all, ...scribed].reduce((d, step) => step(d), draft);
    });
}

/** How many of a row or grid have room. @param most places that are left for all of them */
function fewer({ columns, rows }: CutoutParams, most: number): string {
  const [across, up] = [columns?.count ?? 1, rows?.count ?? 1];
  if (columns !== null && most >= up) return `Use columns.count of ${Math.floor(most / up)} or less`;
  if (rows !== null && most >= across) return `Use rows.count of ${Math.floor(most / across)} or less`;
  return 'Leave openings of the part out';
}

/** The line a flap is bent by. */
const bendLine = (c: CutoutParams): readonly (readonly Point[])[] => {
  if (c.type !== 'louvre') return [];
  const [x, y] = [c.length / 2, -c.width / 2];
  return [
    [
      [-x, y],
      [x, y],
    ],
  ];
};

/** Middles of a grid about the origin, row by row. */
function placesOf({ columns, rows }: CutoutParams): readonly Point[] {
  const spread = (way: CutoutParams['rows']) => {
    const { count, pitch } = way ?? { count: 1, pitch: 0 };
    return Array.from({ length: count }, (_, i) => (i - (count - 1) / 2) * pitch);
  };
  return spread(rows).flatMap((y) => spread(columns).map((x): Point => [x, y]));
}

function panelOf({ panels }: Draft, id: string) {
  const found = panels.find((p) => p.id === id);
  if (found !== undefined) return found;
  const known = panels.map((p) => p.id);
  return fail('panel-unknown', ['panel'], `there is no panel ${quoted(id)}`, suggestion(id, known));
}
