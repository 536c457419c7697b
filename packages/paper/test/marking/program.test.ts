import { FAMILIES } from '@tinwright/core';
import { markingProgram, verifyMarking } from '@tinwright/paper/internal';
import { describe, expect, test } from 'vitest';
import { planned } from '../../../files/test/samples.js';

const carrier = (bending: object) =>
  planned(
    [
      {
        name: 'body',
        family: 'hemmed-channel',
        length: 400,
        width: 200,
        height: 55,
        hem: { type: 'closed', length: 15 },
        endTabs: { length: 20 },
      },
    ],
    { bending },
  ).parts[0];

test.each(FAMILIES.map((f) => [f.name, f] as const))(
  '%s: the program replayed scribes every line',
  (_, family) => {
    const [part] = planned([{ name: 'part', family: family.name, ...family.describe.example }]).parts;
    if (part === undefined) throw new Error('no part');
    const rows = markingProgram(part.flat);
    expect(verifyMarking(rows, part.flat)).toEqual([]);
  },
);

describe('a row left out, or a setting off by a fiftieth of a millimetre, is seen', () => {
  const flat = carrier({ rule: 'k-factor', k: 0.42, insideRadius: 1 })?.flat as NonNullable<
    ReturnType<typeof carrier>
  >['flat'];
  const rows = markingProgram(flat);
  test.each(rows.map((r, i) => [i + 1, r.kind] as const))('row %i, %s', (n) => {
    expect(
      verifyMarking(
        rows.filter((_, i) => i !== n - 1),
        flat,
      ),
    ).not.toEqual([]);
    const row = rows[n - 1] as (typeof rows)[number];
    if (row.set === null) return;
    const off = rows.map((r) => (r === row ? { ...r, set: (r.set ?? 0) + 0.02 } : r));
    expect(verifyMarking(off, flat)).not.toEqual([]);
  });
});

test('a channel with bends made up for: 12 rows at most; laid out at nominal sizes: 6', () => {
  const rows = (bending: object) =>
    markingProgram(carrier(bending)?.flat as NonNullable<ReturnType<typeof carrier>>['flat']);
  expect(rows({ rule: 'k-factor', k: 0.42, insideRadius: 1 }).length).toBeLessThanOrEqual(12);
  const nominal = rows({ rule: 'nominal', insideRadius: 1 });
  expect(nominal.length).toBeLessThanOrEqual(6);
  expect(nominal[0]).toMatchObject({ kind: 'parallel', set: 15 });
});
