import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { SECTIONS } from '@tinwright/paper';
import { LANGUAGES } from '@tinwright/words/internal';
import { describe, expect, test } from 'vitest';
import { type ReadDocument, readPdf } from '../../../../tests/kit/read-pdf.js';
import { packet, SECTION_NAMES } from '../../src/commands/packet.js';
import { LANGUAGE_TAGS } from '../../src/line/command.js';
import { type Ran, tinwright } from '../host.js';
import { stripJob } from '../jobs.js';
import { below, emptyFolder, jobFile } from '../place.js';

interface Printed extends Ran {
  readonly folder: string;
  readonly path: string;
}

/** Run `packet` on a strip, into a file or folder of its own. */
async function printed(name: string, ...options: readonly string[]): Promise<Printed> {
  return printedOf(stripJob(), name, ...options);
}
async function printedOf(content: string, name: string, ...options: readonly string[]): Promise<Printed> {
  const job = await jobFile(content);
  const folder = await emptyFolder();
  const path = join(folder, name);
  return { ...(await tinwright('packet', job, '--out', path, ...options)), folder, path };
}
const pdfAt = async (path: string): Promise<ReadDocument> => readPdf(new Uint8Array(await readFile(path)));
const saidIn = ({ pages }: ReadDocument) => pages.flatMap((p) => p.texts.map((t) => t.text)).join(' ');

test('sections and languages offered are those there are', () => {
  expect(SECTION_NAMES).toEqual(SECTIONS);
  expect(LANGUAGE_TAGS).toEqual(Object.keys(LANGUAGES));
  expect(packet.options.lang?.choices).toEqual(LANGUAGE_TAGS);
});

test('a name that ends in .pdf: that file, a line that says how many pages, exit 0', async () => {
  const { exit, out, err, folder, path } = await printed('strip.pdf');
  expect({ exit, err }).toEqual({ exit: 0, err: '' });
  expect(await below(folder)).toEqual(['strip.pdf']);
  const { pages, bookmarks } = await pdfAt(path);
  expect(out).toBe(`${pages.length} pages in ${path}.\n`);
  expect(bookmarks.map((b) => b.title)).toContain('Plan of bracket');
  expect(bookmarks.map((b) => b.title)).not.toContain('Joints plan');
});

test('a name that ends in .html: that file', async () => {
  const { exit, folder, path } = await printed('strip.html');
  expect(exit).toBe(0);
  expect(await below(folder)).toEqual(['strip.html']);
  expect(await readFile(path, 'utf8')).toMatch(/^<!DOCTYPE html>/);
});

test('any other name is a folder for both, replaced as a whole', async () => {
  const { exit, folder, path, out } = await printed('strip');
  const files = ['strip', 'strip/packet.html', 'strip/packet.json', 'strip/packet.pdf'];
  expect(exit).toBe(0);
  expect(await below(folder)).toEqual(files);
  expect(out).toMatch(/^\d+ pages in .*packet\.pdf and .*packet\.html\.\n$/);
  const again = await tinwright('packet', await jobFile(stripJob()), '--out', path);
  expect(again.exit).toBe(0);
  expect(await below(folder)).toEqual(files);
});

test('--json prints pages and files', async () => {
  const { out, path } = await printed('strip.pdf', '--json');
  const { pages } = await pdfAt(path);
  expect(JSON.parse(out)).toEqual({ out: path, pages: pages.length, files: [path] });
});

