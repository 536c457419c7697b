// Values a shop file may leave out come from judgement or memory: a finding that leans on them says so.
import { saidIn } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { readShop, shopFindings } from '../../src/index.js';
import { planned } from '../shops.js';

const BRAKE = {
  length: 1000,
  capacity: [{ material: 'mild-steel', thickness: 3 }],
  fingers: [25, 50, 100, 200],
};
const box = planned({ family: 'open-box', length: 200, width: 160, height: 90 });
const sourceOf = (brake: object, code: string) => {
  const found = shopFindings(box, readShop({ units: 'mm', brake: { ...BRAKE, ...brake } })).find(
    (f) => f.code === code,
  );
  return found === undefined ? null : saidIn('mm', found).source;
};
const FINGER = { foot: 36, upright: 22, noseAngle: 45, noseRadius: 0.5 };

describe('a box deeper than the clear height', () => {
  test('of a brake whose sections are assumed: which of them', () => {
    expect(sourceOf({}, 'box-deep')).toMatch(
      /; not given in the shop file, so assumed by judgement or from memory: brake\.finger, brake\.clearHeight, brake\.beam$/,
    );
  });

  test('the ones that are given are not told', () => {
    expect(sourceOf({ clearHeight: 75, finger: { foot: 40, upright: 22 } }, 'box-deep')).toMatch(
      /memory: brake\.finger\.noseAngle, brake\.finger\.noseRadius, brake\.beam$/,
    );
  });

  test('of a brake that was measured: nothing is assumed', () => {
    const source = sourceOf({ clearHeight: 75, finger: FINGER, beam: 22 }, 'box-deep');
    expect(source).not.toBeNull();
    expect(source).not.toContain('assumed');
  });

  test('a higher brake in the file takes it', () => {
    expect(sourceOf({ clearHeight: 120, finger: FINGER, beam: 22 }, 'box-deep')).toBeNull();
  });
});
