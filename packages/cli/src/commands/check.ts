import type { AnyFamily, Finding, FitRow, JobPlan, Unit } from '@tinwright/core';
import { spotWords } from '@tinwright/words/internal';
import { type Host, many, paint, table } from '../host/console.js';
import { EXIT, type ExitCode } from '../host/failure.js';
import { type AnyCommand, command, JOB, JSON_OPTION, SHOP_OPTION } from '../line/command.js';
import { SIZE_OPTION } from '../open/in-size.js';
import { openJob } from '../open/open-job.js';
import { plannedIn } from '../open/open-shop.js';
import { findingEntries, findingLines, worst } from '../print/findings.js';
import { sizeText } from '../print/size-text.js';

interface Options {
  readonly job: string;
  readonly shop?: string;
  readonly size?: string;
  readonly json: boolean;
}

export const check: AnyCommand = command<Options>({
  verb: 'check',
  argument: JOB,
  summary: 'read a job and its sizes, say what to know before cutting',
  options: {
    size: SIZE_OPTION,
    shop: SHOP_OPTION,
    json: JSON_OPTION,
  },
  examples: [
    ['$0 check carrier.yaml', 'how the parts fit, and what to know; nothing is written'],
    ['$0 check carrier.yaml --shop shop.yaml', 'also against the machines of a shop'],
  ],
  run,
});

async function run(
  { job, shop, size, json }: Options,
  host: Host,
  families: readonly AnyFamily[],
): Promise<ExitCode> {
  const sized: SizedPlan[] = [];
  const each = (plan: JobPlan, name: string) => void sized.push({ name, plan });
  const opened = await openJob(host, job, json, families, { shop, size, each });
  if ('exit' in opened) return opened.exit;
  const { parts, assembly, job: read } = opened.plan;
  const inShop = await plannedIn(opened.plan, opened.shop, host);
  const findings = inShop?.findings ?? opened.plan.findings;
  const fits = assembly?.fits ?? [];
  const sizes: SizedFindings[] = [];
  for (const { name, plan } of sized)
    sizes.push({ name, findings: (await plannedIn(plan, opened.shop))?.findings ?? plan.findings });
  if (json) {
    const rows = fits.map((f) => ({ ...f, between: f.between.map((s) => spotWords(s, 'en')) }));
    const own = sizes.map((s) => ({ name: s.name, findings: findingEntries(s.findings, read.units) }));
    const answer = {
      findings: findingEntries(findings, read.units),
      fits: rows,
      ...(sizes.length > 0 && { sizes: own }),
    };
    host.out(`${JSON.stringify(answer, null, 2)}\n`);
  } else {
    if (fits.length > 0) host.out(`${table(fitTable(host, fits, read.units))}\n`);
    for (const line of findingLines(host, findings, read.units)) host.out(`${line}\n`);
    const pieces = parts.reduce((s, p) => s + p.quantity, 0);
    const count = findings.length === 0 ? 'nothing to note' : many(findings.length, 'finding');
    host.out(`${many(parts.length, 'part')}, ${many(pieces, 'piece')}: ${count}.\n`);
    for (const row of sizes) sizeLines(host, row, read.units);
  }
  const all = [...findings, ...sizes.flatMap((s) => s.findings)];
  return worst(all) === 'error' ? EXIT.findings : EXIT.done;
}

interface SizedPlan {
  readonly name: string;
  readonly plan: JobPlan;
}

interface SizedFindings {
  readonly name: string;
  readonly findings: readonly Finding[];
}

/** A row of the job's own sizes: how many findings, and those that stop it. */
function sizeLines(host: Host, { name, findings }: SizedFindings, units: Unit): void {
  const errors = findings.filter((f) => f.severity === 'error');
  const count = findings.length === 0 ? 'nothing to note' : many(findings.length, 'finding');
  host.out(`size ${name}: ${count}${errors.length === 0 ? '' : `, ${many(errors.length, 'error')}`}.\n`);
  for (const line of findingLines(host, errors, units)) host.out(`  ${line}\n`);
}

/** Clearance asked and found of every joint, and where. */
function fitTable(host: Host, fits: readonly FitRow[], units: Unit): readonly (readonly string[])[] {
  const head = ['joint', 'asked', 'found', 'between'].map((t) => paint(host, 'bold', t));
  const rows = fits.map(({ joint, asked, found, between: [a, b] }) => [
    joint,
    `${sizeText(asked, units)} ${units}`,
    Number.isFinite(found) ? `${sizeText(found, units)} ${units}` : 'clear',
    Number.isFinite(found) ? `${spotWords(a, 'en')} and ${spotWords(b, 'en')}` : '',
  ]);
  return [head, ...rows];
}
