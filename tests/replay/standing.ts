// A part as it stands under a line: which bends are made, and where every piece of it is at a moment of a stroke.
import type { Shop } from '@tinwright/shop';
import type { ManifoldToplevel } from 'manifold-3d';
import { type Bent, type Body, bentMetal, FLAT, type Hinge, type Poses, posesFrom } from './body.js';
import type { BendStroke, Moment } from './machine.js';
import { chain, type Move } from './rigid.js';
import { moved, type Solid } from './solid.js';
import type { LineUp, WrittenStep } from './step.js';

/** How far every bend has come. */
export type State = ReadonlyMap<string, Done>;

export type Done = Pick<WrittenStep, 'action' | 'angle' | 'setBack'>;

export const bentIn =
  (body: Body, state: State) =>
  ({ bend }: Hinge): Bent => {
    const now = state.get(bend.id);
    if (now === undefined) return FLAT;
    const full = (bend.angle * Math.PI) / 180;
    if (now.action !== 'fold') return { turn: full, radius: bend.insideRadius, wound: bend.zone };
    return foldOf(body.thickness, bend.zone, now);
  };

/** A hem folded but not closed: as sharp as the room before the nose makes it, or all its metal wound up. */
function foldOf(T: number, zone: number, { angle, setBack }: Pick<Done, 'angle' | 'setBack'>): Bent {
  const turn = (angle * Math.PI) / 180;
  const radius = Math.min(
    zone / turn - T / 2,
    setBack === null ? Infinity : setBack / Math.tan(turn / 2) - T,
  );
  return { turn, radius: Math.max(0, radius), wound: Math.min(zone, turn * (Math.max(0, radius) + T / 2)) };
}

export interface Shopped {
  readonly body: Body;
  readonly shop: Shop;
  readonly material: string;
  readonly library: ManifoldToplevel;
}

/** A part under a line, its current bends still as they were. */
export interface Standing {
  readonly body: Body;
  readonly line: LineUp;
  readonly stroke: BendStroke;
  readonly sides: { readonly held: readonly Own[]; readonly free: readonly Own[] };
  /** Radians it is set to. */
  readonly set: number;
}

/** A piece of the part in the frame of the line. */
export interface Own {
  readonly id: string;
  readonly panel: number;
  /** The metal of a bend. */
  readonly bent: boolean;
  readonly solids: readonly Solid[];
}

export function standingFor(
  body: Body,
  line: LineUp,
  step: Pick<WrittenStep, 'action' | 'angle' | 'setAngle' | 'setBack'>,
  state: State,
): Standing {
  const closing = step.action === 'close';
  const bent = bentIn(body, state);
  const poses = posesFrom(body, line.root, (h) => (line.hinges.includes(h) && !closing ? FLAT : bent(h)));
  const all = piecesIn(body, line, poses, bent);
  const { bend } = line.hinges[0] as Hinge;
  const degree = Math.PI / 180;
  const fold = step.action === 'fold' ? foldOf(body.thickness, bend.zone, step) : null;
  const stroke = {
    thickness: body.thickness,
    radius: fold?.radius ?? bend.insideRadius,
    zone: fold?.wound ?? bend.zone,
    angle: step.angle * degree,
  };
  const isFree = (p: number) => line.free.has(p);
  return {
    body,
    line,
    stroke,
    set: (step.setAngle ?? step.angle) * degree,
    sides: { held: all.filter((o) => !isFree(o.panel)), free: all.filter((o) => isFree(o.panel)) },
  };
}

function piecesIn(body: Body, line: LineUp, poses: Poses, bent: (h: Hinge) => Bent): readonly Own[] {
  const panels = body.panels.map((p, panel): Own => {
    const by = chain(line.place, poses.panels[panel] as Move);
    return { id: p.id ?? 'base', panel, bent: false, solids: p.solids.map((s) => moved(s, by)) };
  });
  const metal = body.hinges.flatMap((h, i): readonly Own[] => {
    if (line.hinges.includes(h)) return [];
    const at = poses.hinges[i] as Poses['hinges'][number];
    const panel = h.sides[at.from === -1 ? 0 : 1];
    const solids = bentMetal(body, h, at, bent(h)).map((s) => moved(s, line.place));
    return solids.length === 0 ? [] : [{ id: `bend ${h.bend.id}`, panel, bent: true, solids }];
  });
  return [...panels, ...metal];
}

const moveAll = (own: readonly Own[], by: Move): readonly Own[] =>
  own.map((o) => ({ ...o, solids: o.solids.map((s) => moved(s, by)) }));

/** Both sides at one moment, `by` where the line lies in the machine. */
export function atMoment(
  { sides }: Standing,
  moment: Moment,
  by: Move,
): { held: readonly Own[]; free: readonly Own[] } {
  return {
    held: moveAll(sides.held, chain(moment.held, by)),
    free: moveAll(sides.free, chain(moment.free, by)),
  };
}
