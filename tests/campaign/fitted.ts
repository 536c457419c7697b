// Boxes of two halves with bought parts on them, of sizes that may fit.
import fc from 'fast-check';

const tenths = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((n) => n / 10);
const one = <T>(...of: T[]) => fc.constantFrom(...of);

const row = fc.record(
  { diameter: tenths(2, 8), count: one(1, 2, 3, 60), edge: tenths(2, 20) },
  { requiredKeys: ['diameter'] },
);

const SITES = ['north-out', 'south-out', 'west-out', 'east-out', 'base', 'underside', 'floor', 'rim'];

const where = fc.record(
  {
    at: one<unknown>({ west: 60 }, [{ west: 60 }, { east: 60 }], { west: 0 }, { nowhere: 5 }, [
      { west: 20 },
      { west: 21 },
    ]),
    turn: one(0, 90, 45),
    by: one<unknown>('blind-rivet', { 'blind-rivet': { diameter: 4 } }, 'screw', 'none'),
  },
  { requiredKeys: [] },
);

const bought: fc.Arbitrary<object> = fc.oneof(
  fc.record(
    {
      type: one('hinge'),
      length: tenths(10, 200),
      leaf: tenths(8, 50),
      knuckle: tenths(2, 12),
      thickness: tenths(0.5, 3),
      holes: row,
      opens: fc.integer({ min: 1, max: 270 }),
    },
    { requiredKeys: ['type', 'length', 'holes'] },
  ),
  fc.record(
    { type: one('hasp'), width: tenths(10, 60), strap: tenths(10, 60), staple: tenths(10, 60), holes: row },
    { requiredKeys: ['type', 'holes'] },
  ),
  fc.record(
    { type: one('handle'), span: tenths(40, 200), reach: tenths(5, 60), hole: tenths(3, 9) },
    { requiredKeys: ['type', 'span', 'hole'] },
  ),
  fc.record(
    { type: one('rivet-nut'), hole: tenths(5, 12), length: tenths(5, 30), flange: tenths(6, 20) },
    { requiredKeys: ['type', 'hole', 'length'] },
  ),
  fc.record(
    { type: one('magnet'), diameter: tenths(5, 40), height: tenths(2, 20), hole: tenths(2, 6) },
    { requiredKeys: ['type', 'diameter', 'height'] },
  ),
  fc.record({
    type: one('caster'),
    length: tenths(40, 120),
    width: tenths(40, 100),
    height: tenths(40, 150),
    wheel: fc.record({ diameter: tenths(20, 120), width: tenths(8, 40) }),
    holes: fc.record({ diameter: tenths(4, 10), along: tenths(20, 100), across: tenths(20, 80) }),
  }),
);

/** Jobs with bought parts. Many can be made, some cannot. */
export const fitted: fc.Arbitrary<unknown> = fc
  .record({
    thickness: one(0.6, 1, 1.5),
    length: tenths(120, 500),
    width: tenths(80, 300),
    height: tenths(40, 120),
    corner: one('open', 'tabbed'),
    rows: fc.array(fc.tuple(bought, where, one(...SITES), one(...SITES)), { minLength: 1, maxLength: 3 }),
  })
  .map(({ thickness, length, width, height, corner, rows }) => ({
    units: 'mm',
    stock: { material: 'mild-steel', thickness },
    parts: ['body', 'lid'].map((name) => ({ name, family: 'hinged-box', length, width, height, corner })),
    joints: [{ name: 'shut', from: 'body.rim', to: 'lid.rim', by: 'none' }],
    hardware: rows.map(([part, at, on, and], i) => ({
      name: `b${i}`,
      ...part,
      ...at,
      on: `body.${on}`,
      ...(['hinge', 'hasp'].includes((part as { type: string }).type)
        ? { and: `lid.${i % 4 === 3 ? and : on}` }
        : {}),
    })),
  }));
