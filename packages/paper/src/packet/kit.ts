import { type JobPlan, MM_PER_INCH, type PartPlan } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { Language } from '@tinwright/words';
import { materialName, type PacketWords, type PlanWords, type StepWords } from '@tinwright/words/internal';
import type { Dims } from '../page/dims.js';
import type { TypeSetting } from '../page/table.js';

/** What every sheet of a packet is written with. */
export interface PacketKit {
  readonly plan: JobPlan;
  /** Sets of the object to make. */
  readonly sets: number;
  /** Whether its blanks come from known sheets, by cuts in order, or from what lies there. */
  readonly shear: 'numbered' | 'free';
  readonly dims: Dims;
  readonly language: Language;
  readonly words: PacketWords;
  readonly plans: PlanWords;
  readonly steps: StepWords;
  readonly setting: TypeSetting;
}

/** `0.315 m²`, or square feet beside inches. */
export const areaText = (mm2: number, { unit, own }: Dims): string =>
  own(
    unit === 'in'
      ? `${plainNumber(mm2 / (12 * MM_PER_INCH) ** 2, 2)} ft²`
      : `${plainNumber(mm2 / 1e6, 3)} m²`,
  );

/** `1 mm`, `0.0359 in`: the thickness of a sheet. */
export const thicknessText = (mm: number, { unit, own }: Dims): string =>
  own(unit === 'in' ? `${plainNumber(mm / MM_PER_INCH, 4)} in` : `${plainNumber(mm, 2)} mm`);

/** Material and thickness of a part's sheet. */
export const stockText = ({ material, sheet }: PartPlan, { dims, language }: PacketKit): string =>
  `${materialName(material, language)}, ${thicknessText(sheet.thickness, dims).replace(' ', '\u00A0')}`;

/** `436.5 × 335.1`. */
export const blankText = ({ flat }: PartPlan, { dims }: PacketKit): string =>
  flat.blank.max.map((v) => dims.text(v)).join('\u00A0×\u00A0');
