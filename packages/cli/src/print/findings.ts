import type { Finding, Severity, Unit } from '@tinwright/core';
import { type Language, tellFindings } from '@tinwright/words';
import { CONSOLE_WORDS, findingEntry, severityWord } from '@tinwright/words/internal';
import { type Host, paint } from '../host/console.js';

const COLOURS = { error: 'red', warning: 'yellow', note: 'blue' } as const;

/** The worst severity there is, null without findings. */
export function worst(findings: readonly { readonly severity: Severity }[]): Severity | null {
  return (['error', 'warning', 'note'] as const).find((s) => findings.some((f) => f.severity === s)) ?? null;
}

/** Each finding as lines of text: what, then source and fix. */
export function findingLines(
  host: Host,
  findings: readonly Finding[],
  unit: Unit,
  language: Language = 'en',
): readonly string[] {
  const { fix, job } = CONSOLE_WORDS[language];
  return tellFindings(findings, unit, language).flatMap((f) => [
    `${paint(host, COLOURS[f.severity], severityWord(f.severity, language))} ${f.part ?? job}: ${f.message}`,
    `  ${fix}: ${f.fix}  (${f.source})`,
  ]);
}

/** Findings as a program reads them. */
export const findingEntries = (
  findings: readonly Finding[],
  unit: Unit,
  language: Language = 'en',
): readonly object[] => tellFindings(findings, unit, language).map(findingEntry);
