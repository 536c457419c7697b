import { type Finding, MM_PER_INCH, type Unit } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { Estimate, StripFit, StripRow } from '@tinwright/shop';
import { type Host, many, paint, table } from '../host/console.js';
import { EXIT, type ExitCode, refuse } from '../host/failure.js';
import { STANDARD_INPUT, withText } from '../open/open-text.js';
import { findingEntries, findingLines, worst } from '../print/findings.js';
import { givenText } from '../print/size-text.js';
import { rowData } from '../print/strip-row-text.js';
import { type Kept, keepRow, rowText } from './keep-row.js';

/** Fit measured strips, say what came out, and keep it in the shop file that was given, unless strips contradict. */
export async function fitStrip(
  host: Host,
  file: string,
  shopFile: string | undefined,
  replace: boolean,
  json: boolean,
): Promise<ExitCode> {
  const { fitFindings, FIT_METHOD } = await import('@tinwright/shop/internal');
  const { fitStrips, readMeasured } = await import('@tinwright/shop');
  if (shopFile === STANDARD_INPUT)
    return refuse(host, json, 'usage', 'strip', '--shop: a file is needed, to keep the result in');
  const opened = await withText(host, file, 'strips', json, (data) => {
    const measured = readMeasured(data);
    return { measured, fit: fitStrips(measured) };
  });
  if ('exit' in opened) return opened.exit;
  const { fit, measured } = opened.answer;
  const { row } = fit;
  const findings = fitFindings(fit, measured);
  const wrong = worst(findings) === 'error';
  const asked = { row, named: measured.name !== '', replace };
  const kept = wrong || shopFile === undefined ? null : await keepRow(host, shopFile, asked, json);
  if (kept !== null && 'exit' in kept) return kept.exit;
  if (json) {
    const stored = kept === null ? null : shopFile;
    const answer = {
      ...fit,
      row: kept?.row ?? row,
      method: FIT_METHOD,
      findings: findingEntries(findings, measured.units),
      stored,
    };
    host.out(`${JSON.stringify({ unit: 'mm', ...answer, replaced: kept?.replaced ?? null }, null, 2)}\n`);
  } else {
    host.out(`${fitText(host, fit, measured.units)}${FIT_METHOD}.\n`);
    for (const line of findingLines(host, findings, measured.units)) host.out(`${line}\n`);
    host.out(kept === null ? notKept(row, findings, measured.units) : keptText(kept, shopFile as string));
  }
  return wrong ? EXIT.findings : EXIT.done;
}

const USE = 'Jobs take it by rule: test-strip and --shop.\n';

function keptText({ row, replaced }: Kept, shopFile: string): string {
  const before = replaced === null ? '' : `Replaced ${rowText(replaced)}.\n`;
  return `${before}Kept as ${JSON.stringify(row.name)} in ${shopFile}. ${USE}`;
}

function notKept(row: StripRow, findings: readonly Finding[], units: Unit): string {
  if (findings.some((f) => f.code === 'strip-contradicts'))
    return 'Not kept: strips contradict each other.\n';
  if (worst(findings) === 'error') return 'Not kept: strips contradict what they were set to.\n';
  return `To keep it, give --shop FILE, or write under strips: of your shop file:\n  - ${JSON.stringify(rowData(row, units))}\n${USE}`;
}

function fitText(
  host: Host,
  { row, allowance, deduction, springbackFactor, strips }: StripFit,
  units: Unit,
): string {
  const per = units === 'mm' ? 1 : MM_PER_INCH;
  const digits = units === 'mm' ? 3 : 4;
  const size = ({ value, error }: Estimate) =>
    `${plainNumber(value / per, digits)} ± ${plainNumber(error / per, digits)} ${units} at 90 deg`;
  const sprung =
    row.springback === null || springbackFactor === null
      ? 'not measured'
      : `${plainNumber(row.springback, 2)} ± ${plainNumber(row.springbackError, 2)} deg at 90 deg; factor ${plainNumber(springbackFactor.value, 4)}`;
  const head = `${paint(host, 'bold', row.name)}: ${row.material}, ${givenText(row.thickness, units)}, inside radius ${givenText(row.insideRadius, units)}; ${many(strips.length, 'strip')}\n`;
  const rows = [
    ['K', `${plainNumber(row.k, 4)} ± ${plainNumber(row.kError, 4)}`],
    ['allowance', size(allowance)],
    ['deduction', size(deduction)],
    ['springback', sprung],
  ];
  const signed = (v: number, d: number) => `${v < 0 ? '' : '+'}${plainNumber(v, d)}`;
  const each = strips.map((s) => [
    `  ${s.name}`,
    `K ${plainNumber(s.k, 3)}`,
    `deduction ${signed(s.deduction / per, digits)} ${units}`,
    s.springback === null ? '' : `opened ${plainNumber(s.springback, 2)} deg`,
    s.contradicts.length === 0 ? '' : 'contradicts',
  ]);
  return `${head}${table(rows)}each by itself, and its deduction against the fit:\n${table(each)}`;
}
