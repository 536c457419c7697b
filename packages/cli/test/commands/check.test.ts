import { dirname } from 'node:path';
import { expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { HEAD, STRIP, stripJob } from '../jobs.js';
import { below, jobFile } from '../place.js';

test('a sound job: parts and pieces counted, nothing to note, nothing written', async () => {
  const job = await jobFile(`${HEAD}${STRIP}    quantity: 3\n${STRIP.replace('bracket', 'clip')}`);
  const { exit, out, err } = await tinwright('check', job);
  expect(exit).toBe(0);
  expect(err).toBe('');
  expect(out).toBe('2 parts, 4 pieces: nothing to note.\n');
  expect(await below(dirname(job))).toEqual(['job.yaml']);
});

test('a tight radius is a warning: told with limit, fix and source, exit 0', async () => {
  const { exit, out } = await tinwright('check', await jobFile(stripJob(['Radius: 1.0', 'Radius: 0.5'])));
  expect(exit).toBe(0);
  // DIN 6935 (1975-10): 1 mm least inside radius up to 1 mm of mild steel
  expect(out).toMatch(/^warning bracket: inside radius 0\.5 mm .* 1 mm is the least/);
  expect(out).toContain('fix: bend to 1 mm inside');
  expect(out).toContain('DIN 6935');
  expect(out).toMatch(/1 finding\.\n$/);
});

test('in German: the words of the finding and those around it, numbers with a comma', async () => {
  const job = await jobFile(stripJob(['Radius: 1.0', 'Radius: 0.5']));
  const { out } = await tinwright('check', job, '--lang', 'de');
  expect(out).toMatch(/^Warnung bracket: .*0,5 mm/);
  expect(out).toMatch(/^ {2}Abhilfe: /m);
  expect(out).toMatch(/^1 Teil, 1 Stück: 1 Befund\.$/m);
});

test('--json gives the findings, and no fits where nothing is joined', async () => {
  const { out } = await tinwright('check', await jobFile(stripJob(['Radius: 1.0', 'Radius: 0.5'])), '--json');
  const { findings, ...rest } = JSON.parse(out);
  expect(rest).toEqual({ fits: [] });
  expect(findings).toMatchObject([{ code: 'radius-small', severity: 'warning', value: 0.5, limit: 1 }]);
});

test('the nominal rule says how much sizes grow: the deduction of a bend at the K of the material', async () => {
  const nominal = stripJob(['rule: k-factor\n  k: 0.42', 'rule: nominal']);
  const { out } = await tinwright('check', await jobFile(nominal), '--json');
  const [note] = JSON.parse(out).findings;
  expect(note).toMatchObject({ code: 'no-compensation', severity: 'note' });
  // Machinery's Handbook, 31st ed., p. 1421, medium group: allowance 0.64·T + 1.57·R at 90 degrees, about
  expect(note.value).toBeCloseTo(4 - (0.64 + 1.57), 2);
});

test('problems with --json are a list with file, line, column, path and fix, exit 2', async () => {
  const job = await jobFile(stripJob(['width:', 'widht:']));
  const { exit, out, err } = await tinwright('check', job, '--json');
  expect(exit).toBe(2);
  expect(err).toBe('');
  const { problems, ...rest } = JSON.parse(out);
  expect(rest).toEqual({});
  expect(problems).toMatchObject([
    { file: job, line: 10, column: 5, code: 'value-missing', path: 'parts[0].width' },
    { file: job, line: 12, column: 5, code: 'key-unknown', path: 'parts[0].widht' },
  ]);
  expect(problems[1].fix).toContain('Did you mean "width"?');
});
