import * as z from 'zod/mini';
import { RULE_KINDS } from '../bending/kinds.js';
import type { AnyFamily } from '../families/family.js';
import { type Gives, type ParamKit, strictGroup } from '../schema/kit.js';
import { GAUGE_SYSTEMS, type GaugeSystemName } from '../stock/gauges.js';
import { MATERIAL_NAMES } from '../stock/materials.js';
import type { Unit } from '../units/length.js';
import { wholeNumber } from '../units/range.js';
import { type JointData, jointSchema } from './joints.js';
import { lineSchema, nameSchema } from './name.js';

/** Thinnest and thickest sheet that is read, mm: foil and plate are other trades. */
export const THICKNESS = { min: 0.1, max: 6 } as const;
/** Greatest inside radius that is read, mm. */
export const GREATEST_RADIUS = 100;
/** Most parts in a job, most pieces of a part. */
export const MOST_PARTS = 500;
export const MOST_PIECES = 10_000;
/** Most joints in a job. */
export const MOST_JOINTS = 500;

/** What stands in `stock:`, as read. */
export interface StockData {
  readonly material: string;
  readonly thickness?: number | undefined;
  readonly gauge?: number | { readonly system: GaugeSystemName; readonly number: number } | undefined;
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
  readonly stock?: StockData | undefined;
  readonly bending?: BendingData | undefined;
  readonly [parameter: string]: unknown;
}

/** A job file as read, lengths in mm. */
export interface JobData {
  readonly units: Unit;
  readonly name: string;
  readonly note: string;
  readonly stock?: StockData | undefined;
  readonly bending?: BendingData | undefined;
  readonly parts: readonly PartData[];
  readonly joints: readonly JointData[];
  readonly measured: Readonly<Record<string, number>>;
}

/** Keys of a part that belong to the job, not to its family. */
export const PART_KEYS: readonly string[] = ['name', 'family', 'quantity', 'note', 'stock', 'bending'];

/** Schemas a job and its parts share, made once a job. */
interface Shared {
  readonly stock: Gives<unknown>;
  readonly bending: Gives<unknown>;
}

const sharedOf = (kit: ParamKit): Shared => ({ stock: stockSchema(kit), bending: bendingSchema(kit) });

const envelope = (kit: ParamKit, { stock, bending }: Shared, parts: Gives<unknown>) =>
  strictGroup({
    units: z.enum(['mm', 'in']),
    name: kit.or(lineSchema, ''),
    note: kit.or(lineSchema, ''),
    stock: z.optional(stock),
    bending: z.optional(bending),
    parts: kit.list(parts, 1, MOST_PARTS),
    joints: kit.or(kit.list(jointSchema(kit), 0, MOST_JOINTS) as Gives<unknown>, []),
    measured: kit.or(z.catchall(z.object({}), kit.size()) as Gives<unknown>, {}),
  });

/** Schema of a job file without what its parts say. */
export function envelopeSchema(kit: ParamKit): Gives<unknown> {
  return envelope(kit, sharedOf(kit), z.unknown());
}

/** Schema of one part: told apart by `family`, the family's parameters beside the common keys. */
export function partSchema(
  kit: ParamKit,
  families: readonly AnyFamily[],
  { stock, bending }: Shared = sharedOf(kit),
): Gives<unknown> {
  const common = (family: AnyFamily) => ({
    name: nameSchema,
    family: z.enum([family.name]),
    quantity: kit.or(kit.count(1, MOST_PIECES), 1),
    note: kit.or(lineSchema, ''),
    stock: z.optional(stock),
    bending: z.optional(bending),
  });
  const options = families.map((f) => strictGroup({ ...common(f), ...f.params(kit) }));
  return kit.byName('family', options);
}

/** Schema of a whole job file, for publishing. */
export function jobSchema(kit: ParamKit, families: readonly AnyFamily[]): Gives<unknown> {
  const shared = sharedOf(kit);
  return envelope(kit, shared, partSchema(kit, families, shared));
}

/** Schema of `stock:`. */
export function stockSchema(kit: ParamKit): Gives<unknown> {
  const systems = GAUGE_SYSTEMS.map((s) => s.name);
  const number = wholeNumber();
  return strictGroup({
    material: kit.oneOf(MATERIAL_NAMES),
    thickness: z.optional(kit.size(THICKNESS)),
    gauge: z.optional(
      kit.either(
        number,
        strictGroup({ system: kit.oneOf(systems), number }),
        'a gauge number such as 20, or { system, number },',
      ),
    ),
  });
}

/** Schema of `bending:`: a rule by name with its constants. */
export function bendingSchema(kit: ParamKit): Gives<unknown> {
  const insideRadius = z.optional(kit.size({ min: 0, max: GREATEST_RADIUS }));
  const options = RULE_KINDS.map((r) =>
    strictGroup({ rule: z.enum([r.name]), insideRadius, ...r.constants }),
  );
  return kit.byName('rule', options);
}
