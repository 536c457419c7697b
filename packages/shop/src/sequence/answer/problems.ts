import type { Shop } from '../../machines/shop.js';
import { type DieChoice, hasFurther } from '../../tools/press-setting.js';
import { type PartToBend, problemOf } from '../search/problem.js';
import type { BendProblem } from '../search/states.js';

/**
 * The problems of a part in a shop, to be tried one after the other until one has a plan: with the dies whose radius is nearest
 * to the one drawn, then with every pair of tools there is. Each is made when it is asked for.
 * @param dies `near` where no other die changes anything
 */
export function problemsOf(
  part: PartToBend,
  shop: Shop,
  dies: DieChoice = 'all',
): readonly (() => BendProblem)[] {
  const { press } = shop;
  const near = () => problemOf(part, shop);
  if (dies === 'near' || press === null || !hasFurther(press, part.part.sheet.thickness)) return [near];
  return [near, () => problemOf(part, shop, 'all')];
}
