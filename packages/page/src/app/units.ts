import type { FamilyView, Field, Path } from '../protocol.js';

type Unit = 'mm' | 'in';

const PER_INCH = 25.4;
const HEAD: readonly string[] = ['thickness', 'insideRadius', 'less', 'plus', 'diameter', 'pitch', 'edge'];

/** A length in words, as many decimals as a bench can use. */
export function sizeText(mm: number, unit: Unit): string {
  return unit === 'mm' ? `${Number(mm.toFixed(2))}` : `${Number((mm / PER_INCH).toFixed(3))}`;
}

/** Every bare number of a job that is a length, in the other unit; texts with their own stay. */
export function changesToUnit(
  data: unknown,
  families: readonly FamilyView[],
  to: Unit,
): readonly { readonly path: Path; readonly value: unknown }[] {
  const found: { path: Path; value: unknown }[] = [{ path: ['units'], value: to }];
  const walk = (value: unknown, path: Path, fields: readonly Field[] | null): void => {
    const name = path.findLast((step) => typeof step === 'string');
    if (typeof value === 'number') {
      const own = fields?.find((f) => f.name === name);
      const length = own === undefined ? HEAD.includes(String(name)) : own.unit === 'mm';
      if (length || path[0] === 'measured') found.push({ path, value: turned(value, to) });
      return;
    }
    if (typeof value !== 'object' || value === null) return;
    for (const [key, inside] of Object.entries(value)) {
      const step = Array.isArray(value) ? Number(key) : key;
      const family =
        path.length === 1 && path[0] === 'parts'
          ? families.find((f) => f.name === (inside as { family?: unknown } | null)?.family)
          : undefined;
      walk(inside, [...path, step], family?.fields ?? within(fields, step));
    }
  };
  walk(data, [], null);
  return found;
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
