import { paramKit } from '@tinwright/core/family';
import { SHOP_WORDS, shopSchema } from '@tinwright/shop/internal';
import * as z from 'zod/mini';
import type { SchemaNode } from './job-schema.js';

/** JSON Schema (draft 2020-12) of shop files, made from the schema they are read with. For editors. */
export function shopJsonSchema(): SchemaNode {
  const schema: SchemaNode = z.toJSONSchema(shopSchema(paramKit('mm')), { io: 'input' });
  return {
    ...withWords(schema, ''),
    title: 'Tinwright shop',
    description:
      'Machines and limits of one workshop. A length is a number in the units of the file, or text such as "24 in".',
  };
}

/** The words of every value put beside it; entries of a list go by the name of the list. */
function withWords(node: SchemaNode, path: string): SchemaNode {
  const own = SHOP_WORDS[path];
  const { properties, items } = node;
  return {
    ...node,
    ...(properties === undefined ? {} : { properties: mapped(properties as SchemaNode, path) }),
    ...(items === undefined ? {} : { items: withWords(items as SchemaNode, path) }),
    ...(own === undefined ? {} : { description: own.words }),
  };
}

function mapped(properties: SchemaNode, path: string): SchemaNode {
  const at = (key: string) => (path === '' ? key : `${path}.${key}`);
  return Object.fromEntries(
    Object.entries(properties).map(([key, value]) => [key, withWords(value as SchemaNode, at(key))]),
  );
}
