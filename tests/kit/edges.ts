// Random edges of a part that is planned, finished by a fold.
import type { Part } from '@tinwright/core';
import fc from 'fast-check';

const mm = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((n) => n / 10);

/** One or two edges of any panel, folded in any way. Many can be made, some cannot. */
export function edgesOf({ panels, sheet }: Part): fc.Arbitrary<readonly object[]> {
  const T = sheet.thickness;
  const all = panels.flatMap((p) =>
    p.outline
      .filter((e) => !(e.name === 'near' && p.hang !== null))
      .map((e) => ({ panel: p.id, edge: e.name })),
  );
  const length = mm(Math.ceil(3 * T), Math.ceil(12 * T));
  const finish = fc.oneof(
    fc.record({ type: fc.constant('closed'), length }),
    fc.record({ type: fc.constant('open'), length, gap: mm(1, 3) }),
    fc.record({ type: fc.constant('teardrop'), length: mm(Math.ceil(8 * T), Math.ceil(16 * T)) }),
    fc.record({ type: fc.constant('safe'), length }),
    fc.record({
      type: fc.constant('return'),
      height: mm(Math.ceil(5 * T), Math.ceil(20 * T)),
      angle: fc.constantFrom(90, 45, 120),
    }),
    fc.record({ type: fc.constantFrom('wired', 'curl'), diameter: mm(3, 6) }),
  );
  const side = fc.constantFrom({}, { side: 'up' }, { side: 'down' });
  return fc.array(
    fc.tuple(fc.constantFrom(...all), finish, side).map(([at, f, s]) => ({ ...at, ...f, ...s })),
    { minLength: 1, maxLength: 2 },
  );
}
