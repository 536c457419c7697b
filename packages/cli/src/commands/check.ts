import type { AnyFamily, Finding, FitRow, JobPlan } from '@tinwright/core';
import type { Language } from '@tinwright/words';
import { spotWords } from '@tinwright/words/internal';
import { type Host, paint, table } from '../host/console.js';
import { EXIT, type ExitCode } from '../host/failure.js';
import { type AnyCommand, command, JOB, JSON_OPTION, langOption, SHOP_OPTION } from '../line/command.js';
import { SIZE_OPTION } from '../open/in-size.js';
import { openJob } from '../open/open-job.js';
import { plannedIn } from '../open/open-shop.js';
import { findingEntries, findingLines, worst } from '../print/findings.js';
import { type Spoken, spoken } from '../print/spoken.js';

interface Options {
  readonly job: string;
  readonly shop?: string;
  readonly size?: string;
  readonly lang: Language;
  readonly json: boolean;
}

export const check: AnyCommand = command<Options>({
  verb: 'check',
  argument: JOB,
  summary: 'read a job and its sizes, say what to know before cutting',
  options: {
    size: SIZE_OPTION,
    shop: SHOP_OPTION,
    lang: langOption('of findings and answers'),
    json: JSON_OPTION,
  },
  examples: [
    ['$0 check carrier.yaml', 'how the parts fit, and what to know; nothing is written'],
    ['$0 check carrier.yaml --shop shop.yaml', 'also against the machines of a shop'],
  ],
  run,
});

async function run(
  { job, shop, size, lang, json }: Options,
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
    const rows = fits.map((f) => ({ ...f, between: f.between.map((s) => spotWords(s, lang)) }));
    const own = sizes.map((s) => ({ name: s.name, findings: findingEntries(s.findings, read.units, lang) }));
    const answer = {
      findings: findingEntries(findings, read.units, lang),
      fits: rows,
      ...(sizes.length > 0 && { sizes: own }),
    };
    host.out(`${JSON.stringify(answer, null, 2)}\n`);
  } else {
    const said = spoken(lang, read.units);
    if (fits.length > 0) host.out(`${table(fitTable(host, fits, said, lang))}\n`);
    for (const line of findingLines(host, findings, read.units, lang)) host.out(`${line}\n`);
    const pieces = parts.reduce((s, p) => s + p.quantity, 0);
    host.out(`${said.words.checked(parts.length, pieces, findings.length)}\n`);
    for (const { name, findings: own } of sizes) {
      const errors = own.filter((f) => f.severity === 'error');
      host.out(`${said.words.checkedSize(name, own.length, errors.length)}\n`);
      for (const line of findingLines(host, errors, read.units, lang)) host.out(`  ${line}\n`);
    }
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

/** Clearance asked and found of every joint, and where. */
function fitTable(
  host: Host,
  fits: readonly FitRow[],
  { words: { fit }, size }: Spoken,
  lang: Language,
): readonly (readonly string[])[] {
  const head = [fit.joint, fit.asked, fit.found, fit.between].map((t) => paint(host, 'bold', t));
  const rows = fits.map(({ joint, asked, found, between }) => [
    joint,
    size(asked),
    Number.isFinite(found) ? size(found) : fit.clear,
    Number.isFinite(found) ? between.map((spot) => spotWords(spot, lang)).join(` ${fit.and} `) : '',
  ]);
  return [head, ...rows];
}
