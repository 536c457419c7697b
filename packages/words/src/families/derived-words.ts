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
  seatWidth: 'zwischen den Kantungen der Seiten',
  insideSpan: 'zwischen den Laschen',
  longLeg: 'erster Schenkel eines Mantels aus gleichem Blech, herumgelegt',
  slantLeg: 'schräger Schenkel eines Mantels aus gleichem Blech, herumgelegt',
  shortLeg: 'letzter Schenkel eines Mantels, herumgelegt',
};

/** What a derived size is; English stands with the family. */
export const derivedWords = ({ name, words }: DerivedSize, language: Language): string =>
  (language === 'de' ? GERMAN[name] : undefined) ?? words;
