import { lazy } from '@tinwright/core/internal';
import { keyOf, type Mask, maskOf, stepsOf } from '../part/mask.js';
import { type Symmetry, symmetriesOf } from '../part/symmetry.js';
import type { Position } from './handling.js';
import type { BendProblem, Node } from './states.js';

/** The one of all states alike that stands for them. */
export interface Likeness {
  readonly key: number | string;
  readonly at: Position | null;
}

/** A movement of the part, as a state sees it. */
interface Laid {
  readonly done: (done: Mask) => Mask;
  readonly at: (at: Position) => Position;
}

/**
 * States of a part that are one when the part is turned or turned over: what is left to do takes the same on every
 * machine (states alike under a symmetry of the problem: Emerson, Sistla 1996). Of all of them the one with the least name.
 */
export function alikeOf(problem: BendProblem): (node: Node) => Likeness {
  const laid = lazy(() => symmetriesOf(problem.work).flatMap((s) => laidBy(problem, s)));
  return ({ done, at }) => {
    let best: Likeness = { key: keyOf(done), at };
    for (const by of laid()) {
      const key = keyOf(by.done(done));
      if (before(best.key, key)) continue;
      const there = at === null ? null : by.at(at);
      if (key !== best.key || (there?.id ?? -1) < (best.at?.id ?? -1)) best = { key, at: there };
    }
    return best;
  };
}

/** Numbers come before names. */
const before = (a: number | string, b: number | string): boolean =>
  typeof a === typeof b ? a < b : typeof a === 'number';

/** None where headings do not follow the movement. */
function laidBy({ work, ways, positions }: BendProblem, symmetry: Symmetry): readonly Laid[] {
  const headings = new Map<number, number>();
  for (const { operation, station, held, heading } of ways.flat()) {
    const { index } = operation;
    const side = symmetry.swapped[index] === (held === 'parent') ? 'child' : 'parent';
    const on = symmetry.operations[index] as (typeof work.operations)[number];
    const way = ways[on.index]?.find((w) => w.station === station && w.held === side);
    if (way === undefined || (headings.get(heading) ?? way.heading) !== way.heading) return [];
    headings.set(heading, way.heading);
  }
  const masks = new Map<number | string, Mask>();
  return [
    {
      done: (done) => {
        const key = keyOf(done);
        const known = masks.get(key) ?? maskOf(stepsOf(done).map((s) => symmetry.steps[s] as number));
        masks.set(key, known);
        return known;
      },
      at: (at) =>
        positions.laid(
          at,
          headings.get(at.heading) ?? at.heading,
          symmetry.over !== (at.faceUp === 'marked'),
        ),
    },
  ];
}
