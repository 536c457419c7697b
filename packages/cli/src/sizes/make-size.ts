import { homedir } from 'node:os';
import { join } from 'node:path';
import {
  type AnyFamily,
  type Job,
  JobError,
  type JobPlan,
  jobReader,
  type Path,
  type Problem,
  planJob,
  problemText,
} from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { plainNumber } from '@tinwright/core/internal';
import { readRack, type ShearEffort } from '@tinwright/cutting';
import { jobFiles, type KnownCut, knownCut, type OutFile } from '@tinwright/files';
import { allFindings, cutTotals } from '@tinwright/files/internal';
import type { Shop } from '@tinwright/shop';
import { tellFinding } from '@tinwright/words';
import { WriteError } from '../host/failure.js';
import { contextOf, plannedIn } from '../open/open-shop.js';
import { type Row, writtenOver } from '../table/row.js';
import { SWIFT_DISK } from '../write/disk.js';
import { writeFresh } from '../write/write-fresh.js';
import { updateSet } from '../write/write-set.js';
import { contentsMark } from './contents.js';

const NOTHING = { blanks: '', mass: '', sheets: '', price: '', files: 0, contents: '' } as const;

/** What all sizes of a run have in common. Plain data but for the families, so that it crosses to a worker. */
export interface Common {
  /** The job that rows are laid over. */
  readonly data: unknown;
  readonly dxf: 'r2000' | 'r12';
  readonly pictures: boolean;
  readonly shop: Shop | null;
  /** Every size with its cut list, from a rack as its file says it, else from what job or shop say; null without. */
  readonly cutList: { readonly rack: unknown } | null;
}

/** What became of a size. */
export interface Made {
  readonly number: number;
  readonly name: string;
  readonly status: 'made' | 'refused' | 'unwritable';
  /** Findings, and how many of them are errors. */
  readonly findings: number;
  readonly errors: number;
  readonly message: string;
  /** `body 436.46 x 335.1`, parts apart by semicolons; mm. */
  readonly blanks: string;
  /** kg of all pieces. */
  readonly mass: string;
  /** Sheets its blanks are cut from, and their price; empty where no cut list was asked for, or no price is known. */
  readonly sheets: string;
  readonly price: string;
  readonly files: number;
  /** Tells by its content whether a file of it was changed since; empty where none was made. */
  readonly contents: string;
  /** Why it was refused, with places in the table. */
  readonly problems: readonly { readonly line: number; readonly column: number; readonly text: string }[];
}

/** A size as it comes out: what is said of it and, where it was made, its files. */
export interface PlannedSize {
  readonly made: Made;
  readonly files: readonly OutFile[];
}

/** Works sizes out one by one; keeps the schemas that jobs are read with. */
export function sizePlanner(
  common: Common,
  families: readonly AnyFamily[],
): (row: Row) => Promise<PlannedSize> {
  const read = jobReader(families, { hardware });
  const context = contextOf(common.shop);
  return async (row) => {
    const none = {
      number: row.number,
      name: row.name,
      findings: 0,
      errors: 0,
      ...NOTHING,
    };
    if (row.refused !== undefined)
      return refusedRow(none, [{ line: row.line, column: row.column, text: row.refused }]);
    const brought = await context;
    try {
      return await planned(
        row,
        planOf(row, common, (own) => read(own, brought)),
        common,
      );
    } catch (error) {
      if (!(error instanceof JobError)) throw error;
      return refusedRow(
        none,
        error.problems.map((p) => placed(p, row)),
      );
    }
  };
}

function planOf(row: Row, { data }: Common, read: (own: unknown) => Job): JobPlan {
  const own = row.cells.reduce((d, { path, value }) => writtenOver(d, path, value), data);
  return planJob(read(own));
}

async function planned(
  { number, name }: Row,
  plan: JobPlan,
  { dxf, pictures, shop, cutList }: Common,
): Promise<PlannedSize> {
  const inShop = await plannedIn(plan, shop);
  const cut = cutList === null ? null : cutOf(plan, shop, cutList);
  const findings = allFindings(plan, inShop, cut);
  const files = jobFiles(plan, { dxf, pictures, inShop, cut });
  const all = cut === null ? null : cutTotals(cut.work);
  const errors = findings.filter((f) => f.severity === 'error').length;
  const first = findings.find((f) => f.severity === 'error') ?? findings[0];
  const blanks = plan.parts.map(
    ({ name: part, flat }) => `${part} ${flat.blank.max.map((v) => plainNumber(v, 2)).join(' x ')}`,
  );
  const mass = plan.parts.reduce((kg, p) => kg + p.mass * p.quantity, 0);
  const made: Made = {
    number,
    name,
    status: 'made',
    findings: findings.length,
    errors,
    message:
      first === undefined
        ? ''
        : `${first.part === null ? '' : `${first.part}: `}${tellFinding(first, plan.job.units, 'en').message}`,
    blanks: blanks.join('; '),
    mass: plainNumber(mass, 3),
    sheets: all === null ? '' : String(all.sheets),
    price: all === null || all.price === null ? '' : plainNumber(all.price, 2),
    files: files.length,
    contents: contentsMark(files),
    problems: [],
  };
  return { made, files };
}

/** Few steps: a size is one of many. */
const CUT_EFFORT: ShearEffort = {
  seed: 1,
  steps: { sheets: 2_000, offcut: 500, neat: 50 },
  enough: () => false,
};

function cutOf(plan: JobPlan, shop: Shop | null, { rack }: NonNullable<Common['cutList']>): KnownCut | null {
  const own = rack === null ? null : readRack(rack);
  return knownCut({ plan, shop, rack: own, effort: CUT_EFFORT });
}

/** Writes the folder of a size, where it was made; it appears whole. */
export async function writeSize(out: string, { made, files }: PlannedSize): Promise<Made> {
  const folder = join(out, made.name);
  if (made.status !== 'made' || writeFresh(folder, files)) return made;
  try {
    await updateSet(folder, async () => files, {
      disk: SWIFT_DISK,
      kept: { here: process.cwd(), home: homedir() },
      signals: 'not heard',
    });
    return made;
  } catch (error) {
    if (!(error instanceof WriteError)) throw error;
    const message = `${error.place}: ${error.message}`;
    return { ...made, status: 'unwritable', message, findings: 0, errors: 0, ...NOTHING };
  }
}

type None = Omit<Made, 'status' | 'message' | 'problems'>;

function refusedRow(none: None, problems: Made['problems']): PlannedSize {
  const more = problems.length > 1 ? ` (and ${problems.length - 1} more)` : '';
  const message = `${problems[0]?.text ?? ''}${more}`;
  return { made: { ...none, status: 'refused', message, problems }, files: [] };
}

/** A problem of the job at the cell it comes from, or at the row. */
function placed(problem: Problem, row: Row): Made['problems'][number] {
  const begins = (a: Path, b: Path) => a.length <= b.length && a.every((s, i) => String(s) === String(b[i]));
  const cell =
    row.cells.find(({ path }) => begins(path, problem.path)) ??
    row.cells.find(({ path }) => begins(problem.path, path));
  const { line, column } = cell ?? row;
  return { line, column, text: problemText(problem).replace(/\.$/, '') };
}
