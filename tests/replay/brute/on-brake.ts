// A leaf brake asked whether it makes a bend.
import type { Brake } from '@tinwright/shop';
import type { Hinge } from '../body.js';
import {
  box,
  brakesIn,
  EVERYWHERE,
  type LeafTools,
  leafMoment,
  leafTools,
  type Moment,
  type Tool,
} from '../machine.js';
import { type Move, STAY, shift } from '../rigid.js';
import { atMoment, type Done, type Standing, standingFor } from '../standing.js';
import type { Span } from '../step.js';
import { comes, type Trapped } from '../ways.js';
import { cover } from './cover.js';
import {
  type Asked,
  DEGREE,
  ends,
  type Made,
  type Question,
  reaches,
  sunk,
  taken,
  thick,
  told,
} from './way.js';

const WAYS = ['straight', 'along', 'with-fingers', 'tilted'] as const;
const BESIDE = 6; // mm beside a hem that nothing stands in

/** How it is made on one of the shop's brakes, or null. */
export function onBrake(given: Asked, question: Question): Made | null {
  for (const brake of brakesIn(given.shop)) {
    const made = onOne(given, question, brake);
    if (made !== null) return made;
  }
  return null;
}

function onOne(given: Asked, question: Question, brake: Brake): Made | null {
  const { action, line, state } = question;
  const [first] = line.hinges as [Hinge];
  const span = ends(line);
  if (!thick(given, brake.capacity) || span[1] - span[0] > brake.length) return null;
  const set = settingOn(brake, given.body.thickness, first, action);
  if (set === null) return null;
  const step = { action, angle: set.angle, setAngle: set.turned, setBack: set.s };
  const lying: Lying = {
    given,
    brake,
    question,
    standing: standingFor(given.body, line, step, state),
    s: set.s,
  };
  if (action === 'close' ? closesNot(lying) : tooShort(lying)) return null;
  const stands = standsFor(lying, span);
  if (stands === null || !comesAndGoes(lying, stands)) return null;
  return { told: told(brake.name, line), angle: set.angle, setBack: set.s };
}

interface Lying {
  readonly given: Asked;
  readonly brake: Brake;
  readonly question: Question;
  readonly standing: Standing;
  readonly s: number;
}

const closesNot = ({ given, brake, question: { line } }: Lying): boolean => {
  const [first] = line.hinges as [Hinge];
  return first.child === line.root || hemHeight(given, first) > brake.opening;
};

/** Too little for the leaf to turn, or for the fingers to hold. */
function tooShort({ given, brake, question: { action, line }, standing, s }: Lying): boolean {
  const T = given.body.thickness;
  const span = ends(line);
  const most = brake.capacity.find((c) => c.material === given.material)?.thickness ?? T;
  const load = brake.ratedFlange * (T / most) ** 2 * Math.min(1, (span[1] - span[0]) / brake.length);
  const R = action === 'bend' ? (line.hinges[0] as Hinge).bend.insideRadius : T;
  const [front, back] = reaches(standing);
  return (
    front - standing.stroke.zone < Math.max(s + R + T, brake.lowestFlange, load) || back < s + brake.hold + 2
  );
}

function placeOf({ question: { action, line }, standing: { stroke }, s }: Lying): Move {
  if (action === 'close') return shift(-s + stroke.zone / 2, 0, 0);
  const sight = action === 'fold' ? 0 : (stroke.radius + stroke.thickness) * Math.tan(stroke.angle / 2) - s;
  return shift(-s - sight + (line.hinges[0] as Hinge).bend.zone / 2, 0, 0);
}

const over = ({ given, question }: Lying) => given.body.thickness * (question.action === 'close' ? 2 : 1);

