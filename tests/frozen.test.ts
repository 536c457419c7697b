// What a door hands out as a constant, or within a result, nobody can change for everybody else.
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

/** Every object in a value that could be changed, with a place it stands at. */
function changeable(value: unknown): ReadonlyMap<object, string> {
  const found = new Map<object, string>();
  const todo: [unknown, string][] = [[value, '']];
  for (let next = todo.pop(); next !== undefined; next = todo.pop()) {
    const [inner, place] = next;
    if (typeof inner !== 'object' || inner === null || found.has(inner)) continue;
    found.set(inner, place);
    for (const [key, v] of Object.entries(inner)) todo.push([v, `${place}.${key}`]);
  }
  for (const inner of found.keys()) if (Object.isFrozen(inner)) found.delete(inner);
  return found;
}

const planOf = ({ name, describe }: core.AnyFamily) => {
  const stock = { material: 'mild-steel', thickness: 1 };
  const part: unknown = { name: 'part', family: name, ...describe.example };
  return core.planJob(core.readJob({ units: 'mm', stock, parts: [part] } as unknown));
};

/** What two results that were made apart have in common. */
function shared(make: () => unknown): readonly string[] {
  const first = changeable(make());
  return [...changeable(make())].filter(([inner]) => first.has(inner)).map(([, place]) => place);
}

test.each(core.FAMILIES.map((family) => [family.name, family] as const))(
  'what becomes of the plan of one %s leaves every other as it is',
  (_, family) => {
    expect(shared(() => planOf(family))).toEqual([]);
  },
);

test('nor do orders of bends and what a shop says share anything', () => {
  const order = () => shop.planShop(planOf(core.shelf), shop.DEFAULT_SHOP);
  expect(order().findings.length).toBeGreaterThan(1);
  expect(shared(order)).toEqual([]);
});
