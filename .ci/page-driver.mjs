// Opens a job's page in Chromium and works it as a person would; shared by its check and its benchmark.
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { withPage } from './chromium.mjs';
import { root } from './ready.mjs';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const MAIN = join(root, 'packages/cli/bin/tinwright.js');

/** Run the command. */
export const tinwright = (...args) => execFileSync(process.execPath, [MAIN, ...args], { encoding: 'utf8' });

/** What Chromium says of a slow graphics driver is none of the page's doing. */
const isDriver = (text) => /GL Driver Message|GroupMarkerNotSet|swiftshader/i.test(text);

/**
 * Open the page of a job and do something with it.
 * @throws Error for anything said on the console and any request but for the file itself
 */
export async function withJobPage({ folder, job, args = [], hash = '', ...options }, what) {
  mkdirSync(folder, { recursive: true });
  const file = join(folder, 'page.html');
  tinwright('page', job, '--out', file, '--force', ...args);
  return withPage(
    async (page) => {
      const faults = [];
      page.on('pageerror', (error) => faults.push(String(error)));
      page.on('console', (said) => {
        if (!isDriver(said.text())) faults.push(said.text());
      });
      page.on('request', (r) => {
        if (!/^(file|blob|data):/.test(r.url())) faults.push(`asked for ${r.url()}`);
      });
      page.setDefaultTimeout(120_000);
      const start = Date.now();
      await page.goto(pathToFileURL(file).href + hash);
      await page.waitForSelector('.flat .cut path');
      const result = await what(page, { file, first: Date.now() - start });
      if (faults.length > 0) throw new Error(`the page says: ${faults.slice(0, 5).join('; ')}`);
      return result;
    },
    { viewport: { width: 1360, height: 900 }, acceptDownloads: true, ...options },
  );
}

/** The box of a size of a part, as its label is read. */
export const box = (page, part, label) =>
  page
    .locator('fieldset.part', { has: page.getByRole('button', { name: part, exact: true }) })
    .getByLabel(label, { exact: false })
    .first();

/** Type a size. */
export async function type(page, part, label, value) {
  await box(page, part, label).fill(value);
}

/** A number always in sight, by its name. */
export const total = (page, name) =>
  page
    .locator('.totals div', { has: page.locator('dt', { hasText: name }) })
    .locator('dd')
    .textContent();

/** Save something and give the file's bytes. */
export async function saved(page, what, path) {
  const waiting = page.waitForEvent('download');
  await page.locator(`[data-save="${what}"]`).click();
  const download = await waiting;
  await download.saveAs(path);
  return download.suggestedFilename();
}

/**
 * Milliseconds from each change of a size to its pattern, and to its findings, in the page: until they stand in the
 * document, which the next frame paints.
 */
export const latencies = (page, count) =>
  page.evaluate(async (n) => {
    const input = document.querySelectorAll('fieldset.part input[type="text"]')[1];
    const setter = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
    const shown = () => [
      document.querySelector('.flat #CUT path').getAttribute('d'),
      document.querySelector('.findings').textContent,
    ];
    const times = [];
    for (let i = 0; i < n; i++) {
      const before = shown();
      const start = performance.now();
      const seen = new Promise((done) => {
        const at = [null, null];
        const watch = new MutationObserver(() => {
          for (const [k, now] of shown().entries())
            if (now !== before[k]) at[k] ??= performance.now() - start;
          if (at.includes(null)) return;
          watch.disconnect();
          done(at);
        });
        watch.observe(document.body, {
          subtree: true,
          childList: true,
          attributes: true,
          characterData: true,
        });
      });
      setter.call(input, String(400 + (i % 2 === 0 ? 1 : 0) + (i % 7) / 10));
      input.dispatchEvent(new Event('input', { bubbles: true }));
      times.push(await seen);
      await new Promise((done) => setTimeout(done, 120));
    }
    return { pattern: times.map((t) => t[0]), findings: times.map((t) => t[1]) };
  }, count);

/** Say what was found true. @throws Error when it is not */
export function expect(truth, title, seen = '') {
  if (!truth) throw new Error(`not true: ${title} ${seen}`);
  process.stdout.write(`  ${title}\n`);
}

/** Wait until something holds. */
export async function until(what, title) {
  for (let i = 0; i < 600; i++) {
    if (await what()) return expect(true, title);
    await new Promise((done) => setTimeout(done, 200));
  }
  return expect(false, title);
}

/** A picture of the whole page as it stands. */
export async function shot(page, folder, name) {
  await page.evaluate(() => globalThis.scrollTo(0, 0)); // its head stays at the top
  await page.screenshot({ path: join(folder, `${name}.png`), fullPage: true });
}

/** What axe-core has against the page as it stands. */
export async function accessible(page, title) {
  // the page's policy lets nothing in from a tag; the browser itself may
  await page.evaluate(AXE);
  const found = await page.evaluate(async () => {
    const { violations } = await globalThis.axe.run(document);
    return violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.target.join(' ')).slice(0, 3)}`);
  });
  expect(found.length === 0, `nothing against it for accessibility: ${title}`, found.join('\n'));
}
