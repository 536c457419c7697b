import { form, paramKit, pathText, unfold, withValue } from '@tinwright/core';
import type { Subject } from './check.js';

type Path = readonly (string | number)[];

/** A size of the job that would pass, others left as they are. mm */
export interface Change {
  /** As a job file has it, `endTabs.length`. */
  readonly size: string;
  readonly given: number;
  readonly found: number;
}

const NUDGE = 0.02; // of a size, to see which way it helps
const TRIES = 8; // steps towards the size that passes
const STEP = 0.01; // mm that a found size is rounded to
const MOST = 2; // changes told
const THICKNESSES = 5; // a size may grow or shrink by this much, or by half of itself; more is another part

/**
 * Sizes of the job with which a part passes, the least change first: each is tried by itself, followed along its slope
 * and held against the rule again. What is not a length is left alone.
 * @param slack how much room a part leaves, negative while it fails
 */
export function changesFor(subject: Subject, slack: (s: Subject) => number): readonly Change[] {
  const start = slack(subject);
  const found = lengthsOf(subject).flatMap(({ path, given, takes }): readonly Change[] => {
    const far = Math.max(given / 2, THICKNESSES * subject.sheet.thickness);
    const at = (v: number) => {
      const other = v > 0 && Math.abs(v - given) <= far ? altered(subject, path, v) : null;
      return other === null ? null : slack(other);
    };
    const size =
      follow(given, given * (1 + NUDGE), start, at) ?? follow(given, given * (1 - NUDGE), start, at);
    return size === null || !takes(size) ? [] : [{ size: pathText(path), given, found: size }];
  });
  const far = ({ given, found: f }: Change) => Math.abs(Math.log(f / given));
  return found.toSorted((a, b) => far(a) - far(b)).slice(0, MOST);
}

/** From a size that fails along the slope to one that passes; null when it does not lead there. */
function follow(
  given: number,
  nudged: number,
  start: number,
  at: (v: number) => number | null,
): number | null {
  let [v0, f0, v1] = [given, start, nudged];
  for (let i = 0; i < TRIES; i++) {
    const f1 = at(v1);
    if (f1 === null || f1 <= f0 + 1e-9) return null;
    if (f1 >= 0 && i > 0) return v1;
    const next = v1 - (f1 * (v1 - v0)) / (f1 - f0);
    if (f1 < 0) [v0, f0] = [v1, f1];
    // a little past, to the step a person would write
    v1 = nudged > given ? Math.ceil(next / STEP - 1e-6) * STEP : Math.floor(next / STEP + 1e-6) * STEP;
  }
  return null;
}

/** The part with one size changed; null where it cannot be made so. */
export function altered(subject: Subject, path: Path, value: unknown): Subject | null {
  const { family, sheet } = subject;
  const params = withValue(subject.params, path, value as number);
  if (family.check(params, sheet).length > 0) return null;
  try {
    const part = family.part(params, sheet);
    return { ...subject, params, part, flat: unfold(part), formed: form(part) };
  } catch {
    return null; // corners leave nothing of a panel at this size
  }
}

/** A parameter that is a length, and whether a job may give it another. mm */
interface Length {
  readonly path: Path;
  readonly given: number;
  readonly takes: (mm: number) => boolean;
}

/** Parameters that are lengths: those a job may write with a unit. */
function lengthsOf({ params, family }: Subject): readonly Length[] {
  const shape = family.params(paramKit('mm'));
  return leaves(params, []).flatMap(({ path, value }): readonly Length[] => {
    if (typeof value !== 'number' || value === 0) return [];
    const takes = (mm: number) => reads(shape, path, withValue(params, path, `${mm} mm` as never));
    return takes(value) ? [{ path, given: value, takes }] : [];
  });
}

/** Words of the job with which a part passes, `relief: hole`: those of a list that a parameter takes. */
export function wordsFor(
  subject: Subject,
  words: readonly string[],
  slack: (s: Subject) => number,
): readonly string[] {
  const shape = subject.family.params(paramKit('mm'));
  return leaves(subject.params, []).flatMap(({ path, value }) => {
    if (typeof value !== 'string') return [];
    return words
      .filter((w) => w !== value && reads(shape, path, withValue(subject.params, path, w as never)))
      .filter((w) => {
        const other = altered(subject, path, w);
        return other !== null && slack(other) >= -1e-9;
      })
      .map((w) => `set ${pathText(path)}: ${w}`);
  });
}

/** True when the schema of the parameter that a path leads into takes its value. */
function reads(shape: ReturnType<Subject['family']['params']>, [first]: Path, params: unknown): boolean {
  const key = String(first);
  const schema = shape[key] as { safeParse(v: unknown): { success: boolean } } | undefined;
  return schema?.safeParse(given((params as Record<string, unknown>)[key])).success === true;
}

/** Without what a job leaves out. */
function given(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(given);
  if (typeof value !== 'object' || value === null) return value;
  const there = Object.entries(value).filter(([, v]) => v !== null && v !== undefined);
  return Object.fromEntries(there.map(([k, v]) => [k, given(v)]));
}

/** Numbers and words in parameters, with the way to each. */
function leaves(value: unknown, path: Path): readonly { readonly path: Path; readonly value: unknown }[] {
  if (typeof value === 'number' || typeof value === 'string') return [{ path, value }];
  if (Array.isArray(value)) return value.flatMap((v, i) => leaves(v, [...path, i]));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([k, v]) => leaves(v, [...path, k]));
}
