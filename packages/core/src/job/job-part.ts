import type { StripBend } from '../bending/strip-bend.js';
import { JobError, type Path, within } from '../errors/problem.js';
import { PART_KEYS } from '../families/common.js';
import type { AnyFamily } from '../families/family.js';
import type { CutBy } from '../fold/flat/cut-back.js';
import type { JobPart } from './job.js';
import type { BendingData, PartData, StockData } from './part-schema.js';
import { type MetalTables, sheetOf } from './sheet.js';

/** What a part takes from its job. */
export interface FromJob {
  readonly stock?: StockData | undefined;
  readonly bending?: BendingData | undefined;
  readonly cutBy: CutBy | null;
  /** Rows of the shop that `rule: test-strip` looks in. */
  readonly strips: readonly StripBend[];
  readonly tables: MetalTables;
}

/**
 * A part as it was read, with its metal: of its own where it says so, else that of its job.
 * @param path where it stands in the job
 * @throws JobError without stock, and as `sheetOf` does
 */
export function jobPart(part: PartData, family: AnyFamily, job: FromJob, path: Path): JobPart {
  const { stock, stockPath } = part.stock
    ? { stock: part.stock, stockPath: [...path, 'stock'] }
    : { stock: job.stock, stockPath: ['stock'] };
  if (stock === undefined)
    throw new JobError([
      {
        code: 'stock-missing',
        path,
        message: 'there is no stock for this part',
        fix: 'Give stock: with a material and a thickness, for the job or for the part',
      },
    ]);
  const bending = part.bending ?? job.bending ?? { rule: 'k-factor' };
  const { material, sheet } = within(stockPath, () => sheetOf(stock, bending, job.strips, job.tables));
  const params = Object.fromEntries(Object.entries(part).filter(([key]) => !PART_KEYS.includes(key)));
  const { name, quantity, note, grain } = part;
  const { cutBy } = job;
  const bendingPath = part.bending === undefined ? ['bending'] : [...path, 'bending'];
  const read = { name, family, params, quantity, note, grain, cutBy, material, sheet, path, bendingPath };
  return { ...read, asMade: params, follows: [], measured: [], made: false };
}
