import type { FlatBend, PartPanel } from '@tinwright/core';
import type { Shop } from '../machines/shop.js';
import type { ShopCheck, Subject } from './check.js';
import { lengthOf, middleOf } from './geometry/panels.js';
import { reachFrom, type Side, sidesOf } from './geometry/sides.js';
import { limitCheck, type Place } from './limit-check.js';
import { leastHold, leastLeafFlange, type Sourced } from './machine/leaf.js';
import { leastPressFlange } from './machine/press.js';
import { viseTakes } from './machine/vise.js';

interface ShortFlange extends Place {
  readonly machine: string;
  readonly source: string;
}

/** What a machine needs on one side of a bend: by the profile in force, and at the very least. */
interface Need extends Sourced {
  readonly machine: string;
  readonly hard: number;
}

/** A flange too short for the leaf, or to lie over the V opening. A wired edge is rolled by hand. */
export const flangeShort: ShopCheck = limitCheck<ShortFlange>({
  code: 'flange-short',
  leansOn: ['brake.lowestFlange', 'brake.setBack'],
  severity: 'error',
  unit: 'mm',
  bound: 'least',
  places: (subject, shop) =>
    shop.brake === null && shop.press === null
      ? []
      : subject.part.panels.flatMap((panel) => place(subject, shop, panel)),
  message: ({ value, limit, what, machine }, say) =>
    `${what} is ${say.size(value)} from its bend to its edge, the ${machine} needs ${say.least(limit)}`,
  source: ({ source }) => source,
  aim: ({ limit }, say) => `make it ${say.least(limit)} or longer`,
  remedy: () => 'bend it longer and cut it back afterwards',
});

/**
 * The bend of a panel that leaves it the most to hold: when the others are done, the last one has that. Between two
 * bends either the leaf turns a panel or the fingers hold it, so the smaller of both needs counts.
 */
function place(subject: Subject, shop: Shop, panel: PartPanel): readonly ShortFlange[] {
  const { flat, part } = subject;
  const sides = sidesOf(part, panel.id).filter((s) => s.hem !== 'wired');
  const found = sides.map((side): ShortFlange => {
    const bend = flat.bends.find((b) => b.id === side.bend) as FlatBend;
    const { value: limit, hard, source, machine } = needAt(subject, shop, side, bend);
    const value = reachFrom(panel, side);
    const byHand = viseTakes(subject, shop, bend);
    const severity = value < hard && !byHand ? 'error' : 'warning';
    return { at: middleOf(bend), value, limit, what: panel.id, severity, machine, source };
  });
  const most = Math.max(...found.map((f) => f.value - f.limit));
  return found.filter((f) => f.value - f.limit === most).slice(0, 1);
}

/** The least any machine of the shop needs. */
function needAt({ sheet, material }: Subject, shop: Shop, side: Side, bend: FlatBend): Need {
  const { thickness } = sheet;
  const { brake, press, profile } = shop;
  // a hem is folded with the set-back of the sheet's own radius
  const insideRadius = side.hem === null ? side.insideRadius : sheet.insideRadius;
  const leaf = { thickness, insideRadius, length: lengthOf(bend), material };
  const smaller = (a: Sourced, b: Sourced) => (b.value < a.value ? b : a);
  const needs: readonly Need[] = [
    ...(brake === null
      ? []
      : [
          {
            ...smaller(leastLeafFlange(brake, leaf, profile), leastHold(brake, leaf)),
            machine: brake.name,
            hard: smaller(leastLeafFlange(brake, leaf, 'usual'), leastHold(brake, leaf)).value,
          },
        ]),
    ...(press === null
      ? []
      : [
          {
            ...leastPressFlange(press, { thickness, insideRadius, angle: bend.angle }, profile),
            machine: press.name,
            hard: leastPressFlange(press, { thickness, insideRadius, angle: bend.angle }, 'usual').value,
          },
        ]),
  ];
  return needs.reduce((a, b) => (b.value < a.value ? b : a));
}
