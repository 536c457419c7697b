import type { FlatBend } from '@tinwright/core';
import type { ShopCheck } from './check.js';
import { middleOf } from './geometry/panels.js';
import { panelNamed } from './geometry/sides.js';
import { limitCheck } from './limit-check.js';
import { bySources } from './profiles.js';

const SOURCES = {
  strict: { rule: '6T', by: 'design guides' },
  usual: { rule: '4T', by: 'general practice, from memory' },
} as const;

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
      what: bend.id,
    })),
  message: ({ value, limit, what }, say) =>
    `${what} is ${say.size(value)} wide over its fold, ${say.least(limit)} at least`,
  source: (_, __, { profile }) => bySources(profile, SOURCES),
  aim: ({ limit }, say) => `make it ${say.least(limit)} or wider`,
});

/** A fold back on the wall itself; a wired edge is none. */
export const isHem = ({ hem }: FlatBend): boolean => hem !== null && hem !== 'wired';
