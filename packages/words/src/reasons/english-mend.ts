import type { Say } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { Mend } from '@tinwright/shop';

/** Something that would make an impossible part possible, in words. */
export function englishMend(mend: Mend, say: Say): string {
  const { of, parameter, given, found, bound } = mend;
  if (of === 'machine') return machineWords(mend, say);
  if (typeof found !== 'number') return `${parameter}: ${found}`;
  if (given === null)
    return parameter.includes(',')
      ? `${parameter} cut as pieces of their own, each joined on by a flange of ${say.size(found)}`
      : `${parameter} cut as a piece of its own, joined on by a flange of ${say.size(found)}`;
  return `${parameter} of ${amount(mend, found, say)} or ${bound === 'most' ? 'less' : 'more'}`;
}

function amount({ unit, bound }: Mend, found: number, say: Say): string {
  if (unit === 'deg') return `${plainNumber(found, 1)}°`;
  if (unit === 'kN') return `${plainNumber(found, 1)} kN`;
  return bound === 'most' ? say.most(found) : say.least(found);
}

function machineWords(mend: Mend, say: Say): string {
  const { parameter, given, found, instead, thickness } = mend;
  const place = instead === null ? '' : ` in place of ${instead}`;
  const beside = instead === null ? '' : ` for ${instead}`;
  const pieces = typeof found === 'object' ? found.map((f) => say.size(f)).join(', ') : '';
  const size = typeof found === 'number' ? amount(mend, found, say) : '';
  switch (parameter) {
    case 'brake.clearHeight':
      return `a brake with ${size} clear under its beam${place}`;
    case 'brake.opening':
      return `a brake whose jaw lifts ${size}${place}`;
    case 'brake.finger.foot':
      return `fingers with a foot of ${size} or less${beside}`;
    case 'brake.gaps.end':
      return `a line left bare for ${size} at its ends, dressed by hand afterwards`;
    case 'brake.length':
      return given === null ? `a leaf brake with fingers, ${size} long` : `a brake ${size} long${place}`;
    case 'brake.leaf.width':
      return `the leaf ${instead === null ? '' : `of ${instead} `}without its bars, ${size} wide${thickness === null ? '' : `; it then takes sheet of ${say.most(thickness)}`}`;
    case 'brake.fingers':
      return `fingers ${pieces} wide besides those there are${beside}`;
    case 'press.ram.height':
      return `a punch whose point is ${size} under the ram`;
    case 'press.force':
      return `a press of ${size}`;
    case 'press.length':
      return `a press ${size} long, with punches as long`;
    case 'press.punches.lengths':
      return `punches in pieces of ${pieces} besides those there are`;
    case 'press.punches.horns':
      return `a punch with a pair of horns, their feet standing out ${size}`;
    case 'press.punches':
      return `a gooseneck punch that leaves ${size} of room behind its point`;
    case 'press.dies.opening':
      return `a die with a V ${size} wide`;
    case 'press.dies.angle':
      return `a punch and a die of 30°, its V ${size} wide`;
    case 'press.dies.sectioned':
      return 'dies in pieces, that stand only under the punch';
    case 'vise.grip':
      return `folding bars ${size} deep or less in the vise`;
    case 'vise.depth':
      return `a vise that takes ${size} between its jaws`;
    case 'handSeamer.width':
      return `a hand seamer ${size} wide`;
    case 'formerBlock.height':
      return `a former block ${size} high, sawn to the bends`;
    default:
      return given === null
        ? `a vise with folding bars ${size} long`
        : `folding bars ${size} long in the vise`;
  }
}
