import type { Remark } from '../errors/finding.js';
import {
  type AnyFastenerKind,
  type FastenerAsk,
  type FastenerNeeds,
  fastenerKind,
  type StackSheet,
} from './fastener.js';

/** Values a joint may give for plug welds. */
export interface PlugWeldAsk extends FastenerAsk {
  /** Hole to weld through, mm. */
  readonly diameter: number;
}

const SOURCE = 'common practice, no source';

/** Distances of plug welds: a hole in the first sheet, welded through to the next. */
export function plugWeldNeeds(stack: readonly StackSheet[], { diameter }: PlugWeldAsk): FastenerNeeds {
  return {
    edge: 1.5 * diameter,
    edgeSource: SOURCE,
    pitch: 4 * diameter,
    pitchSource: SOURCE,
    usualPitch: 6 * diameter,
    bend: diameter,
    bendSource: SOURCE,
    holes: stack.map((_, i) => (i === 0 ? diameter : null)),
  };
}

function remarks(stack: readonly StackSheet[]): readonly Remark[] {
  const zinc = stack.find((s) => s.material.zinc);
  if (zinc === undefined) return [];
  return [
    {
      code: 'weld-zinc',
      severity: 'warning',
      message: 'galvanised sheet: plug welds in it give off zinc fume',
      source: '29 CFR 1910.252 and 1910.1000 on zinc oxide fume',
      fix: 'strip the zinc round the hole and extract at the weld, or rivet it',
    },
  ];
}

/** Plug welds through a hole in the first sheet. */
export const plugWeld: AnyFastenerKind = fastenerKind<PlugWeldAsk>({
  name: 'plug-weld',
  options: (k) => ({ diameter: k.instead(k.size({ min: 4, max: 16 }), '8 mm') }),
  needs: plugWeldNeeds,
  remarks,
});
