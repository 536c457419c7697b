import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import { BODY, type Changes, carrier, END, plan, R, T } from '../carrier.js';

const rowOf = (changes: Changes, joint: string) => {
  const row = plan(carrier(changes)).assembly?.fits.find((f) => f.joint === joint);
  if (row === undefined) throw new Error(`no fit of ${joint}`);
  return row;
};
const clashesOf = (changes: Changes) => plan(carrier(changes)).findings.filter((f) => f.code === 'clash');

const inside = BODY.width - 2 * T;
const bare = { hem: { type: 'none' } };
/** A handle that reaches only one end: in nobody's way. */
const short = { span: 100 };

describe('clearance', () => {
  test('every joint has a row, asked 0.2 mm when the job says nothing', () => {
    // common practice, no source
    const fits = plan(carrier()).assembly?.fits ?? [];
    expect(fits.map((f) => f.joint)).toEqual(['west', 'east', 'grip-west', 'grip-east']);
    for (const f of fits) expect(f.asked).toBe(0.2);
  });

  test.each([1.2, 1.5, 2, 4])('an end %d mm off the sides of a channel without hems', (c) => {
    const { found, between } = rowOf({ body: bare, end: { width: inside - 2 * c, cornerNip: 0 } }, 'west');
    expect(found).toBeCloseTo(c, 6);
    expect(between[0].piece).toBe('body');
    expect(between[1]).toEqual({ piece: 'end-1', panel: 'plate', what: 'panel' });
  });

  test('an end shifted by 0.5 mm across: the nearer side counts', () => {
    const end = { width: inside - 4, cornerNip: 0 };
    const joints = { west: { shift: { across: 0.5 } } };
    const { found, between } = rowOf({ body: bare, end, joints }, 'west');
    expect(found).toBeCloseTo(1.5, 6);
    expect(between[0]).toEqual({ piece: 'body', panel: 'north', what: 'panel' });
  });

  test('the handle against the end: its base starts a setback off the tab it hangs on', () => {
    // 90 degrees: setback R + T
    const { found, between, gap } = rowOf({}, 'grip-west');
    expect(found).toBeCloseTo(R + T, 6);
    expect(between).toMatchObject([
      { piece: 'end-1', panel: 'plate' },
      { piece: 'handle', panel: 'base' },
    ]);
    expect(gap).toBeCloseTo(0, 9);
    const east = rowOf({}, 'grip-east');
    expect(east.found).toBeCloseTo(R + T + east.gap, 6);
  });

  test('a nipped corner against the bend it stands in', () => {
    // from the axis of the bend, R off floor and side, the corners of the nip lie at (R − c, R − c − nip)
    const [c, nip] = [0.3, 0.6];
    const { found } = rowOf({ body: bare, end: { width: inside - 2 * c, cornerNip: nip } }, 'west');
    expect(found).toBeCloseTo(R - Math.hypot(R - c, R - c - nip), 2); // the ring is measured to 0.2 %
  });

  test('less than asked is a warning with both lengths and the place', () => {
    const found = plan(
      carrier({ body: bare, end: { width: inside - 3, cornerNip: 0 }, joints: { west: { clearance: 1.8 } } }),
    ).findings.filter((f) => f.code === 'fit-tight');
    expect(found).toMatchObject([{ severity: 'warning', limit: 1.8, unit: 'mm' }]);
    expect(found[0]?.value).toBeCloseTo(1.5, 6);
    expect(spoken(found[0])?.message).toContain('joint west: 1.5 mm between');
    expect(spoken(found[0])?.fix).toContain('0.3 mm more');
  });

  test('what was asked for is not held against it', () => {
    const asks = { clearance: 1.5 };
    const { findings } = plan(
      carrier({ body: bare, end: { width: inside - 3, cornerNip: 0 }, joints: { west: asks, east: asks } }),
    );
    expect(findings).toEqual([]);
  });

  test('a clearance in inches is read in inches', () => {
    const { asked } = rowOf({ joints: { west: { clearance: '1/16 in' } } }, 'west');
    expect(asked).toBeCloseTo(25.4 / 16, 9);
  });
});

describe('a clash', () => {
  test('a corner without nip reaches into the bend: by how much it is nearer to the sides than the round is', () => {
    const c = 0.2;
    const found = clashesOf({ body: bare, end: { width: inside - 2 * c, cornerNip: 0 }, handle: short });
    expect(found).toHaveLength(2); // both ends
    for (const f of found) {
      expect(f.severity).toBe('error');
      expect(f.value).toBeCloseTo(Math.SQRT2 * (R - c) - R, 6);
      expect(spoken(f).message).toMatch(
        /bend (north|south) of body and end-[12]\.plate are in the same place/,
      );
    }
  });

  test('a nip of a whole inside radius clears the round even where the end stands hard against the sides', () => {
    expect(clashesOf({ body: bare, end: { width: inside, cornerNip: R }, handle: short })).toEqual([]);
  });

  test('an end wider than the channel inside runs into the side by what it is wider', () => {
    const found = clashesOf({ body: bare, end: { width: inside + 1, cornerNip: 6 }, handle: short });
    expect(found).toHaveLength(2);
    for (const f of found) expect(f.value).toBeCloseTo(0.5, 6);
    expect(spoken(found[0])?.message).toContain('0.5 mm deep');
    expect(spoken(found[0])?.fix).toContain('0.5 mm');
  });

  test('its joint has the depth as a negative clearance', () => {
    const { found } = rowOf({ body: bare, end: { width: inside + 1, cornerNip: 6 } }, 'west');
    expect(found).toBeCloseTo(-0.5, 6);
  });

  test('parts that have no joint with each other clash too', () => {
    // a handle on ends that are too low runs into the rims of the channel
    const low = { height: 30, shoulderHeight: 30, crownWidth: END.width };
    const wide = { width: BODY.width + 20, span: BODY.length - 4 * T - 0.2 };
    const found = clashesOf({ end: low, handle: wide });
    expect(
      found.some(
        (f) => /of handle|handle\./.test(spoken(f).message) && /of body|body\./.test(spoken(f).message),
      ),
    ).toBe(true);
  });

  test('the two ends touch nothing of each other', () => {
    expect(
      clashesOf({}).filter((f) => spoken(f).message.includes('end-1') && spoken(f).message.includes('end-2')),
    ).toEqual([]);
  });
});
