import { cite, type Finding, leastRadiusOf, type PartPlan, type Remark, remarkOf } from '@tinwright/core';
import { bestMade, MOST_OFF, madeAs } from '../checks/radius-made.js';
import type { Shop } from '../machines/shop.js';
import { airRadius } from '../metal/press-force.js';
import type { BendStep, Sequence } from '../sequence/answer/plan.js';
import { PRACTICE_LEAST } from '../tools/press-setting.js';
import { OPENING_SOURCE, usualOpening, WIDEST } from '../tools/usual-opening.js';
import type { ShopFindings } from './order-findings.js';

/**
 * What to know of the dies that a bend order uses: a V narrower than practice asks for, one wider than makers advise for any
 * sheet, and a radius that another die of the shop would make. None of it stops the plan.
 */
export function dieFindings(part: PartPlan, { steps }: Sequence, shop: Shop): readonly Finding[] {
  const { name, sheet } = part;
  const bent = steps.filter((s) => s.press !== null && s.action !== 'close');
  return [
    ...openingFindings(bent, sheet.thickness),
    ...bent.flatMap((step) => (step.action === 'bend' ? radiusFindings(part, step, shop) : [])),
  ].map((remark) => ({ part: name, ...remark }));
}

function openingFindings(steps: readonly BendStep[], thickness: number): readonly Remark[] {
  const openings = [...new Set(steps.map((s) => s.press?.opening ?? 0))];
  return openings.flatMap((opening): readonly Remark[] => {
    const over = steps.filter((s) => s.press?.opening === opening);
    const [first, ...others] = over.flatMap((s) => s.bends);
    const data = {
      where: { at: null, names: [first ?? ''], others: others.map((b) => [b]), joints: [] },
      value: opening,
      unit: 'mm' as const,
      values: {
        die: over[0]?.press?.die ?? '',
        times: opening / thickness,
        usual: usualOpening(thickness),
      } satisfies ShopFindings['die-narrow'],
    };
    const [least, most] = [PRACTICE_LEAST * thickness, WIDEST * thickness];
    if (opening < least - 1e-9)
      return [
        remarkOf('die-narrow', 'warning', {
          ...data,
          limit: least,
          source: [cite('general-practice', { rule: `${PRACTICE_LEAST}T`, basis: 'memory' }), OPENING_SOURCE],
        }),
      ];
    if (opening <= most + 1e-9) return [];
    return [
      remarkOf('die-wide', 'note', {
        ...data,
        limit: most,
        source: [OPENING_SOURCE, cite('general-practice', { rule: '8T', basis: 'memory' })],
      }),
    ];
  });
}

/** A radius off the one drawn, where the shop has what comes near it: the check of the part says nothing of it then. */
function radiusFindings({ flat, sheet, material }: PartPlan, step: BendStep, shop: Shop): readonly Remark[] {
  return step.bends.flatMap((id): readonly Remark[] => {
    const bend = flat.bends.find((b) => b.id === id);
    if (bend === undefined || step.press === null) return [];
    const best = bestMade(bend, sheet.thickness, shop);
    const { made, machine, longer, value } = madeAs(
      bend,
      airRadius(step.press.opening),
      step.machineName ?? '',
    );
    if (value <= MOST_OFF || best === null || best.value > MOST_OFF) return [];
    return [
      remarkOf('radius-made', 'warning', {
        where: { at: null, names: [id], others: [], joints: [] },
        value,
        limit: MOST_OFF,
        unit: 'mm',
        values: {
          asked: bend.insideRadius,
          made,
          longer,
          machine,
          least: leastRadiusOf(material.leastRadius, sheet.thickness),
        } satisfies ShopFindings['radius-made'],
        source: [
          cite('makers-tables', { rule: 'R = 0.16 V' }),
          cite(null, { size: MOST_OFF, basis: 'memory' }),
        ],
      }),
    ];
  });
}
