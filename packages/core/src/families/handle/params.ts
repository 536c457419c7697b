import type { HemSpec } from '../../bending/hem.js';
import type { Problem } from '../../errors/problem.js';
import type { Sheet } from '../../fold/tree.js';
import type { ParamKit, Shape } from '../kit.js';
import { atLeast, CORNER_GAP, hemFits, hemHeight, setback } from '../limits.js';

/** A channel-shaped handle with tabs. Outside sizes, mm. */
export interface HandleParams {
  readonly span: number;
  readonly width: number;
  readonly sideDepth: number;
  readonly hem: HemSpec | null;
  readonly tabs: { readonly length: number; readonly gap: number };
}

export function params(k: ParamKit): Shape<HandleParams> {
  return {
    span: k.size(),
    width: k.size(),
    sideDepth: k.size(),
    hem: k.or(k.hem(), null),
    tabs: k.group<HandleParams['tabs']>({
      length: k.size(),
      gap: k.or(k.size({ min: 0, max: 20 }), CORNER_GAP),
    }),
  };
}

export function check(p: HandleParams, sheet: Sheet): readonly Problem[] {
  const bend = setback(sheet);
  const side = { height: p.sideDepth, name: 'side', bend };
  const fold = hemHeight(p.hem, sheet.thickness);
  return [
    ...atLeast(['span'], p.span, 2 * (bend + p.tabs.gap) + 1, 'the bends of both tabs need more'),
    ...atLeast(
      ['width'],
      p.width,
      2 * Math.max(bend + p.tabs.gap, bend + fold) + 1,
      'the sides and their hems need more',
    ),
    ...atLeast(
      ['sideDepth'],
      p.sideDepth,
      bend + sheet.thickness,
      'a side has to stand clear of its own bend',
    ),
    ...(p.hem === null ? [] : hemFits(['hem'], p.hem, sheet, side)),
    ...atLeast(
      ['tabs', 'length'],
      p.tabs.length,
      bend + sheet.thickness,
      'a tab has to reach past its own bend',
    ),
  ];
}
