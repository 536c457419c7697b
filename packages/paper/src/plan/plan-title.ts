import { linearTolerance, MM_PER_INCH, type PartPlan, type ToleranceClass } from '@tinwright/core';
import { ISO_2768_BANDS, massText, plainNumber } from '@tinwright/core/internal';
import { familyTitle, materialName, type PlanWords } from '@tinwright/words/internal';
import type { Dims } from '../page/dims.js';
import type { Title } from '../page/title-block.js';
import type { PlanOptions } from './options.js';
import type { Rounding } from './rounding.js';

/** What the title block of a part's plan says. */
export function planTitle(
  job: string,
  part: PartPlan,
  { date = '', tolerance = 'm' }: PlanOptions,
  dims: Dims,
  words: PlanWords,
  { finer, over, most }: Rounding,
): Title {
  const [x, y] = part.flat.blank.max;
  const { thickness } = part.sheet;
  const inches = dims.unit === 'in';
  const sheet = dims.own(
    inches ? `${plainNumber(thickness / MM_PER_INCH, 4)} in` : `${plainNumber(thickness, 2)} mm`,
  );
  const steps = toleranceText(Math.max(x, y), tolerance, dims, words);
  return {
    caution: part.material.zinc ? `${words.caution} ${words.cautionZinc}` : words.caution,
    name: part.name,
    what: familyTitle(part.family, words.language),
    job: words.job(job),
    date,
    stock: words.stock(
      materialName(part.material, words.language),
      sheet,
      dims.text(x),
      dims.text(y),
      dims.unit,
    ),
    make: words.make(part.quantity, dims.own(massText(part.mass, dims.unit))),
    sizes: [
      words.sizes(dims.name, finer ? 'finer too' : 'no finer'),
      steps,
      ...(over === 0 ? [] : [words.rounding(over, dims.own(plainNumber(most / MM_PER_INCH, 3)), 'in')]),
    ].join(' '),
    widest: { sheet: words.sheet(88, 88), scale: words.patternScale('1:100') },
    bar: inches
      ? { length: 4 * MM_PER_INCH, parts: 8, text: words.measure('4', 'in') }
      : { length: 100, parts: 10, text: words.measure('100', 'mm') },
  };
}

/** The steps of ISO 2768-1 up to a size, equal ones as one. */
function toleranceText(size: number, of: ToleranceClass, dims: Dims, words: PlanWords): string {
  const steps: { limit: number; to: number }[] = [];
  for (const [i, to] of ISO_2768_BANDS.entries()) {
    if (i > 0 && (ISO_2768_BANDS[i - 1] as number) >= size) break;
    const limit = linearTolerance(to, of);
    const last = steps.at(-1);
    if (limit === null) continue;
    if (last?.limit === limit) last.to = to;
    else steps.push({ limit, to });
  }
  const said = (mm: number, digits: number) =>
    dims.own(dims.unit === 'mm' ? plainNumber(mm, 2) : plainNumber(mm / MM_PER_INCH, digits));
  return words.tolerance(
    of,
    steps.map((s) => [said(s.limit, 3), said(s.to, 2)] as const),
    dims.unit,
  );
}
