import type { PageContent } from '../content.js';
import type { Path } from '../protocol.js';

/** `parts.body.length`: the path with parts by their names. */
export function placeName(data: unknown, path: Path): string {
  const parts = (data as { parts?: readonly { name?: unknown }[] } | null)?.parts;
  return path
    .map((step, i) => (i === 1 && path[0] === 'parts' ? (parts?.[Number(step)]?.name ?? step) : step))
    .join('.');
}

/** True for a value that the page's maker set for good. */
export function isLocked({ locked }: PageContent, data: unknown, path: Path): boolean {
  const place = placeName(data, path);
  return locked.some((l) => place === l || place.startsWith(`${l}.`));
}
