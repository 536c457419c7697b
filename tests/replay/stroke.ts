// A stroke looked at in moments: the part against the machine, and what turns against what is held.
import type { Moment, Tool } from './machine.js';
import type { Move } from './rigid.js';
import { meets, type Solid } from './solid.js';
import { atMoment, type Own, type Standing } from './standing.js';

const MOMENTS = 24;

/** First thing that meets another while a stroke runs. @param skip panels that are meant to be in a tool */
export function strokeFlaws(
  standing: Standing,
  by: Move,
  momentAt: (turn: number) => Moment,
  skip: (panel: number, tool: string) => boolean = () => false,
): readonly string[] {
  const moments = Array.from({ length: MOMENTS + 1 }, (_, i) => (standing.set * i) / MOMENTS);
  for (const turn of standing.set === 0 ? [0] : moments) {
    const moment = momentAt(turn);
    const now = atMoment(standing, moment, by);
    const part = [...now.held, ...now.free];
    // past its angle a wall that meets another gives way: what it is set further springs back
    const own = turn > standing.stroke.angle + 1e-9 ? null : intoItself(standing, now);
    const flaw = intoTools(part, moment.tools, skip) ?? own;
    if (flaw !== null) return [`${flaw} at ${((turn * 180) / Math.PI).toFixed(0)} degrees`];
  }
  return [];
}

const share = (a: readonly Solid[], b: readonly Solid[]) => a.some((s) => b.some((t) => meets(s, t)));

function intoTools(
  part: readonly Own[],
  tools: readonly Tool[],
  skip: (panel: number, tool: string) => boolean,
): string | null {
  for (const own of part)
    for (const tool of tools)
      if (!skip(own.panel, tool.id) && share(own.solids, tool.solids))
        return `${own.id} meets the ${tool.id}`;
  return null;
}

function intoItself({ line }: Standing, now: ReturnType<typeof atMoment>): string | null {
  const beside = new Set(line.hinges.flatMap((h) => h.sides));
  const joined = (a: Own, b: Own) => beside.has(a.panel) && beside.has(b.panel) && a.bent === b.bent;
  for (const a of now.free)
    for (const b of now.held) if (!joined(a, b) && share(a.solids, b.solids)) return `${a.id} meets ${b.id}`;
  return null;
}
