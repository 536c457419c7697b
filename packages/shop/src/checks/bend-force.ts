import { bendForce, FORCE_CONSTANTS, forceTensile } from '../metal/press-force.js';
import type { ShopCheck } from './check.js';
import { lengthOf, middleOf } from './geometry/panels.js';
import { limitCheck, type Place } from './limit-check.js';
import { leafThickness } from './machine/leaf.js';
import { diesFor } from './machine/press.js';

interface Force extends Place {
  readonly opening: number;
}

/** A bend that takes more force than the press has, where no leaf brake makes it. Value and limit in kN. */
export const bendForceHigh: ShopCheck = limitCheck<Force>({
  code: 'bend-force',
  severity: 'error',
  unit: '',
  bound: 'most',
  places: ({ flat, sheet, material }, { brake, press, profile }) => {
    if (press === null) return [];
    const folds = brake !== null && sheet.thickness <= leafThickness(brake, material, 'usual').value * 1.001;
    return flat.bends
      .filter((b) => b.hem === null && !(folds && lengthOf(b) <= brake.length))
      .map((bend) => {
        const opening = Math.max(...diesFor(press, bend.insideRadius).map((d) => d.opening));
        const { value: c } = FORCE_CONSTANTS[profile];
        const value = bendForce(c, forceTensile(material), lengthOf(bend), sheet.thickness, opening);
        return { at: middleOf(bend), value, limit: press.force, what: bend.id, opening };
      });
  },
  message: ({ value, limit, what, opening }, say, _, { press }) =>
    `${what} takes ${Math.ceil(value)} kN over a V of ${say.size(opening)}, the ${press?.name} has ${Math.floor(limit)} kN`,
  source: (_, __, { profile }) => {
    const other = profile === 'strict' ? 'usual' : 'strict';
    const [now, then] = [FORCE_CONSTANTS[profile], FORCE_CONSTANTS[other]];
    return `C · Rm · L · T² / V with C = ${now.value} by ${now.source} (profile ${profile}); ${then.value} by ${then.source} (profile ${other})`;
  },
  aim: ({ value, limit, opening }, say) => `take a V of ${say.least((opening * value) / limit)} or more`,
});
