import type { FamilyView, Field, JobPath } from '../protocol.js';

type Unit = 'mm' | 'in';

const PER_INCH = 25.4;
const HEAD: readonly string[] = ['thickness', 'insideRadius', 'less', 'plus', 'diameter', 'pitch', 'edge'];

/** The unit a job's bare numbers are in. */
export const unitOf = (data: unknown): Unit =>
  (data as { units?: unknown } | null)?.units === 'in' ? 'in' : 'mm';

/** A length in words, as many decimals as a bench can use. */
export function sizeText(mm: number, unit: Unit): string {
  return unit === 'mm' ? `${Number(mm.toFixed(2))}` : `${Number((mm / PER_INCH).toFixed(3))}`;
}

/** Every bare number of a job that is a length, in the other unit; texts with their own stay. */
export function changesToUnit(data: unknown, families: readonly FamilyView[], to: Unit): readonly Changed[] {
  const walk = (value: unknown, path: JobPath, fields: readonly Field[] | null): readonly Changed[] => {
    if (typeof value === 'number') return isLength(path, fields) ? [{ path, value: turned(value, to) }] : [];
    if (typeof value !== 'object' || value === null) return [];
    return Object.entries(value).flatMap(([key, inside]) => {
      const step = Array.isArray(value) ? Number(key) : key;
      const own = path.length === 1 && path[0] === 'parts' ? familyOf(inside) : null;
      return walk(inside, [...path, step], own ?? within(fields, step));
    });
  };
  const familyOf = (part: unknown): readonly Field[] | null =>
    families.find((f) => f.name === (part as { family?: unknown } | null)?.family)?.fields ?? null;
  return [{ path: ['units'], value: to }, ...walk(data, [], null)];
}

/** A value in the other unit, and where it stands. */
interface Changed {
  readonly path: JobPath;
  readonly value: unknown;
}

function isLength(path: JobPath, fields: readonly Field[] | null): boolean {
  const name = path.findLast((step) => typeof step === 'string');
  const own = fields?.find((f) => f.name === name);
  return path[0] === 'measured' || (own === undefined ? HEAD.includes(String(name)) : own.unit === 'mm');
}

/** Fields of a group's or a list's inside; a group that is named by its own step shows its inner ones. */
function within(fields: readonly Field[] | null, step: string | number): readonly Field[] | null {
  if (fields === null || typeof step === 'number') return fields;
  const own = fields.find((f) => f.name === step);
  if (own === undefined || own.inner.length === 0) return fields;
  return own.list ? own.inner.map((f) => ({ ...f, name: own.name })) : own.inner;
}

const turned = (value: number, to: Unit): number =>
  to === 'in' ? Number((value / PER_INCH).toFixed(6)) : Number((value * PER_INCH).toFixed(4));
