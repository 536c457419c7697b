import * as z from 'zod/mini';
import { cut } from '../cutouts/cut.js';
import { type CutoutParams, cutoutValue } from '../cutouts/params.js';
import { finish } from '../edges/finish.js';
import { type EdgeParams, edgeValue } from '../edges/params.js';
import type { Step } from '../fold/draft/tree.js';
import type { Value, Values } from '../schema/value.js';

const MOST = 200; // of one part

/** Values of one kind in a list that may be left out; read only where it is there. */
function listed(words: string, entry: Value): Value {
  return {
    words,
    unit: '',
    options: [],
    inner: { '[]': entry },
    read: (k) => z.optional(k.later(() => k.list(entry.read(k), 0, MOST))),
    write: (given) => given,
  };
}

/** Keys of a part that belong to the job, not to its family. */
export const PART_KEYS: readonly string[] = [
  'name',
  'family',
  'quantity',
  'note',
  'grain',
  'stock',
  'bending',
];

/** What every part may say beside its family's parameters. */
export const COMMON: Values = {
  edges: listed('edges of its panels finished by a fold', edgeValue as Value),
  cutouts: listed('openings cut through its panels', cutoutValue as Value),
};

/** What was asked of a part beside its family's parameters. */
interface Common {
  readonly edges?: readonly EdgeParams[];
  readonly cutouts?: readonly CutoutParams[];
}

/** The verbs that follow from it, after those of the family. */
export function commonSteps({ edges = [], cutouts = [] }: Common): readonly Step[] {
  return [...edges.map((_, i) => finish(edges, i)), ...cutouts.map((c, i) => cut(c, ['cutouts', i]))];
}
