import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPage } from './browser.ts';
import { field, hoseBore, openBook, rate, seeCharts, waitForText } from './on-the-page.ts';
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

describe('opening the page', () => {
  it('takes under 300 kB of script, compressed, until the figures stand', async () => {
    const { page, close } = await openPage(browser);
    await page.addInitScript(() => {
      new MutationObserver((_, observer) => {
        if (document.querySelector('.spine') === null) return;
        performance.mark('figures');
        observer.disconnect();
      }).observe(document, { childList: true, subtree: true });
    });
    await openBook(page, server.address());
    // what was sent, as the server had packed it
    const size = await page.evaluate(() => {
      const figures = performance.getEntriesByName('figures')[0]?.startTime ?? Number.NaN;
      return (performance.getEntriesByType('resource') as PerformanceResourceTiming[])
        .filter(({ name, startTime }) => startTime < figures && new URL(name).pathname.endsWith('.js'))
        .reduce((sum, { encodedBodySize }) => sum + encodedBodySize, 0);
    });
    expect(size).toBeGreaterThan(100_000);
    expect(size).toBeLessThan(300_000);
    await close();
  });

  it('asks nobody but its own server', async () => {
    const { page, requests, complaints, close } = await openPage(browser);
    await openBook(page, server.address());
    await seeCharts(page);
    await page.locator('math').first().waitFor();
    const elsewhere = requests.filter((url) => !url.startsWith(server.address()) && !url.startsWith('blob:'));
    expect(elsewhere).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });

  it('speaks the language of the browser and reads its decimal mark, and then the one that its reader chose', async () => {
    const { page, complaints, close } = await openPage(browser, { locale: 'de-DE' });
    const language = page.locator('.language select');
    await openBook(page, server.address());
    expect(await page.locator('html').getAttribute('lang')).toBe('de');
    await field(page, hoseBore).fill('31,5 mm');
    await waitForText(page.locator('.save'), /nicht gespeichert/);
    expect(await page.locator('.part .field .problem').count()).toBe(0);
    await waitForText(rate(page, 'OXBOW'), /\d Flaschen\/h/);
    await language.selectOption('es');
    await waitForText(rate(page, 'OXBOW'), /\d botellas\/h/);
    // what was typed stays while the language changes
    expect(await field(page, hoseBore).inputValue()).toBe('31,5 mm');
    await page.reload();
    await waitForText(rate(page, 'OXBOW'), /\d botellas\/h/);
    expect(await page.locator('html').getAttribute('lang')).toBe('es');
    await language.selectOption('en');
    await waitForText(rate(page, 'OXBOW'), /\d bottles\/h/);
    expect(await page.locator('.language p').count()).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });
});
