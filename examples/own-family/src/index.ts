// A shelf for seed packets: a back plate, a floor hung on it and a lip hung on the floor.
import {
  asked,
  defineFamily,
  derivedSize,
  flange,
  hem,
  hole,
  need,
  panel,
  rectangle,
  site,
  value,
} from '@tinwright/core/family';

export default defineFamily({
  name: 'seed-shelf',

  // each size is declared once: lengths come out in mm, whatever the job is written in
  values: {
    width: value.size('of the shelf, from end to end', { min: 30 }),
    height: value.size('of the back, over the floor and the hem'),
    depth: value.size('from the back of the back to the front of the lip'),
    lip: value.size('of the lip, over the floor'),
    hem: value.hem('hem along the upper edge of the back, folded to the front; leave out for none'),
    holes: value.maybe(
      value.group('a row of holes to hang it by; leave out for none', {
        diameter: value.size('of each', { max: 12 }),
        inset: value.size('from either end to the middle of the first'),
        below: value.size('from the upper edge to their middles'),
      }),
    ),
  },

  // what of its own cannot be; legs, hems and bends the verbs look after, and sizes that work are found by trying
  check: ({ width, height, lip, holes }) => [
    ...need(lip <= height, ['lip'], (say) => `higher than the back of ${say.size(height)}`),
    ...(holes === null
      ? []
      : [
          ...need(
            holes.inset >= holes.diameter && holes.inset <= width / 2 - holes.diameter,
            ['holes', 'inset'],
            'the holes would run into each other or over an end',
          ),
          ...need(
            holes.below >= holes.diameter && holes.below <= height / 2,
            ['holes', 'below'],
            'the holes would stand on the edge, or in the lower half',
          ),
        ]),
  ],

  // the back stays put, x along its width, y up; the floor folds to its marked face, the lip up again from the floor
  build: ({ width, height, depth, lip, hem: rim, holes }, { thickness }) => [
    panel('back', rectangle(width, height), [['width'], ['height']]),
    flange('floor', ['back', 'south'], { height: depth, by: ['depth'] }),
    flange('lip', ['floor', 'far'], { height: lip, by: ['lip'] }),
    ...(rim === null ? [] : [hem('hem', ['back', 'north'], { ...rim, by: ['hem', 'length'] })]),
    ...(holes === null
      ? []
      : [holes.inset, width - holes.inset].map((x) =>
          hole('back', { at: [x, height - holes.below], diameter: holes.diameter }),
        )),
    // behind the back another part may be fastened: it stands on its lower edge, their middles together
    site('back', [{ panel: 'back', face: 'unmarked' }], {
      panel: 'back',
      at: [width / 2, thickness],
      up: [0, 1],
    }),
    asked('width', width, 'x'),
    asked('height', height, 'y'),
    asked('depth', depth, 'z', { panels: ['back', 'floor', 'lip'] }),
    asked('lip', lip, 'y', { panels: ['floor', 'lip'] }),
  ],

  // a box of packets for the shelf follows this one: `width: { of: shelf.insideDepth, less: 2 }`
  derived: ({ depth }, { thickness }) => [
    derivedSize('insideDepth', depth - 2 * thickness, 'depth', 'between the back and the lip'),
  ],

  describe: {
    title: 'shelf for seed packets',
    summary: 'A back plate to hang up, a floor and a lip that keeps the packets. x runs along the width.',
    example: {
      width: 240,
      height: 110,
      depth: 60,
      lip: 25,
      hem: { type: 'closed', length: 8 },
      holes: { diameter: 5, inset: 30, below: 20 },
    },
  },
});
