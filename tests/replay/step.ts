// An operation of a bend order as job.json has it, and how its line lies in a machine.
import type { Horns } from '@tinwright/shop';
import type { Body, Hinge } from './body.js';
import { pointOn } from './body.js';
import type { Move, V2 } from './rigid.js';

/** The entries of an operation that a replay needs. mm, degrees */
export interface WrittenStep {
  readonly action: 'bend' | 'fold' | 'close' | 'roll';
  readonly bends: readonly string[];
  readonly machine: 'brake' | 'press' | 'vise' | 'hand';
  /** What the shop calls the machine. */
  readonly machineName: string | null;
  readonly clamp: 'bench' | 'seamer' | 'former' | null;
  readonly held: string;
  readonly faceUp: 'marked' | 'unmarked';
  readonly angle: number;
  readonly setAngle: number | null;
  readonly setBack: number | null;
  readonly stopDistance: number | null;
  readonly touches: { readonly panel: string; readonly by: 'edge' | 'outside'; readonly at: number } | null;
  readonly putIn: Way | null;
  readonly takeOff: Way | null;
  readonly tools:
    | readonly { readonly pieces: readonly number[]; readonly from: number; readonly gap: number }[]
    | null;
  readonly sight: readonly (readonly [V2, V2])[] | null;
  readonly press: {
    readonly punch: string;
    readonly die: string;
    readonly horns: Horns | null;
    readonly force: number;
    readonly gauge: number | null;
  } | null;
}

export type Way = 'straight' | 'along' | 'tilted' | 'with-fingers' | 'end-first';

/** A stretch along y. mm */
export type Span = readonly [number, number];

/** The lines of a step with one side held: x forward from it, z up, y to the right of who stands in front. */
export interface LineUp {
  readonly hinges: readonly Hinge[];
  /** The panel held. */
  readonly root: number;
  /** Panels beyond the lines. */
  readonly free: ReadonlySet<number>;
  /** From the flat frame to the middle of the first line, the sheet between z = 0 and T. */
  readonly place: Move;
  /** Bent material along y, one stretch a line, and the left end of them all. */
  readonly spans: readonly Span[];
  readonly left: number;
}

/** Set a part to some lines. @param root index of the panel held */
export function lineUp(body: Body, hinges: readonly Hinge[], root: number): LineUp {
  const [first] = hinges as [Hinge];
  const held = first.sides[0] === root ? -1 : 1;
  const out: V2 = [-first.across[0] * held, -first.across[1] * held];
  const up = first.bend.direction === 'up';
  const right: V2 = up ? [-out[1], out[0]] : [out[1], -out[0]];
  const [ox, oy] = first.start;
  const place: Move = [
    out[0],
    out[1],
    0,
    -(out[0] * ox + out[1] * oy),
    right[0],
    right[1],
    0,
    -(right[0] * ox + right[1] * oy),
    0,
    0,
    up ? 1 : -1,
    up ? 0 : body.thickness,
  ];
  const along = ([x, y]: V2) => right[0] * (x - ox) + right[1] * (y - oy);
  const spans = hinges.map((h): Span => {
    const ends = [along(h.start), along(pointOn(h, h.length, 0))] as const;
    return [Math.min(...ends), Math.max(...ends)];
  });
  return {
    hinges,
    root,
    free: beyond(body, hinges, root),
    place,
    spans,
    left: Math.min(...spans.map((s) => s[0])),
  };
}

function beyond(body: Body, hinges: readonly Hinge[], root: number): ReadonlySet<number> {
  const [first] = hinges as [Hinge];
  const held = first.across.map((v) => v * (first.sides[0] === root ? -1 : 1)) as unknown as V2;
  // of every line the side that lies where the first one's held side does
  const queue = hinges.map(
    (h) => h.sides[h.across[0] * held[0] + h.across[1] * held[1] > 0 ? 1 : 0] as number,
  );
  const near = new Set(queue);
  for (const p of queue)
    for (const h of body.hinges) {
      if (hinges.includes(h)) continue;
      const to = h.sides[0] === p ? h.sides[1] : h.sides[1] === p ? h.sides[0] : -1;
      if (to >= 0 && !near.has(to)) {
        near.add(to);
        queue.push(to);
      }
    }
  return new Set(body.panels.map((_, i) => i).filter((i) => !near.has(i)));
}

/** Where a point of the flat lies in front of the first line. */
export const forwardOf = ({ place }: LineUp, [x, y]: V2): number =>
  (place[0] as number) * x + (place[1] as number) * y + (place[3] as number);

/** Panel index of an id of the manifest: that of a bend, or the panel that stays put. */
export function panelOf(body: Body, id: string): number {
  const named = body.panels.findIndex((p) => p.id === id);
  return named >= 0 ? named : body.panels.findIndex((p) => p.id === null);
}

const FAR = 3000; // mm

/** Where tools stand; everywhere when the whole rack does. */
export const toolSpans = (step: Pick<WrittenStep, 'tools'>, left: number): readonly Span[] =>
  step.tools === null
    ? [[-FAR, FAR]]
    : step.tools.map(({ pieces, from, gap }): Span => {
        const wide = pieces.reduce((a, b) => a + b, 0) + gap * (pieces.length - 1);
        return [left + from, left + from + wide];
      });
