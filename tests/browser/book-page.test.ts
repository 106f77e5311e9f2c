import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { beforeEach, describe, expect, it } from 'vitest';
import { faults } from './axe.ts';
import { openPage } from './browser.ts';
import { goWithin, openBook, rate, saveState, tooWide, waitForText } from './on-the-page.ts';
import { browser, ownServerForEach, server, watched } from './own-server.ts';
import { asEachReader } from './readers.ts';
import { projectRoot } from './running-server.ts';

let id: string;

const demoText = readFileSync(join(projectRoot, 'src/book/demo/flagon-line.json'), 'utf8');

ownServerForEach();
beforeEach(async () => {
  id = await server.addBook(demoText);
});

const openPart = async (page: Page, path: string, book = id): Promise<void> => {
  await page.goto(`${server.address()}books/${book}/book?at=${path}`);
  await page.locator('.write-main h2').waitFor();
};
const at = (page: Page, path: string): Locator => page.locator(`.write-main [data-path="${path}"]`).first();
const act = (page: Page, path: string, what: string): Locator =>
  page.locator(`.write-main [data-at="${path}"][data-act="${what}"]`);
const title = (page: Page): Locator => page.locator('.write-main h2');
const revision = (page: Page, n: number): Promise<void> =>
  page.getByText(`revision ${n}`, { exact: true }).waitFor();
/** All that was done is on the server; in how many revisions depends on how quick it is. */
const saved = (page: Page): Promise<string> => waitForText(saveState(page), /^saved$/);
const stored = async (book = id): Promise<Record<string, never>> => {
  const reply = (await (await fetch(`${server.address()}api/books/${book}`)).json()) as { text: string };
  return JSON.parse(reply.text) as Record<string, never>;
};
/** Goes on to another part of a book whose page is open. */
const goToPart = async (page: Page, path: string): Promise<void> => {
  await goWithin(page, `/books/${id}/book?at=${path}`);
  await page.locator(`.write-main[data-part="${path}"]`).waitFor();
};

/** One of each sort of page: parts, lists, tables, choices, a floor, an empty part. */
const parts = [
  '/about',
  '/agreement',
  '/line/stations',
  '/line/stations/4',
  '/line/stations/4/lanes/1',
  '/line/stopDevices/0',
  '/line/products/1',
  '/line/splits/0',
  '/floors/1',
  '/floors/1/supply',
  '/floors/0/supply/run/0',
  '/floors/1/room',
];

