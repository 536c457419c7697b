import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { PAPERS, PATTERN_SCALES } from '@tinwright/paper';
import { DIMS_NAMES } from '@tinwright/paper/internal';
import { describe, expect, test } from 'vitest';
import { readPdf } from '../../../../tests/kit/read-pdf.js';
import { DIMS, PAPER_NAMES } from '../../src/commands/drawing.js';
import { plan } from '../../src/commands/plan.js';
import { tinwright } from '../host.js';
import { HEAD, STRIP, stripJob } from '../jobs.js';
import { below, emptyFolder, jobFile } from '../place.js';

/** Run `plan` on a job, into a folder of its own. */
async function planned(content: string, ...options: readonly string[]) {
  const job = await jobFile(content);
  const out = join(await emptyFolder(), 'out');
  const ran = await tinwright('plan', job, '--out', out, ...options);
  return { ...ran, folder: out };
}
const textsOf = async (path: string) =>
  (await readPdf(new Uint8Array(await readFile(path)))).pages.flatMap((p) => p.texts.map((t) => t.text));

test('papers, dims and scales offered are those there are', () => {
  expect(PAPER_NAMES).toEqual(PAPERS.map((p) => p.name));
  expect(DIMS).toEqual(DIMS_NAMES);
  expect(plan.options.scale?.choices).toEqual(PATTERN_SCALES.map((s) => s.text));
});

test('a plan of a strip: PDF and SVG, a line that says scale and pages, exit 0', async () => {
  const { exit, out, err, folder } = await planned(stripJob());
  expect({ exit, err }).toEqual({ exit: 0, err: '' });
  expect(await below(folder)).toEqual(['plans', 'plans.json', 'plans/bracket-1.svg', 'plans/bracket.pdf']);
  expect(out).toBe(`bracket  1:1  1 page  plans/bracket.pdf\n3 files in ${folder}.\n`);
  const texts = await textsOf(join(folder, 'plans/bracket.pdf'));
  // bend lines of 30 + 60 + 30 less two deductions of 1.77
  for (const size of ['29.1', '87.3', '116.5']) expect(texts).toContain(size);
});

test('--lang de: the plan speaks German', async () => {
  const { folder } = await planned(stripJob(), '--lang', 'de');
  const read = await readPdf(new Uint8Array(await readFile(join(folder, 'plans/bracket.pdf'))));
  expect(read.language).toBe('de');
  expect(read.pages.flatMap((p) => p.texts.map((t) => t.text)).join(' ')).toMatch(/hoch 90°/);
});

test('--json prints folder, parts and files', async () => {
  const { out, folder } = await planned(stripJob(), '--json');
  const paths = ['plans/bracket.pdf', 'plans/bracket-1.svg', 'plans.json'];
  expect(JSON.parse(out)).toEqual({
    out: folder,
    parts: [
      {
        name: 'bracket',
        pages: 1,
        scale: '1:1',
        pdf: 'plans/bracket.pdf',
        svg: ['plans/bracket-1.svg'],
        // 30 less half a deduction from both ends, across the whole blank of 40 wide
        marking: [
          {
            kind: 'parallel',
            set: expect.closeTo(29.115, 2),
            from: ['west', 'east'],
            angle: null,
            strokes: expect.any(Array),
            for: ['bend leg-2', 'bend leg-3'],
          },
        ],
      },
    ],
    files: paths,
  });
});

test('a job in mm is drawn in mm on A4, one in inches in inches on letter, unless asked otherwise', async () => {
  const inches = stripJob(
    ['units: mm', 'units: in'],
    ['thickness: 1.0', 'thickness: 1 mm'],
    ['insideRadius: 1.0', 'insideRadius: 1 mm'],
    ['width: 40', 'width: 2'],
    ['legs: [30, 60, 30]', 'legs: [1, 3, 1]'],
  );
  const svg = async (content: string, ...options: readonly string[]) =>
    readFile(join((await planned(content, ...options)).folder, 'plans/bracket-1.svg'), 'utf8');
  const [metric, imperial, asked] = [
    await svg(stripJob()),
    await svg(inches),
    await svg(inches, '--dims', '1/32', '--paper', 'A3'),
  ];
  expect(metric).toMatch(/width="(210|297)mm"/);
  expect(metric).toContain('must measure 100 mm');
  expect(imperial).toMatch(/width="(215\.9|279\.4)mm"/);
  expect(imperial).toContain('must measure 4 in');
  expect(asked).toMatch(/width="(297|420)mm"/);
  expect(asked).toContain('to the nearest 1/32');
});

