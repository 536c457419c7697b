import { type HemSpec, hemFold } from '../bending/hem.js';
import { outsideSetback } from '../bending/rule.js';
import type { Path, Wording } from '../errors/problem.js';
import type { Sheet } from '../fold/draft/tree.js';

/** Gap kept at corners when the job gives none, mm. Common practice, no source. */
export const CORNER_GAP = 0.5;

/**
 * A parameter that cannot be made as it is. `path` leads to it from the part; `why` completes "5 mm given, …".
 * The size that would work is found by trying, so a complaint does not name it; `fix` is for what is not a size.
 */
export interface Complaint {
  readonly path: Path;
  readonly why: Wording;
  readonly fix?: string;
}

/** A complaint unless `holds`. */
export function need(holds: boolean, path: Path, why: Wording): readonly Complaint[] {
  return holds ? [] : [{ path, why }];
}

/** Setback of a bend of the sheet, mm. */
export function setback(sheet: Sheet, angle = 90, insideRadius: number = sheet.insideRadius): number {
  return outsideSetback({ thickness: sheet.thickness, insideRadius, angle });
}

/** Height of a folded hem over the face it lies on, mm. */
export function hemHeight(hem: HemSpec | null, thickness: number): number {
  return hem === null ? 0 : 2 * hemFold(hem, thickness).insideRadius + thickness;
}
