import type { MaterialName } from '@tinwright/core';
import { frozen } from '@tinwright/core/internal';
import type { Language } from './language.js';

/** What the sheet materials are called in every language. */
const MATERIALS: Readonly<Record<Language, Readonly<Record<MaterialName, string>>>> = frozen({
  en: {
    'mild-steel': 'cold-rolled mild steel DC01',
    'galvanised-steel': 'galvanised sheet steel',
    'stainless-304': 'stainless steel 304 (1.4301)',
    'stainless-430': 'stainless steel 430 (1.4016)',
    'aluminium-1050-h14': 'aluminium 1050A-H14',
    'aluminium-3003-h14': 'aluminium 3003-H14',
    'aluminium-5052-h32': 'aluminium 5052-H32',
    'aluminium-6061-t6': 'aluminium 6061-T6',
    copper: 'copper Cu-DHP R220',
    brass: 'brass CuZn37 R300',
    tinplate: 'tinplate T2/T3',
  },
  de: {
    'mild-steel': 'kaltgewalzter Stahl DC01',
    'galvanised-steel': 'verzinktes Stahlblech',
    'stainless-304': 'nichtrostender Stahl 304 (1.4301)',
    'stainless-430': 'nichtrostender Stahl 430 (1.4016)',
    'aluminium-1050-h14': 'Aluminium 1050A-H14',
    'aluminium-3003-h14': 'Aluminium 3003-H14',
    'aluminium-5052-h32': 'Aluminium 5052-H32',
    'aluminium-6061-t6': 'Aluminium 6061-T6',
    copper: 'Kupfer Cu-DHP R220',
    brass: 'Messing CuZn37 R300',
    tinplate: 'Weißblech T2/T3',
  },
});

/** What a sheet material is called; by its own title, or its name, where the language has none for it. */
export const materialName = (
  { name, title = name }: { readonly name: string; readonly title?: string },
  language: Language,
): string => (MATERIALS[language] as Readonly<Partial<Record<string, string>>>)[name] ?? title;
