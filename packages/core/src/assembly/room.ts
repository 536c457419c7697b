import type { Unsaid } from '../errors/finding.js';
import type { FormedPanel } from '../fold/formed.js';
import type { Hole } from '../fold/tree.js';
import { contains, distanceToLoop } from '../plane/inside.js';
import { distance } from '../plane/point.js';
import { type Fastener, type FastenerEnd, SAME_PLACE } from './fastener.js';
import type { Placed } from './types.js';

const WEB = 0.5; // mm of metal left round a hole; common practice, no source

/**
 * Fasteners with the holes there is room for: one that would run into another of its part's pattern, which all pieces
 * of the part share, or over the edge of its panel, is left uncut and told.
 */
export function withRoom(
  fasteners: readonly Fastener[],
  placed: readonly Placed[],
): { readonly fasteners: readonly Fastener[]; readonly findings: readonly Unsaid[] } {
  const cut = new Map<string, Hole[]>();
  const crowded = new Map<string, Crowd>();
  const drilled = (end: FastenerEnd, joint: string): FastenerEnd => {
    if (end.hole === null) return end;
    const { name, formed } = (placed.find((p) => p.piece === end.piece) as Placed).part;
    const { shape, holes } = formed.panels.find((p) => p.id === end.panel) as FormedPanel;
    const others = cut.get(`${name}.${end.panel}`) ?? [...holes];
    cut.set(`${name}.${end.panel}`, others);
    const { at, hole: diameter } = end;
    if (others.some((h) => distance(h.at, at) < SAME_PLACE && h.diameter === diameter)) return end;
    const loop = shape.map((p) => ({ at: p, bulge: 0 }));
    const room = Math.min(
      contains(loop, at) ? distanceToLoop(at, loop) : 0,
      ...others.map((h) => distance(h.at, at) - h.diameter / 2),
    );
    if (room >= diameter / 2 + WEB) {
      others.push({ at, diameter });
      return end;
    }
    const count = (crowded.get(`${joint}.${name}`)?.count ?? 0) + 1;
    crowded.set(`${joint}.${name}`, { joint, part: name, count });
    return { ...end, hole: null };
  };
  return {
    fasteners: fasteners.map((f) => ({ ...f, on: f.on.map((end) => drilled(end, f.joint)) })),
    findings: [...crowded.values()].map(crowdFinding),
  };
}

interface Crowd {
  readonly joint: string;
  readonly part: string;
  readonly count: number;
}

function crowdFinding({ joint, part, count }: Crowd): Unsaid {
  return {
    code: 'hole-crowded',
    severity: 'warning',
    part,
    value: count,
    limit: 0,
    unit: '',
    message: `joint ${joint}: ${part} has no room for ${count === 1 ? 'a hole' : `${count} holes`} beside its edges and other holes; marked, not cut`,
    source: 'computed; common practice, no source',
    fix: 'drill through the other part, or ask for the same count at each piece',
  };
}
