import { type AnyFamily, FAMILIES } from '@tinwright/core';
import { paramKit, type Value } from '@tinwright/core/family';
import { hardware } from '@tinwright/core/hardware';
import { COMMON, jobSchema, wordsOf } from '@tinwright/core/internal';
import * as z from 'zod/mini';

/** A JSON Schema, or a piece of one. */
export interface SchemaNode {
  readonly [key: string]: unknown;
}

const SIZE = 'a number in the units of the job, or text such as "15 1/2 in" or "12.5 mm"';

/** JSON Schema (draft 2020-12) of job files, made from the schemas jobs are read with. For editors. */
export function jobJsonSchema(families: readonly AnyFamily[] = FAMILIES): SchemaNode {
  const schema: SchemaNode = z.toJSONSchema(jobSchema(paramKit('mm'), families, hardware), {
    io: 'input',
    reused: 'ref',
  });
  const at = (node: SchemaNode, key: string) => resolved(schema, node[key] as SchemaNode);
  const properties = schema.properties as SchemaNode;
  const parts = at(properties, 'parts');
  const items = at(parts, 'items');
  const options = (items.oneOf as readonly SchemaNode[]).map((n, i) =>
    described(withEntries(schema, resolved(schema, n)) as SchemaNode, families[i]),
  );
  return pruned({
    ...schema,
    title: 'Tinwright job',
    description: `Parts to make from sheet. A length is ${SIZE}.`,
    properties: { ...properties, parts: { ...parts, items: { ...items, oneOf: options } } },
    $defs: { ...(schema.$defs as SchemaNode), ...commonDefs(schema, items), follow: FOLLOW },
  });
}

/** Definitions of what every part may say, with its words: those of each choice by its type. */
function commonDefs(schema: SchemaNode, items: SchemaNode): SchemaNode {
  const [part] = items.oneOf as readonly SchemaNode[];
  const { properties } = resolved(schema, part ?? {}) as { readonly properties: SchemaNode };
  return Object.fromEntries(
    Object.entries(COMMON).flatMap(([name, value]) => {
      const list = resolved(schema, properties[name] as SchemaNode);
      const { $ref } = list.items as { readonly $ref?: string };
      const one = resolved(schema, list.items as SchemaNode);
      return $ref === undefined ? [] : [[nameOf($ref), toldBy(schema, one, value.inner['[]'] as Value)]];
    }),
  );
}

function toldBy(schema: SchemaNode, node: SchemaNode, { words, choices = {} }: Value): SchemaNode {
  const oneOf = (node.oneOf as readonly SchemaNode[]).map((option) => {
    const whole = resolved(schema, option);
    const { type } = whole.properties as { readonly type: { readonly enum?: readonly string[] } };
    return withWords(whole, '', wordsOf(choices[type.enum?.[0] ?? ''] ?? {}));
  });
  return { ...node, description: words, oneOf };
}

const nameOf = (ref: string) => ref.replace('#/$defs/', '');

/** Without the definitions nothing refers to any more. */
function pruned(schema: SchemaNode): SchemaNode {
  const { $defs, ...rest } = schema;
  const defs = ($defs ?? {}) as SchemaNode;
  const used = new Set<string>();
  const look = (node: unknown): void => {
    for (const [, name] of JSON.stringify(node).matchAll(/"#\/\$defs\/([^"]+)"/g)) {
      if (name === undefined || used.has(name)) continue;
      used.add(name);
      look(defs[name]);
    }
  };
  look(rest);
  return { ...rest, $defs: Object.fromEntries(Object.entries(defs).filter(([name]) => used.has(name))) };
}

/** The node itself, or the definition it refers to. */
function resolved(schema: SchemaNode, node: SchemaNode): SchemaNode {
  if (typeof node.$ref !== 'string') return node;
  return (schema.$defs as SchemaNode)[node.$ref.replace('#/$defs/', '')] as SchemaNode;
}

/** A part's schema with the family's words on its parameters. */
function described(node: SchemaNode, family: AnyFamily | undefined): SchemaNode {
  if (family === undefined) return node;
  const { title, summary, sizes } = family.describe;
  return { ...withWords(node, '', sizes), title, description: summary };
}

const FOLLOW: SchemaNode = {
  type: 'object',
  properties: {
    of: { type: 'string', description: 'part.size of a part that stands before, such as body.insideWidth' },
    less: { type: ['number', 'string'] },
    plus: { type: ['number', 'string'] },
  },
  required: ['of'],
  additionalProperties: false,
};

const isSize = ({ type }: SchemaNode) => Array.isArray(type) && type.join() === 'number,string';

/** Sizes in lists stand in them, not in a definition that others share: there they may follow too. */
function withEntries(schema: SchemaNode, node: unknown): unknown {
  if (Array.isArray(node)) return node.map((n: unknown) => withEntries(schema, n));
  if (typeof node !== 'object' || node === null) return node;
  const inner = Object.entries(node).map(([key, value]: [string, SchemaNode]) => {
    const entry = key === 'items' ? resolved(schema, value) : value;
    return [key, key === 'items' && isSize(entry) ? following(entry) : withEntries(schema, value)];
  });
  return Object.fromEntries(inner);
}

/** A size may also follow a size of another part. */
function following(node: SchemaNode): SchemaNode {
  if (!isSize(node)) return node;
  const { type, ...rest } = node;
  return { ...rest, anyOf: [{ type }, { $ref: '#/$defs/follow' }] };
}

function withWords(node: SchemaNode, path: string, words: Readonly<Record<string, string>>): SchemaNode {
  const own = words[path];
  const properties =
    node.properties === undefined ? {} : { properties: mapped(node.properties as SchemaNode, path, words) };
  const branches = Array.isArray(node.oneOf)
    ? { oneOf: node.oneOf.map((n: SchemaNode) => withWords(n, path, words)) }
    : {};
  const named =
    typeof node.additionalProperties === 'object' && node.additionalProperties !== null
      ? { additionalProperties: following(node.additionalProperties as SchemaNode) }
      : {};
  return {
    ...node,
    ...properties,
    ...branches,
    ...named,
    ...(own === undefined ? {} : { description: own }),
  };
}

function mapped(properties: SchemaNode, path: string, words: Readonly<Record<string, string>>): SchemaNode {
  const at = (key: string) => (path === '' ? key : `${path}.${key}`);
  return Object.fromEntries(
    Object.entries(properties).map(([key, value]) => [
      key,
      following(withWords(value as SchemaNode, at(key), words)),
    ]),
  );
}
