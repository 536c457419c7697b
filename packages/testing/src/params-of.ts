import type { AnyFamily } from '@tinwright/core';
import { paramKit, strictGroup } from '@tinwright/core/family';
import fc from 'fast-check';
import * as z from 'zod/mini';
import type { Params } from './plan-one.js';

/** A JSON Schema, or a piece of one. */
type SchemaNode = Readonly<Record<string, unknown>>;

/**
 * Random parameters of a family as a job in mm holds them, made from what it declares and its example: sizes scaled
 * from the example where it has them, words from their lists, groups and optional values there or not. Most can be
 * made; some cannot.
 */
export function paramsOf(family: AnyFamily): fc.Arbitrary<Params> {
  const schema = z.toJSONSchema(strictGroup(family.params(paramKit('mm'))), { io: 'input' });
  return group(schema as SchemaNode, family.describe.example);
}

function group(node: SchemaNode, example: unknown): fc.Arbitrary<Params> {
  const properties = node.properties as Readonly<Record<string, SchemaNode>>;
  const required = (node.required ?? []) as readonly string[];
  const model = Object.entries(properties).map(([key, value]) => {
    const shown = (example as Params | undefined)?.[key];
    // what the example leaves out is there one time in three
    const there = required.includes(key)
      ? fc.constant(true)
      : fc.integer({ min: 1, max: 6 }).map((n) => n <= (shown === undefined ? 2 : 5));
    return fc.tuple(there, valueFor(value, shown)).map(([wanted, v]) => (wanted ? [[key, v] as const] : []));
  });
  return fc.tuple(...model).map((entries) => Object.fromEntries(entries.flat()));
}

function valueFor(node: SchemaNode, example: unknown): fc.Arbitrary<unknown> {
  const branches = (node.oneOf ?? node.anyOf) as readonly SchemaNode[] | undefined;
  if (branches !== undefined)
    return fc.oneof(...branches.map((b) => valueFor({ ...ranged(node), ...b }, example)));
  if (node.const !== undefined) return fc.constant(node.const);
  if (Array.isArray(node.enum)) return fc.constantFrom(...(node.enum as unknown[]));
  if (node.type === 'object') return group(node, example);
  if (node.type === 'array') return listOf(node, example);
  if (node.type === 'string') return fc.constantFrom('text');
  if (typeof node.minimum === 'number' && node.type === 'number')
    return fc.integer({ min: node.minimum, max: node.maximum as number });
  return size(typeof example === 'number' ? example : undefined, node);
}

const ranged = ({ minimum, maximum }: SchemaNode): SchemaNode => ({ minimum, maximum });

function listOf(node: SchemaNode, example: unknown): fc.Arbitrary<unknown> {
  const items = node.items as SchemaNode;
  if (!Array.isArray(example)) return fc.array(valueFor(items, undefined), { minLength: 1, maxLength: 3 });
  // as many as the example has, so that lists that belong together stay in step
  return fc.tuple(...example.map((e) => valueFor(items, e)));
}

/** A length in hundredths: the example's between half and double, else 1 to 60 mm, or what is allowed of that. */
function size(example: number | undefined, { minimum, maximum }: SchemaNode): fc.Arbitrary<number> {
  const [low, high] =
    example === undefined ? [100, 6000] : [Math.max(1, Math.round(example * 50)), Math.round(example * 200)];
  const least = typeof minimum === 'number' ? Math.ceil(minimum * 100) : 1;
  const most = typeof maximum === 'number' ? maximum * 100 : high;
  return fc
    .integer({ min: Math.min(Math.max(low, least), most), max: Math.min(high, most) })
    .map((n) => n / 100);
}
