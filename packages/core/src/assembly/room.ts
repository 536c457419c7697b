import { remark } from '../errors/core-findings.js';
import type { Remark } from '../errors/finding.js';
import { COMPUTED } from '../errors/source.js';
import { LEAST_METAL } from '../fold/draft/least.js';
import type { Hole } from '../fold/draft/tree.js';
import { holesOf, type PartPanel } from '../fold/settle/part.js';
import { contains, distanceToLoop } from '../plane/inside.js';
import { circleLoop, type Loop } from '../plane/loop.js';
import { loopsNear } from '../plane/loops-near.js';
import { distance } from '../plane/point.js';
import type { Fastened } from './fasten.js';
import { type FastenerEnd, SAME_PLACE } from './fastener.js';
import type { Placed } from './types.js';

/**
 * Fasteners with the holes there is room for: one that would run into another of its part's pattern, which all pieces
 * of the part share, or over the edge of its panel, is left uncut and told.
 */
export function withRoom(fastened: readonly Fastened[], placed: readonly Placed[]): readonly Fastened[] {
  const cut = new Map<string, Hole[]>();
  const shaped = new Map<string, Loop[]>();
  const partOf = ({ piece }: FastenerEnd) => (placed.find((p) => p.piece === piece) as Placed).part;
  const panelOf = (end: FastenerEnd): { readonly key: string; readonly panel: PartPanel } => {
    const { name, drawn } = partOf(end);
    const panel = drawn.panels.find((p) => p.id === end.panel) as PartPanel;
    return { key: `${name}.${end.panel}`, panel };
  };
  const fits = (end: FastenerEnd, diameter: number): boolean => {
    const { key, panel } = panelOf(end);
    const others = cut.get(key) ?? [...holesOf(panel)];
    cut.set(key, others);
    if (others.some((h) => distance(h.at, end.at) < SAME_PLACE && h.diameter === diameter)) return true;
    const loop = panel.shape.map((e) => ({ at: e.from, bulge: 0 }));
    const room = Math.min(
      contains(loop, end.at) ? distanceToLoop(end.at, loop) : 0,
      ...others.map((h) => distance(h.at, end.at) - h.diameter / 2),
      ...[...loopsOf(panel), ...(shaped.get(key) ?? [])].map((c) =>
        contains(c, end.at) ? 0 : distanceToLoop(end.at, c),
      ),
    );
    if (room < diameter / 2 + LEAST_METAL) return false;
    others.push({ at: end.at, diameter });
    return true;
  };
  const opens = (end: FastenerEnd, opening: Loop): boolean => {
    const { key, panel } = panelOf(end);
    const own = shaped.get(key) ?? [];
    if (own.some((o) => isSamePlace(o, opening))) return true;
    const round = (cut.get(key) ?? holesOf(panel)).map((h) => circleLoop(h.at, h.diameter / 2));
    if ([...round, ...loopsOf(panel), ...own].some((other) => loopsNear(opening, other, LEAST_METAL)))
      return false;
    shaped.set(key, [...own, opening]);
    return true;
  };
  return fastened.map((joint) => {
    const crowded: string[] = [];
    const fasteners = joint.fasteners.map((f) => {
      const on = f.on.map((end, i) => {
        // of a part that is made, what was left uncut stays so
        const { opening, ...marked } = end;
        if (opening !== undefined) {
          if (opens(end, opening)) return end;
          crowded.push(partOf(end).name);
          return marked;
        }
        const wanted = joint.holes[i] ?? null;
        if (wanted === null || (end.hole !== null && fits(end, end.hole))) return end;
        crowded.push(partOf(end).name);
        return { ...end, hole: null };
      });
      return { ...f, on };
    });
    return { ...joint, fasteners, remarks: [...joint.remarks, ...crowdRemarks(crowded)] };
  });
}

const loopsOf = ({ cutouts }: PartPanel): readonly Loop[] => cutouts.map((c) => c.loop);

const isSamePlace = ([a]: Loop, [b]: Loop): boolean =>
  a !== undefined && b !== undefined && distance(a.at, b.at) < SAME_PLACE;

/** Said of holes that are left uncut, by the part of each. */
function crowdRemarks(parts: readonly string[]): readonly Remark[] {
  if (parts.length === 0) return [];
  return [
    remark('hole-crowded', 'warning', {
      value: parts.length,
      limit: 0,
      values: { parts: [...new Set(parts)] },
      source: COMPUTED,
    }),
  ];
}
