// Vise, bench and hand seamer asked whether a bend is made with them.
import type { Hinge } from '../body.js';
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

/** A pair of jaws a hair off the sheet. */
function off(tool: Tool, T: number): Tool {
  const above = tool.solids.every((s) => s.low[2] >= T - 1e-6);
  const below = tool.solids.every((s) => s.high[2] <= 1e-6);
  return above ? lifted(tool, SURE) : below ? lifted(tool, -SURE) : tool;
}
