import { frozen } from '@tinwright/core/internal';
import { many } from '../english.js';
import type { ConsoleWords } from './words.js';

/** Planned sheets in English. */
export const CONSOLE_ENGLISH: ConsoleWords = frozen({
  decimal: '.',
  sheet: (n: number) => `sheet ${n}`,
  blanks: (n: number) => many(n, 'blank'),
  parts: (n: number) => many(n, 'part'),
  used: (share: string) => `${share} used`,
  ofSheet: (share: string) => `${share} of the sheet`,
  upTo: (to: string, of: string) => `up to ${to} of ${of}`,
  offcut: (size: string) => `offcut ${size}`,
  noOffcut: 'no offcut',
  cuts: (cuts: number, settings: number) =>
    `${many(cuts, 'cut')} with ${many(settings, 'setting')} of the stop.`,
  open: (file: string) => `Open ${file}.`,
  blank: (size: string) => `blank ${size}`,
  filesIn: (n: number, folder: string, open: string) =>
    `${many(n, 'file')} in ${folder}: open ${open} in a browser.`,
  notWritten: 'Nothing written: a finding is an error.',
  writtenAll: 'Written, but a finding is an error.',
  sheetsIn: (n: number, folder: string) => `${many(n, 'sheet')} in ${folder}.`,
  torch: ({ length, spared, pierces, starts, minutes }) =>
    `${length} of cut, ${spared} spared by common cuts, ${many(pierces, 'pierce')}, ${many(starts, 'start')} in a cut made before, about ${minutes}`,
  soFar: (sheets: number, seed: number) => `${many(sheets, 'sheet')} so far (seed ${seed})`,
  ending: 'ending with the best so far.',
});
