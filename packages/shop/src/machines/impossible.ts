import type { Path, Problem } from '@tinwright/core';

/** A machine that cannot be: where it says so, why, and what to look at. */
export const impossible = (path: Path, message: string, fix: string): Problem => ({
  code: 'shop-impossible',
  path,
  message,
  fix,
});
