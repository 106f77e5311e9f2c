import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { faults } from './axe.ts';
import { openPage } from './browser.ts';
import { openBook, rate, saveState, tooWide, waitForText } from './on-the-page.ts';
import { browser, ownServerForEach, server, watched } from './own-server.ts';
import { asEachReader } from './readers.ts';

ownServerForEach();

const openForm = async (page: Page): Promise<void> => {
  await page.goto(`${server.address()}new?from=form`);
  await page.locator('.question').first().waitFor();
};
const text = (page: Page, id: string): Locator => page.locator(`input[type="text"][data-question="${id}"]`);
const choice = (page: Page, id: string, option: string): Locator =>
  page.locator(`input[type="radio"][data-question="${id}"][value="${option}"]`);
const verdict = (page: Page): Locator => page.locator('.first-verdict');
const books = async (): Promise<readonly { id: string; title: string; revision: number }[]> =>
  (await (await fetch(`${server.address()}api/books`)).json()) as never;
const stored = async (id: string): Promise<Record<string, never>> => {
  const reply = (await (await fetch(`${server.address()}api/books/${id}`)).json()) as { text: string };
  return JSON.parse(reply.text) as Record<string, never>;
};

/** Six lines, each as one page about it would say it; what is not on it stays blank. */
const lines: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'flagons of juice under a mezzanine tank': {
    title: 'Line A',
    rate: '1050 bottles/h',
    level: '2 L',
    row: '4',
    index: '12 s',
    lanes: '4',
    kv: 'Kv 2',
    product: 'juice',
    siteSource: 'tank above',
    siteSurface: '4.85 m',
    siteBore: '47.5 mm',
    builderSource: 'tank above',
    siteLength: '16 m',
    siteMakeUp: '45 L/min',
  },
  'milk pints on a town main': {
    title: 'Line B',
    rate: '2400 bottles/h',
    level: '568 mL',
    row: '8',
    index: '11 s',
    lanes: '8',
    kv: 'Kv 1.2',
    product: 'milk',
    siteSource: 'main',
    sitePressure: '3.5 bar',
    siteBore: '40 mm',
    builderSource: 'main',
  },
  'beer by a pump, US units': {
    title: 'Line C',
    rate: '1800 bottles/h',
    level: '12 US fl oz',
    row: '6',
    index: '10 s',
    lanes: '6',
    kv: 'Cv 1.1',
    product: 'wine or beer',
    siteSource: 'pump',
    siteHead: '40 ft',
    siteBore: '1.5 in',
    builderSource: 'main',
    siteDuty: '25 gal/min',
  },
  'syrup from a low tank': {
    title: 'Line D',
    rate: '600 bottles/h',
    level: '1 L',
    row: '3',
    index: '14 s',
    lanes: '3',
    kv: 'Kv 2.5',
    product: 'syrup',
    siteSource: 'tank above',
    siteSurface: '2.6 m',
    siteBore: '38 mm',
    builderSource: 'pump',
  },
  'oil by a pump': {
    title: 'Line E',
    rate: '500 bottles/h',
    level: '750 mL',
    row: '2',
    index: '13 s',
    lanes: '2',
    kv: 'Kv 2',
    product: 'oil',
    siteSource: 'pump',
    siteHead: '18 m',
    siteBore: '35 mm',
    builderSource: 'tank above',
  },
  'water bottles, many lanes': {
    title: 'Line F',
    rate: '3000 bottles/h',
    level: '1 L',
    row: '12',
    index: '12 s',
    lanes: '12',
    kv: 'Kv 1.5',
    product: 'water',
    siteSource: 'main',
    sitePressure: '60 psi',
    siteBore: '50 mm',
    builderSource: 'main',
  },
};
const chosen = new Set(['product', 'siteSource', 'builderSource', 'hold']);

