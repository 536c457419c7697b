// The first picture of README.md, taken of the built page in Chromium: node .ci/page-picture.mjs
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { withJobPage } from './page-driver.mjs';
import { ready, root } from './ready.mjs';

ready();
process.chdir(root);
const folder = mkdtempSync(join(tmpdir(), 'tinwright-picture-'));
try {
  await withJobPage(
    { folder, job: 'examples/harvest-carrier.yaml', viewport: { width: 1280, height: 1120 } },
    async (page) => {
      const slider = page.getByRole('slider');
      await slider.waitFor();
      await slider.fill('5.5');
      await page.locator('.paper svg').waitFor();
      await page.locator('.flat polygon.bend').nth(1).dispatchEvent('pointerenter');
      await page.evaluate(() => document.activeElement?.blur());
      await page.waitForTimeout(2000); // drawn to the end
      await page.screenshot({ path: 'examples/page.png' });
    },
  );
} finally {
  rmSync(folder, { recursive: true });
}
