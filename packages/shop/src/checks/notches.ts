import { cite, type Segment } from '@tinwright/core';
import { distance, nearestOn } from '@tinwright/core/internal';
import { endsOf } from './bend-relief.js';
import type { ShopCheck, ShopSubject } from './check.js';
import { type Facing, facing } from './geometry/facing.js';
import { slotSides } from './geometry/slots.js';
import { type LimitPlace, limitCheck } from './limit-check.js';

const LEAST = 1; // mm
const DEEP = 5; // widths

/** A notch narrower than 1 mm or than the sheet is thick. */
export const notchNarrow: ShopCheck = limitCheck({
  code: 'notch-narrow',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: (subject) => {
    const limit = Math.max(LEAST, subject.sheet.thickness);
    // a cut beside the end of a bend has a rule of its own
    const ends = subject.flat.bends.flatMap(endsOf);
    return notches(subject, limit, 0)
      .filter((f) => !ends.some((end) => borders(f, end)))
      .map(({ at, width }) => ({ at, value: width, limit, names: [] }));
  },
  values: () => ({}),
  source: () => [cite('fabricator', { rule: 'T, #', size: 1 })],
});

interface Deep extends LimitPlace {
  readonly deep: number;
}

/** A notch much deeper than wide. What the table cannot cut at all is told as that. */
export const notchDeep: ShopCheck = limitCheck<'notch-deep', Deep>({
  code: 'notch-deep',
  severity: 'note',
  unit: 'mm',
  bound: 'least',
  places: (subject, { table }) =>
    notches(subject, 0, 1 / DEEP)
      .filter(({ width }) => table === null || width >= table.kerf)
      .map(({ at, width, length }) => ({
        at,
        value: width,
        limit: length / DEEP,
        names: [],
        deep: length,
      })),
  values: ({ deep }) => ({ deep, most: DEEP }),
  source: () => [cite('fabricator', { rule: 'L / 5' })],
});

/** Gaps in the outline but for slots: a slot is as wide as the sheet that goes in, and as deep as it has to be. */
const notches = (subject: ShopSubject, within: number, ratio: number): readonly Facing[] =>
  facing(subject.flat.outline, within, ratio).filter((f) => f.across === 'gap' && !isSlot(subject, f));

const isSlot = (subject: ShopSubject, face: Facing): boolean =>
  subject.part.panels.some(({ id }) => slotSides(subject, id).some((s) => borders(face, s.edge)));

/** True where an edge is one of the two that face each other. */
const borders = ({ at, width }: Facing, s: Segment): boolean => distance(at, nearestOn(s, at)) < 0.51 * width;
