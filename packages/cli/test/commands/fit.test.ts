import { dirname } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CARRIER, carrierJob } from '../carrier.js';
import { tinwright, tinwrightInColour } from '../host.js';
import { stripJob } from '../jobs.js';
import { below, jobFile } from '../place.js';

/** Cells of a printed table: two blanks or more between columns. */
const cells = (line: string) => line.split(/ {2,}/);

describe('check prints how the parts fit', () => {
  test('a head, a row for every joint, then the count; exit 0, nothing written', async () => {
    const job = await jobFile(CARRIER);
    const { exit, out, err } = await tinwright('check', job);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    const lines = out.split('\n');
    expect(cells(lines[0] ?? '')).toEqual(['joint', 'clearance asked', 'found', 'between']);
    expect(lines.slice(1, 5).map((l) => cells(l)[0])).toEqual(['west', 'east', 'grip-west', 'grip-east']);
    // the base of the handle starts a setback, R + T, off the end it hangs on; 0.2 mm more at the other
    expect(cells(lines[3] ?? '')).toEqual(['grip-west', '0.2 mm', '2 mm', 'end-1.plate and handle.base']);
    expect(cells(lines[4] ?? '')[2]).toBe('2.2 mm');
    expect(out).toMatch(/\n3 parts, 4 pieces: nothing to note\.\n$/);
    expect(await below(dirname(job))).toEqual(['job.yaml']);
  });

  test('columns stand under each other', async () => {
    const { out } = await tinwright('check', await jobFile(CARRIER));
    const rows = out.split('\n').slice(0, 5);
    const starts = rows.map((r) => [...r.matchAll(/(?<= {2})\S/g)].map((m) => m.index).slice(0, 3));
    for (const row of starts) expect(row).toEqual(starts[0]);
  });

  test('in a job in inches, in inches', async () => {
    const inches = carrierJob(['units: mm', 'units: in'])
      .replace('thickness: 1.0', 'thickness: 1 mm')
      .replace(/(length|width|height|shoulderHeight|crownWidth|sideDepth|less): ([\d.]+)/g, '$1: $2 mm');
    const { exit, out, err } = await tinwright('check', await jobFile(inches));
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    // 0.2 mm asked, 2 mm found
    expect(out).toMatch(/^grip-west {2,}0\.008 in {2,}0\.079 in /m);
  });

  test('on a terminal with colours only the head is bold', async () => {
    const { out } = await tinwrightInColour('check', await jobFile(CARRIER));
    const lines = out.split('\n');
    expect(lines[0]).toContain('\u001b[1mjoint\u001b[0m');
    expect(lines.slice(1).join('\n')).not.toContain('\u001b');
  });

  test('--json gives the same in millimetres, with the gap between the faces', async () => {
    const { out } = await tinwright('check', await jobFile(CARRIER), '--json');
    const { fits, findings } = JSON.parse(out) as { fits: Record<string, unknown>[]; findings: unknown[] };
    expect(findings).toEqual([]);
    expect(fits).toHaveLength(4);
    expect(fits[3]).toMatchObject({ joint: 'grip-east', asked: 0.2, gap: expect.closeTo(0.2, 6) });
  });

  test('parts without joints: no table', async () => {
    const { out } = await tinwright('check', await jobFile(stripJob()));
    expect(out).toBe('1 part, 1 piece: nothing to note.\n');
  });
});

describe('parts that do not fit', () => {
  test('a handle too long: the loop and the clash are errors, exit 1', async () => {
    const job = await jobFile(carrierJob(['insideLength, less: 2.2', 'insideLength, less: 1']));
    const { exit, out, err } = await tinwright('check', job);
    expect({ exit, err }).toEqual({ exit: 1, err: '' });
    expect(out).toMatch(/^error handle: joint grip-east: .* the parts run 1 mm into each other$/m);
    expect(out).toMatch(/^error handle: end-2\.plate and .* are in the same place, 1 mm deep$/m);
    expect(out).toMatch(/2 findings\.\n$/);
  });

  test('make writes the files of such a job and says so; with --strict it does not', async () => {
    const text = carrierJob(['insideLength, less: 2.2', 'insideLength, less: 1']);
    const job = await jobFile(text);
    const out = `${dirname(job)}/out`;
    const made = await tinwright('make', job, '--out', out);
    expect(made.exit).toBe(1);
    expect(made.out).toMatch(/Written, but a finding is an error\.\n$/);
    expect(await below(out)).toContain('parts/handle.dxf');
    const strict = await tinwright('make', job, '--out', `${dirname(job)}/strict`, '--strict');
    expect(strict.exit).toBe(1);
    expect(strict.out).toContain('Nothing written');
    expect(await below(dirname(job))).not.toContain('strict');
  });

  test('less clearance than asked is a warning, exit 0', async () => {
    const job = carrierJob(['to: end-1.rim, by', 'to: end-1.rim, clearance: 5, by']);
    const { exit, out } = await tinwright('check', await jobFile(job));
    expect(exit).toBe(0);
    expect(out).toMatch(/^west {2,}5 mm /m);
    expect(out).toMatch(/^warning body: joint west: .* 5 mm asked for$/m);
  });
});
