import { type Finding, JobError, type JobPlan } from '@tinwright/core';
import { type Blank, blankOf, type Rack, type ShearEffort, verifyShearPlan } from '@tinwright/cutting';
import { leftOutFinding, piecesProblem, shearBlanks } from '@tinwright/cutting/internal';
import { DEFAULT_SHOP, type Shop } from '@tinwright/shop';
import { cutWork, type KnownCut, listedPart } from './cut-list.js';
import { shearAbility } from './shear-ability.js';
import { stockOf } from './stock-of.js';

/** Whose blanks are cut, and from what. */
export interface CutAsk {
  readonly plan: JobPlan;
  readonly shop: Shop | null;
  /** What there is to cut from; what the job, else the shop says without it. */
  readonly rack?: Rack | null;
  /** Sets of the object to make, 1 if left out. */
  readonly sets?: number;
  /** How hard to look; enough for a sheet or two if left out, less for thousands of pieces. */
  readonly effort?: ShearEffort;
}

const MANY = 1000; // pieces; a step takes as long as there are pieces, so beyond it there are fewer steps

/** Enough for a sheet or two, and a time that does not grow faster than the pieces. */
function effortFor(pieces: number): ShearEffort {
  const share = Math.min(1, MANY / pieces) ** 2;
  const steps = (most: number) => Math.ceil(most * share);
  return {
    seed: 1,
    steps: { sheets: steps(30_000), offcut: steps(8_000), neat: steps(500) },
    enough: () => false,
  };
}

/**
 * A verified plan to shear the blanks of a job, with mass in kg, price, fasteners and minutes; what cannot be cut is a
 * finding. Null where no stock is known, or where no rack is given and the shop has a table but no shear.
 * @throws JobError for sheets of the job that cannot be, and for over 100,000 pieces
 */
export function knownCut({ plan, shop, rack = null, sets = 1, ...asked }: CutAsk): KnownCut | null {
  if (rack === null && shop !== null && shop.shear === null && shop.table !== null) return null;
  const blanks = plan.parts.map((p): Blank => ({ ...blankOf(p), quantity: p.quantity * sets }));
  const effort = asked.effort ?? effortFor(blanks.reduce((sum, b) => sum + b.quantity, 0));
  const stock = rack ?? stockOf([plan], blanks, shop);
  if (stock === null) return null;
  const many = piecesProblem(blanks);
  if (many !== null) throw new JobError([many]);
  const ability = shearAbility(shop, [plan]);
  const { plans, left } = shearBlanks(blanks, stock, ability, effort);
  const cut = blanks.filter((b) => !left.some((l) => l.blank === b && l.why !== 'stock-short'));
  for (const one of plans) {
    const own = cut.filter((b) => b.material === one.material && b.thickness === one.thickness);
    const [flaw] = verifyShearPlan(one, own, ability.limits);
    if (flaw !== undefined) throw new Error(`a shear plan with ${flaw.code}: ${flaw.what}`);
  }
  const findings = left.map(({ blank, count, why }): Finding => {
    const mass = plan.parts.find((p) => p.name === blank.part)?.mass ?? 0;
    const pieces = { ...blank, count, why, mass, area: blank.x * blank.y };
    return leftOutFinding(pieces, stock.sheets, 'warning');
  });
  const parts = plan.parts.map((p) => listedPart(p, p.name));
  return { work: cutWork([plan], { plans, parts }, (shop ?? DEFAULT_SHOP).rates, sets), findings };
}
