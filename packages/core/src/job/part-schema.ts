import * as z from 'zod/mini';
import type { RuleKind } from '../bending/kind.js';
import { RULE_KINDS } from '../bending/kinds.js';
import { COMMON } from '../families/common.js';
import type { AnyFamily } from '../families/family.js';
import { type GaugeData, gaugeSchema } from '../schema/gauge.js';
import { type Gives, type ParamKit, strictGroup } from '../schema/kit.js';
import type { Grain } from '../schema/rack-rows.js';
import { shapeOf } from '../schema/value.js';
import type { Unit } from '../units/length.js';
import { lineSchema, nameSchema } from './name.js';

/** Thinnest and thickest sheet that is read, mm: foil and plate are other trades. */
const THICKNESS = { min: 0.1, max: 6 } as const;
/** Greatest inside radius that is read, mm. */
const GREATEST_RADIUS = 100;
/** Most pieces of a part. */
export const MOST_PIECES = 10_000;

/** Unit of lengths that do not carry their own. */
export const unitSchema: Gives<Unit> = z.enum(['mm', 'in']);

/** What stands in `stock:`, as read. */
export interface StockData {
  readonly material: string;
  readonly thickness?: number | undefined;
  readonly gauge?: GaugeData | undefined;
}

/** What stands in `bending:`, as read; the rule's constants beside the rule. */
export interface BendingData {
  readonly rule: string;
  readonly insideRadius?: number | undefined;
  readonly [constant: string]: unknown;
}

/** A part as read: the common keys, and the family's parameters beside them. */
export interface PartData {
  readonly name: string;
  readonly family: string;
  readonly quantity: number;
  readonly note: string;
  readonly grain: Grain;
  readonly stock?: StockData | undefined;
  readonly bending?: BendingData | undefined;
  readonly [parameter: string]: unknown;
}

/** Schemas that parts of all families share, made once a job. */
export interface PartSchemas {
  readonly stock: Gives<unknown>;
  readonly bending: Gives<unknown>;
  /** What every part may say. */
  readonly common: { readonly [name: string]: Gives<unknown> };
}

/** @param rules that `bending:` may name */
export const partSchemas = (kit: ParamKit, rules: readonly RuleKind[]): PartSchemas => ({
  stock: stockSchema(kit),
  bending: bendingSchema(kit, rules),
  common: shapeOf(COMMON, kit),
});

/** Schema of a part of one family: its parameters beside the common keys. */
export function partSchema(
  kit: ParamKit,
  family: AnyFamily,
  { stock, bending, common }: PartSchemas,
): Gives<unknown> {
  return strictGroup({
    name: nameSchema,
    family: z.enum([family.name]),
    quantity: kit.instead(kit.count(1, MOST_PIECES), 1),
    note: kit.or(lineSchema, ''),
    grain: kit.or(grainSchema, null),
    stock: z.optional(stock),
    bending: z.optional(bending),
    ...family.params(kit),
    ...common,
  });
}

/** How the rolling lines shall run on a part's flat. */
const grainSchema: Gives<Grain> = z.pipe(
  z.enum(['x', 'y', 'any']),
  z.transform((v): Grain => (v === 'any' ? null : v)),
);

/** Schema of `stock:`. */
export function stockSchema(kit: ParamKit): Gives<unknown> {
  return strictGroup(stockShape(kit));
}

/** Keys of `stock:`. */
export function stockShape(kit: ParamKit) {
  return {
    material: kit.oneOf(kit.materials),
    thickness: z.optional(kit.size(THICKNESS)),
    gauge: z.optional(gaugeSchema(kit)),
  };
}

/** Schema of `bending:`: a rule by name with its constants. */
export function bendingSchema(kit: ParamKit, rules: readonly RuleKind[] = RULE_KINDS): Gives<unknown> {
  const insideRadius = z.optional(kit.size({ min: 0, max: GREATEST_RADIUS }));
  const options = rules.map((r) => strictGroup({ rule: z.enum([r.name]), insideRadius, ...r.constants }));
  return kit.byName('rule', options);
}
