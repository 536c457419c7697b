// The page in a real browser, worked as a person would: page-check.mjs FOLDER [EDITS]. Pictures of five states and what was
// saved stay in the folder for eyes and for the auditors of files.
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { box, saved, tinwright, total, type, withJobPage } from './page-driver.mjs';
import { ready, root } from './ready.mjs';

ready();
process.chdir(root);
const [folder, edits = '300'] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const JOB = 'examples/harvest-carrier.yaml';
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

function expect(truth, title, seen = '') {
  if (!truth) throw new Error(`not true: ${title} ${seen}`);
  process.stdout.write(`  ${title}\n`);
}

/** Wait until something holds. */
async function until(what, title) {
  for (let i = 0; i < 600; i++) {
    if (await what()) return expect(true, title);
    await new Promise((done) => setTimeout(done, 200));
  }
  return expect(false, title);
}

const shot = (page, name) => page.screenshot({ path: join(folder, `${name}.png`), fullPage: true });

/** What axe-core has against the page as it stands. */
async function accessible(page, title) {
  // the page's policy lets nothing in from a tag; the browser itself may
  await page.evaluate(AXE);
  const found = await page.evaluate(async () => {
    const { violations } = await globalThis.axe.run(document);
    return violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.target.join(' ')).slice(0, 3)}`);
  });
  expect(found.length === 0, `nothing against it for accessibility: ${title}`, found.join('\n'));
}

const blank = (page) => total(page, 'Blank body');

async function sizes(page) {
  const before = await blank(page);
  await shot(page, '1-opened');
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
  await shot(page, '2-refused');
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
  await shot(page, '3-folding');
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
  await shot(page, '4-refit');
  await page.getByRole('button', { name: 'Take it over' }).click();
  await page.getByText('Job as text').click();
  const text = await page.getByLabel('Job as text').inputValue();
  expect(text.includes('body.insideWidth: 197.6'), 'taken over it stands in the text of the job');
  expect(text.includes('# end-1 and end-2'), 'comments stay');
  await page.getByLabel('Job as text').fill(text.replace('length: 400', 'length: 410'));
  await until(
    async () => (await box(page, 'body', 'length').inputValue()) === '410',
    'the fields follow the text',
  );
}

async function units(page) {
  const of = () => total(page, 'Blank');
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

async function hostile(page, file) {
  await page.getByRole('button', { name: 'Link to this job' }).click();
  await until(async () => page.url().includes('#job='), 'a link carries the job');
  const area = page.getByLabel('Job as text');
  const good = await area.inputValue();
  for (const bad of [
    good.replace('name: body', 'name: "<img src=x onerror=alert(1)>"'),
    good.replace('height: 55', 'height: 1e9'),
    '[[[[[[[[[[',
    'a: &a [x]\nb: [*a, *a]\nparts: {__proto__: {polluted: 1}}',
    '',
  ]) {
    await area.fill(bad);
    await page.locator('[role=alert]').first().waitFor();
    expect(
      (await page.locator('img').count()) === 0,
      `refused and said so: ${JSON.stringify(bad.slice(0, 30))}`,
    );
  }
  await area.fill(good);
  await until(async () => (await page.locator('[role=alert]').count()) === 0, 'and it goes on afterwards');
  await page.goto(`${pathToFileURL(file).href}#job=${'A'.repeat(1_900_000)}`);
  await page.getByText('carries no job that can be read').waitFor();
  expect(true, 'a fragment of nearly 2 MB, all that Chromium lets in, is not read');
}

/** Random sizes, some of them impossible; the page keeps up and does not grow. */
async function random(page, count) {
  const session = await page.context().newCDPSession(page);
  const used = async () => {
    await session.send('HeapProfiler.collectGarbage');
    return page.evaluate(() => performance.memory.usedJSHeapSize);
  };
  const edit = (n) =>
    page.evaluate(async (steps) => {
      const setter = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
      let seed = 7;
      const next = () => {
        seed = (seed * 16807) % 2147483647;
        return seed / 2147483647;
      };
      for (let i = 0; i < steps; i++) {
        const boxes = document.querySelectorAll('fieldset.part input[type="text"]');
        const input = boxes[Math.floor(next() * boxes.length)];
        setter.call(input, String(Math.round(next() * 4000) / 10));
        input.dispatchEvent(new Event('input', { bubbles: true }));
        await new Promise((done) => setTimeout(done, 15));
        if (i % 5 === 4) document.querySelector('header button').click(); // undo
      }
    }, n);
  await edit(Math.ceil(count / 3));
  await page.waitForTimeout(3000);
  const before = await used();
  await edit(count);
  await page.waitForTimeout(3000);
  const grown = (await used()) / before;
  expect(grown < 1.6, `${count} random changes: memory ${grown.toFixed(2)} times what it was`);
}

process.stdout.write('page\n');
await withJobPage({ folder, job: JOB }, async (page, { file, first }) => {
  process.stdout.write(`  first picture ${first} ms after opening\n`);
  await page.getByRole('slider').waitFor();
  await accessible(page, 'light');
  await files(page);
  await sizes(page);
  await folds(page);
  await refit(page);
  await units(page);
  await hostile(page, file);
});
if (edits !== '0') await withJobPage({ folder, job: JOB }, (page) => random(page, Number(edits)));
await withJobPage(
  {
    folder,
    job: JOB,
    viewport: { width: 320, height: 640 },
    colorScheme: 'dark',
    reducedMotion: 'reduce',
    hasTouch: true,
  },
  async (page) => {
    await page.getByRole('slider').waitFor();
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide <= 320, 'a phone 320 px wide scrolls one way only', String(wide));
    await accessible(page, 'dark, on a phone');
    await shot(page, '5-phone');
  },
);
await withJobPage(
  { folder, job: JOB, args: ['--lock', 'stock', '--lock', 'parts.body.length', '--worksheet'] },
  async (page) => {
    expect(await box(page, 'body', 'length').isDisabled(), 'a class cannot change what is locked');
    expect(await box(page, 'body', 'width').isEnabled(), 'and can change what is not');
    expect((await blank(page)).includes('……'), 'the numbers to find are left out');
  },
);
writeFileSync(join(folder, 'done'), '');
