// Vise, bench and hand seamer asked whether a bend is made with them.
import type { Hinge, Panel } from '../body.js';
import { box, EVERYWHERE, jawTools, type Tool, turnedOver } from '../machine.js';
import { STAY, shift } from '../rigid.js';
import { standingFor } from '../standing.js';
import { forwardOf } from '../step.js';
import { strokeFlaws } from '../stroke.js';
import { type Asked, ends, lifted, type Made, type Question, reaches, SURE, thick, told } from './way.js';

const SQUARE = 95; // degrees that are bent by hand
const FAR = 3000; // mm
const GRIP = 8; // mm of flat sheet that is held

type Gripper = Parameters<typeof jawTools>[1] & { readonly most: number };

/** How it is made, or null. */
export function byHand(given: Asked, { action, line, state }: Question): Made | null {
  const { bend } = line.hinges[0] as Hinge;
  const angle = action === 'fold' ? 90 : bend.angle;
  const span = ends(line);
  if (angle > SQUARE) return null;
  const standing = standingFor(given.body, line, { action, angle, setAngle: null, setBack: null }, state);
  if (reaches(standing)[1] < GRIP) return null;
  const { radius, thickness: T, zone } = standing.stroke;
  const by = shift(
    -(radius + T) * Math.tan(Math.min(standing.stroke.angle, Math.PI / 2) / 2) + zone / 2,
    0,
    0,
  );
  const goes = grippers(given).some((g) => {
    if (span[1] - span[0] > g.most) return false;
    const tools = jawTools(given.bare, g, T, span).map((t) => off(t, T));
    const momentAt = (turn: number) => ({ tools, held: STAY, free: turnedOver(standing.stroke, turn) });
    return strokeFlaws(standing, by, momentAt).length === 0;
  });
  return goes ? { told: told('bench, by hand', line), angle: bend.angle, setBack: null } : null;
}

function grippers(given: Asked): readonly Gripper[] {
  const { vise, handSeamer } = given.shop;
  const jaws = vise === null || !thick(given, vise.capacity) ? null : vise;
  const pliers = handSeamer === null || !thick(given, handSeamer.capacity) ? null : handSeamer;
  return [
    ...(jaws === null ? [] : ([1, -1] as const).map((side) => ({ vise: jaws, side, most: jaws.jaws }))),
    ...(jaws === null ? [] : [{ bench: jaws, most: jaws.jaws }]),
    ...(pliers === null ? [] : [{ seamer: pliers, most: pliers.width }]),
  ];
}

const SWING = 150; // mm over a fold that a mallet needs
const AROUND = 30; // mm before it and behind it

/** A fold dressed down with a mallet, its wall flat on the bench, or null. */
export function byMallet(given: Asked, { line, state }: Question): Made | null {
  const { vise } = given.shop;
  const [first] = line.hinges as [Hinge];
  if (vise === null || !thick(given, vise.capacity) || first.child === line.root) return null;
  const T = given.body.thickness;
  const corners = line.hinges.flatMap((h) => (given.body.panels[h.child] as Panel).corners);
  const wide = Math.max(...corners.map((p) => Math.abs(forwardOf(line, p)))) + AROUND;
  const span = ends(line);
  const bench = given.bare('bench', box(-FAR, -FAR, first.bend.zone / 2, 0), [EVERYWHERE]);
  const over = box(-wide, T + SURE, AROUND, T + SWING + SURE);
  const tools = [off(bench, T), given.bare('mallet', over, [[span[0] - AROUND / 5, span[1] + AROUND / 5]])];
  return closes(given, { action: 'close', line, state }, tools, 'bench, with a mallet');
}

const BAR = 25; // mm, half the width of a flattening bar

/** A fold pressed flat between two flat bars as long as its line, or null. */
export function byBars(given: Asked, question: Question): Made | null {
  const { press } = given.shop;
  const { line } = question;
  const span = ends(line);
  if (press === null || span[1] - span[0] > press.length || line.hinges[0]?.child === line.root) return null;
  const T = given.body.thickness;
  const tools = [box(-BAR, T, BAR, FAR), box(-BAR, -FAR, BAR, 0)].map((b) =>
    off(given.bare('bar', b, [[span[0] - SURE, span[1] + SURE]]), T),
  );
  return closes(given, question, tools, 'press, between flat bars');
}

function closes(given: Asked, { line, state }: Question, tools: readonly Tool[], on: string): Made | null {
  const [first] = line.hinges as [Hinge];
  const done: Made = { told: told(on, line), angle: first.bend.angle, setBack: null };
  const standing = standingFor(given.body, line, { action: 'close', ...done, setAngle: null }, state);
  const skip = (panel: number) => line.free.has(panel) || panel === line.root;
  const still = () => ({ tools, held: STAY, free: STAY });
  return strokeFlaws({ ...standing, set: 0 }, STAY, still, skip).length === 0 ? done : null;
}

const HAIR = 0.05; // mm

/** A pair of jaws a hair off the sheet. */
function off(tool: Tool, T: number): Tool {
  const above = tool.solids.every((s) => s.low[2] >= T - 1e-6);
  const below = tool.solids.every((s) => s.high[2] <= 1e-6);
  return above ? lifted(tool, HAIR) : below ? lifted(tool, -HAIR) : tool;
}
