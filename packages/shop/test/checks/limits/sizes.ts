import { planned } from '../../shops.js';
import { type LimitCase, noTable } from './limit-case.js';

export const SIZES: readonly LimitCase[] = [
  {
    code: 'blank-large',
    name: 'sheets of 2000 × 1000, turned the better way',
    part: (width) =>
      planned({ family: 'gusset-end', width, shoulderHeight: 300, height: 999, crownWidth: 200 }),
    at: 2000,
    fails: 'above',
    value: 2000,
    limit: 2000,
    severity: 'error',
    source: /^shop file$/,
  },
  {
    code: 'cut-large',
    name: 'table of 1250, shear of 1000',
    part: (width) =>
      planned({ family: 'gusset-end', width, shoulderHeight: 300, height: 999, crownWidth: 200 }),
    at: 1250,
    fails: 'above',
    value: 1250,
    limit: 1250,
    severity: 'warning',
    source: /^shop file$/,
  },
  {
    code: 'cut-large',
    name: 'shear of 1000 alone',
    part: (width) =>
      planned({ family: 'gusset-end', width, shoulderHeight: 300, height: 500, crownWidth: 200 }),
    shop: noTable,
    at: 1000,
    fails: 'above',
    value: 1000,
    limit: 1000,
    severity: 'warning',
    source: /^shop file$/,
  },
];
