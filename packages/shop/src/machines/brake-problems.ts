import type { Path, Problem, Unit } from '@tinwright/core';
import { sayIn } from '@tinwright/core/internal';
import { impossible } from './impossible.js';
import type { Brake } from './shop.js';

/** What no leaf brake can be. */
export function brakeProblems(
  { length, fingers, finger, setBack }: Brake,
  units: Unit,
  path: Path = ['brake'],
): readonly Problem[] {
  const { size, most } = sayIn(units);
  const widest = Math.max(...fingers); // one is told: with units mixed up it is all of them
  const wide =
    widest > length
      ? [
          impossible(
            [...path, 'fingers', fingers.indexOf(widest)],
            `${size(widest)} given, the brake bends up to ${most(length)}`,
            'Check the units: a length may carry its own, such as "24 in"',
          ),
        ]
      : [];
  const heel =
    finger.upright >= finger.foot
      ? [
          impossible(
            [...path, 'finger', 'upright'],
            `${size(finger.upright)} given, behind the heel of a foot of ${most(finger.foot)}`,
            'Measure from the tip back to the front of the upright',
          ),
        ]
      : [];
  const turned =
    setBack[0] > setBack[1]
      ? [
          impossible(
            [...path, 'setBack'],
            `${setBack[0]} to ${setBack[1]} thicknesses given`,
            'Give the least first',
          ),
        ]
      : [];
  return [...wide, ...heel, ...turned];
}
