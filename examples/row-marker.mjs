// A part family of one's own: a marker for a garden row, a head to write on and a stake bent back from it.
// Try:  tinwright families row-marker --with examples/row-marker.mjs
import {
  asked,
  defineFamily,
  flange,
  hem,
  hole,
  need,
  panel,
  rectangle,
  value,
} from '@tinwright/core/family';

export default defineFamily({
  name: 'row-marker',

  // every parameter is declared once, with its words: lengths come out in mm, whatever the job is written in
  values: {
    width: value.size('of the head', { min: 20 }),
    height: value.size('of the head, over the hem'),
    hem: value.hem('hem along the upper edge; leave out for none'),
    stake: value.group('the strip that goes into the ground', {
      width: value.size('of the stake'),
      length: value.size('from the bend to the end'),
      angle: value.or(value.angle('bent back through, degrees', 10, 90), 30),
    }),
    hole: value.maybe(
      value.size('diameter of a hole in the middle of the head; leave out for none', { max: 12 }),
    ),
  },

  // what of its own cannot be, and why; legs, hems and bends the verbs look after, and sizes that work are found by trying
  check: (p) => [
    ...need(p.stake.width <= p.width, ['stake', 'width'], 'wider than the head it hangs on'),
    ...need(p.hole === null || p.hole <= Math.min(p.width, p.height) / 3, ['hole'], 'too large for the head'),
  ],

  // the part as the trade says it; both views, files and pictures follow
  build: (p) => {
    const side = (p.width - p.stake.width) / 2;
    return [
      panel('head', rectangle(p.width, p.height), [['width'], ['height']]),
      ...(p.hem === null ? [] : [hem('hem', ['head', 'north'], { ...p.hem, by: ['hem', 'length'] })]),
      flange('stake', ['head', 'south'], {
        height: p.stake.length,
        by: ['stake', 'length'],
        angle: -p.stake.angle,
        inset: [side, side],
      }),
      ...(p.hole === null ? [] : [hole('head', { at: [p.width / 2, p.height / 2], diameter: p.hole })]),
      asked('width', p.width, 'x'),
      asked('stake.width', p.stake.width, 'x', { panels: ['stake'] }),
    ];
  },

  describe: {
    title: 'marker for a garden row',
    summary:
      'A head to write on, its upper edge hemmed if wanted, and a stake bent back from it. x runs along the width.',
    example: {
      width: 80,
      height: 50,
      hem: { type: 'closed', length: 8 },
      stake: { width: 24, length: 160, angle: 30 },
      hole: 5,
    },
  },
});
