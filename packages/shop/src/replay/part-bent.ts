import type { Part, PartPanel } from '@tinwright/core';
import { degrees, radians } from '@tinwright/core/internal';
import type { BendStep } from '../sequence/answer/plan.js';

/** How far a bend is bent through, degrees without sign, and to which inside radius, mm. */
export interface ReplayTurn {
  readonly angle: number;
  readonly insideRadius: number;
}

const FLAT = degrees(1e-6); // a bend not yet made is bent through this much: less than can be seen or measured

/** How far a step bends in its machine, degrees: a fold by hand only as far as over bars. */
export const bentTo = ({
  action,
  angle,
  setAngle,
}: Pick<BendStep, 'action' | 'angle' | 'setAngle'>): number =>
  action === 'fold' ? (setAngle ?? angle) : angle;

/** Every bend of the part after some operations. */
export function turns(part: Part, done: readonly BendStep[]): ReadonlyMap<string, ReplayTurn> {
  return new Map(
    part.panels.flatMap(({ id, hang }): readonly [string, ReplayTurn][] => {
      if (hang === null) return [];
      const last = done.findLast((s) => s.bends.includes(id));
      const full = Math.abs(hang.bend.angle);
      const angle = last === undefined ? FLAT : last.action === 'fold' ? Math.min(last.angle, full) : full;
      if (angle === full) return [[id, { angle, insideRadius: hang.bend.insideRadius }]];
      // all bent material is wound up over a part of the angle, or as much of it as the set-back has room for
      const { thickness } = part.sheet;
      const wound = hang.bend.metal.width / radians(angle) - thickness / 2;
      const setBack = last?.setBack ?? null;
      const most = setBack === null ? wound : setBack / Math.tan(radians(angle) / 2) - thickness;
      return [[id, { angle, insideRadius: Math.max(0, Math.min(wound, most)) }]];
    }),
  );
}

/** The part with its bends as far as they are said to be. */
export function turned(part: Part, to: ReadonlyMap<string, ReplayTurn>): Part {
  const panels = part.panels.map((p): PartPanel => {
    const turn = to.get(p.id);
    if (p.hang === null || turn === undefined) return p;
    const { bend } = p.hang;
    const angle = Math.sign(bend.angle) * turn.angle;
    return { ...p, hang: { ...p.hang, bend: { ...bend, angle, insideRadius: turn.insideRadius } } };
  });
  return { ...part, panels };
}
