import type { Problem, Unit } from '@tinwright/core';
import { sayIn } from '@tinwright/core/internal';
import { type Blank, sameMetal } from './blank.js';
import { roomOf, shortOf } from './room.js';
import { isBeyond, shearWays } from './shear-ways.js';
import type { Rack, StockSheet } from './sheet.js';

/** A thousandth more is rounding of a gauge. */
const GAUGE = 1.001;

/** How far a shear goes: its longest cut, and the thickest sheet of a material it takes, mm. */
export interface ShearReach {
  readonly length: number;
  readonly thickest: (material: string) => number;
}

/**
 * Blanks that cannot be cut from any sheet of a rack, however few there are: no such metal, too thick for the shear,
 * none large enough, only against the grain, or only from sheets that no cut of the shear goes across.
 */
export function stockProblems(
  blanks: readonly Blank[],
  rack: Rack,
  reach: ShearReach,
  units: Unit,
): readonly Problem[] {
  return blanks.flatMap((blank) => {
    const problem = problemOf(blank, rack, reach, units);
    return problem === null ? [] : [{ ...problem, path: [], part: blank.part }];
  });
}

type Said = Pick<Problem, 'code' | 'message' | 'fix'>;

function problemOf(
  blank: Blank,
  rack: Rack,
  { length: longest, thickest }: ShearReach,
  units: Unit,
): Said | null {
  const say = sayIn(units);
  const size = `${say.size(blank.x)} x ${say.size(blank.y)}`;
  const what = `part "${blank.part}": a blank of ${size}`;
  const own = rack.sheets.filter((s) => sameMetal(s, blank));
  if (own.length === 0)
    return {
      code: 'stock-missing',
      message: `${what} needs ${blank.material}, ${say.size(blank.thickness)}; the rack has none`,
      fix: 'Add a sheet of it to the rack',
    };
  const most = thickest(blank.material);
  if (blank.thickness > most * GAUGE)
    return {
      code: 'sheet-thick',
      message: `${what} is of ${blank.material}, ${say.size(blank.thickness)} thick; the shear takes ${say.most(most)}`,
      fix: 'Cut it on a table, or have it cut elsewhere',
    };
  const from = (asked: Blank, length: number) => own.filter((s) => shearWays(asked, s, length).length > 0);
  const anyWay = { ...blank, grain: null };
  if (from(blank, longest).length > 0) return null;
  if (from(anyWay, longest).length > 0)
    return {
      code: 'grain-impossible',
      message: `${what} with grain along ${blank.grain} fits no sheet that way round`,
      fix: 'Leave its grain out, or add a sheet rolled the other way',
    };
  const large = from(anyWay, Number.POSITIVE_INFINITY);
  const [beyond] = large;
  if (beyond !== undefined && large.every((s) => isBeyond(s, longest)))
    return {
      code: 'sheet-long',
      message: `${what} would come from the sheet ${beyond.name}, which is longer both ways than the shear's ${say.most(longest)}`,
      fix: 'Have the sheet cut in two elsewhere and give the halves in the rack, or add one that goes through the shear',
    };
  if (large.length > 0)
    return {
      code: 'blank-long',
      message: `${what} takes a cut longer than the shear's ${say.size(longest)}`,
      fix: 'Have it cut elsewhere, or make it in two',
    };
  const [nearest] = own.toSorted((a, b) => shortOf(blank, a) - shortOf(blank, b)) as [StockSheet];
  const [x, y] = roomOf(nearest);
  return {
    code: 'blank-large',
    message: `${what} is larger than every sheet; nearest: ${nearest.name}, ${say.most(x)} x ${say.most(y)} usable`,
    fix: `Add a sheet of ${size} or more, or make it in two`,
  };
}
