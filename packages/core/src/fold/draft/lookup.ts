import { type Hinge, hingeAt } from './hinge.js';
import type { Bend, Draft, Panel } from './tree.js';

/** Panels of a draft by name and by the edge they hang on. */
export interface Lookup {
  readonly panel: (id: string) => Panel;
  /** The panel that hangs on this edge, null when the edge is free. */
  readonly on: (panel: string, edge: string) => Panel | null;
  /** Bends on the edges of a panel, its own among them, in the order of its outline; null where an edge is free. */
  readonly bends: (panel: Panel) => readonly (Bend | null)[];
  /** Hinge along the edge with index `i` of a panel. */
  readonly hinge: (panel: Panel, i: number) => Hinge;
}

export function lookupOf({ panels }: Draft): Lookup {
  const byId = new Map<string, Panel>();
  const hanging = new Map<string, Map<string, Panel>>();
  for (const p of panels) {
    byId.set(p.id, p);
    if (p.bend === null) continue;
    const { parent, edge } = p.bend;
    const edges = hanging.get(parent);
    if (edges === undefined) hanging.set(parent, new Map<string, Panel>().set(edge, p));
    else if (!edges.has(edge)) edges.set(edge, p);
  }
  return {
    panel: (id) => byId.get(id) as Panel,
    on: (panel, edge) => hanging.get(panel)?.get(edge) ?? null,
    bends: kept(({ id, outline, bend }) => {
      const edges = hanging.get(id);
      return outline.map((e) => (e.name === 'near' ? bend : (edges?.get(e.name)?.bend ?? null)));
    }),
    hinge: hinges(),
  };
}

/** Made once for each panel. */
function kept<T>(make: (panel: Panel) => T): (panel: Panel) => T {
  const made = new Map<string, T>();
  return (panel) => {
    const there = made.get(panel.id);
    if (there !== undefined) return there;
    const value = make(panel);
    made.set(panel.id, value);
    return value;
  };
}

function hinges(): Lookup['hinge'] {
  const of = kept((): (Hinge | undefined)[] => []);
  return (panel, i) => {
    const own = of(panel);
    const hinge = own[i] ?? hingeAt(panel.outline, i);
    own[i] = hinge;
    return hinge;
  };
}
