import { frozen } from '../units/frozen.js';
import type { BendRule } from './rule.js';

/**
 * No compensation: lines stand at the nominal sizes, allowance = setback = deduction = 0.
 * For laying out thin sheet by hand. Common practice, no source; formed sizes come out a little large.
 */
export const nominal: BendRule = frozen({
  name: 'nominal',
  title: 'nominal, no compensation',
  source: 'common practice, no source',
  compensates: false,
  terms: () => ({
    allowance: 0,
    setback: 0,
    deduction: 0,
    working: ['no compensation: the line stands at the nominal size'],
    source: 'common practice, no source',
  }),
});