describe('a new book from the short form', () => {
  it.each(Object.entries(lines))(
    '%s: a verdict stands within the answers, and counts its fields and presses',
    async (_, answers) => {
      const { page, complaints } = watched;
      await openForm(page);
      let presses = 0;
      for (const [id, answer] of Object.entries(answers).slice(0, 12)) {
        if (chosen.has(id)) {
          await choice(page, id, answer).check();
          presses += 1;
        } else await text(page, id).fill(answer);
      }
      await waitForText(verdict(page).locator('.big'), /\d+\s*bottles\/h/);
      await waitForText(verdict(page), /A first verdict stands/);
      expect(Object.keys(answers).length).toBeLessThanOrEqual(25);
      // nine fields to write and three to choose
      expect(presses).toBe(3);
      for (const [id, answer] of Object.entries(answers).slice(12)) await text(page, id).fill(answer);
      expect(await page.locator('.question .problem').count()).toBe(0);
      await page.getByRole('button', { name: 'Make the book' }).click();
      await waitForText(rate(page, 'SITE'), /\d+\s*bottles\/h/);
      await waitForText(page.locator('h1'), new RegExp(`${answers.title}`));
      expect(complaints).toEqual([]);
    },
  );

  it('follows every answer, says what is wrong with one, and does not tell a rate before the run is known', async () => {
    const { page } = watched;
    await openForm(page);
    const answers = Object.entries(lines['syrup from a low tank'] ?? {});
    for (const [id, answer] of answers) {
      if (id === 'siteBore') continue;
      if (chosen.has(id)) await choice(page, id, answer).check();
      else await text(page, id).fill(answer);
    }
    await waitForText(verdict(page), /1 answer to a first verdict: *bore at the site/);
    await waitForText(verdict(page).locator('.big'), /not known/);
    await text(page, 'siteBore').fill('38 kg');
    await waitForText(page.locator('.question .problem'), /bore at the site: "38 kg" has "kg"/);
    await waitForText(verdict(page), /One answer does not read/);
    await text(page, 'siteBore').fill('14 mm');
    const narrow = await waitForText(verdict(page).locator('.big'), /\d+\s*bottles\/h/);
    await text(page, 'siteBore').fill('50 mm');
    await waitForText(verdict(page).locator('.big'), new RegExp(`^(?!${narrow}$).*bottles`));
    await waitForText(verdict(page).locator('.asks'), /the .*: /);
    // a choice that is taken back is not known again
    await choice(page, 'siteSource', '').check();
    expect(await text(page, 'siteSurface').inputValue()).toBe('2.6 m');
  });

  it('is kept over a reload, offered again when it was left, put aside and taken back', async () => {
    const { page } = watched;
    await openForm(page);
    await text(page, 'rate').fill('900 bottles/h');
    await choice(page, 'product', 'juice').check();
    await text(page, 'row').fill('many');
    await page.reload();
    await page.locator('.question').first().waitFor();
    expect(await text(page, 'rate').inputValue()).toBe('900 bottles/h');
    expect(await text(page, 'row').inputValue()).toBe('many');
    expect(await choice(page, 'product', 'juice').isChecked()).toBe(true);

    await openBook(page, server.address());
    await page.locator('.nav').getByRole('link', { name: 'New book' }).click();
    await waitForText(page.locator('.begun'), /A form is begun: 2 of \d+ answered/);
    await page.getByRole('link', { name: 'Go on with it' }).click();
    await page.getByRole('button', { name: 'Start afresh' }).click();
    expect(await text(page, 'rate').inputValue()).toBe('');
    await page.getByRole('button', { name: 'Take the former answers back' }).click();
    expect(await text(page, 'rate').inputValue()).toBe('900 bottles/h');
  });

  it('goes from question to question by key alone', async () => {
    const { page } = watched;
    await openForm(page);
    await text(page, 'title').focus();
    await page.keyboard.type('Line by key');
    await page.keyboard.press('Enter');
    await page.keyboard.type('900 /h');
    expect(await text(page, 'rate').inputValue()).toBe('900 /h');
    for (const answer of ['1 L', '3', '11 s', '3', 'Kv 2']) {
      await page.keyboard.press('Enter');
      await page.keyboard.type(answer);
    }
    await page.keyboard.press('Enter');
    await page.keyboard.press('Space');
    await page.keyboard.press('ArrowRight');
    expect(await page.locator('input[data-question="product"]:checked').count()).toBe(1);
    expect(await choice(page, 'product', '').isChecked()).toBe(false);
  });

  it('loses nothing when the server is gone, and makes one book when it is back', async () => {
    const { page } = watched;
    await openForm(page);
    await text(page, 'title').fill('Line late');
    await server.end();
    await page.getByRole('button', { name: 'Make the book' }).click();
    await waitForText(
      page.locator('.first-verdict [role="alert"]'),
      /The server does not answer\. Nothing is lost/,
    );
    await server.startAgain();
    await page.getByRole('button', { name: 'Make the book' }).click();
    await page.locator('.spine').waitFor();
    expect((await books()).filter(({ title }) => title === 'Line late')).toHaveLength(1);
    await page.goto(`${server.address()}new`);
    await page.locator('.ways').waitFor();
    expect(await page.locator('.begun').count()).toBe(0);
  });
});

