import type { Vec3 } from '@tinwright/core';
import type { SiteFrame } from '@tinwright/core/internal';
import { add3, cross3, dot3, length3, place3, scale3, turn3, unit3 } from '@tinwright/core/internal';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mate, misfit, rightOf } from '../../src/assembly/site-frame.js';

const WEST: SiteFrame = { origin: [1, 50, 1], normal: [1, 0, 0], up: [0, 0, 1] };
const STILL = { up: 0, across: 0, out: 0 };
const near = (p: Vec3) => p.map((v) => expect.closeTo(v, 9));

/** A frame as it stands after its part was brought to a pose. */
const carried = (pose: ReturnType<typeof mate>, { origin, normal, up }: SiteFrame): SiteFrame => ({
  origin: place3(pose, origin),
  normal: turn3(pose, normal),
  up: turn3(pose, up),
});

const direction = fc
  .tuple(...[0, 1, 2].map(() => fc.integer({ min: -100, max: 100 })))
  .filter((v) => v.some((c) => c !== 0))
  .map((v) => unit3(v as unknown as Vec3));
const frames: fc.Arbitrary<SiteFrame> = fc
  .tuple(direction, direction, fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: -500, max: 500 }))))
  .filter(([n, u]) => length3(cross3(n, u)) > 0.1)
  .map(([normal, u, origin]) => ({
    origin: origin as unknown as Vec3,
    normal,
    up: unit3(cross3(cross3(normal, u), normal)),
  }));

test('looking west at a face that looks east, north is to the right', () => {
  expect(rightOf(WEST)).toEqual(near([0, 1, 0]));
});

describe('mated', () => {
  test('any two sites: points together, faces against each other, upright together, no mirror', () => {
    fc.assert(
      fc.property(frames, frames, (host, own) => {
        const pose = mate(host, own, STILL);
        const stands = carried(pose, own);
        expect(stands.origin).toEqual(host.origin.map((v) => expect.closeTo(v, 6)));
        expect(dot3(stands.normal, host.normal)).toBeCloseTo(-1, 9);
        expect(dot3(stands.up, host.up)).toBeCloseTo(1, 9);
        expect(dot3(cross3(pose.x, pose.y), pose.z)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('moves are along the host: up, to its right, off its face', () => {
    fc.assert(
      fc.property(frames, frames, (host, own) => {
        const plain = mate(host, own, STILL).origin;
        const moved = mate(host, own, { up: 2, across: 3, out: 5 }).origin;
        const wanted = [scale3(host.up, 2), scale3(rightOf(host), 3), scale3(host.normal, 5)].reduce(add3);
        expect(moved.map((v, k) => v - (plain[k] as number))).toEqual(
          wanted.map((v) => expect.closeTo(v, 6)),
        );
      }),
    );
  });
});

describe('the misfit of a frame that stands already', () => {
  const miss = (change: Partial<SiteFrame>) =>
    misfit(WEST, { origin: WEST.origin, normal: [-1, 0, 0], up: WEST.up, ...change }, { up: 0, across: 0 });

  test('none where it belongs', () => {
    expect(miss({})).toEqual({ out: 0, aside: 0, tilt: 0 });
  });

  test('off the face, into it, and beside: in millimetres', () => {
    expect(miss({ origin: [1.4, 50, 1] }).out).toBeCloseTo(0.4, 9);
    expect(miss({ origin: [0.8, 50, 1] }).out).toBeCloseTo(-0.2, 9);
    expect(miss({ origin: [1, 53, 5] })).toEqual({ out: 0, aside: expect.closeTo(5, 9), tilt: 0 });
  });

  test('a face at an angle: in degrees', () => {
    const at = (degrees: number): Vec3 => {
      const r = (degrees * Math.PI) / 180;
      return [-Math.cos(r), Math.sin(r), 0];
    };
    expect(miss({ normal: at(2) }).tilt).toBeCloseTo(2, 6);
    expect(miss({ normal: at(90) }).tilt).toBeCloseTo(90, 6);
  });

  test('turned on its face by 90 degrees it does not fit', () => {
    const { out, aside, tilt } = miss({ up: [0, 1, 0] });
    expect(out !== 0 || aside !== 0 || tilt !== 0).toBe(true);
  });

  test('what the joint itself shifts does not count', () => {
    const shifted = { origin: [1, 53, 5] as const, normal: [-1, 0, 0] as const, up: WEST.up };
    expect(misfit(WEST, shifted, { up: 4, across: 3 }).aside).toBeCloseTo(0, 9);
  });
});
