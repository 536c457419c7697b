import type { Path } from '../../errors/problem.js';
import type { Draft } from './tree.js';

/** `hem.length` of `['hem', 'length']`; any name where the way is only known when the part is built, none of `[]`. */
export type NameOf<P extends Path> = number extends P['length']
  ? string
  : P extends readonly [infer Last extends string | number]
    ? `${Last}`
    : P extends readonly [infer First extends string | number, ...infer Rest extends Path]
      ? `${First}.${NameOf<Rest>}`
      : never;

/** Names of all parameters of a record, `hem`, `hem.length`, `legs.0`. */
export type NamesIn<T> = T extends readonly (infer E)[]
  ? `${number}` | `${number}.${NamesIn<E>}`
  : T extends object
    ? { [K in keyof T & string]: K | `${K}.${NamesIn<T[K]>}` }[keyof T & string]
    : never;

/** Ways to all parameters that the verbs of a draft name: to blame one, or to measure one. */
export function namedIn({ panels, asked }: Draft): readonly Path[] {
  const all = [
    ...asked.flatMap((a) => termsOf(a.name)),
    ...panels.flatMap((p) => [
      ...p.by,
      ...p.holes.flatMap(({ by, asked: own = [] }) =>
        by === undefined ? [own] : [...by.at, by.diameter, own],
      ),
      ...p.slots.flatMap(({ by }) => [by.at, by.depth]),
      ...p.cutouts.map((c) => c.by),
    ]),
  ];
  return all.filter((path) => path.length > 0);
}

/** A size asked may be a sum, `depth + 2 tabs.length`. */
const termsOf = (name: string): readonly Path[] =>
  name.split(/ [+-] /).map((term) => wayOf(term.replace(/^\d+ /, '')));

/** `hems.north.length` or `legs[1]` as a way through the parameters. */
export const wayOf = (name: string): Path =>
  name.split(/[.[\]]+/).flatMap((step) => (step === '' ? [] : [/^\d+$/.test(step) ? Number(step) : step]));
