import type { Box } from '@tinwright/core';
import { HANDLE } from './handles.js';
import { point, section, type Tag } from './tag.js';

/** Classes of objects that are not in every reader. */
export const CLASSES: readonly Tag[] = section(
  'CLASSES',
  [
    ['ACDBDICTIONARYWDFLT', 'AcDbDictionaryWithDefault'],
    ['ACDBPLACEHOLDER', 'AcDbPlaceHolder'],
  ].flatMap(([name, type]): readonly Tag[] => [
    [0, 'CLASS'],
    [1, name as string],
    [2, type as string],
    [3, 'ObjectDBX Classes'],
    [90, 0],
    [280, 0],
    [281, 0],
  ]),
);

/** Model space and paper space, both without content of their own. */
export const BLOCKS: readonly Tag[] = section('BLOCKS', [
  ...block('*Model_Space', HANDLE.model, [HANDLE.modelBegin, HANDLE.modelEnd], []),
  ...block('*Paper_Space', HANDLE.paper, [HANDLE.paperBegin, HANDLE.paperEnd], [[67, 1]]),
]);

function block(
  name: string,
  record: string,
  [begin, end]: readonly [string, string],
  space: readonly Tag[],
): readonly Tag[] {
  const piece = (kind: string, handle: string, type: string): readonly Tag[] => [
    [0, kind],
    [5, handle],
    [330, record],
    [100, 'AcDbEntity'],
    ...space,
    [8, '0'],
    [100, type],
  ];
  return [
    ...piece('BLOCK', begin, 'AcDbBlockBegin'),
    [2, name],
    [70, 0],
    ...point([0, 0]),
    [3, name],
    [1, ''],
    ...piece('ENDBLK', end, 'AcDbBlockEnd'),
  ];
}

/** Dictionaries and layouts. @param box of what is drawn */
export function objects(box: Box): readonly Tag[] {
  return section('OBJECTS', [
    ...dictionary(HANDLE.root, '0', [
      ['ACAD_GROUP', HANDLE.groups],
      ['ACAD_LAYOUT', HANDLE.layouts],
      ['ACAD_PLOTSTYLENAME', HANDLE.plotStyles],
    ]),
    ...dictionary(HANDLE.groups, HANDLE.root, []),
    ...dictionary(HANDLE.layouts, HANDLE.root, [
      ['Layout1', HANDLE.paperLayout],
      ['Model', HANDLE.modelLayout],
    ]),
    ...layout('Model', HANDLE.modelLayout, HANDLE.model, box),
    ...layout('Layout1', HANDLE.paperLayout, HANDLE.paper, { min: [0, 0], max: [420, 297] }),
    [0, 'ACDBDICTIONARYWDFLT'],
    ...object(HANDLE.plotStyles, HANDLE.root),
    [100, 'AcDbDictionary'],
    [281, 1],
    [3, 'Normal'],
    [350, HANDLE.plotStyle],
    [100, 'AcDbDictionaryWithDefault'],
    [340, HANDLE.plotStyle],
    [0, 'ACDBPLACEHOLDER'],
    ...object(HANDLE.plotStyle, HANDLE.plotStyles),
  ]);
}

const object = (handle: string, owner: string): readonly Tag[] => [
  [5, handle],
  [102, '{ACAD_REACTORS'],
  [330, owner],
  [102, '}'],
  [330, owner],
];

function dictionary(
  handle: string,
  owner: string,
  entries: readonly (readonly [string, string])[],
): readonly Tag[] {
  return [
    [0, 'DICTIONARY'],
    ...(owner === '0'
      ? ([
          [5, handle],
          [330, 0],
        ] as const)
      : object(handle, owner)),
    [100, 'AcDbDictionary'],
    [281, 1],
    ...entries.flatMap(([name, to]): readonly Tag[] => [
      [3, name],
      [350, to],
    ]),
  ];
}

/** A layout that prints its space as it is, on A3. */
function layout(name: string, handle: string, record: string, { min, max }: Box): readonly Tag[] {
  const zeros = (...codes: readonly number[]): readonly Tag[] => codes.map((code): Tag => [code, 0]);
  return [
    [0, 'LAYOUT'],
    ...object(handle, HANDLE.layouts),
    [100, 'AcDbPlotSettings'],
    [1, ''],
    [2, ''],
    [4, ''],
    [6, ''],
    ...zeros(40, 41, 42, 43),
    [44, 420],
    [45, 297],
    ...zeros(46, 47, 48, 49, 140, 141),
    [142, 1],
    [143, 1],
    [70, name === 'Model' ? 1712 : 688],
    [72, 1],
    [73, 0],
    [74, 5],
    [7, ''],
    [75, 16],
    [147, 1],
    ...zeros(148, 149),
    [100, 'AcDbLayout'],
    [1, name],
    [70, 1],
    [71, name === 'Model' ? 0 : 1],
    [10, min[0]],
    [20, min[1]],
    [11, max[0]],
    [21, max[1]],
    ...point([0, 0], 12),
    ...point(min, 14),
    ...point(max, 15),
    [146, 0],
    ...point([0, 0], 13),
    ...point([1, 0], 16),
    ...point([0, 1], 17),
    [76, 0],
    [330, record],
  ];
}
