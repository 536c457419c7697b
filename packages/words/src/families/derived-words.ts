import type { DerivedSize } from '@tinwright/core/family';
import type { Language } from '../language.js';

/** Finished sizes that several families have, in a few words. */
const GERMAN: Readonly<Record<string, string>> = {
  insideLength: 'innen, längs',
  insideWidth: 'innen, quer',
  insideHeight: 'innen, Höhe',
  outsideLength: 'außen, längs',
  outsideWidth: 'außen, quer',
  rimHeight: 'von außen am Boden bis zum Rand',
  clearHeight: 'von innen am Boden bis zur Unterkante des Umschlags',
  openLength: 'zwischen den Borden, längs',
  openWidth: 'zwischen den Borden, quer',
  topLength: 'über den Rand, längs, eine Rolle um Draht eingeschlossen',
  topWidth: 'über den Rand, quer, eine Rolle um Draht eingeschlossen',
  backWidth: 'der Rückwand, über ihre Laschen',
  mouthWidth: 'über die Seiten, an der Vorderkante',
  frontHeight: 'der Front',
  stackCorner: 'Höhe der Winkel an den Ecken',
  seamSide: 'der Seite, die die Lasche trägt',
  seatWidth: 'zwischen den Kantungen der Seiten',
  insideSpan: 'zwischen den Laschen',
  longLeg: 'erster Schenkel eines Mantels aus gleichem Blech, herumgelegt',
  slantLeg: 'schräger Schenkel eines Mantels aus gleichem Blech, herumgelegt',
  shortLeg: 'letzter Schenkel eines Mantels, herumgelegt',
};

/** What a derived size is; English stands with the family. */
export const derivedWords = ({ name, words }: DerivedSize, language: Language): string =>
  (language === 'de' ? GERMAN[name] : undefined) ?? words;
