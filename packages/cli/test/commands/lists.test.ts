import { FAMILIES, GAUGE_SYSTEMS, MATERIALS } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';

describe('families', () => {
  test('names every family with its title', async () => {
    const { exit, out } = await tinwright('families');
    expect(exit).toBe(0);
    for (const { name, describe } of FAMILIES) {
      const line = out.split('\n').find((l) => l.startsWith(`${name} `));
      expect(line).toContain(describe.title);
    }
  });

  test('one family: every parameter with what it means', async () => {
    const { out } = await tinwright('families', 'gusset-end');
    for (const key of ['width', 'shoulderHeight', 'height', 'crownWidth', 'cornerNip'])
      expect(out).toMatch(new RegExp(`^ {2}${key} +\\S.{10}`, 'm'));
    expect(out).toContain('tinwright starter gusset-end');
  });

  test('--json holds name, sizes and an example', async () => {
    const all = JSON.parse((await tinwright('families', '--json')).out);
    expect(all.map((f: { name: string }) => f.name)).toEqual(FAMILIES.map((f) => f.name));
    const [one, ...more] = JSON.parse((await tinwright('families', 'handle', '--json')).out);
    expect(more).toEqual([]);
    expect(Object.keys(one)).toEqual(
      expect.arrayContaining(['name', 'title', 'summary', 'sizes', 'example']),
    );
  });

  test('in German: titles, parameters, derived sizes and what stands round them', async () => {
    expect((await tinwright('families', '--lang', 'de')).out).toMatch(/^open-box +oben offener Kasten$/m);
    const { exit, out } = await tinwright('families', 'hemmed-channel', '--lang', 'de');
    expect(exit).toBe(0);
    expect(out).toMatch(/^ {2}insideWidth +innen, quer$/m);
    expect(out).toContain('Maße, denen andere Teile folgen können, als { of: PART.');
    expect(out).toContain('Ein Auftrag zum Anfangen: tinwright starter hemmed-channel');
  });

  test.each(FAMILIES.map((f) => f.name))('%s: nothing of it is English in German', async (name) => {
    const [english, german] = await Promise.all(
      ['en', 'de'].map(async (lang) => (await tinwright('families', name, '--lang', lang)).out.split('\n')),
    );
    expect(german?.filter((line) => line !== '' && english?.includes(line))).toEqual([]);
  });

  test('an unknown family is refused, the nearest one named', async () => {
    const { exit, out, err } = await tinwright('families', 'hemed-chanel');
    expect(exit).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('Did you mean "hemmed-channel"?');
  });
});

describe('starter', () => {
  test('every line with a value says what it means', async () => {
    const { out } = await tinwright('starter', 'open-box');
    for (const key of ['units', 'material', 'thickness', 'rule', 'insideRadius', 'length', 'height'])
      expect(out).toMatch(new RegExp(`^ *${key}: .*\\S +# \\S`, 'm'));
  });

  test.each(FAMILIES.map((f) => [f.name, f.describe.title]))(
    '%s: the head says how to get the schema it names, and what the part is',
    async (name, title) => {
      const [first, second, third] = (await tinwright('starter', name)).out.split('\n');
      const [, file] = /^# yaml-language-server: \$schema=(\S+)$/.exec(first ?? '') ?? [];
      expect(second).toBe(`# For your editor, once: tinwright starter --schema > ${file}`);
      const article = ['a', 'e', 'i', 'o', 'u'].includes(title.charAt(0)) ? 'An' : 'A';
      expect(third).toContain(`# ${article} ${title}. tinwright make `);
    },
  );

  test('--schema is a JSON Schema that knows every family', async () => {
    const { exit, out } = await tinwright('starter', '--schema');
    expect(exit).toBe(0);
    const schema = JSON.parse(out);
    expect(schema.$schema).toContain('json-schema.org');
    for (const { name } of FAMILIES) expect(out).toContain(`"${name}"`);
  });

  test.each([[[]], [['open-bx']]])('starter %j is refused, families named', async (argv) => {
    const { exit, out, err } = await tinwright('starter', ...argv);
    expect(exit).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('open-box');
  });
});

describe('materials', () => {
  test('every material with its density and source', async () => {
    const { exit, out } = await tinwright('materials');
    expect(exit).toBe(0);
    for (const { name, source } of MATERIALS) {
      const line = out.split('\n').find((l) => l.startsWith(`${name} `));
      expect(line).toContain(source);
    }
    expect(out).toMatch(/^mild-steel +7850 /m); // kg/m³, from memory
  });

  test('--json holds the values with their sources', async () => {
    const rows = JSON.parse((await tinwright('materials', '--json')).out);
    expect(rows).toHaveLength(MATERIALS.length);
    for (const row of rows) {
      expect(row.density).toBeGreaterThan(2000);
      for (const key of ['source', 'kSource', 'leastRadiusSource'])
        expect(row[key].length).toBeGreaterThan(5);
      expect(row.leastRadiusAt1mm).toBeGreaterThanOrEqual(0);
    }
  });
});

describe('gauges', () => {
  // 20 gauge: 0.0359 in steel, 0.0396 in galvanised (two charts that agree); 16: 0.0625 in stainless (15 U.S.C. §206)
  test('20 and 16 gauge in inches and millimetres', async () => {
    const { exit, out } = await tinwright('gauges');
    const row = (gauge: number) => out.split('\n').find((l) => l.startsWith(`${gauge} `)) ?? '';
    expect(exit).toBe(0);
    for (const cell of ['0.0359 in = 0.912 mm', '0.0396 in = 1.006 mm']) expect(row(20)).toContain(cell);
    expect(row(16)).toMatch(/0\.0625 in = 1\.58[78] mm/); // 1.5875
  });

  test('one system: its own column, its source', async () => {
    const { out } = await tinwright('gauges', 'stainless');
    expect(out).toContain('15 U.S.C.');
    expect(out).not.toContain('galvanised');
  });

  test('--json holds the systems', async () => {
    const all = JSON.parse((await tinwright('gauges', '--json')).out);
    expect(all.map((s: { name: string }) => s.name)).toEqual(GAUGE_SYSTEMS.map((s) => s.name));
    const [one, ...more] = JSON.parse((await tinwright('gauges', 'galvanised', '--json')).out);
    expect(more).toEqual([]);
    expect(one.inches['20']).toBe(0.0396);
  });

  test('an unknown system is refused, the nearest one named', async () => {
    const { exit, out, err } = await tinwright('gauges', 'galvanized');
    expect(exit).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('Did you mean "galvanised"?');
  });
});
