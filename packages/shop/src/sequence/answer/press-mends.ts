import { gooseneck, straightPunch, vDie } from '../../machines/press-shapes.js';
import type { Die, Press, Punch } from '../../machines/shop.js';
import { airRadius } from '../../metal/press-force.js';
import { PRACTICE_LEAST } from '../../tools/press-setting.js';
import { type MendTrial, machineMend, stoppedBy } from './mend-trial.js';
import type { Mend, Reason } from './plan.js';

const OPENINGS = [4, 5, 6, 8, 10, 12, 16, 20, 24]; // mm, of dies there are; usual, from memory
const HOLLOWS = [12, 16, 20, 25, 30, 40, 50]; // mm, of goosenecks; judgement
const USUAL = 85; // degrees
const ACUTE = 30; // degrees, of a usual acute pair; from memory
const REACHES = [10, 20, 30, 45]; // mm, of horns; judgement
const HORN = { beside: 35, foot: 12, height: 90 }; // mm: over a foot, its height, up to where it is free; from memory
const SIDE = 2; // mm of a die beside its V

/** A kind of tool that may be added, where one of these reasons stops the press. */
interface Kind {
  readonly parameter: string;
  readonly codes: readonly Reason['code'][];
  /** Sizes of it, the most usual first. mm */
  readonly sizes: (trial: MendTrial, press: Press) => readonly number[];
  readonly tools: (size: number, press: Press) => Partial<Pick<Press, 'punches' | 'dies'>>;
}

const withMore = (press: Press, punches: readonly Punch[], dies: readonly Die[] = []) => ({
  punches: [...press.punches, ...punches],
  dies: [...press.dies, ...dies],
});

/** Every punch that has none with a pair of horns. */
const horned = ({ punches }: Press, reach: number): readonly Punch[] => {
  const { beside, foot, height } = HORN;
  const horns = { widths: [reach + beside, reach + beside] as const, reach, foot, height };
  return punches.map((p) => ({ ...p, horns: p.horns ?? horns }));
};

const die = (opening: number, angle: number): Die =>
  vDie(`V ${opening}, ${angle} deg`, opening, angle, opening / 2 + SIDE);

/** Openings of dies for a sheet, those first that bend it nearest to its radius. */
const openings = ({ plan: { sheet } }: MendTrial) => {
  const off = (v: number) => Math.abs(Math.log(airRadius(v) / Math.max(sheet.insideRadius, 0.1)));
  return OPENINGS.filter((v) => v >= PRACTICE_LEAST * sheet.thickness - 1e-9).toSorted(
    (a, b) => off(a) - off(b),
  );
};

const KINDS: readonly Kind[] = [
  {
    parameter: 'press.dies.opening',
    codes: ['flange-short'],
    sizes: (trial, { dies }) => openings(trial).filter((v) => v < Math.min(...dies.map((d) => d.opening))),
    tools: (opening, press) => withMore(press, [], [die(opening, USUAL)]),
  },
  {
    parameter: 'press.dies.angle',
    codes: ['angle'],
    sizes: openings,
    tools: (opening, press) =>
      withMore(press, [straightPunch(`acute, ${ACUTE} deg`, ACUTE)], [die(opening, ACUTE)]),
  },
  {
    parameter: 'press.punches',
    codes: ['punch', 'put-in', 'take-off'],
    sizes: () => HOLLOWS,
    tools: (hollow, press) => withMore(press, [gooseneck(`gooseneck, ${hollow} mm`, hollow)]),
  },
  {
    parameter: 'press.punches.horns',
    codes: ['punch', 'put-in', 'take-off'],
    sizes: () => REACHES,
    tools: (reach, press) => ({ punches: horned(press, reach) }),
  },
];

/** Tools of a press with which an impossible part can be bent: of every kind the first size that does. */
export function pressMends(trial: MendTrial, press: Press): readonly Mend[] {
  const { shop, inShop } = trial;
  const goes = (more: Partial<Press>) => inShop({ ...shop, press: { ...press, ...more } }) !== null;
  const added = KINDS.flatMap(({ parameter, codes, sizes, tools }): readonly Mend[] => {
    if (!stoppedBy(trial, 'press', codes)) return [];
    const found = sizes(trial, press).find((size) => goes(tools(size, press)));
    return found === undefined ? [] : [machineMend(parameter, { given: null, found, bound: 'tried' })];
  });
  const blocks = stoppedBy(trial, 'press', ['die']) && press.dies.some((d) => !d.sectioned);
  if (!blocks || !goes({ dies: press.dies.map((d) => ({ ...d, sectioned: true })) })) return added;
  return [
    ...added,
    machineMend('press.dies.sectioned', { given: 'false', found: 'true', bound: 'tried', unit: null }),
  ];
}
