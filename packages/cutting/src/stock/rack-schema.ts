import { type Gives, type ParamKit, strictGroup } from '@tinwright/core/family';
import { rackShape } from '@tinwright/core/internal';
import * as z from 'zod/mini';

/** Schema of a rack file. */
export function rackSchema(k: ParamKit): Gives<unknown> {
  return strictGroup({
    units: z.enum(['mm', 'in']),
    name: k.or(z.string(), ''),
    note: k.or(z.string(), ''),
    ...rackShape(k, 'named'),
  });
}
