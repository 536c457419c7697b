import type { Page } from '@tinwright/paper';
import { pagesHtml } from '@tinwright/paper';
import { expect, test } from 'vitest';
import { type Element, readSvg } from '../../../files/test/svg-reader.js';
import { CARRIER, pagesOf } from '../packet/packet.js';

const INFO = { title: 'carrier <packet>', language: 'en', contents: 'Contents' };
const pages = pagesOf(CARRIER);
const html = pagesHtml(pages, INFO);

/** The body, which is well-formed: elements of HTML that need no end stand in the head only. */
const body = readSvg(
  html.slice(html.indexOf('<body>'), html.indexOf('</html>')).trim().replaceAll(' xml:', ' '),
);
const all = (e: Element): readonly Element[] => [e, ...e.children.flatMap(all)];
const named = (name: string) => all(body).filter((e) => e.name === name);

test('one file: nothing is fetched, no script', () => {
  expect(html).toMatch(/^<!DOCTYPE html>\n<html lang="en">/);
  expect(html).not.toMatch(/<script|<link|<img|src=|url\(|@import|javascript:/i);
  expect(
    [...html.matchAll(/https?:\/\/[^"' )<]+/g)].map(([u]) => u).filter((u) => !u.includes('w3.org')),
  ).toEqual([]);
  expect(html).toContain('<title>carrier &lt;packet&gt;</title>');
});

test('a section and a picture at true size for every page', () => {
  const svgs = named('svg');
  expect(named('section')).toHaveLength(pages.length);
  expect(svgs.map((s) => s.attributes.width)).toEqual(pages.map((p) => `${p.width}mm`));
  expect(svgs.map((s) => s.attributes.height)).toEqual(pages.map((p) => `${p.height}mm`));
});

test('every link leads to a place in the file', () => {
  const ids = named('a').flatMap((a) => a.attributes.id ?? []);
  const links = named('a').flatMap((a) => a.attributes.href ?? []);
  expect(new Set(ids).size).toBe(ids.length);
  expect(links.length).toBeGreaterThan(20); // in the list and on the cover
  for (const link of links) expect(ids).toContain(link.replace('#', ''));
});

test('printed, every page is a sheet of its own size', () => {
  const sizes = new Set(pages.map((p: Page) => `${p.width}mm ${p.height}mm`));
  expect(sizes.size).toBeGreaterThan(1);
  for (const size of sizes) expect(html).toContain(`{size:${size};margin:0}`);
  expect(html).toContain('break-after:page');
  expect(html).toContain('@media print{nav{display:none}');
});

test('pictures have words', () => {
  const pictures = named('g').filter((g) => g.attributes.role === 'img');
  expect(pictures.length).toBeGreaterThan(10);
  for (const p of pictures) expect(p.attributes['aria-label']?.length).toBeGreaterThan(10);
});
