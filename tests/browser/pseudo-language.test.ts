import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { blankLine } from '../../src/book/first-book/blank-line.ts';
import { fittingNames, pipeMaterialNames } from '../../src/book/index.ts';
import { type Kind, kinds, unitsOf } from '../../src/quantity/index.ts';
import { registry } from '../../src/sheets/registry.ts';
import { languageNames } from '../../src/text/languages/languages.ts';
import { openBrowser, openPage } from './browser.ts';
import { field, goWithin, hoseBore, openBook, panel, seeCharts, side, waitForText } from './on-the-page.ts';
import { projectRoot, type RunningServer, startServer } from './running-server.ts';

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

const textsOf = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(textsOf)
      : [];

/** What may stand on a page without being in the catalogue: the book's own words, units, titles of sources. */
const allowed = new Set(
  [
    ...textsOf(JSON.parse(readFileSync(join(projectRoot, 'src/book/demo/flagon-line.json'), 'utf8'))),
    ...(Object.keys(kinds) as Kind[]).flatMap((kind) => unitsOf(kind).map(({ label }) => label)),
    ...[...registry.values()].flatMap(({ sheet, cases }) => [
      ...sheet.sources.flatMap(textsOf),
      ...cases.flatMap(({ name, source }) => [name, ...textsOf(source)]),
    ]),
    ...fittingNames,
    ...pipeMaterialNames,
    'Kv K to °C m² m³',
    // each in its own language
    ...Object.values(languageNames),
  ].flatMap((text) => text.split(/[^\p{L}]+/u)),
);

/** Names that a book of the short form gives its things. */
const wordsOfBlankLine = textsOf(blankLine).flatMap((text) => text.split(/[^\p{L}]+/u));

/** Words on the page that are neither in brackets of the pseudo language nor data. */
const strays = async (page: Page): Promise<readonly string[]> => {
  const texts = await page.evaluate(() => {
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (parent === null || parent.closest('math, script, style') !== null) continue;
      found.push(node.textContent ?? '');
    }
    for (const element of document.querySelectorAll('[aria-label], [title], [placeholder]')) {
      for (const name of ['aria-label', 'title', 'placeholder']) found.push(element.getAttribute(name) ?? '');
    }
    found.push(document.title);
    return found;
  });
  const outside = (text: string): string => {
    let bare = text;
    // brackets stand within brackets where a sentence holds another
    for (let before = ''; before !== bare; ) {
      before = bare;
      bare = bare.replace(/⟦[^⟦⟧]*⟧/gu, ' ');
    }
    return bare;
  };
  return texts
    .map(outside)
    .filter((text) => text.split(/[^\p{L}]+/u).some((word) => word.length > 1 && !allowed.has(word)));
};

/** Sheets that between them show each discipline, each kind of quantity and each sort of field: all would take a minute. */
const sheetsOfEachSort = (): readonly string[] => {
  const seen = new Set<string>();
  return [...registry.values()]
    .filter(({ sheet }) => {
      const sorts = [
        sheet.id.slice(0, sheet.id.indexOf('/')),
        ...Object.values({ ...sheet.inputs, ...sheet.outputs }).map((field) =>
          field.type === 'choice' ? `choice of ${field.options.join()}` : `${field.type} ${field.kind}`,
        ),
      ];
      const fresh = sorts.some((sort) => !seen.has(sort));
      for (const sort of sorts) seen.add(sort);
      return fresh;
    })
    .map(({ sheet }) => `/sheets/${sheet.id}`);
};

