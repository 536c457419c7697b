import type { Say } from '@tinwright/core';
import type { Mend } from '@tinwright/shop';
import { tenthOf } from '../decimal.js';

/** Something that would make an impossible part possible, in words. */
export function germanMend(mend: Mend, say: Say): string {
  const { of, parameter, given, found, bound } = mend;
  if (of === 'machine') return machineWords(mend, say);
  if (typeof found !== 'number') return `${parameter}: ${found}`;
  if (given === null)
    return parameter.includes(',')
      ? `${parameter} als eigene Stücke, jedes mit einer Lasche von ${say.size(found)} angefügt`
      : `${parameter} als eigenes Stück, mit einer Lasche von ${say.size(found)} angefügt`;
  return `${parameter} von ${amount(mend, found, say)} oder ${bound === 'most' ? 'weniger' : 'mehr'}`;
}

function amount({ unit, bound }: Mend, found: number, say: Say): string {
  if (unit === 'deg') return `${tenthOf(found, 'de')}°`;
  if (unit === 'kN') return `${tenthOf(found, 'de')} kN`;
  return bound === 'most' ? say.most(found) : say.least(found);
}

function machineWords(mend: Mend, say: Say): string {
  const { parameter, given, found, instead, thickness } = mend;
  const place = instead === null ? '' : ` statt ${instead}`;
  const beside = instead === null ? '' : ` für ${instead}`;
  const pieces = typeof found === 'object' ? found.map((f) => say.size(f)).join(', ') : '';
  const size = typeof found === 'number' ? amount(mend, found, say) : '';
  switch (parameter) {
    case 'brake.clearHeight':
      return `eine Maschine mit ${size} frei unter der Oberwange${place}`;
    case 'brake.opening':
      return `eine Maschine, deren Oberwange ${size} hebt${place}`;
    case 'brake.finger.foot':
      return `Segmente mit einem Fuß von höchstens ${size}${beside}`;
    case 'brake.gaps.end':
      return `an den Enden ${size} der Kante frei, von Hand nachgerichtet`;
    case 'brake.length':
      return given === null
        ? `eine Schwenkbiegemaschine mit Segmenten von ${size} Länge`
        : `eine Maschine von ${size} Länge${place}`;
    case 'brake.leaf.width':
      return `die Biegewange ${instead === null ? '' : `von ${instead} `}ohne Leisten, ${size} breit${thickness === null ? '' : `; sie nimmt dann Blech von ${say.most(thickness)}`}`;
    case 'brake.fingers':
      return `Segmente von ${pieces} Breite zu den vorhandenen${beside}`;
    case 'press.ram.height':
      return `ein Stempel, dessen Spitze ${size} unter dem Pressbalken steht`;
    case 'press.force':
      return `eine Presse mit ${size}`;
    case 'press.length':
      return `eine Presse von ${size} Länge, mit ebenso langen Stempeln`;
    case 'press.punches.lengths':
      return `Stempelstücke von ${pieces} zu den vorhandenen`;
    case 'press.punches.horns':
      return `ein Stempel mit einem Paar Hörner, deren Füße um ${size} vorstehen`;
    case 'press.punches':
      return `ein gekröpfter Stempel, der hinter der Spitze ${size} Platz lässt`;
    case 'press.dies.opening':
      return `ein Gesenk mit einem V von ${size}`;
    case 'press.dies.angle':
      return `Stempel und Gesenk mit 30°, das V ${size} weit`;
    case 'press.dies.sectioned':
      return 'geteilte Gesenke, die nur unter dem Stempel stehen';
    case 'vise.grip':
      return `Biegeschienen von höchstens ${size} Tiefe im Schraubstock`;
    case 'vise.depth':
      return `ein Schraubstock, der ${size} zwischen die Backen nimmt`;
    case 'handSeamer.width':
      return `eine Falzzange von ${size} Breite`;
    case 'formerBlock.height':
      return `ein Formklotz von ${size} Höhe, auf die Kantungen gesägt`;
    default:
      return given === null
        ? `ein Schraubstock mit Biegeschienen von ${size}`
        : `Biegeschienen von ${size} im Schraubstock`;
  }
}
