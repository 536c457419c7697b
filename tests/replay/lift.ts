// A press brake opened: the part comes off its punch downwards, along the line, or tilted; and in the same ways onto it.
import type { Moment, PressTools } from './machine.js';
import { chain, type Move, STAY, shift, type V2, type V3 } from './rigid.js';
import { meets, moved, type Solid } from './solid.js';
import { atMoment, type Standing } from './standing.js';
import type { Span, Way, WrittenStep } from './step.js';
import { wayOut } from './way-out.js';
import { piecesAgainst } from './ways.js';

const FAR = 3000; // mm

export function liftFlaws(
  standing: Standing,
  tools: PressTools,
  momentAt: (turn: number) => Moment,
  { putIn, takeOff, spans }: Pick<WrittenStep, 'putIn' | 'takeOff'> & { readonly spans: readonly Span[] },
): readonly string[] {
  const goes = (way: Way | null, moment: Moment) =>
    way === 'end-first' ? endFirst(standing, tools, moment, spans) : lifts(standing, tools, moment);
  return [
    ...(goes(putIn, momentAt(0)) ? [] : ['the punch does not come down to it']),
    ...(goes(takeOff, momentAt(standing.set)) ? [] : ['does not come off the punch']),
  ];
}

const DOWN = 60; // degrees one end is let down at most

/** One end let down past the foot of its horn, about the foot of the other, then out the other way: as solids. */
export function endFirst(
  standing: Standing,
  tools: PressTools,
  moment: Moment,
  spans: readonly Span[],
): boolean {
  const { held, free } = atMoment(standing, moment, STAY);
  const solids = [...held, ...free].flatMap((o) => o.solids);
  const still = [...tools.punch.solids, ...tools.ram.solids];
  const clear = (list: readonly Solid[], by?: V3) => list.every((s) => still.every((t) => !meets(s, t, by)));
  const ends = [Math.min(...spans.map((s) => s[0])), Math.max(...spans.map((s) => s[1]))] as const;
  return ([1, -1] as const).some((way) =>
    [0, 2, 4, 6, 8, 10].some((slide) => {
      const push: V3 = [0, way * slide, 0];
      if (!clear(solids, push)) return false;
      for (let turn = 0; turn <= DOWN; turn++) {
        const by = chain(letDown(ends[way === 1 ? 0 : 1], (-way * turn * Math.PI) / 180), shift(...push));
        const now = solids.map((s) => moved(s, by));
        if (!clear(now)) return false;
        if (clear(now, [0, -way * FAR, 0])) return true;
      }
      return false;
    }),
  );
}

/** Turned about a line along x through a place on the line, at the height of the point. */
const letDown = (y: number, turn: number): Move => {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return [1, 0, 0, 0, 0, c, -s, y - c * y, 0, s, c, -s * y];
};

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
