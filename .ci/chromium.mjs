// Debian's Chromium, driven by playwright-core: `withPage(async (page) => …)`.
import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser'];

/** Where Chromium is, or null. */
export const chromiumPath = () => PLACES.find(existsSync) ?? null;

/** Open a blank page, do something with it, close everything. @throws when there is no Chromium */
export async function withPage(what, options = {}) {
  const executablePath = chromiumPath();
  if (executablePath === null)
    throw new Error(`no Chromium in ${PLACES.join(', ')}: apt-get install chromium`);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
  try {
    const context = await browser.newContext(options);
    return await what(await context.newPage(), browser);
  } finally {
    await browser.close();
  }
}
