import type { FlatBend } from '@tinwright/core';
import { radians } from '@tinwright/core';
import type { Die, Shop } from '../machines/shop.js';
import type { ShopCheck, Subject } from './check.js';
import { middleOf } from './geometry/panels.js';
import { between, isOpposite, type Side, sidesOf } from './geometry/sides.js';
import { limitCheck, type Place } from './limit-check.js';
import { MARGIN, marginFor, type Sourced } from './machine/leaf.js';
import { diesFor } from './machine/press.js';
import { viseTakes } from './machine/vise.js';

/** Two bends of one panel that turn opposite ways, along each other: a step. mm */
export interface Step {
  readonly panel: string;
  readonly bends: readonly [FlatBend, FlatBend];
  /** Outside, between their mould lines. */
  readonly web: number;
  /** Between the same faces before and after the step. */
  readonly offset: number;
}

/** The steps of a part. Hems lie flat and step nowhere. */
export function stepsOf({ part, flat, sheet }: Subject): readonly Step[] {
  return part.panels.flatMap(({ id }) => {
    const sides = sidesOf(part, id).filter((s) => s.hem === null);
    return sides.flatMap((a, i) =>
      sides.slice(i + 1).flatMap((b): readonly Step[] => {
        if (!isOpposite(a, b) || a.angle > 0 === b.angle > 0) return [];
        const bendOf = ({ bend }: Side) => flat.bends.find((f) => f.id === bend) as FlatBend;
        const web = between(a, b);
        const turn = radians(Math.min(Math.abs(a.angle), Math.abs(b.angle), 90));
        const offset = web * Math.sin(turn) - sheet.thickness * (1 - Math.cos(turn));
        return [{ panel: id, bends: [bendOf(a), bendOf(b)], web, offset }];
      }),
    );
  });
}

/** An offset so small that its two bends cannot be made one after the other. */
export const offsetSmall: ShopCheck = limitCheck({
  code: 'offset-small',
  severity: 'error',
  unit: 'mm',
  bound: 'least',
  places: (subject) =>
    stepsOf(subject).map(({ panel, bends, offset }) => ({
      at: middleOf(bends[1]),
      value: offset,
      limit: 2 * subject.sheet.thickness,
      what: panel,
    })),
  message: ({ value, limit, what }, say) =>
    `${what} steps over by ${say.size(value)}; up to ${say.most(limit)} takes an offset die, not two bends`,
  source: () => "offsets up to 2T want an offset die, by a fabricators' page",
  aim: ({ limit }, say) => `step over by more than ${say.least(limit)}`,
  remedy: () => 'press it in an offset die',
});

interface NarrowStep extends Place {
  readonly machine: string;
  readonly source: string;
}

/** A step too narrow: the flange that is there points down into leaf and bed, or into the die. */
export const stepNarrow: ShopCheck = limitCheck<NarrowStep>({
  code: 'step-narrow',
  leansOn: ['brake.leaf.width', 'brake.bed'],
  severity: 'error',
  unit: 'mm',
  bound: 'least',
  places: (subject, shop) => stepsOf(subject).flatMap((step) => stepPlace(subject, shop, step)),
  message: ({ value, limit, what, machine }, say) =>
    `${what} is ${say.size(value)} wide between opposite bends, ${say.least(limit)} at least on the ${machine}`,
  source: ({ source }) => source,
  aim: ({ limit }, say) => `make it ${say.least(limit)} or wider`,
  remedy: ({ severity }) => (severity === 'note' ? 'bend it by hand in the vise' : 'join it from two parts'),
});

function stepPlace(subject: Subject, shop: Shop, step: Step): readonly NarrowStep[] {
  const { thickness, insideRadius } = subject.sheet;
  if (step.offset <= 2 * thickness) return []; // told as an offset
  const { brake, press, profile } = shop;
  const longest = Math.max(...subject.flat.blank.max);
  const ways: readonly (Sourced & { readonly machine: string; readonly hard: number })[] = [
    ...(brake === null
      ? []
      : [brake].map(({ name, leaf, bed }) => {
          const value = Math.min(leaf.width, bed) + marginFor(longest) + thickness;
          const source = `clear of the leaf, or of the bed, by its width in the shop file, derived, ${MARGIN}`;
          return { machine: name, value, hard: value, source };
        })),
    ...(press === null
      ? []
      : diesFor(press, insideRadius).map((die) => {
          const form = die.opening / 2 + 2.5 + 2 * thickness;
          const own = halfWidth(die) + thickness + 0.5;
          const value = profile === 'strict' ? Math.max(form, own) : own;
          const source = `half the die, T and 0.5 mm, derived; V/2 + 2.5 mm + 2T over a V of ${die.opening} mm by a fabricators' page; the larger in profile strict, the first in profile usual`;
          return { machine: press.name, value, hard: own, source };
        })),
  ];
  if (ways.length === 0) return [];
  const best = ways.reduce((a, b) => (b.value < a.value ? b : a));
  const byHand = step.bends.some((b) => viseTakes(subject, shop, b));
  const severity = byHand ? 'note' : step.web < best.hard ? 'error' : 'warning';
  return [
    {
      at: middleOf(step.bends[1]),
      value: step.web,
      limit: best.value,
      what: step.panel,
      severity,
      machine: best.machine,
      source: best.source,
    },
  ];
}

/** Half the width of a die's block, its narrower side. mm */
function halfWidth({ section }: Die): number {
  const across = section.map(([x]) => x);
  return Math.min(Math.max(...across), -Math.min(...across));
}
