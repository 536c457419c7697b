/**
 * A constant that nobody can change for everybody else: its lists and records are frozen, to the last row. Values of
 * classes are left as they are.
 */
export function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null) return value;
  if (!Array.isArray(value) && Object.getPrototypeOf(value) !== Object.prototype) return value;
  for (const inside of Object.values(value)) frozen(inside);
  return Object.freeze(value);
}
