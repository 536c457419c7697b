import type { AnyFamily } from '../families/family.js';
import { paramKit } from '../schema/kit.js';
import type { Material } from '../stock/materials.js';
import type { Unit } from '../units/length.js';
import type { UsualCut } from './cut-by.js';
import type { Job } from './job.js';
import { ownMaterials } from './own-materials.js';
import { type JobContext, read } from './read.js';
import { type JobSchemas, jobSchemas } from './schema.js';
import { type OwnTables, tablesWith } from './tables.js';

/** Reads jobs from plain data, as a YAML or JSON parser gives it. @throws JobError as `readJob` does */
export type JobReader = (data: unknown, context?: JobContext) => Job;

const UNKNOWN_CUT: UsualCut = { by: null, kerf: null };

/**
 * A reader of jobs for one set of families, which keeps the schemas it builds.
 * @throws RangeError for a row or a family of one's own with the name of another
 */
export function readerOf(families: readonly AnyFamily[], own: OwnTables = {}): JobReader {
  const twice = families.find((f) => families.some((g) => g.name === f.name && g !== f));
  if (twice !== undefined)
    throw new RangeError(`there is a family "${twice.name}" already, another name allowed`);
  const tables = tablesWith(own);
  const metals = tables.materials.map((m) => m.name);
  const kept = new Map<Unit, JobSchemas>();
  const inShop = new WeakMap<readonly Material[], JobReader>(); // a shop that nobody holds takes its reader along
  const schemasFor = (unit: Unit): JobSchemas => {
    const schemas = kept.get(unit) ?? jobSchemas(paramKit(unit, metals), families, tables);
    kept.set(unit, schemas);
    return schemas;
  };
  return (data, context = {}) => {
    const unit = (data as { units?: unknown } | null)?.units === 'in' ? 'in' : 'mm';
    const { shopMaterials: materials = [], ...rest } = context;
    if (materials.length > 0) {
      const there = own.materials ?? [];
      const reader =
        inShop.get(materials) ?? readerOf(families, { ...own, materials: [...there, ...materials] });
      inShop.set(materials, reader);
      return reader(data, rest);
    }
    if ((data as { materials?: unknown } | null)?.materials !== undefined)
      return readWithOwn(data, rest, { families, own, unit });
    const schemas = schemasFor(unit);
    const plain = { made: new Map(), strips: [], usualCut: UNKNOWN_CUT };
    return read(data, { ...plain, ...rest, families, schemas, tables });
  };
}

/** A job that brings materials along: it is read with them. */
function readWithOwn(
  data: unknown,
  context: JobContext,
  { families, own, unit }: { families: readonly AnyFamily[]; own: OwnTables; unit: Unit },
): Job {
  const known = own.materials ?? [];
  const materials = [...known, ...ownMaterials(data, paramKit(unit), known)];
  const { materials: _, ...rest } = data as { readonly materials: unknown };
  return readerOf(families, { ...own, materials })(rest, context);
}
