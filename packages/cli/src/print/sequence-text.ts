import type { Unit } from '@tinwright/core';
import type { Batch, BatchStep, BendStep, Mend, Reason, Sequence } from '@tinwright/shop';
import type { Language } from '@tinwright/words';
import type { ConsoleWords } from '@tinwright/words/internal';
import { type Host, paint, table } from '../host/console.js';

type OrderWords = ConsoleWords['order'];

/** What tells bend orders in a language and the units of a job and its shop. */
export interface OrderSpeech {
  readonly words: OrderWords;
  /** Seconds as text. */
  readonly time: (seconds: number) => string;
  readonly claim: (sequence: Sequence) => string;
  readonly reason: (reason: Reason) => string;
  readonly mend: (mend: Mend) => string;
  readonly step: (step: BendStep) => string;
}

/** @param tools the unit of the shop, which its tools are named in */
export async function orderSpeech(language: Language, unit: Unit, tools: Unit): Promise<OrderSpeech> {
  const { mendWords, plainPrint, reasonWords, stepLine } = await import('@tinwright/words');
  const { CONSOLE_WORDS, claimText, duration, sayOf } = await import('@tinwright/words/internal');
  const say = sayOf(unit, language);
  const print = plainPrint(say, sayOf(tools, language), language);
  return {
    words: CONSOLE_WORDS[language].order,
    time: duration,
    claim: (sequence) => claimText(sequence, language),
    reason: (reason) => reasonWords(reason, say, language),
    mend: (mend) => mendWords(mend, say, language),
    step: (step) => stepLine(step, language, print),
  };
}

/** A bend order as text: a line for every operation, or why there is none and what would change that. */
export function sequenceText(host: Host, sequence: Sequence, said: OrderSpeech): string {
  const { part, status, steps, reasons, mends } = sequence;
  const { words } = said;
  const head = `${paint(host, 'bold', part)}: ${said.claim(sequence)}\n`;
  if (status === 'infeasible') {
    const lines = [...reasons.map(said.reason), ...mends.map((m) => words.helps(said.mend(m)))];
    return head + lines.map((l) => `  ${l}\n`).join('');
  }
  if (steps.length === 0) return head;
  const rows = steps.map((s, i) => [`  ${i + 1}`, words.machines[s.machine], said.step(s)]);
  return head + table(rows) + forceLines(sequence, words);
}

/** How the force of a press was computed, where one is used. */
function forceLines({ steps }: Sequence, { force }: OrderWords): string {
  const formulas = new Set(steps.flatMap((s) => (s.press === null ? [] : [s.press.forceFormula])));
  return [...formulas].map((f) => `  ${force(f)}\n`).join('');
}

/** The bends of all parts in one order: runs of operations of a part, and what is changed before each. */
export function batchText({ steps, seconds, apart }: Batch, { words, time }: OrderSpeech): string {
  if (seconds === 0 && apart === 0) return '';
  const head = `${words.batch(time(seconds), time(apart))}\n`;
  const rows = runs(steps).map((run, i) => {
    const [first] = run as [BatchStep];
    const last = run.at(-1) as BatchStep;
    const which = first === last ? `${first.step + 1}` : `${first.step + 1} ${words.to} ${last.step + 1}`;
    return [`  ${i + 1}`, `${first.part} ${which}`, first.changes.map((c) => words.changes[c]).join(', ')];
  });
  return head + table(rows);
}

/** Steps of one part that follow each other with nothing changed between them. */
function runs(steps: readonly BatchStep[]): readonly (readonly BatchStep[])[] {
  const found: BatchStep[][] = [];
  for (const step of steps) {
    const run = found.at(-1);
    if (run !== undefined && run[0]?.part === step.part && step.changes.length === 0) run.push(step);
    else found.push([step]);
  }
  return found;
}