describe('the other ways to a new book', () => {
  it('a copy has the newest revision of the earlier line, its readings and a title of its own', async () => {
    const { page } = watched;
    const [demo] = await books();
    await page.goto(`${server.address()}new`);
    const way = page.locator('.way', { hasText: 'From an earlier line' });
    await way.getByLabel('Title').fill('Flagon line 5');
    await way.getByRole('button', { name: 'Copy it' }).click();
    await waitForText(page.locator('h1'), /Flagon line 5/);
    await waitForText(rate(page, 'LARKMOOR'), /\d+\s*bottles\/h/);
    const copy = (await books()).find(({ title }) => title === 'Flagon line 5');
    const [from, to] = [await stored(demo!.id), await stored(copy!.id)];
    expect(to.floors).toEqual(from.floors);
    expect(to.line).toEqual(from.line);
    expect((to.about as unknown as { serial?: string }).serial).toBeUndefined();
  });

  it('a blank one opens where it is written', async () => {
    const { page } = watched;
    await page.goto(`${server.address()}new`);
    const way = page.locator('.way', { hasText: 'Make a blank book' });
    await way.getByLabel('Title').fill('Empty line');
    await way.getByRole('button', { name: 'Make a blank book' }).click();
    await page.locator('.write-main h2').waitFor();
    await waitForText(page.locator('h1'), /Empty line/);
    await waitForText(saveState(page), /^saved$/);
  });
});

describe('what to ask next', () => {
  it('stands first in the working of a row that is not decided, is answered in place, and the field stays while one writes', async () => {
    const { page } = watched;
    await openBook(page, server.address());
    const surface = '/floors/1/supply/source/surface';
    await page.locator(`.part input[data-path="${surface}"]`).first().fill('');
    await page.locator(`.part input[data-path="${surface}"]`).first().press('Enter');
    await page.locator('button[data-finding="runningRate"][data-floor="LARKMOOR"]').click();
    const ask = page.locator('aside.panel .ask');
    await waitForText(ask, /Ask this first.*the site’s plumber: tape from the slab to the surface/s);
    const field = ask.locator(`input[data-path="${surface}"]`);
    await field.pressSequentially('4.85 m');
    expect(await field.inputValue()).toBe('4.85 m');
    await field.press('Enter');
    await waitForText(rate(page, 'LARKMOOR'), /\d+\s*bottles\/h/);
  });

  it('lists under the spine what each floor waits for, and each row that waits is a door', async () => {
    const { page } = watched;
    await openBook(page, server.address());
    const surface = '/floors/1/supply/source/surface';
    await page.locator(`.part input[data-path="${surface}"]`).first().fill('');
    const part = page.getByRole('region', { name: 'What to ask next' });
    await waitForText(part, /Larkmoor.*tape from the slab to the surface/s);
    await part.getByRole('button', { name: 'manifold pressure' }).last().click();
    await waitForText(page.locator('aside.panel h2'), /manifold pressure/);
  });
});

describe('for every reader', () => {
  it('axe finds nothing on the ways to a new book, and in the form with its verdict and a problem', async () => {
    const { page } = watched;
    const looked = async (): Promise<void> =>
      asEachReader(page, async (reader) => {
        expect([reader, await faults(page), await tooWide(page)]).toEqual([reader, [], 0]);
      });
    await page.goto(`${server.address()}new`);
    await page.locator('.way option').first().waitFor({ state: 'attached' });
    await looked();
    await openForm(page);
    for (const [id, answer] of Object.entries(lines['syrup from a low tank'] ?? {})) {
      if (chosen.has(id)) await choice(page, id, answer).check();
      else await text(page, id).fill(answer);
    }
    await text(page, 'cap').fill('slow');
    await waitForText(verdict(page).locator('.big'), /bottles\/h/);
    await looked();
  });

  it('a thumb finds 48 px on the form and on the ways to it', async () => {
    const { page, close } = await openPage(browser, {
      viewport: { width: 820, height: 1180 },
      hasTouch: true,
      isMobile: true,
    });
    const low = () =>
      page.evaluate(() =>
        [...document.querySelectorAll('button, input, select, summary, nav a')]
          .filter((element) => element.checkVisibility())
          .map((element) => ({
            height: element.getBoundingClientRect().height,
            html: element.outerHTML.slice(0, 120),
          }))
          .filter(({ height }) => height < 47.9),
      );
    await page.goto(`${server.address()}new`);
    await page.locator('.way option').first().waitFor({ state: 'attached' });
    expect(await low()).toEqual([]);
    await openForm(page);
    expect(await low()).toEqual([]);
    await close();
  });
});
