import type { Draft, Panel } from './tree.js';

/** Panels of a draft by name and by the edge they hang on. */
export interface Lookup {
  readonly panel: (id: string) => Panel;
  /** The panel that hangs on this edge, null when the edge is free. */
  readonly on: (panel: string, edge: string) => Panel | null;
}

export function lookupOf({ panels }: Draft): Lookup {
  const byId = new Map(panels.map((p) => [p.id, p]));
  const hanging = new Map<string, Map<string, Panel>>();
  for (const p of panels) {
    if (p.bend === null) continue;
    const { parent, edge } = p.bend;
    const edges = hanging.get(parent);
    if (edges === undefined) hanging.set(parent, new Map([[edge, p]]));
    else if (!edges.has(edge)) edges.set(edge, p);
  }
  return {
    panel: (id) => byId.get(id) as Panel,
    on: (panel, edge) => hanging.get(panel)?.get(edge) ?? null,
  };
}
