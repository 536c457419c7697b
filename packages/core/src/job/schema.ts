import * as z from 'zod/mini';
import type { HardwareTools } from '../assembly/bought.js';
import type { RuleKind } from '../bending/kind.js';
import { RULE_KINDS } from '../bending/kinds.js';
import { COMMON } from '../families/common.js';
import type { AnyFamily } from '../families/family.js';
import { type GaugeData, gaugeSchema } from '../schema/gauge.js';
import { type Gives, type ParamKit, strictGroup } from '../schema/kit.js';
import { type Grain, type RackRows, rackShape } from '../schema/rack-rows.js';
import { shapeOf } from '../schema/value.js';
import type { Unit } from '../units/length.js';
import { type CutByData, cutBySchema } from './cut-by.js';
import { type JointData, jointSchema } from './joints.js';
import { lineSchema, nameSchema } from './name.js';
import { ownMaterialsSchema } from './own-materials.js';
import { type Tables, tablesWith } from './tables.js';

/** Thinnest and thickest sheet that is read, mm: foil and plate are other trades. */
export const THICKNESS = { min: 0.1, max: 6 } as const;
/** Greatest inside radius that is read, mm. */
export const GREATEST_RADIUS = 100;
/** Most parts in a job, most pieces of a part. */
export const MOST_PARTS = 500;
export const MOST_PIECES = 10_000;
/** Most joints in a job, and most rows of bought parts. */
export const MOST_JOINTS = 500;

/** What stands in `stock:`, as read. */
export interface StockData {
  readonly material: string;
  readonly thickness?: number | undefined;
  readonly gauge?: GaugeData | undefined;
}

/** What stands in `stock:` of a job: also what there is to cut it from. */
export interface JobStockData extends StockData, RackRows {}

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

/** A job file as read, lengths in mm. */
export interface JobData {
  readonly units: Unit;
  readonly name: string;
  readonly note: string;
  readonly stock?: JobStockData | undefined;
  readonly bending?: BendingData | undefined;
  readonly cutBy?: CutByData | undefined;
  readonly parts: readonly PartData[];
  readonly joints: readonly JointData[];
  readonly hardware: readonly unknown[];
  readonly measured: Readonly<Record<string, number>>;
}

/** Schemas a job and its parts share, made once a job. */
interface Shared {
  readonly stock: Gives<unknown>;
  readonly bending: Gives<unknown>;
  readonly joint: Gives<unknown>;
  /** Of a row of bought parts. */
  readonly bought: Gives<unknown>;
  /** What every part may say. */
  readonly common: { readonly [name: string]: Gives<unknown> };
}

/** Rules, fasteners and bought parts that jobs may name. */
type Kinds = Pick<Tables, 'rules' | 'fasteners' | 'hardware'>;

const sharedOf = (kit: ParamKit, { rules, fasteners, hardware }: Kinds): Shared => ({
  stock: stockSchema(kit),
  bending: bendingSchema(kit, rules),
  joint: jointSchema(kit, fasteners),
  bought: kit.later(() => hardware?.schema(kit, fasteners) ?? noHardware),
  common: shapeOf(COMMON, kit),
});

const envelope = (kit: ParamKit, { bending, joint, bought }: Shared, parts: Gives<unknown>) =>
  strictGroup({
    units: z.enum(['mm', 'in']),
    name: kit.or(lineSchema, ''),
    note: kit.or(lineSchema, ''),
    materials: z.optional(kit.later(() => ownMaterialsSchema(kit))), // read before the rest, which names them
    stock: z.optional(strictGroup({ ...stockShape(kit), ...rackShape(kit, 'loose') })),
    bending: z.optional(bending),
    cutBy: z.optional(cutBySchema(kit)),
    parts: kit.list(parts, 1, MOST_PARTS),
    joints: kit.or(kit.list(joint, 0, MOST_JOINTS) as Gives<unknown>, []),
    hardware: kit.or(kit.list(bought, 0, MOST_JOINTS) as Gives<unknown>, []),
    sizes: z.optional(z.array(z.unknown())), // rows that others lay over the job, each a job of its own
    measured: kit.or(kit.named(kit.size()) as Gives<unknown>, {}),
  });

/** A program that was given no tools for bought parts takes none. */
const noHardware: Gives<unknown> = z.unknown().check(
  z.refine(() => false, {
    error: () => 'this program takes no bought parts; give its reader hardware',
  }),
);

/** Schemas of one unit, for a job without what its parts say and for parts of each family. */
export interface JobSchemas {
  readonly kit: ParamKit;
  readonly envelope: Gives<unknown>;
  /** Schema of a part that names this family; of any part, to say which families there are, where it names none. */
  readonly part: (family: unknown) => Gives<unknown>;
}

/** Schemas to read jobs of these families with; those of a family are built when a part first names it. */
export function jobSchemas(kit: ParamKit, families: readonly AnyFamily[], kinds: Kinds): JobSchemas {
  const shared = sharedOf(kit, kinds);
  const built = new Map<unknown, Gives<unknown>>();
  const any = () =>
    kit.byName(
      'family',
      families.map((f) => strictGroup({ family: z.enum([f.name]) })),
    );
  const build = (name: unknown): Gives<unknown> => {
    const family = families.find((f) => f.name === name);
    const schema = family === undefined ? any() : familySchema(kit, family, shared);
    if (family !== undefined) built.set(name, schema);
    return schema;
  };
  return {
    kit,
    envelope: envelope(kit, shared, z.unknown()),
    part: (family) => built.get(family) ?? build(family),
  };
}

/** Schema of a part of one family: its parameters beside the common keys. */
function familySchema(kit: ParamKit, family: AnyFamily, { stock, bending, common }: Shared) {
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

/** Schema of a whole job file, for publishing. */
export function jobSchema(
  kit: ParamKit,
  families: readonly AnyFamily[],
  hardware: HardwareTools | null = null,
): Gives<unknown> {
  const shared = sharedOf(kit, tablesWith({ hardware }));
  const parts = families.map((f) => familySchema(kit, f, shared));
  return envelope(kit, shared, kit.byName('family', parts));
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

function stockShape(kit: ParamKit) {
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
