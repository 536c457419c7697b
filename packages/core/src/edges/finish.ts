import { curlAllowance } from '../bending/wired-edge.js';
import { suggestion } from '../errors/nearest.js';
import { fail, type Path, within } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import { hingeAt } from '../fold/draft/hinge.js';
import { lookupOf } from '../fold/draft/lookup.js';
import { AXIS, type Pose, turn3, type Vec3 } from '../fold/draft/space.js';
import type { Asked, Draft, Panel, Step } from '../fold/draft/tree.js';
import { flange, hem, type On, wired } from '../fold/draft/verbs.js';
import { mouldPoses } from '../fold/settle/settle.js';
import { cornersOf, insetAt, type Neighbour, takenBy, takenByFinish } from './inset.js';
import type { EdgeParams } from './params.js';

const LEAST_FOLD = 5; // mm of edge that a hand can still fold; common practice, no source

/** Finish an edge as the job asks. @param all that it asks for, this one at index `i` */
export function finish(all: readonly EdgeParams[], i: number): Step {
  const edge = all[i] as EdgeParams;
  const by: Path = ['edges', i];
  return (draft) =>
    within(by, () => {
      const { panel, index } = placeOf(draft, edge);
      const inset = insetsOf(draft, panel, index, all, i);
      const left = hingeAt(panel.outline, index).length - inset[0] - inset[1];
      if (left < LEAST_FOLD)
        return fail(
          'edge-short',
          ['edge'],
          (say) =>
            `${say.size(Math.max(0, left))} of edge ${quoted(edge.edge)} is left to fold, ${say.size(LEAST_FOLD)} at least`,
        );
      const id = `${edge.type}-${edge.panel}-${edge.edge}`;
      const done = fold(id, edge, inset, by)(draft);
      const out = outOf(draft, panel, index);
      return {
        ...done,
        asked: draft.asked.flatMap((a) => stillAsked(a, edge, { id, out, panels: draft.panels })),
      };
    });
}

function fold(id: string, e: EdgeParams, inset: readonly [number, number], by: Path): Step {
  const on: On = [e.panel, e.edge];
  switch (e.type) {
    case 'return':
      return flange(id, on, {
        height: e.height,
        angle: e.side === 'up' ? e.angle : -e.angle,
        inset,
        by: [...by, 'height'],
      });
    case 'curl':
      return (draft) => {
        const allowance = curlAllowance(e.diameter, draft.sheet.thickness);
        return wired(id, on, { diameter: e.diameter, allowance, inset, kind: 'curl' }, e.side)(draft);
      };
    case 'wired':
      return wired(id, on, { diameter: e.diameter, allowance: e.allowance, inset }, e.side);
    default: {
      const type = e.type === 'safe' ? 'closed' : e.type;
      const gap = 'gap' in e && e.gap !== null ? { gap: e.gap } : {};
      return hem(id, on, { type, length: e.length, ...gap, inset, by: [...by, 'length'] }, e.side);
    }
  }
}

function placeOf(draft: Draft, { panel: id, edge }: EdgeParams) {
  const panel = draft.panels.find((p) => p.id === id);
  const ids = draft.panels.map((p) => p.id);
  if (panel === undefined)
    return fail('panel-unknown', ['panel'], `there is no panel ${quoted(id)}`, suggestion(id, ids));
  const index = panel.outline.findIndex((e) => e.name === edge);
  const names = panel.outline.map((e) => e.name);
  if (index < 0)
    return fail(
      'edge-unknown',
      ['edge'],
      `panel ${quoted(id)} has no edge ${quoted(edge)}`,
      suggestion(edge, names),
    );
  const there = edge === 'near' && panel.bend !== null ? panel : lookupOf(draft).on(id, edge);
  if (there !== null)
    return fail(
      'edge-twice',
      [],
      `edge ${quoted(edge)} of panel ${quoted(id)} is folded already, by ${quoted(there.id)}`,
      `Take one of the two away, or finish an edge of ${quoted(there.id)}`,
    );
  return { panel, index };
}

/** At the low and the high end of the fold's x, which runs against the panel's edge. */
function insetsOf(
  draft: Draft,
  panel: Panel,
  index: number,
  all: readonly EdgeParams[],
  i: number,
): readonly [number, number] {
  const { thickness, insideRadius } = draft.sheet;
  const taken = (e: EdgeParams) => takenByFinish(e, thickness, insideRadius);
  const own = taken(all[i] as EdgeParams);
  const neighbour = (name: string): Neighbour | null => {
    const there = name === 'near' && panel.bend !== null ? panel : lookupOf(draft).on(panel.id, name);
    if (there !== null) {
      const known = takenBy(there);
      // what a panel hangs on lies beside it, never on it
      return { ...known, lies: known.lies && there !== panel, comes: 'before' };
    }
    const later = all.slice(i + 1).find((e) => e.panel === panel.id && e.edge === name);
    return later === undefined ? null : { ...taken(later), comes: 'after' };
  };
  const { before, after } = cornersOf(panel.outline, index);
  const at = ({ edge, points }: typeof before) => insetAt(own, neighbour(edge), points);
  return [at(after), at(before)];
}

/** The direction out of an edge, in the part's frame. */
function outOf(draft: Draft, { id, outline }: Panel, i: number): Vec3 {
  const { frame } = hingeAt(outline, i);
  return turn3(mouldPoses(draft, lookupOf(draft)).get(id) as Pose, [frame.y[0], frame.y[1], 0]);
}

/** A fold that ends a panel now, and which way the panel ended there. */
interface Fold {
  readonly id: string;
  readonly out: Vec3;
  readonly panels: readonly Panel[];
}

/**
 * A size measured over a panel in the direction that it ends in now ends with the fold; across it nothing changes. What
 * lies aslant, or ends in a fold that does not reach so far, can no longer be measured so.
 */
function stillAsked(a: Asked, e: EdgeParams, { id, out, panels }: Fold): readonly Asked[] {
  const along = Math.abs(out[AXIS[a.axis]]);
  const kept = measuredOver(a, e, panels);
  if (kept === null) return [];
  const { over } = kept;
  if (typeof over !== 'object' || !('panels' in over) || !over.panels.includes(e.panel)) return [kept];
  if (along < 1e-9) return [kept];
  if (along < 1 - 1e-9 || !reaches(e)) return [];
  return [{ ...kept, over: { ...over, bends: [...(over.bends ?? over.panels), id] } }];
}

/** Over the panels that were there, where it was over all; null where it was over the edge or one beside it. */
function measuredOver(a: Asked, e: EdgeParams, panels: readonly Panel[]): Asked | null {
  const { over } = a;
  if (over === 'all') return { ...a, over: { panels: panels.map((p) => p.id) } };
  if (!('edges' in over)) return a;
  const { outline } = panels.find((p) => p.id === e.panel) as Panel;
  const { before, after } = cornersOf(
    outline,
    outline.findIndex((o) => o.name === e.edge),
  );
  // the edges beside it end where it did
  const moved = [e.edge, before.edge, after.edge];
  return over.edges.some(([p, edge]) => p === e.panel && moved.includes(edge)) ? null : a;
}

/** True for a fold whose outside reaches the line where the panel would have ended. */
const reaches = (e: EdgeParams): boolean => e.type !== 'return' || e.angle >= 90;
