import type { Say } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { BendStep, BendStroke, BendWork, PatternSide } from '@tinwright/shop';
import { inDecimal } from '../decimal.js';
import type { Language } from '../language.js';
import { BENDS_ENGLISH } from './english.js';
import { BENDS_GERMAN } from './german.js';
import { settingsOf } from './settings.js';
import type { BendPrint, BendWords, ToldSetting } from './words.js';

/** How bends are told, by language. */
export const BENDS: Readonly<Record<Language, BendWords>> = { en: BENDS_ENGLISH, de: BENDS_GERMAN };

/** A stroke of bending in words: what is done, how, what is set for it, and what is left to do after it. */
export interface ToldBend {
  readonly action: string;
  readonly how: readonly string[];
  readonly settings: readonly ToldSetting[];
  readonly after: readonly string[];
}

/** A stroke of bending in a language; without a step only what every machine has in common. */
export function tellBend(
  work: Pick<BendWork, keyof BendStroke | 'angle' | 'step'>,
  language: Language,
  print: BendPrint,
): ToldBend {
  const words = BENDS[language];
  const { step, action, angle, hem, insideRadius } = work;
  const to = action === 'fold' ? (step?.setAngle ?? angle) : angle;
  const square = angle !== null && Math.abs(angle - 90) < 1e-6;
  const doer = step === null ? 'none' : (step.clamp ?? step.machine);
  const byHand = step !== null && (step.machine === 'vise' || step.machine === 'hand') && action !== 'roll';
  const bends = work.bends.map(print.bend);
  const facts = {
    held: step?.gripped ?? [],
    bends,
    set: print.angle(step?.setAngle ?? angle ?? 180),
    angle: print.angle(angle ?? 180),
    rear: step?.press?.gauge == null ? null : step.touches,
    tipsBack: step?.press?.tipsBack ?? false,
    ...insideOf(hem, print.size(2 * insideRadius)),
  };
  const how = words.how[action][doer]?.(facts) ?? null;
  return {
    action: words.action(work, bends, to === null ? null : print.angle(to)),
    how: [
      ...(byHand && action === 'bend' ? [words.byHand] : []),
      ...one(wayOf(words.putIn, step, step?.putIn)),
      ...one(how),
      ...(byHand && action === 'bend' ? [words.check(square)] : []),
    ],
    settings: settingsOf(work, words, print),
    after: [
      ...one(wayOf(words.takeOff, step, step?.takeOff)),
      ...one(step === null ? null : bareOf(step, words, print)),
    ],
  };
}

/** What keeps the inside of a fold, so wide. */
const insideOf = (hem: BendStroke['hem'], width: string) => ({
  strip: hem === 'open' ? width : null,
  round: hem === 'teardrop',
  rod: hem === 'curl' ? width : null,
});

/** A side or corner of the pattern in words. */
export const sideWords = (side: PatternSide, language: Language): string => BENDS[language].sides[side];

/** A step of an order in words. */
export const tellStep = (step: BendStep, language: Language, print: BendPrint): ToldBend =>
  tellBend({ ...step, step }, language, print);

/** All of a step in one line, for lists; the machine and what hands do are left out. */
export function stepLine(step: BendStep, language: Language, print: BendPrint): string {
  const { action, settings, after } = tellStep(step, language, print);
  const { putIn } = BENDS[language];
  const told = settings.filter((s) => s.name !== 'machine').map((s) => `${s.label}: ${s.text}`);
  const way = wayOf(putIn, step, step.putIn);
  return [action, ...told, ...[...one(way), ...after].map(asClause)].join('; ');
}

/** A sentence as a part of a longer one. */
const asClause = (sentence: string): string =>
  `${sentence.slice(0, 1).toLowerCase()}${sentence.slice(1).replace(/\.$/, '')}`;

/**
 * Sizes in the unit of a job, to a tenth of a millimetre or a thousandth of an inch: no finer than a stop is set; bends by
 * their names in files.
 * @param tools the unit of the shop, which its tools are named in
 */
export const plainPrint = (say: Say, tools: Say = say, language: Language = 'en'): BendPrint => ({
  size: (mm) => say.size(say.unit === 'mm' ? Math.round(mm * 10) / 10 : mm),
  piece: tools.size,
  fine: say.size,
  angle: (degrees) => inDecimal(`${plainNumber(degrees, 1)}°`, language),
  bend: (id) => id,
});

const wayOf = (
  words: BendWords['putIn'],
  step: Pick<BendStep, 'machine'> | null,
  way: BendStep['putIn'] | undefined,
): string | null => (way == null ? null : (words[step?.machine === 'press' ? 'punch' : 'jaw'][way] ?? null));

const one = (text: string | null): readonly string[] => (text === null ? [] : [text]);

const BARE = 10; // mm; more than that between a finger and the end of the line comes out round

function bareOf({ tools }: BendStep, { bare }: BendWords, { size }: BendPrint): string | null {
  const most = Math.max(0, ...(tools ?? []).flatMap((g) => g.bare));
  return most <= BARE ? null : bare(size(most));
}
