import type { AnyFamily, JobPlan } from '@tinwright/core';
import { quoted, suggestion } from '@tinwright/core/internal';
import { jobJsonSchema } from '@tinwright/files';

/** What the schema of jobs says of a place. */
interface Place {
  readonly $ref?: string;
  readonly properties?: Readonly<Record<string, Place>>;
  readonly additionalProperties?: Place | boolean;
  readonly items?: Place;
  readonly anyOf?: readonly Place[];
  readonly oneOf?: readonly Place[];
  readonly enum?: readonly unknown[];
  readonly $defs?: Readonly<Record<string, Place>>;
}

/** What keeps a lock from locking anything, told; null when all of them name a place that the job has or may have. */
export function strayLock(
  locks: readonly string[],
  { parts }: Pick<JobPlan, 'parts'>,
  families: readonly AnyFamily[],
): string | null {
  if (locks.length === 0) return null;
  const schema = jobJsonSchema(families) as Place;
  const all = (places: readonly Place[]): readonly Place[] =>
    places.flatMap((p) => [p, ...all([...named(schema, p), ...(p.anyOf ?? []), ...(p.oneOf ?? [])])]);
  for (const lock of locks) {
    let here = all([schema]);
    for (const [i, step] of lock.split('.').entries()) {
      const ofParts = i === 1 && lock.startsWith('parts.'); // by their names, not their numbers
      const part = parts.find((p) => p.name === step);
      const known = ofParts ? parts.map((p) => p.name) : here.flatMap((p) => Object.keys(p.properties ?? {}));
      here = ofParts
        ? all(here.flatMap((p) => p.items ?? [])).filter((p) => isOf(p, part?.family.name))
        : all(here.flatMap((p) => within(p, step)));
      if (here.length === 0) return stray(lock, step, [...new Set(known)]);
    }
  }
  return null;
}

const named = ({ $defs = {} }: Place, { $ref }: Place): readonly Place[] => {
  const found = $ref === undefined ? undefined : $defs[$ref.replace('#/$defs/', '')];
  return found === undefined ? [] : [found];
};

const isOf = ({ properties }: Place, family: string | undefined) =>
  family !== undefined && properties?.family?.enum?.includes(family) === true;

/** What stands below a place under a name, or a number in a list. */
function within({ properties = {}, additionalProperties, items }: Place, step: string): readonly Place[] {
  if (Object.hasOwn(properties, step)) return [properties[step] as Place];
  if (items !== undefined && /^\d+$/.test(step)) return [items];
  return typeof additionalProperties === 'object' ? [additionalProperties] : [];
}

const stray = (lock: string, word: string, known: readonly string[]): string =>
  `--lock ${lock}: ${quoted(word)} is no place of the job. ${suggestion(word, known)}`;
