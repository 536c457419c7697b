// Folds closed without a leaf: dressed down with a mallet on the bench, or pressed between flat bars.
import type { Body, Panel } from './body.js';
import { box, type Draw, EVERYWHERE, type Tool } from './machine.js';
import { STAY } from './rigid.js';
import { type State, standingFor } from './standing.js';
import { forwardOf, type LineUp, lineUp, type Span } from './step.js';
import { strokeFlaws } from './stroke.js';

/** A fold and the part that it belongs to. */
export interface Folded {
  readonly body: Body;
  readonly line: LineUp;
  readonly state: State;
}

const SWING = 150; // mm over a fold that a mallet needs
const AROUND = 30; // mm before it and behind it
const BAR = 25; // mm, half the width of a flattening bar
const FAR = 3000; // mm

const ends = ({ spans, left }: LineUp): Span => [left, Math.max(...spans.map((s) => s[1]))];

/** The bench under the wall that lies on it, and the room of the mallet. @param sure mm more of both */
export function malletTools(draw: Draw, { body, line }: Folded, sure: number): readonly Tool[] {
  const [first] = line.hinges;
  const T = body.thickness;
  const corners = line.hinges.flatMap((h) => (body.panels[h.child] as Panel).corners);
  const wide = Math.max(...corners.map((p) => Math.abs(forwardOf(line, p)))) + AROUND;
  const [from, to] = ends(line);
  const bench = box(-FAR, -FAR, (first?.bend.zone ?? 0) / 2, 0);
  const over = box(-wide, T + sure, AROUND, T + SWING + sure);
  return [draw('bench', bench, [EVERYWHERE]), draw('mallet', over, [[from - AROUND / 5, to + AROUND / 5]])];
}

/** Flat bars as long as the line, over the fold and under it. */
export function barTools(draw: Draw, { body, line }: Folded, sure: number): readonly Tool[] {
  const [from, to] = ends(line);
  return [box(-BAR, body.thickness, BAR, FAR), box(-BAR, -FAR, BAR, 0)].map((b) =>
    draw('bar', b, [[from - sure, to + sure]]),
  );
}

/** What is in the way of tools that close a fold: nothing of it, nor of the wall that it is laid on. */
export function closingFlaws({ body, line, state }: Folded, tools: readonly Tool[]): readonly string[] {
  const angle = line.hinges[0]?.bend.angle ?? 0;
  const step = { action: 'close', angle, setAngle: null, setBack: null } as const;
  const standing = standingFor(body, line, step, state);
  const skip = (panel: number) => line.free.has(panel) || panel === line.root;
  return strokeFlaws({ ...standing, set: 0 }, STAY, () => ({ tools, held: STAY, free: STAY }), skip);
}

/** The same fold with the wall held that it hangs on. */
export function onWall({ body, line, state }: Folded): Folded {
  const [first] = line.hinges;
  const wall = first?.sides.find((s) => s !== first.child) ?? line.root;
  return { body, line: wall === line.root ? line : lineUp(body, line.hinges, wall), state };
}
