import type { Change, PartPlan, Remark, Unit } from '@tinwright/core';
import type { Shop } from '../machines/shop.js';

/** A planned part as a rule sees it. Lengths mm. */
export type ShopSubject = Pick<
  PartPlan,
  'name' | 'sheet' | 'material' | 'family' | 'params' | 'part' | 'flat' | 'formed'
>;

/** A rule of good making: looks at one part as a shop would make it. */
export interface ShopCheck {
  readonly code: string;
  /** What it has to say of the part. */
  readonly remarks: (subject: ShopSubject, shop: Shop) => readonly Remark[];
  /** Values of the job that would pass, found by trying them, each by itself; asked for apart, since it takes time. @param unit sizes found are steps of it */
  readonly changes: (subject: ShopSubject, shop: Shop, unit: Unit) => readonly Change[];
}

/** A rule that no single value of the job is asked to mend. */
export const plainCheck = (code: string, remarks: ShopCheck['remarks']): ShopCheck => ({
  code,
  remarks,
  changes: () => [],
});
