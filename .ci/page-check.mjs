// The page in a real browser, worked as a person would: page-check.mjs FOLDER [EDITS]. Pictures of five states and what was
// saved stay in the folder for eyes and for the auditors of files.
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { classroom, embedded } from './page-class.mjs';
import {
  accessible,
  box,
  expect,
  saved,
  shot,
  tinwright,
  total,
  type,
  until,
  withJobPage,
} from './page-driver.mjs';
import { hostile, random } from './page-hostile.mjs';
import { byKeys, linked, places, printed } from './page-looks.mjs';
import { ready, root } from './ready.mjs';

ready();
process.chdir(root);
const [folder, edits = '1000'] = process.argv.slice(2);
const SEED = Number(process.env.TINWRIGHT_SEED ?? new Date().toISOString().slice(0, 10).replaceAll('-', ''));
mkdirSync(folder, { recursive: true });
const JOB = 'examples/harvest-carrier.yaml';

const blank = (page) => total(page, 'Blank body');

async function sizes(page) {
  const before = await blank(page);
  await shot(page, folder, '1-opened');
  await type(page, 'body', 'length', '420');
  await until(
    async () => (await blank(page)) === '456.46 × 335.1 mm',
    'a body 20 mm longer has a blank 20 mm longer',
  );
  await type(page, 'body', 'length', '16 1/2 in');
  await until(
    async () => (await blank(page)).startsWith('455.56'),
    'a size in inches is read in a job in mm',
  );
  await page.keyboard.press('Control+z');
  await until(
    async () => (await blank(page)) === before,
    'undo takes what was typed in one field back at once',
  );
  await page.keyboard.press('Control+y');
  await until(async () => (await blank(page)).startsWith('455.56'), 'redo brings it again');
  await page.keyboard.press('Control+z');
  await type(page, 'body', 'height', '9');
  await page.locator('fieldset.part button.take').first().waitFor();
  await shot(page, folder, '2-refused');
  await page.locator('fieldset.part button.take').first().click();
  await until(
    async () => (await page.locator('[role=alert]').count()) === 0,
    'a click takes the size that works',
  );
  await page.keyboard.press('Control+z');
  await type(page, 'body', 'height', '55');
}

async function folds(page) {
  const slider = page.getByRole('slider');
  await slider.waitFor();
  const finished = await page.locator('canvas').first().screenshot();
  await slider.fill('0');
  await until(
    async () => !finished.equals(await page.locator('canvas').first().screenshot()),
    'laid flat it looks other',
  );
  await slider.fill('4.5');
  await page.locator('.paper svg').waitFor();
  await page.waitForTimeout(500);
  await shot(page, folder, '3-folding');
  await page.getByRole('button', { name: 'One bend on' }).click();
  await until(
    async () => /^5 of 8/.test(await page.locator('strong', { hasText: 'bends made' }).textContent()),
    'it folds bend by bend',
  );
  await slider.fill('8');
}

async function files(page) {
  const make = join(folder, 'make');
  tinwright('make', JOB, '--out', make, '--pictures', '--shop', 'default');
  const same = async (what, file) => {
    const path = join(folder, `saved-${what}`);
    await saved(page, what, path);
    expect(readFileSync(path).equals(readFileSync(join(make, file))), `${what} saved: the command's bytes`);
  };
  await same('r2000', 'parts/body.dxf');
  await same('svg', 'parts/body.svg');
  await same('glb', 'assembly.glb');
  const zip = join(folder, 'all.zip');
  await saved(page, 'all', zip);
  const all = join(folder, 'all');
  execFileSync('/usr/bin/python3', ['-m', 'zipfile', '-e', zip, all]);
  execFileSync('diff', ['-r', '-q', join(make, 'parts'), join(all, 'parts')]);
  for (const file of ['job.json', 'job.yaml', 'packet.pdf', 'plans/body.pdf', 'assembly.glb'])
    expect(readFileSync(join(all, file)).length > 500, `everything holds ${file}`);
  // the command knows the sheets of the shop, the page none yet: it lists no cuts
  const parts = (path) => {
    const { cutList, files, ...rest } = JSON.parse(readFileSync(path, 'utf8'));
    return JSON.stringify(rest);
  };
  expect(parts(join(all, 'job.json')) === parts(join(make, 'job.json')), "the manifest is the command's");
}

