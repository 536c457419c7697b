// The page of a class, and the page within another site; for page-check.mjs.
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { withPage } from './chromium.mjs';
import { accessible, box, expect, total, until, withJobPage } from './page-driver.mjs';
import { root } from './ready.mjs';

/** What the teacher locked stays, whichever way it is tried; what a class is to find is not told. */
export async function classroom(folder, job) {
  const args = ['--lock', 'stock', '--lock', 'parts.body.length', '--worksheet'];
  await withJobPage({ folder, job, args }, async (page) => {
    expect(await box(page, 'body', 'length').isDisabled(), 'a class cannot change what is locked');
    expect(await box(page, 'body', 'width').isEnabled(), 'and can change what is not');
    await page.getByText('Job as text').click();
    const area = page.getByLabel('Job as text');
    const text = await area.inputValue();
    await area.fill(text.replace('length: 400', 'length: 500'));
    await page.getByText('parts.body.length stays as the teacher set it').waitFor();
    expect((await area.inputValue()) === text, 'nor by the text of the job');
    await area.fill(text.replace('name: body', 'name: tray'));
    expect((await area.inputValue()) === text, 'nor by another name');
    expect((await page.getByRole('button', { name: 'Remove body' }).count()) === 0, 'nor by removing it');
    await area.fill(text.replace('height: 55', 'height: 60'));
    await until(
      async () => (await box(page, 'body', 'height').inputValue()) === '60',
      'what is free is changed by the text too',
    );
    const blank = await total(page, 'Blank body');
    const screen = await page.locator('.screen').textContent();
    expect(
      blank.includes('……') && !screen.includes('345.1') && !screen.includes('436.46'),
      'the numbers to find are left out',
      blank,
    );
    const sheets = page.locator('.print .sheet');
    await sheets.first().waitFor({ state: 'attached' });
    const texts = (await sheets.allTextContents()).join(' ');
    expect(
      texts.includes('Worksheet') && !texts.includes('Answers'),
      'paper gets the worksheets, not their answers',
    );
    const saves = await page.locator('[data-save]').evaluateAll((all) => all.map((b) => b.dataset.save));
    expect(
      saves.includes('worksheet') && !saves.some((s) => ['plan', 'packet', 'all'].includes(s)),
      'and so does what is saved',
      String(saves),
    );
    await accessible(page, 'a class');
  });
}

/** The program of the package's README in somebody else's page. */
export async function embedded(folder, job) {
  mkdirSync(folder, { recursive: true });
  const outfile = join(folder, 'site.js');
  const readme = readFileSync(join(root, 'packages/page/README.md'), 'utf8');
  const [, contents] = /^```ts browser\n(.*?)^```$/ms.exec(readme) ?? [];
  await build({
    stdin: { contents, loader: 'ts', resolveDir: root },
    bundle: true,
    format: 'esm',
    outfile,
    absWorkingDir: root,
    logLevel: 'warning',
  });
  const files = {
    '/': ['text/html', '<!doctype html><title>Garden</title><script type="module" src="site.js"></script>'],
    '/site.js': ['text/javascript', readFileSync(outfile)],
    '/page.html': ['text/html', readFileSync(join(root, 'packages/page/dist/page.html'))],
    '/carrier.yaml': ['application/yaml', readFileSync(join(root, job))],
  };
  await withPage(async (page) => {
    const faults = [];
    page.on('pageerror', (error) => faults.push(String(error)));
    await page.route('http://garden.test/**', (route) => {
      const [contentType, body] = files[new URL(route.request().url()).pathname] ?? [];
      return body === undefined ? route.fulfill({ status: 404 }) : route.fulfill({ contentType, body });
    });
    await page.goto('http://garden.test/');
    const inner = page.frameLocator('tinwright-page iframe');
    await inner.locator('.flat .cut path').first().waitFor();
    await inner.getByRole('slider').waitFor();
    expect(true, 'another site shows the page in its own, and it computes there');
    const reaches = await page.frames()[1].evaluate(() => {
      try {
        return globalThis.parent.document !== null;
      } catch {
        return false;
      }
    });
    expect(!reaches, 'the frame reaches nothing of the site');
    expect(faults.length === 0, 'and nothing fails', faults.join('; '));
  });
}
