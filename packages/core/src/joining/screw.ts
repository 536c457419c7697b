import { cite } from '../errors/source.js';
import {
  type FastenerAsk,
  type FastenerNeeds,
  fastenerKind,
  type NamedFastenerKind,
  type StackSheet,
} from './fastener.js';

/** Values a joint may give for sheet-metal screws. */
export interface ScrewAsk extends FastenerAsk {
  /** Thread diameter, mm. */
  readonly diameter: number;
}

const SOURCE = [cite('AISI S100 §J4', { basis: 'memory' })];
const PILOT = 0.75; // of the thread; common practice, no source

/** Least distances of sheet-metal screws: 1.5 d to an edge, 3 d apart. */
function screwNeeds(stack: readonly StackSheet[], { diameter }: ScrewAsk): FastenerNeeds {
  return {
    edge: 1.5 * diameter,
    edgeSource: SOURCE,
    pitch: 3 * diameter,
    pitchSource: SOURCE,
    usualPitch: 6 * diameter,
    bend: diameter + 1,
    bendSource: [cite(null, { rule: 'd + #', size: 1, basis: 'common-practice' })],
    // clearance in what is screwed on, a pilot in the last sheet
    holes: stack.map((_, i) => (i === stack.length - 1 ? PILOT * diameter : diameter + 0.3)),
  };
}

/** Sheet-metal screws. */
export const screw: NamedFastenerKind<'screw', ScrewAsk> = fastenerKind<'screw', ScrewAsk>({
  name: 'screw',
  facts: { hole: 'through', heat: 'none', rivet: 'none', tools: ['drill', 'screwdriver', 'eyes'] },
  options: (k) => ({ diameter: k.instead(k.size({ min: 2, max: 8 }), '4.2 mm') }),
  needs: screwNeeds,
  remarks: () => [],
});
