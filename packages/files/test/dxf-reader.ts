import type { Bulged } from './bulged.js';

/** A group: its code, and the value as text. */
export type Tag = readonly [code: number, value: string];

/** One thing drawn. */
export interface Entity {
  readonly type: string;
  readonly tags: readonly Tag[];
}

/** A file taken apart. */
export interface DxfFile {
  readonly tags: readonly Tag[];
  /** First value of every header variable. */
  readonly header: ReadonlyMap<string, readonly Tag[]>;
  /** Names in the layer table, in order. */
  readonly layers: readonly string[];
  readonly entities: readonly Entity[];
}

/** Groups of a file. @throws Error when lines do not pair up to a whole number and a value */
export function tagsOf(text: string): readonly Tag[] {
  const lines = text.split('\r\n');
  if (lines.pop() !== '') throw new Error('no line end after the last line');
  if (lines.length % 2 !== 0) throw new Error(`${lines.length} lines, an even number wanted`);
  return Array.from({ length: lines.length / 2 }, (_, i): Tag => {
    const [code, value] = [lines[2 * i] as string, lines[2 * i + 1] as string];
    if (!/^ *\d{1,4}$/.test(code)) throw new Error(`line ${2 * i + 1}: "${code}" is not a group code`);
    return [Number(code), value];
  });
}

export function readDxf(text: string): DxfFile {
  const tags = tagsOf(text);
  const table = records(section(tags, 'TABLES')).filter((r) => r.type === 'LAYER');
  return {
    tags,
    header: headerOf(section(tags, 'HEADER')),
    layers: table.map((r) => value(r, 2)),
    entities: records(section(tags, 'ENTITIES')),
  };
}

/** Groups between a section's name and its end. */
function section(tags: readonly Tag[], name: string): readonly Tag[] {
  const start = tags.findIndex(([c, v], i) => c === 2 && v === name && tags[i - 1]?.[1] === 'SECTION');
  const end = tags.findIndex(([c, v], i) => i > start && c === 0 && v === 'ENDSEC');
  if (start < 1 || end < 0) throw new Error(`no section ${name}`);
  return tags.slice(start + 1, end);
}

function headerOf(tags: readonly Tag[]): ReadonlyMap<string, readonly Tag[]> {
  const names = tags.flatMap(([code, v], i) => (code === 9 ? [{ v, i }] : []));
  return new Map(names.map(({ v, i }, n) => [v, tags.slice(i + 1, names[n + 1]?.i ?? tags.length)]));
}

function records(tags: readonly Tag[]): readonly Entity[] {
  const starts = tags.flatMap(([code], i) => (code === 0 ? [i] : []));
  return starts.map((s, n) => ({ type: tags[s]?.[1] ?? '', tags: tags.slice(s + 1, starts[n + 1]) }));
}

/** The first value under a group code. @throws Error when there is none */
export function value(entity: { readonly tags: readonly Tag[] }, code: number): string {
  const found = entity.tags.find(([c]) => c === code);
  if (found === undefined) throw new Error(`no group ${code}`);
  return found[1];
}

export const layerOf = (entity: Entity): string => value(entity, 8);
export const numbers = (entity: Entity, ...codes: readonly number[]): readonly number[] =>
  codes.map((c) => Number(value(entity, c)));

/** A point of the header. */
export function headerPoint(file: DxfFile, name: string): readonly number[] {
  const tags = file.header.get(name) ?? [];
  return [10, 20, 30].map((c) => Number(value({ tags }, c)));
}

/** An outline, and whether the file says that it is closed. */
export interface Outline {
  readonly layer: string;
  readonly closed: boolean;
  readonly corners: readonly Bulged[];
}

/** Every LWPOLYLINE, and every POLYLINE with its vertices up to SEQEND. */
export function outlines({ entities }: DxfFile): readonly Outline[] {
  return entities.flatMap((e, i): readonly Outline[] => {
    if (e.type === 'LWPOLYLINE') return [light(e)];
    return e.type === 'POLYLINE' ? [heavy(e, entities.slice(i + 1))] : [];
  });
}

function light(e: Entity): Outline {
  const starts = e.tags.flatMap(([code], i) => (code === 10 ? [i] : []));
  const corners = starts.map((s, n) => cornerOf(e.tags.slice(s, starts[n + 1])));
  if (corners.length !== Number(value(e, 90))) throw new Error('group 90 does not count the corners');
  return { layer: layerOf(e), closed: value(e, 70) === '1', corners };
}

function heavy(e: Entity, after: readonly Entity[]): Outline {
  const end = after.findIndex((x) => x.type === 'SEQEND');
  const vertices = after.slice(0, end);
  if (end < 0 || vertices.some((x) => x.type !== 'VERTEX' || layerOf(x) !== layerOf(e)))
    throw new Error('a POLYLINE without its vertices and SEQEND');
  return {
    layer: layerOf(e),
    closed: value(e, 70) === '1',
    corners: vertices.map((x) => cornerOf(x.tags)),
  };
}

function cornerOf(tags: readonly Tag[]): Bulged {
  const at = (code: number) => Number(value({ tags }, code));
  return { x: at(10), y: at(20), bulge: tags.some(([c]) => c === 42) ? at(42) : 0 };
}
