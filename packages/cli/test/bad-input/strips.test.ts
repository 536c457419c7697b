import { describe, expect, test } from 'vitest';
import { partJob } from '../jobs.js';
import { make, refused } from '../place.js';

describe('a strip whose numbers do not fit together', () => {
  const strip = { width: 40, legs: [30, 60, 30], angles: [90, 90] };

  test.each([
    ['two legs with two angles', { legs: [30, 60] }, 'legs: 2 legs given with 2 angles. Give 3 legs', {}],
    [
      'three legs with one angle',
      { angles: [90] },
      'legs: 3 legs given with 1 angle. Give 2 legs',
      { legs: [30, 60] },
    ],
    [
      'three radii with two angles',
      { insideRadii: [1, 2, 3] },
      'insideRadii: 3 radii given with 2 angles. Give one, or 2',
      { insideRadii: [1, 2] },
    ],
    [
      'a bend of no angle',
      { angles: [90, 0] },
      'angles[1]: 0 deg given. Leave the bend out, or bend it',
      { legs: [30, 60], angles: [90] },
    ],
  ])('%s: refused, and what is asked for passes', async (_, change, says, mend) => {
    const legs = Object.keys(mend).length === 0 ? { legs: [30, 60, 30] } : mend;
    const [problem, ...more] = await refused(partJob('bent-strip', { ...strip, ...change }));
    expect(more).toEqual([]);
    expect(problem).toContain(`part "tray": ${says}`);
    expect((await make(partJob('bent-strip', { ...strip, ...change, ...legs }))).exit).toBe(0);
  });
});
