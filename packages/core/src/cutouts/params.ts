import { type Given, value as v, type Written } from '../schema/value.js';

/** So many, evenly. */
const repeated = (words: string) =>
  v.maybe(v.group(words, { count: v.count('how many', 1, 200), pitch: v.size('from middle to middle') }));

/** Where an opening stands, whatever its shape. */
const place = {
  panel: v.name('panel it goes through'),
  from: v.maybe(
    v.named(
      'its middle from edges of the panel by their names; from one edge it stands at the middle of that edge, from none at the middle of the panel',
      v.size('from this edge; from the outside where it is bent', { min: 0 }),
    ),
  ),
  turn: v.or(v.angle('turned counter-clockwise, seen from the marked face', -360, 360), 0),
  columns: repeated('repeated side by side, the middle of all at its place'),
  rows: repeated('repeated over each other'),
};

/** Openings of a part by their shapes. mm, degrees; x of a shape runs along x of its panel before it is turned. */
export const shapes = {
  round: { ...place, diameter: v.size('across') },
  slot: { ...place, length: v.size('over its round ends'), width: v.size('across') },
  rectangle: {
    ...place,
    length: v.size('along x'),
    width: v.size('along y'),
    radius: v.or(v.size('of its corners', { min: 0 }), 0),
  },
  keyhole: {
    ...place,
    diameter: v.size('of the round that a head goes through'),
    width: v.size('of the slot that holds it'),
    length: v.size('from the middle of the round to the middle of the end of the slot'),
  },
  // for four fingers of a gloved hand; common practice, no source
  finger: {
    ...place,
    length: v.or(v.size('over its round ends'), 95),
    width: v.or(v.size('across'), 32),
  },
  label: {
    ...place,
    length: v.size('between its two slots, into which the ends of a card are tucked'),
    width: v.size('of each slot, the height of the card'),
    slot: v.or(v.size('across each slot'), 2),
  },
  outline: {
    ...place,
    cut: v.maybe(v.name('a .svg or .dxf file of closed outlines, beside the job')),
    unit: v.maybe(v.word('mm or in, where the file does not say', ['mm', 'in'])),
    loops: v.maybe(v.outlines('outlines by their corners [x, y], mm, where no file is given')),
    length: v.maybe(v.size('of all outlines together along x; as drawn when left out')),
  },
  louvre: {
    ...place,
    length: v.size('of the flap, along the line it is bent by'),
    width: v.size('of the flap, from that line to its free edge'),
    height: v.size('how far its free edge shall stand off the sheet'),
    slot: v.or(v.size('of the cut round three sides of it'), 1.5),
    side: v.or(
      v.word<'up' | 'down'>('down (away from the marked face) or up: where the flap is bent to', [
        'down',
        'up',
      ]),
      'down',
    ),
  },
  vent: {
    ...place,
    length: v.size('of the field, along its slots'),
    width: v.size('of the field, across them'),
    slot: v.or(v.size('across each slot'), 4),
    web: v.or(v.size('of metal between two slots, at least'), 8),
  },
};

/** Openings cut through panels, each said once. */
export const cutoutValue = v.choice(
  'openings cut through its panels',
  'round, slot, rectangle, keyhole, finger (hole to carry it by), label (two slots for a card), outline (of a drawing), louvre (flap cut free on three sides and bent out by hand) or vent (field of slots)',
  shapes,
);

/** One opening, or a row or grid of them, as a job writes it. */
export type CutoutInput = NonNullable<Written<{ readonly of: typeof cutoutValue }>['of']>;

/** One opening, or a row or grid of them. */
export type CutoutParams = NonNullable<Given<{ readonly of: typeof cutoutValue }>['of']>;
