import type { Say } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { Reason } from '@tinwright/shop';
import { shortened, tenths } from './figures.js';

const MACHINES: Readonly<Record<Reason['machine'], string>> = {
  brake: 'brake',
  press: 'press',
  vise: 'vise',
  hand: 'hand seamer',
};

/** Why a part cannot be bent, in words: upper limits rounded down, lower ones up. */
export function englishReason(reason: Reason, say: Say): string {
  const { bends, held, code, panel } = reason;
  const [first, more] = shortened(bends);
  const names = `${first}${more > 0 ? ` and ${more} more` : ''}`;
  if (code === 'part') return `${names}: ${held} runs into ${panel} of the part itself`;
  if (code === 'tools') return `${names}: no tools of the rack make the width on the ${reason.machine}`;
  return `${names}${held === null ? '' : ` with ${held} held`}: ${obstacleWords(reason, say)}`;
}

function obstacleWords(reason: Reason, say: Say): string {
  const { value, limit, by } = reason;
  if (value !== null && limit !== null) return limitWords(reason, { value, limit }, say);
  return clashWords(reason, by === null ? '' : `, by ${tenths(by, say)}`);
}

function clashWords({ code, machine, panel: named, flat }: Reason, deep: string): string {
  const panel = flat ? `${named}, still flat,` : named;
  switch (code) {
    case 'beam':
      return `${panel} runs into the beam over the fingers${deep}`;
    case 'bed':
    case 'ram':
      return `${panel} runs into the ${code}${deep}`;
    case 'leaf':
      return `${panel} is in the way of the leaf${deep}`;
    case 'jaws':
      return `${panel} is in the way of the ${machine === 'hand' ? 'hand seamer' : 'vise'}`;
    case 'fingers':
      return `${panel} stands where the fingers have to be`;
    case 'punch':
    case 'die':
      return `${panel ?? 'the sheet'} runs into the ${code}`;
    case 'put-in':
      return `with ${named} up the part cannot be brought under the ${machine === 'press' ? 'punch' : 'jaw'}`;
    case 'take-off':
      return `with ${named} up the part cannot be taken off the ${machine === 'press' ? 'punch' : 'fingers'}`;
    default:
      return `it cannot be done ${machine === 'hand' ? 'by hand' : `on the ${machine}`}`;
  }
}

function limitWords(
  { code, machine, panel }: Reason,
  { value, limit }: { readonly value: number; readonly limit: number },
  say: Say,
): string {
  const [found, about, most, least] = [
    say.size(value),
    tenths(value, say),
    say.most(limit),
    say.least(limit),
  ];
  switch (code) {
    case 'angle':
      return `${plainNumber(value, 1)}° to set, the ${machine} does ${plainNumber(limit, 1)}° at most`;
    case 'force':
      return `it takes ${plainNumber(value, 1)} kN, the press has ${plainNumber(limit, 1)} kN`;
    case 'length':
      return `the line is ${found} long, the ${MACHINES[machine]} ${most}`;
    case 'capacity':
      return `the sheet is ${found} thick, the ${MACHINES[machine]} takes ${most}`;
    case 'flange-short':
      return `${panel} reaches ${about} over the line, the ${machine === 'press' ? 'die' : 'leaf'} needs ${least}`;
    case 'hold-short':
      return `${panel} gives the fingers ${about} to hold, they need ${least}`;
    case 'opening':
      return `the folded hem stands ${about} high, the jaw lifts ${most}`;
    case 'die':
      if (panel === null) return `the widest V is ${found}, the sheet needs ${least} or more`;
      return bareWords(code, panel, about, most);
    case 'jaws':
      return `${about} between the jaws, the ${MACHINES[machine]} takes ${most}`;
    default:
      return bareWords(code, panel, about, most);
  }
}

const bareWords = (code: string, panel: string | null, about: string, most: string): string =>
  `beside ${panel} the ${code} would leave ${about} of the line bare, ${most} at most`;
