import type { AnyFamily } from '@tinwright/core';
import type { Language } from '../language.js';
import { sizeLabel } from './tell-family.js';

/** Finished sizes that are measured but are no parameter, by the names families ask for them with. */
const WORDS: Readonly<Record<string, Readonly<Record<Language, string>>>> = {
  'length + 2 clearance': { en: 'inside, along the length', de: 'innen, längs' },
  'width + 2 clearance': { en: 'inside, along the width', de: 'innen, quer' },
  'length - 2 clearance': { en: 'over the skirts, along the length', de: 'über die Schürzen, längs' },
  'width - 2 clearance': { en: 'over the skirts, along the width', de: 'über die Schürzen, quer' },
  'outsideLength + 2 tabs.length': { en: 'over the screw tabs', de: 'über die Schraublaschen' },
  'depth + pull.depth': { en: 'over back and pull', de: 'über Rückwand und Griff' },
  'span + 2 feet.length': { en: 'over the feet', de: 'über die Füße' },
  seamSide: { en: 'side with the seam', de: 'Seite mit der Naht' },
  backWidth: { en: 'width of the back over its tabs', de: 'Breite der Rückwand über ihre Laschen' },
};

const LEG = /^legs\[(\d+)\]$/;

/** A leg is told as its panel is called: the words of the list would be the same for all of them. */
function legLabel(name: string): string | null {
  const index = LEG.exec(name)?.[1];
  return index === undefined ? null : `leg-${Number(index) + 1}`;
}

/** What a finished size is, for a label; the bare name where nobody says. */
export const measuredLabel = (
  family: Pick<AnyFamily, 'name' | 'describe'>,
  name: string,
  language: Language,
): string => legLabel(name) ?? (sizeLabel(family, name, language) || (WORDS[name]?.[language] ?? name));
