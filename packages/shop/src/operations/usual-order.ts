import type { FlatBend, PartPlan } from '@tinwright/core';
import { strokeOf } from '../sequence/answer/stroke.js';
import type { BendWork } from './operation.js';

const SAME = 1e-6;

/**
 * The trade's usual order of bends where no machine was asked: hems and wired edges first, then what hangs on other
 * flanges, then shorter lines before longer ones; bends on one line that are alike in one stroke.
 * Common practice, no source.
 */
export function usualOrder({ part, flat }: Pick<PartPlan, 'part' | 'flat'>): readonly BendWork[] {
  const parentOf = new Map(part.panels.map((p) => [p.id, p.hang?.bend.parent ?? null]));
  const depth = (id: string): number => {
    const parent = parentOf.get(id) ?? null;
    return parent === null ? 0 : 1 + depth(parent);
  };
  const groups: FlatBend[][] = [];
  for (const bend of flat.bends) {
    const alike = groups.find((g) => oneLine(g[0] as FlatBend, bend));
    if (alike === undefined) groups.push([bend]);
    else alike.push(bend);
  }
  const hemmed = ([b]: readonly FlatBend[]) => b?.hem != null;
  const deepest = (g: readonly FlatBend[]) => Math.max(...g.map((b) => depth(b.id)));
  const length = (g: readonly FlatBend[]) => g.reduce((sum, b) => sum + lengthOf(b), 0);
  const ordered = groups.toSorted(
    (a, b) =>
      Number(hemmed(b)) - Number(hemmed(a)) || deepest(b) - deepest(a) || tidy(length(a)) - tidy(length(b)),
  );
  return ordered
    .flatMap((g): readonly Omit<BendWork, 'index'>[] => {
      const [{ hem, angle }] = g as [FlatBend];
      const of = (action: BendWork['action']) => {
        const done = action === 'fold' ? null : angle;
        return { ...strokeOf(action, g), angle: done, step: null };
      };
      if (hem === null) return [of('bend')];
      return hem === 'wired' || hem === 'curl' ? [of('roll')] : [of('fold'), of('close')];
    })
    .map((work, index) => ({ ...work, index }));
}

const tidy = (mm: number): number => Math.round(mm * 1e4);

const lengthOf = ({ line: [a, b] }: FlatBend): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** True for bends that lie on one line of the flat and are alike; hems are folded one by one. */
function oneLine(a: FlatBend, b: FlatBend): boolean {
  if (a.hem !== null || b.hem !== null || a.direction !== b.direction) return false;
  if (Math.abs(a.angle - b.angle) > SAME || Math.abs(a.insideRadius - b.insideRadius) > SAME) return false;
  const [p, q] = a.line;
  const off = ([x, y]: readonly [number, number]) =>
    ((q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0])) / lengthOf(a);
  return b.line.every((r) => Math.abs(off(r)) < SAME);
}
