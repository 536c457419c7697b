import type { Unit } from '@tinwright/core';
import { isGroup, plainNumber } from '@tinwright/core/internal';
import type { Capacity, Shop, StripRow } from '@tinwright/shop';
import { type Measure, SHOP_WORDS } from '@tinwright/shop/internal';
import { type Host, many, paint, table } from '../host/console.js';
import { givenText } from './size-text.js';

type Group = Readonly<Record<string, unknown>>;

/** A shop for people: every value with what it is, and which of them are assumed. */
export function shopText(host: Host, shop: Shop): string {
  const { name, note, profile, cutBy, units, assumed, strips, sheets, costs, ...machines } = shop;
  const head = [
    paint(host, 'bold', name === '' ? 'shop without a name' : name),
    ...(note === '' ? [] : [note]),
    `profile ${profile}: where sources disagree, the ${profile === 'strict' ? 'stricter' : 'usual'} one is taken`,
    ...(cutBy === null ? [] : [`outlines are cut by ${cutBy} where a job does not say`]),
  ].join('\n');
  const blocks = Object.entries(machines).flatMap(([key, machine]) =>
    isGroup(machine)
      ? [block(host, key, machine, shop)]
      : key === 'brakes'
        ? shop.brakes.map((b) => block(host, 'brake', { ...b }, shop))
        : [],
  );
  const missing = Object.entries(machines).flatMap(([key, machine]) => (machine === null ? [said(key)] : []));
  return [
    head,
    ...blocks,
    block(host, 'costs', { ...costs }, shop),
    `sheets: ${sheets.length === 0 ? 'none given' : sheets.map((s) => s.map((v) => givenText(v, units)).join(' x ')).join(', ')}`,
    stripText(strips, units),
    ...(missing.length === 0 ? [] : [`not in this shop: ${missing.join(', ')}`]),
    ...(assumed.length === 0 || !assumed.some((p) => p.includes('.'))
      ? []
      : [
          'Values marked assumed are usual ones, by judgement or from memory: measure them and write them in the file.',
        ]),
  ]
    .map((t) => `${t}\n`)
    .join('\n');
}

const said = (key: string): string => (SHOP_WORDS[key]?.words ?? key).replace(/^an? /, '');

function block(host: Host, key: string, { name, ...values }: Group, { units, assumed }: Shop): string {
  const rows = rowsOf(values, key, '', units, assumed);
  const title = `${said(key)}${typeof name === 'string' && name !== '' && name !== said(key) ? `: ${name}` : ''}`;
  return `${paint(host, 'bold', title)}\n${table(rows).trimEnd()}`;
}

function rowsOf(
  values: Group,
  path: string,
  name: string,
  units: Unit,
  assumed: readonly string[],
): readonly (readonly string[])[] {
  return Object.entries(values).flatMap(([key, value]) => {
    const [at, label] = [`${path}.${key}`, name === '' ? key : `${name}.${key}`];
    if (value === null) return [];
    if (isGroup(value)) return rowsOf(value, at, label, units, assumed);
    const guess = assumed.some((a) => a === at || at.startsWith(`${a}.`)) ? 'assumed' : '';
    const word = SHOP_WORDS[at];
    return [[`  ${label}`, valueText(value, word?.measure ?? '', units), guess, word?.words ?? '']];
  });
}

function valueText(value: unknown, measure: Measure, units: Unit): string {
  if (Array.isArray(value)) return listText(value, measure, units);
  if (typeof value !== 'number') return String(value);
  if (measure === 'length') return givenText(value, units);
  return `${plainNumber(value, 3)}${measure === '' ? '' : ` ${measure}`}`;
}

function listText(list: readonly unknown[], measure: Measure, units: Unit): string {
  if (list.some((v) => isGroup(v) && 'thickness' in v))
    return (list as readonly Capacity[])
      .map((c) => `${c.material} ${givenText(c.thickness, units)}`)
      .join(', ');
  if (list.some(isGroup)) return (list as readonly { readonly name: string }[]).map((t) => t.name).join(', ');
  const bare = list.map((v) => valueText(v, measure, units).split(' ')[0]).join(', ');
  return measure === '' ? bare : `${bare} ${measure === 'length' ? units : measure}`;
}

function stripText(strips: readonly StripRow[], units: Unit): string {
  if (strips.length === 0) return 'test strips: none';
  const rows = strips.map((s) => [
    `  ${s.name}`,
    s.material,
    `T ${givenText(s.thickness, units)}`,
    `R ${givenText(s.insideRadius, units)}`,
    `K ${plainNumber(s.k, 4)} ± ${plainNumber(s.kError, 4)}`,
    s.springback === null
      ? 'springback not measured'
      : `opens ${plainNumber(s.springback, 2)} ± ${plainNumber(s.springbackError, 2)} deg`,
    many(s.strips, 'strip'),
  ]);
  return `test strips, for jobs with rule: test-strip\n${table(rows).trimEnd()}`;
}
