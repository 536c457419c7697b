import type { PartPlan, Remark } from '@tinwright/core';
import type { Shop } from '../machines/shop.js';

/** A planned part as a rule sees it. Lengths mm. */
export type Subject = Pick<
  PartPlan,
  'name' | 'sheet' | 'material' | 'family' | 'params' | 'part' | 'flat' | 'formed'
>;

/** A rule of good making: looks at one part as a shop would make it. */
export type ShopCheck = (subject: Subject, shop: Shop) => readonly Remark[];
