import { FASTENER_KINDS, JobError, planJob, readJob } from '@tinwright/core';
import { describe, expect, test } from 'vitest';

/** Two L-shaped brackets back to back: a face of 60 by 40 to fasten. */
function brackets(by: unknown) {
  const bracket = { family: 'bent-strip', width: 60, legs: [40, 40], angles: [90] };
  return planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      bending: { rule: 'k-factor', k: 0.42, insideRadius: 1 },
      parts: [
        { name: 'rail', ...bracket },
        { name: 'batten', ...bracket },
      ],
      joints: [{ name: 'back', from: 'rail.leg-1-back', to: 'batten.leg-1-back', by }],
    } as unknown),
  );
}

function refused(by: unknown): string {
  try {
    brackets(by);
  } catch (error) {
    if (error instanceof JobError) return error.message;
    throw error;
  }
  throw new Error('it was taken');
}

const names = FASTENER_KINDS.map((k) => k.name);

test('spot welds, blind rivets, screws and plug welds', () => {
  expect(names).toEqual(['spot-weld', 'blind-rivet', 'screw', 'plug-weld']);
});

describe.each(names)('%s', (name) => {
  test('a bare word takes every default; both parts get a mark for each', () => {
    const { assembly, parts } = brackets(name);
    const count = assembly?.fasteners.length ?? 0;
    expect(count).toBeGreaterThan(1);
    for (const f of assembly?.fasteners ?? []) {
      expect(f.kind).toBe(name);
      expect(f.on.map((e) => e.piece)).toEqual(['rail', 'batten']);
    }
    for (const { flat } of parts) expect(flat.marks).toHaveLength(count);
  });

  test('a count is kept to', () => {
    expect(brackets({ [name]: { count: 3 } }).assembly?.fasteners).toHaveLength(3);
  });

  test('an unknown value is refused with the nearest name', () => {
    expect(refused({ [name]: { cuont: 3 } })).toContain('unknown key "cuont". Did you mean "count"?');
  });

  test.each([
    [0, '1 to 500 allowed'],
    [-1, '1 to 500 allowed'],
    [501, '1 to 500 allowed'],
    [2.5, 'a whole number allowed'],
  ])('a count of %d is refused', (count, says) => {
    expect(refused({ [name]: { count } })).toContain(`${count} given, ${says}`);
  });
});

describe('holes', () => {
  const holes = (by: unknown) => brackets(by).parts.map((p) => p.flat.holes.length);

  test('spot welds leave the metal whole', () => {
    expect(holes({ 'spot-weld': { count: 3 } })).toEqual([0, 0]);
  });

  test('rivets and screws go through both sheets, plug welds through the first', () => {
    expect(holes({ 'blind-rivet': { count: 3 } })).toEqual([3, 3]);
    expect(holes({ screw: { count: 3 } })).toEqual([3, 3]);
    expect(holes({ 'plug-weld': { count: 3 } })).toEqual([3, 0]);
  });

  test('a rivet of 1/8 in: every hole lies in the bands of TM 10-5410-221-14 and of IFI-114, 0.129 to 0.132 in', () => {
    const { parts } = brackets({ 'blind-rivet': { diameter: '1/8 in', count: 2 } });
    const diameters = parts.flatMap((p) => p.flat.marks.map((m) => m.hole ?? 0));
    expect(diameters).toHaveLength(4);
    for (const d of diameters) {
      expect(d / 25.4).toBeGreaterThanOrEqual(0.129 - 1e-9);
      expect(d / 25.4).toBeLessThanOrEqual(0.132 + 1e-9);
    }
  });

  test('the metal of the holes is missing from the blank', () => {
    const area = (by: unknown) => brackets(by).parts[0]?.flat.area ?? 0;
    const three = area('none') - area({ 'blind-rivet': { diameter: 3.2, count: 3 } });
    // holes of 3.35 mm, the middle of the band: from memory, agrees with "diameter + 0.1 to 0.2 mm"
    expect(three).toBeCloseTo(3 * Math.PI * 1.675 ** 2, 6);
  });
});

describe('what a joint cannot be fastened with', () => {
  test('a rivet there is no size for: the sizes are listed', () => {
    const text = refused({ 'blind-rivet': { diameter: 3.6 } });
    expect(text).toContain('3.6 mm given; there are 3/32 in, 2.4 mm');
  });

  test('a word that is no kind: the kinds there are', () => {
    for (const text of ['"solder" given', ...names]) expect(refused('solder')).toContain(text);
  });

  test('a word nearly a kind: that kind is named', () => {
    expect(refused('spotweld')).toMatch(/"spotweld" given, one of .* allowed\. Write "spot-weld"\.$/);
    expect(refused('solder')).not.toContain('Write');
  });

  test('a key that is no kind: the nearest is named', () => {
    expect(refused({ spotweld: { count: 2 } })).toContain('"spotweld". Did you mean "spot-weld"?');
  });

  test('two kinds at once', () => {
    expect(refused({ 'spot-weld': {}, screw: {} })).toContain('2 ways of fastening given, one allowed');
  });

  test('no kind at all', () => {
    expect(refused({})).toContain('0 ways of fastening given, one allowed');
  });
});

test('none: the parts are set in place and nothing is fastened or marked', () => {
  const { assembly, parts } = brackets('none');
  expect(assembly?.placed).toHaveLength(2);
  expect(assembly?.fasteners).toEqual([]);
  for (const { flat } of parts) expect(flat.marks).toEqual([]);
});
