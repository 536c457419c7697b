import { isEmpty, type Mask, union, without } from '../part/mask.js';
import { boundOf } from './bound.js';
import type { Lies } from './changes.js';
import { gaugedNext } from './gauging.js';
import type { Position } from './handling.js';
import { type Ahead, precedenceOf } from './precedence.js';
import { riseOf } from './rise.js';
import { type BendProblem, type Node, openWays } from './states.js';
import type { Way } from './ways.js';

/** A way that may follow a state, and the seconds a plan over it takes at least, before anything is asked of geometry. */
export interface Hope {
  readonly way: Way;
  readonly least: number;
}

/** What leads the searches of a part: shared by all of them. */
export interface Guide {
  /** Least seconds still to come. */
  readonly bound: (done: Mask, at: Lies | null) => number;
  /** What comes on top of them, once a state is looked at; infinite where it leads nowhere. */
  readonly rise: (done: Mask, at: Position | null) => number;
  /** Ways on from a state that may still lead to a plan under a limit, the most promising first. */
  readonly hopes: (node: Node, limit: number) => readonly Hope[];
}

const EVEN = 1e-6; // s

/** Sums in another order are equal. */
export const rounded = (seconds: number): number => Math.round(seconds * 1e6) / 1e6;

/** What leads the searches of a part. */
export function guideOf(problem: BendProblem): Guide {
  const bound = boundOf(problem);
  const ahead = precedenceOf(problem);
  return {
    bound,
    rise: riseOf(problem, bound, ahead),
    hopes: (node, limit) => {
      const { at, cost, done } = node;
      const known = ahead(done);
      if (known === null) return [];
      return openWays(problem, node, (way) => isNext(known, way, done))
        .map((way): Hope => {
          const set = gaugedNext(way, done, at?.gauge ?? 0n, problem.costs);
          const { faceUp, heading } = way;
          const lie = {
            faceUp,
            heading,
            stop: way.stop ?? at?.stop ?? null,
            setBack: way.setBack ?? at?.setBack ?? null,
            gauge: set.on,
          };
          const rest = bound(union(done, way.operation.mask), lie);
          return { way, least: rounded(cost + problem.positions.least(at, way) + set.seconds + rest) };
        })
        .filter((h) => h.least < limit - EVEN)
        .toSorted((a, b) => a.least - b.least || a.way.index - b.way.index);
    },
  };
}

/** False for a way that is lost already, or would come before what has to come first. */
function isNext({ open, before }: Ahead, way: Way, done: Mask): boolean {
  const { steps, mask } = way.operation;
  return steps.every((s) => {
    const missing = without(before(s), union(done, mask));
    return open[s]?.some((c) => c.way === way) === true && isEmpty(missing);
  });
}
