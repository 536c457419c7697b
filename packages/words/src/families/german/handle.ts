import type { FamilyWords } from '../words.js';
import { TAB_LENGTH } from './shared.js';

export const handle: FamilyWords['families']['handle'] = {
  title: 'Griff',
  sizes: {
    span: 'über die Außenseiten der gekanteten Laschen',
    width: 'über die Außenseiten der Seiten',
    sideDepth: 'Tiefe der Seiten, über den Umschlag',
    hem: 'Umschlag an der Kante beider Seiten, nach innen; weglassen für keinen',
    tabs: 'Laschen an beiden Enden, nach unten gekantet',
    'tabs.length': TAB_LENGTH,
    'tabs.gap': 'zwischen Laschen und Seiten an den Ecken frei',
    feet: 'Füße an den Enden der Laschen, nach außen gekantet, um auf einer Fläche zu stehen; weglassen für keine',
    'feet.length': 'wie weit sie vor den Laschen stehen',
  },
};
