import { cite, type FlatBend } from '@tinwright/core';
import { closest } from '@tinwright/core/internal';
import type { ShopCheck } from './check.js';
import { middleOf, tangentsOf } from './geometry/panels.js';
import { isHem } from './hem-short.js';
import { limitCheck } from './limit-check.js';

/** A bend so near a hem that one spoils the other: measured between their tangent lines on the wall. */
export const hemNearBend: ShopCheck = limitCheck({
  code: 'hem-near-bend',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: ({ flat, sheet }) =>
    flat.bends.filter(isHem).flatMap((hem) => {
      const [own, ...others] = beside(flat, hem);
      return others.flatMap(({ bend, line }) => {
        const fold = own as (typeof others)[number];
        if (!parallel(bend, hem)) return [];
        return [
          {
            at: middleOf(hem),
            value: closest(fold.line, line).distance,
            limit: 5 * sheet.thickness + bend.insideRadius + hem.insideRadius,
            names: [hem.id, bend.id],
          },
        ];
      });
    }),
  values: () => ({}),
  source: () => [cite('design-guide', { rule: '5T + R + R(hem)' })],
});

/** Tangent lines round the wall a hem is on, the hem's own first. */
function beside(flat: Parameters<typeof tangentsOf>[0], hem: FlatBend) {
  const all = tangentsOf(flat, hem.parent);
  return [...all.filter((t) => t.bend === hem), ...all.filter((t) => t.bend !== hem)];
}

function parallel({ line: [a, b] }: FlatBend, { line: [c, d] }: FlatBend): boolean {
  const [u, v] = [
    [b[0] - a[0], b[1] - a[1]],
    [d[0] - c[0], d[1] - c[1]],
  ] as const;
  const cross = u[0] * v[1] - u[1] * v[0];
  return Math.abs(cross) < 1e-6 * Math.hypot(...u) * Math.hypot(...v);
}
