import { join } from 'node:path';
import type { Finding, Unit } from '@tinwright/core';
import type { ShearPlan, Short, StockSheet } from '@tinwright/cutting';
import type { Language } from '@tinwright/words';
import { type Host, paint, table } from '../host/console.js';
import { findingEntries, findingLines } from './findings.js';
import { spoken } from './spoken.js';

/** How a shear plan is told. */
interface ShearSpeech {
  readonly out: string;
  readonly units: Unit;
  readonly lang: Language;
  readonly json: boolean;
  /** Sheets that are taken to be there, since nobody says which are. */
  readonly usual: readonly StockSheet[];
}

/** Sheets, cuts and what no sheet was left for, as lines or as JSON. */
export function tellShear(
  host: Host,
  { out, units, lang, json, usual }: ShearSpeech,
  plans: readonly ShearPlan[],
  findings: readonly Finding[],
): void {
  const sheets = plans.flatMap((p) => p.sheets);
  const area = (list: readonly { readonly w: number; readonly h: number }[]) =>
    list.reduce((sum, { w, h }) => sum + w * h, 0);
  const whole = sheets.reduce((sum, { stock }) => sum + stock.x * stock.y, 0);
  const used = sheets.reduce((sum, s) => sum + area(s.parts), 0);
  const kept = sheets.reduce((sum, s) => sum + area(s.offcuts), 0);
  const sum = (of: (p: ShearPlan) => number) => plans.reduce((t, p) => t + of(p), 0);
  const share = (a: number) => (whole === 0 ? 0 : Number((a / whole).toFixed(4)));
  const answer = {
    sheets: sheets.length,
    used: share(used),
    offcuts: share(kept),
    waste: share(whole - used - kept),
    cuts: sum((p) => p.steps.length),
    settings: sum((p) => p.settings),
    cost: sum((p) => p.cost),
    bound: sum((p) => p.bound),
    missing: findings.map((f) => ({ part: f.part, ...shortOf(f) })),
    findings: findingEntries(findings, units, lang),
  };
  if (json) {
    host.out(
      `${JSON.stringify({ out, ...answer, ...(usual.length > 0 && { usualSheets: usual.map(({ x, y }) => [x, y]) }) }, null, 2)}\n`,
    );
    return;
  }
  const { words, percent, size } = spoken(lang, units);
  const rows = sheets.map(({ stock, parts, offcuts: [largest] }, i) => [
    paint(host, 'bold', words.sheet(i + 1)),
    stock.name,
    words.blanks(parts.length),
    words.used(percent(area(parts) / (stock.x * stock.y))),
    largest === undefined ? words.noOffcut : words.offcut(size(largest.w, largest.h)),
  ]);
  if (rows.length > 0) host.out(table(rows));
  const sizes = usual.map(({ x, y }) => size(x, y));
  if (usual.length > 0) host.out(`${words.usualSheets([...new Set(sizes)])}\n`);
  host.out(`${words.cuts(answer.cuts, answer.settings)} ${words.open(join(out, 'shear.pdf'))}\n`);
  for (const line of findingLines(host, findings, units, lang)) host.out(`${line}\n`);
}

/** What is missing, for programs: pieces, kg of parts, sheets of the nearest kind by area alone. */
function shortOf({ values }: Finding) {
  const { count, kg, sheets, of } = values as Short;
  return { count, kg, sheets, of: of?.name ?? '' };
}
