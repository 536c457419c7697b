// Every order, every side, every machine of a part of few bends, with the replay's own bodies, all tools a little larger
// than the shop's margin asks: what is found here can be done, so that a part called impossible must find nothing.
import type { Body, Hinge } from '../body.js';
import type { Done, Shopped, State } from '../standing.js';
import { lineUp } from '../step.js';
import { byBars, byHand, byMallet } from './by-hand.js';
import { onBrake } from './on-brake.js';
import { onPress } from './on-press.js';
import { type Asked, asked, type Made } from './way.js';

/** One way to make some bends. */
interface Try {
  readonly action: Done['action'];
  readonly hinges: readonly Hinge[];
}

/** An order that works, told step by step; null when every one of them fails. */
export function anyOrder(given: Shopped): readonly string[] | null {
  const { body } = given;
  const by = asked(given);
  const dead = new Set<string>();
  const from = (state: State): readonly string[] | null => {
    const tries = triesIn(body, state);
    if (tries.length === 0) return [];
    const key = [...state]
      .map(([id, s]) => `${id} ${s.action}`)
      .toSorted()
      .join();
    if (dead.has(key)) return null;
    for (const t of tries) {
      const how = wayOf(by, t, state);
      if (how === null) continue;
      const next = new Map(state);
      for (const h of t.hinges)
        next.set(h.bend.id, { action: t.action, angle: how.angle, setBack: how.setBack });
      const rest = from(next);
      if (rest !== null)
        return [`${t.action} ${t.hinges.map((h) => h.bend.id).join('+')} ${how.told}`, ...rest];
    }
    dead.add(key);
    return null;
  };
  return from(new Map());
}

/** What can be next: a folded hem is closed at once. */
function triesIn(body: Body, state: State): readonly Try[] {
  const folded = body.hinges.filter((h) => state.get(h.bend.id)?.action === 'fold');
  if (folded.length > 0) return [{ action: 'close', hinges: folded }];
  const left = body.hinges.filter((h) => !state.has(h.bend.id));
  const action = (h: Hinge) => (h.bend.hem === undefined ? 'bend' : h.bend.hem === 'wired' ? 'roll' : 'fold');
  const lines = left.map((h) => left.filter((o) => sameLine(h, o)));
  const groups = lines.filter((l, i) => l.length > 1 && lines.findIndex((o) => o[0] === l[0]) === i);
  return [...groups, ...left.map((h) => [h])].map((hinges) => ({
    action: action(hinges[0] as Hinge),
    hinges,
  }));
}

function sameLine(a: Hinge, b: Hinge): boolean {
  const off = (b.start[0] - a.start[0]) * a.across[0] + (b.start[1] - a.start[1]) * a.across[1];
  const along = Math.abs(a.along[0] * b.along[0] + a.along[1] * b.along[1]);
  const same =
    a.bend.angle === b.bend.angle && a.bend.direction === b.bend.direction && a.bend.hem === b.bend.hem;
  return same && along > 1 - 1e-9 && Math.abs(off) < 1e-3 && Math.abs(a.bend.zone - b.bend.zone) < 1e-6;
}

/** How a machine makes it, the first that does. */
function wayOf(given: Asked, { action, hinges }: Try, state: State): Made | null {
  const [first] = hinges as [Hinge];
  const done: Made = { told: 'by hand', angle: first.bend.angle, setBack: null };
  if (action === 'roll') return done;
  // lines that other bends have parted are no longer one
  if (hinges.length > 1 && parted(given.body, hinges, state)) return null;
  const questions = first.sides.map((root) => ({ action, line: lineUp(given.body, hinges, root), state }));
  const machines = action === 'close' ? [onBrake, byBars, byMallet] : [onBrake, onPress, byHand];
  for (const question of questions)
    for (const machine of machines) {
      const made = machine(given, question);
      if (made !== null) return made;
    }
  return null;
}

/** A bend between two lines that is made already. */
function parted(body: Body, hinges: readonly Hinge[], state: State): boolean {
  const [first] = hinges as [Hinge];
  return hinges
    .slice(1)
    .some((h) =>
      between(body, first.sides[0], h.sides[0]).some((b) => state.has(b.bend.id) && !hinges.includes(b)),
    );
}

function between(body: Body, from: number, to: number): readonly Hinge[] {
  const walk = (at: number, seen: ReadonlySet<number>, way: readonly Hinge[]): readonly Hinge[] | null => {
    if (at === to) return way;
    for (const h of body.hinges) {
      const next = h.sides[0] === at ? h.sides[1] : h.sides[1] === at ? h.sides[0] : -1;
      if (next < 0 || seen.has(next)) continue;
      const found = walk(next, new Set([...seen, next]), [...way, h]);
      if (found !== null) return found;
    }
    return null;
  };
  return walk(from, new Set([from]), []) ?? [];
}
