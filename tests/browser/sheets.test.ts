import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, it } from 'vitest';
import { openBrowser, openPage } from './browser.ts';
import { openBook, panel, side, waitForText } from './on-the-page.ts';
import { type RunningServer, startServer } from './running-server.ts';

let browser: Browser;
let server: RunningServer;

beforeAll(async () => {
  browser = await openBrowser();
  server = await startServer();
});
afterAll(async () => {
  await browser.close();
  await server.remove();
});

describe('a sheet on its own', () => {
  it('computes as one types, in any unit, and its address carries what was typed', async () => {
    const { page, close } = await openPage(browser);
    await page.goto(`${server.address()}sheets/water/pipe-velocity`);
    await page.getByLabel('Flow', { exact: true }).fill('1 m3/s');
    await page.getByLabel('Bore', { exact: true }).fill('1 m');
    // continuity, v = 4 Q / (pi D^2), worked by hand: 1.2732 m/s
    const velocity = page.locator('[data-output="velocity"]');
    await waitForText(velocity, /^1\.273\sm\/s$/);
    await page.reload();
    await waitForText(velocity, /^1\.273\sm\/s$/);
    await page.getByLabel('Bore', { exact: true }).fill('1 kg');
    await waitForText(page.locator('.problem'), /a unit of mass/);
    await close();
  });

  it('opens from the finding that used it with its numbers in', async () => {
    const { page, close } = await openPage(browser);
    await openBook(page, server.address());
    await side(page, 'OXBOW', 'manifoldPressure').click();
    const shown = await panel(page).locator('.result dd').first().textContent();
    await panel(page).getByRole('link', { name: 'Open this sheet' }).click();
    await page.locator('.sheets').waitFor();
    const digits = (text: string | null) => text?.match(/[\d.,\u202f]+/)?.[0];
    await waitForText(page.locator('.result dd').first(), new RegExp(`${digits(shown)}`));
    await page.goBack();
    await page.locator('.spine').waitFor();
    await close();
  });
});