describe('every text comes from the catalogue', () => {
  it('on the floors, in a working, at a problem, during a trial', async () => {
    const { page, close } = await openPage(browser);
    await openBook(page, `${server.address()}?lang=qps`);
    await seeCharts(page);
    expect(await strays(page)).toEqual([]);
    await side(page, 'OXBOW', 'runningRate').click();
    await panel(page).locator('.remedy button').first().waitFor({ timeout: 20_000 });
    expect(await strays(page)).toEqual([]);
    await panel(page).locator('.remedy button').first().click();
    await page.locator('.notice').waitFor();
    expect(await strays(page)).toEqual([]);
    await page.locator('.notice button').last().click();
    await field(page, hoseBore).fill('12 parsec');
    await page.locator('.field .problem').first().waitFor();
    allowed.add('parsec');
    expect(await strays(page)).toEqual([]);
    await close();
  });

  it('on each sort of sheet', async () => {
    const { page, close } = await openPage(browser);
    await page.goto(`${server.address()}sheets?lang=qps`);
    await page.locator('.sheet-list').first().waitFor();
    expect(await strays(page)).toEqual([]);
    const addresses = await page
      .locator('.sheet-list a')
      .evaluateAll((all) => all.map((a) => a.getAttribute('href')));
    expect(addresses.length).toBe(registry.size);
    for (const address of sheetsOfEachSort()) {
      expect(addresses).toContain(address);
      await page.evaluate(() => document.querySelector('math')?.remove());
      await goWithin(page, `${address}?lang=qps`);
      await page.locator('math').first().waitFor();
      expect({ address, strays: await strays(page) }).toEqual({ address, strays: [] });
    }
    await close();
  });

  it('on each part of the page on which a book is written, in what is asked and what is refused', async () => {
    const { page, close } = await openPage(browser);
    const id = await server.addBook(
      readFileSync(join(projectRoot, 'src/book/demo/flagon-line.json'), 'utf8'),
    );
    const openPart = async (path: string): Promise<void> => {
      await goWithin(page, `/books/${id}/book?lang=qps&at=${path}`);
      await page.locator(`.write-main[data-part="${path}"]`).waitFor();
    };
    await page.goto(`${server.address()}books/${id}/book?lang=qps`);
    for (const path of [
      '/about',
      '/agreement',
      ...['products', 'formats', 'stations', 'holdRules', 'drives', 'heaters', 'cylinders'].flatMap(
        (list) => [`/line/${list}`, `/line/${list}/0`],
      ),
      ...['airDrops', 'devices', 'stopDevices', 'tieIns', 'sections', 'splits', 'joins'].map(
        (list) => `/line/${list}/0`,
      ),
      ...['loads', 'blowOffs', 'interlocks', 'crates', 'spares', 'checks'].map((list) => `/line/${list}`),
      ...[1, 2, 3, 4, 5, 6].map((n) => `/line/stations/${n}`),
      '/line/stations/4/lanes/0',
      '/line/stations/1/zones/0',
      '/floors/0',
      '/floors/0/supply',
      '/floors/0/supply/run/0',
      ...['water', 'power', 'air', 'drains', 'heat', 'room', 'settings'].map((part) => `/floors/0/${part}`),
    ]) {
      await openPart(path);
      expect({ path, strays: await strays(page) }).toEqual({ path, strays: [] });
    }
    await openPart('/line/stations/4');
    await page.locator('[data-at="/line/stations/4/lanes/0"][data-act="remove"]').click();
    await page.locator('.refers').waitFor();
    await page.locator('.known').first().click();
    expect(await strays(page)).toEqual([]);
    await openPart('/floors/0/water');
    await page.locator('.inner-head button').first().click();
    expect(await strays(page)).toEqual([]);
    await close();
  }, 120_000);

  it('on the ways to a new book, in the short form with its verdict and a problem, and in what to ask next', async () => {
    const { page, close } = await openPage(browser);
    await page.goto(`${server.address()}new?lang=qps`);
    await page.locator('.way option').first().waitFor({ state: 'attached' });
    expect(await strays(page)).toEqual([]);
    await page.goto(`${server.address()}new?from=form&lang=qps`);
    await page.locator('.question').first().waitFor();
    expect(await strays(page)).toEqual([]);
    const answers: Readonly<Record<string, string>> = {
      rate: '1050 /h',
      level: '1 L',
      row: '3',
      index: '8 s',
      lanes: '3',
      kv: 'Kv 2',
      siteBore: '25 mm',
      siteSurface: '3 m',
    };
    for (const source of ['main', 'pump', 'tank above']) {
      await page.locator(`[data-question="siteSource"][value="${source}"]`).check();
      await page.locator(`[data-question="builderSource"][value="${source}"]`).check();
      expect({ source, strays: await strays(page) }).toEqual({ source, strays: [] });
    }
    for (const [id, answer] of Object.entries(answers)) {
      await page.locator(`input[type="text"][data-question="${id}"]`).fill(answer);
    }
    await page.locator('input[type="text"][data-question="cap"]').fill('12 fathoms');
    for (const word of ['fathoms', ...wordsOfBlankLine]) allowed.add(word);
    await page.locator('.narrowing').waitFor();
    expect(await strays(page)).toEqual([]);
    await page.locator('.make').click();
    await page.locator('.spine').waitFor();
    for (const details of await page.locator('details.assumed summary').all()) await details.click();
    await page.locator('button[data-finding="level"]').last().click();
    await page.locator('aside.panel .ask').waitFor();
    expect(await strays(page)).toEqual([]);
    await close();
  });

  it('where two revisions face each other, and where a remedy is kept', async () => {
    const { page, close } = await openPage(browser);
    await page.goto(`${server.address()}books/flagon-line?lang=qps`);
    await page.locator('.spine').waitFor();
    await side(page, 'LARKMOOR', 'runningRate').click();
    await panel(page).locator('.remedy button').first().waitFor({ timeout: 20_000 });
    await panel(page).locator('.remedy button').first().click();
    await page.locator('.notice a').click();
    await page.locator('.compare .rows').waitFor();
    await page.locator('.notice button').first().click();
    await page.locator('.keep-why input').waitFor();
    expect(await strays(page)).toEqual([]);
    await page.locator('.keep-why button').first().click();
    await page.locator('.revisions tbody tr').nth(1).waitFor();
    expect(await strays(page)).toEqual([]);
    await close();
  });

  it('on each question of the page on which the fill is set, at a slip and in what a sheet brings', async () => {
    const { page, close } = await openPage(browser);
    const sheets = {
      samples:
        'Bottle,Empty (kg),Full to the level (kg),Temperature,Bore\n1,0.96,2.97,18 degC,28 mm\n2,0.961,2.972,18 degC,28.2 mm',
      trials: [
        'Lane,Count,Row,Gross (kg),Tare (kg),Fill time,Overflow',
        ...[600, 780].flatMap((preset) =>
          [0, 1, 2].flatMap((row) =>
            [1, 2, 3, 4].map((lane) =>
              [
                `-Y1${lane}`,
                preset,
                `${preset}.${row}`,
                (1.0 + preset / 402 + 0.001 * ((row * lane) % 3)).toFixed(3),
                '0.960',
                `${(0.013 * preset).toFixed(2)} s`,
                'none',
              ].join(),
            ),
          ),
        ),
      ].join('\n'),
    };
    const paste = async (what: string, text: string): Promise<void> => {
      await page.locator('.import-part summary').click();
      await page.locator(`[data-paste="${what}"]`).fill(text);
      await page.locator('[data-act="read-paste"]').click();
    };
    // a sheet is read in the language of its headings
    for (const [what, step] of [
      ['samples', 'samples'],
      ['trials', 'weigh'],
    ] as const) {
      await page.goto(`${server.address()}books/flagon-line/fill?step=${step}`);
      await paste(what, sheets[what]);
      await page.locator('[data-act="take-sheet"]').click();
      await waitForText(page.locator('.import-part [role="status"]'), /written down/);
    }
    const step = async (name: string): Promise<void> => {
      await goWithin(page, `/books/flagon-line/fill?lang=qps&step=${name}`);
      await page.locator(`.fill-page[data-step="${name}"] .question-head`).waitFor();
    };
    await page.goto(`${server.address()}books/flagon-line/fill?lang=qps`);
    const clean = async (name: string): Promise<void> => {
      for (const summary of await page.locator('.fill-page details:not([open]) > summary').all()) {
        if (await summary.isVisible()) await summary.click();
      }
      expect({ name, strays: await strays(page) }).toEqual({ name, strays: [] });
    };
    await step('samples');
    await page.locator('.fill-table.samples').waitFor();
    await clean('samples');
    await step('weigh');
    await page.locator('[data-holds="by"]').fill('Oxbow');
    await page.locator('[data-weigh="tare"]').fill('0');
    await page.locator('[data-weigh="gross"]').fill('2.98');
    await page.locator('[data-overflow="none"]').click();
    await page.locator('.slip').waitFor();
    expect(await strays(page)).toEqual([]);
    await page.locator('.slip [data-act="leave"]').click();
    await page.locator('.trial-table tbody tr').first().waitFor();
    await paste('trials', '1');
    await page.locator('.import-part .problem').first().waitFor();
    // what a person pasted is the person's own
    await page.locator('[data-paste="trials"]').fill('');
    await clean('weigh');
    for (const name of ['trials', 'presets', 'floor']) {
      await step(name);
      await page.locator('.answer[data-working="false"]').waitFor({ timeout: 30_000 });
      await clean(name);
    }
    await step('lot');
    await page.locator('[data-lot="rule"]').selectOption('EU average system');
    for (const gross of ['2.98', '2.975', '2.979']) {
      await page.locator('[data-lot="gross"]').fill(gross);
      await page.keyboard.press('Enter');
    }
    await page.locator('[data-lot="by"]').fill('Oxbow');
    await page.locator('[data-act="write-lot"]').click();
    await page.locator('.lot-verdict').waitFor();
    await clean('lot');
    await close();
  });

  it('on each question of the page of the shift', async () => {
    const { page, close } = await openPage(browser);
    await page.goto(`${server.address()}books/flagon-line/cycle?lang=qps`);
    await page.locator('[data-number="shifts"]').fill('20');
    for (const step of ['shift', 'hold', 'watch', 'wash', 'proof']) {
      await goWithin(page, `/books/flagon-line/cycle?lang=qps&step=${step}`);
      await page.locator(`.cycle-page[data-step="${step}"] .cycle-answer`).waitFor();
      await page.locator('.run-bar[data-working="false"]').waitFor({ timeout: 30_000 });
      if (step === 'watch') await page.locator('[data-act="next-wait"]').click();
      for (const summary of await page.locator('.cycle-page details > summary').all()) await summary.click();
      expect({ step, strays: await strays(page) }).toEqual({ step, strays: [] });
    }
    await close();
  });

  it('and the test sees a text that does not', async () => {
    const { page, close } = await openPage(browser);
    await openBook(page, `${server.address()}?lang=qps`);
    await page.evaluate(() => document.querySelector('h1')?.append(' forgotten'));
    expect((await strays(page)).join()).toContain('forgotten');
    await close();
  });
});
