import type { AnyFamily } from '@tinwright/core';
import type { Language } from '../language.js';
import { GERMAN_FAMILIES } from './german.js';
import type { FamilyWords } from './words.js';

/** English stands with the declaration of a family; one from outside has no other. */
const TRANSLATED: Readonly<Record<Language, FamilyWords | null>> = { en: null, de: GERMAN_FAMILIES };

type Described = Pick<AnyFamily, 'name' | 'describe'>;
interface Words {
  readonly title: string;
  readonly sizes: Readonly<Record<string, string>>;
}

const wordsIn = ({ name }: Described, language: Language): Words | undefined =>
  (TRANSLATED[language]?.families as Readonly<Record<string, Words>> | undefined)?.[name];

/** What a family is, a short noun phrase. */
export const familyTitle = (family: Described, language: Language): string =>
  wordsIn(family, language)?.title ?? family.describe.title;

/** The same for a label: up to where it is explained. */
export const sizeLabel = (family: Described, path: string, language: Language): string =>
  parameterWords(family, path, language).split(/[:;(]/, 1)[0]?.trim() ?? '';

/** What a parameter of a family is, by its path; of an entry of a list what is said of the list. */
export function parameterWords(family: Described, path: string, language: Language): string {
  const whole = path.replace(/\[\d+\]/g, '');
  const english = family.describe.sizes[path] ?? family.describe.sizes[whole] ?? '';
  const told = wordsIn(family, language);
  if (told === undefined || english === '') return english;
  const hem = TRANSLATED[language]?.hem as Readonly<Record<string, string>>;
  return told.sizes[path] ?? told.sizes[whole] ?? hem[whole.split('.').at(-1) ?? ''] ?? english;
}