async function refit(page) {
  await page.getByLabel('Measured size').selectOption('body.insideWidth');
  await page.getByLabel('is mm').fill('197.6');
  await page.locator('table.changes').waitFor();
  const changed = await page.locator('table.changes tr.changed').count();
  expect(changed > 0, `what a measure changes is listed: ${changed} sizes`);
  const marks = page.locator('fieldset.part mark');
  expect(
    (await marks.allTextContents()).some((t) => t.includes('to cut anew')) && (await marks.count()) > 1,
    'and marked, at the fields and at the parts to cut anew',
  );
  await shot(page, folder, '4-refit');
  await page.getByRole('button', { name: 'Take it over' }).click();
  await page.getByText('Job as text').click();
  const text = await page.getByLabel('Job as text').inputValue();
  expect(text.includes('body.insideWidth: 197.6'), 'taken over it stands in the text of the job');
  expect(text.includes('# end-1 and end-2'), 'comments stay');
  await until(async () => (await page.locator('table.changes tr.measured').count()) === 1, 'and in the list');
  await page.getByLabel('Job as text').fill(text.replace('length: 400', 'length: 410'));
  await until(
    async () => (await box(page, 'body', 'length').inputValue()) === '410',
    'the fields follow the text',
  );
}

async function units(page) {
  const of = () => total(page, 'Blank');
  await until(async () => (await of()).startsWith('446.46'), 'the blank of the text that was written'); // 36.46 for tabs
  const before = await of();
  await page.getByLabel('Units').selectOption('in');
  await until(async () => (await of()).endsWith(' in'), 'the job in inches');
  await page.getByLabel('Units').selectOption('mm');
  await until(async () => (await of()) === before, 'and back in mm, the same');
  await page.getByLabel('Language').selectOption('de');
  await page.getByRole('heading', { name: 'Maße' }).waitFor();
  await page.locator('.family', { hasText: 'Kanal' }).first().waitFor(); // families speak German too
  await accessible(page, 'German');
  await page.getByLabel('Sprache').selectOption('en');
}

/** Someone who never saw it makes the example 20 mm longer, sees it fold, and has the cut files on disk. */
async function firstTime(page) {
  const start = Date.now();
  await box(page, 'body', 'length').click({ clickCount: 3 });
  await page.keyboard.type('420');
  await until(async () => (await blank(page)) === '456.46 × 335.1 mm', 'click 1: 20 mm longer');
  const watch = page.getByRole('button', { name: 'Watch it fold' });
  await watch.click();
  expect(await watch.isHidden(), 'click 2: it folds');
  await page.getByText('3 of 8 bends made').waitFor();
  await shot(page, folder, '6-first-time');
  await page.getByText('8 of 8 bends made').waitFor();
  const zip = join(folder, 'longer.zip');
  await saved(page, 'all', zip);
  const seconds = ((Date.now() - start) / 1000).toFixed(1);
  execFileSync('/usr/bin/python3', ['-m', 'zipfile', '-e', zip, join(folder, 'longer')]);
  const job = JSON.parse(readFileSync(join(folder, 'longer/job.json'), 'utf8'));
  expect(
    JSON.stringify(job).includes('456.4') && readFileSync(join(folder, 'longer/parts/body.dxf')).length > 0,
    `click 3: the cut files are on disk, ${seconds} s after the first click`,
  );
}

/** Parts come, of another family, and go with the joints they had. */
async function parts(page) {
  const names = async () => (await page.locator('fieldset.part legend button').allTextContents()).join();
  await page.getByLabel('Add a part').selectOption('gusset-end');
  await until(async () => (await names()) === 'body,end,handle,end-b', 'a part is added');
  const list = page.getByRole('button', { name: 'Add one: on', exact: true });
  expect((await list.count()) === 1, 'a list of single values has a field');
  await until(
    async () => (await total(page, 'Blank end-b')).includes('×'),
    'of the family chosen, and it is the one shown',
  );
  await page.getByRole('button', { name: 'Remove handle' }).click();
  await until(async () => (await total(page, 'Fasteners')) === '18', 'a part removed takes its joints along');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await until(async () => (await names()) === 'body,end,handle', 'and undo brings it again');
}

