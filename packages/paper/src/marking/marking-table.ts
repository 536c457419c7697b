import type { FlatBend, FlatPattern, Point } from '@tinwright/core';
import type { PlanWords } from '@tinwright/words/internal';
import type { Dims } from '../page/dims.js';
import type { Flowing } from '../page/flow.js';
import { type Cell, type TypeSetting, tableFlow } from '../page/table.js';
import type { MarkedThing, Marking } from '../pattern/marked.js';

/** The marking-out table: what to scribe, in order, each from a datum edge. */
export function markingTable(
  flat: FlatPattern,
  markings: readonly Marking[],
  dims: Dims,
  words: PlanWords,
  setting: TypeSetting,
): Flowing {
  const w = words.marking;
  const [x, y] = flat.blank.max;
  const blank: readonly Cell[] = [
    '',
    '',
    w.blank(dims.text(x), dims.text(y)),
    w.square(dims.text(Math.hypot(x, y))),
    w.face,
  ];
  const rows = [blank, ...markings.flatMap(portioned).map((m) => row(m, dims, words))];
  const c = w.columns;
  return tableFlow(
    {
      heading: w.heading,
      columns: [
        { title: c.number, align: 'end' },
        { title: c.edge },
        { title: c.offset, align: 'end' },
        { title: c.what },
        { title: c.reach, grows: true },
        { title: c.face },
      ],
      rows: rows.map((cells, i) => [String(i + 1), ...cells]),
    },
    setting,
  );
}

const MOST = 40; // places told in one row, so that no row is higher than a sheet

/** A marking in as many as it takes for none to have too many places. */
function portioned(m: Marking): readonly Marking[] {
  if (m.kind === 'line') return portions(m.reach).map((reach) => ({ ...m, reach }));
  if (m.kind === 'points') return portions(m.at).map((at) => ({ ...m, at }));
  if (m.kind === 'arc') return portions(m.at).map((at) => ({ ...m, at }));
  return [m];
}

function portions<T>(list: readonly T[]): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(list.length / MOST) }, (_, i) =>
    list.slice(i * MOST, (i + 1) * MOST),
  );
}

function row(m: Marking, dims: Dims, words: PlanWords): readonly Cell[] {
  const w = words.marking;
  const whole = (text: string) => text.replaceAll(' ', '\u00A0'); // a fraction stays with its number
  const size = (mm: number): Cell => ({ text: dims.text(mm), value: mm });
  const point = ([x, y]: Point) => whole(w.point(dims.text(x), dims.text(y)));
  switch (m.kind) {
    case 'line': {
      const spans = m.reach.map(([from, to]) => {
        const [a, b] = [dims.text(from), dims.text(to)];
        return whole(a === b ? w.at([a]) : w.span(a, b)); // shorter than a rule shows
      });
      return [
        w[m.edge],
        size(m.offset),
        said(m.thing, 1, dims, words),
        spans.join('; '),
        face(m.thing, words),
      ];
    }
    case 'points': {
      const what = said(m.thing, m.at.length, dims, words);
      return [
        w[m.edge],
        size(m.offset),
        what,
        w.at(m.at.map((mm) => whole(dims.text(mm)))),
        face(m.thing, words),
      ];
    }
    case 'slant':
      return [
        '',
        '',
        said(m.thing, 1, dims, words),
        w.slant(point(m.from), point(m.to)),
        face(m.thing, words),
      ];
    case 'round':
      return ['', '', w.relief(reliefText(m.diameter, dims)), w.at([point(m.at)]), w.face];
    case 'arc':
      return ['', '', w.arc(reliefText(m.radius, dims)), w.at(m.at.map(point)), w.face];
  }
}

/** As other sizes; finer where that would be nothing. */
const reliefText = (diameter: number, dims: Dims): string =>
  dims.text(diameter) === '0' ? dims.fine(diameter) : dims.text(diameter);

function said(thing: MarkedThing, count: number, dims: Dims, words: PlanWords): string {
  const w = words.marking;
  const purpose = (kind: string) => words.fastener(kind);
  switch (thing.kind) {
    case 'cut':
      return w.cut;
    case 'sight':
      return w.sight(thing.number);
    case 'mark':
      return words.mark(count, purpose(thing.purpose));
    case 'hole':
      return words.hole(
        count,
        dims.fine(thing.diameter),
        thing.purpose === null ? '' : purpose(thing.purpose),
      );
    case 'bend':
      return bendText(thing.numbers, thing.bend, dims, words);
  }
}

/** `B5 B7 up 90°`, with the hem where it is one. */
export function bendText(numbers: readonly string[], bend: FlatBend, dims: Dims, words: PlanWords): string {
  const direction = bend.direction === 'up' ? words.up : words.down;
  const hem = bend.hem === null ? '' : words.hems[bend.hem];
  return words.marking.bend(numbers, direction, dims.angle(bend.angle), hem);
}

/** Everything is scribed on the marked face; up from it, that is the inside of the bend. */
function face(thing: MarkedThing, { marking }: PlanWords): string {
  if (thing.kind !== 'bend') return marking.face;
  return thing.bend.direction === 'up' ? marking.inside : marking.outside;
}
