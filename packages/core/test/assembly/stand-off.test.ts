import { describe, expect, test } from 'vitest';
import { BODY, carrier, plan, R, T } from '../carrier.js';

/** Gaps at the two ends of a carrier whose ends are so much narrower than the channel inside, nips cut wide. */
function gaps(narrower: number, body: Readonly<Record<string, unknown>> = {}, radius = R): readonly number[] {
  const width = BODY.width - 2 * T - narrower;
  const job = carrier({
    head: { bending: { rule: 'k-factor', k: 0.42, insideRadius: radius } },
    body,
    end: { width, cornerNip: 6 },
  });
  const seated = plan(job).assembly?.seated ?? [];
  return seated.filter((s) => s.to.part.name === 'end').map((s) => s.gap);
}

/**
 * The square edge of a plate, `c` from the side it stands beside, meets the round inside of the bend there: a circle
 * of radius R about a point R off side and tab. So the plate stands R − √(R² − (R − c)²) off the tab.
 */
const closedForm = (radius: number, c: number) => radius - Math.sqrt(radius ** 2 - (radius - c) ** 2);

describe('a plate between the bends of the tabs stands off them', () => {
  test.each([0.4, 0.6, 1, 1.4, 1.8])('%d mm narrower than the channel inside', (narrower) => {
    for (const gap of gaps(narrower)) expect(gap).toBeCloseTo(closedForm(R, narrower / 2), 6);
  });

  test.each([1.5, 2, 2.5])('inside radius %d mm, 1 mm narrower', (radius) => {
    for (const gap of gaps(1, {}, radius)) expect(gap).toBeCloseTo(closedForm(radius, 0.5), 6);
  });

  test('as narrow as the seat between the bends: it lies flat', () => {
    expect(gaps(2 * R)).toEqual([0, 0]);
    expect(gaps(2 * R + 1)).toEqual([0, 0]);
  });

  test('tabs on the base alone: the bends of the sides are not in its way, only those of the base', () => {
    // as far off the floor as off the sides: the same circle
    const found = gaps(1, { endTabs: { length: 20, on: ['base'] } });
    for (const gap of found) expect(gap).toBeCloseTo(closedForm(R, 0.5), 6);
  });

  test('the seat a channel publishes is its inside less two inside radii', () => {
    const { parts } = plan(carrier());
    const [body] = parts;
    const seat = body?.family.derived(body.params, body.sheet).find((d) => d.name === 'seatWidth');
    expect(seat?.value).toBeCloseTo(BODY.width - 2 * T - 2 * R, 9);
  });
});
