import { JobError, type Path, type Problem } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import { type Gives, type ParamKit, strictGroup } from '../schema/kit.js';
import { problemsOf } from '../schema/problems.js';
import type { RadiusRule } from '../stock/least-radius.js';
import { MATERIAL_NAMES, MATERIALS, type Material } from '../stock/materials.js';
import { numberAbove } from '../units/range.js';
import { nameSchema } from './name.js';

const MOST = 50; // in one file

/** What a number of a metal may be at most; all are above 0. */
const GREATEST = {
  density: [25_000, ' kg/m³'],
  yield: [3000, ' N/mm²'],
  modulus: [1000, ' GPa'],
  k: [1, ''],
} as const;

/** A material as a job or a shop file tells it. mm, kg/m³, N/mm², GPa */
export interface MaterialData {
  readonly name: string;
  /** A material of the table that everything left out is taken from. */
  readonly like: string;
  readonly title: string | null;
  readonly density: number | null;
  readonly tensile: readonly [number, number] | null;
  readonly yield: number | null;
  readonly modulus: number | null;
  readonly k: number | null;
  readonly leastRadius: readonly { readonly thickness: number; readonly radius: number }[] | null;
  readonly coating: 'none' | 'zinc' | null;
}

/** Refuse rows that code gives whose numbers no metal has. @throws RangeError */
export function soundMaterials(rows: readonly Material[]): void {
  for (const row of rows)
    for (const [key, [most, unit]] of Object.entries(GREATEST)) {
      const value = row[key as keyof typeof GREATEST] as unknown;
      if (!(typeof value === 'number' && value > 0 && value <= most))
        throw new RangeError(
          `material "${row.name}": ${key} ${String(value)} given, more than 0 to ${most}${unit} allowed`,
        );
    }
}

/** Schema of materials of one's own. */
export function ownMaterialsSchema(kit: ParamKit): Gives<readonly MaterialData[]> {
  const above = (key: keyof typeof GREATEST) => {
    const [most, unit] = GREATEST[key];
    return numberAbove(0, most, unit) as Gives<number>;
  };
  const strength = above('yield');
  const row = strictGroup({ thickness: kit.size({ max: 10 }), radius: kit.size({ min: 0, max: 200 }) });
  const one = strictGroup({
    name: nameSchema,
    like: kit.oneOf(MATERIAL_NAMES),
    title: kit.maybe(kit.text()),
    density: kit.maybe(above('density')),
    tensile: kit.maybe(kit.list(strength, 2, 2) as Gives<readonly [number, number]>),
    yield: kit.maybe(strength),
    modulus: kit.maybe(above('modulus')),
    k: kit.maybe(above('k')),
    leastRadius: kit.maybe(kit.list(row as Gives<unknown>, 1, MOST) as Gives<MaterialData['leastRadius']>),
    coating: kit.maybe(kit.oneOf(['none', 'zinc'])),
  });
  return kit.list(one as Gives<unknown>, 0, MOST) as Gives<readonly MaterialData[]>;
}

/**
 * The materials a job or a shop file brings along. What a row leaves out is that of the material it is like, and says so
 * where it is used.
 * @param others what is there beside the built-in ones
 * @param told where they were given, as their sources say it
 * @throws JobError for rows that cannot be read, and names that are taken
 */
export function ownMaterials(
  data: unknown,
  kit: ParamKit,
  others: readonly Material[] = [],
  told: 'given in the job' | 'given in the shop file' = 'given in the job',
): readonly Material[] {
  const given = (data as { materials?: unknown } | null)?.materials;
  if (given === undefined) return [];
  const read = ownMaterialsSchema(kit).safeParse(given);
  const at = (p: Problem): Problem => ({ ...p, path: ['materials', ...p.path] });
  if (!read.success) throw new JobError(problemsOf(read.error.issues, given).map(at));
  const taken = read.data.flatMap((m, i): readonly Problem[] => {
    const there = others.map((o) => o.name);
    const known: readonly string[] = [
      ...MATERIAL_NAMES,
      ...there,
      ...read.data.slice(0, i).map((o) => o.name),
    ];
    if (!known.includes(m.name)) return [];
    const path: Path = [i, 'name'];
    const message = `there is a material ${quoted(m.name)} already`;
    return [at({ code: 'name-twice', path, message, fix: 'Give it a name of its own' })];
  });
  if (taken.length > 0) throw new JobError(taken);
  return read.data.map((m) => materialOf(m, told));
}

function materialOf(m: MaterialData, told: string): Material {
  const base = MATERIALS.find((b) => b.name === m.like) as Material;
  const { strictRadius: _, ...known } = base;
  const left = (source: string) => `${source}; as ${base.name}, since ${m.name} leaves it out`;
  return {
    ...known,
    name: m.name,
    title: m.title ?? m.name,
    density: m.density ?? base.density,
    tensile: m.tensile ?? base.tensile,
    yield: m.yield ?? base.yield,
    modulus: m.modulus ?? base.modulus,
    k: m.k ?? base.k,
    kSource: m.k === null ? left(base.kSource) : told,
    leastRadius:
      m.leastRadius === null
        ? { ...base.leastRadius, source: left(base.leastRadius.source) }
        : byRows(m.leastRadius, told),
    zinc: m.coating === null ? base.zinc : m.coating === 'zinc',
    source: left(base.source),
  };
}

/** By thickness: the next thicker row holds; past the last one its ratio to the thickness goes on. */
function byRows(given: NonNullable<MaterialData['leastRadius']>, told: string): RadiusRule {
  const sorted = given.toSorted((a, b) => a.thickness - b.thickness);
  const last = sorted.at(-1) as (typeof sorted)[number];
  const rows = sorted.map(({ thickness, radius }) => ({ upTo: thickness, radius }));
  return { source: told, rows, beyond: last.radius / last.thickness };
}
