// Vise, bench and hand seamer asked whether a bend is made with them.
import type { Hinge } from '../body.js';
import { barTools, closingFlaws, type Folded, malletTools, onWall } from '../closing.js';
import { jawTools, type Tool, turnedOver } from '../machine.js';
import { STAY, shift } from '../rigid.js';
import { standingFor } from '../standing.js';
import { strokeFlaws } from '../stroke.js';
import { type Asked, ends, lifted, type Made, type Question, reaches, SURE, thick, told } from './way.js';

const SQUARE = 95; // degrees that are bent by hand
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
  const folded = onWall({ body: given.body, line, state });
  const laid = action !== 'fold' || closes(given, folded, malletTools(given.bare, folded, SURE), '') !== null;
  const goes = grippers(given).some((g) => {
    if (span[1] - span[0] > g.most || !(laid || 'seamer' in g)) return false;
    if (action === 'fold' && 'former' in g) return false;
    const tools = jawTools(given.bare, g, T, span).map((t) => off(t, T));
    const momentAt = (turn: number) => ({ tools, held: STAY, free: turnedOver(standing.stroke, turn) });
    return strokeFlaws(standing, by, momentAt).length === 0;
  });
  return goes ? { told: told('bench, by hand', line), angle: bend.angle, setBack: null } : null;
}

function grippers(given: Asked): readonly Gripper[] {
  const { vise, handSeamer, formerBlock } = given.shop;
  const block = formerBlock === null || !thick(given, formerBlock.capacity) ? null : formerBlock;
  const jaws = vise === null || !thick(given, vise.capacity) ? null : vise;
  const pliers = handSeamer === null || !thick(given, handSeamer.capacity) ? null : handSeamer;
  return [
    ...(jaws === null ? [] : ([1, -1] as const).map((side) => ({ vise: jaws, side, most: jaws.jaws }))),
    ...(jaws === null ? [] : [{ bench: jaws, most: jaws.jaws }]),
    ...(block === null ? [] : [{ former: block, most: block.length }]),
    ...(pliers === null ? [] : [{ seamer: pliers, most: pliers.width }]),
  ];
}

/** A fold dressed down with a mallet, its wall flat on the bench, or null. */
export function byMallet(given: Asked, { line, state }: Question): Made | null {
  const { vise } = given.shop;
  const [first] = line.hinges as [Hinge];
  if (vise === null || !thick(given, vise.capacity) || first.child === line.root) return null;
  const folded = { body: given.body, line, state };
  return closes(given, folded, malletTools(given.bare, folded, SURE), 'bench, with a mallet');
}

/** A fold pressed flat between two flat bars as long as its line, or null. */
export function byBars(given: Asked, { line, state }: Question): Made | null {
  const { press } = given.shop;
  const [from, to] = ends(line);
  if (press === null || to - from > press.length || line.hinges[0]?.child === line.root) return null;
  const folded = { body: given.body, line, state };
  return closes(given, folded, barTools(given.bare, folded, SURE), 'press, between flat bars');
}

function closes(given: Asked, folded: Folded, tools: readonly Tool[], on: string): Made | null {
  const [first] = folded.line.hinges as [Hinge];
  const clear = tools.map((t) => off(t, given.body.thickness));
  if (closingFlaws(folded, clear).length > 0) return null;
  return { told: told(on, folded.line), angle: first.bend.angle, setBack: null };
}

const HAIR = 0.05; // mm

/** A pair of jaws a hair off the sheet. */
function off(tool: Tool, T: number): Tool {
  const above = tool.solids.every((s) => s.low[2] >= T - 1e-6);
  const below = tool.solids.every((s) => s.high[2] <= 1e-6);
  return above ? lifted(tool, HAIR) : below ? lifted(tool, -HAIR) : tool;
}
