import { lazy } from '@tinwright/core/internal';
import { type Convex, meet, rectangle } from '../../sweep/polygon.js';
import { subtree, type TreeBend, type TreePanel } from '../part/fold-tree.js';
import type { PartAtLine } from '../part/line-stands.js';
import type { Mask } from '../part/mask.js';
import type { LineStroke, Work } from '../part/operations.js';
import { benchOf } from './bench.js';
import { handMounting } from './hand-mounting.js';
import type { JawLine } from './jaw-line.js';
import { legOf } from './leaf-setup.js';
import { mountBook } from './mount-book.js';
import { unlessStopped } from './prospect.js';
import type { Obstacle } from './station.js';

const SWING = 150; // mm over a fold that a mallet needs; judgement
const AROUND = 30; // mm it needs in front of a fold and behind it; judgement
const BESIDE = 5; // mm from the end of a hem that count as its end; judgement

/**
 * A folded hem dressed down with a mallet, its wall lying on the bench: nothing of the part below the bench, nothing where
 * the mallet swings. @param benches what the bench takes
 */
export function malletLine(
  work: Work,
  { frame, lumps }: PartAtLine,
  operation: LineStroke,
  benches: readonly Convex[],
): JawLine {
  const { tree } = work;
  const [panel] = operation.panels as [number];
  const { held } = frame;
  const mounting = (obstacle: Obstacle | null) => handMounting(operation, { held, swings: false }, obstacle);
  if (held === 'child') {
    const limits: Obstacle = { code: 'jaws', panel };
    return { limits, mount: () => mounting(limits), prospect: () => null };
  }
  const leg = legOf(tree.panels[panel] as TreePanel & { bend: TreeBend });
  const room = rectangle(-leg - AROUND, tree.thickness, AROUND, tree.thickness + SWING);
  const near = ([from, to]: readonly [number, number]) =>
    frame.spans.some(([a, b]) => to > a - BESIDE && from < b + BESIDE);
  const bench = lazy(() =>
    benchOf<'jaws'>(
      work,
      { frame, lumps },
      operation.panels.flatMap((p) => subtree(tree, p)),
      ({ section, y }, _, flat) => {
        const stops = !flat && (benches.some((b) => meet(section, b)) || (near(y) && meet(section, room)));
        return { stops: stops ? 'jaws' : null, takes: null };
      },
      (s) => !s.flat,
    ),
  );
  const judge = (done: Mask) => {
    const stopped = bench()
      .at(done)
      .find((s) => s.clauses.some((c) => c.stops !== null));
    return mounting(stopped === undefined ? null : { code: 'jaws', panel: stopped.lump.panel });
  };
  return {
    limits: null,
    mount: mountBook(() => bench().seen(), judge),
    prospect: unlessStopped(bench),
  };
}

/** A fold bent square over bars, then laid over with a mallet on the bench: where either does not go, nor does the whole. */
export const laidOver = (bars: JawLine, mallet: JawLine): JawLine => ({
  limits: bars.limits,
  mount: (done) => {
    const own = bars.mount(done);
    const { obstacle } = mallet.mount(done);
    return own.obstacle !== null || obstacle === null ? own : { ...own, obstacle };
  },
  prospect: (done) => (mallet.prospect(done) === null ? null : bars.prospect(done)),
});
