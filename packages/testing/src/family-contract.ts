import type { AnyFamily } from '@tinwright/core';
import { exampleDuties } from './duties/example.js';
import { randomDuties } from './duties/random.js';
import { refusalDuties } from './duties/refusals.js';
import { sizeDuties } from './duties/sizes.js';
import type { Duty } from './duty.js';

/** How much is tried. */
export interface ContractOptions {
  /** Random sets of parameters for each duty that takes some; 150 by default. */
  readonly runs?: number;
  /** Where they start from; the same seed tries the same ones. 1 by default. */
  readonly seed?: number;
}

/**
 * The duties of a family: sizes asked are sizes formed under every rule, both views agree, random parameters make a
 * verified part or are refused by name, inches make the same as millimetres, and more. What built-in families are held to.
 */
export function familyDuties(
  family: AnyFamily,
  { runs = 150, seed = 1 }: ContractOptions = {},
): readonly Duty[] {
  return [
    ...exampleDuties(family),
    ...sizeDuties(family),
    ...refusalDuties(family),
    ...randomDuties(family, { numRuns: runs, seed }),
  ];
}

/**
 * Put a family through its duties with the `test` of any runner: that of `node:test`, or of another library.
 * @param test takes a title and a function that throws where something does not hold
 */
export function familyContract(
  family: AnyFamily,
  test: (title: string, check: () => void) => unknown,
  options: ContractOptions = {},
): void {
  for (const { title, check } of familyDuties(family, options)) test(`${family.name}: ${title}`, check);
}
