import type { FormedPanel } from '@tinwright/core';
import { cite, type Point } from '@tinwright/core';
import { distance, dot3, panelPrisms, prismDistanceUpTo } from '@tinwright/core/internal';
import type { Shop } from '../machines/shop.js';
import type { ShopCheck, ShopSubject } from './check.js';
import { panelOf } from './geometry/panels.js';
import { type LimitPlace, limitCheck } from './limit-check.js';

const HAND = 0.5; // mm
const LASER = 0.1; // mm

/** Room that flanges keep at a corner when they are cut by hand and bent on a leaf, or cut by laser and pressed. */
const leastGap = ({ press, table }: Shop): number =>
  press !== null && table?.process === 'laser' ? LASER : HAND;

/** Flanges that come so near each other at a corner, once formed, that they may touch. */
export const cornerGap: ShopCheck = limitCheck({
  code: 'corner-gap',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: (subject, shop) => gaps(subject, leastGap(shop)),
  values: () => ({}),
  source: (_, __, shop) => [cite(null, { size: leastGap(shop), basis: 'memory' })],
});

function gaps({ formed, flat, part, sheet }: ShopSubject, least: number): readonly LimitPlace[] {
  const parents = new Map(part.panels.map((p) => [p.id, p.hang?.bend.parent ?? '']));
  const solids = formed.panels.map((panel) => ({ panel, prisms: panelPrisms(panel, sheet.thickness) }));
  return solids.flatMap((a, i) =>
    solids.slice(i + 1).flatMap((b): readonly LimitPlace[] => {
      const [p, q] = [a.panel.id, b.panel.id];
      if (parents.get(p) === q || parents.get(q) === p || lapped(a.panel, b.panel, sheet.thickness))
        return [];
      let found = 2 * least;
      for (const u of a.prisms)
        for (const v of b.prisms) found = Math.min(found, prismDistanceUpTo(u, v, found));
      if (found >= 2 * least) return [];
      return [
        {
          at: cornerOf(panelOf(flat, p).shape, panelOf(flat, q).shape),
          value: found,
          limit: least,
          names: [p, q],
        },
      ];
    }),
  );
}

/** Panels that lie over each other, face to face, are meant to be near. */
function lapped(a: FormedPanel, b: FormedPanel, thickness: number): boolean {
  if (Math.abs(dot3(a.pose.z, b.pose.z)) < 1 - 1e-6) return false;
  const apart = a.pose.origin.map((v, k) => v - (b.pose.origin[k] as number)) as [number, number, number];
  return Math.abs(dot3(apart, a.pose.z)) > thickness / 2;
}

/** The corner of one panel on the flat that is nearest to the other. */
function cornerOf(shape: readonly Point[], other: readonly Point[]): Point {
  const away = (p: Point) => Math.min(...other.map((q) => distance(p, q)));
  return shape.reduce((best, p) => (away(p) < away(best) ? p : best));
}
