import type { PartPlan, Unit } from '@tinwright/core';
import {
  boxOf,
  declaredAt,
  form,
  type Leaf,
  type SizeAdvice,
  sizeAdvice,
  sizesIn,
  stepOf,
  unfold,
  type WordAdvice,
  wordAdvice,
} from '@tinwright/core/internal';
import type { ShopSubject } from './check.js';

const RUNGS = 8; // steps towards the size that passes
const MOST = 2; // changes told
const EDGE = 2.5; // of a hole, to the edge of a sheet. Source: NAVEDTRA 14251, of the rivet
const SAME_WIDTH = 1e-6; // mm
const THICKNESSES = 5; // a size may grow or shrink by this much, or by half of itself; more is another part

/**
 * Sizes of the job with which a part passes, the least change first. What is not a length is left alone.
 * @param slack how much room a part leaves, negative while it fails
 * @param unit of the job: sizes found are steps of it
 */
export function changesFor(
  subject: ShopSubject,
  slack: (s: ShopSubject) => number,
  unit: Unit,
): readonly SizeAdvice[] {
  const lengths = sizesIn(subject.params).filter((l) => {
    return l.given !== 0 && declaredAt(subject.family.values, l.path)?.unit === 'mm';
  });
  const room = (params: unknown) => {
    if (params === subject.params) return slack(subject);
    const other = altered(subject, params);
    return other === null || crowds(subject, other) ? null : slack(other);
  };
  const budget = ({ given }: Leaf<number>) => {
    const far = Math.max(given / 2, THICKNESSES * subject.sheet.thickness);
    return { step: stepOf(unit), rungs: RUNGS, least: given - far, most: given + far };
  };
  return sizeAdvice(subject.params, room, budget, lengths).slice(0, MOST);
}

/** The part with other parameters; null where it cannot be made so. */
function altered(subject: ShopSubject, params: unknown): ShopSubject | null {
  const { family, sheet } = subject;
  try {
    const part = family.part(params, sheet);
    return { ...subject, params, part, flat: unfold(part), formed: form(part) };
  } catch {
    return null; // corners leave nothing of a panel at this size
  }
}

/** True where a panel that rivets or screws go through becomes narrower than they ask for on both sides. */
function crowds({ part }: ShopSubject, other: ShopSubject): boolean {
  const all = part.panels.flatMap((p) => p.marks);
  // drilled once the part is bent, a place is only marked: its hole is that of the sheet it is drilled through
  const holeOf = (joint: string) => Math.max(0, ...all.map((m) => (m.joint === joint ? (m.hole ?? 0) : 0)));
  return part.panels.some(({ id, shape, marks }) => {
    const needed = 2 * EDGE * Math.max(0, ...marks.map((m) => holeOf(m.joint)));
    const now = other.part.panels.find((p) => p.id === id);
    if (needed === 0 || now === undefined) return false;
    const width = narrower(now.shape);
    return width < Math.min(needed, narrower(shape) - SAME_WIDTH);
  });
}

function narrower(shape: PartPlan['part']['panels'][number]['shape']): number {
  const { min, max } = boxOf(shape.map((e) => e.from));
  return Math.min(max[0] - min[0], max[1] - min[1]);
}

/** Words of the job with which a part passes, `relief: hole`: those of a list that a parameter takes. */
export function wordsFor(
  subject: ShopSubject,
  words: readonly string[],
  slack: (s: ShopSubject) => number,
): readonly WordAdvice[] {
  const room = (params: unknown) => {
    const other = altered(subject, params);
    return other === null ? null : slack(other) + 1e-9;
  };
  const taken = ({ path }: Leaf<string>) =>
    words.filter((w) => declaredAt(subject.family.values, path)?.options.includes(w));
  return wordAdvice(subject.params, room, taken);
}
