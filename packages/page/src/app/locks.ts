import type { PageContent } from '../content.js';
import type { JobPath } from '../protocol.js';

/** `parts.body.length`: the path with parts by their names. */
export function placeName(data: unknown, path: JobPath): string {
  const parts = (data as { parts?: readonly { name?: unknown }[] } | null)?.parts;
  return path
    .map((step, i) => (i === 1 && path[0] === 'parts' ? (parts?.[Number(step)]?.name ?? step) : step))
    .join('.');
}

/** True for a value that the page's maker set for good. */
export function isLocked({ locked }: PageContent, data: unknown, path: JobPath): boolean {
  const place = placeName(data, path);
  return locked.some((l) => place === l || place.startsWith(`${l}.`));
}

/**
 * The first lock that a job would break by saying something else there than the page was made with; null where it keeps
 * them all. A text that cannot be read breaks none: nothing is made from it.
 */
export function lockBroken({ locked }: PageContent, made: unknown, wanted: unknown): string | null {
  if (wanted === null) return null;
  // numbers mean another length in the other unit
  return ['units', ...locked].find((l) => said(made, l) !== said(wanted, l)) ?? null;
}

/** What stands at a place, parts by their names. */
function said(data: unknown, place: string): string | undefined {
  const at = place.split('.').reduce<unknown>((inside, step) => {
    if (typeof inside !== 'object' || inside === null) return undefined;
    return Array.isArray(inside)
      ? (inside.find((e: { name?: unknown } | null) => e?.name === step) ?? inside[Number(step)])
      : Object.getOwnPropertyDescriptor(inside, step)?.value;
  }, data);
  return JSON.stringify(at);
}
