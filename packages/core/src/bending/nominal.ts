import { frozen } from '../units/frozen.js';
import { doubtOf } from './doubt.js';
import { handbook } from './handbook.js';
import type { BendRule } from './rule.js';

/**
 * No compensation: lines stand at the nominal sizes, allowance = setback = deduction = 0.
 * For laying out thin sheet by hand. Common practice, no source; formed sizes come out a little large, by as much as
 * the rule of the metal would take off.
 * @param metal what the metal does
 */
export function nominalFor(metal: BendRule): BendRule {
  return {
    name: 'nominal',
    title: `nominal, no compensation; the metal forms by ${metal.title}`,
    source: 'common practice, no source',
    compensates: false,
    terms: () => ({
      allowance: 0,
      setback: 0,
      deduction: 0,
      working: ['no compensation: the line stands at the nominal size'],
      source: 'common practice, no source',
    }),
    forms: metal.terms,
    doubt: (bend) => doubtOf(metal, bend, metal.terms(bend).allowance),
  };
}

/** No compensation, where the metal forms as the handbook says of its middle group. */
export const nominal: BendRule = frozen(nominalFor(handbook('medium')));
