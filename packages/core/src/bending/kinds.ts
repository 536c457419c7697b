import * as z from 'zod/mini';
import { frozen } from '../units/frozen.js';
import { numberAbove, numberBetween } from '../units/range.js';
import { din6935 } from './din-6935.js';
import { HANDBOOK_GROUPS, type HandbookGroup, handbook } from './handbook.js';
import { kFactor } from './k-factor.js';
import { ruleKind } from './kind.js';
import { linear } from './linear.js';
import { nominal } from './nominal.js';
import { testStrip } from './test-strip.js';

/** Every rule a job can name, in the order help shows them. A new rule is its file and an entry here. */
export const RULE_KINDS = frozen([
  ruleKind({
    name: 'k-factor',
    summary: 'BA = π/180·A·(R + K·T); k from the material when left out',
    constants: { k: z.optional(numberAbove(0, 1)) },
    make: ({ k }, stock) => (k === undefined ? kFactor(stock.k, stock.kSource) : kFactor(k)),
  }),
  ruleKind({
    name: 'din-6935',
    summary: 'k from r/s by the standard; not below r/s = 0.05',
    constants: {},
    make: () => din6935,
  }),
  ruleKind({
    name: 'handbook',
    summary: 'L = c·T + 1.57·R at 90°, group soft, medium or hard',
    constants: { group: z.enum(Object.keys(HANDBOOK_GROUPS) as HandbookGroup[]) },
    make: ({ group }) => handbook(group),
  }),
  ruleKind({
    name: 'linear',
    summary: 'v = perRadius·R + perThickness·T at 90°, × A/90 otherwise',
    constants: {
      perRadius: numberBetween(0, 2),
      perThickness: numberBetween(0, 3),
    },
    make: ({ perRadius, perThickness }) => linear(perRadius, perThickness),
  }),
  ruleKind({
    name: 'test-strip',
    summary: 'K of strips bent in the shop, from its file',
    constants: {},
    make: (_, { name }, strips) => testStrip(name, strips),
  }),
  ruleKind({ name: 'nominal', summary: 'no compensation', constants: {}, make: () => nominal }),
] as const);
