import * as z from 'zod/mini';
import type { AnyFamily } from '../families/family.js';
import { FAMILIES } from '../families/index.js';
import { paramKit } from '../families/kit.js';
import { jobSchema } from './schema.js';

/** A JSON Schema, or a piece of one. */
export interface SchemaNode {
  readonly [key: string]: unknown;
}

const SIZE = 'a number in the units of the job, or text such as "15 1/2 in" or "12.5 mm"';

/** JSON Schema (draft 2020-12) of job files, made from the schemas jobs are read with. For editors. */
export function jobJsonSchema(families: readonly AnyFamily[] = FAMILIES): SchemaNode {
  const schema: SchemaNode = z.toJSONSchema(jobSchema(paramKit('mm'), families), {
    io: 'input',
    reused: 'ref',
  });
  const parts = child(schema, 'properties', 'parts');
  const options = (child(parts, 'items').oneOf as readonly SchemaNode[]).map((node, i) =>
    described(node, families[i]),
  );
  const items = { ...child(parts, 'items'), oneOf: options };
  return {
    ...schema,
    title: 'Tinwright job',
    description: `Parts to make from sheet. A length is ${SIZE}.`,
    properties: { ...child(schema, 'properties'), parts: { ...parts, items } },
  };
}

function child(node: SchemaNode, ...path: readonly string[]): SchemaNode {
  return path.reduce((n, key) => (n[key] ?? {}) as SchemaNode, node);
}

/** A part's schema with the family's words on its parameters. */
function described(node: SchemaNode, family: AnyFamily | undefined): SchemaNode {
  if (family === undefined) return node;
  const { title, summary, sizes } = family.describe;
  return { ...withWords(node, '', sizes), title, description: summary };
}

function withWords(node: SchemaNode, path: string, words: Readonly<Record<string, string>>): SchemaNode {
  const own = words[path];
  const properties =
    node.properties === undefined ? {} : { properties: mapped(child(node, 'properties'), path, words) };
  const branches = Array.isArray(node.oneOf)
    ? { oneOf: node.oneOf.map((n: SchemaNode) => withWords(n, path, words)) }
    : {};
  return { ...node, ...properties, ...branches, ...(own === undefined ? {} : { description: own }) };
}

function mapped(properties: SchemaNode, path: string, words: Readonly<Record<string, string>>): SchemaNode {
  const at = (key: string) => (path === '' ? key : `${path}.${key}`);
  return Object.fromEntries(
    Object.entries(properties).map(([key, value]) => [key, withWords(value as SchemaNode, at(key), words)]),
  );
}
