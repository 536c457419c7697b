import type { Edge, Sheet, Step } from '../../fold/tree.js';
import { asked, panel } from '../../fold/verbs.js';
import { distance } from '../../plane/point.js';
import { type AnyFamily, defineFamily } from '../family.js';
import { describe } from './describe.js';
import { check, type GussetEndParams, nipLeg, params } from './params.js';

function build(p: GussetEndParams, sheet: Sheet): readonly Step[] {
  const [w, nip] = [p.width, nipLeg(p, sheet)];
  const [left, right] = [(w - p.crownWidth) / 2, (w + p.crownWidth) / 2];
  const edges: readonly Edge[] = [
    { name: 'south', from: [nip, 0] },
    { name: 'nip-east', from: [w - nip, 0] },
    { name: 'east', from: [w, nip] },
    { name: 'slope-east', from: [w, p.shoulderHeight] },
    { name: 'crown', from: [right, p.height] },
    { name: 'slope-west', from: [left, p.height] },
    { name: 'west', from: [0, p.shoulderHeight] },
    { name: 'nip-west', from: [0, nip] },
  ];
  const outline = edges.filter((e, i) => distance(e.from, (edges[(i + 1) % edges.length] as Edge).from) > 0);
  return [
    panel('plate', outline),
    asked('width', p.width, 'x'),
    asked('height', p.height, 'y'),
    asked('crownWidth', p.crownWidth, 'x', { edges: [['plate', 'crown']] }),
    asked('shoulderHeight', p.shoulderHeight, 'y', {
      edges: [
        ['plate', 'south'],
        ['plate', 'west'],
      ],
    }),
    ...(nip > 0 ? [asked('cornerNip', nip, 'x', { edges: [['plate', 'nip-east']] })] : []),
  ];
}

export const gussetEnd: AnyFamily = defineFamily({ name: 'gusset-end', params, check, build, describe });
