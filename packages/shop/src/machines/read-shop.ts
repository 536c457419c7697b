import type { SheetRow } from '@tinwright/core';
import { JobError, MATERIAL_NAMES, type Problem } from '@tinwright/core';
import { paramKit } from '@tinwright/core/family';
import { ownMaterials, problemsOf, withWords } from '@tinwright/core/internal';
import { assumedIn } from './assumed.js';
import { brakeProblems } from './brake-problems.js';
import { capacityProblems } from './capacity-problems.js';
import { impossible } from './impossible.js';
import { pressProblems } from './press-problems.js';
import { rangeProblems } from './range-problems.js';
import { shopSchema } from './schema.js';
import type { Shop } from './shop.js';
import { stripProblems } from './strip-problems.js';
import { tableProblems } from './table-problems.js';
import { twinProblems } from './twin-problems.js';
import { SHOP_WORDS } from './words.js';

/**
 * Read a shop from plain data, as a YAML or JSON parser gives it. What the file leaves out and a machine cannot be
 * without is assumed; `assumed` lists it.
 * @throws JobError with every problem found, in the order of the file, lengths in its unit
 */
export function readShop(data: unknown): Shop {
  const units = (data as { units?: unknown } | null)?.units === 'in' ? 'in' : 'mm';
  const materials = ownMaterials(data, paramKit(units), [], 'given in the shop file');
  const names = [...MATERIAL_NAMES, ...materials.map((m) => m.name)];
  const read = shopSchema(paramKit(units, names)).safeParse(data);
  if (!read.success) throw new JobError(problemsOf(read.error.issues, data).map(explained));
  const { sheets: rows, ...file } = read.data as Omit<Shop, 'assumed' | 'sheets' | 'stock' | 'materials'> & {
    readonly sheets: readonly SheetRow[];
  };
  const stock = rows.some(saysMore) ? rows : [];
  const shop: Shop = { ...file, materials, stock, sheets: rows.map((s) => s.size), assumed: assumedIn(data) };
  const problems: readonly Problem[] = [
    ...(shop.brake === null ? [] : brakeProblems(shop.brake, units)),
    ...shop.brakes.flatMap((b, i) => brakeProblems(b, units, ['brakes', i])),
    ...brakeNames(shop),
    ...(shop.press === null ? [] : pressProblems(shop.press, units)),
    ...tableProblems(shop),
    ...rangeProblems(shop),
    ...capacityProblems(shop),
    ...twinProblems(['strips'], shop.strips),
    ...stripProblems(shop.strips, units),
  ];
  if (problems.length > 0) throw new JobError(problems);
  return shop;
}

/** A value that is missing told with what it is. */
function explained(problem: Problem): Problem {
  const path = problem.path.filter((step) => typeof step === 'string').join('.');
  return withWords(problem, SHOP_WORDS[path]?.words ?? '');
}

/** Brakes are told apart by their names. */
function brakeNames({ brake, brakes }: Shop): readonly Problem[] {
  const first = brakes.findIndex((b) => brake !== null && b.name === brake.name);
  const same = impossible(
    ['brakes', first, 'name'],
    'the name of the first brake',
    'Give each a name of its own',
  );
  return [...twinProblems(['brakes'], brakes), ...(first < 0 ? [] : [same])];
}

const saysMore = ({ size: _, ...rest }: SheetRow): boolean => Object.values(rest).some((v) => v !== null);
