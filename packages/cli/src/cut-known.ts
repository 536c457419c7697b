import type { Finding, JobPlan } from '@tinwright/core';
import type { Blank, ShearEffort } from '@tinwright/cutting';
import type { KnownCut } from '@tinwright/files';
import type { Shop } from '@tinwright/shop';
import type { Host } from './console.js';
import type { ExitCode } from './failure.js';
import { stockKnown } from './open-rack.js';
import { shearReach } from './shear-reach.js';

/** Whose blanks are cut, and from what. */
export interface CutAsked {
  readonly plan: JobPlan;
  readonly shop: Shop | null;
  readonly rack?: string | undefined;
  readonly json: boolean;
  /** Sets of the object to make. */
  readonly sets?: number;
}

/** Enough for a sheet or two; `tinwright shear` looks longer. */
const EFFORT: ShearEffort = {
  seed: 1,
  steps: { sheets: 30_000, offcut: 8_000, neat: 500 },
  enough: () => false,
};

/**
 * How the blanks of a job are sheared, where a rack, the job or the shop says what stock there is; null where none does,
 * or where the shop has a table and no shear. What cannot be cut is a finding.
 */
export async function cutKnown(
  host: Host,
  { plan, shop, rack, json, sets = 1 }: CutAsked,
): Promise<KnownCut | null | { readonly exit: ExitCode }> {
  if (rack === undefined && shop !== null && shop.shear === null && shop.table !== null) return null;
  const { blankOf, verifyShearPlan } = await import('@tinwright/cutting');
  const { leftOutFinding, shearBlanks } = await import('@tinwright/cutting/internal');
  const blanks = plan.parts.map((p): Blank => ({ ...blankOf(p), quantity: p.quantity * sets }));
  const known = await stockKnown(host, {
    plans: [plan],
    blanks,
    shop,
    json,
    ...(rack !== undefined && { rack }),
  });
  if (known === null || 'exit' in known) return known;
  const ability = await shearReach(shop);
  const { plans, left } = shearBlanks(blanks, known.rack, ability, EFFORT);
  const cut = blanks.filter((b) => !left.some((l) => l.blank === b && l.why !== 'stock-short'));
  for (const one of plans) {
    const own = cut.filter((b) => b.material === one.material && b.thickness === one.thickness);
    const [flaw] = verifyShearPlan(one, own, ability.limits);
    if (flaw !== undefined) throw new Error(`a shear plan with ${flaw.code}: ${flaw.what}`);
  }
  const findings = left.map(({ blank, count, why }): Finding => {
    const mass = plan.parts.find((p) => p.name === blank.part)?.mass ?? 0;
    const pieces = { ...blank, count, why, mass, area: blank.x * blank.y };
    return leftOutFinding(pieces, known.rack.sheets, 'warning');
  });
  return { work: await workOf({ plan, plans, shop, sets }), findings };
}

async function workOf({
  plan,
  plans,
  shop,
  sets,
}: Pick<CutAsked, 'plan' | 'shop'> & { readonly plans: KnownCut['work']['plans']; readonly sets: number }) {
  const [{ cutWork, listedPart }, { DEFAULT_SHOP }] = await Promise.all([
    import('@tinwright/files/internal'),
    import('@tinwright/shop'),
  ]);
  const parts = plan.parts.map((p) => listedPart(p, p.name));
  return cutWork([plan], { plans, parts }, (shop ?? DEFAULT_SHOP).rates, sets);
}
