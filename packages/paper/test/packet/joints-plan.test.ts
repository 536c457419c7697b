import type { JobPlan } from '@tinwright/core';
import { expect, test } from 'vitest';
import { plannedCarrier } from '../../../files/test/carrier.js';
import { CARRIER, pagesOf, saidOn, sectionOf } from './packet.js';

const said = (plan: JobPlan) => saidOn(sectionOf(pagesOf(plan, { sections: ['joints'] }), 'joints'));

test('every joint with its pieces, how many fasteners and how far apart', () => {
  const text = said(CARRIER);
  for (const name of ['west', 'east', 'grip-west', 'grip-east']) {
    const own = CARRIER.assembly?.fasteners.filter((f) => f.joint === name).length;
    expect(text).toMatch(new RegExp(`${name} [\\w-]+, [\\w-]+ spot weld ${own} [\\d.]+`));
  }
  expect(text).toContain('A body, B end-1, C end-2, D handle.'.replaceAll('\u00A0', ' '));
});

test('rivets: hole, drill and what they hold', () => {
  const text = said(plannedCarrier({ 'blind-rivet': { diameter: 3.2 } }));
  expect(text).toContain('Ø3.3');
  expect(text).toContain('Rivet 3.2 mm: drill 3.3 mm.');
  expect(text).toContain('2 mm thick together');
  // 2.5 D from an edge (NAVEDTRA 14251), 3 D apart (NAVEDTRA 14018)
  expect(text).toMatch(/blind rivet 8 9\.6 /);
  expect(text).toContain('NAVEDTRA 14251');
});

test('who drills a rivet hole reads the drill there is, beside the hole as a table cuts it', () => {
  const rivets = plannedCarrier({ 'blind-rivet': { diameter: 3.2 } });
  const told = (language: 'en' | 'de') =>
    saidOn(sectionOf(pagesOf(rivets, { sections: ['operations'], language }), 'operations'));
  expect(told('en')).toMatch(/Ø3\.35 mm for blind rivets, with a drill of 3\.3 mm[.:]/);
  expect(told('de')).toMatch(/Ø3,35 mm \(Blindniet, Bohrer 3,3 mm\)[.:]/);
});

test('no strength is printed', () => {
  expect(said(CARRIER)).toContain('not what it carries. No load rating.');
});
