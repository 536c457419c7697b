import type { Point } from '@tinwright/core';
import { place } from '@tinwright/core';
import { wordsFor } from './change.js';
import type { ShopCheck, Subject } from './check.js';
import { distance } from './geometry/closest.js';
import { panelOf, tangentsOf } from './geometry/panels.js';

const PAST = 25.4 / 32; // mm past the tangent lines
const SAME = 0.01; // mm
const RELIEFS = ['hole', 'relief', 'slot'];

interface Root {
  readonly at: Point;
  readonly panel: string;
  /** How far the cut goes on past the point where the tangent lines meet. mm */
  readonly past: number;
}

/** Corners where two bends meet and the cut between them ends where their tangent lines do: the metal puckers there. */
export const bendRelief: ShopCheck = (subject, { profile }) => {
  const shallow = rootsOf(subject).filter((r) => r.past < PAST - SAME);
  const [first] = shallow;
  // the usual practice is a notch that ends at the tangent lines
  if (first === undefined || profile === 'usual') return [];
  const slack = (s: Subject) => Math.min(Infinity, ...rootsOf(s).map((r) => r.past - PAST));
  const diameter = Math.max(2 * subject.sheet.insideRadius, 25.4 / 8);
  const words = wordsFor(subject, RELIEFS, slack);
  const where = [...new Set(shallow.map((r) => r.panel))].join(', ');
  return [
    {
      code: 'relief-shallow',
      severity: 'note',
      at: first.at,
      value: first.past,
      limit: PAST,
      unit: 'mm',
      message: (say) =>
        `the cut at ${shallow.length} corner${shallow.length === 1 ? '' : 's'} of ${where} ends ${first.past < SAME ? 'at' : `${say.size(first.past)} past`} the tangent lines of the bends that meet there; ${say.least(PAST)} past them keeps the metal from puckering`,
      source:
        'FAA-H-8083-31 ch. 4: relief holes 1/32 in past the tangent lines (profile strict); a notch of T + R from the mould line, which ends at them, is common practice, no source (profile usual)',
      fix: (say) => [...words.slice(0, 1), `drill ${say.size(diameter)} there before cutting`].join(', or '),
    },
  ];
};

/** Corners of a panel that carries two flanges where their bent material ends in one point, or in one relief hole. */
function rootsOf({ flat, part }: Subject): readonly Root[] {
  const holes = part.rootHoles.map(({ panel, at, diameter }) => ({
    at: place(panelOf(flat, panel).frame, at),
    radius: diameter / 2,
  }));
  const found: Root[] = [];
  for (const { id } of flat.panels) {
    const lines = tangentsOf(flat, id).filter((t) => t.bend.parent === id);
    lines.forEach((a, i) => {
      for (const b of lines.slice(i + 1))
        for (const p of [a.line.from, a.line.to])
          for (const q of [b.line.from, b.line.to]) {
            if (distance(p, q) > SAME || found.some((f) => distance(f.at, p) < SAME)) continue;
            const hole = holes.find((h) => distance(h.at, p) < h.radius);
            found.push({ at: p, panel: id, past: hole?.radius ?? 0 });
          }
    });
  }
  return found;
}
