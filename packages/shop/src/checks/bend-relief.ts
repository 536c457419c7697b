import { cite, type FlatBend, MM_PER_INCH, type Point, type Segment, segments } from '@tinwright/core';
import { distance, nearestOn, place } from '@tinwright/core/internal';
import { wordsFor } from './change.js';
import type { ShopCheck, ShopSubject } from './check.js';
import { remark } from './check-findings.js';
import { boxesApart, faceToFace } from './geometry/facing.js';
import { panelOf, tangentsOf } from './geometry/panels.js';
import { limitCheck } from './limit-check.js';
import { bySources } from './profiles.js';

const PAST = MM_PER_INCH / 32; // mm past the tangent lines
const SAME = 0.01; // mm
const LEAST = 1; // mm
const RELIEFS = ['hole', 'relief', 'slot'];

const SOURCES = {
  strict: cite('FAA-H-8083-31 ch. 4', { size: PAST }),
  usual: cite('design-guides', { rule: 'T + R' }),
};

const slack = (s: ShopSubject) => Math.min(Infinity, ...rootsOf(s).map((r) => r.past - PAST));

/** Corners where the cut ends where the bends that meet there begin: the metal puckers or tears. */
export const reliefShallow: ShopCheck = {
  code: 'relief-shallow',
  remarks: (subject, { profile }) => {
    const shallow = rootsOf(subject).filter((r) => r.past < PAST - SAME);
    const [first] = shallow;
    if (first === undefined || profile === 'usual') return [];
    return [
      remark('relief-shallow', 'note', {
        where: { at: first.at, names: [...new Set(shallow.map((r) => r.panel))] },
        value: first.past,
        limit: PAST,
        unit: 'mm',
        values: {
          corners: shallow.length,
          drill: Math.max(2 * subject.sheet.insideRadius, MM_PER_INCH / 8),
        },
        source: bySources(profile, SOURCES),
      }),
    ];
  },
  changes: (subject) => wordsFor(subject, RELIEFS, slack).slice(0, 1),
};

interface Root {
  readonly at: Point;
  readonly panel: string;
  /** How far the cut goes on past the point where the tangent lines meet. mm */
  readonly past: number;
}

/** Corners of a panel that carries two flanges where their bent material ends in one point, or in one relief hole. */
function rootsOf({ flat, part }: ShopSubject): readonly Root[] {
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

/** A cut beside the end of a bend so narrow that the metal beside it, which stays, tears. */
export const reliefNarrow: ShopCheck = limitCheck({
  code: 'relief-narrow',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: ({ flat, sheet }) => {
    const limit = Math.max(LEAST, sheet.thickness);
    const ends = flat.bends.flatMap((bend) => endsOf(bend).map((end) => ({ bend, end })));
    const bent = (s: Segment) => ends.some(({ end }) => isOn(end, s));
    const still = segments(flat.outline).filter((s) => !bent(s));
    return ends.flatMap(({ bend, end }) =>
      still.flatMap((s) => {
        const face = boxesApart(end, s) < limit ? faceToFace(end, s) : null;
        if (face === null || face.across !== 'gap' || face.length < SAME || face.width >= limit) return [];
        return [{ at: face.at, value: face.width, limit, names: [bend.id] }];
      }),
    );
  },
  values: () => ({}),
  source: () => [cite(null, { rule: 'T, #', size: 1, basis: 'memory' })],
});

/** The ends of a bend's material, as the outline runs along them. */
export function endsOf({ tangents: [parent, child] }: FlatBend): readonly Segment[] {
  return [
    { from: parent[1], to: child[1], bulge: 0 },
    { from: child[0], to: parent[0], bulge: 0 },
  ];
}

/** True where an edge of the outline runs along the end of a bend. */
export function isOn(end: Segment, edge: Segment): boolean {
  const middle: Point = [(end.from[0] + end.to[0]) / 2, (end.from[1] + end.to[1]) / 2];
  return distance(nearestOn(edge, middle), middle) < SAME;
}
