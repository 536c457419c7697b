// What is seen and told: linked views, findings at their place, print, the keyboard alone; for page-check.mjs.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { accessible, box, expect, until } from './page-driver.mjs';

const near = (text, value) => Math.abs(Number(text) - value) < 1; // points; Chromium rounds them
const explained = (page) => page.locator('.explained p').first().textContent();

/** What is pointed at in one view is lit in the others, with what it is the sum of. */
export async function linked(page) {
  const told = async (id, parts) => {
    await page.locator(`.flat polygon.panel:has(title:text-is("Panel ${id}"))`).dispatchEvent('pointerenter');
    const text = await explained(page);
    const [, marked, outside, taken] = /([\d.]+) = ([\d.]+) − ([\d.]+)/.exec(text) ?? [];
    const adds = Math.abs(Number(outside) - Number(taken) - Number(marked)) < 0.011;
    expect(adds && parts.every((p) => text.includes(p)), `the panel ${id} is explained`, text);
  };
  const whole = page.locator('canvas').nth(1);
  const unlit = await whole.screenshot();
  await told('base', ['= 200 −', '= 400 −', 'two bends']);
  await until(async () => !unlit.equals(await whole.screenshot()), 'and lit in the whole object');
  await told('north', ['= 55 −']);
  await page.getByText('Blank y:').click();
  await page.getByRole('button', { name: 'deduction of bend south' }).first().focus();
  expect(
    (await explained(page)).includes('allowance'),
    'a term of the blank explains its bend by keys alone',
  );
  const formed = page.locator('canvas').first();
  await formed.scrollIntoViewIfNeeded();
  await formed.hover();
  await until(
    async () => (await page.locator('.flat polygon.lit').count()) > 0,
    'what is pointed at in space is lit on the pattern',
  );
}

/** A finding stands where it holds, on the pattern and at the field that would mend it. */
export async function places(page) {
  await page.locator('.flat button.place').first().click();
  const id = await page.evaluate(() => document.activeElement?.id);
  expect(/^finding-\d+$/.test(id), 'a number on the pattern leads to its finding', id);
  const beside = page.locator('fieldset.part .beside button.place').first();
  await beside.waitFor();
  await beside.click();
  expect(
    await page.evaluate(() => document.activeElement?.id === 'finding-1'),
    'a finding stands at the field whose size would mend it',
  );
  const before = await page.locator('.findings li').count();
  await page.locator('#finding-1 button.take').click();
  await until(
    async () => (await page.locator('.findings li').count()) < before,
    'and a click takes the value with which it is gone',
  );
  await accessible(page, 'with a finding mended');
  await page.keyboard.press('Control+z');
}

/** Paper gets the plan of the job as it is, at true scale, whatever stood there before. */
export async function printed(page, folder) {
  const sheets = page.locator('.print .sheet');
  await sheets.first().waitFor({ state: 'attached' });
  await box(page, 'body', 'length').fill('407');
  await until(
    async () => (await sheets.count()) > 0 && (await sheets.first().textContent()).includes('443.5'),
    'the sheets to print follow a change',
  );
  const texts = await sheets.allTextContents();
  expect(
    texts.every((t) => !t.includes('436.5')),
    'and no old one is among them',
  );
  const path = join(folder, 'print.pdf');
  await page.pdf({ path, preferCSSPageSize: true });
  const pdf = readFileSync(path, 'latin1');
  const boxes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
  expect(
    boxes.length === texts.length && boxes.every(([, w, h]) => near(w, 595.28) && near(h, 841.89)),
    `printed: ${texts.length} sheets on as many pages of A4`,
    String(boxes),
  );
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 794, height: 900 });
  const { width } = await sheets.first().locator('svg').boundingBox();
  expect(Math.abs(width - (210 / 25.4) * 96) < 0.5, 'as wide as the paper, so at true scale', String(width));
  await page.emulateMedia({ media: 'screen' });
  await page.setViewportSize({ width: 1360, height: 900 });
  await page.keyboard.press('Control+z');
}

/** Change a size, fold and save, with the keyboard alone. */
export async function byKeys(page) {
  const tabTo = async (what, title) => {
    for (let i = 0; i < 200; i++) {
      // another part chosen on the way has an order of its own
      await page.waitForFunction(() => document.querySelector('[aria-busy]') === null);
      await page.keyboard.press('Tab');
      if (await page.evaluate(what)) return expect(true, `the Tab key comes to ${title}`);
    }
    return expect(false, `the Tab key comes to ${title}`);
  };
  await page.evaluate(() => document.activeElement?.blur());
  await tabTo(() => document.activeElement?.labels?.[0]?.textContent?.startsWith('length'), 'a size');
  await page.keyboard.press('ArrowUp');
  await until(
    async () => (await page.locator('.totals').textContent()).includes('437.46'),
    'the arrow keys change a size',
  );
  await tabTo(() => document.activeElement?.matches('input[type="range"]'), 'the slider');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('ArrowLeft');
  const [value, max] = await page.getByRole('slider').evaluate((s) => [Number(s.value), Number(s.max)]);
  expect(max > 2 && value === max - 2, 'and the arrow keys unfold it bend by bend', `${value} of ${max}`);
  const formed = page.locator('canvas').first();
  await tabTo(() => document.activeElement?.matches('canvas'), 'the formed part');
  const before = await formed.screenshot();
  await page.keyboard.press('ArrowLeft');
  await until(async () => !before.equals(await formed.screenshot()), 'which the arrow keys turn');
  await tabTo(() => document.activeElement?.matches('[data-save="all"]'), 'what saves everything');
  const waiting = page.waitForEvent('download');
  await page.keyboard.press('Enter');
  expect((await waiting).suggestedFilename() === 'harvest-carrier.zip', 'and Enter saves it');
  await page.keyboard.press('Control+z');
}
