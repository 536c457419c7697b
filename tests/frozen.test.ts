// What a door hands out as a constant nobody can change for everybody else.
import * as core from '@tinwright/core';
import * as cutting from '@tinwright/cutting';
import * as files from '@tinwright/files';
import * as paper from '@tinwright/paper';
import * as shop from '@tinwright/shop';
import * as words from '@tinwright/words';
import { expect, test } from 'vitest';

const DOORS = { core, shop, cutting, words, files, paper };

/** Places in a constant that could be changed; values of classes (schemas, for one) look after themselves. */
function open(value: unknown, place: string): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  if (!Array.isArray(value) && Object.getPrototypeOf(value) !== Object.prototype) return [];
  const inside = Object.entries(value).flatMap(([key, v]) => open(v, `${place}.${key}`));
  return Object.isFrozen(value) ? inside : [place, ...inside];
}

test.each(Object.entries(DOORS))('every constant of %s is frozen, to the last row', (_, door) => {
  expect(Object.entries(door).flatMap(([name, value]) => open(value, name))).toEqual([]);
});

test('a layer can be neither changed nor added', () => {
  const layers = files.LAYERS as unknown as { colour: string }[];
  expect(() => layers.push({ colour: '#fff' })).toThrow(TypeError);
  expect(() => {
    (layers[0] as { colour: string }).colour = '#fff';
  }).toThrow(TypeError);
});
