import type { Say } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { Batch, BatchStep, Sequence } from '@tinwright/shop';
import { type Host, many, paint, table } from '../host/console.js';

/** A bend order as text: a line for every operation, or why there is none and what would change that; tools in their shop's unit. */
export async function sequenceText(host: Host, sequence: Sequence, say: Say, tools: Say): Promise<string> {
  const { mendWords, plainPrint, reasonWords, stepLine } = await import('@tinwright/words');
  const { part, status, steps, reasons, mends } = sequence;
  const head = `${paint(host, 'bold', part)}: ${headWords(sequence)}\n`;
  if (status === 'infeasible') {
    const lines = [
      ...reasons.map((r) => reasonWords(r, say)),
      ...mends.map((m) => `would help: ${mendWords(m, say)}`),
    ];
    return head + lines.map((l) => `  ${l}\n`).join('');
  }
  if (steps.length === 0) return head;
  const print = plainPrint(say, tools);
  const rows = steps.map((s, i) => [`  ${i + 1}`, s.machine, stepLine(s, 'en', print)]);
  return head + table(rows) + forceLines(sequence);
}

/** How the force of a press was computed, where one is used. */
function forceLines({ steps }: Sequence): string {
  const formulas = new Set(steps.flatMap((s) => (s.press === null ? [] : [s.press.forceFormula])));
  return [...formulas].map((f) => `  force: ${f}\n`).join('');
}

function headWords({ status, proved, steps, seconds, gap }: Sequence): string {
  if (status === 'infeasible') return proved ? 'no order of bends works' : 'no order of bends was found';
  if (steps.length === 0) return 'nothing to bend';
  const best = proved
    ? 'no order takes less'
    : `another order may take up to ${plainNumber(100 * gap, 0)} % less`;
  return `${many(steps.length, 'operation')}, ${duration(seconds)} a piece; ${best}`;
}

/** The bends of all parts in one order: runs of operations of a part, and what is changed before each. */
export function batchText({ steps, seconds, apart }: Batch): string {
  if (seconds === 0 && apart === 0) return '';
  const head = `All parts together: ${duration(seconds)} of set-ups, ${duration(apart)} with one part after another.\n`;
  const rows = runs(steps).map((run, i) => {
    const [first] = run as [BatchStep];
    const last = run.at(-1) as BatchStep;
    const which = first === last ? `${first.step + 1}` : `${first.step + 1} to ${last.step + 1}`;
    return [`  ${i + 1}`, `${first.part} ${which}`, changeWords(first)];
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

const CHANGES = {
  machine: 'go to the machine',
  tools: 'change the tools',
  stop: 'set the angle',
  'set-back': 'set the fingers back',
  gauge: 'set the stop',
} as const;

const changeWords = ({ changes }: BatchStep): string => changes.map((c) => CHANGES[c]).join(', ');

/** `40 s`, `3 min 20 s` */
function duration(seconds: number): string {
  const all = Math.round(seconds);
  return all < 60 ? `${all} s` : `${Math.floor(all / 60)} min ${all % 60} s`;
}