/** Where fingers stand, past all that takes their room; null where that leaves too little. */
function standsFor(lying: Lying, span: Span): readonly Span[] | null {
  const { given, brake, question, standing, s } = lying;
  const { action, line } = question;
  const closing = action === 'close';
  const { off } = given;
  const wide = leafTools(given.draw, brake, over(lying) + off, s + off, [EVERYWHERE]);
  const { beam } = leafTools(given.draw, brake, over(lying), s, [EVERYWHERE]);
  // the sheet lies on bed and leaf, margin or not; past their edges it counts
  const flat = onTable(leafTools(given.bare, withMargin(brake, off), over(lying), s, [EVERYWHERE]));
  const momentAt = (turn: number): Moment => {
    const m = leafMoment({ ...wide, bed: flat.bed, leaf: flat.leaf, beam }, standing.stroke, turn);
    const all = { ...m, tools: [...m.tools, uprights(lying)] };
    return closing ? { ...all, held: STAY, free: STAY } : all;
  };
  const skip = closing ? (p: number) => line.free.has(p) : () => false;
  const still = closing ? { ...standing, set: 0 } : standing;
  const blocked = taken(still, placeOf(lying), momentAt, ['fingers'], skip);
  if (blocked === null) return null;
  const beside = blocked.some(([a, b]) => b > span[0] - BESIDE && a < span[1] + BESIDE);
  return action !== 'bend' && beside
    ? null
    : cover(span, blocked, { pieces: brake.fingers, gaps: brake.gaps });
}

/** What rises over the noses, with the margin to the front too: the nose itself is as near to the sheet as it is set. */
function uprights({ given, brake, s, ...lying }: Lying): Tool {
  const { foot, upright, noseAngle } = brake.finger;
  const low =
    over({ given, brake, s, ...lying }) + Math.min(upright * Math.tan(noseAngle * DEGREE), brake.clearHeight);
  return given.draw('fingers', box(-s - foot, low + given.off, -s - upright, low + FAR), [EVERYWHERE]);
}

const FAR = 300; // mm
const HAIR = 0.02; // mm

const withMargin = (brake: Brake, off: number): Brake => ({
  ...brake,
  bed: brake.bed + off,
  leaf: { ...brake.leaf, width: brake.leaf.width + off },
});

const onTable = (tools: LeafTools): LeafTools => ({
  ...tools,
  bed: sunk(tools.bed, HAIR),
  leaf: sunk(tools.leaf, HAIR),
});

function comesAndGoes(lying: Lying, stands: readonly Span[]): boolean {
  const { given, brake, question, standing, s } = lying;
  const closing = question.action === 'close';
  const tools = leafTools(given.bare, brake, over(lying), s, stands);
  const trapped = (turn: number): Trapped => {
    const moment = leafMoment(tools, standing.stroke, turn);
    const now = atMoment(standing, closing ? { ...moment, held: STAY, free: STAY } : moment, placeOf(lying));
    const solids = [...now.held, ...(closing ? [] : now.free)].flatMap((o) => o.solids);
    return {
      solids,
      tools: onTable(tools),
      opening: brake.opening,
      setBack: s,
      thickness: given.body.thickness,
    };
  };
  const turns = closing ? [0] : [0, standing.set];
  return turns.every((turn) => WAYS.some((w) => comes(w, trapped(turn))));
}

function hemHeight({ body }: Asked, h: Hinge): number {
  const panel = body.panels[h.child];
  const reach = Math.max(
    0,
    ...(panel?.corners ?? []).map((p) =>
      Math.abs((p[0] - h.start[0]) * h.across[0] + (p[1] - h.start[1]) * h.across[1]),
    ),
  );
  return reach + body.thickness;
}

function settingOn(brake: Brake, T: number, { bend }: Hinge, action: Done['action']) {
  const [least, most] = brake.setBack;
  const R = action === 'bend' ? bend.insideRadius : T;
  const wanted = action === 'bend' ? bend.angle : 90;
  const turned = action === 'bend' ? bend.angle + brake.overbend : 120;
  const need = Math.max((R + T) * Math.tan((wanted * DEGREE) / 2), T * Math.tan((turned * DEGREE) / 2));
  const s = Math.min(Math.max(need, least * T), most * T);
  const reach = Math.min((2 * Math.atan(s / T)) / DEGREE, 180 - brake.finger.noseAngle, brake.leaf.stop);
  if (action === 'bend') return turned > reach ? null : { s, angle: bend.angle, turned };
  return { s, angle: action === 'close' ? bend.angle : reach, turned: reach };
}
