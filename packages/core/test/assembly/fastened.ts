import type { Finding, PartPlan, Point } from '@tinwright/core';
import { type Changes, carrier, plan } from '../carrier.js';

/** A carrier planned, with its fasteners by joint and its findings by code. */
export function fastened(changes: Changes = {}) {
  const { assembly, findings, parts } = plan(carrier(changes));
  const on = (joint: string) => assembly?.fasteners.filter((f) => f.joint === joint) ?? [];
  const told = (code: string): readonly Finding[] => findings.filter((f) => f.code === code);
  return { on, told, findings, parts };
}

/** Distance of a place to the line through a side, and whether the side is bent. */
export function sidesOf({ part, formed }: PartPlan, panel: string, [x, y]: Point) {
  const shape = formed.panels.find((p) => p.id === panel);
  const own = part.panels.find((p) => p.id === panel);
  return (shape?.shape ?? []).map((a, i, all) => {
    const b = all[(i + 1) % all.length] as Point;
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const edge = shape?.edges[i];
    const hangs = part.panels.some((p) => p.hang?.bend.parent === panel && p.hang.bend.edge === edge);
    const bent = hangs || (edge === 'near' && own?.hang !== null);
    return { distance: (dx * (y - a[1]) - dy * (x - a[0])) / Math.hypot(dx, dy), bent };
  });
}
