import type { BuiltInFamily } from '@tinwright/core';
import type { Given, HemSpec, Values } from '@tinwright/core/family';

/** Paths of the sizes and choices a family declares, `endTabs.length`; those of a hem are the same everywhere. */
type PathsOf<T> = T extends readonly unknown[] | HemSpec
  ? never
  : T extends object
    ? { [K in keyof T & string]: K | `${K}.${PathsOf<T[K]>}` }[keyof T & string]
    : never;

interface Told<V extends Values> {
  readonly title: string;
  readonly sizes: Readonly<Record<PathsOf<Given<V>>, string>>;
}

/** What every family says of itself and of its parameters, in a language; one that is missing does not compile. */
export interface FamilyWords {
  readonly hem: Readonly<Record<'type' | 'length' | 'gap', string>>;
  readonly families: { readonly [F in BuiltInFamily as F['name']]: Told<F['values']> };
}
