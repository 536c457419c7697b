import type { ShopCheck, Subject } from './check.js';
import { distance, nearestOn } from './geometry/closest.js';
import { type Facing, facing } from './geometry/facing.js';
import { slotSides } from './geometry/slots.js';
import { limitCheck, type Place } from './limit-check.js';

const LEAST = 1; // mm
const DEEP = 5; // widths
const SOURCE = "by a fabricator's guide";

/** A notch narrower than 1 mm or than the sheet is thick. */
export const notchNarrow: ShopCheck = limitCheck({
  code: 'notch-narrow',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: (subject) => {
    const limit = Math.max(LEAST, subject.sheet.thickness);
    return notches(subject, limit, 0).map(({ at, width }) => ({ at, value: width, limit, what: 'notch' }));
  },
  message: ({ value, limit, what }, say) => `a ${what} ${say.size(value)} wide, ${say.least(limit)} at least`,
  source: () => `1 mm and T at least, ${SOURCE}`,
  remedy: () => 'saw it by hand',
});

interface Deep extends Place {
  readonly deep: number;
}

/** A notch much deeper than wide. What the table cannot cut at all is told as that. */
export const notchDeep: ShopCheck = limitCheck<Deep>({
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
        what: 'notch',
        deep: length,
      })),
  message: ({ value, deep, what }, say) =>
    `a ${what} ${say.size(value)} wide and ${say.size(deep)} deep: more than ${DEEP} widths is hard to punch or snip`,
  source: () => `no deeper than ${DEEP} widths, ${SOURCE}`,
  remedy: () => 'saw it by hand',
});

/** Gaps in the outline but for slots: a slot is as wide as the sheet that goes in, and as deep as it has to be. */
const notches = (subject: Subject, within: number, ratio: number): readonly Facing[] =>
  facing(subject.flat.outline, within, ratio).filter((f) => f.across === 'gap' && !isSlot(subject, f));

const isSlot = (subject: Subject, { at, width }: Facing): boolean =>
  subject.part.panels.some(({ id }) =>
    slotSides(subject, id).some((s) => distance(at, nearestOn(s, at)) < 0.51 * width),
  );
