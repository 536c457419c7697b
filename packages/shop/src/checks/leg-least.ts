import { cite, type FlatBend } from '@tinwright/core';
import type { ShopCheck } from './check.js';
import { middleOf } from './geometry/panels.js';
import { legFrom, sidesOf } from './geometry/sides.js';
import { limitCheck } from './limit-check.js';
import { bySources } from './profiles.js';

const SOURCES = {
  strict: cite('DIN 6935', { rule: '4R', basis: 'memory' }),
  usual: cite('general-practice', { rule: '2T + R' }),
};

/** A leg too short for the radius it is bent with. Hems have rules of their own. */
export const legLeast: ShopCheck = limitCheck({
  code: 'leg-short',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: ({ part, flat, sheet }, { profile }) =>
    part.panels.flatMap((panel) => {
      const sides = sidesOf(part, panel.id);
      return sides
        .filter((s) => s.hem === null)
        .map((side) => ({
          at: middleOf(flat.bends.find((b) => b.id === side.bend) as FlatBend),
          value: legFrom(panel, side, sides),
          limit: profile === 'strict' ? 4 * side.insideRadius : 2 * sheet.thickness + side.insideRadius,
          names: [panel.id],
        }));
    }),
  values: () => ({}),
  source: (_, __, { profile }) => bySources(profile, SOURCES),
});
