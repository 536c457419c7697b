// How two parts are held together, at the edges of what a joint may say.
import fc from 'fast-check';

const ways = fc.constantFrom<unknown>(
  'none',
  'spot-weld',
  'blind-rivet',
  'screw',
  'plug-weld',
  { 'spot-weld': { count: 1 } },
  { 'spot-weld': { pitch: 1 } },
  { 'spot-weld': { count: 500 } },
  { 'blind-rivet': { diameter: 4.8, pitch: 15 } },
  { screw: { diameter: 4.2, count: 3 } },
  { 'plug-weld': { diameter: 8, count: 2 } },
);

/** What stands in a row of `joints:` beside its name and its ends. */
export const joints: fc.Arbitrary<object> = fc
  .record(
    {
      clearance: fc.constantFrom(0, 0.2, 1, 20),
      shift: fc.constantFrom<object>({ across: 5 }, { across: -12.5, up: 3 }, { up: 500 }),
      at: fc.constantFrom<unknown>(0, 10, [10, 60], [10, 10], [5000]),
      every: fc.constantFrom(1, 30, 10_000),
      count: fc.constantFrom(1, 2, 200),
      edge: fc.constantFrom('west', 'east', 'nowhere'),
    },
    { requiredKeys: [] },
  )
  .chain((said) => fc.tuple(ways, fc.nat(3)).map(([by, n]) => (n === 0 ? { ...said, by } : { by })));
