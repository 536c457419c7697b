import * as z from 'zod/mini';
import { frozen } from '../units/frozen.js';
import { numberAbove, numberBetween } from '../units/range.js';
import { din6935 } from './din-6935.js';
import { HANDBOOK_GROUPS, type HandbookGroup, handbook } from './handbook.js';
import { kFactor } from './k-factor.js';
import { type RuleKind, ruleKind } from './kind.js';
import { linear } from './linear.js';
import { nominalFor } from './nominal.js';
import { testStrip } from './test-strip.js';

/** Rules that say what the metal does. A new one is its file and an entry here. */
const METAL = [
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
] as const;

type Metal = (typeof METAL)[number];
type MetalGiven = z.output<z.ZodMiniObject<Metal['constants']>> & { readonly rule: Metal['name'] };

/** Rules that need no constants beside their name. */
const BY_NAME = ['k-factor', 'din-6935', 'test-strip'] as const satisfies readonly Metal['name'][];

const [kFactorMetal, dinMetal, handbookMetal, linearMetal, stripMetal] = METAL;

/** What the metal does under a rule that does not say so: a rule by name, or with its constants. */
const formsSchema = z.union(
  [
    z.enum(BY_NAME),
    z.discriminatedUnion('rule', [
      z.strictObject({ rule: z.enum([kFactorMetal.name]), ...kFactorMetal.constants }),
      z.strictObject({ rule: z.enum([dinMetal.name]), ...dinMetal.constants }),
      z.strictObject({ rule: z.enum([handbookMetal.name]), ...handbookMetal.constants }),
      z.strictObject({ rule: z.enum([linearMetal.name]), ...linearMetal.constants }),
      z.strictObject({ rule: z.enum([stripMetal.name]), ...stripMetal.constants }),
    ]),
  ],
  { error: () => `${BY_NAME.join(', ')}, or a rule with its constants such as { rule: k-factor, k: 0.42 },` },
);

/** Every rule a job can name, in the order help shows them. */
export const RULE_KINDS = frozen([
  ...METAL,
  ruleKind({
    name: 'nominal',
    summary: 'no compensation; forms: the rule of the metal, k-factor when left out',
    constants: { forms: z.optional(formsSchema) },
    make: ({ forms = 'k-factor' }, stock, strips) => {
      const given = (typeof forms === 'string' ? { rule: forms } : forms) as MetalGiven;
      const kind = METAL.find((k) => k.name === given.rule) as RuleKind;
      return nominalFor(kind.make(given, stock, strips));
    },
  }),
] as const);
