import { cite, type FlatBend } from '@tinwright/core';
import type { ShopCheck } from './check.js';
import { middleOf } from './geometry/panels.js';
import { panelNamed } from './geometry/sides.js';
import { limitCheck } from './limit-check.js';
import { bySources } from './profiles.js';

const SOURCES = {
  strict: cite('design-guides', { rule: '6T' }),
  usual: cite('general-practice', { rule: '4T', basis: 'memory' }),
};

/** A hem too short to be folded and closed. */
export const hemShort: ShopCheck = limitCheck({
  code: 'hem-short',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: ({ flat, part, sheet }, { profile }) =>
    flat.bends.filter(isHem).map((bend) => ({
      at: middleOf(bend),
      value: Math.max(...panelNamed(part, bend.id).outline.map((e) => e.from[1])),
      limit: (profile === 'strict' ? 6 : 4) * sheet.thickness,
      names: [bend.id],
    })),
  values: () => ({}),
  source: (_, __, { profile }) => bySources(profile, SOURCES),
});

/** A fold back on the wall itself; a wired edge is none. */
export const isHem = ({ hem }: FlatBend): boolean => hem !== null && hem !== 'wired' && hem !== 'curl';
