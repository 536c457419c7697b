// Opens a job's page in Chromium and works it as a person would; shared by its check and its benchmark.
import { execFileSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { withPage } from './chromium.mjs';
import { root } from './ready.mjs';

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
      await page.waitForSelector('svg.drawing .cut path');
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

/** Milliseconds from each change of a size to its pattern on the screen, within the page. */
export const latencies = (page, count) =>
  page.evaluate(async (n) => {
    const input = document.querySelectorAll('fieldset.part input[type="text"]')[1];
    const setter = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
    const drawn = () => document.querySelector('svg.drawing #CUT path').getAttribute('d');
    const times = [];
    for (let i = 0; i < n; i++) {
      const before = drawn();
      const start = performance.now();
      setter.call(input, String(400 + (i % 2 === 0 ? 1 : 0) + (i % 7) / 10));
      input.dispatchEvent(new Event('input', { bubbles: true }));
      while (drawn() === before) await new Promise((done) => setTimeout(done, 0));
      times.push(performance.now() - start);
      await new Promise((done) => setTimeout(done, 120));
    }
    return times;
  }, count);
