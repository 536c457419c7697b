import { type HemSpec, hemFold, leastHemLength } from '../bending/hem.js';
import { outsideSetback } from '../bending/rule.js';
import type { Path, Wording } from '../errors/problem.js';
import type { Sheet } from '../fold/tree.js';

/** Gap kept at corners when the job gives none, mm. Common practice, no source. */
export const CORNER_GAP = 0.5;

/** Least straight stretch a leg keeps between its bends, mm. Common practice, no source. */
export const LEAST_LEG = 0.5;

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

/** At least, with room for rounding. mm */
export const reaches = (value: number, least: number): boolean => value >= least - 1e-9;

/** Setback of a bend of the sheet, mm. */
export function setback(sheet: Sheet, angle = 90, insideRadius: number = sheet.insideRadius): number {
  return outsideSetback({ thickness: sheet.thickness, insideRadius, angle });
}

/** Least outside leg of a square flange that ends free: one thickness past its bend. mm */
export function leastFlange(sheet: Sheet): number {
  return setback(sheet) + sheet.thickness;
}

/** A wall a hem is folded on: its outside height, the setback of its own bend, and where it stands in the job. */
export interface HemWall {
  readonly height: number;
  readonly bend: number;
  readonly path: Path;
  readonly name: string;
}

/** Least height of a wall with the shortest hem of this kind, mm. */
export function leastHemmedWall(hem: HemSpec, bend: number, { thickness }: Sheet): number {
  return bend + thickness + leastHemLength(hem, thickness);
}

/** A hem has a leg to hold, and its wall has room for it; a wall too low for any such hem is what is complained of. */
export function hemFits(path: Path, hem: HemSpec, sheet: Sheet, wall: HemWall): readonly Complaint[] {
  const article = hem.type === 'open' ? 'an' : 'a';
  if (!reaches(wall.height, leastHemmedWall(hem, wall.bend, sheet)))
    return [{ path: wall.path, why: `too low for ${article} ${hem.type} hem on it` }];
  const most = wall.height - wall.bend - sheet.thickness;
  return [
    ...need(
      reaches(hem.length, leastHemLength(hem, sheet.thickness)),
      [...path, 'length'],
      `${article} ${hem.type} hem needs a straight leg past its fold`,
    ),
    ...need(
      reaches(most, hem.length),
      [...path, 'length'],
      (say) => `longer than the ${wall.name} of ${say.size(wall.height)} has room for`,
    ),
  ];
}

/** Height of a folded hem over the face it lies on, mm. */
export function hemHeight(hem: HemSpec | null, thickness: number): number {
  return hem === null ? 0 : 2 * hemFold(hem, thickness).insideRadius + thickness;
}