/** One file, small, that asks nobody for anything and keeps nothing. */
async function file(page, path) {
  const html = readFileSync(path);
  const packed = gzipSync(html).length;
  expect(packed <= 700_000, `one file of ${Math.round(packed / 1000)} kB gzipped`);
  const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html.toString())?.[1] ?? '';
  expect(
    policy.startsWith("default-src 'none'; script-src 'sha256-") && !policy.includes('unsafe'),
    'under a policy that allows its own script and style alone',
  );
  const kept = await page.evaluate(async () => [
    Object.keys(globalThis.localStorage).length,
    Object.keys(globalThis.sessionStorage).length,
    (await globalThis.indexedDB.databases()).length,
    globalThis.document.cookie.length,
  ]);
  expect(
    kept.every((n) => n === 0),
    'nothing is stored',
  );
}

/** A job with a part of every family, its example: all have their fields, and the page shows each. */
async function everyFamily() {
  const { FAMILIES } = await import('../packages/core/dist/index.js');
  const parts = FAMILIES.map(({ name, describe }) => ({ name, family: name, ...describe.example }));
  const every = join(folder, 'every.yaml');
  const stock = { material: 'mild-steel', thickness: 1 };
  writeFileSync(every, JSON.stringify({ name: 'every family', units: 'mm', stock, parts }));
  await withJobPage({ folder, job: every }, async (page) => {
    await page.waitForFunction(() => document.querySelector('main [aria-busy]') === null);
    const bare = await page.locator('fieldset.part:not(:has(.about))').count();
    const all = page.locator('fieldset.part');
    expect(
      (await all.count()) === FAMILIES.length && bare === 0,
      `${FAMILIES.length} families have their fields`,
    );
    for (const { name } of FAMILIES) {
      await all.getByRole('button', { name, exact: true }).click();
      await page.locator('h2#flat', { hasText: name }).waitFor();
    }
    expect((await page.locator('[role=alert]').count()) === 0, 'and each is shown');
  });
}

process.stdout.write('page\n');
await withJobPage({ folder, job: JOB }, async (page, { file: path, first }) => {
  process.stdout.write(`  first picture ${first} ms after opening\n`);
  await page.getByRole('slider').waitFor();
  await accessible(page, 'light');
  await files(page);
  await file(page, path);
  await linked(page);
  await places(page);
  await sizes(page);
  await parts(page);
  await folds(page);
  await printed(page, folder);
  await refit(page);
  await units(page);
});
await withJobPage({ folder, job: JOB }, async (page, { file: path }) => {
  await page.getByRole('slider').waitFor();
  await firstTime(page);
  await page.keyboard.press('Control+z');
  await byKeys(page);
  await hostile(page, path);
});
if (edits !== '0') await withJobPage({ folder, job: JOB }, (page) => random(page, Number(edits), SEED));
await withJobPage(
  {
    folder,
    job: JOB,
    args: ['--lang', 'de'],
    viewport: { width: 320, height: 640 },
    colorScheme: 'dark',
    reducedMotion: 'reduce',
    hasTouch: true,
  },
  async (page) => {
    await page.getByRole('slider').waitFor();
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide <= 320, 'a phone 320 px wide scrolls one way only', String(wide));
    await accessible(page, 'dark, German, on a phone');
    await page.getByLabel('Sprache').selectOption('en');
    await page.getByRole('slider').waitFor();
    await accessible(page, 'dark, English, on a phone');
    await page.evaluate(() => globalThis.scrollTo(0, 900));
    const totals = await page.locator('.totals').boundingBox();
    expect(totals.y >= 0 && totals.y < 100, 'its numbers stay in sight');
    await page.getByRole('button', { name: 'Watch it fold' }).click();
    const seen = await page.getByRole('slider').evaluate(async (slider) => {
      const values = [];
      for (let i = 0; i < 40; i++) {
        values.push(Number(slider.value));
        await new Promise((done) => setTimeout(done, 100));
      }
      return values;
    });
    expect(
      seen.every(Number.isInteger) && new Set(seen).size > 2,
      'who wants no motion sees it fold a bend at a time',
      String(seen),
    );
    await shot(page, folder, '5-phone');
  },
);
await everyFamily();
await classroom(folder, JOB);
await embedded(join(folder, 'site'), JOB);
writeFileSync(join(folder, 'done'), '');
