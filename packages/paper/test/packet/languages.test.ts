import { FAMILIES } from '@tinwright/core';
import { DEFAULT_SHOP } from '@tinwright/shop';
import { familyTitle, LANGUAGES, parameterWords } from '@tinwright/words/internal';
import { expect, test } from 'vitest';
import { plannedCarrier } from '../../../files/test/carrier.js';
import { isPlain } from '../../src/page/typeface.js';
import { pagesOf, saidOn, sectionOf } from './packet.js';

const carrier = plannedCarrier(
  { 'blind-rivet': { diameter: 3.2 } },
  { stock: { material: 'galvanised-steel', thickness: 1 } },
);

test('every family has German words for what it is, and for each of its parameters', () => {
  for (const family of FAMILIES) {
    expect(familyTitle(family, 'de')).not.toBe(familyTitle(family, 'en'));
    for (const path of Object.keys(family.describe.sizes))
      expect(parameterWords(family, path, 'de'), `${family.name} ${path}`).not.toBe(
        parameterWords(family, path, 'en'),
      );
  }
});

test('a German packet says nothing in English but names, sources and findings', () => {
  const { brake, vise } = DEFAULT_SHOP;
  const names = [DEFAULT_SHOP.name, brake?.name ?? '', vise?.name ?? ''];
  const sections = ['cuts', 'plans', 'operations', 'inspection', 'templates'] as const;
  const pages = pagesOf(carrier, { language: 'de', sections });
  // findings on the sheet of cautions are told as the checks tell them, and sources have English names
  const cautions = new Set(sectionOf(pages, 'cautions'));
  const all = saidOn(pages.filter((p) => !cautions.has(p)));
  const said = names.reduce((text, name) => text.replaceAll(name, ''), all);
  const english = /(?<=^|[ (])(the|and|of|sheet|bend|page|with|from|blank|up|down|step|held)(?=[ .,;:)]|$)/g;
  expect(said.match(english)).toBeNull();
  expect(said).toContain('Arbeitsgänge');
  expect(said).toContain('Seite 1 von');
});

test('a German packet has as much to say as an English one', () => {
  const [en, de] = (['en', 'de'] as const).map((language) => saidOn(pagesOf(carrier, { language })).length);
  expect((de ?? 0) / (en ?? 1)).toBeGreaterThan(0.9);
  expect((de ?? 0) / (en ?? 1)).toBeLessThan(1.4);
});

test.each(Object.keys(LANGUAGES) as (keyof typeof LANGUAGES)[])(
  'the standard fonts have all letters of %s',
  (language) => {
    expect(isPlain(saidOn(pagesOf(carrier, { language })))).toBe(true);
  },
);
