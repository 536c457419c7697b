// A press brake opened: the part comes off its punch downwards, along the line, or tilted; and in the same ways onto it.
import type { Moment, PressTools } from './machine.js';
import { STAY, type V2, type V3 } from './rigid.js';
import { meets } from './solid.js';
import { atMoment, type Standing } from './standing.js';
import { wayOut } from './way-out.js';
import { piecesAgainst } from './ways.js';

const FAR = 3000; // mm

export function liftFlaws(
  standing: Standing,
  tools: PressTools,
  momentAt: (turn: number) => Moment,
): readonly string[] {
  return [
    ...(lifts(standing, tools, momentAt(0)) ? [] : ['the punch does not come down to it']),
    ...(lifts(standing, tools, momentAt(standing.set)) ? [] : ['does not come off the punch']),
  ];
}

export function lifts(standing: Standing, tools: PressTools, moment: Moment): boolean {
  const { held, free } = atMoment(standing, moment, STAY);
  const solids = [...held, ...free].flatMap((o) => o.solids);
  const still = [...tools.punch.solids, ...tools.ram.solids];
  const ways: readonly V3[] = [
    [0, 0, -FAR],
    [0, FAR, 0],
    [0, -FAR, 0],
  ];
  if (ways.some((by) => solids.every((s) => still.every((t) => !meets(s, t, by))))) return true;
  // down is where the way out looks for its x
  const down = ([x, z]: V2): V2 => [-z, x];
  const pieces = piecesAgainst(solids, still).map(({ section, against }) => ({
    section: section.map(down),
    against: against.map((a) => ({ own: a.own.map(down), other: a.other.map(down) })),
  }));
  return wayOut(pieces, { past: 0 });
}
