import { type AnyFamily, type Formed, type Part, type PartPlan, planJob, readJob } from '@tinwright/core';
import type { Asked } from '@tinwright/core/family';
import type { Drawing } from '../drawing.js';
import { dimensions } from '../picture/dimensions.js';
import { lineLayers, pageOf, scaledTo } from '../picture/page.js';
import { type PanelMarks, partSurface } from '../picture/part-surface.js';
import { ISOMETRIC } from '../picture/view.js';
import { visibleLines } from '../picture/visible.js';

const PAGE = 150; // mm, the longer side of a picture

/** A part as a picture needs it. */
export type Pictured = { readonly formed: Formed; readonly part: Pick<Part, 'panels'> };

/** Marks of a part by panel. */
export const marksByPanel = ({ part }: Pick<Pictured, 'part'>): PanelMarks =>
  new Map(part.panels.map((p) => [p.id, p.marks]));

/**
 * Isometric picture of a formed part (ISO 5456-3), hidden lines removed, with dimension lines for `asked`.
 * Scaled to 150 mm without the dimensions; the drawing's y is up.
 */
export function partPicture(title: string, pictured: Pictured, asked: readonly Asked[] = []): Drawing {
  const { formed } = pictured;
  const surface = partSurface(formed, ISOMETRIC, undefined, marksByPanel(pictured));
  const { lines, scale } = scaledTo(visibleLines(surface, ISOMETRIC), PAGE);
  const sizes = dimensions(formed, asked, ISOMETRIC, scale);
  return pageOf(title, [
    ...lineLayers(lines),
    { name: 'DIMENSION', shapes: sizes.lines },
    { name: 'LABEL', shapes: sizes.texts },
  ]);
}

/** Picture of a family's example with the names of its sizes, in 1 mm mild steel bent to 1 mm inside. */
export function familyPicture(family: AnyFamily): Drawing {
  const data = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    parts: [{ name: 'example', family: family.name, ...family.describe.example }],
  };
  const [plan] = planJob(readJob(data as unknown, [family])).parts as [PartPlan];
  return partPicture(family.name, plan, plan.part.asked);
}
