// Values a shop file may leave out come from judgement or memory: a finding that leans on them says so.
import { planJob, readJob } from '@tinwright/core';
import { planShop, readShop } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { told } from '../../../../tests/kit/told.js';

const BRAKE = {
  length: 1000,
  capacity: [{ material: 'mild-steel', thickness: 3 }],
  fingers: [25, 50, 100, 200],
};
const job = planJob(
  readJob({
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    bending: { rule: 'k-factor', insideRadius: 1 },
    parts: [{ name: 'box', family: 'open-box', length: 200, width: 160, height: 90 }],
  }),
);
const sourceOf = (brake: object) => {
  const shop = readShop({ units: 'mm', brake: { ...BRAKE, ...brake } });
  return told(planShop(job, shop).findings.find((f) => f.code === 'bend-order'))?.source ?? null;
};
const FINGER = { foot: 36, upright: 22, noseAngle: 45, noseRadius: 0.5 };

describe('a box deeper than the clear height', () => {
  test('of a brake whose sections are assumed: which of them', () => {
    expect(sourceOf({})).toMatch(
      /; not given in the shop file, so assumed by judgement or from memory: brake\.finger, brake\.clearHeight, brake\.beam$/,
    );
  });

  test('the ones that are given are not told', () => {
    expect(sourceOf({ clearHeight: 75, finger: { foot: 40, upright: 22 } })).toMatch(
      /memory: brake\.finger\.noseAngle, brake\.finger\.noseRadius, brake\.beam$/,
    );
  });

  test('of a brake that was measured: nothing is assumed', () => {
    const source = sourceOf({ clearHeight: 75, finger: FINGER, beam: 22 });
    expect(source).not.toBeNull();
    expect(source).not.toContain('assumed');
  });

  test('a higher brake in the file takes it', () => {
    expect(sourceOf({ clearHeight: 120, finger: FINGER, beam: 22 })).toBeNull();
  });
});
