import type { ShearPlan } from '@tinwright/cutting';
import type { CutWork } from '@tinwright/files';
import type { Language } from '@tinwright/words';
import type { ShearWords } from '@tinwright/words/internal';
import { LANGUAGES } from '@tinwright/words/internal';
import { heightOf, hung } from '../figure/drawing-figure.js';
import type { Dims } from '../page/dims.js';
import type { Flowing } from '../page/flow.js';
import type { Page } from '../page/page.js';
import type { Paper } from '../page/paper.js';
import { drawn } from '../page/pending.js';
import { setSheets } from '../page/set-sheets.js';
import { sheetOf } from '../page/sheet.js';
import { headingStrip, type TypeSetting } from '../page/table.js';
import { sheetFigure } from './sheet-figure.js';
import { sheetTable } from './sheet-table.js';
import { stepTable } from './step-table.js';
import { fastenerTable, sumsTable } from './sums-tables.js';

/** mm of paper a diagram may be high */
const HIGHEST = 110;

/** How a shear plan is printed. */
export interface ShearPrint {
  readonly job: string;
  readonly paper: Paper;
  readonly dims: Dims;
  readonly language: Language;
  readonly setting: TypeSetting;
}

/** Words of a shear plan. */
export function shearWords(language: Language): ShearWords {
  return LANGUAGES[language].shear;
}

/** Number of the first sheet of each plan, counted through all of them from 1. */
export function firstNumbers(plans: readonly ShearPlan[]): readonly number[] {
  return plans.map((_, i) => 1 + plans.slice(0, i).reduce((sum, p) => sum + p.sheets.length, 0));
}

/**
 * Everything a shear plan says, to set in columns: sheets, diagrams, cuts in order, a plan after the other, and what all
 * of it takes. @param left what was left out, in words
 */
export function shearPassages(
  work: CutWork,
  print: ShearPrint,
  left: readonly string[] = [],
): readonly Flowing[] {
  const { dims, setting } = print;
  const words = shearWords(print.language);
  const names = LANGUAGES[print.language].plans.fastener;
  const numbers = firstNumbers(work.plans);
  return [
    ...work.plans.flatMap((plan, p) => {
      const first = numbers[p] as number;
      return [
        sheetTable(plan, first, words, dims, setting),
        ...plan.sheets.map((_, i) => diagram(plan, i, first, print)),
        stepTable(plan, first, words, dims, setting),
      ];
    }),
    sumsTable(work, left, words, dims, setting),
    ...fastenerTable(work, names, words, dims, setting),
  ];
}

function diagram(plan: ShearPlan, index: number, first: number, print: ShearPrint): Flowing {
  const { dims, setting } = print;
  const words = shearWords(print.language);
  const sheet = plan.sheets[index];
  if (sheet === undefined) throw new RangeError(`no sheet ${index}`);
  const number = first + index;
  return (width) => {
    const picture = { plan: sheet, number, steps: plan.steps, index };
    const figure = sheetFigure(picture, [width - 4, HIGHEST], words, dims, setting);
    return {
      alt: null,
      heading: headingStrip(`${capital(words.sheet(number))}: ${sheet.stock.name}`, setting),
      head: null,
      rows: [{ height: heightOf(figure) + 1, items: hung(figure, width), alt: figure.alt }],
    };
  };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A shear plan on sheets of paper. */
export function shearPages(work: CutWork, print: ShearPrint): readonly Page[] {
  const words = shearWords(print.language);
  const { plans: said } = LANGUAGES[print.language];
  const name = words.title(print.job);
  return setSheets({
    name,
    title: {
      caution: said.cautionShort,
      name,
      what: '',
      job: '',
      date: '',
      stock: '',
      make: '',
      sizes: '',
      bar: null,
      widest: { sheet: said.sheet(88, 88), scale: '' },
    },
    first: null,
    rest: sheetOf(print.paper, 'portrait'),
    passages: shearPassages(work, print),
    setting: print.setting,
    sheet: said.sheet,
  }).map(drawn);
}
