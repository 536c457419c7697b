import type { Point, Vec3 } from '@tinwright/core';
import { contactAngle } from '../../sweep/contact.js';
import { meet } from '../../sweep/polygon.js';
import type { PressTools } from '../../tools/press-tools.js';
import type { Clause } from './bench.js';
import type { Tip } from './press-tip.js';
import type { Interval } from './stretches.js';

/** Parts of a press that stop a stroke, or that the part takes room from. */
export type PressPart = 'ram' | 'die' | 'punch';

type PressClause = Clause<PressPart>;

const OVER = 0.5; // mm of flat sheet that may reach over the middle of a die
const FLUSH = 0.05; // mm over the sheet that still count as on it

/** The stretch along the line in which flat sheet of a side reaches over the middle of the die; null for none. mm */
export function overMiddle(corners: readonly Vec3[], moves: boolean, { held, free }: Tip): Interval | null {
  const past = ([x]: Vec3) => (moves ? free - x : x + held) - OVER;
  let [from, to] = [Infinity, -Infinity];
  for (const p of corners) {
    const over = past(p);
    if (over <= 0) continue;
    [from, to] = [Math.min(from, p[1]), Math.max(to, p[1])];
    // where sides of it cross the middle
    for (const q of corners) {
      const under = past(q);
      if (under > 0) continue;
      const y = p[1] + ((q[1] - p[1]) * over) / (over - under);
      [from, to] = [Math.min(from, y), Math.max(to, y)];
    }
  }
  return from > to ? null : [from, to];
}

/** Flat sheet may not reach over the middle of a die, but beside the die's pieces. @param past what of it does, along the line */
export function flatClause(
  bent: readonly Point[],
  past: Interval | null,
  tools: PressTools,
  half: number,
  margin: number,
): PressClause {
  if (contactAngle(bent, tools.ram, half) <= half)
    return { stops: past === null ? 'ram' : 'die', takes: null };
  if (past === null) return { stops: null, takes: null };
  return tools.sectioned
    ? { stops: null, takes: extent(past, margin), by: 'die' }
    : { stops: 'die', takes: null };
}

/**
 * Both sides rise by half the angle while the tools stand still.
 * @param seen on the die before the stroke  @param bent as high as it lies in the end, before it rises
 */
export function pressClause(
  seen: readonly Point[],
  bent: readonly Point[],
  y: Interval,
  moves: boolean,
  tools: PressTools,
  half: number,
  margin: number,
): PressClause {
  const ram = contactAngle(bent, tools.ram, half) <= half;
  const die = tools.die.some((d) => meet(seen, d));
  if (die && tools.sectioned && !ram) return { stops: null, takes: extent(y, margin), by: 'die' };
  const stops = die ? 'die' : ram ? 'ram' : null;
  // what does not stand over the sheet meets the punch no sooner than the sheet
  if (Math.max(...seen.map((p) => p[1])) <= FLUSH) return { stops, takes: null };
  const punch = (moves ? tools.punch : tools.punchBehind).some((p) => contactAngle(bent, p, half) <= half);
  return { stops, takes: punch ? extent(y, margin) : null, by: 'punch' };
}

export function closingClause(
  section: readonly Point[],
  y: Interval,
  flat: boolean,
  tools: PressTools,
  thickness: number,
  margin: number,
): PressClause {
  if (flat) return { stops: null, takes: null };
  const seen = section.map(([x, z]): Point => [x, z - thickness]);
  return { stops: null, takes: tools.bars.some((b) => meet(seen, b)) ? extent(y, margin) : null };
}

const extent = ([from, to]: Interval, margin: number): Interval => [from - margin, to + margin];
