import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type AnyFamily, JobError } from '@tinwright/core';
import { UNSOUND, withMethods } from '@tinwright/core/internal';
import { messageOf } from '../host/failure.js';

/** A family of a module: what is wrong with its code, or what that throws, is told with the place in the module. */
export function moduleFamily(family: AnyFamily, file: string): AnyFamily {
  const { name, describe, values } = family;
  const told =
    <A extends readonly unknown[], R>(work: (...given: A) => R) =>
    (...given: A): R => {
      try {
        return work(...given);
      } catch (error) {
        if (!(error instanceof JobError)) {
          throw new JobError([
            {
              code: UNSOUND,
              path: [],
              message: `the family's code throws ${messageOf(error)}`,
              fix: fixAt(placeIn(file, error)),
            },
          ]);
        }
        if (error.refusals.every((r) => r.code !== UNSOUND)) throw error;
        throw new JobError(error.refusals.map((r) => (r.code === UNSOUND ? { ...r, fix: fixAt(file) } : r)));
      }
    };
  const fixAt = (place: string) => `Mend family "${name}" in ${place}`;
  return withMethods(
    { name, describe },
    {
      values,
      params: told((...given: Parameters<AnyFamily['params']>) => family.params(...given)),
      part: told((...given: Parameters<AnyFamily['part']>) => family.part(...given)),
      named: told((...given: Parameters<AnyFamily['named']>) => family.named(...given)),
      derived: told((...given: Parameters<AnyFamily['derived']>) => family.derived(...given)),
    },
  );
}

/** `own.mjs:12:8`, where what was thrown says so. */
function placeIn(file: string, error: unknown): string {
  const { stack } = error as { readonly stack?: unknown };
  const path = resolve(file);
  const names = [pathToFileURL(path).href, path];
  const after =
    names.map((name) => String(stack).split(`${name}:`)[1]).find((rest) => rest !== undefined) ?? '';
  const [spot] = /^\d+:\d+/.exec(after) ?? [];
  return spot === undefined ? file : `${file}:${spot}`;
}
