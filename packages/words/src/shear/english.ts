import { frozen } from '@tinwright/core/internal';
import { many } from '../english.js';
import type { ShearWords } from './words.js';

/** A shear plan in English. */
export const SHEAR_ENGLISH: ShearWords = frozen({
  title: (job: string) => (job === '' ? 'Shear plan' : `Shear plan: ${job}`),
  sheet: (n: number) => `sheet ${n}`,
  strip: (sheet: number, letter: string) => `strip ${sheet}${letter}`,
  offcut: (sheet: number, n: number) => `offcut ${sheet}.${n}`,
  scrap: 'scrap',
  sides: { left: 'left', right: 'right', lower: 'lower', upper: 'upper' },
  side: (side: string, piece: string) => `${side}: ${piece}`,
  steps: 'Cuts in order',
  columns: {
    cut: 'Cut',
    piece: 'Piece',
    stop: 'Stop at',
    behind: 'Against the stop',
    front: 'Stays in front',
  },
  marked: (size: string) => `mark ${size}`,
  same: '–',
  notes: [
    'Sides are those of the diagram. Write its name on every piece as it is cut. – : the stop stays where it is.',
    'Caution: shears crush and cut. Keep fingers off blade and hold-down; follow the machine’s manual and your shop’s rules.',
  ],
  sheets: 'Sheets',
  sheetColumns: {
    sheet: 'Sheet',
    stock: 'From the rack',
    size: 'Size',
    blanks: 'Blanks',
    used: 'Used',
    offcut: 'Largest offcut',
  },
  missing: (part: string, count: number) => `No sheet was left for ${count} × ${part}.`,
  alt: (sheet: number, stock: string, blanks: number) =>
    `Sheet ${sheet}, ${stock}, with the lines to cut and ${many(blanks, 'blank')}`,
  totals: (settings: number, cuts: number) =>
    `${many(cuts, 'cut')} with ${many(settings, 'setting')} of the stop.`,
  proved: 'No plan takes less sheet.',
  gap: (sheets: string) =>
    `A plan that takes less sheet is not ruled out; none can take less than ${sheets} of this one’s.`,
  sums: {
    what: 'What',
    amount: 'How much',
    heading: 'What it takes',
    used: 'Sheet used, by true area',
    kept: 'Offcuts kept',
    waste: 'Waste',
    mass: 'Mass of the parts',
    price: 'Price of the sheets',
    shear: 'At the shear, estimated',
    table: 'On a table instead, estimated',
    joining: 'Fastening, estimated',
    estimate:
      'Times are estimates by the rates of the shop file, or by judgement where it gives none: time your own.',
    minutes: (count: string) => `${count}\u00A0min`,
    cuts: (length: string, pierces: number, minutes: string) =>
      `${length} of cut, ${many(pierces, 'pierce')}, ${minutes}`,
  },
  fasteners: {
    heading: 'Fasteners',
    columns: { kind: 'By', diameter: 'Diameter', length: 'Length', stack: 'Two sheets', count: 'Count' },
  },
});
