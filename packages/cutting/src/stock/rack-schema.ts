import { type Gives, MATERIAL_NAMES, numberAbove, type ParamKit, strictGroup } from '@tinwright/core';
import * as z from 'zod/mini';
import type { Trim } from './sheet.js';

const LONGEST_LINE = 200;
/** Most kinds of sheets, most offcuts. */
const MOST = 2000;
const MOST_CORNERS = 200;
/** Widest kerf of a cut, mm. */
const WIDEST_KERF = 10;
const DEAREST = 1_000_000;
const COMMON_LEAST = 100;

const name = (): Gives<string> =>
  z
    .string()
    .check(
      z.minLength(1, { error: 'an empty name given' }),
      z.maxLength(LONGEST_LINE, { error: `longer than ${LONGEST_LINE} characters` }),
    );

const trim = (k: ParamKit): Gives<unknown> => {
  const edge = k.size({ min: 0 });
  const side = k.or(edge, 0);
  const sides: Gives<unknown> = strictGroup({ west: side, east: side, south: side, north: side });
  return z.pipe(
    k.either(edge, sides, 'one length for all edges, or { west, east, south, north },'),
    z.transform(
      (v): Trim => (typeof v === 'number' ? { west: v, east: v, south: v, north: v } : (v as Trim)),
    ),
  );
};

const metal = (k: ParamKit) => ({
  name: name(),
  material: k.oneOf(MATERIAL_NAMES),
  thickness: k.size({ min: 0.1, max: 6 }),
  grain: k.maybe(k.oneOf(['x', 'y'])),
  price: k.maybe(numberAbove(0, DEAREST, '')),
  trim: k.maybe(trim(k)),
});

/** Schema of a rack file. */
export function rackSchema(k: ParamKit): Gives<unknown> {
  const pair = k.list(k.size(), 2, 2);
  const point = k.list(k.size({ min: 0 }), 2, 2);
  const sheet = strictGroup({ ...metal(k), size: pair, count: k.maybe(k.count(0, 100_000)) });
  const offcut = strictGroup({
    ...metal(k),
    size: k.maybe(pair),
    outline: k.maybe(k.list(point, 3, MOST_CORNERS)),
  });
  return strictGroup({
    units: z.enum(['mm', 'in']),
    name: k.or(z.string(), ''),
    note: k.or(z.string(), ''),
    kerf: k.or(k.size({ min: 0, max: WIDEST_KERF }), 0),
    trim: k.or(trim(k), null),
    leastOffcut: k.or(pair, [COMMON_LEAST, COMMON_LEAST]),
    sheets: k.or(k.list(sheet as Gives<unknown>, 0, MOST), []),
    offcuts: k.or(k.list(offcut as Gives<unknown>, 0, MOST), []),
  });
}
