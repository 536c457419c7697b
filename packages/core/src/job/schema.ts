import * as z from 'zod/mini';
import type { HardwareTools } from '../assembly/bought.js';
import type { AnyFamily } from '../families/family.js';
import { type Gives, type ParamKit, strictGroup } from '../schema/kit.js';
import { type RackRows, rackShape } from '../schema/rack-rows.js';
import type { Unit } from '../units/length.js';
import { type CutByData, cutBySchema } from './cut-by.js';
import { type JointData, jointSchema } from './joints.js';
import { lineSchema } from './name.js';
import { ownMaterialsSchema } from './own-materials.js';
import {
  type BendingData,
  type PartData,
  type PartSchemas,
  partSchema,
  partSchemas,
  type StockData,
  stockShape,
  unitSchema,
} from './part-schema.js';
import { type Tables, tablesWith } from './tables.js';

/** Most parts in a job. */
export const MOST_PARTS = 500;
/** Most joints in a job, and most rows of bought parts. */
const MOST_JOINTS = 500;

/** What stands in `stock:` of a job: also what there is to cut it from. */
export interface JobStockData extends StockData, RackRows {}

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
interface Shared extends PartSchemas {
  readonly joint: Gives<unknown>;
  /** Of a row of bought parts. */
  readonly bought: Gives<unknown>;
}

/** Rules, fasteners and bought parts that jobs may name. */
type Kinds = Pick<Tables, 'rules' | 'fasteners' | 'hardware'>;

const sharedOf = (kit: ParamKit, { rules, fasteners, hardware }: Kinds): Shared => ({
  ...partSchemas(kit, rules),
  joint: jointSchema(kit, fasteners),
  bought: kit.later(() => hardware?.schema(kit, fasteners) ?? noHardware),
});

const envelope = (kit: ParamKit, { bending, joint, bought }: Shared, parts: Gives<unknown>) =>
  strictGroup({
    units: unitSchema,
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
    const schema = family === undefined ? any() : partSchema(kit, family, shared);
    if (family !== undefined) built.set(name, schema);
    return schema;
  };
  return {
    kit,
    envelope: envelope(kit, shared, z.unknown()),
    part: (family) => built.get(family) ?? build(family),
  };
}

/** Schema of a whole job file, for publishing. */
export function jobSchema(
  kit: ParamKit,
  families: readonly AnyFamily[],
  hardware: HardwareTools | null = null,
): Gives<unknown> {
  const shared = sharedOf(kit, tablesWith({ hardware }));
  const parts = families.map((f) => partSchema(kit, f, shared));
  return envelope(kit, shared, kit.byName('family', parts));
}