describe('options', () => {
  test('paper, dims, date, tolerance', async () => {
    const options = ['--paper', 'tabloid', '--dims', '1/16', '--date', '2026-04-01', '--tolerance', 'f'];
    const read = await pdfAt((await printed('strip.pdf', ...options)).path);
    for (const { width, height } of read.pages)
      expect([width, height].map((v) => v.toFixed(1)).toSorted()).toEqual(['279.4', '431.8']);
    const said = saidIn(read);
    expect(said).toContain('2026-04-01');
    expect(said).toContain('to the nearest 1/16');
    expect(said).toContain('ISO 2768-1 class f, bent sizes to class m');
  });

  test('sections, one or several', async () => {
    const { path } = await printed('strip.pdf', '--sections', 'cuts', '--sections', 'inspection');
    const titles = (await pdfAt(path)).bookmarks.map((b) => b.title);
    expect(titles).toEqual(['Parts and contents', 'Cautions: read first', 'Cut list', 'Inspection sheet']);
  });

  test('German', async () => {
    const read = await pdfAt((await printed('strip.pdf', '--lang', 'de')).path);
    expect(read.language).toBe('de');
    expect(saidIn(read)).toContain('Arbeitsgänge');
  });

  test('large print', async () => {
    const sizes = async (...more: readonly string[]) => {
      const { path } = await printed('strip.pdf', '--sections', 'cuts', '--paper', 'A3', ...more);
      return Math.min(...(await pdfAt(path)).pages.flatMap((p) => p.texts.map((t) => t.size)));
    };
    expect((await sizes('--large-print')) / (await sizes())).toBeCloseTo(3.5 / 2.5, 2);
  });

  test('worksheets for a class, answers last', async () => {
    const read = await pdfAt((await printed('strip.pdf', '--worksheet', '--sets', '2')).path);
    const titles = read.bookmarks.map((b) => b.title);
    expect(titles.slice(2)).toEqual(['Worksheets', 'Worksheet: bracket', 'Answers']);
    expect(read.bookmarks.at(-1)?.page).toBe(read.pages.length - 1);
  });

  test('a shop file: its name is printed, and its brake is not assumed', async () => {
    const shop = join(await emptyFolder(), 'shop.yaml');
    await writeFile(
      shop,
      (await tinwright('starter', 'shop')).out.replace(/^name:.*$/m, 'name: garden shed'),
    );
    const said = saidIn(await pdfAt((await printed('strip.pdf', '--shop', shop)).path));
    expect(said).toContain('For the machines of garden shed.');
    expect(saidIn(await pdfAt((await printed('strip.pdf')).path))).toContain('No shop was given.');
  });
});

describe('a packet for every size', () => {
  const sized = `${stripJob()}\nsizes:\n  - { name: low, bracket.width: 30 }\n  - { name: high, bracket.width: 50 }\n`;

  test('a file a row in a folder, each with its own sizes, as --size prints it', async () => {
    const { exit, out, path } = await printedOf(sized, 'all', '--sizes');
    expect(exit).toBe(0);
    expect(await below(path)).toEqual(['high.html', 'high.pdf', 'low.html', 'low.pdf', 'packet.json']);
    expect(out).toMatch(/^\d+ pages in 4 files in .*\.\n$/);
    const alone = await printedOf(sized, 'high.pdf', '--size', 'high');
    expect(await readFile(join(path, 'high.pdf'))).toEqual(await readFile(alone.path));
    expect(await readFile(join(path, 'low.pdf'))).not.toEqual(await readFile(alone.path));
  });

  test('more pieces than are laid out at once are refused, with what to do', async () => {
    const many = stripJob(
      ['thickness: 1.0', 'thickness: 1.0\n  sheets: [[1000, 500]]'],
      ['width: 40', 'width: 40\n    quantity: 10000'],
    );
    const { exit, err } = await printedOf(many, 'all.pdf', '--sets', '20');
    expect({ exit, err }).toEqual({
      exit: 2,
      err: 'cut list: 200000 pieces to cut given, up to 100000 allowed. Cut fewer sets, sizes or jobs at a time.\n',
    });
    const job = await jobFile(many);
    const shear = await tinwright(
      'shear',
      ...Array.from({ length: 11 }, () => job),
      '--out',
      await emptyFolder(),
    );
    expect({ exit: shear.exit, err: shear.err }).toEqual({
      exit: 2,
      err: 'shear: 110000 pieces to cut given, up to 100000 allowed. Cut fewer sets, sizes or jobs at a time.\n',
    });
  });

  test('where stock is known, it is said that each is cut alone', async () => {
    const stocked = sized.replace('thickness: 1.0', 'thickness: 1.0\n  sheets: [[1000, 500]]');
    const { out, err } = await printedOf(stocked, 'all', '--sizes');
    expect(err).toBe('');
    expect(out).toContain('tinwright shear --sizes cuts all of them together');
  });

  test.each([
    [['--sizes', '--size', 'low'], sized, 'all', '--sizes and --size given; one of the two allowed'],
    [['--sizes', '--measured', 'bracket.legs.0=20'], sized, 'all', '--sizes and --measured given'],
    [['--sizes'], sized, 'all.pdf', 'all.pdf" given, a folder allowed with --sizes'],
    [['--sizes'], stripJob(), 'all', 'has no sizes:'],
    [
      ['--sizes'],
      sized.replace('width: 30', 'width: { from: 21, to: 80, step: 1 }'),
      'all',
      'over 50 rows given, 50 allowed',
    ],
    [
      ['--sizes', '--sections', 'joints'],
      sized,
      'all',
      'packet of "low": --sections: a joints plan is asked for',
    ],
    [['--sizes'], sized.replace('width: 50', 'width: 50000'), 'all', 'sizes[1]: width: 50000 mm given'],
  ] as const)('%j is refused, nothing written', async (options, content, name, message) => {
    const { exit, err, folder } = await printedOf(content, name, ...options);
    expect(err).toContain(message);
    expect(exit).toBe(2);
    expect(await below(folder)).toEqual([]);
  });

  test('a job’s sizes that are left out are told', async () => {
    const { err, exit } = await printedOf(sized, 'one.pdf', '--sections', 'cuts');
    expect({ err, exit }).toEqual({
      err: expect.stringMatching(
        /: its rows under sizes: are left out; --size NAME takes one, --sizes all\.\n$/,
      ),
      exit: 0,
    });
    expect((await printedOf(sized, 'one.pdf', '--sections', 'cuts', '--json')).err).toBe('');
  });
});