describe('the page on which a book is written', () => {
  it('leads from the outline to every part, and from the floors to the outline', async () => {
    const { page, complaints } = watched;
    await openBook(page, server.address());
    await page.locator('.nav').getByRole('link', { name: 'Book', exact: true }).click();
    await waitForText(title(page), /about/);
    const outline = page.locator('.outline');
    await outline.getByRole('link', { name: /floors/ }).click();
    await outline.getByRole('link', { name: /Larkmoor/ }).click();
    await outline.getByRole('link', { name: 'supply', exact: true }).click();
    await outline.getByRole('link', { name: /^run/ }).click();
    await outline.getByRole('link', { name: /strainer/ }).click();
    await waitForText(title(page), /strainer/);
    expect(await at(page, '/floors/1/supply/run/1/kv').inputValue()).toBe('Kv 8');
    await page.goBack();
    await waitForText(title(page), /run/);
    expect(complaints).toEqual([]);
  });

  it('writes a whole supply from nothing, and the floors follow', async () => {
    const { page } = watched;
    const book = JSON.parse(demoText) as { floors: { supply?: unknown }[] };
    delete book.floors[1]?.supply;
    const blank = await server.addBook(JSON.stringify(book));
    await openPart(page, '/floors/1/supply', blank);
    await at(page, '/floors/1/supply/source/kind').selectOption('gravity');
    await at(page, '/floors/1/supply/source/surface').fill('4.85 m');
    await at(page, '/floors/1/supply/source/outlet').fill('3.80 m');
    await page.getByRole('button', { name: 'Add: hygienic tube' }).click();
    await waitForText(title(page), /hygienic tube/);
    const run = '/floors/1/supply/run/0';
    await page.getByLabel(/Standard sizes/).selectOption('hygienic|2 in');
    expect(await at(page, `${run}/bore`).inputValue()).toBe('47.5 mm');
    await at(page, `${run}/length`).fill('16 m');
    await page.getByLabel('Add: fittings').selectOption('elbow, medium radius');
    await at(page, `${run}/fittings/0/count`).fill('6');
    // its K comes from the table unless somebody writes another
    expect(await at(page, `${run}/fittings/0/k`).getAttribute('placeholder')).toBe('0.8');
    await page.getByRole('button', { name: 'Add: backflow preventer' }).click();
    await waitForText(title(page), /backflow preventer/);
    expect(await at(page, '/floors/1/supply/run/1/loss').inputValue()).toBe('0.7 bar to 1.0 bar');
    await page.getByRole('button', { name: /How .* is known: assumed/ }).waitFor();
    await act(page, '/floors/1/supply/run/1', 'remove').click();
    await waitForText(page.locator('.rates'), /Larkmoor [\d\s]+bottles\/h/);
    await waitForText(saveState(page), /^saved$/);
    await page.locator('.nav').getByRole('link', { name: 'Floors' }).click();
    await waitForText(rate(page, 'LARKMOOR'), /\d+\s*bottles\/h/);
  });

  it('says how a quantity is known: standing, spread, by whom and when, each of which a reload keeps', async () => {
    const { page } = watched;
    await openPart(page, '/floors/1/supply/run/0');
    const bore = '/floors/1/supply/run/0/bore';
    await page.getByRole('button', { name: /How .*bore is known: stated/ }).click();
    await page.getByRole('button', { name: 'measured', exact: true }).click();
    await at(page, `${bore}/spread`).fill('0.2 kg');
    await waitForText(page.locator('.known-how .problem'), /spread.*kg/s);
    await at(page, `${bore}/spread`).fill('0.2 mm');
    await at(page, `${bore}/by`).fill('site, caliper');
    await at(page, `${bore}/by`).press('Enter');
    await waitForText(saveState(page), /^saved$/);
    await page.reload();
    await page.getByRole('button', { name: /How .*bore is known: measured, site, caliper/ }).waitFor();
    expect(await at(page, bore).inputValue()).toBe('47.5 mm ± 0.2 mm');
  });

  it('moves what has an order by key, and the focus goes along', async () => {
    const { page } = watched;
    await openPart(page, '/line/stations/4');
    const lane = (n: number) => page.locator('.links li').nth(n);
    await act(page, '/line/stations/4/lanes/0', 'down').focus();
    await page.keyboard.press('Enter');
    await waitForText(lane(1), /-Y11/);
    await page.keyboard.press('Enter');
    await waitForText(lane(2), /-Y11/);
    await waitForText(page.locator('.write-main > .said'), /-Y11 stands at 3 of 4/);
    await lane(2).getByRole('link').focus();
    await page.keyboard.press('Alt+ArrowUp');
    await waitForText(lane(1), /-Y11/);
    await saved(page);
    for (let i = 0; i < 3; i += 1) await page.getByRole('button', { name: 'Undo' }).click();
    await waitForText(lane(0), /-Y11/);
  });

  it('copies a lane with a tag of its own, and says what refers to one that is to be removed', async () => {
    const { page } = watched;
    const lanes = '/line/stations/4/lanes';
    await openPart(page, '/line/stations/4');
    await act(page, `${lanes}/3`, 'copy').click();
    await waitForText(page.locator('.links li').nth(4), /-Y15/);
    await act(page, `${lanes}/1`, 'remove').click();
    await waitForText(page.locator('.refers'), /One place refers to -Y12.*stop button, filler/s);
    await page.getByRole('button', { name: 'Keep all' }).click();
    expect(await page.locator('.links li').count()).toBe(5);
    await act(page, `${lanes}/1`, 'remove').click();
    await page.getByRole('button', { name: 'Remove it, too' }).click();
    await saved(page);
    // the names that people gave the wires of the lane stay their own
    expect(JSON.stringify(await stored())).not.toMatch(/"(?:tag|on)":"-Y12"/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await saved(page);
    await waitForText(page.locator('.links li').nth(1), /-Y12/);
    expect(JSON.stringify(await stored())).toContain('{"on":"-Y12","effect":"closes"}');
  });

  it('gives a thing another tag, and what refers to it follows', async () => {
    const { page } = watched;
    await openPart(page, '/line/devices/2');
    await at(page, '/line/devices/2/tag').fill('-M1');
    await waitForText(page.locator('.write-main .problem'), /"-M1" stands on something else already/);
    await at(page, '/line/devices/2/tag').fill('-Y2');
    await at(page, '/line/devices/2/tag').press('Enter');
    await saved(page);
    const text = JSON.stringify(await stored());
    expect(text).not.toContain('"-Y1"');
    expect(text.match(/"-Y2"/g)).toHaveLength(3);
  });

  it('changes the kind of a source and keeps what both kinds have', async () => {
    const { page } = watched;
    await openPart(page, '/floors/0/supply');
    const source = '/floors/0/supply/source';
    await at(page, `${source}/kind`).selectOption('pumped');
    await at(page, `${source}/ratedFrequency`).waitFor();
    expect(await at(page, `${source}/name`).inputValue()).toBe('1 m3 tote on a stand'.replace('m3', 'm³'));
    await page.getByRole('button', { name: 'Undo' }).click();
    await at(page, `${source}/surface`).waitFor();
    expect(await at(page, `${source}/surface`).inputValue()).toMatch(/± 0.05 m/);
  });

  it('does not do what would break the book, and says why at the place', async () => {
    const { page } = watched;
    await openPart(page, '/line/stations/4');
    // the lanes of a fill station are referred to, and a washer has none
    await at(page, '/line/stations/4/kind').selectOption('washer');
    await waitForText(page.locator('.refused'), /-Y11/);
    expect(await at(page, '/line/stations/4/kind').inputValue()).toBe('fill');
    await revision(page, 1);
  });

  it('writes the rows of a stop device as a table of what each thing does', async () => {
    const { page } = watched;
    await openPart(page, '/line/stopDevices/1');
    await page.getByRole('button', { name: 'Add a row' }).click();
    const row = '/line/stopDevices/1/effects/2';
    await at(page, `${row}/on`).selectOption('-M3');
    await at(page, `${row}/effect`).fill('stops');
    await at(page, `${row}/category`).selectOption('1');
    await waitForText(saveState(page), /^saved$/);
    const { line } = (await stored()) as unknown as { line: { stopDevices: { effects: unknown[] }[] } };
    expect(line.stopDevices[1]?.effects[2]).toEqual({ on: '-M3', effect: 'stops', category: 1 });
  });

  it('builds a line and a floor in an empty book without anyone touching the file', async () => {
    const { page, complaints } = watched;
    const blank = await server.addBook('{"twinfloor":1}');
    await openPart(page, '/line/holdRules', blank);
    await waitForText(page.locator('.adding'), /This needs a station first/);
    await openPart(page, '/line/stations', blank);
    for (const kind of ['washer', 'fill', 'closing']) {
      await page.getByRole('button', { name: `Add: ${kind}` }).click();
      await waitForText(title(page), new RegExp(kind));
      await page
        .locator('.outline')
        .getByRole('link', { name: /stations/ })
        .click();
    }
    await openPart(page, '/line/holdRules', blank);
    await page.getByRole('button', { name: 'Add hold rule' }).click();
    await openPart(page, '/floors', blank);
    await page.getByRole('button', { name: 'Add floor' }).click();
    await at(page, '/floors/0/name').fill('The site');
    await at(page, '/floors/0/role').selectOption('bound for');
    await waitForText(saveState(page), /^saved$/);
    const book = (await stored(blank)) as unknown as { line: Record<string, unknown>; floors: unknown[] };
    expect(book.line.holdRules).toEqual([{ tag: 'HR1', holds: '+WASH', while: '+FILL', until: 'release' }]);
    expect(book.floors).toEqual([{ tag: 'FLOOR-1', name: 'The site', role: 'bound for' }]);
    await act(page, '/floors/0', 'remove').click();
    await waitForText(title(page), /floors/);
    expect(complaints).toEqual([]);
  });

  it('keeps what is half typed over a reload', async () => {
    const { page } = watched;
    await openPart(page, '/line/stations/1');
    await at(page, '/line/stations/1/stroke').fill('2.1 parsec');
    await waitForText(page.locator('.write-main .problem'), /parsec/);
    await page.waitForTimeout(300);
    await page.reload();
    await title(page).waitFor();
    expect(await at(page, '/line/stations/1/stroke').inputValue()).toBe('2.1 parsec');
    await waitForText(page.locator('.write-main .problem'), /parsec/);
    await revision(page, 1);
  });

  it('puts the changes of two tabs together when asked', async () => {
    const { page } = watched;
    const other = await page.context().newPage();
    await openPart(page, '/line/drives');
    await openPart(other, '/line/stations/4');
    await act(other, '/line/stations/4/lanes/0', 'copy').click();
    await revision(other, 2);
    await act(page, '/line/drives/3', 'remove').click();
    await page.getByRole('button', { name: 'Remove it, too' }).click();
    await waitForText(page.locator('.notice'), /Revision 2 was saved elsewhere/);
    await page.getByRole('button', { name: 'Put my change on top' }).click();
    await revision(page, 3);
    const text = JSON.stringify(await stored());
    expect(text).toContain('-Y15');
    expect(text).not.toContain('"tag":"-M4"');
  });

  it('follows a thing that the other tab moved, and tells what was written to one that it removed', async () => {
    const { page } = watched;
    const lanes = '/line/stations/4/lanes';
    const other = await page.context().newPage();
    await openPart(page, `${lanes}/2`);
    await openPart(other, '/line/stations/4');
    await act(other, `${lanes}/0`, 'remove').click();
    await other.getByRole('button', { name: 'Remove it, too' }).click();
    await revision(other, 2);
    await at(page, `${lanes}/2/kv`).fill('Kv 2.5');
    await at(page, `${lanes}/2/kv`).press('Enter');
    await page.getByRole('button', { name: 'Put my change on top' }).click();
    await revision(page, 3);
    const { line } = (await stored()) as unknown as { line: { stations: { lanes: unknown[] }[] } };
    expect(line.stations[4]?.lanes[1]).toMatchObject({ tag: '-Y13', kv: 'Kv 2.5' });

    // the lane stays the one that is shown, though its place is another
    await waitForText(title(page), /-Y13/);

    await openPart(other, '/line/stations/4');
    await act(other, `${lanes}/1`, 'remove').click();
    await other.getByRole('button', { name: 'Remove it, too' }).click();
    await revision(other, 4);
    await at(page, `${lanes}/1/kv`).fill('Kv 2.7');
    await at(page, `${lanes}/1/kv`).press('Enter');
    await page.getByRole('button', { name: 'Put my change on top' }).click();
    await waitForText(page.locator('.notice'), /no place any more.*-Y13, Kv: Kv 2.5 to Kv 2.7/s);
    await waitForText(title(page), /lanes/);
    await waitForText(page.locator('.gone'), /no longer in the book/);
    await page.getByRole('button', { name: 'Read', exact: true }).click();
    expect(await page.locator('.notice').count()).toBe(0);
    expect(JSON.stringify(await stored())).not.toMatch(/"(?:tag|on)":"-Y13"/);
  });
});

describe('for every reader of the book page', () => {
  it('axe finds nothing and nothing runs out of the page', async () => {
    const { page } = watched;
    await openPart(page, '/line');
    await asEachReader(page, async (reader, turn) => {
      expect([reader, await faults(page)]).toEqual([reader, []]);
      // each sort of page with one of both: looking at one takes seconds
      for (const part of parts.filter((_, i) => i % 2 === turn)) {
        await goToPart(page, part);
        // the outline beside it is the same on each
        expect([part, await faults(page, '.write-main'), await tooWide(page)]).toEqual([part, [], 0]);
      }
    });
    await openPart(page, '/line/stations/4');
    await act(page, '/line/stations/4/lanes/0', 'remove').click();
    await page.locator('.refers').waitFor();
    await openPart(page, '/floors/1/supply/run/0');
    await page.locator('.known').first().click();
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page)]).toEqual([reader, []]);
    });
  });

  it('a thumb finds 48 px everywhere', async () => {
    const { page, close } = await openPage(browser, {
      viewport: { width: 820, height: 1180 },
      hasTouch: true,
      isMobile: true,
    });
    await openPart(page, '/about');
    for (const part of parts) {
      await goToPart(page, part);
      const low = await page.evaluate(() =>
        [...document.querySelectorAll('button, input, select, textarea, summary, .write a')]
          .filter((element) => element.checkVisibility())
          .map((element) => ({
            height: element.getBoundingClientRect().height,
            html: element.outerHTML.slice(0, 120),
          }))
          .filter(({ height }) => height < 47.9),
      );
      expect([part, low]).toEqual([part, []]);
    }
    await close();
  });
});
