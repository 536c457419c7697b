// What every machine is asked with when all orders are tried: tools a little larger than the shop's margin makes them.
import { type Draw, drawing, type Moment, type Tool } from '../machine.js';
import { type Move, shift } from '../rigid.js';
import { meets, moved } from '../solid.js';
import { atMoment, type Done, type Shopped, type Standing, type State } from '../standing.js';
import type { LineUp, Span } from '../step.js';
import { strokeFlaws } from '../stroke.js';

/** A bend, or bends on one line, that a machine makes. */
export interface Made {
  readonly told: string;
  readonly angle: number;
  readonly setBack: number | null;
}

export interface Asked extends Shopped {
  /** Tools with the margin and a little more, and as they are. */
  readonly draw: Draw;
  readonly bare: Draw;
  readonly off: number;
}

/** One operation with one side held, in a state. */
export interface Question {
  readonly action: Done['action'];
  readonly line: LineUp;
  readonly state: State;
}

export const SURE = 0.3; // mm over the shop's margin
export const DEGREE: number = Math.PI / 180;

export function asked(given: Shopped): Asked {
  const { least, share } = given.shop.margin;
  const off = least + share * given.body.longest + SURE;
  return { ...given, draw: drawing(given.library, off), bare: drawing(given.library, 0), off };
}

export const thick = (
  given: Shopped,
  list: readonly { readonly material: string; readonly thickness: number }[],
) => list.some((c) => c.material === given.material && given.body.thickness <= c.thickness);

/** From the left end of a line to its right one. */
export const ends = (line: LineUp): Span => [line.left, Math.max(...line.spans.map((s) => s[1]))];

/** Flat sheet in front of the line and behind it. */
export function reaches({ body, sides }: Standing): readonly [number, number] {
  const flat = (list: Standing['sides']['free']) =>
    list
      .filter((o) => !o.bent)
      .flatMap((o) => o.solids)
      .filter((s) => s.low[2] > -0.5 && s.high[2] < body.thickness + 0.5);
  return [
    Math.max(0, ...flat(sides.free).map((s) => s.high[0])),
    Math.max(0, ...flat(sides.held).map((s) => -s.low[0])),
  ];
}

/** Strokes with tools as long as the machine: what stops it, or the stretches that the part takes from the tools. */
export function taken(
  standing: Standing,
  by: Move,
  momentAt: (turn: number) => Moment,
  cut: readonly string[],
  skip: (panel: number) => boolean,
): readonly Span[] | null {
  const blocked: Span[] = [];
  const without = (moment: Moment): Moment => ({
    ...moment,
    tools: moment.tools.filter((t) => !cut.includes(t.id)),
  });
  if (strokeFlaws(standing, by, (turn) => without(momentAt(turn)), skip).length > 0) return null;
  for (let i = 0; i <= 24; i++) {
    const moment = momentAt((standing.set * i) / 24);
    const tools = moment.tools.filter((t) => cut.includes(t.id)).flatMap((t) => t.solids);
    const { held, free } = atMoment(standing, moment, by);
    for (const o of [...held, ...free])
      if (!skip(o.panel))
        for (const s of o.solids)
          if (tools.some((t) => meets(s, t))) blocked.push([s.low[1] - SURE * 3, s.high[1] + SURE * 3]);
  }
  return blocked;
}

/** Lower than what lies on it. */
export const sunk = (tool: Tool, by: number): Tool => lifted(tool, -by);

export const lifted = (tool: Tool, by: number): Tool => ({
  ...tool,
  solids: tool.solids.map((s) => moved(s, shift(0, 0, by))),
});

/** In which words a side is named. */
export const told = (on: string, { root }: LineUp): string => `on the ${on}, panel ${root} held`;
