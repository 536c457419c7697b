// Random parameters of any family, made from its JSON Schema and its example: sizes scaled from the example where
// it has them, words from their lists, groups and optional values there or not.
import type { AnyFamily } from '@tinwright/core';
import { jobJsonSchema, type SchemaNode } from '@tinwright/files';
import fc from 'fast-check';

const COMMON = ['name', 'family', 'quantity', 'note', 'stock', 'bending'];

/** Parameters as a job file would hold them, mm. Most can be made; some cannot. */
export function paramsOf(family: AnyFamily): fc.Arbitrary<Record<string, unknown>> {
  const { $defs, properties: all } = jobJsonSchema([family]) as {
    $defs: Record<string, SchemaNode>;
    properties: { parts: { items: { oneOf: SchemaNode[] } } };
  };
  const part = inlined(all.parts.items.oneOf[0] as SchemaNode, $defs) as SchemaNode;
  const properties = Object.fromEntries(
    Object.entries(part.properties as Record<string, SchemaNode>).filter(([key]) => !COMMON.includes(key)),
  );
  return group({ ...part, properties }, family.describe.example);
}

/** Definitions put where they are referred to; sizes of other parts are no random matter. */
function inlined(node: unknown, defs: Record<string, SchemaNode>): unknown {
  if (Array.isArray(node)) return node.map((n) => inlined(n, defs));
  if (typeof node !== 'object' || node === null) return node;
  const { $ref, ...rest } = node as SchemaNode;
  const name = typeof $ref === 'string' ? $ref.replace('#/$defs/', '') : '';
  if (name === 'follow') return FOLLOW;
  const whole = name === '' ? rest : { ...defs[name], ...rest };
  return Object.fromEntries(Object.entries(whole).map(([k, v]) => [k, inlined(v, defs)]));
}

const FOLLOW: SchemaNode = {};

function group(node: SchemaNode, example: unknown): fc.Arbitrary<Record<string, unknown>> {
  const properties = node.properties as Record<string, SchemaNode>;
  const required = (node.required ?? []) as readonly string[];
  const model = Object.entries(properties).map(([key, value]) => {
    const shown = (example as Record<string, unknown> | undefined)?.[key];
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
  const plain = branches?.filter((b) => Object.keys(b).length > 0);
  if (plain !== undefined) return fc.oneof(...plain.map((b) => valueFor({ ...ranged(node), ...b }, example)));
  if (node.const !== undefined) return fc.constant(node.const);
  if (Array.isArray(node.enum)) return fc.constantFrom(...(node.enum as unknown[]));
  if (node.type === 'object') return group(node, example);
  if (node.type === 'array') return listOf(node, example);
  if (node.type === 'string') return fc.constantFrom('text');
  if (typeof node.minimum === 'number' && node.type === 'number')
    return fc.integer({ min: node.minimum, max: node.maximum as number });
  return size(typeof example === 'number' ? example : undefined, node);
}

const ranged = ({ minimum, maximum }: SchemaNode) => ({ minimum, maximum });

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

/** Sheet and bending of a job, every rule that compensates. */
export const bendings: readonly Record<string, unknown>[] = [
  { rule: 'k-factor', k: 0.42 },
  { rule: 'k-factor' },
  { rule: 'din-6935' },
  { rule: 'handbook', group: 'soft' },
  { rule: 'handbook', group: 'medium' },
  { rule: 'handbook', group: 'hard' },
  { rule: 'linear', perRadius: 0.5, perThickness: 1.5 },
];

/** Stock and bending of a random job: 0.4 to 3 mm, inside radius a quarter to three times that. */
export const sheets: fc.Arbitrary<{ stock: object; bending: object }> = fc
  .record({
    thickness: fc.constantFrom(0.4, 0.5, 0.8, 1, 1.2, 1.5, 2, 3),
    ratio: fc.constantFrom(0.25, 0.5, 1, 1.6, 2, 3),
    bending: fc.constantFrom(...bendings),
  })
  .map(({ thickness, ratio, bending }) => ({
    stock: { material: 'mild-steel', thickness },
    bending: { ...bending, insideRadius: thickness * ratio },
  }));
