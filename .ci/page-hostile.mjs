// Strangers' jobs and a thousand random changes, for page-check.mjs.
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { deflateSync } from 'node:zlib';
import { expect, until } from './page-driver.mjs';

const MOST_HEAP = 1.3;
const MOST_RESIDENT = 1.5;

/** Texts, links and fragments that are no job do nothing but say so. */
export async function hostile(page, file) {
  await page.getByRole('button', { name: 'Link to this job' }).click();
  await until(async () => page.url().includes('#job='), 'a link carries the job');
  const area = page.getByLabel('Job as text');
  const good = await area.inputValue();
  const markup = '<img src=x onerror=alert(1)>';
  for (const [bad, title] of [
    [good.replaceAll('body', `"${markup}"`), 'markup in the name of a part'],
    [good.replace('height: 55', `height: "${markup}"`), 'markup for a size'],
    [good.replace('height: 55', 'height: 1e9'), 'a job that cannot be'],
    ['[[[[[[[[[[', 'a text that is no YAML'],
    ['a: &a [x]\nb: [*a, *a]\nparts: {__proto__: {polluted: 1}}', 'references and a prototype'],
    ['', 'nothing'],
    ['a'.repeat(10_000_000), 'a text of 10 MB'],
  ]) {
    await fill(page, bad);
    await page.locator('[role=alert]').first().waitFor();
    expect((await page.locator('img').count()) === 0, `refused and said so: ${title}`);
  }
  await fill(page, good.replace('name: harvest carrier', `name: "${markup}"`));
  await page.getByRole('heading', { level: 1, name: markup }).waitFor();
  expect((await page.locator('img').count()) === 0, 'markup in the name of a job is text');
  await fill(page, good);
  await until(async () => (await page.locator('[role=alert]').count()) === 0, 'and it goes on afterwards');
  const packed = (text) => deflateSync(text, { level: 9 }).toString('base64url');
  for (const [hash, title] of [
    [`#job=${'A'.repeat(1_900_000)}`, 'a fragment of nearly 2 MB, all that Chromium lets in'],
    [`#job=${packed('a'.repeat(10_000_000))}`, 'a link that unpacks to 10 MB'],
    ['#job=%00', 'a link that is none'],
  ]) {
    await page.goto(`${pathToFileURL(file).href}${hash}`);
    await page.reload();
    await page.getByText('carries no job that can be read').waitFor();
    await page.locator('.flat .cut path').first().waitFor();
    expect(true, `${title} is not read, and the page shows its own job`);
  }
  await page.goto(`${pathToFileURL(file).href}#job=${packed(good.replace('length: 400', 'length: 405'))}`);
  await page.reload();
  await until(
    async () => (await page.locator('.totals').textContent()).includes('441.46'),
    'a good link is the job it carries',
  );
  const before = page.url();
  await page.evaluate(() => {
    globalThis.location.hash = `#job=${'A'.repeat(10_000_000)}`;
  });
  expect(
    page.url() === before || (await page.getByText('carries no job that can be read').count()) === 1,
    'a fragment of 10 MB is not read',
  );
}

const fill = (page, text) =>
  page.getByLabel('Job as text').evaluate((area, value) => {
    area.value = value;
    area.dispatchEvent(new Event('input', { bubbles: true }));
  }, text);

/** Random sizes, some of them impossible; the page keeps up and does not grow. */
export async function random(page, count, start) {
  const session = await page.context().newCDPSession(page);
  const all = await page.context().browser().newBrowserCDPSession();
  const used = async () => {
    await session.send('HeapProfiler.collectGarbage');
    const { usedSize } = await session.send('Runtime.getHeapUsage');
    const { processInfo } = await all.send('SystemInfo.getProcessInfo');
    // the process that holds the page and its workers
    const resident = processInfo
      .filter((p) => p.type === 'renderer')
      .map((p) => Number(readFileSync(`/proc/${p.id}/statm`, 'utf8').split(' ')[1]) * 4096);
    return { heap: usedSize, resident: Math.max(...resident) };
  };
  const edit = (n) =>
    page.evaluate(
      async ([steps, from]) => {
        const setter = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
        let seed = (from % 2147483646) + 1;
        const next = () => {
          seed = (seed * 16807) % 2147483647;
          return seed / 2147483647;
        };
        for (let i = 0; i < steps; i++) {
          const boxes = document.querySelectorAll('fieldset.part input[type="text"]');
          const input = boxes[Math.floor(next() * boxes.length)];
          setter.call(input, String(Math.round(next() * 4000) / 10));
          input.dispatchEvent(new Event('input', { bubbles: true }));
          await new Promise((done) => setTimeout(done, 5));
          if (i % 5 === 4) document.querySelector('header button').click(); // undo
        }
      },
      [n, start],
    );
  await edit(Math.ceil(count / 3));
  await page.waitForTimeout(2000);
  const before = await used();
  await edit(count);
  await page.waitForTimeout(2000);
  const after = await used();
  const [heap, resident] = [after.heap / before.heap, after.resident / before.resident];
  const told = `heap ${heap.toFixed(2)}, process ${resident.toFixed(2)} times what it was`;
  expect(heap < MOST_HEAP && resident < MOST_RESIDENT, `${count} random changes: ${told}`);
}
