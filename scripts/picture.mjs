import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build } from './build.mjs';
import { isFresh } from './freshness.mjs';
import { projectRoot } from './project-root.mjs';

/** Takes the picture of the page that stands in the README: the demo book as a fresh clone shows it. */
if (!isFresh()) await build();
const { serve } = await import('../dist/node/server.mjs');
const data = mkdtempSync(join(tmpdir(), 'twinfloor-picture-'));
const served = await serve({ host: '127.0.0.1', port: 0, data, allowHosts: [], root: projectRoot });
if (!served.ok) throw new Error(JSON.stringify(served.problems));
const browser = await chromium.launch({
  executablePath: process.env.TWINFLOOR_CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'],
});
try {
  const page = await browser.newPage({
    viewport: { width: 1280, height: 860 },
    colorScheme: 'light',
    locale: 'en-GB',
  });
  await page.goto(served.value.address);
  await page.locator('.remedy button').first().waitFor({ timeout: 30_000 });
  await page.locator('math').first().waitFor();
  // the search goes on for the other levers; the picture shows it ended
  await page.waitForFunction(() => document.querySelector('section p[role="status"]') === null, undefined, {
    timeout: 60_000,
  });
  await page.screenshot({ path: join(projectRoot, 'docs', 'picture.png') });
} finally {
  await browser.close();
  await served.value.close();
  rmSync(data, { recursive: true, force: true });
}
