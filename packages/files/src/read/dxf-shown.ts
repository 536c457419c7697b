import { fail, quoted } from '@tinwright/core/internal';

/** A group code and its value, as a DXF is written. */
type Pair = readonly [code: number, value: string];

/** What is read, and what is passed over without harm: nothing of it is an outline. */
const READ = ['LINE', 'LWPOLYLINE', 'POLYLINE', 'CIRCLE', 'ARC'];
const PASSED = ['TEXT', 'MTEXT', 'POINT', 'ATTDEF', 'ATTRIB', 'VIEWPORT'];
const FOLLOWS = ['VERTEX', 'SEQEND', 'ATTRIB']; // belong to the entity before them

/**
 * Codes that an entity says its outline with, all of them numbers. The reader gets no others: it ends a polyline at one it
 * does not know among its corners, such as their identifiers, and prints a complaint of those it has no type for.
 */
const DRAWN = [10, 20, 30, 11, 21, 31, 40, 42, 50, 51, 70, 90, 210, 220, 230];
const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?$/;

const [LAYER, OFF_PAGE, HIDDEN, COLOUR, FLAGS, CORNERS] = [8, 67, 60, 62, 70, 90];

/**
 * A DXF as text again that holds its unit and the entities shown in its model space: not those of layers that are off or
 * frozen, of paper space, or hidden themselves, none of which anybody sees who checks the drawing.
 * @throws JobError for what is shown and cannot be read; RangeError for a text that is no DXF
 */
export function shownDxf(text: string): string {
  const pairs = pairsOf(text);
  const sections = sectionsOf(pairs);
  const hidden = hiddenLayers(sections.get('TABLES') ?? []);
  const shown = grouped(sections.get('ENTITIES') ?? [], FOLLOWS).filter((entity) => isShown(entity, hidden));
  const stray = shown.find(([[, kind] = [0, '']]) => ![...READ, ...PASSED].includes(kind));
  const kind = stray?.[0]?.[1];
  if (kind !== undefined)
    return fail(
      'drawing-entity',
      [],
      `the drawing holds ${kind}, which is no line, arc, circle or polyline`,
      kind === 'INSERT' ? 'Explode its blocks first' : 'Draw it with those',
    );
  const drawn = shown
    .filter(([[, kind] = [0, '']]) => READ.includes(kind))
    .map(roundAsArc)
    .flatMap((entity) => entity.filter(([code]) => code === 0 || DRAWN.includes(code)));
  const odd = drawn.find(([code, value]) => code !== 0 && !NUMBER.test(value));
  if (odd !== undefined)
    return fail(
      'drawing-number',
      [],
      `a coordinate in the drawing is no number: ${quoted(odd[1].slice(0, 60))}`,
      'Write it again as DXF',
    );
  const endless = shown.some(
    (e) => e[0]?.[1] === 'POLYLINE' && !e.some(([c, v]) => c === 0 && v === 'SEQEND'),
  );
  if (endless) throw new RangeError('a polyline without an end, for which the reader would look for ever');
  // it goes on for as many corners as a polyline says it has, past the end of the file too
  if (drawn.some(([code, value]) => code === CORNERS && Number(value) > pairs.length))
    throw new RangeError('a polyline of more corners than the file has lines');
  const head = unitPairs(sections.get('HEADER') ?? []);
  const section = (name: string, content: readonly Pair[]): readonly Pair[] => [
    [0, 'SECTION'],
    [2, name],
    ...content,
    [0, 'ENDSEC'],
  ];
  const kept = [...section('HEADER', head), ...section('ENTITIES', drawn)];
  return [...kept, [0, 'EOF']].map(([code, value]) => `${code}\n${value}\n`).join('');
}

/** A circle as an arc once round: the reader passes over which way a circle faces, not an arc. */
function roundAsArc(entity: readonly Pair[]): readonly Pair[] {
  const [[, kind] = [0, ''], ...rest] = entity;
  return kind === 'CIRCLE' ? [[0, 'ARC'], ...rest, [50, '0'], [51, '360']] : entity;
}

function pairsOf(text: string): readonly Pair[] {
  const lines = text.trimEnd().split(/\r\n|\r|\n/);
  const pairs: Pair[] = [];
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const code = (lines[i] as string).trim();
    if (!/^-?\d{1,4}$/.test(code)) throw new RangeError(`line ${i + 1} is no group code`);
    pairs.push([Number(code), (lines[i + 1] as string).trim()]);
  }
  return pairs;
}

function sectionsOf(pairs: readonly Pair[]): ReadonlyMap<string, readonly Pair[]> {
  const found = new Map<string, readonly Pair[]>();
  let from = 0;
  for (const [i, [code, value]] of pairs.entries()) {
    if (code !== 0 || (value !== 'SECTION' && value !== 'ENDSEC')) continue;
    if (value === 'SECTION') from = i + 1;
    else if (pairs[from]?.[0] === 2) found.set(pairs[from]?.[1] as string, pairs.slice(from + 1, i));
  }
  if (!found.has('ENTITIES')) throw new RangeError('a drawing without entities');
  return found;
}

/** Pairs from one with code 0 up to the next, those of `following` kinds with the one before them. */
function grouped(pairs: readonly Pair[], following: readonly string[]): readonly (readonly Pair[])[] {
  const groups: Pair[][] = [];
  for (const pair of pairs) {
    if (pair[0] === 0 && !(groups.length > 0 && following.includes(pair[1]))) groups.push([pair]);
    else groups.at(-1)?.push(pair);
  }
  return groups;
}

/** The first value of a code before another entity follows. */
function said(group: readonly Pair[], code: number): string | undefined {
  const end = group.findIndex(([c], i) => i > 0 && c === 0);
  return group.slice(0, end < 0 ? undefined : end).find(([c]) => c === code)?.[1];
}

const FROZEN = 1;

function hiddenLayers(tables: readonly Pair[]): ReadonlySet<string> {
  const layers = grouped(tables, []).filter(([[, kind] = [0, '']]) => kind === 'LAYER');
  const hidden = layers.filter(
    (l) => Number(said(l, COLOUR)) < 0 || (Number(said(l, FLAGS) ?? 0) & FROZEN) !== 0,
  );
  return new Set(hidden.flatMap((l) => said(l, 2)?.toUpperCase() ?? []));
}

const isShown = (entity: readonly Pair[], hidden: ReadonlySet<string>) =>
  Number(said(entity, HIDDEN) ?? 0) === 0 &&
  Number(said(entity, OFF_PAGE) ?? 0) === 0 &&
  !hidden.has((said(entity, LAYER) ?? '').toUpperCase());

/** The variable of a header that says the unit. */
function unitPairs(header: readonly Pair[]): readonly Pair[] {
  const at = header.findIndex(([code, value]) => code === 9 && value === '$INSUNITS');
  return at < 0 ? [] : header.slice(at, at + 2);
}
