import { realpath } from 'node:fs/promises';
import { type Finding, plainNumber, saidIn, stripOf, type Unit } from '@tinwright/core';
import type { Estimate, Shop, StripFit } from '@tinwright/shop';
import { type Host, many, paint, table } from './console.js';
import { EXIT, type ExitCode, refuse, writing } from './failure.js';
import { findingLines, worst } from './findings.js';
import { openShop } from './open-shop.js';
import { bytesOf, STANDARD_INPUT, withText } from './open-text.js';
import { givenText } from './size-text.js';
import { rowData, withRow } from './strip-row-text.js';

/** Fit measured strips, say what came out, and keep it in the shop file that was given, unless strips contradict. */
export async function fitStrip(
  host: Host,
  file: string,
  shopFile: string | undefined,
  json: boolean,
): Promise<ExitCode> {
  const { fitFindings, FIT_METHOD, fitStrips, readMeasured } = await import('@tinwright/shop');
  if (shopFile === STANDARD_INPUT)
    return refuse(host, json, 'usage', 'strip', '--shop: a file is needed, to keep the result in');
  const opened = await withText(host, file, 'strips', json, (data) => {
    const measured = readMeasured(data);
    return { measured, fit: fitStrips(measured) };
  });
  if ('exit' in opened) return opened.exit;
  const { fit, measured } = opened.answer;
  const findings = fitFindings(fit, measured).map((f) => saidIn(measured.units, f));
  const wrong = worst(findings) === 'error';
  const kept = wrong || shopFile === undefined ? null : await keep(host, shopFile, fit, json);
  if (kept !== null && kept !== EXIT.done) return kept;
  if (json) {
    const stored = kept === EXIT.done ? shopFile : null;
    host.out(`${JSON.stringify({ unit: 'mm', ...fit, method: FIT_METHOD, findings, stored }, null, 2)}\n`);
  } else {
    host.out(`${fitText(host, fit, measured.units)}${FIT_METHOD}.\n`);
    for (const line of findingLines(host, findings)) host.out(`${line}\n`);
    host.out(ending(fit, shopFile, findings, measured.units));
  }
  return wrong ? EXIT.findings : EXIT.done;
}

function ending(
  { row }: StripFit,
  shopFile: string | undefined,
  findings: readonly Finding[],
  units: Unit,
): string {
  if (findings.some((f) => f.code === 'strip-contradicts'))
    return 'Not kept: strips contradict each other.\n';
  if (worst(findings) === 'error') return 'Not kept: strips contradict what they were set to.\n';
  const use = 'Jobs take it by rule: test-strip and --shop.\n';
  if (shopFile !== undefined) return `Kept as ${JSON.stringify(row.name)} in ${shopFile}. ${use}`;
  return `To keep it, give --shop FILE, or write under strips: of your shop file:\n  - ${JSON.stringify(rowData(row, units))}\n${use}`;
}

function fitText(
  host: Host,
  { row, allowance, deduction, springbackFactor, strips }: StripFit,
  units: Unit,
): string {
  const per = units === 'mm' ? 1 : 25.4;
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

/** Put the row in the shop file: in the place of one of that name or metal, or behind the others. */
async function keep(host: Host, file: string, { row }: StripFit, json: boolean): Promise<ExitCode> {
  const opened = await openShop(host, file, json);
  if ('exit' in opened) return opened.exit;
  const { units, strips }: Shop = opened.shop;
  const same = stripOf(strips, row.material, row);
  const at = strips.findIndex((s) => s.name === row.name || s === same);
  const text = new TextDecoder().decode(await bytesOf(host, file, 'shop'));
  const fresh = withRow(text, rowData(row, units), at < 0 ? null : at);
  const { writeOne } = await import('./files.js');
  return writing(host, json, async () => writeOne(await realpath(file), fresh)); // a link stays one
}
