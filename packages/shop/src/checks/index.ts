import type { Finding, JobPlan, PartPlan } from '@tinwright/core';
import { atOnce, frozen, type Pieces, sortFindings, worseFirst } from '@tinwright/core/internal';
import type { Shop } from '../machines/shop.js';
import { reliefNarrow, reliefShallow } from './bend-relief.js';
import { blankLarge } from './blank-large.js';
import type { ShopCheck } from './check.js';
import { cornerGap } from './corner-gap.js';
import { cutLarge } from './cut-large.js';
import { grain } from './grain.js';
import { hemNearBend } from './hem-near-bend.js';
import { hemShort } from './hem-short.js';
import { hemTight } from './hem-tight.js';
import { holeNearBend } from './hole-near-bend.js';
import { holeSmall } from './hole-small.js';
import { joiningFindings } from './joining.js';
import { legLeast } from './leg-least.js';
import { notchDeep, notchNarrow } from './notches.js';
import { offsetSmall } from './offset-small.js';
import { panelLimp } from './panel-limp.js';
import { radiusMade } from './radius-made.js';
import { radiusStrict } from './radius-strict.js';
import { sheetThick } from './sheet-thick.js';
import { slotNearBend } from './slot-near-bend.js';
import { gapUnderKerf, holeUnderTable } from './table-limits.js';
import { tabLong, tabNarrow } from './tabs.js';
import { tolerance } from './tolerance.js';
import { webNarrow } from './web-narrow.js';
import { weldElectrode } from './weld-electrode.js';

/** Every rule, in the order they run. A new one is its file and a line here. */
export const SHOP_CHECKS: readonly ShopCheck[] = frozen([
  blankLarge,
  cutLarge,
  sheetThick,
  legLeast,
  panelLimp,
  radiusMade,
  radiusStrict,
  hemTight,
  hemShort,
  hemNearBend,
  offsetSmall,
  cornerGap,
  reliefShallow,
  reliefNarrow,
  holeNearBend,
  slotNearBend,
  holeSmall,
  holeUnderTable,
  gapUnderKerf,
  webNarrow,
  notchNarrow,
  notchDeep,
  tabNarrow,
  tabLong,
  weldElectrode,
  grain,
  tolerance,
]);

/** What to know about a part before it is made in a shop, worst first; without changes that would pass. */
export function shopFindings(part: PartPlan, shop: Shop, own: readonly ShopCheck[] = []): readonly Finding[] {
  return [...SHOP_CHECKS, ...own]
    .flatMap((check) => check.remarks(part, shop))
    .toSorted(worseFirst)
    .map((remark) => ({ ...remark, part: part.name }));
}

/**
 * Everything to know about a job before it is made in a shop: by part, worst first; without changes that would pass.
 * @param checks of one's own, after the built-in ones
 */
export function jobFindings(
  plan: JobPlan,
  shop: Shop,
  checks: readonly ShopCheck[] = [],
): readonly Finding[] {
  const own = [...plan.parts.flatMap((p) => shopFindings(p, shop, checks)), ...joiningFindings(plan, shop)];
  const order = plan.parts.map((p) => p.name);
  return sortFindings([...plan.findings, ...own], order);
}

/** The findings with the changes of the job that would pass, found by trying them: takes time, so it is asked for apart. */
export const withChanges = (
  findings: readonly Finding[],
  plan: JobPlan,
  shop: Shop,
  own: readonly ShopCheck[] = [],
): readonly Finding[] => atOnce(changesPieces(findings, plan, shop, own));

/** The same, a finding at a time. */
export function* changesPieces(
  findings: readonly Finding[],
  plan: JobPlan,
  shop: Shop,
  own: readonly ShopCheck[],
): Pieces<readonly Finding[]> {
  const checks = [...SHOP_CHECKS, ...own];
  const changed: Finding[] = [];
  for (const finding of findings) {
    const part = plan.parts.find((p) => p.name === finding.part);
    const check = checks.find((c) => c.code === finding.code);
    yield;
    changed.push(
      part === undefined || check === undefined
        ? finding
        : { ...finding, changes: check.changes(part, shop, plan.job.units) },
    );
  }
  return changed;
}