test('--part draws one part, an unknown one is refused with its nearest name', async () => {
  const two = `${HEAD}${STRIP}${STRIP.replace('bracket', 'stay')}`;
  expect(await below((await planned(two, '--part', 'stay')).folder)).toContain('plans/stay.pdf');
  const { exit, err, folder } = await planned(two, '--part', 'stray');
  expect(exit).toBe(2);
  expect(err).toMatch(/^plan: part "stray" given\. .*"stay"/);
  expect(await below(join(folder, '..'))).toEqual([]);
});

test('a date, a tolerance class and a scale are printed', async () => {
  const { folder } = await planned(stripJob(), '--date', '2026-04-01', '--tolerance', 'c', '--scale', '1:2');
  const texts = (await textsOf(join(folder, 'plans/bracket.pdf'))).join(' ');
  expect(texts).toContain('2026-04-01');
  expect(texts).toContain('ISO 2768-1 c');
  expect(texts).toContain('Pattern 1:2');
});

describe('refused, nothing written', () => {
  test.each([
    [['--paper', 'A9'], /^plan: --paper: "A9" given\. Known: A4, letter, A3, tabloid\.\n$/],
    [['--dims', '1/10'], /^plan: --dims: "1\/10" given\. Known: mm, in, 1\/8, 1\/16, 1\/32, 1\/64\.\n$/],
    [['--scale', '1:7'], /^plan: --scale: "1:7" given\. Known: /],
    [
      ['--scale', '5:1'],
      /^plan: part "bracket": --scale: 5:1 given; .* does not fit on A4 at it.*\. Use 1:1\.\n$/,
    ],
  ] as const)('%j', async (options, message) => {
    const { exit, err, folder } = await planned(stripJob(), ...options);
    expect(exit).toBe(2);
    expect(err).toMatch(message);
    expect(await below(join(folder, '..'))).toEqual([]);
  });

  test('paper too small for a pattern is named with one that would do, also for a program', async () => {
    const legs = Array.from({ length: 40 }, () => 8).join(', ');
    const angles = Array.from({ length: 39 }, (_, i) => (i % 2 === 0 ? 60 : -60)).join(', ');
    const crowded = stripJob(
      ['legs: [30, 60, 30]', `legs: [${legs}]`],
      ['angles: [90, 90]', `angles: [${angles}]`],
    );
    const { exit, err } = await planned(crowded);
    expect(exit).toBe(2);
    expect(err).toMatch(/^plan: part "bracket": --paper: A4 given, too small for a blank of .* Use A3\.\n$/);
    const json = JSON.parse((await planned(crowded, '--json')).out);
    expect(json.problems).toMatchObject([
      { code: 'paper-small', part: 'bracket', path: '--paper', fix: 'Use A3' },
    ]);
  });
});

test('--measured: the part that follows is drawn to what was measured; a size written wrong is told', async () => {
  const carrier = await readFile(
    new URL('../../../../examples/harvest-carrier.yaml', import.meta.url),
    'utf8',
  );
  const { exit, folder } = await planned(carrier, '--part', 'end', '--measured', 'body.insideWidth=197');
  expect(exit).toBe(0);
  // a millimetre narrower than the job has it
  const texts = await readFile(join(folder, 'plans/end-1.svg'), 'utf8');
  expect(texts).toContain('>194.6<');
  expect(texts).not.toContain('>195.6<');
  const wrong = await planned(carrier, '--measured', 'body', '--json');
  expect(wrong.exit).toBe(2);
  expect(wrong.out).toContain('write PART.SIZE=LENGTH');
});
