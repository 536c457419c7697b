import type { Box } from '@tinwright/core';
import { HANDLE } from './handles.js';
import { point, section, tag, tags } from './tag.js';

/** Classes of objects that are not in every reader. */
export const CLASSES: string = section(
  'CLASSES',
  objectClass('ACDBDICTIONARYWDFLT', 'AcDbDictionaryWithDefault') +
    objectClass('ACDBPLACEHOLDER', 'AcDbPlaceHolder'),
);

function objectClass(name: string, type: string): string {
  return tags([0, 'CLASS'], [1, name], [2, type], [3, 'ObjectDBX Classes'], [90, 0], [280, 0], [281, 0]);
}

/** Model space and paper space, both without content of their own. */
export const BLOCKS: string = section(
  'BLOCKS',
  block('*Model_Space', HANDLE.model, [HANDLE.modelBegin, HANDLE.modelEnd], '') +
    block('*Paper_Space', HANDLE.paper, [HANDLE.paperBegin, HANDLE.paperEnd], tag(67, 1)),
);

function block(name: string, record: string, [begin, end]: readonly [string, string], space: string): string {
  const piece = (kind: string, handle: string, type: string) =>
    tags([0, kind], [5, handle], [330, record], [100, 'AcDbEntity']) + space + tags([8, '0'], [100, type]);
  return [
    piece('BLOCK', begin, 'AcDbBlockBegin'),
    tags([2, name], [70, 0]),
    point([0, 0]),
    tags([3, name], [1, '']),
    piece('ENDBLK', end, 'AcDbBlockEnd'),
  ].join('');
}

const object = (handle: string, owner: string): string =>
  tags([5, handle], [102, '{ACAD_REACTORS'], [330, owner], [102, '}'], [330, owner]);

function dictionary(handle: string, owner: string, entries: readonly (readonly [string, string])[]): string {
  return [
    tag(0, 'DICTIONARY'),
    owner === '0' ? tags([5, handle], [330, 0]) : object(handle, owner),
    tags([100, 'AcDbDictionary'], [281, 1]),
    ...entries.map(([name, to]) => tags([3, name], [350, to])),
  ].join('');
}

const zeros = (...codes: readonly number[]): string => codes.map((code) => tag(code, 0)).join('');

/** How a layout prints its space: as it is, on A3. */
const printed = (name: string, handle: string): string =>
  [
    tag(0, 'LAYOUT'),
    object(handle, HANDLE.layouts),
    tags([100, 'AcDbPlotSettings'], [1, ''], [2, ''], [4, ''], [6, '']),
    zeros(40, 41, 42, 43),
    tags([44, 420], [45, 297]),
    zeros(46, 47, 48, 49, 140, 141),
    tags([142, 1], [143, 1], [70, name === 'Model' ? 1712 : 688], [72, 1], [73, 0], [74, 5], [7, '']),
    tags([75, 16], [147, 1]),
    zeros(148, 149),
    tags([100, 'AcDbLayout'], [1, name], [70, 1], [71, name === 'Model' ? 0 : 1]),
  ].join('');

/** What of its space a layout shows. */
const shown = (record: string, { min, max }: Box): string =>
  [
    tags([10, min[0]], [20, min[1]], [11, max[0]], [21, max[1]]),
    point([0, 0], 12),
    point(min, 14),
    point(max, 15),
    AXES,
    tag(330, record),
  ].join('');

const AXES = [tag(146, 0), point([0, 0], 13), point([1, 0], 16), point([0, 1], 17), tag(76, 0)].join('');

/** Dictionaries, the same in every file, as are the layout of the paper and what stands behind it. */
const DICTIONARIES =
  dictionary(HANDLE.root, '0', [
    ['ACAD_GROUP', HANDLE.groups],
    ['ACAD_LAYOUT', HANDLE.layouts],
    ['ACAD_PLOTSTYLENAME', HANDLE.plotStyles],
  ]) +
  dictionary(HANDLE.groups, HANDLE.root, []) +
  dictionary(HANDLE.layouts, HANDLE.root, [
    ['Layout1', HANDLE.paperLayout],
    ['Model', HANDLE.modelLayout],
  ]);

const MODEL = printed('Model', HANDLE.modelLayout);

const PAPER = [
  printed('Layout1', HANDLE.paperLayout),
  shown(HANDLE.paper, { min: [0, 0], max: [420, 297] }),
  tag(0, 'ACDBDICTIONARYWDFLT'),
  object(HANDLE.plotStyles, HANDLE.root),
  tags([100, 'AcDbDictionary'], [281, 1], [3, 'Normal'], [350, HANDLE.plotStyle]),
  tags([100, 'AcDbDictionaryWithDefault'], [340, HANDLE.plotStyle]),
  tag(0, 'ACDBPLACEHOLDER'),
  object(HANDLE.plotStyle, HANDLE.plotStyles),
].join('');

/** Dictionaries and layouts. @param box of what is drawn */
export const objects = (box: Box): string =>
  section('OBJECTS', DICTIONARIES + MODEL + shown(HANDLE.model, box) + PAPER);
