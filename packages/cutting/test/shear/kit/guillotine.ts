import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { ShearPlan } from '@tinwright/cutting';

const CHECKER = fileURLToPath(
  new URL('../../../../../../shared/tools/check_guillotine.mjs', import.meta.url),
);

/** A second checker of shear plans beside the repository, where it is there. @returns '' when it agrees or is not there */
export function guillotineFlaws(plans: readonly ShearPlan[]): string {
  const sheets = plans.flatMap(({ sheets, kerf }) => sheets.map((s) => ({ ...s, kerf })));
  if (!existsSync(CHECKER) || sheets.length === 0) return '';
  const input = sheets.map(({ stock, parts, cuts, kerf }) => ({
    sheet: { x: stock.x, y: stock.y },
    kerf,
    trim: { left: stock.trim.west, right: stock.trim.east, bottom: stock.trim.south, top: stock.trim.north },
    parts,
    cuts: cuts ?? [],
  }));
  try {
    execFileSync(process.execPath, [CHECKER, '-'], { input: JSON.stringify(input), stdio: 'pipe' });
    return '';
  } catch (error) {
    return String((error as { stdout?: unknown }).stdout ?? error);
  }
}
