import type { Point, Vec3 } from '@tinwright/core';
import { contactAngle } from '../../sweep/contact.js';
import { meet, turned } from '../../sweep/polygon.js';
import { shifted } from '../../sweep/shift.js';
import { FLUSH } from '../../tools/margin.js';
import type { PressTools } from '../../tools/press-tools.js';
import type { Clause } from './bench.js';
import type { Tip } from './press-tip.js';
import { type Interval, widened } from './stretches.js';

/** Parts of a press that stop a stroke, or that the part takes room from. */
export type PressPart = 'ram' | 'die' | 'bed' | 'punch';

type PressClause = Clause<PressPart>;

const OVER = 0.5; // mm of flat sheet that may reach over the middle of a die

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

/** A solid of a part over a die, as its own side sees it from the point of the punch. mm */
export interface PressSolid {
  /** On the die before the stroke, and as high as it lies in the end, before it rises. */
  readonly seen: readonly Point[];
  readonly bent: readonly Point[];
  readonly y: Interval;
  /** What of it reaches over the middle of the die, along the line. */
  readonly past: Interval | null;
  readonly moves: boolean;
}

/** A stroke of a press: both sides rise by half the angle while the tools stand still. mm, radians */
export interface PressStroke {
  readonly tools: PressTools;
  readonly half: number;
  readonly opening: number;
  readonly thickness: number;
  readonly margin: number;
  /** Of the line, and what may stay bare at its ends. */
  readonly ends: Interval;
  readonly bare: number;
}

/** Flat sheet may not reach over the middle of a die, but beside the die's pieces. */
export function flatClause({ bent, past }: PressSolid, { tools, half, margin }: PressStroke): PressClause {
  if (contactAngle(bent, tools.ram, half) <= half)
    return { stops: past === null ? 'ram' : 'die', takes: null };
  return past === null ? FREE : underDie(past, tools, margin);
}

/** What stands off the sheet against ram, die and punch. */
export function pressClause(solid: PressSolid, stroke: PressStroke): PressClause {
  const { seen, bent, y, past, moves } = solid;
  const { tools, half, margin } = stroke;
  if (contactAngle(bent, tools.ram, half) <= half) return { stops: 'ram', takes: null };
  if (meet(seen, tools.bed)) return { stops: 'bed', takes: null };
  if (tools.die.some((d) => meet(seen, d))) return underDie(y, tools, margin);
  if (past !== null && goesDown(bent, stroke)) return underDie(past, tools, margin);
  // what does not stand over the sheet meets the punch no sooner than the sheet
  if (Math.max(...seen.map((p) => p[1])) <= FLUSH) return FREE;
  const hit = tools.punch.filter((p) => contactAngle(bent, moves ? p.shape : p.behind, half) <= half);
  if (hit.length === 0) return FREE;
  const back = Math.min(...hit.map((p) => p.back));
  return { stops: null, takes: overFoot(widened(y, margin), back, stroke), by: 'punch' };
}

/**
 * What is taken of a line where only what is `back` from the ends of the punch is hit: at an end of it, so much less; no
 * tool stands further out then. Elsewhere no horn is turned to it.
 */
function overFoot(
  [from, to]: Interval,
  back: number,
  { ends: [left, right], bare }: Pick<PressStroke, 'ends' | 'bare'>,
): Interval {
  const [first, last] = [from <= left + bare, to >= right - bare];
  if (back === 0 || first === last) return [from, to];
  return first
    ? [Math.min(from, left, to - back) - 1, to - back]
    : [from + back, Math.max(to, right, from + back) + 1];
}

const FREE: PressClause = { stops: null, takes: null };

/** Where the die stands in pieces, none of them may stand there. */
const underDie = (y: Interval, { sectioned }: PressTools, margin: number): PressClause =>
  sectioned ? { stops: null, takes: widened(y, margin), by: 'die' } : { stops: 'die', takes: null };

const MOMENTS = 12;

/** True for what comes down on the die past its middle, while the sheet goes into it. */
function goesDown(bent: readonly Point[], { tools, half, opening, thickness: T }: PressStroke): boolean {
  return Array.from({ length: MOMENTS }, (_, i) => (half * (i + 1)) / MOMENTS).some((turn) => {
    // the shoulders hold the outer face of a sheet whose inner one goes through the point
    const up = (opening / 2) * Math.tan(turn) + T - T / Math.cos(turn);
    const now = turned(bent, turn);
    return tools.die.some((d) => meet(now, shifted(d, 0, up)));
  });
}

export function closingClause(
  section: readonly Point[],
  y: Interval,
  flat: boolean,
  tools: PressTools,
  thickness: number,
  margin: number,
): PressClause {
  if (flat) return FREE;
  const seen = section.map(([x, z]): Point => [x, z - thickness]);
  return { stops: null, takes: tools.bars.some((b) => meet(seen, b)) ? widened(y, margin) : null };
}
