import type { Finding, Severity } from '@tinwright/core';
import { type Host, paint } from './console.js';

const COLOURS = { error: 'red', warning: 'yellow', note: 'blue' } as const;

/** The worst severity there is, null without findings. */
export function worst(findings: readonly Finding[]): Severity | null {
  return (['error', 'warning', 'note'] as const).find((s) => findings.some((f) => f.severity === s)) ?? null;
}

/** Each finding as lines of text: what, then source and fix. */
export function findingLines(host: Host, findings: readonly Finding[]): readonly string[] {
  return findings.flatMap((f) => [
    `${paint(host, COLOURS[f.severity], f.severity)} ${f.part === '' ? 'job' : f.part}: ${f.message}`,
    `  fix: ${f.fix}  (${f.source})`,
  ]);
}
