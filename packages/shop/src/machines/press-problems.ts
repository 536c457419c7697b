import type { Path, Problem, Unit } from '@tinwright/core';
import { crossesItself, quoted, sayIn } from '@tinwright/core/internal';
import { veeProblems } from './die-problems.js';
import { impossible } from './impossible.js';
import type { Die, Horns, Press, PressTool, Punch } from './shop.js';
import { twinProblems } from './twin-problems.js';

const ROUNDING = 0.01; // mm

/** What no press brake can be, nor its tools. */
export function pressProblems(press: Press, units: Unit): readonly Problem[] {
  return [
    ...press.punches.flatMap((p, i) => punchProblems(p, press, ['press', 'punches', i], units)),
    ...twinProblems(['press', 'punches'], press.punches),
    ...press.dies.flatMap((d, i) => {
      const path = ['press', 'dies', i];
      const problems = dieProblems(d, path, units);
      return problems.length > 0 ? problems : veeProblems(d, path, units);
    }),
    ...twinProblems(['press', 'dies'], press.dies),
  ];
}

function punchProblems(punch: Punch, press: Press, path: Path, units: Unit): readonly Problem[] {
  const { size, most } = sayIn(units);
  const low = Math.min(...punch.section.map((p) => p[1]));
  return [
    ...crossing(punch, path),
    ...(Math.abs(low) <= ROUNDING
      ? []
      : [
          impossible(
            [...path, 'section'],
            `the lowest corner of ${quoted(punch.name)} is at ${size(low)}, 0 allowed`,
            'Measure the section from the point of the punch, upwards',
          ),
        ]),
    ...(punch.horns === null ? [] : hornProblems(punch.horns, press, [...path, 'horns'], units)),
    ...punch.lengths.flatMap((l, i) =>
      l > press.length
        ? [
            impossible(
              [...path, 'lengths', i],
              `${size(l)} given, the press is ${most(press.length)} long`,
              'Check the units: a length may carry its own, such as "24 in"',
            ),
          ]
        : [],
    ),
  ];
}

function hornProblems(
  { widths, reach, foot, height }: Horns,
  { length }: Press,
  path: Path,
  units: Unit,
): readonly Problem[] {
  const { size, least, most } = sayIn(units);
  const short = widths.findIndex((w) => w <= reach);
  return [
    ...(short < 0
      ? []
      : [
          impossible(
            [...path, 'widths', short],
            `${size(widths[short] as number)} given, its foot stands out ${least(reach)}`,
            'Give the whole length of the piece along the bend, foot included',
          ),
        ]),
    ...(widths[0] + widths[1] < length
      ? []
      : [
          impossible(
            [...path, 'widths'],
            `${size(widths[0] + widths[1])} together, the press is ${most(length)} long`,
            'Check the units: a length may carry its own, such as "2 in"',
          ),
        ]),
    ...(foot < height
      ? []
      : [
          impossible(
            [...path, 'height'],
            `${size(height)} given, the foot is ${size(foot)} high`,
            'Measure both from the point of the punch: the piece is cut back between them',
          ),
        ]),
  ];
}

function dieProblems(die: Die, path: Path, units: Unit): readonly Problem[] {
  const { size, most } = sayIn(units);
  const [high, wide] = [
    Math.max(...die.section.map((p) => p[1])),
    Math.max(...die.section.map((p) => Math.abs(p[0]))),
  ];
  return [
    ...crossing(die, path),
    ...(Math.abs(high) <= ROUNDING
      ? []
      : [
          impossible(
            [...path, 'section'],
            `the highest corner of ${quoted(die.name)} is at ${size(high)}, 0 allowed`,
            'Measure the section from the top of the die, downwards',
          ),
        ]),
    ...(die.opening < 2 * wide
      ? []
      : [
          impossible(
            [...path, 'opening'],
            `${size(die.opening)} given, the block is ${most(2 * wide)} wide`,
            'Give the width of the V at the top',
          ),
        ]),
  ];
}

function crossing({ name, section }: PressTool, path: Path): readonly Problem[] {
  if (!crossesItself(section.map((at) => ({ at, bulge: 0 })))) return [];
  const fix = 'Give its corners in order, once round';
  return [impossible([...path, 'section'], `the section of ${quoted(name)} crosses itself`, fix)];
}
