// A page a family, made from what it declares: its picture, its parameters, what it offers to other parts.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { FAMILIES, makePart } from '@tinwright/core';
import { paramKit, strictGroup } from '@tinwright/core/family';
import * as z from 'zod/mini';

const SHEET = { material: 'mild-steel', thickness: 1 };
const code = (text) => `\`${text}\``;
const cell = (text) => String(text).replaceAll('|', '\\|');
const table = (head, rows) =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.map(cell).join(' | ')} |`).join('\n');

/** Values by their paths, with the schema that reads each. */
function valuesOf(values, schema, path = '') {
  return Object.entries(values).flatMap(([name, value]) => {
    const at = path === '' ? name : `${path}.${name}`;
    const branches = [schema, ...(schema?.oneOf ?? []), ...(schema?.anyOf ?? [])];
    const own = branches
      .map((b) => b?.properties?.[name] ?? (name === '[]' ? b?.items : undefined))
      .find(Boolean);
    const needed = path === '' && (schema?.required ?? []).includes(name);
    const row = name === '[]' || value.words === '' ? [] : [{ at, value, own, needed }];
    // openings are cut alike in every family
    return name === 'cutouts' ? row : [...row, ...valuesOf(value.inner, own, at)];
  });
}

function allowed({ value, own }) {
  if (value.options.length > 0) return value.options.map(code).join(', ');
  const [least, most] = [own?.minimum ?? own?.exclusiveMinimum, own?.maximum];
  if (value.unit === '' && least === undefined) return '';
  const from = own?.exclusiveMinimum !== undefined ? 'more than 0' : least;
  return [from, most].every((v) => v === undefined) ? '' : `${from ?? ''} to ${most ?? ''}`;
}

function page(family) {
  const { title, summary, example } = family.describe;
  const schema = z.toJSONSchema(strictGroup(family.params(paramKit('mm'))), { io: 'input' });
  const rows = valuesOf(family.values, schema).map((row) => [
    code(row.at),
    row.value.words,
    row.value.unit,
    allowed(row),
    row.own?.default === undefined
      ? row.needed
        ? 'must be given'
        : ''
      : code(JSON.stringify(row.own.default)),
  ]);
  const { part, params, sheet } = makePart(family, example, SHEET);
  const derived = family.derived(params, sheet).map((d) => [code(d.name), d.words, code(d.follows)]);
  const sites = part.sites.map((s) => code(s.name)).join(', ');
  return [
    `---\ntitle: ${family.name}\ngroup: Families\n---`,
    `# ${family.name}: ${title}`,
    summary,
    `![${title}](../../../examples/pictures/${family.name}.svg)`,
    '## Parameters',
    table(['Name', 'What it is', 'Unit', 'Allowed', 'Left out'], rows),
    ...(derived.length === 0
      ? []
      : ['## Sizes other parts may follow', table(['Name', 'What it is', 'Grows with'], derived)]),
    ...(sites === '' ? [] : [`## Places to join\n\n${sites}`]),
    '## Example',
    `\`\`\`json\n${JSON.stringify({ family: family.name, ...example }, null, 2)}\n\`\`\``,
  ].join('\n\n');
}

/** Write a page for every family into a folder. */
export function familyPages(folder) {
  for (const family of FAMILIES) writeFileSync(join(folder, `${family.name}.md`), `${page(family)}\n`);
}
