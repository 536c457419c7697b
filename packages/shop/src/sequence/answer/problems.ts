import type { Press, Shop } from '../../machines/shop.js';
import { type DieChoice, hasFurther } from '../../tools/press-setting.js';
import { type PartToBend, problemOf } from '../search/problem.js';
import type { BendProblem } from '../search/states.js';

/**
 * Dies to be tried one after the other until a part has a plan: those whose radius is nearest to the one drawn, then every
 * one there is, where that changes anything.
 * @param dies the widest choice
 */
export function diesFor(
  press: Press | null,
  thickness: number,
  dies: DieChoice = 'all',
): readonly [DieChoice, ...DieChoice[]] {
  if (dies === 'near' || press === null || !hasFurther(press, thickness)) return ['near'];
  return ['near', 'all'];
}

/** The problems of a part in a shop with those dies, each made when it is asked for. */
export function problemsOf(part: PartToBend, shop: Shop, dies?: DieChoice): readonly (() => BendProblem)[] {
  return diesFor(shop.press, part.part.sheet.thickness, dies).map((d) => () => problemOf(part, shop, d));
}
