import { type Given, value as v } from '../schema/value.js';

/** Holes that are not round. */
const openings = {
  shape: v.or(
    v.word<'round' | 'square'>('round, or square for the neck of a coach bolt: as wide as a round one', [
      'round',
      'square',
    ]),
    'round',
  ),
  slot: v.maybe(v.size('over the round ends, of slots along the part; left out for none', { max: 200 })),
};

const row = {
  ...openings,
  diameter: v.size('of each hole, or across each slot', { max: 30 }),
  count: v.or(v.count('holes in each half', 1, 60), 2),
  edge: v.maybe(v.size('from either end to the first and the last; evenly spread when left out')),
};

/**
 * Bought parts by their kinds: sizes of the part that lies on the bench, typed in. What is left out is a size that is
 * often met; common practice, no source. mm, degrees
 */
export const hardware = {
  hinge: {
    length: v.size('of the knuckle, along the pin'),
    leaf: v.or(v.size('of each leaf, from the middle of the pin to its edge', { max: 500 }), 20),
    knuckle: v.or(v.size('across the knuckle', { max: 60 }), 5),
    thickness: v.or(v.size('of the leaves', { max: 10 }), 1),
    holes: v.group('a row of holes in each leaf', row),
    opens: v.or(v.angle('how far it shall open from shut', 1, 270), 95),
  },
  hasp: {
    width: v.or(v.size('of both plates', { max: 300 }), 30),
    strap: v.or(v.size('of the plate on the second part, off the line where both meet', { max: 300 }), 30),
    staple: v.or(v.size('of the plate on the first part', { max: 300 }), 30),
    thickness: v.or(v.size('of the plates', { max: 10 }), 1.5),
    reach: v.or(v.size('how far the staple stands off the face', { max: 100 }), 16),
    holes: v.group('a row of holes in each plate', row),
  },
  handle: {
    span: v.size('between the middles of its two holes'),
    reach: v.or(v.size('off the face to the inside of the grip', { max: 300 }), 35),
    grip: v.or(v.size('across the grip', { max: 60 }), 10),
    hole: v.size('of each hole, or across each slot', { max: 30 }),
    ...openings,
  },
  'rivet-nut': {
    hole: v.size('of the hole it is set in', { max: 30 }),
    length: v.size('behind the face, before it is set', { max: 100 }),
    flange: v.maybe(v.size('across its flange; 1.4 × the hole when left out', { max: 60 })),
  },
  magnet: {
    diameter: v.size('across', { max: 200 }),
    height: v.size('off the face', { max: 100 }),
    hole: v.maybe(v.size('for what holds it; leave out for one that is glued on', { max: 30 })),
  },
  caster: {
    length: v.size('of the plate', { max: 500 }),
    width: v.size('of the plate', { max: 500 }),
    height: v.size('from the face to the floor'),
    wheel: v.group('wheel', {
      diameter: v.size('across', { max: 500 }),
      width: v.size('of its tread', { max: 200 }),
    }),
    holes: v.group('four holes in the plate', {
      ...openings,
      diameter: v.size('of each hole, or across each slot', { max: 30 }),
      along: v.size('between their middles, along the length'),
      across: v.size('between their middles, along the width'),
    }),
  },
};

type Kinds = typeof hardware;
/** Kinds of bought parts. */
export type HardwareType = keyof Kinds;

/** A bought part by its sizes. */
export type HardwareParams = { [T in HardwareType]: { readonly type: T } & Given<Kinds[T]> }[HardwareType];
