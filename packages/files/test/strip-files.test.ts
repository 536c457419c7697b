import { MATERIALS, type Material, PROGRAM } from '@tinwright/core';
import { stripFiles } from '@tinwright/files';
import { stripSample } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { type Entity, readDxf, type Tag } from './dxf-reader.js';

const mild = MATERIALS.find((m) => m.name === 'mild-steel') as Material;
const sample = stripSample(mild, { thickness: 1, insideRadius: 1 }, 3, 'mm');

const at = (tags: readonly Tag[], code: number) => Number(tags.find((t) => t[0] === code)?.[1]);
const lines = (entities: readonly Entity[], layer: string) =>
  entities
    .filter((e) => e.type === 'LINE' && e.tags.some(([c, v]) => c === 8 && v === layer))
    .map(({ tags }) => [10, 20, 11, 21].map((code) => Math.round(at(tags, code) * 1e4) / 1e4));

describe.each(['r2000', 'r12'] as const)('a test strip as %s', (form) => {
  const files = stripFiles(sample, form);
  const dxf = readDxf(String(files.find((f) => f.path === 'strip.dxf')?.content));

  test('two lines to scribe, 100 apart, as far from the bend on either side', () => {
    const scribed = lines(dxf.entities, 'SCRIBE');
    expect(scribed).toEqual([
      [10, 0, 10, 50],
      [110, 0, 110, 50],
    ]);
    const [bend] = lines(dxf.entities, 'BEND-UP');
    expect([bend?.[0], bend?.[2]]).toEqual([60, 60]);
  });

  test('the list names the files and how far the lines are apart', () => {
    const list = JSON.parse(String(files.at(-1)?.content));
    expect(files.at(-1)?.path).toBe('strip.json');
    expect(list).toEqual({
      format: 1,
      program: PROGRAM.mark,
      flat: 120,
      width: 50,
      between: 100,
      files: ['strip.dxf', 'strip.svg'],
    });
  });

  test('the same again, byte for byte', () => {
    expect(stripFiles(sample, form)).toEqual(files);
  });
});
