import { reaches } from '../fold/draft/least.js';
import type { Sheet } from '../fold/draft/tree.js';
import { value as v } from '../schema/value.js';
import { type DerivedSize, derivedSize } from './derived.js';
import { type Complaint, need } from './limits.js';
import type { Walls } from './walls.js';

/** Length and width of a box, outside or inside. */
export const boxLength = v.size('over the west and east walls, or between them where inside sizes are given');
export const boxWidth = v.size('over the south and north walls, or between them');

/** How its sizes are meant. @param sizes which */
export const boxMeant = (sizes: string) =>
  v.or(v.word(`outside or inside: how ${sizes} are meant`, ['outside', 'inside']), 'outside');

/** Sizes of a box as a job gives them: over its walls, or between them. mm */
interface BoxAsk {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly dimensions: 'outside' | 'inside';
}

/** The walls in outside sizes: inside ones become two thicknesses longer across, one higher. mm */
export function outsideWalls({ dimensions, ...p }: BoxAsk, { thickness }: Sheet): Walls {
  const [across, up] = dimensions === 'inside' ? [2 * thickness, thickness] : [0, 0];
  return { length: p.length + across, width: p.width + across, height: () => p.height + up };
}

/** Complaints of a tabbed box whose corner tabs meet behind a wall. */
export function tabsMeet(
  { corner, gap, tabs }: { readonly corner: string; readonly gap: number; readonly tabs: { length: number } },
  width: number,
): readonly Complaint[] {
  return need(
    corner !== 'tabbed' || reaches(width / 2 - gap, tabs.length),
    ['tabs', 'length'],
    (say) => `tabs from both sides would meet across a width of ${say.size(width)}`,
  );
}

/** How long and wide a box is between its walls. */
export const lengthsInside = (
  { length, width }: Pick<Walls, 'length' | 'width'>,
  thickness: number,
): readonly DerivedSize[] => [
  derivedSize(
    'insideLength',
    length - 2 * thickness,
    'length',
    'between the inside faces of the west and east walls',
  ),
  derivedSize(
    'insideWidth',
    width - 2 * thickness,
    'width',
    'between the inside faces of the south and north walls',
  ),
];

/** How long and wide a box is over its walls. */
export const lengthsOutside = ({
  length,
  width,
}: Pick<Walls, 'length' | 'width'>): readonly DerivedSize[] => [
  derivedSize('outsideLength', length, 'length', 'over the west and east walls'),
  derivedSize('outsideWidth', width, 'width', 'over the south and north walls'),
];
