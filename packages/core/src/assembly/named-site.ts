import type { Face, Site } from '../fold/draft/tree.js';
import type { Part } from '../fold/settle/part.js';
import { boxOf } from '../plane/loop.js';
import { mix } from '../plane/point.js';

const BACK = '-back';

/**
 * A site of a part by its name: one that its family names, else a face of a panel by the panel's name, the marked one,
 * or with `-back` the other one. null where there is none
 */
export function namedSite(part: Pick<Part, 'sites' | 'panels'>, name: string): Site | null {
  const own = part.sites.find((s) => s.name === name);
  if (own !== undefined) return own;
  return faceSite(part, name, name, 'marked') ?? (name.endsWith(BACK) ? backSite(part, name) : null);
}

const backSite = (part: Pick<Part, 'panels'>, name: string) =>
  faceSite(part, name, name.slice(0, -BACK.length), 'unmarked');

function faceSite({ panels }: Pick<Part, 'panels'>, name: string, id: string, face: Face): Site | null {
  const panel = panels.find((p) => p.id === id);
  if (panel === undefined) return null;
  const { min, max } = boxOf(panel.shape.map((e) => e.from));
  const seat = { panel: id, looks: face, at: mix(min, max, 0.5), up: [0, 1], lift: 0 } as const;
  return { name, faces: [{ panel: id, face }], seat, width: null };
}

/** The names of all sites of a part, those of its family first. */
export function siteNames({ sites, panels }: Pick<Part, 'sites' | 'panels'>): readonly string[] {
  const faces = panels.flatMap((p) => [p.id, `${p.id}${BACK}`]);
  return [...new Set([...sites.map((s) => s.name), ...faces])];
}

/** The same site with both faces of its panels: within one part those that lie against each other are found. */
export function bothFaces(site: Site): Site {
  const panels = [...new Set(site.faces.map((f) => f.panel))];
  return {
    ...site,
    faces: panels.flatMap((panel) => [
      { panel, face: 'marked' },
      { panel, face: 'unmarked' },
    ]),
  };
}
