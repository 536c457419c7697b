import { plainNumber, type Say } from '@tinwright/core';
import type { Obstacle, Station } from '../stations/station.js';

/**
 * What stops an operation, in words: upper limits rounded down, lower ones up.
 * @param panel in the way, '' for none  @param by mm too far, where a number tells it
 */
export function obstacleWords(
  obstacle: Obstacle,
  machine: Station['name'],
  panel: string,
  by: number | null,
  say: Say,
): string {
  const { value, limit } = obstacle;
  return value === undefined || limit === undefined
    ? clashWords(obstacle.code, machine, panel, by === null ? '' : `, by ${tenths(by, say)}`)
    : limitWords(obstacle.code, machine, panel, { value, limit }, say);
}

function clashWords(code: Obstacle['code'], machine: Station['name'], panel: string, deep: string): string {
  switch (code) {
    case 'beam':
      return `${panel} runs into the beam over the fingers${deep}`;
    case 'bed':
    case 'ram':
      return `${panel} runs into the ${code}${deep}`;
    case 'leaf':
      return `${panel} is in the way of the leaf${deep}`;
    case 'jaws':
      return `${panel} is in the way of the vise`;
    case 'fingers':
      return `${panel} stands where the fingers have to be`;
    case 'punch':
    case 'die':
      return `${panel} runs into the ${code}`;
    case 'part':
      return `${panel} of the part itself is in the way`;
    default:
      return `it cannot be done ${machine === 'hand' ? 'by hand' : `on the ${machine}`}`;
  }
}

function limitWords(
  code: Obstacle['code'],
  machine: Station['name'],
  panel: string,
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
      return `${plainNumber(value, 1)}° to bend through, the ${machine} does ${plainNumber(limit, 1)}° at most`;
    case 'force':
      return `it takes ${plainNumber(value, 1)} kN, the press has ${plainNumber(limit, 1)} kN`;
    case 'length':
      return `the line is ${found} long, the ${machine} ${most}`;
    case 'capacity':
      return `the sheet is ${found} thick, the ${machine} takes ${most}`;
    case 'flange-short':
      return `${panel} reaches ${about} over the line, the ${machine === 'press' ? 'die' : 'leaf'} needs ${least}`;
    case 'hold-short':
      return `${panel} gives the fingers ${about} to hold, they need ${least}`;
    case 'opening':
      return `the folded hem stands ${about} high, the jaw lifts ${most}`;
    case 'hook':
      return `behind ${panel} the part cannot be hooked under the jaw: the foot is ${found} long, ${most} at most`;
    case 'jaws':
      return `${about} between the jaws, the vise takes ${most}`;
    default:
      return `beside ${panel} the ${code} would leave ${about} of the line bare, ${most} at most`;
  }
}

/** To a tenth of a millimetre, no finer: the sections of the machine are not known better. */
const tenths = (mm: number, say: Say) => say.size(Math.round(mm * 10) / 10);
