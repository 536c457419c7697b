import { frozen } from '@tinwright/core/internal';
import { many } from '../english.js';
import type { ConsoleWords } from './words.js';

const foundWords = (findings: number): string =>
  findings === 0 ? 'nothing to note' : many(findings, 'finding');

/** What a terminal says in English. */
export const CONSOLE_ENGLISH: ConsoleWords = frozen({
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
  usualSheets: (sizes: readonly string[]) =>
    `Neither --rack, job nor shop say what sheets there are: cut from as many as needed of ${sizes.join(', ')}.`,
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
  fix: 'fix',
  job: 'job',
  fit: {
    joint: 'joint',
    asked: 'clearance asked',
    found: 'found',
    between: 'between',
    clear: 'clear',
    and: 'and',
  },
  checked: (parts, pieces, findings) =>
    `${many(parts, 'part')}, ${many(pieces, 'piece')}: ${foundWords(findings)}.`,
  checkedSize: (size, findings, errors) =>
    `size ${size}: ${foundWords(findings)}${errors === 0 ? '' : `, ${many(errors, 'error')}`}.`,
  order: {
    shop: (shop) =>
      `In ${shop ?? 'the shop'}. Left and right are those of who stands in front of the machine.`,
    helps: (mend) => `would help: ${mend}`,
    machines: { brake: 'brake', press: 'press', vise: 'vise', hand: 'hand' },
    force: (formula) => `force: ${formula}`,
    batch: (together, apart) =>
      `All parts together: ${together} for setting up; ${apart} with one part after another.`,
    to: 'to',
    changes: {
      machine: 'go to the machine',
      tools: 'set up the tools',
      stop: 'set the angle',
      'set-back': 'set the fingers back',
      gauge: 'set the stop',
    },
  },
  family: {
    follow: (written) => `Sizes other parts may follow, as ${written}:`,
    sites: (names) => `Sites to join at: ${names}`,
    starter: (command) => `A job to start from: ${command}`,
  },
});
