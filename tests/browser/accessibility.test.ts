import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { faults } from './axe.ts';
import { openBrowser, openPage } from './browser.ts';
import {
  field,
  goWithin,
  hoseBore,
  openBook,
  panel,
  rate,
  seeCharts,
  side,
  tooWide,
  waitForText,
} from './on-the-page.ts';
import { asEachReader } from './readers.ts';
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

describe('for every reader', () => {
  it('axe finds nothing on the floors, a working and a problem; nothing stands under 13 px or runs out of the page', async () => {
    const { page, close } = await openPage(browser);
    await openBook(page, server.address());
    await seeCharts(page);
    const small = (): Promise<readonly string[]> =>
      page.evaluate(() => {
        const found: string[] = [];
        const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
          const parent = node.parentElement;
          if (parent === null || (node.textContent ?? '').trim() === '' || parent.closest('math') !== null)
            continue;
          const size = Number.parseFloat(getComputedStyle(parent).fontSize);
          if (size < 12.99) found.push(`${size} ${node.textContent}`);
        }
        return found;
      });
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page), await small(), await tooWide(page)]).toEqual([reader, [], [], 0]);
    });
    await side(page, 'OXBOW', 'manifoldPressure').click();
    await panel(page).locator('math').first().waitFor();
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page, 'aside.panel')]).toEqual([reader, []]);
    });
    await page.keyboard.press('Escape');
    await field(page, hoseBore).fill('nonsense');
    await page.locator('.part .problem').first().waitFor();
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page, '.part')]).toEqual([reader, []]);
    });
    await close();
  });

  it('axe finds nothing on the utilities, a working and a form', async () => {
    const { page, close } = await openPage(browser);
    await openBook(page, server.address());
    await page.locator('.nav').getByText('Utilities').click();
    await page.locator('.utility-row').first().waitFor();
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page)]).toEqual([reader, []]);
    });
    await side(page, 'LARKMOOR', 'motorLoading -M2').click();
    await panel(page).locator('math').first().waitFor();
    await page.locator('button[data-form="air LARKMOOR"]').click();
    await page.locator('.site-form').waitFor();
    await asEachReader(page, async (reader) => {
      const seen = [reader, await faults(page, 'aside.panel, .site-form'), await tooWide(page)];
      expect(seen).toEqual([reader, [], 0]);
    });
    await close();
  });

  it('axe finds nothing on the sheets and the papers, which open as they will be printed', async () => {
    const { page, close } = await openPage(browser);
    await page.goto(`${server.address()}sheets`);
    await page.locator('.sheet-list').first().waitFor();
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page)]).toEqual([reader, []]);
    });
    await page.goto(`${server.address()}sheets/water/pipe-loss`);
    await page.locator('math').first().waitFor();
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page)]).toEqual([reader, []]);
    });
    await goWithin(page, '/books/flagon-line/papers');
    await page.locator('.papers-list').waitFor();
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page), await tooWide(page)]).toEqual([reader, [], 0]);
    });
    await page.locator('[data-choice="page"]').selectOption('letter');
    const card = page.locator('[data-paper="card"] a').first();
    const paper = await page.request.get(new URL((await card.getAttribute('href'))!, server.address()).href);
    expect([paper.status(), paper.headers()['content-type']]).toEqual([200, 'application/pdf']);
    await close();
  });

  it('a thumb finds 48 px everywhere and text of 16 px', async () => {
    const { page, close } = await openPage(browser, {
      viewport: { width: 820, height: 1180 },
      hasTouch: true,
      isMobile: true,
    });
    await openBook(page, server.address());
    const low = () =>
      page.evaluate(() =>
        [...document.querySelectorAll('button, input:not(.said), select, summary, label, nav a')]
          .filter((element) => element.checkVisibility())
          .map((element) => ({
            height: element.getBoundingClientRect().height,
            html: element.outerHTML.slice(0, 120),
          }))
          .filter(({ height }) => height < 47.9),
      );
    expect(await low()).toEqual([]);
    await page.locator('.nav').getByText('Utilities').tap();
    await page.locator('button[data-form="air LARKMOOR"]').tap();
    await page.locator('.site-form').waitFor();
    expect(await low()).toEqual([]);
    expect(await page.evaluate(() => getComputedStyle(document.body).fontSize)).toBe('16px');
    await close();
  });

  it('the whole way is open to the keyboard: a figure, its working, a value, and back', async () => {
    const { page, close } = await openPage(browser);
    await openBook(page, server.address());
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    const goal = side(page, 'OXBOW', 'manifoldPressure');
    for (let i = 0; i < 40; i += 1) {
      if (await goal.evaluate((element) => element === document.activeElement)) break;
      await page.keyboard.press('Tab');
    }
    expect(await goal.evaluate((element) => element === document.activeElement)).toBe(true);
    const outline = await goal.evaluate((element) => getComputedStyle(element).outlineWidth);
    expect(Number.parseFloat(outline)).toBeGreaterThanOrEqual(2);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Enter');
    await waitForText(panel(page).locator('h2'), /manifold pressure/);
    const input = panel(page).locator('input').first();
    for (let i = 0; i < 20; i += 1) {
      if (await input.evaluate((element) => element === document.activeElement)) break;
      await page.keyboard.press('Tab');
    }
    const before = await rate(page, 'OXBOW').textContent();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('3.2 m');
    await waitForText(page.locator('[aria-live="polite"].said'), /Oxbow runs/);
    expect(await rate(page, 'OXBOW').textContent()).not.toBe(before);
    await page.keyboard.press('Escape');
    expect(await rate(page, 'OXBOW').textContent()).toBe(before);
    await page.keyboard.press('Escape');
    expect(await goal.evaluate((element) => element === document.activeElement)).toBe(true);
    await close();
  });

  it('nothing moves for who asks for no motion', async () => {
    const { page, close } = await openPage(browser, { reducedMotion: 'reduce' });
    await openBook(page, server.address());
    const moving = await page.evaluate(
      () =>
        [...document.querySelectorAll('*')].filter(
          (element) => getComputedStyle(element).transitionDuration !== '0s',
        ).length,
    );
    expect(moving).toBe(0);
    await close();
  });
});
