// Shortest tours through ways to lie, against every walk through them; and what a turn is, against every movement of hands.
import { DEFAULT_COSTS } from '@tinwright/shop';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tourBook } from '../../src/sequence/search/tours.js';
import { type Bearing, turnCost } from '../../src/sequence/search/turns.js';

const bearing = fc.record({
  faceUp: fc.constantFrom('marked' as const, 'unmarked' as const),
  heading: fc.constantFrom(0, 90, 180, 270, 36, 144),
});
const bearings = fc.uniqueArray(bearing, {
  minLength: 1,
  maxLength: 5,
  selector: (b) => `${b.faceUp} ${b.heading}`,
});
const seconds = fc.integer({ min: 1, max: 20 });
const anyCosts = fc
  .record({ turn90: seconds, turn180: seconds, flip: seconds })
  .map((own) => ({ ...DEFAULT_COSTS, ...own }));

const other = (face: Bearing['faceUp']) => (face === 'marked' ? ('unmarked' as const) : ('marked' as const));
const nameOf = ({ faceUp, heading }: Bearing) => `${faceUp} ${heading}`;

/** Least seconds from a start to everything, by relaxing until nothing changes. */
function leastFrom<T>(start: T, name: (t: T) => string, on: (t: T) => readonly (readonly [T, number])[]) {
  const found = new Map([[name(start), 0]]);
  for (let waiting = [start]; waiting.length > 0; ) {
    const next: T[] = [];
    for (const t of waiting)
      for (const [to, more] of on(t)) {
        const sum = (found.get(name(t)) as number) + more;
        if (sum >= (found.get(name(to)) ?? Infinity) - 1e-9) continue;
        found.set(name(to), sum);
        next.push(to);
      }
    waiting = next;
  }
  return found;
}

test('a turn takes what the quickest movements of hands take: round on the bench, over sidewise, over end for end', () => {
  const quarters = [0, 90, 180, 270];
  fc.assert(
    fc.property(anyCosts, bearing, (any, from) => {
      // two half turns are no quarter turn
      const costs = { ...any, turn180: Math.max(any.turn180, any.turn90 / 2) };
      const found = leastFrom<Bearing>(from, nameOf, ({ faceUp, heading }) =>
        quarters.flatMap((by): readonly (readonly [Bearing, number])[] => {
          const to = (heading + by) % 360;
          const round = by === 180 ? costs.turn180 : costs.turn90;
          return [
            ...(by === 0 ? [] : [[{ faceUp, heading: to }, round] as const]),
            ...(by % 180 === 0 ? [[{ faceUp: other(faceUp), heading: to }, costs.flip] as const] : []),
          ];
        }),
      );
      for (const [name, least] of found) {
        const [faceUp, heading] = name.split(' ') as [Bearing['faceUp'], string];
        expect(turnCost(from, { faceUp, heading: Number(heading) }, costs)).toBeCloseTo(least, 9);
      }
    }),
  );
});

test('turned over and half round is one movement; over and a quarter round are two', () => {
  const { flip, turn90, turn180 } = DEFAULT_COSTS;
  const from: Bearing = { faceUp: 'marked', heading: 90 };
  const to = (heading: number): Bearing => ({ faceUp: 'unmarked', heading });
  expect(turnCost(from, to(90), DEFAULT_COSTS)).toBe(flip);
  expect(turnCost(from, to(270), DEFAULT_COSTS)).toBe(flip);
  expect(turnCost(from, to(180), DEFAULT_COSTS)).toBe(flip + turn90);
  expect(turnCost(from, { ...from, heading: 270 }, DEFAULT_COSTS)).toBe(turn180);
});

test('no detour takes less', () => {
  fc.assert(
    fc.property(anyCosts, bearing, bearing, bearing, (costs, a, b, c) => {
      const detour = turnCost(a, b, costs) + turnCost(b, c, costs);
      expect(turnCost(a, c, costs)).toBeLessThanOrEqual(detour + 1e-9);
    }),
  );
});

/** Where a walk has come to: lies come by, by bits, the last of them, and times turned over, up to those that are asked for. */
interface Walk {
  readonly met: number;
  readonly at: number;
  readonly flips: number;
}

test('no walk through the lies of a tour that turns the part over so often takes less, from anywhere and from each of them; the shortest come first', () => {
  fc.assert(
    fc.property(bearings, anyCosts, fc.integer({ min: 0, max: 4 }), (lies, costs, most) => {
      const tours = tourBook(lies, costs, 1);
      for (const from of [-1, ...lies.keys()]) {
        const list = tours(from, most);
        expect(list.map((t) => t.seconds)).toEqual(list.map((t) => t.seconds).toSorted((a, b) => a - b));
        const told = new Map(list.map((t) => [t.lies, t.seconds]));
        for (let bits = 1; bits < 2 ** lies.length; bits++) {
          const chosen = [...lies.keys()].filter((i) => (bits & (1 << i)) !== 0);
          const walks = leastFrom<Walk>(
            { met: 0, at: from, flips: 0 },
            (w) => `${w.met} ${w.at} ${w.flips}`,
            ({ met, at, flips }) =>
              chosen.map((to) => {
                const [a, b] = [lies[at] ?? null, lies[to] as Bearing];
                const over = a !== null && a.faceUp !== b.faceUp ? 1 : 0;
                const next = { met: met | (1 << to), at: to, flips: Math.min(most, flips + over) };
                return [next, a === null ? 0 : turnCost(a, b, costs)] as const;
              }),
          );
          const least = Math.min(...chosen.map((at) => walks.get(`${bits} ${at} ${most}`) ?? Infinity));
          expect(told.get(bits) ?? Infinity).toBeCloseTo(least, 9);
        }
      }
    }),
    { numRuns: 30 },
  );
});
