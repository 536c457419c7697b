import { type Given, value as v, type Written } from '../schema/value.js';

/** Which edge, and which way it is folded. */
const at = {
  panel: v.name('panel it belongs to'),
  edge: v.name('its name, such as far'),
};
const folded = {
  ...at,
  side: v.or(v.word<'up' | 'down'>('up (over the marked face) or down', ['up', 'down']), 'up'),
};

/** How an edge may be finished. mm, degrees */
export const finishes = {
  closed: { ...folded, length: v.size('finished width of the hem') },
  open: {
    ...folded,
    length: v.size('finished width of the hem'),
    gap: v.maybe(v.size('inside the fold; one thickness when left out')),
  },
  teardrop: {
    ...folded,
    length: v.size('finished width of the hem'),
    gap: v.maybe(v.size('greatest inside width; two thicknesses when left out')),
  },
  // so that no cut edge is left to touch; common practice, no source
  safe: { ...folded, length: v.or(v.size('finished width of the narrow closed hem'), 6) },
  return: {
    ...folded,
    height: v.size('outside leg of the flange'),
    angle: v.or(v.angle('bent through from flat', 1, 135), 90),
  },
  curl: {
    ...at,
    side: v.or(v.word<'up' | 'down'>('down (to the outside of a wall) or up', ['down', 'up']), 'down'),
    diameter: v.size('inside the roll', { max: 50 }),
  },
  wired: {
    ...at,
    side: v.or(v.word<'up' | 'down'>('down (to the outside of a wall) or up', ['down', 'up']), 'down'),
    diameter: v.size('of the wire', { max: 50 }),
    allowance: v.maybe(v.size('flat metal the roll takes; 2.5 wire diameters when left out')),
  },
};

/** Edges of panels finished by a fold, each said once. */
export const edgeValue = v.choice(
  'edges of its panels finished by a fold',
  'closed, open or teardrop (hem), safe (narrow closed hem), return (flange), curl (rolled round nothing) or wired',
  finishes,
);

/** One edge, as a job writes it. */
export type EdgeInput = NonNullable<Written<{ readonly of: typeof edgeValue }>['of']>;

/** One edge and how it is finished. */
export type EdgeParams = NonNullable<Given<{ readonly of: typeof edgeValue }>['of']>;
