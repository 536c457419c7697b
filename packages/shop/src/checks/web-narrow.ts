import { type Box, cite, type Source, segments } from '@tinwright/core';
import { boxOf, nearPairs, reach } from '@tinwright/core/internal';
import type { Shop } from '../machines/shop.js';
import type { ShopCheck } from './check.js';
import { type CutHole, holesOf, metalBetween, metalTo } from './geometry/panels.js';
import { type LimitPlace, limitCheck } from './limit-check.js';
import { bySources } from './profiles.js';

interface Web {
  readonly least: number;
  readonly source: readonly Source[];
}

/** Least metal between two cuts by how they are made, mm. */
function webFor({ table, profile }: Shop, thickness: number): Web {
  if (table?.process === 'laser') return { least: thickness, source: [cite('tuanthinh.net', { rule: 'T' })] };
  if (table?.process === 'plasma')
    return {
      least: Math.max(1.5 * thickness, 2),
      source: [cite('newayprecision.com', { rule: '1.5T, #', size: 2 })],
    };
  return { least: (profile === 'strict' ? 2 : 1.5) * thickness, source: bySources(profile, PUNCHED) };
}

const PUNCHED = {
  strict: cite(null, { rule: '2T', basis: 'memory' }),
  usual: cite(null, { rule: '1.5T', basis: 'memory' }),
};

interface Narrow extends LimitPlace {
  readonly beside: 'hole' | 'edge';
}

/** Too little metal between a hole and another, or between a hole and the outline. Fasteners keep their own distances. */
export const webNarrow: ShopCheck = limitCheck<'web-narrow', Narrow>({
  code: 'web-narrow',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: (subject, shop) => {
    const { least } = webFor(shop, subject.sheet.thickness);
    const edges = segments(subject.flat.outline);
    const holes = holesOf(subject);
    const at = (hole: CutHole) => ({ at: hole.at, limit: least, names: [hole.panel] });
    const own = holes.filter((h) => h.joint === '');
    // far more than the limit apart they say nothing: of thousands of holes the pairs would be millions
    const pairs = nearPairs(holes.map(boxRound), 2 * least).map(([i, j]) => [holes[i], holes[j]] as HolePair);
    return [
      ...pairs
        .filter(([a, b]) => a.joint === '' || b.joint === '')
        .map(([a, b]): Narrow => {
          const jointed = a.joint !== '' || b.joint !== '';
          return { ...at(a), value: metalBetween(a, b), beside: 'hole', jointed };
        }),
      ...own.map((hole): Narrow => {
        const value = Math.min(...edges.map((s) => metalTo(hole, s)));
        return { ...at(hole), value, beside: 'edge' };
      }),
    ];
  },
  values: ({ beside }) => ({ beside }),
  source: (_, { sheet }, shop) => webFor(shop, sheet.thickness).source,
});

type HolePair = readonly [CutHole, CutHole];

function boxRound({ at: [x, y], radius, rim }: CutHole): Box {
  if (rim === null) return { min: [x - radius, y - radius], max: [x + radius, y + radius] };
  return boxOf(rim.flatMap(reach));
}
