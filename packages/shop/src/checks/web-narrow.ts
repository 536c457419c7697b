import { cite, type Source, segments } from '@tinwright/core';
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
    return holes.flatMap((hole, i): readonly Narrow[] => {
      const own = hole.joint === '';
      const others = holes.slice(i + 1).filter((o) => own || o.joint === '');
      const toEdge = Math.min(...edges.map((s) => metalTo(hole, s)));
      const jointed = (o: CutHole) => !own || o.joint !== '';
      return [
        ...others.map((o) => ({
          at: hole.at,
          value: metalBetween(hole, o),
          limit: least,
          names: [hole.panel],
          beside: 'hole' as const,
          jointed: jointed(o),
        })),
        ...(own
          ? [{ at: hole.at, value: toEdge, limit: least, names: [hole.panel], beside: 'edge' as const }]
          : []),
      ];
    });
  },
  values: ({ beside }) => ({ beside }),
  source: (_, { sheet }, shop) => webFor(shop, sheet.thickness).source,
});
