import { cite, type FlatBend } from '@tinwright/core';
import type { ShopCheck } from './check.js';
import { middleOf } from './geometry/panels.js';
import { legFrom, panelNamed, reachFrom, sidesOf } from './geometry/sides.js';
import { limitCheck } from './limit-check.js';

const LARGE = 300; // mm
const SHARE = 50;

/** A large panel with a flange so low that it gives way while it is bent. */
export const panelLimp: ShopCheck = limitCheck({
  code: 'flange-low',
  severity: 'note',
  unit: 'mm',
  bound: 'least',
  places: ({ part, flat }) =>
    part.panels.flatMap(({ id, hang, shape }) => {
      if (hang === null || hang.bend.hem !== null) return [];
      const own = sidesOf(part, id);
      const [side] = own.filter((s) => s.bend === id);
      const host = sidesOf(part, hang.bend.parent).find((s) => s.bend === id);
      if (side === undefined || host === undefined) return [];
      const large = reachFrom(panelNamed(part, hang.bend.parent), host);
      if (large < LARGE) return [];
      return [
        {
          at: middleOf(flat.bends.find((b) => b.id === id) as FlatBend),
          value: legFrom(panelNamed(part, id), side, own),
          limit: large / SHARE,
          names: [id],
          shape,
        },
      ];
    }),
  values: ({ limit }) => ({ panel: limit * SHARE }),
  source: () => [cite('design-guide'), cite(null, { rule: 'L / 50', basis: 'judgement' })],
});
