import { nip } from '../../fold/draft/outline.js';
import type { Edge, Outline, Sheet, Step } from '../../fold/draft/tree.js';
import { asked, panel, site } from '../../fold/draft/verbs.js';
import { distance } from '../../plane/point.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { describe } from './describe.js';
import { check, type GussetEndParams, nipLeg, values } from './params.js';

function build(p: GussetEndParams, sheet: Sheet): readonly Step[] {
  const nipped = nipLeg(p, sheet);
  const outline = nip(
    nip(plate(p), ['west', 'south'], nipped, 'nip-west'),
    ['south', 'east'],
    nipped,
    'nip-east',
  );
  return [
    panel('plate', outline),
    site(
      'rim',
      [{ panel: 'plate', face: 'unmarked' }],
      { panel: 'plate', at: [p.width / 2, 0], up: [0, 1] },
      p.width,
    ),
    site('crown', [{ panel: 'plate', face: 'marked' }], {
      panel: 'plate',
      at: [p.width / 2, p.height],
      up: [0, 1],
    }),
    asked('width', p.width, 'x'),
    asked('height', p.height, 'y'),
    asked('crownWidth', p.crownWidth, 'x', { edges: [['plate', 'crown']] }),
    asked('shoulderHeight', p.shoulderHeight, 'y', {
      edges: [
        ['plate', 'south'],
        ['plate', 'west'],
      ],
    }),
    ...(nipped > 0 ? [asked('cornerNip', nipped, 'x', { edges: [['plate', 'nip-east']] })] : []),
  ];
}

/** The plate before its corners are nipped. */
function plate({ width, shoulderHeight, height, crownWidth }: GussetEndParams): Outline {
  const edges: Outline = [
    { name: 'south', from: [0, 0] },
    { name: 'east', from: [width, 0] },
    { name: 'slope-east', from: [width, shoulderHeight] },
    { name: 'crown', from: [(width + crownWidth) / 2, height] },
    { name: 'slope-west', from: [(width - crownWidth) / 2, height] },
    { name: 'west', from: [0, shoulderHeight] },
  ];
  // no slope where the crown is as wide, and the shoulder as high, as the end
  return edges.filter((e, i) => distance(e.from, (edges[(i + 1) % edges.length] as Edge).from) > 0);
}

/**
 * End with a gusset crown. A flat plate that closes a channel: straight sides to the shoulder, slopes to a flat
 * crown that holds a handle, lower corners nipped to clear the bends it stands in. x runs along the width, y up.
 * Outside sizes unless a parameter says otherwise.
 */
export const gussetEnd: NamedFamily<'gusset-end', typeof values> = defineFamily({
  name: 'gusset-end',
  values,
  check,
  build,
  describe,
});
