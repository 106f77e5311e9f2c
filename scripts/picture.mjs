import { join } from 'node:path';
import { onBuiltPages } from './built-pages.mjs';
import { projectRoot } from './project-root.mjs';

/** Takes the picture of the page that stands in the README: the demo book as a fresh clone shows it. */
await onBuiltPages(async ({ browser, address }) => {
  const page = await browser.newPage({
    viewport: { width: 1280, height: 860 },
    colorScheme: 'light',
    locale: 'en-GB',
  });
  await page.goto(address);
  await page.locator('.remedy button').first().waitFor({ timeout: 30_000 });
  await page.locator('math').first().waitFor();
  // the search goes on for the other levers; the picture shows it ended
  await page.waitForFunction(() => document.querySelector('section p[role="status"]') === null, undefined, {
    timeout: 60_000,
  });
  await page.screenshot({ path: join(projectRoot, 'docs', 'picture.png') });
});
