import type { HemSpec } from '../../bending/hem.js';
import type { Sheet } from '../../fold/tree.js';
import type { ParamKit, Shape } from '../../schema/kit.js';
import { type DerivedSize, derivedSize } from '../derived.js';
import {
  CORNER_GAP,
  type Complaint,
  hemFits,
  hemHeight,
  leastFlange,
  need,
  reaches,
  setback,
} from '../limits.js';

/** A channel-shaped handle with tabs. Outside sizes, mm. */
export interface HandleParams {
  readonly span: number;
  readonly width: number;
  readonly sideDepth: number;
  readonly hem: HemSpec | null;
  readonly tabs: { readonly length: number; readonly gap: number };
}

const LEAST_REST = 1; // mm left of the base between the bends

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

export function check(p: HandleParams, sheet: Sheet): readonly Complaint[] {
  const end = setback(sheet) + p.tabs.gap;
  const across = Math.max(end, setback(sheet) + hemHeight(p.hem, sheet.thickness));
  const side = { height: p.sideDepth, bend: setback(sheet), path: ['sideDepth'], name: 'side' };
  return [
    ...need(reaches(p.span, 2 * end + LEAST_REST), ['span'], 'the bends of both tabs take up more'),
    ...need(reaches(p.width, 2 * across + LEAST_REST), ['width'], 'the sides and their hems take up more'),
    ...need(
      reaches(p.sideDepth, leastFlange(sheet)),
      ['sideDepth'],
      'a side has to stand clear of its own bend',
    ),
    ...(p.hem === null ? [] : hemFits(['hem'], p.hem, sheet, side)),
    ...need(
      reaches(p.tabs.length, leastFlange(sheet)),
      ['tabs', 'length'],
      'a tab has to reach past its own bend',
    ),
  ];
}

export function derived({ span }: HandleParams, { thickness }: Sheet): readonly DerivedSize[] {
  return [derivedSize('insideSpan', span - 2 * thickness, 'span', 'between the inside faces of the tabs')];
}
