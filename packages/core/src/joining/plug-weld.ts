import { remark } from '../errors/core-findings.js';
import type { Remark } from '../errors/finding.js';
import { COMMON_PRACTICE, cite } from '../errors/source.js';
import {
  type FastenerAsk,
  type FastenerNeeds,
  fastenerKind,
  type NamedFastenerKind,
  type StackSheet,
} from './fastener.js';

/** Values a joint may give for plug welds. */
export interface PlugWeldAsk extends FastenerAsk {
  /** Hole to weld through, mm. */
  readonly diameter: number;
}

/** Distances of plug welds: a hole in the first sheet, welded through to the next. */
function plugWeldNeeds(stack: readonly StackSheet[], { diameter }: PlugWeldAsk): FastenerNeeds {
  return {
    edge: 1.5 * diameter,
    edgeSource: COMMON_PRACTICE,
    pitch: 4 * diameter,
    pitchSource: COMMON_PRACTICE,
    usualPitch: 6 * diameter,
    bend: diameter,
    bendSource: COMMON_PRACTICE,
    holes: stack.map((_, i) => (i === 0 ? diameter : null)),
  };
}

function remarks(stack: readonly StackSheet[]): readonly Remark[] {
  const zinc = stack.find((s) => s.material.zinc);
  if (zinc === undefined) return [];
  return [
    remark('weld-zinc', 'warning', {
      values: { weld: 'plug-weld' },
      source: [cite('29 CFR 1910.252'), cite('29 CFR 1910.1000')],
    }),
  ];
}

/** Plug welds through a hole in the first sheet. */
export const plugWeld: NamedFastenerKind<'plug-weld', PlugWeldAsk> = fastenerKind<'plug-weld', PlugWeldAsk>({
  name: 'plug-weld',
  facts: { hole: 'filled', heat: 'arc', rivet: 'none', tools: ['welder', 'eyes', 'gloves'] },
  options: (k) => ({ diameter: k.instead(k.size({ min: 4, max: 16 }), '8 mm') }),
  needs: plugWeldNeeds,
  remarks,
});
