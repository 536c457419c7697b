import type { Say } from '@tinwright/core';
import type { Reason } from '@tinwright/shop';
import { tenthOf } from '../decimal.js';
import { shortened, tenths } from './figures.js';

const MACHINES: Readonly<Record<Reason['machine'], string>> = {
  brake: 'der Schwenkbiegemaschine',
  press: 'der Abkantpresse',
  vise: 'dem Schraubstock',
  hand: 'der Falzzange',
};

/** Why a part cannot be bent, in words: upper limits rounded down, lower ones up. */
export function germanReason(reason: Reason, say: Say): string {
  const { bends, held, code, panel, machine } = reason;
  const [first, more] = shortened(bends);
  const names = `${first}${more > 0 ? ` und ${more} weitere` : ''}`;
  if (code === 'part') return `${names}: ${held} läuft in ${panel} desselben Teils`;
  if (code === 'tools')
    return `${names}: keine Werkzeuge aus dem Vorrat ergeben auf ${MACHINES[machine]} die Breite`;
  return `${names}${held === null ? '' : ` mit ${held} gehalten`}: ${obstacleWords(reason, say)}`;
}

function obstacleWords(reason: Reason, say: Say): string {
  const { value, limit, by } = reason;
  if (value !== null && limit !== null) return limitWords(reason, { value, limit }, say);
  return clashWords(reason, by === null ? '' : `, um ${tenths(by, say)}`);
}

function clashWords({ code, machine, panel: named, flat }: Reason, deep: string): string {
  const panel = flat ? `${named}, noch flach,` : named;
  switch (code) {
    case 'beam':
      return `${panel} läuft in die Oberwange über den Segmenten${deep}`;
    case 'bed':
      return `${panel} läuft in ${machine === 'press' ? 'den Pressentisch' : 'die Unterwange'}${deep}`;
    case 'ram':
      return `${panel} läuft in den Pressbalken${deep}`;
    case 'leaf':
      return `${panel} ist der Biegewange im Weg${deep}`;
    case 'jaws':
      return `${panel} ist ${machine === 'hand' ? 'der Falzzange' : 'dem Schraubstock'} im Weg`;
    case 'fingers':
      return `${panel} steht, wo die Segmente sein müssen`;
    case 'punch':
      return `${panel} läuft in den Stempel`;
    case 'die':
      return `${panel ?? 'das Blech'} läuft in das Gesenk`;
    case 'put-in':
      return `mit ${named} oben lässt sich das Teil nicht unter ${machine === 'press' ? 'den Stempel' : 'die Oberwange'} bringen`;
    case 'take-off':
      return `mit ${named} oben geht das Teil nicht ${machine === 'press' ? 'vom Stempel' : 'von den Segmenten'}`;
    default:
      return machine === 'hand' ? 'von Hand geht es nicht' : `mit ${MACHINES[machine]} geht es nicht`;
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
      return `${tenthOf(value, 'de')}° einzustellen, mit ${MACHINES[machine]} gehen höchstens ${tenthOf(limit, 'de')}°`;
    case 'force':
      return `es braucht ${tenthOf(value, 'de')} kN, die Presse hat ${tenthOf(limit, 'de')} kN`;
    case 'length':
      return `die Kante ist ${found} lang, mit ${MACHINES[machine]} gehen ${most}`;
    case 'capacity':
      return `das Blech ist ${found} dick, mit ${MACHINES[machine]} gehen ${most}`;
    case 'flange-short':
      return `${panel} reicht ${about} über die Kante, ${machine === 'press' ? 'das Gesenk' : 'die Biegewange'} braucht ${least}`;
    case 'hold-short':
      return `${panel} gibt den Segmenten ${about} zu halten, sie brauchen ${least}`;
    case 'opening':
      return `der vorgekantete Umschlag steht ${about} hoch, die Oberwange hebt ${most}`;
    case 'die':
      if (panel === null) return `das weiteste V misst ${found}, das Blech braucht ${least} oder mehr`;
      return bareWords(panel, about, most);
    case 'jaws':
      return `${about} zwischen den Backen, ${machine === 'hand' ? 'die Falzzange' : 'der Schraubstock'} nimmt ${most}`;
    default:
      return bareWords(panel, about, most);
  }
}

const bareWords = (panel: string | null, about: string, most: string): string =>
  `neben ${panel} blieben ${about} der Kante frei, höchstens ${most} gehen`;
