import { linearTolerance, type Remark, type Say, type ToleranceClass } from '@tinwright/core';
import type { Shop } from '../machines/shop.js';
import type { ShopCheck, Subject } from './check.js';
import { cutDeviation } from './iso-9013.js';

interface Expected {
  readonly value: number;
  readonly words: (say: Say) => string;
  readonly source: string;
}

/** What sizes of the part are likely to come out at: bent ones by the brake there is, cut ones by the table. */
export const tolerance: ShopCheck = (subject, shop) => {
  const expected = [...bent(subject, shop), ...cut(subject, shop)];
  const [first] = expected;
  if (first === undefined) return [];
  return [
    {
      code: 'tolerance',
      severity: 'note',
      value: first.value,
      unit: 'mm',
      message: (say) => `expect ${expected.map((e) => e.words(say)).join(', ')}`,
      source: expected.map((e) => e.source).join('; '),
      fix: 'where a size has to be closer, measure the first piece and correct the next',
    } satisfies Remark,
  ];
};

function bent({ formed, flat }: Subject, { brake, press }: Shop): readonly Expected[] {
  if (flat.bends.length === 0 || (brake === null && press === null)) return [];
  const of: ToleranceClass = press === null ? 'c' : 'm';
  const angle = press === null ? 2 : 1;
  const size = Math.max(...formed.size);
  const value = linearTolerance(size, of);
  if (value === null) return [];
  return [
    {
      value,
      words: (say) =>
        `±${say.size(value)} on the bent size of ${say.size(size)} and ±${angle}° on its angles`,
      source: `ISO 2768-1 class ${of}; which class ${press === null ? 'a hand brake' : 'a press brake'} holds, and its angles, from memory`,
    },
  ];
}

function cut({ flat, sheet }: Subject, { table }: Shop): readonly Expected[] {
  if (table === null) return [];
  const of = table.process === 'laser' ? 1 : 2;
  const size = Math.max(...flat.blank.max);
  const value = cutDeviation(of, size, sheet.thickness);
  if (value === null) return [];
  return [
    {
      value,
      words: (say) => `±${say.size(value)} on the cut length of ${say.size(size)}`,
      source: `ISO 9013 class ${of}, as ${table.process} cuts usually hold, read second-hand`,
    },
  ];
}
