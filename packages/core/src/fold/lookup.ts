import type { Draft, Panel } from './tree.js';

/** Panels of a draft by name and by the edge they hang on. */
export interface Lookup {
  readonly panel: (id: string) => Panel;
  /** The panel that hangs on this edge, null when the edge is free. */
  readonly on: (panel: string, edge: string) => Panel | null;
}

export function lookupOf({ panels }: Draft): Lookup {
  const byId = new Map(panels.map((p) => [p.id, p]));
  const hanging = new Map<string, Panel[]>();
  for (const p of panels) {
    if (p.bend === null) continue;
    const list = hanging.get(p.bend.parent);
    if (list === undefined) hanging.set(p.bend.parent, [p]);
    else list.push(p);
  }
  return {
    panel: (id) => byId.get(id) as Panel,
    on: (panel, edge) => hanging.get(panel)?.find((p) => p.bend?.edge === edge) ?? null,
  };
}