describe('refused, nothing written', () => {
  test.each([
    [['--paper', 'A9'], /^packet: --paper: "A9" given\. Known: A4, letter, A3, tabloid\.\n$/],
    [['--dims', '1/10'], /^packet: --dims: "1\/10" given\. Known: /],
    [['--lang', 'xx'], /^packet: --lang: "xx" given\. Known: en, de\.\n$/],
    [['--sets', '0'], /^packet: --sets: "0" given, a whole number from 1 to 500 allowed\.\n$/],
    [['--sets', '2.5'], /^packet: --sets: "2\.5" given, /],
    [['--sections', 'cut'], /^packet: --sections: "cut" given\. Did you mean "cuts"\?/],
    [
      ['--sections', 'joints'],
      /^packet: --sections: a joints plan is asked for, and the job has no joints\. Give joints: /,
    ],
    [
      ['--worksheet', '--sections', 'cuts'],
      /^packet: --worksheet and --sections given; one of the two allowed\.\n$/,
    ],
    [['--blank', 'B1'], /^packet: --blank is for --worksheet\.\n$/],
    [
      ['--worksheet', '--blank', 'B3'],
      /^packet: --blank: "B3" given\. Did you mean "B\d"\? Known: B1, B2, leg-2, leg-3\.\n$/,
    ],
    [['--shop', 'nowhere.yaml'], /^nowhere\.yaml:1:1: there is no such file\.\n$/],
  ] as const)('%j', async (options, message) => {
    const { exit, err, folder } = await printed('strip.pdf', ...options);
    expect(err).toMatch(message);
    expect(exit).toBe(2);
    expect(await below(folder)).toEqual([]);
  });

  test('paper too small for a pattern is named with one that would do', async () => {
    const legs = Array.from({ length: 40 }, () => 8).join(', ');
    const angles = Array.from({ length: 39 }, (_, i) => (i % 2 === 0 ? 60 : -60)).join(', ');
    const crowded = stripJob(
      ['legs: [30, 60, 30]', `legs: [${legs}]`],
      ['angles: [90, 90]', `angles: [${angles}]`],
    );
    const { exit, err } = await printedOf(crowded, 'strip.pdf', '--sections', 'plans');
    expect(exit).toBe(2);
    expect(err).toMatch(
      /^packet: part "bracket": --paper: A4 given, too small for a blank of .* Use A3\.\n$/,
    );
  });

  test('a file of somebody else’s is told before anything is drawn', async () => {
    const folder = await emptyFolder();
    await writeFile(join(folder, 'thesis.pdf'), 'mine');
    const ask = ['packet', await jobFile(stripJob()), '--sections', 'joints'];
    for (const [name, says] of [
      ['thesis.pdf', 'is there and not as tinwright wrote it'],
      ['.', 'holds files that are not from tinwright'],
    ] as const) {
      const { exit, err } = await tinwright(...ask, '--out', join(folder, name));
      expect({ exit, err }).toEqual({ exit: 3, err: expect.stringContaining(says) });
    }
    expect(await below(folder)).toEqual(['thesis.pdf']);
  });

  test('a folder that is a file', async () => {
    const file = await jobFile('');
    const { exit, err } = await tinwright(
      'packet',
      await jobFile(stripJob()),
      '--out',
      join(file, 'strip.pdf'),
    );
    expect(exit).toBe(3);
    expect(err).toMatch(/cannot be written: part of the path is a file/);
  });
});

test('a name in letters the standard fonts lack is written in another font, and read back', async () => {
  const { exit, path } = await printedOf(
    `name: Садовая полка\n${stripJob()}`,
    'strip.pdf',
    '--sections',
    'cuts',
  );
  expect(exit).toBe(0);
  const read = await pdfAt(path);
  expect(read.title).toBe('Садовая полка: packet');
  expect(saidIn(read)).toMatch(/С ?а ?д ?о ?в ?а ?я/);
});
