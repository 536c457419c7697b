// The bound of a part that lies in many ways, against the exact one of few.
import { DEFAULT_COSTS } from '@tinwright/shop';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestTours } from '../../src/sequence/search/best-tours.js';
import { byAxes } from '../../src/sequence/search/by-axes.js';
import type { BoundInput } from '../../src/sequence/search/handled.js';
import type { Ahead } from '../../src/sequence/search/precedence.js';
import type { Bearing } from '../../src/sequence/search/turns.js';
import type { Way } from '../../src/sequence/search/ways.js';

const STEPS = 6;
const HEADINGS = [0, 90, 180, 270] as const;
const face = fc.constantFrom('marked' as const, 'unmarked' as const);
const seconds = fc.integer({ min: 1, max: 20 });
/** Steps, each with one side up, that may be done with one end of a line to the operator or the other. */
const anySteps = fc.array(
  fc.record({
    faceUp: face,
    ways: fc.uniqueArray(fc.record({ heading: fc.constantFrom(...HEADINGS), bare: seconds }), {
      minLength: 1,
      maxLength: 2,
      selector: (w) => w.heading,
    }),
  }),
  { minLength: 1, maxLength: STEPS },
);
const anyCosts = fc
  .record({ turn90: seconds, turn180: seconds, flip: seconds })
  .map((own) => ({ ...DEFAULT_COSTS, ...own }));

type Steps = typeof anySteps extends fc.Arbitrary<infer T> ? T : never;

function problem(steps: Steps, costs: typeof DEFAULT_COSTS) {
  const ways = steps.map(({ faceUp, ways: own }, s) =>
    own.map((w) => ({ ...w, faceUp, operation: { steps: [s] } }) as unknown as Way),
  );
  const work = { steps: steps.map((_, index) => ({ index })) };
  const input = { work, ways, costs, scale: 1 } as unknown as BoundInput;
  const lies = HEADINGS.flatMap((heading): readonly Bearing[] => [
    { faceUp: 'marked', heading },
    { faceUp: 'unmarked', heading },
  ]);
  const ahead = (flips: number): Ahead => ({
    open: ways.map((list) => list.map((way) => ({ way, lost: { low: 0, high: 0 } }))),
    rivals: [],
    before: () => ({ low: 0, high: 0 }),
    flips: () => flips,
  });
  return { axes: byAxes(input), tours: bestTours(input, lies), ahead };
}

/** As the part lies for one of its steps, or before any. */
function lying(steps: Steps, number: number | null) {
  if (number === null) return null;
  const { faceUp, ways } = steps[number % steps.length] as Steps[number];
  return { faceUp, heading: ways[0]?.heading ?? 0, stop: null, setBack: null, gauge: 0n };
}
const anyStep = fc.option(fc.nat());

test('axis by axis it never takes more than the best tour', () => {
  fc.assert(
    fc.property(anySteps, anyCosts, anyStep, (steps, costs, at) => {
      const { axes, tours } = problem(steps, costs);
      const left = [...steps.keys()];
      expect(axes.plain(left)(lying(steps, at))).toBeLessThanOrEqual(
        tours.plain(left)(lying(steps, at)) + 1e-9,
      );
    }),
    { numRuns: 200 },
  );
});

test('nor where the part has to be turned over more often', () => {
  fc.assert(
    fc.property(anySteps, anyCosts, anyStep, fc.integer({ min: 0, max: 3 }), (steps, costs, at, n) => {
      const { axes, tours, ahead } = problem(steps, costs);
      const least = tours.informed(ahead(n))(lying(steps, at));
      expect(axes.informed(ahead(n))(lying(steps, at))).toBeLessThanOrEqual(least + 1e-9);
    }),
    { numRuns: 200 },
  );
});

test('turning over brings the other end to the operator: it is not counted as well', () => {
  const way = (heading: (typeof HEADINGS)[number]) => [{ heading, bare: 10 }];
  const steps: Steps = [
    { faceUp: 'marked', ways: way(0) },
    { faceUp: 'unmarked', ways: way(180) },
  ];
  const { axes, tours } = problem(steps, DEFAULT_COSTS);
  const { flip, slide } = DEFAULT_COSTS;
  expect(tours.plain([0, 1])(null)).toBe(20 + 2 * slide + flip);
  expect(axes.plain([0, 1])(null)).toBe(20 + 2 * slide + flip);
});
