import { cite, type FlatBend } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import type { ShopCheck, ShopSubject } from './check.js';
import { middleOf } from './geometry/panels.js';
import { between, isOpposite, sidesOf } from './geometry/sides.js';
import { limitCheck } from './limit-check.js';

/** Two bends of one panel that turn opposite ways, along each other: a step. mm */
interface Step {
  readonly panel: string;
  readonly bend: FlatBend;
  /** Between the same faces before and after the step. */
  readonly offset: number;
}

/** The steps of a part. Hems lie flat and step nowhere. */
function stepsOf({ part, flat, sheet }: ShopSubject): readonly Step[] {
  return part.panels.flatMap(({ id }) => {
    const sides = sidesOf(part, id).filter((s) => s.hem === null);
    return sides.flatMap((a, i) =>
      sides.slice(i + 1).flatMap((b): readonly Step[] => {
        if (!isOpposite(a, b) || a.angle > 0 === b.angle > 0) return [];
        const turn = radians(Math.min(Math.abs(a.angle), Math.abs(b.angle), 90));
        const offset = between(a, b) * Math.sin(turn) - sheet.thickness * (1 - Math.cos(turn));
        return [{ panel: id, bend: flat.bends.find((f) => f.id === b.bend) as FlatBend, offset }];
      }),
    );
  });
}

/** An offset so small that practice presses it in one stroke. Whether two bends do is left to the order of bends. */
export const offsetSmall: ShopCheck = limitCheck({
  code: 'offset-small',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: (subject) =>
    stepsOf(subject).map(({ panel, bend, offset }) => ({
      at: middleOf(bend),
      value: offset,
      limit: 2 * subject.sheet.thickness,
      names: [panel],
    })),
  values: () => ({}),
  source: () => [cite('fabricators', { rule: '2T' })],
});
